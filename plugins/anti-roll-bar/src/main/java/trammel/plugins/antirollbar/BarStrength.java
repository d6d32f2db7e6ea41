package trammel.plugins.antirollbar;

import java.util.List;
import java.util.Optional;
import trammel.engine.checks.Check;
import trammel.engine.checks.Detail;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Limit;
import trammel.engine.checks.Measure;
import trammel.engine.checks.Reading;
import trammel.engine.layout.AntiRollBar;
import trammel.engine.motion.AxlePose;
import trammel.planning.extension.LimitedCheck;
import trammel.planning.extension.Site;

/**
 * Safety factor of the anti-roll bar on yield, twisted as far as the wheels' travel lets it: shear
 * at its skin by von Mises.
 *
 * @param site the bar's options, catalog and units
 */
record BarStrength(Site site) implements Check {
  private static final double SHEAR_OF_YIELD = 1 / Math.sqrt(3);

  static LimitedCheck of(Site site) {
    return new LimitedCheck(
        new BarStrength(site), Limit.atLeast(1.5, 1.0, "common practice, no source"));
  }

  @Override
  public String id() {
    return "anti-roll-bar-strength";
  }

  @Override
  public String title() {
    return "safety factor of the anti-roll bar on yield, one wheel up and one down";
  }

  @Override
  public Measure measure() {
    return Measure.FACTOR;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    Optional<AntiRollBar> drawn = analysis.layout().antiRollBar();
    if (drawn.isEmpty()) {
      return new Reading.NotApplicable("the layout has no anti-roll bar");
    }
    AntiRollBar bar = drawn.get();
    double mostN = 0;
    String where = "";
    for (AxlePose pose : analysis.envelope()) {
      if (bar.forceN(pose) > mostN) {
        mostN = bar.forceN(pose);
        where = analysis.describe(pose);
      }
    }
    if (mostN == 0) {
      return new Reading.NotApplicable("the travel does not twist the bar");
    }
    double shearMPa = bar.size().shearMPa(mostN);
    double yieldMPa = site.options().get(BarOptions.YIELD);
    return new Reading.Value(
        SHEAR_OF_YIELD * yieldMPa / shearMPa,
        where,
        List.of(
            new Detail("force in each link", Measure.FORCE, mostN),
            new Detail("shear at the bar's skin", Measure.STRESS, shearMPa),
            new Detail("its steel yields at", Measure.STRESS, yieldMPa)));
  }

  @Override
  public String advice() {
    return "Take longer arms or a thinner bar in additions.anti-roll-bar, or ask for less travel.";
  }
}
