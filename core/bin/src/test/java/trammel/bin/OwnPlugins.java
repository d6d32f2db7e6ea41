package trammel.bin;

import java.util.List;
import trammel.planning.extension.AxleLinkage;
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
}
