package trammel.planning.draft;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import trammel.engine.checks.Adjustment;
import trammel.engine.checks.Detail;
import trammel.engine.checks.DroopWalk;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Measure;
import trammel.engine.checks.Reading;
import trammel.engine.layout.Direction;
import trammel.engine.layout.End;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;
import trammel.planning.catalog.PlanCheck;

/**
 * How far a hanging axle falls on after the first thing that gave out: the shocks have travel left
 * at full droop, the axle falls through it when a wheel hangs in a hole or the vehicle on a lift,
 * and joints, spline and air springs must follow until a strap or a shock holds it.
 */
final class DroopEnd implements CatalogCheck {
  private final List<ChosenAddition> additions;

  DroopEnd(List<ChosenAddition> additions) {
    this.additions = List.copyOf(additions);
  }

  @Override
  public PlanCheck check() {
    return PlanCheck.DROOP_END;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    if (analysis.layout().shocks().isEmpty()) {
      return new Reading.NotApplicable("the layout has no separate shock");
    }
    DroopWalk.Found found = DroopWalk.of(analysis, strapMm(analysis));
    List<Detail> details = new ArrayList<>();
    for (DroopWalk.Event event : found.before()) {
      details.add(detail(event));
    }
    details.add(detail(found.end()));
    if (found.before().isEmpty()) {
      return new Reading.Value(0, found.end().what(), details);
    }
    DroopWalk.Event first = found.before().get(0);
    return new Reading.Value(
        found.end().droopMm() - first.droopMm(),
        first.what() + " before " + found.end().what(),
        details);
  }

  private static Detail detail(DroopWalk.Event event) {
    return new Detail(event.what() + ", below ride:", Measure.LENGTH, event.droopMm());
  }

  private OptionalDouble strapMm(LayoutAnalysis analysis) {
    return additions.stream()
        .map(one -> one.addition().endOfDroopMm(analysis, one.site()))
        .filter(OptionalDouble::isPresent)
        .mapToDouble(OptionalDouble::getAsDouble)
        .min();
  }

  @Override
  public String advice() {
    return "Fit straps that are tight before it, or a shock that is shorter when it is open.";
  }

  /** A shock whose upper mount stands higher is at its full length sooner. */
  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    Set<String> shocks = new LinkedHashSet<>();
    for (ShockUnit shock : analysis.layout().shocks()) {
      shocks.add(shock.name());
      for (SpringUnit spring : analysis.layout().springs()) {
        if (spring.frame().equals(shock.frame()) && spring.axle().equals(shock.axle())) {
          shocks.add(spring.name());
        }
      }
    }
    return List.of(new Adjustment.MoveEnds(shocks, End.FRAME, Direction.UP));
  }
}
