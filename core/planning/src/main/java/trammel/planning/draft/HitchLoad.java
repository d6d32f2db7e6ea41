package trammel.planning.draft;

import java.util.List;
import java.util.Optional;
import trammel.engine.checks.Detail;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Measure;
import trammel.engine.checks.Reading;
import trammel.engine.layout.Payload;
import trammel.planning.catalog.PlanCheck;
import trammel.planning.job.Hitch;

/**
 * What a trailer's tongue weighs, as a share of the trailer; what it puts on the axles counts among
 * the loads.
 *
 * @param hitch the hitch, if one is to be used
 */
record HitchLoad(Optional<Hitch> hitch) implements CatalogCheck {

  @Override
  public PlanCheck check() {
    return PlanCheck.HITCH;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    if (hitch.isEmpty()) {
      return new Reading.NotApplicable("no hitch is named");
    }
    double tongueKg = hitch.get().tongueKg();
    Payload onAxles =
        Payload.at(tongueKg, -hitch.get().behindMm(), analysis.layout().chassis().wheelbaseMm());
    return new Reading.Value(
        tongueKg / hitch.get().trailerKg(),
        "",
        List.of(
            new Detail("it puts on the rear axle", Measure.MASS, onAxles.rearKg()),
            new Detail("it takes off the front axle", Measure.MASS, -onAxles.frontKg())));
  }

  @Override
  public String advice() {
    return "Load the trailer further forward or back; a light tongue lets it sway.";
  }
}
