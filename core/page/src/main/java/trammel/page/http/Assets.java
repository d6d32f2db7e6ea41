package trammel.page.http;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The files of the browser side, as they lie in the jar, and the policy that they run under. */
public final class Assets {
  private static final String WEB = "/trammel/page/web/";
  private static final String INDEX = "index.html";
  private static final Pattern NAME = Pattern.compile("(?:[a-z0-9-]+/){0,3}[A-Za-z0-9.-]+");
  private static final Pattern IMPORT_MAP =
      Pattern.compile("<script type=\"importmap\">(.*?)</script>", Pattern.DOTALL);
  private static final Map<String, String> TYPES =
      Map.of(
          "js", "text/javascript; charset=utf-8",
          "css", "text/css; charset=utf-8",
          "html", "text/html; charset=utf-8",
          "svg", "image/svg+xml",
          "txt", "text/plain; charset=utf-8");

  private final byte[] index;
  private final String policy;

  /** Reads the first page, whose import map the policy has to name. */
  public Assets() {
    index = read(INDEX).orElseThrow();
    policy = policy(new String(index, StandardCharsets.UTF_8));
  }

  /**
   * What the browser may do: run and load what this server sends, nothing from elsewhere, no script
   * within HTML but the import map, no text made into HTML.
   */
  public String policy() {
    return policy;
  }

  /** The first page. */
  public Answer index() {
    return Answer.bytes(200, TYPES.get("html"), index);
  }

  /** A file by its name; empty if there is none. */
  public Optional<Answer> file(String name) {
    String ending = name.substring(name.lastIndexOf('.') + 1);
    if (!NAME.matcher(name).matches() || name.contains("..") || !TYPES.containsKey(ending)) {
      return Optional.empty();
    }
    return read(name).map(bytes -> Answer.bytes(200, TYPES.get(ending), bytes));
  }

  private static Optional<byte[]> read(String name) {
    try (InputStream in = Assets.class.getResourceAsStream(WEB + name)) {
      return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static String policy(String page) {
    Matcher map = IMPORT_MAP.matcher(page);
    if (!map.find()) {
      throw new IllegalStateException("The first page has no import map.");
    }
    return "default-src 'none'; script-src 'self' 'sha256-"
        + sha256(map.group(1))
        + "'; style-src 'self'; img-src 'self' data: blob:; connect-src 'self'; font-src 'self';"
        + " frame-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none';"
        + " require-trusted-types-for 'script'; trusted-types 'none'";
  }

  private static String sha256(String text) {
    try {
      byte[] sum =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return Base64.getEncoder().encodeToString(sum);
    } catch (NoSuchAlgorithmException missing) {
      throw new IllegalStateException(missing);
    }
  }
}
