package trammel.bin;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A request to a page, sent byte by byte as it stands here: no library sees to it that its headers
 * are what a browser would send.
 */
record PageRequest(int port, String method, String path, Map<String, String> headers, byte[] body) {
  private static final int LONGEST_WAIT_MS = 30_000;
  private static final Pattern LENGTH = Pattern.compile("(?i)content-length: *(\\d+)");
  private static final Pattern CHUNKED = Pattern.compile("(?i)transfer-encoding: *chunked");

  /** What came back. */
  record Answered(int status, String head, String body) {
    Tree json() throws IOException {
      return Tree.ofJson(body);
    }
  }

  /** What the page itself sends. */
  static PageRequest own(int port, String key, String method, String path, String body) {
    Map<String, String> headers = new LinkedHashMap<>();
    headers.put("Host", "127.0.0.1:" + port);
    headers.put("Origin", "http://127.0.0.1:" + port);
    headers.put("Sec-Fetch-Site", "same-origin");
    headers.put("Content-Type", "application/json");
    headers.put("X-Trammel-Key", key);
    headers.put("X-Trammel-Device", "test");
    return new PageRequest(port, method, path, headers, body.getBytes(StandardCharsets.UTF_8));
  }

  PageRequest with(String header, String value) {
    Map<String, String> changed = new LinkedHashMap<>(headers);
    changed.put(header, value);
    return new PageRequest(port, method, path, changed, body);
  }

  PageRequest without(String header) {
    Map<String, String> changed = new LinkedHashMap<>(headers);
    changed.remove(header);
    return new PageRequest(port, method, path, changed, body);
  }

  /** The same body in one piece of a coding that does not say beforehand how long it is. */
  PageRequest chunked() {
    String coded =
        Integer.toHexString(body.length) + "\r\n" + new String(body, StandardCharsets.UTF_8);
    return new PageRequest(
            port, method, path, headers, (coded + "\r\n0\r\n\r\n").getBytes(StandardCharsets.UTF_8))
        .with("Transfer-Encoding", "chunked");
  }

  Answered send() throws IOException {
    StringBuilder head = new StringBuilder(method + " " + path + " HTTP/1.1\r\n");
    headers.forEach((name, value) -> head.append(name).append(": ").append(value).append("\r\n"));
    if (!headers.containsKey("Content-Length") && !headers.containsKey("Transfer-Encoding")) {
      head.append("Content-Length: ").append(body.length).append("\r\n");
    }
    head.append("Connection: close\r\n\r\n");
    try (Socket socket = new Socket("127.0.0.1", port)) {
      socket.setSoTimeout(LONGEST_WAIT_MS);
      OutputStream out = socket.getOutputStream();
      out.write(head.toString().getBytes(StandardCharsets.UTF_8));
      out.write(body);
      out.flush();
      return read(socket.getInputStream());
    }
  }

  /** Reads one answer and no further: a server may keep the line open for what was promised. */
  private static Answered read(InputStream in) throws IOException {
    StringBuilder head = new StringBuilder();
    while (head.indexOf("\r\n\r\n") < 0) {
      int next = in.read();
      if (next < 0) {
        return new Answered(0, head.toString(), "");
      }
      head.append((char) next);
    }
    int status = Integer.parseInt(head.toString().split(" ")[1]);
    Matcher length = LENGTH.matcher(head);
    byte[] body =
        length.find() ? in.readNBytes(Integer.parseInt(length.group(1))) : in.readAllBytes();
    String text = new String(body, StandardCharsets.UTF_8);
    boolean chunked = CHUNKED.matcher(head).find();
    return new Answered(status, head.toString(), chunked ? unchunked(text) : text);
  }

  private static String unchunked(String body) {
    StringBuilder whole = new StringBuilder();
    byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
    int at = 0;
    while (at < bytes.length) {
      int end = at;
      while (bytes[end] != '\r') {
        end++;
      }
      int length =
          Integer.parseInt(new String(bytes, at, end - at, StandardCharsets.US_ASCII).trim(), 16);
      whole.append(new String(bytes, end + 2, length, StandardCharsets.UTF_8));
      at = end + 2 + length + 2;
    }
    return whole.toString();
  }
}
