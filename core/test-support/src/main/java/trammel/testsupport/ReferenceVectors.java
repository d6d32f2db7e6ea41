package trammel.testsupport;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The reference vectors that come with the tests, as files; {@code reference/README.md} says where
 * they are from.
 */
public final class ReferenceVectors {
  private static final String ROOT = "/reference";

  private ReferenceVectors() {}

  /** The folder is found, or taken out of the jar, once. */
  private static final class Root {
    private static final Path FOLDER = find();

    private static Path find() {
      try {
        URI readme = ReferenceVectors.class.getResource(ROOT + "/README.md").toURI();
        return readme.getScheme().equals("file") ? Path.of(readme).getParent() : unpacked(readme);
      } catch (URISyntaxException | IOException unreadable) {
        throw new IllegalStateException("the reference vectors cannot be read", unreadable);
      }
    }

    private static Path unpacked(URI inJar) throws IOException {
      Path folder = Files.createTempDirectory("trammel-reference");
      try (FileSystem jar = FileSystems.newFileSystem(inJar, Map.of());
          Stream<Path> packed = Files.walk(jar.getPath(ROOT))) {
        for (Path from : packed.toList()) {
          Path to = folder.resolve(jar.getPath(ROOT).relativize(from).toString());
          if (Files.isDirectory(from)) {
            Files.createDirectories(to);
          } else {
            Files.copy(from, to);
          }
          to.toFile().deleteOnExit();
        }
      }
      folder.toFile().deleteOnExit();
      return folder;
    }
  }

  /**
   * A folder of vectors.
   *
   * @param name such as {@code motion} or {@code cutting/cut1d}
   * @throws IllegalArgumentException if there is none of that name
   */
  public static Path folder(String name) {
    Path folder = Root.FOLDER.resolve(name);
    if (!Files.isDirectory(folder)) {
      throw new IllegalArgumentException("There are no reference vectors '" + name + "'.");
    }
    return folder;
  }

  /** The JSON files of a folder in order of name. */
  public static List<Path> files(String name) {
    try (Stream<Path> files = Files.list(folder(name))) {
      return files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
