package trammel.planning.draft;

import java.util.List;
import trammel.brackets.bar.JointSeat;
import trammel.engine.checks.Adjustment;
import trammel.engine.checks.BarForces;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Reading;
import trammel.engine.layout.Bar;
import trammel.engine.layout.BracketPlate;
import trammel.engine.layout.Joint;
import trammel.engine.strength.PinnedJoint;
import trammel.engine.strength.SteelGrade;
import trammel.planning.catalog.PlanCheck;

/**
 * Largest force in a bar over the load cases, as a share of what the two plates of its bracket may
 * bear at the bolt: crushing of the hole, tear-out to the edge, the metal beside the hole, the
 * whole width. Source: AISC 360-10, D5 and J7, allowable strength; see {@link PinnedJoint}.
 */
public final class BracketTabs implements CatalogCheck {
  private static final int PLATES = 2;

  @Override
  public PlanCheck check() {
    return PlanCheck.TABS;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    List<Bar> bars = analysis.layout().bars();
    double[] allowedN = new double[bars.size()];
    for (int i = 0; i < allowedN.length; i++) {
      Bar bar = bars.get(i);
      if (bar.bracket().isEmpty()) {
        return new Reading.NotApplicable("the plate of the brackets of " + bar.name());
      }
      allowedN[i] =
          Math.min(
              allowedN(bar.frameJoint(), bar.bracket().get()),
              allowedN(bar.axleJoint(), bar.bracket().get()));
    }
    return analysis
        .barForces()
        .greatest(
            bars,
            new BarForces.Rating() {
              @Override
              public double of(int bar, double tensionN) {
                return Math.abs(tensionN) / allowedN[bar];
              }
            });
  }

  /** Load that AISC 360 allows on both plates of a bracket at the bolt (N). */
  static double allowedN(Joint joint, BracketPlate plate) {
    JointSeat seat = new JointSeat(joint, plate.thicknessMm());
    return new PinnedJoint(
            plate.thicknessMm(),
            PLATES,
            joint.boltDiameterMm(),
            seat.holeMm(),
            seat.noseMm(),
            2 * seat.noseMm(),
            new SteelGrade("bracket plate", plate.yieldMPa(), plate.tensileMPa(), "catalog"))
        .allowableN();
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    return List.of(new Adjustment.ThickenBrackets());
  }
}
