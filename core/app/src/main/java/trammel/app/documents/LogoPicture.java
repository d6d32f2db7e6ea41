package trammel.app.documents;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import trammel.app.commandline.CommandFailure;

/** A shop's mark within a document, so that the document needs no other file. */
final class LogoPicture {
  private static final byte PNG_BEGINS = (byte) 0x89;

  private LogoPicture() {}

  /** The picture as an address that holds it (RFC 2397). */
  static String dataAddress(Path file) {
    try {
      byte[] bytes = Files.readAllBytes(file);
      String kind = bytes.length > 0 && bytes[0] == PNG_BEGINS ? "png" : "jpeg";
      return "data:image/" + kind + ";base64," + Base64.getEncoder().encodeToString(bytes);
    } catch (IOException gone) {
      throw CommandFailure.badInput(
          "The shop's logo "
              + file
              + " cannot be read. Check it, or take logo out of the catalog.");
    }
  }
}
