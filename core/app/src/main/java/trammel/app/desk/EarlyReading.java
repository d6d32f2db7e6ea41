package trammel.app.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import trammel.app.commandline.Version;
import trammel.app.plugins.InstalledExtensions;
import trammel.app.plugins.PluginFolder;
import trammel.cutting.background.Background;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.catalog.PluginCatalog;
import trammel.planning.catalog.StandardStock;

/**
 * What every job needs of the installed copy, whatever the command line says: its plugins and the
 * files of the standard catalog. Read in the background, so that it can start before the words of
 * the command are read. What is wrong with either is told when it is asked for.
 */
public final class EarlyReading {
  private final Installation installation;
  private final Background<InstalledExtensions> found;
  private final Background<CatalogReader> catalog;
  private final Background<InstalledExtensions> extensions;

  private EarlyReading(
      Installation installation,
      Background<InstalledExtensions> found,
      Background<CatalogReader> catalog) {
    this.installation = installation;
    this.found = found;
    this.catalog = catalog;
    extensions = Background.start(() -> brought(found.get(), catalog.get()));
  }

  /** Starts reading. */
  public static EarlyReading start(Installation installation) {
    Background<CatalogReader> catalog = catalog(installation);
    PluginFolder folder = new PluginFolder(installation.plugins(), Version.text());
    return new EarlyReading(installation, Background.start(() -> folder.load()), catalog);
  }

  /** Starts reading the standard catalog once more, with the plugins that are loaded already. */
  public EarlyReading again() {
    return new EarlyReading(installation, found, catalog(installation));
  }

  private static Background<CatalogReader> catalog(Installation installation) {
    return Background.start(() -> CatalogReader.begin(installation.standardCatalog()));
  }

  /** Adds what the plugins bring to the catalog; what of it is left out joins the troubles. */
  private static InstalledExtensions brought(InstalledExtensions found, CatalogReader catalog) {
    List<String> leftOut = new ArrayList<>();
    for (PluginCatalog one : found.catalogs()) {
      catalog.bring(one).ifPresent(leftOut::add);
    }
    return found.withTroubles(leftOut);
  }

  /** The copy that it is read from. */
  public Installation installation() {
    return installation;
  }

  /**
   * The standard catalog with what plugins bring, its files read; waited for. It is read early by
   * inch sizes and can be finished once by them; by metric ones it is read when a shop says so.
   *
   * @param shop the shop's own folders
   */
  public CatalogReader catalog(List<Path> shop) {
    InstalledExtensions installed = extensions.get();
    StandardStock stock = StandardStock.of(shop);
    if (stock == StandardStock.INCH) {
      return catalog.get();
    }
    CatalogReader reader =
        CatalogReader.begin(installation.standardCatalog(), installation.stock(stock));
    // What of a plugin's entries does not fit was told with the inch sizes.
    installed.catalogs().forEach(reader::bring);
    return reader;
  }

  /** What the plugins folder yields; waited for. */
  InstalledExtensions extensions() {
    return extensions.get();
  }
}
