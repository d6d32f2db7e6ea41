package trammel.planning.draft;

import java.util.List;
import java.util.Optional;
import trammel.engine.checks.Detail;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Measure;
import trammel.engine.checks.Reading;
import trammel.engine.layout.Masses;
import trammel.engine.loads.TyreLoadIndex;
import trammel.planning.catalog.PlanCheck;
import trammel.planning.job.Axle;
import trammel.planning.job.Tyre;

/**
 * What the rear carries at full load, or as it was weighed where nothing is said of a load, against
 * what its maker allows.
 *
 * @param check which of the two it is
 * @param allowedKg what is allowed (kg), if it is known
 * @param missing what to measure where it is not
 */
record RatedLoad(PlanCheck check, Optional<Double> allowedKg, String missing)
    implements CatalogCheck {

  /** The heavier rear tyre against its load index. */
  static RatedLoad ofTyre(Tyre tyre) {
    double divided = tyre.passengerOnTruck() ? TyreLoadIndex.PASSENGER_ON_TRUCK : 1;
    return new RatedLoad(
        PlanCheck.TYRE_LOAD,
        tyre.loadIndex().map(index -> TyreLoadIndex.kg(index) / divided),
        "the tyre's load index is not known; give measured.tyre.load_index");
  }

  /** Both rear tyres together against the axle's rating. */
  static RatedLoad ofAxle(Axle axle) {
    return new RatedLoad(
        PlanCheck.AXLE_RATING,
        axle.ratingKg(),
        "what the axle may carry is not known; give measured.axle.rating");
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    if (allowedKg.isEmpty()) {
      return new Reading.Unknown(missing);
    }
    Masses masses = analysis.layout().chassis().masses();
    Masses loaded = masses.payload().isNone() ? masses : masses.loaded();
    boolean left = loaded.rearLeftKg() > loaded.rearRightKg();
    double carriedKg =
        check == PlanCheck.TYRE_LOAD
            ? Math.max(loaded.rearLeftKg(), loaded.rearRightKg())
            : loaded.rearAxleKg();
    String state = masses.payload().isNone() ? "as weighed" : "at full load";
    return new Reading.Value(
        carriedKg / allowedKg.get(),
        check == PlanCheck.TYRE_LOAD ? (left ? "left, " : "right, ") + state : state,
        List.of(
            new Detail("it carries", Measure.MASS, carriedKg),
            new Detail("it may carry", Measure.MASS, allowedKg.get())));
  }

  @Override
  public String advice() {
    return check == PlanCheck.TYRE_LOAD
        ? "Fit tyres of a higher load index, or carry less."
        : "Carry less; stronger springs raise no axle's rating.";
  }
}
