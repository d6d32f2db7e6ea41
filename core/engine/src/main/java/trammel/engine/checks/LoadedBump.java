package trammel.engine.checks;

import java.util.List;

/** Bump travel that is left at full load: coils sag under it. */
record LoadedBump(String id, String title) implements Check {

  @Override
  public Measure measure() {
    return Measure.LENGTH;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    if (analysis.layout().chassis().masses().payload().isNone()) {
      return new Reading.Unknown(
          "nothing is said of what the vehicle carries; give measured.loads: driver, passengers,"
              + " fuel and what lies in the bed, each with its weight and how far it lies ahead of"
              + " the rear axle");
    }
    double sagMm = FullLoad.sagMm(analysis);
    return new Reading.Value(
        analysis.layout().chassis().travel().bumpMm() - sagMm,
        "",
        List.of(
            new Detail("it sags by", Measure.LENGTH, sagMm),
            new Detail(
                "under a load on the rear axle of",
                Measure.MASS,
                analysis.layout().chassis().masses().payload().rearKg())));
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    return List.of(new Adjustment.ChangeRate(), new Adjustment.ChangeBump());
  }

  @Override
  public String advice() {
    return "Fit stiffer coils or air springs, ask for more bump, or carry less.";
  }
}
