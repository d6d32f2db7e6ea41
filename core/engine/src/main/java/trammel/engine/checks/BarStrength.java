package trammel.engine.checks;

import java.util.List;
import trammel.engine.layout.Bar;
import trammel.engine.strength.Column;
import trammel.engine.strength.RoundTubeSection;
import trammel.engine.strength.SteelGrade;

/**
 * Least safety factor of the bars' tubes against yield in tension and against yield or buckling in
 * compression, over the load cases, at ride. A bar is taken as straight and pivoted at both ends.
 */
record BarStrength(String id, String title) implements Check {

  @Override
  public Measure measure() {
    return Measure.FACTOR;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    List<Bar> bars = analysis.layout().bars();
    return analysis.barForces().least(bars, (bar, tensionN) -> factor(bars.get(bar), tensionN));
  }

  private static double factor(Bar bar, double tensionN) {
    RoundTubeSection section =
        new RoundTubeSection(bar.tube().outsideDiameterMm(), bar.tube().wallMm());
    double yieldMPa = bar.tube().yieldMPa();
    if (tensionN > 0) {
      return yieldMPa * section.areaMm2() / tensionN;
    }
    SteelGrade steel = new SteelGrade(bar.name(), yieldMPa, yieldMPa, "tube of the layout");
    return Column.pivoted(section, bar.lengthMm(), steel).criticalLoadN() / -tensionN;
  }
}
