package trammel.page.http;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import trammel.app.json.Json;

/**
 * What the server answers to one request.
 *
 * @param status HTTP status
 * @param type media type of the body
 * @param body writes the body
 * @param length length of the body in bytes; 0 where it is written as it comes
 * @param headers more headers
 */
public record Answer(int status, String type, Body body, long length, Map<String, String> headers) {
  private static final String JSON = "application/json; charset=utf-8";

  /** Writes the body of an answer. */
  public interface Body {
    /**
     * Writes it.
     *
     * @throws IOException if whoever asked is gone
     */
    void writeTo(OutputStream out) throws IOException;
  }

  public Answer {
    headers = Map.copyOf(headers);
  }

  /** Maps, lists, texts and numbers. */
  public static Answer json(Object value) {
    return json(200, value);
  }

  /** Maps, lists, texts and numbers, with a status. */
  public static Answer json(int status, Object value) {
    return bytes(status, JSON, Json.text(value).getBytes(StandardCharsets.UTF_8));
  }

  /** Why something was not done, in the words for its user. */
  public static Answer refused(int status, String words) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("refused", words);
    return json(status, json);
  }

  /** Bytes of a type. */
  public static Answer bytes(int status, String type, byte[] body) {
    return new Answer(status, type, out -> out.write(body), body.length, Map.of());
  }

  /** A body that goes on until whoever asked is gone. */
  public static Answer stream(String type, Body body) {
    return new Answer(200, type, body, 0, Map.of());
  }

  /** The same with one more header. */
  public Answer with(String header, String value) {
    Map<String, String> more = new LinkedHashMap<>(headers);
    more.put(header, value);
    return new Answer(status, type, body, length, more);
  }
}
