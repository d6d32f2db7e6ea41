package trammel.engine.checks;

import trammel.engine.layout.Rails;
import trammel.engine.strength.ChannelSection;
import trammel.engine.strength.FrameRail;
import trammel.engine.strength.RailNotch;

/**
 * What a notch leaves of a rail's strength in bending. A cap plate lines the cut; a side plate lies
 * on each side of the rail from the cut to its top, and on a channel the inner one closes it.
 */
public final class NotchedRail {
  private NotchedRail() {}

  /**
   * Section modulus of the rail in the middle of its notch, plates included, over that of the rail
   * as it was: 1 without a notch, 0 where the cut reaches the top flange.
   */
  public static double modulusRatio(Rails rails) {
    double cutMm = rails.cutDepthMm();
    if (cutMm == 0) {
      return 1;
    }
    if (cutMm >= rails.depthMm() - rails.wallMm()) {
      return 0;
    }
    double closedMm = rails.boxed() ? rails.wallMm() : 0;
    ChannelSection channel =
        new ChannelSection(
            rails.depthMm(), rails.flangeMm() - closedMm, rails.wallMm(), rails.wallMm());
    FrameRail original = new FrameRail(channel, closedMm);
    FrameRail worked = new FrameRail(channel, closedMm + rails.notchSidePlateMm());
    RailNotch notch =
        new RailNotch(
            RailNotch.Shape.CIRCULAR,
            cutMm,
            2 * cutMm,
            rails.notchCapMm(),
            rails.notchSidePlateMm());
    return notch.modulusRatio(original, worked);
  }
}
