package trammel.engine.checks;

import java.util.List;
import trammel.engine.quantity.Gravity;
import trammel.engine.springs.BumpStop;

/**
 * Room that is left between axle tube and rail when both wheels meet their bump stops at speed. The
 * stop, as the plan sets it, is met a third of the bump travel before full bump.
 */
public record BumpStopRoom(String id, String title) implements Check {
  /** The stop takes up the last third of the bump travel: common practice, no source. */
  private static final double SHARE = 1.0 / 3;

  @Override
  public Measure measure() {
    return Measure.LENGTH;
  }

  /**
   * The room that is left (mm), below 0 where the tube strikes the rail first.
   *
   * @param analysis of a layout with its springs
   */
  public static double roomMm(LayoutAnalysis analysis) {
    return Squeeze.of(analysis).roomMm();
  }

  /** Force of each stop on its rail when it has caught its wheel (N). */
  static double forceN(LayoutAnalysis analysis) {
    return Squeeze.of(analysis).forceN();
  }

  /** How far above ride each stop has caught its wheel (mm). */
  static double caughtAtMm(LayoutAnalysis analysis) {
    Squeeze squeeze = Squeeze.of(analysis);
    return squeeze.metAtMm() + squeeze.squeezedMm();
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    return reading(Squeeze.of(analysis));
  }

  /** What a squeeze leaves, with the figures behind it. */
  static Reading reading(Squeeze squeeze) {
    BumpStop stop = squeeze.stop();
    return new Reading.Value(
        squeeze.roomMm(),
        "both wheels",
        List.of(
            new Detail("energy of each side", Measure.ENERGY, stop.movingNmm(squeeze.sprungKg())),
            new Detail(
                "what each stop takes up of it",
                Measure.ENERGY,
                stop.energyNmm(squeeze.squeezedMm())),
            new Detail("stop squeezed by", Measure.LENGTH, squeeze.squeezedMm()),
            new Detail("force on each rail at its stop", Measure.FORCE, squeeze.forceN()),
            new Detail(
                "load that the body puts on the wheel then, times that at rest",
                Measure.FACTOR,
                squeeze.wheelShare())));
  }

  /**
   * One side's stop when it has caught its wheel.
   *
   * @param gapMm least gap from axle tube to rail at full bump
   * @param heldMm what of the bump travel the stop takes up
   * @param metAtMm where above ride it is met
   */
  record Squeeze(
      BumpStop stop,
      double sprungKg,
      double rateNPerMm,
      double gapMm,
      double heldMm,
      double metAtMm,
      double squeezedMm) {
    static Squeeze of(LayoutAnalysis analysis) {
      BumpStop stop = analysis.settings().bumpStop();
      double sprungKg = analysis.layout().chassis().masses().sprungPerRearCornerKg();
      double bumpMm = analysis.layout().chassis().travel().bumpMm();
      double heldMm = SHARE * bumpMm;
      double rateNPerMm = analysis.ride().rates().heaveNPerMm();
      double metAtMm = bumpMm - heldMm;
      double squeezedMm = stop.squeezedMm(sprungKg, rateNPerMm, metAtMm);
      return new Squeeze(
          stop, sprungKg, rateNPerMm, RailGap.leastMm(analysis), heldMm, metAtMm, squeezedMm);
    }

    /** At full load: there is more to catch, and coils have sagged towards the stop by then. */
    static Squeeze atFullLoad(LayoutAnalysis empty, LayoutAnalysis loaded) {
      Squeeze unladen = of(empty);
      double sprungKg = loaded.layout().chassis().masses().sprungPerRearCornerKg();
      double rateNPerMm = loaded.ride().rates().heaveNPerMm();
      double metAtMm = Math.max(0, unladen.metAtMm - FullLoad.sagMm(empty));
      return new Squeeze(
          unladen.stop,
          sprungKg,
          rateNPerMm,
          unladen.gapMm,
          unladen.heldMm,
          metAtMm,
          unladen.stop.squeezedMm(sprungKg, rateNPerMm, metAtMm));
    }

    double roomMm() {
      return gapMm + heldMm - squeezedMm;
    }

    double forceN() {
      return stop.forceN(squeezedMm);
    }

    double wheelShare() {
      double restN = sprungKg * Gravity.M_PER_S2;
      return (restN + rateNPerMm * (metAtMm + squeezedMm) + forceN()) / restN;
    }
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
