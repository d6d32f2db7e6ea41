package trammel.planning.catalog;

import java.util.Objects;
import trammel.engine.quantity.Given;

/**
 * What a plugin brings to the catalog, in the file {@value #FILE} of its jar: the items and
 * operations that its plans ask for and that no shop has yet. It is written like any file of a
 * catalog. It only adds: an entry that is there already is not a plugin's to change. The shop's own
 * catalog is read over it.
 *
 * @param plugin what messages call the plugin: the name of its jar
 * @param text the file
 */
public record PluginCatalog(String plugin, String text) {
  /** Path of the file in the jar. */
  public static final String FILE = "META-INF/trammel-catalog.yaml";

  public PluginCatalog {
    Given.text("name of a plugin", plugin, "Give that of its jar.");
    Objects.requireNonNull(text, "text");
  }

  /** The name of the file, as messages say it. */
  String fileName() {
    return plugin + "/" + FILE;
  }
}
