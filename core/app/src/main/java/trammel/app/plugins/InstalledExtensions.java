package trammel.app.plugins;

import java.util.ArrayList;
import java.util.List;
import trammel.planning.catalog.PluginCatalog;
import trammel.planning.draft.Extensions;

/**
 * What the plugins folder yields.
 *
 * @param extensions the linkages, spring mounts and additions that the jars list, by id; they run
 *     when they are asked
 * @param catalogs what the jars bring to the catalog, by the name of the jar
 * @param troubles a sentence for each jar or extension that was left out
 */
public record InstalledExtensions(
    Extensions extensions, List<PluginCatalog> catalogs, List<String> troubles) {
  public InstalledExtensions {
    catalogs = List.copyOf(catalogs);
    troubles = List.copyOf(troubles);
  }

  /** The same with more that was left out. */
  public InstalledExtensions withTroubles(List<String> more) {
    List<String> all = new ArrayList<>(troubles);
    all.addAll(more);
    return new InstalledExtensions(extensions, catalogs, all);
  }
}
