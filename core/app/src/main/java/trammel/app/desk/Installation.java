package trammel.app.desk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import trammel.app.commandline.CommandFailure;

/**
 * The folders of an installed copy.
 *
 * @param home the folder with {@code lib}, {@code plugins} and {@code catalogs} in it
 */
public record Installation(Path home) {
  /** System property by which the launcher says where the copy is. */
  public static final String HOME_PROPERTY = "trammel.home";

  /**
   * The copy that is running.
   *
   * @throws CommandFailure if the launcher did not say where it is
   */
  public static Installation running() {
    String home = System.getProperty(HOME_PROPERTY);
    if (home == null || !Files.isDirectory(Path.of(home))) {
      throw CommandFailure.badInput(
          "Trammel does not know where it is installed; start it by its launcher, bin/trammel.");
    }
    return new Installation(Path.of(home));
  }

  /** The folder that plugins are dropped into. */
  public Path plugins() {
    return home.resolve("plugins");
  }

  /** The folder of the standard catalog. */
  public Path standardCatalog() {
    return home.resolve("catalogs").resolve("standard");
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
