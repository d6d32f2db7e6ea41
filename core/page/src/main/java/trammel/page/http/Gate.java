package trammel.page.http;

import com.sun.net.httpserver.Headers;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Lets through what the page itself sends and nothing else. Another site that a browser has open
 * cannot name this server's host without being found out by its own (DNS rebinding), cannot send
 * its own origin, and does not know the key; cookies are not used, for all ports of a machine share
 * them.
 */
public final class Gate {
  /** The header that carries the key. */
  public static final String KEY = "X-Trammel-Key";

  /** The largest body, bytes. */
  public static final int LARGEST_BODY = 1_000_000;

  private static final String API = "/api/";

  private final Keys keys;
  private final Set<String> hosts;

  /**
   * @param keys who may ask
   * @param hosts the names under which this server may be asked, with their port
   */
  public Gate(Keys keys, Set<String> hosts) {
    this.keys = keys;
    this.hosts = Set.copyOf(hosts);
  }

  /** Why a request is not let through; empty if it is. */
  public Optional<Answer> refuse(String method, String path, Headers headers) {
    String host = String.valueOf(headers.getFirst("Host")).toLowerCase(Locale.ROOT);
    if (!hosts.contains(host)) {
      return refused(421, "This server does not answer to that name.");
    }
    if (!method.equals("GET") && !method.equals("POST")) {
      return refused(405, "Only GET and POST are answered.");
    }
    String origin = headers.getFirst("Origin");
    if (origin != null && !origin.equals("http://" + host)) {
      return refused(403, "Another site may not ask here.");
    }
    if (!path.startsWith(API)) {
      return method.equals("GET") ? Optional.empty() : refused(405, "Only GET is answered here.");
    }
    String site = headers.getFirst("Sec-Fetch-Site");
    if (site != null && !site.equals("same-origin")) {
      return refused(403, "Another site may not ask here.");
    }
    if (method.equals("POST") && !isJson(headers.getFirst("Content-Type"))) {
      return refused(415, "A request carries application/json.");
    }
    if (length(headers) > LARGEST_BODY) {
      return refused(413, "A request is at most " + LARGEST_BODY / 1000 + " kB.");
    }
    boolean entering = path.equals(API + "enter");
    String key = headers.getFirst(KEY);
    if (!entering && (key == null || !keys.knows(key))) {
      return refused(
          401,
          "This page belongs to an earlier start of Trammel, or was never let in. Open the address"
              + " that 'trammel page' shows.");
    }
    return Optional.empty();
  }

  private static boolean isJson(String type) {
    return type != null && type.toLowerCase(Locale.ROOT).startsWith("application/json");
  }

  private static long length(Headers headers) {
    try {
      String length = headers.getFirst("Content-Length");
      return length == null ? 0 : Long.parseLong(length);
    } catch (NumberFormatException none) {
      return Long.MAX_VALUE;
    }
  }

  private static Optional<Answer> refused(int status, String words) {
    return Optional.of(Answer.refused(status, words));
  }
}
