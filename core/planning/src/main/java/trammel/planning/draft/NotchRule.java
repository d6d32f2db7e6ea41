package trammel.planning.draft;

import trammel.engine.checks.AnalysisSettings;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Limit;
import trammel.engine.checks.RailGap;
import trammel.engine.layout.Layout;

/**
 * Cuts a notch into the rails where the axle tube would come closer to them at full bump than the
 * limit allows: as deep as it takes, rounded up to a quarter inch.
 */
final class NotchRule {
  /** 1/4 in, the step in which notches are made (mm). */
  static final double STEP_MM = 25.4 / 4;

  /** A lack of less than this is rounding, not a reason to cut a frame (mm). */
  private static final double ROUNDING_MM = 1e-6;

  private final Limit axleToRail;
  private final AnalysisSettings settings;

  NotchRule(Limit axleToRail, AnalysisSettings settings) {
    this.axleToRail = axleToRail;
    this.settings = settings;
  }

  Layout notched(Layout layout) {
    double gapMm = RailGap.leastMm(new LayoutAnalysis(layout, settings));
    double lackMm = axleToRail.goodMin() - gapMm;
    if (!(lackMm > ROUNDING_MM)) {
      return layout;
    }
    double depthMm = Math.ceil((lackMm - ROUNDING_MM) / STEP_MM) * STEP_MM;
    return layout.withChassis(
        layout.chassis().withRails(layout.chassis().rails().withNotchDepth(depthMm)));
  }
}
