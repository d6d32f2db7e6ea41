package trammel.planning.draft;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.material.PlateMaterial;
import trammel.engine.checks.AnalysisSettings;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Limit;
import trammel.engine.checks.NotchedRail;
import trammel.engine.checks.RailGap;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Rails;
import trammel.planning.catalog.Catalog;
import trammel.reading.quantity.QuantityPrinter;

/**
 * Cuts a notch into the rails where the axle tube would come closer to them at full bump than the
 * limit allows: as deep as it takes, rounded up to a quarter inch, with cap and side plates of the
 * thinnest plate of the catalog, from 3/16 in up, that gives the rail back its section modulus, or
 * of the thickest where none does.
 */
final class NotchRule {
  /** 1/4 in, the step in which notches are made (mm). */
  static final double STEP_MM = 25.4 / 4;

  /** Thinnest plate for notches, 3/16 in: common practice, no source (mm). */
  private static final double PLATE_MM = 3 * 25.4 / 16;

  /** Thickest, 3/8 in: common practice, no source (mm). */
  private static final double THICKEST_PLATE_MM = 3 * 25.4 / 8;

  /** A lack of less than this is rounding, not a reason to cut a frame (mm). */
  private static final double ROUNDING_MM = 1e-6;

  private final QuantityPrinter print;
  private final Limit axleToRail;
  private final AnalysisSettings settings;
  private final Limit railModulus;
  private final List<Double> platesMm = new ArrayList<>();

  /**
   * @param limits the limits of the checks; that on the gap from axle to rail asks for a notch
   * @param catalog the plates to choose from, and what the checks assume
   * @param print for messages
   */
  NotchRule(Map<String, Limit> limits, Catalog catalog, QuantityPrinter print) {
    this.print = print;
    axleToRail = limits.get("axle-to-rail");
    railModulus = limits.get("rail-modulus");
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
    double gapMm = RailGap.leastMm(new LayoutAnalysis(layout, settings));
    double lackMm = axleToRail.goodMin() - gapMm;
    if (!(lackMm > ROUNDING_MM)) {
      return layout;
    }
    double depthMm = Math.ceil((lackMm - ROUNDING_MM) / STEP_MM) * STEP_MM;
    double railMm = layout.chassis().rails().depthMm();
    if (depthMm >= railMm) {
      throw new UnworkableLayoutException(
          "The axle tube needs a notch "
              + print.length(depthMm)
              + " deep at full bump; a rail of "
              + print.length(railMm)
              + " depth takes less than that. Raise the frame at ride or ask for less bump"
              + " travel.");
    }
    Chassis chassis = layout.chassis();
    return layout.withChassis(chassis.withRails(plated(chassis, depthMm)));
  }

  private Rails plated(Chassis chassis, double depthMm) {
    double tubeMm = chassis.axle().tubeRadiusMm() + axleToRail.goodMin();
    Rails plated = chassis.rails();
    for (double plateMm : platesMm) {
      plated = chassis.rails().withNotch(depthMm, plateMm, plateMm, tubeMm + plateMm);
      if (NotchedRail.weakest(plated, NotchedRail.Load.BENDING).share() >= railModulus.goodMin()) {
        return plated;
      }
    }
    return plated;
  }
}
