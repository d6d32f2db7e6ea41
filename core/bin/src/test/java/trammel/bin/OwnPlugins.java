package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.catalog.PluginCatalog;
import trammel.planning.draft.Extensions;
import trammel.planning.extension.AxleLinkage;
import trammel.plugins.airspring.AirSpringMount;
import trammel.plugins.coilspring.CoilSpringMount;
import trammel.plugins.fourlinklateral.FourLinkLateral;
import trammel.plugins.threelink.ThreeLinkLateral;
import trammel.plugins.torquearm.TorqueArm;
import trammel.plugins.triangulated.Triangulated;
import trammel.plugins.wattslinkage.WattsLinkage;

/**
 * What the plugins of this repository bring, for tests that draft jobs without an installed copy.
 */
final class OwnPlugins {
  private OwnPlugins() {}

  /** Every linkage. */
  static List<AxleLinkage> linkages() {
    return List.of(
        new FourLinkLateral(),
        new ThreeLinkLateral(),
        new TorqueArm(),
        new Triangulated(),
        new WattsLinkage());
  }

  /** Every linkage with both springs, and no addition. */
  static Extensions extensions() {
    return new Extensions(linkages(), List.of(new CoilSpringMount(), new AirSpringMount()));
  }

  /** The standard catalog with what the additions bring to it. */
  static Catalog catalog() {
    CatalogReader reader = CatalogReader.begin(Path.of("..", "..", "catalogs", "standard"));
    try {
      for (String plugin : List.of("limiting-straps", "anti-roll-bar")) {
        Path own = Path.of("../../plugins", plugin, "src/main/resources", PluginCatalog.FILE);
        assertEquals(
            Optional.empty(), reader.bring(new PluginCatalog(plugin, Files.readString(own))));
      }
    } catch (IOException unread) {
      throw new UncheckedIOException(unread);
    }
    return reader.finish(List.of());
  }
}
