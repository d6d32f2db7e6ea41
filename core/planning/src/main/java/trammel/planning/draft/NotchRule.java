package trammel.planning.draft;

import static trammel.engine.quantity.Amount.length;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.material.PlateMaterial;
import trammel.engine.checks.AnalysisSettings;
import trammel.engine.checks.BumpStopRoom;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Limit;
import trammel.engine.checks.NotchedRail;
import trammel.engine.checks.RailGap;
import trammel.engine.clearance.Box;
import trammel.engine.clearance.Gap;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Rails;
import trammel.engine.quantity.Phrase;
import trammel.engine.strength.PlatedNotch;
import trammel.planning.catalog.Catalog;
import trammel.planning.job.NotchKind;

/**
 * Cuts a notch into the rails where the axle tube would come closer to them at full bump than the
 * limit allows, or strike them where the stops are met at speed: as deep as it takes, rounded up to
 * a quarter inch, with cap and side plates of the thinnest plate of the catalog, from 3/16 in up,
 * that gives the rail back its section, or of the thickest where none does. Where side plates as
 * high as the rail leave it a STOP, or where the job asks for it, they rise above it, joined by a
 * strip: no further than there is room over the rail.
 */
final class NotchRule {
  /** 1/4 in, the step in which notches are made (mm). */
  static final double STEP_MM = 25.4 / 4;

  /** Thinnest plate for notches, 3/16 in: common practice, no source (mm). */
  private static final double PLATE_MM = 3 * 25.4 / 16;

  /** Thickest, 3/8 in: common practice, no source (mm). */
  private static final double THICKEST_PLATE_MM = 3 * 25.4 / 8;

  /** Under the strip that joins raised plates over the rail, 1/4 in (mm). */
  private static final double UNDER_STRIP_MM = 25.4 / 4;

  /** Kept between a raised plate and what stands over the rail, 1/4 in (mm). */
  private static final double AIR_MM = 25.4 / 4;

  /** A lack of less than this is rounding, not a reason to cut a frame (mm). */
  private static final double ROUNDING_MM = 1e-6;

  private final Limit axleToRail;
  private final AnalysisSettings settings;
  private final Limit bumpStopRoom;
  private final Limit railModulus;
  private final Limit railShear;
  private final Limit railTorsion;
  private final Optional<NotchKind> asked;
  private final List<Double> platesMm = new ArrayList<>();

  /**
   * @param limits the limits of the checks; those on the gap from axle to rail and on the room when
   *     the bump stops are met at speed ask for a notch
   * @param catalog the plates to choose from, and what the checks assume
   * @param asked how the side plates are to stand to the rail, if the job says so
   */
  NotchRule(Map<String, Limit> limits, Catalog catalog, Optional<NotchKind> asked) {
    this.asked = asked;
    axleToRail = limits.get("axle-to-rail");
    bumpStopRoom = limits.get("bump-stop-room");
    railModulus = limits.get("rail-modulus");
    railShear = limits.get("rail-shear");
    railTorsion = limits.get("rail-torsion");
    settings = catalog.analysis();
    for (PlateMaterial plate : catalog.plates().values()) {
      double thicknessMm = plate.form().thicknessMm();
      if (thicknessMm > PLATE_MM - ROUNDING_MM && thicknessMm < THICKEST_PLATE_MM + ROUNDING_MM) {
        platesMm.add(thicknessMm);
      }
    }
    if (platesMm.isEmpty()) {
      platesMm.add(PLATE_MM);
    }
    Collections.sort(platesMm);
  }

  Layout notched(Layout layout) {
    double lackMm = lackMm(layout);
    if (!(lackMm > ROUNDING_MM)) {
      return layout;
    }
    double depthMm = steps(lackMm);
    double railMm = layout.chassis().rails().depthMm();
    if (depthMm >= railMm) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "The axle tube needs a notch {} deep at full bump; a rail of {} depth"
                  + " takes less than that. Raise the frame at ride or ask for less bump"
                  + " travel.",
              length(depthMm),
              length(railMm)));
    }
    Chassis chassis = layout.chassis();
    return layout.withChassis(chassis.withRails(plated(chassis, depthMm)));
  }

  /** What the tube lacks at full bump; at speed only as far as a notch can mend it. */
  private double lackMm(Layout layout) {
    LayoutAnalysis analysis = new LayoutAnalysis(layout, settings);
    double atBumpMm = axleToRail.goodMin() - RailGap.leastMm(analysis);
    double roomMm = BumpStopRoom.roomMm(analysis);
    double atSpeedMm = roomMm < bumpStopRoom.stopMin() ? bumpStopRoom.goodMin() - roomMm : 0;
    boolean canMend = steps(atSpeedMm) < layout.chassis().rails().depthMm();
    return canMend ? Math.max(atBumpMm, atSpeedMm) : atBumpMm;
  }

  private static double steps(double lackMm) {
    return Math.ceil((lackMm - ROUNDING_MM) / STEP_MM) * STEP_MM;
  }

  private Rails plated(Chassis chassis, double depthMm) {
    Rails flush = flush(chassis, depthMm);
    boolean isRaised =
        asked.isPresent() ? asked.get() == NotchKind.RAISED : worst(flush, Limit::stopMin) < 1;
    if (!isRaised) {
      return flush;
    }
    Rails raised = raised(chassis, flush);
    if (asked.isPresent() && raised.notchRiseMm() == 0) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "Side plates of a notch of {} cannot rise above the rail: the cut is too"
                  + " shallow for the strip that joins them, or something stands over the"
                  + " rail. Make the notch 'flush' or leave its kind to the vehicle.",
              length(depthMm)));
    }
    return raised;
  }

  private Rails flush(Chassis chassis, double depthMm) {
    Rails plated = chassis.rails();
    for (double plateMm : platesMm) {
      plated = lined(chassis, depthMm, plateMm);
      if (NotchedRail.weakest(plated, NotchedRail.Load.BENDING).share() >= railModulus.goodMin()) {
        return plated;
      }
    }
    return plated;
  }

  private Rails lined(Chassis chassis, double depthMm, double plateMm) {
    double radiusMm = chassis.axle().tubeRadiusMm() + axleToRail.goodMin() + plateMm;
    return chassis.rails().withNotch(depthMm, plateMm, plateMm, radiusMm);
  }

  /**
   * The thinnest plates that keep what the rail bears in bending, shear and twist, as low as they
   * may be; else those that keep it in bending and shear; else the best there are.
   */
  private Rails raised(Chassis chassis, Rails flush) {
    return keeping(chassis, flush, this::keeps)
        .or(() -> keeping(chassis, flush, rails -> worst(rails, Limit::goodMin) >= 1))
        .orElseGet(() -> strongest(chassis, flush));
  }

  private boolean keeps(Rails rails) {
    return worst(rails, Limit::goodMin) >= 1
        && NotchedRail.weakest(rails, NotchedRail.Load.TWIST).share() >= railTorsion.goodMin();
  }

  private Optional<Rails> keeping(Chassis chassis, Rails flush, Predicate<Rails> keeps) {
    for (double plateMm : platesMm) {
      Rails lined = lined(chassis, flush.notchDepthMm(), plateMm);
      double mostMm = mostRiseMm(chassis, lined);
      double riseMm = leastRiseMm(lined);
      if (riseMm <= mostMm && keeps.test(lined.withNotchRise(mostMm))) {
        while (riseMm < mostMm && !keeps.test(lined.withNotchRise(riseMm))) {
          riseMm += STEP_MM;
        }
        return Optional.of(lined.withNotchRise(Math.min(riseMm, mostMm)));
      }
    }
    return Optional.empty();
  }

  private Rails strongest(Chassis chassis, Rails flush) {
    Rails best = flush;
    for (double plateMm : platesMm) {
      Rails lined = lined(chassis, flush.notchDepthMm(), plateMm);
      double mostMm = mostRiseMm(chassis, lined);
      if (mostMm >= leastRiseMm(lined)) {
        Rails highest = lined.withNotchRise(mostMm);
        best = worst(highest, Limit::goodMin) > worst(best, Limit::goodMin) ? highest : best;
      }
    }
    return best;
  }

  private static double leastRiseMm(Rails lined) {
    return Math.ceil((lined.notchSidePlateMm() + UNDER_STRIP_MM) / STEP_MM - ROUNDING_MM) * STEP_MM;
  }

  /** The lesser of what bending and shear keep, each as a share of what its limit asks for. */
  private double worst(Rails rails, ToDoubleFunction<Limit> asks) {
    return Math.min(
        NotchedRail.weakest(rails, NotchedRail.Load.BENDING).share()
            / asks.applyAsDouble(railModulus),
        NotchedRail.weakest(rails, NotchedRail.Load.SHEAR).share() / asks.applyAsDouble(railShear));
  }

  /** As far as the rail is cut and nothing is over it; 0 where that is too little for a strip. */
  private double mostRiseMm(Chassis chassis, Rails lined) {
    double beneathMm = lined.cutDepthMm() - NotchedRail.notch(lined).rootMm();
    double riseMm = Math.floor(beneathMm / STEP_MM + ROUNDING_MM) * STEP_MM;
    double leastMm = leastRiseMm(lined);
    while (riseMm >= leastMm && !isFree(chassis, lined.withNotchRise(riseMm))) {
      riseMm -= STEP_MM;
    }
    return riseMm >= leastMm ? riseMm : 0;
  }

  private static boolean isFree(Chassis chassis, Rails raised) {
    PlatedNotch notch = NotchedRail.notch(raised);
    double plateMm = raised.notchSidePlateMm();
    for (int side : new int[] {1, -1}) {
      double innerMm = side * (raised.innerFaceMm(0) - plateMm);
      double outerMm = side * (raised.outerFaceMm(0) + plateMm);
      Box over =
          Box.between(
              -notch.endMm(),
              notch.endMm(),
              Math.min(innerMm, outerMm),
              Math.max(innerMm, outerMm),
              raised.topMm(0),
              raised.topMm(0) + raised.notchRiseMm());
      if (chassis.obstacles().stream()
          .anyMatch(obstacle -> Gap.isCloser(over, obstacle.shape(), AIR_MM))) {
        return false;
      }
    }
    return true;
  }
}
