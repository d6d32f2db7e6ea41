package trammel.engine.checks;

import java.util.List;
import trammel.engine.layout.Masses;
import trammel.engine.quantity.Gravity;
import trammel.engine.springs.BumpStop;

/**
 * Room that is left between axle tube and rail when both wheels meet their bump stops at speed. The
 * stop, as the plan sets it, is met a third of the bump travel before full bump.
 */
record BumpStopRoom(String id, String title) implements Check {
  /** The stop takes up the last third of the bump travel: common practice, no source. */
  private static final double SHARE = 1.0 / 3;

  @Override
  public Measure measure() {
    return Measure.LENGTH;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    BumpStop stop = analysis.settings().bumpStop();
    Masses masses = analysis.layout().chassis().masses();
    double sprungKg = masses.sprungPerRearCornerKg();
    double bumpMm = analysis.layout().chassis().travel().bumpMm();
    double squeezeMm = SHARE * bumpMm;
    double rateNPerMm = analysis.ride().rates().heaveNPerMm();
    double metAtMm = bumpMm - squeezeMm;
    double squeezedMm = stop.squeezedMm(sprungKg, rateNPerMm, metAtMm);
    double forceN = stop.forceN(squeezedMm);
    double wheelN = sprungKg * Gravity.M_PER_S2 + rateNPerMm * (metAtMm + squeezedMm) + forceN;
    return new Reading.Value(
        RailGap.leastMm(analysis) + squeezeMm - squeezedMm,
        "both wheels",
        List.of(
            new Detail("energy of each side", Measure.ENERGY, stop.movingNmm(sprungKg)),
            new Detail("what each stop takes up of it", Measure.ENERGY, stop.energyNmm(squeezedMm)),
            new Detail("stop squeezed by", Measure.LENGTH, squeezedMm),
            new Detail("force on each rail at its stop", Measure.FORCE, forceN),
            new Detail(
                "load that the body puts on the wheel then, times that at rest",
                Measure.FACTOR,
                wheelN / (sprungKg * Gravity.M_PER_S2))));
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    return List.of(new Adjustment.ChangeBump());
  }

  @Override
  public String advice() {
    return "Fit a taller or stiffer bump stop, or stiffer springs; the stop's curve stands in the"
        + " catalog under analysis.bump_stop.";
  }
}
