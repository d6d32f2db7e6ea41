package trammel.app.desk;

import trammel.app.commandline.Version;
import trammel.app.plugins.InstalledExtensions;
import trammel.app.plugins.PluginFolder;
import trammel.cutting.background.Background;
import trammel.planning.catalog.CatalogReader;

/**
 * What every job needs of the installed copy, whatever the command line says: its plugins and the
 * files of the standard catalog. Read in the background, so that it can start before the words of
 * the command are read. What is wrong with either is told when it is asked for.
 */
public final class EarlyReading {
  private final Installation installation;
  private final Background<CatalogReader> catalog;
  private final Background<InstalledExtensions> extensions;

  private EarlyReading(
      Installation installation,
      Background<CatalogReader> catalog,
      Background<InstalledExtensions> extensions) {
    this.installation = installation;
    this.catalog = catalog;
    this.extensions = extensions;
  }

  /** Starts reading. */
  public static EarlyReading start(Installation installation) {
    Background<CatalogReader> catalog =
        Background.start(() -> CatalogReader.begin(installation.standardCatalog()));
    PluginFolder folder = new PluginFolder(installation.plugins(), Version.text());
    Background<InstalledExtensions> extensions = Background.start(() -> folder.load());
    return new EarlyReading(installation, catalog, extensions);
  }

  /** The copy that it is read from. */
  Installation installation() {
    return installation;
  }

  /** The standard catalog, its files read; waited for. */
  CatalogReader catalog() {
    return catalog.get();
  }

  /** What the plugins folder yields; waited for. */
  InstalledExtensions extensions() {
    return extensions.get();
  }
}
