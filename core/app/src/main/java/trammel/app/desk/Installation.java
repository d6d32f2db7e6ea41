package trammel.app.desk;

import java.net.URI;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.List;
import java.util.Optional;
import trammel.app.commandline.CommandFailure;
import trammel.planning.catalog.StandardStock;

/**
 * The folders of an installed copy.
 *
 * @param home the folder with {@code lib}, {@code plugins} and {@code catalogs} in it
 */
public record Installation(Path home) {
  /** System property by which the launcher says where the copy is. */
  public static final String HOME_PROPERTY = "trammel.home";

  /**
   * The copy that is running: the one that the launcher says, else the one in whose {@code lib} the
   * program lies, as {@code java -jar lib/trammel-app.jar} starts it.
   *
   * @throws CommandFailure if it is neither
   */
  public static Installation running() {
    String told = System.getProperty(HOME_PROPERTY);
    Optional<Path> home = told == null ? ofProgram() : Optional.of(Path.of(told));
    return new Installation(
        home.filter(Files::isDirectory)
            .orElseThrow(
                () ->
                    CommandFailure.badInput(
                        "Trammel does not know where it is installed; start it by its launcher,"
                            + " bin/trammel, or as java -jar lib/trammel-app.jar.")));
  }

  private static Optional<Path> ofProgram() {
    try {
      CodeSource source = Installation.class.getProtectionDomain().getCodeSource();
      return Optional.ofNullable(source)
          .map(CodeSource::getLocation)
          .map(location -> Path.of(URI.create(location.toString())))
          .map(Path::getParent)
          .filter(lib -> lib.endsWith("lib"))
          .map(Path::getParent);
    } catch (IllegalArgumentException | FileSystemNotFoundException noFile) {
      return Optional.empty();
    }
  }

  /** The folder that plugins are dropped into. */
  public Path plugins() {
    return home.resolve("plugins");
  }

  /** The folder of the standard catalog. */
  public Path standardCatalog() {
    return home.resolve("catalogs").resolve("standard");
  }

  /** The folder with the files of the standard catalog that go by other sizes. */
  public Path stock(StandardStock stock) {
    return home.resolve("catalogs").resolve(stock.word());
  }

  /**
   * Folders for what is made once and used again, the best first: in the copy itself, whose other
   * users then have it too, and the user's own. Neither need be there or be writable.
   */
  public List<Path> caches() {
    String own = System.getenv("XDG_CACHE_HOME");
    Path user =
        own != null && Path.of(own).isAbsolute()
            ? Path.of(own)
            : Path.of(System.getProperty("user.home", ".")).resolve(".cache");
    return List.of(home.resolve("cache"), user.resolve("trammel").toAbsolutePath());
  }

  /** The program file that tells one build from another. */
  public Path program() {
    return home.resolve("lib").resolve("trammel-planning.jar");
  }
}
