package trammel.planning.catalog;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** The repository's catalogs, from the folder of this module, and copies of them to break. */
final class CatalogFolders {
  static final Path STANDARD = Path.of("..", "..", "catalogs", "standard");
  static final Path DEMO = Path.of("..", "..", "catalogs", "demo");

  private CatalogFolders() {}

  static Path copyOfStandard(Path into) {
    try (DirectoryStream<Path> files = Files.newDirectoryStream(STANDARD)) {
      for (Path file : files) {
        Files.copy(file, into.resolve(file.getFileName()));
      }
      return into;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Path write(Path file, String text) {
    try {
      Files.createDirectories(file.getParent());
      return Files.writeString(file, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
