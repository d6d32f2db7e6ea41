package trammel.engine.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import trammel.engine.layout.Bar;
import trammel.engine.layout.BarRole;
import trammel.engine.layout.Direction;
import trammel.engine.layout.End;

/** Difference in length between the bars of one kind, left to right. */
record BarLengthMatch(String id, String title, BarRole role) implements Check {

  @Override
  public Measure measure() {
    return Measure.LENGTH;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    List<Bar> bars = analysis.layout().bars(role);
    if (bars.size() < 2) {
      return new Reading.NotApplicable("there is no pair of such bars");
    }
    Bar shortest = bars.get(0);
    Bar longest = bars.get(0);
    for (Bar bar : bars) {
      shortest = bar.lengthMm() < shortest.lengthMm() ? bar : shortest;
      longest = bar.lengthMm() > longest.lengthMm() ? bar : longest;
    }
    return new Reading.Value(
        longest.lengthMm() - shortest.lengthMm(), longest.name() + " is the longest");
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    List<Adjustment> adjustments = new ArrayList<>();
    for (Bar bar : analysis.layout().bars(role)) {
      adjustments.add(new Adjustment.MoveEnds(Set.of(bar.name()), End.FRAME, Direction.FORWARD));
    }
    return adjustments;
  }
}
