package trammel.reading.tree;

import java.io.FileInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Reads a JSON or YAML file into a tree of located nodes.
 *
 * <p>Refused, each with a problem that says where: files over 1 MB where the reader of a long list
 * does not allow more, text that is not UTF-8, syntax errors, repeated keys, several documents in
 * one file, YAML aliases, anchored groups and tags, and nesting deeper than {@value #DEEPEST}
 * levels.
 */
public final class DocumentReader {
  /** Largest file, bytes: a job file is some kilobytes, so anything above this is a mistake. */
  public static final int LARGEST_BYTES = 1_000_000;

  /** Deepest nesting: a job file needs about six levels. */
  public static final int DEEPEST = 24;

  /** What stands for a file whose name is blank. */
  private static final String NAMELESS = "a file without a name";

  private DocumentReader() {}

  /**
   * Reads a file; its name ends with {@code .json}, {@code .yaml} or {@code .yml}.
   *
   * @throws BadInputException if it cannot be read in one way only
   */
  public static ObjectNode read(Path file) {
    return read(file, LARGEST_BYTES);
  }

  /**
   * Reads a file that may be larger than a job file; its name ends with {@code .json}, {@code
   * .yaml} or {@code .yml}.
   *
   * @param largestBytes largest file, bytes
   * @throws BadInputException if it cannot be read in one way only
   */
  public static ObjectNode read(Path file, int largestBytes) {
    String name = file.toString().isBlank() ? NAMELESS : file.toString();
    DocumentFormat format = formatOf(name);
    return parse(name, format, decoded(name, bytes(name, file, largestBytes)));
  }

  /**
   * Reads a text that has the name of a file.
   *
   * @throws BadInputException if it cannot be read in one way only
   */
  public static ObjectNode read(String fileName, String text) {
    DocumentFormat format = formatOf(fileName);
    if (text.length() > LARGEST_BYTES) {
      throw tooLarge(fileName, text.length(), LARGEST_BYTES);
    }
    return parse(fileName, format, text);
  }

  /**
   * Reads one value as it could stand in a YAML file, such as {@code 36 in} or {@code [1 in, 2
   * in]}.
   *
   * @param where where the value is to stand; all of it gets this location
   * @throws BadInputException if it cannot be read in one way only
   */
  public static DocumentNode readValue(Location where, String text) {
    return new TreeBuilder(where, text).valueFromOutside();
  }

  private static ObjectNode parse(String fileName, DocumentFormat format, String text) {
    DocumentNode root = new TreeBuilder(fileName, format, text).document();
    if (root instanceof ObjectNode object) {
      return object;
    }
    throw refused(
        root.location(),
        root.given(),
        "keys with values, such as job: and measured:",
        "Start from a file that trammel start has written.");
  }

  private static DocumentFormat formatOf(String fileName) {
    Optional<DocumentFormat> format = DocumentFormat.ofFileName(fileName);
    if (format.isEmpty()) {
      throw refused(
          whole(fileName),
          "the file name '" + fileName + "'",
          "a name that ends with .yaml, .yml or .json",
          "Rename the file after what is in it.");
    }
    return format.get();
  }

  private static byte[] bytes(String name, Path file, int largestBytes) {
    if (!Files.isRegularFile(file)) {
      throw refused(
          whole(name),
          Files.isDirectory(file) ? "a folder" : "no such file",
          "a file that exists",
          "Check the name and the folder you are in.");
    }
    // Not a channel's stream: that loads a good part of NIO for a few kilobytes.
    try (InputStream in = new FileInputStream(file.toFile())) {
      byte[] bytes = in.readNBytes(largestBytes + 1);
      if (bytes.length > largestBytes) {
        throw tooLarge(name, Files.size(file), largestBytes);
      }
      return bytes;
    } catch (IOException e) {
      throw refused(
          whole(name),
          "a file that cannot be read (" + e.getClass().getSimpleName() + ")",
          "a file that you may read",
          "Check its permissions.");
    }
  }

  private static String decoded(String name, byte[] bytes) {
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult result =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT)
            .decode(in, out, true);
    if (result.isError()) {
      int line = 1;
      for (int i = 0; i < in.position(); i++) {
        line += bytes[i] == '\n' ? 1 : 0;
      }
      throw refused(
          new Location(name, line, 1, ""),
          "bytes that are not UTF-8 text",
          "a text file in UTF-8",
          "Save the file as UTF-8 in your editor.");
    }
    out.flip();
    boolean mark = out.length() > 0 && out.charAt(0) == '\ufeff';
    return mark ? out.subSequence(1, out.length()).toString() : out.toString();
  }

  private static BadInputException tooLarge(String name, long size, int largest) {
    return refused(
        whole(name),
        size / 1000 + " kB",
        "at most " + largest / 1000 + " kB",
        "Check that it is the right file"
            + (largest > LARGEST_BYTES ? "." : ": a job file is some kilobytes."));
  }

  private static Location whole(String name) {
    return new Location(name, 1, 1, "");
  }

  static BadInputException refused(Location where, String given, String allowed, String remedy) {
    return new BadInputException(List.of(Problem.error(where, given, allowed, remedy)));
  }
}
