package trammel.planning.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import trammel.brackets.UnworkableLayoutException;
import trammel.engine.checks.Adjustment;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Reading;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Direction;
import trammel.engine.layout.Layout;
import trammel.planning.catalog.PlanCheck;

/**
 * Whether all that a layout asks for can be made: plates whose outlines can be cut, seams that can
 * be run, and room for every part. The value is the number of parts that cannot; planning ends at
 * the first, so it is 0 or 1.
 */
final class CanBeMade implements CatalogCheck {
  private final JobWork planning;

  CanBeMade(JobWork planning) {
    this.planning = planning;
  }

  @Override
  public PlanCheck check() {
    return PlanCheck.CAN_BE_MADE;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    try {
      planning.of(analysis.layout());
      return new Reading.Value(0, "");
    } catch (UnworkableLayoutException cannot) {
      return new Reading.Value(1, cannot.reason().asClause());
    }
  }

  /** A bar set higher or lower has other brackets; so have thinner and thicker plates. */
  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    List<Adjustment> adjustments = new ArrayList<>();
    Layout layout = analysis.layout();
    for (List<Bar> bars : List.of(layout.across(), layout.upper(), layout.lower())) {
      if (!bars.isEmpty()) {
        adjustments.add(new Adjustment.MoveBars(named(bars), Direction.UP));
      }
    }
    adjustments.add(new Adjustment.ThickenBrackets());
    adjustments.add(new Adjustment.ChangeBump());
    return adjustments;
  }

  private static Set<String> named(List<Bar> bars) {
    return bars.stream().map(Bar::name).collect(Collectors.toSet());
  }
}
