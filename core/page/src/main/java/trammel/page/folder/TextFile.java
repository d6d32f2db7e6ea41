package trammel.page.folder;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import trammel.app.commandline.CommandFailure;
import trammel.reading.tree.DocumentReader;

/** A file as the text that it is, all of it: also what some editors put before it. */
public final class TextFile {
  private static final String MARK = "\ufeff";

  private TextFile() {}

  /**
   * The text of a file.
   *
   * @param what what kind of file it is, for messages
   * @throws Refused if it is too large, or not text in UTF-8
   */
  public static String read(Path file, String what) {
    try {
      if (Files.size(file) > DocumentReader.LARGEST_BYTES) {
        throw new Refused(422, file.getFileName() + " is too large for a " + what + ".");
      }
      return StandardCharsets.UTF_8
          .newDecoder()
          .decode(ByteBuffer.wrap(Files.readAllBytes(file)))
          .toString();
    } catch (CharacterCodingException other) {
      throw new Refused(
          422, file.getFileName() + " is not text in UTF-8: save it as UTF-8 in your editor.");
    } catch (IOException unread) {
      throw CommandFailure.couldNotRead(file, unread);
    }
  }

  /** A text without the mark that some editors put before it. */
  public static String withoutMark(String text) {
    return text.startsWith(MARK) ? text.substring(MARK.length()) : text;
  }

  /** The mark that stands before a text; empty if none does. */
  public static String mark(String text) {
    return text.startsWith(MARK) ? MARK : "";
  }
}
