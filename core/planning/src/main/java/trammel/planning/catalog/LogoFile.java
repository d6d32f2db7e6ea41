package trammel.planning.catalog;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import trammel.reading.tree.Location;
import trammel.reading.tree.Problems;

/** The file with a shop's mark, named in its catalog and looked at before anything is printed. */
final class LogoFile {
  private static final int MOST_BYTES = 500_000;
  private static final String ALLOWED = "a PNG or JPEG file of at most 500 kB beside the catalog";

  /** First bytes of a PNG (ISO/IEC 15948, 5.2). */
  private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};

  /** First bytes of a JPEG: start of image and the next marker (ISO/IEC 10918-1, B.1.1.3). */
  private static final byte[] JPEG = {(byte) 0xff, (byte) 0xd8, (byte) 0xff};

  private LogoFile() {}

  /**
   * The file; empty after a problem with it was reported.
   *
   * @param name as it is written, from the folder of the catalog file
   * @param where where it is written
   */
  static Optional<Path> of(String name, Location where, Problems problems) {
    Optional<Path> found = resolved(name, where);
    String trouble = found.isEmpty() ? "not the name of a file there" : trouble(found.get());
    if (trouble.isEmpty()) {
      return found;
    }
    problems.error(
        where,
        "'" + name + "', which is " + trouble,
        ALLOWED,
        "Put the file beside the catalog file that names it, or take logo out.");
    return Optional.empty();
  }

  private static Optional<Path> resolved(String name, Location where) {
    try {
      Path file = Path.of(where.file()).resolveSibling(name);
      Path folder = Path.of(where.file()).toAbsolutePath().normalize().getParent();
      // A picture from anywhere else is none that whoever fills the catalog in may show.
      boolean beside = file.toAbsolutePath().normalize().startsWith(folder);
      return beside ? Optional.of(file) : Optional.empty();
    } catch (InvalidPathException unwritable) {
      return Optional.empty();
    }
  }

  private static String trouble(Path file) {
    if (!Files.isRegularFile(file)) {
      return "no file";
    }
    try (InputStream in = Files.newInputStream(file)) {
      if (Files.size(file) > MOST_BYTES) {
        return Files.size(file) / 1000 + " kB large";
      }
      byte[] head = in.readNBytes(PNG.length);
      return startsWith(head, PNG) || startsWith(head, JPEG) ? "" : "neither a PNG nor a JPEG";
    } catch (IOException unreadable) {
      return "a file that cannot be read";
    }
  }

  private static boolean startsWith(byte[] head, byte[] mark) {
    return head.length >= mark.length && Arrays.equals(Arrays.copyOf(head, mark.length), mark);
  }
}
