package trammel.page.folder;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * A job file as it was read.
 *
 * @param name name of the file
 * @param text all of it
 * @param revision tells this text from any other
 */
public record JobText(String name, String text, String revision) {
  private static final int REVISION_SIGNS = 16;

  /** A text with its revision. */
  public static JobText of(String name, String text) {
    return new JobText(name, text, revision(text));
  }

  private static String revision(String text) {
    try {
      byte[] sum =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(sum).substring(0, REVISION_SIGNS);
    } catch (NoSuchAlgorithmException missing) {
      throw new IllegalStateException(missing);
    }
  }
}
