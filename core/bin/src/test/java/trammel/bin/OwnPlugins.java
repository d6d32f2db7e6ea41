package trammel.bin;

import java.util.List;
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
}
