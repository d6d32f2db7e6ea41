package trammel.engine.checks;

import java.util.List;
import trammel.engine.layout.Rails;

/**
 * What the rail keeps of its strength at the weakest station of its notch, as the plan cuts it,
 * over what it had.
 *
 * @param load what it is to resist
 */
record NotchStrength(String id, String title, NotchedRail.Load load) implements Check {
  private static final double KSI_MPA = 6.894757293;

  /** Stress ranges that never crack it, AISC 360 Appendix 3, Table A-3.1 (MPa). */
  private static final double PLAIN_RAIL_MPA = 24 * KSI_MPA;

  private static final double WELD_ENDS_MPA = 4.5 * KSI_MPA;

  @Override
  public Measure measure() {
    return Measure.SHARE;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    Rails rails = analysis.layout().chassis().rails();
    if (!(rails.notchDepthMm() > 0)) {
      return new Reading.NotApplicable("the rails are not notched");
    }
    NotchedRail.Weakest weakest = NotchedRail.weakest(rails, load);
    if (weakest.share() == 0) {
      return new Reading.Value(0, "over the axle, where the notch reaches the top flange");
    }
    return new Reading.Value(
        weakest.share(), "over the axle, where it is least", details(rails, weakest));
  }

  private List<Detail> details(Rails rails, NotchedRail.Weakest weakest) {
    Detail where =
        new Detail("each way from the middle of the notch", Measure.LENGTH, weakest.alongMm());
    Detail middle =
        new Detail("in the middle", Measure.SHARE, NotchedRail.inTheMiddle(rails, load));
    return load == NotchedRail.Load.BENDING
        ? List.of(
            where,
            middle,
            new Detail(
                "stress range that the weld ends stand for good (category E of AISC 360 Table"
                    + " A-3.1)",
                Measure.STRESS,
                WELD_ENDS_MPA),
            new Detail("a rail without welds (category A)", Measure.STRESS, PLAIN_RAIL_MPA))
        : List.of(where, middle);
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    return List.of();
  }

  @Override
  public String advice() {
    return "Let the plates rise above the rail (chosen.notch: raised). Or cut less: raise the frame"
        + " at ride (chosen.ride.rail_underside_at_axle) or ask for less"
        + " bump (chosen.ride.bump); or step the frame over the axle in place of a notch.";
  }
}
