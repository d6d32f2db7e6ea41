package trammel.engine.checks;

import java.util.function.ToDoubleFunction;
import trammel.engine.layout.Rails;
import trammel.engine.strength.ChannelSection;
import trammel.engine.strength.FrameRail;
import trammel.engine.strength.NotchedSection;
import trammel.engine.strength.PlatedNotch;

/**
 * What a notch leaves of a rail's strength, as it is cut: the strip as wide as the rail's flange,
 * the side plates to their own outline, at stations along the notch and past its ends.
 */
public final class NotchedRail {
  /** Stations from the middle to the end of the side plates. */
  private static final int STATIONS = 40;

  /** What a section resists. */
  public enum Load {
    /** Bending upright. */
    BENDING(NotchedSection::bendingMm3),
    /** Shear upright. */
    SHEAR(NotchedSection::shearMm2),
    /** Twist. */
    TWIST(NotchedSection::twistMm3);

    private final ToDoubleFunction<NotchedSection> of;

    Load(ToDoubleFunction<NotchedSection> of) {
      this.of = of;
    }

    double of(NotchedSection section) {
      return of.applyAsDouble(section);
    }
  }

  /**
   * The weakest station.
   *
   * @param share what the rail keeps there of what it had
   * @param alongMm its distance from the middle of the notch (mm)
   */
  public record Weakest(double share, double alongMm) {}

  private NotchedRail() {}

  /**
   * The weakest station of a notched rail: share 1 without a notch, 0 where the cut reaches the top
   * flange.
   */
  public static Weakest weakest(Rails rails, Load load) {
    if (rails.cutDepthMm() == 0) {
      return new Weakest(1, 0);
    }
    if (rails.cutDepthMm() >= rails.depthMm() - rails.wallMm()) {
      return new Weakest(0, 0);
    }
    FrameRail rail = rail(rails);
    PlatedNotch notch = notch(rails);
    double whole = load.of(NotchedSection.whole(rail));
    Weakest weakest = new Weakest(Double.POSITIVE_INFINITY, 0);
    for (int i = 0; i <= STATIONS; i++) {
      double alongMm = notch.endMm() * i / STATIONS;
      double share = load.of(NotchedSection.at(rail, notch, alongMm)) / whole;
      if (share < weakest.share()) {
        weakest = new Weakest(share, alongMm);
      }
    }
    return weakest;
  }

  /** What is left in the middle of the notch. */
  public static double inTheMiddle(Rails rails, Load load) {
    FrameRail rail = rail(rails);
    return load.of(NotchedSection.at(rail, notch(rails), 0)) / load.of(NotchedSection.whole(rail));
  }

  /** The rail before it was cut. */
  private static FrameRail rail(Rails rails) {
    double closedMm = rails.boxed() ? rails.wallMm() : 0;
    return new FrameRail(
        new ChannelSection(
            rails.depthMm(), rails.flangeMm() - closedMm, rails.wallMm(), rails.wallMm()),
        closedMm);
  }

  /** The notch as it is cut and plated; rails that name no radius are cut in a half circle. */
  public static PlatedNotch notch(Rails rails) {
    return new PlatedNotch(
        rails.depthMm(),
        rails.cutDepthMm(),
        Math.max(rails.notchRadiusMm(), rails.cutDepthMm()),
        rails.notchCapMm(),
        rails.flangeMm(),
        rails.notchSidePlateMm(),
        rails.notchRiseMm());
  }
}
