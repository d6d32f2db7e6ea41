package trammel.page.http;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.sun.net.httpserver.Headers;
import java.time.Instant;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What is let through: what the page itself sends. Statuses: RFC 9110. */
class GateTest {
  private static final String HOST = "127.0.0.1:4711";
  private final Keys keys = new Keys(Instant::now);
  private final Gate gate = new Gate(keys, Set.of(HOST, "localhost:4711"));

  private Headers own() {
    Headers headers = new Headers();
    headers.set("Host", HOST);
    headers.set("Origin", "http://" + HOST);
    headers.set("Sec-Fetch-Site", "same-origin");
    headers.set("Content-Type", "application/json");
    headers.set(Gate.KEY, keys.first());
    return headers;
  }

  private int status(String method, String path, Headers headers) {
    return gate.refuse(method, path, headers).map(Answer::status).orElse(200);
  }

  private int with(String header, String value) {
    Headers headers = own();
    if (value == null) {
      headers.remove(header);
    } else {
      headers.set(header, value);
    }
    return status("POST", "/api/jobs", headers);
  }

  @Test
  void the_page_itself_is_let_through() {
    assertEquals(200, status("POST", "/api/jobs", own()));
    assertEquals(200, status("GET", "/api/shop", own()));
    assertEquals(200, with("Origin", null));
    assertEquals(200, with("Sec-Fetch-Site", null));
    assertEquals(200, with("Content-Type", "application/json; charset=utf-8"));
  }

  @Test
  void the_first_page_needs_no_key_for_it_holds_no_job() {
    Headers headers = new Headers();
    headers.set("Host", HOST);
    assertEquals(200, status("GET", "/", headers));
    assertEquals(200, status("GET", "/web/style.css", headers));
    assertEquals(401, status("GET", "/api/shop", headers));
  }

  @Test
  void a_name_that_another_site_bound_to_this_machine_is_refused() {
    assertEquals(421, with("Host", "evil.example:4711"));
    assertEquals(421, with("Host", "127.0.0.1:80"));
    assertEquals(421, with("Host", null));
    Headers first = new Headers();
    first.set("Host", "evil.example:4711");
    assertEquals(421, status("GET", "/", first));
  }

  @Test
  void another_site_is_refused() {
    assertEquals(403, with("Origin", "http://evil.example"));
    assertEquals(403, with("Origin", "null"));
    assertEquals(403, with("Origin", "http://localhost:4711"));
    assertEquals(403, with("Origin", "http://127.0.0.1:8080"));
    assertEquals(403, with("Sec-Fetch-Site", "cross-site"));
    assertEquals(403, with("Sec-Fetch-Site", "same-site"));
  }

  @Test
  void what_a_form_of_another_site_can_send_is_refused() {
    assertEquals(415, with("Content-Type", "text/plain"));
    assertEquals(415, with("Content-Type", "application/x-www-form-urlencoded"));
    assertEquals(415, with("Content-Type", null));
  }

  @Test
  void a_wrong_key_too_long_a_body_and_another_method_are_refused() {
    assertEquals(401, with(Gate.KEY, "x"));
    assertEquals(401, with(Gate.KEY, null));
    assertEquals(413, with("Content-Length", "1000001"));
    assertEquals(413, with("Content-Length", "-x"));
    assertEquals(200, with("Content-Length", "1000000"));
    for (String method : new String[] {"PUT", "DELETE", "OPTIONS", "TRACE", "HEAD"}) {
      assertEquals(405, status(method, "/api/jobs", own()), method);
    }
    assertEquals(405, status("POST", "/", own()));
  }
}
