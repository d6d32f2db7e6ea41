package trammel.engine.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Direction;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;

/** Difference in length between the bars of one kind, left to right. */
record BarLengthMatch(String id, String title, Function<Layout, List<Bar>> which) implements Check {

  @Override
  public Measure measure() {
    return Measure.LENGTH;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    List<Bar> bars = which.apply(analysis.layout());
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
    for (Bar bar : which.apply(analysis.layout())) {
      adjustments.add(new Adjustment.MoveEnds(Set.of(bar.name()), End.FRAME, Direction.FORWARD));
    }
    return adjustments;
  }
}
