package trammel.app.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import trammel.app.commandline.CommandFailure;

/**
 * The text of a table as any spreadsheet saves it: UTF-8 or UTF-16, each with its mark or without,
 * else Latin-1 as Windows writes it (code page 1252), in which every text of western Europe and
 * America is saved where nobody asks for Unicode.
 */
final class TableText {
  private static final Charset LATIN = Charset.forName("windows-1252");

  /** What some spreadsheets put in front to say what stands between the cells. */
  static final String SEPARATOR_LINE = "sep=";

  private static final String BETWEEN_CELLS = ",;\t";

  private TableText() {}

  /**
   * The text of a file, without a mark at its start.
   *
   * @throws CommandFailure if it cannot be read
   */
  static String of(Path file) {
    try {
      return of(Files.readAllBytes(file));
    } catch (IOException refused) {
      throw CommandFailure.couldNotRead(file, refused);
    }
  }

  static String of(byte[] bytes) {
    String text = decoded(bytes);
    return text.startsWith("\ufeff") ? text.substring(1) : text;
  }

  private static String decoded(byte[] bytes) {
    try {
      return strict(bytes, charset(bytes));
    } catch (CharacterCodingException foreign) {
      return new String(bytes, LATIN);
    }
  }

  private static String strict(byte[] bytes, Charset charset) throws CharacterCodingException {
    return charset.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
  }

  private static Charset charset(byte[] bytes) {
    if (bytes.length < 2) {
      return StandardCharsets.UTF_8;
    }
    int first = bytes[0] & 0xff;
    int second = bytes[1] & 0xff;
    if (first == 0xfe && second == 0xff || first == 0 && second != 0) {
      return StandardCharsets.UTF_16BE;
    }
    if (first == 0xff && second == 0xfe || first != 0 && second == 0) {
      return StandardCharsets.UTF_16LE;
    }
    return StandardCharsets.UTF_8;
  }

  /**
   * What stands between the cells: what a line {@code sep=} says, else whichever of comma,
   * semicolon and tab stands most often in the first line outside quotation marks; a comma where
   * none does.
   */
  static char between(String text) {
    int at = text.startsWith("\"") ? 1 : 0;
    if (text.startsWith(SEPARATOR_LINE, at) && text.length() > at + SEPARATOR_LINE.length()) {
      char told = text.charAt(at + SEPARATOR_LINE.length());
      return BETWEEN_CELLS.indexOf(told) >= 0 ? told : ',';
    }
    int[] count = new int[BETWEEN_CELLS.length()];
    boolean quoted = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"') {
        quoted = !quoted;
      } else if (!quoted && (c == '\n' || c == '\r')) {
        break;
      } else if (!quoted && BETWEEN_CELLS.indexOf(c) >= 0) {
        count[BETWEEN_CELLS.indexOf(c)]++;
      }
    }
    int most = 0;
    for (int i = 1; i < count.length; i++) {
      most = count[i] > count[most] ? i : most;
    }
    return BETWEEN_CELLS.charAt(most);
  }
}
