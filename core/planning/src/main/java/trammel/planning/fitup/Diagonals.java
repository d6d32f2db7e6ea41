package trammel.planning.fitup;

import java.util.List;
import java.util.Optional;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Layout;

/**
 * The two lower bars between which the diagonals are taken.
 *
 * @param left name of the left one
 * @param right name of the right one
 */
record Diagonals(String left, String right) {

  static Optional<Diagonals> of(Layout layout) {
    List<Bar> lower = layout.lower();
    if (lower.size() != 2) {
      return Optional.empty();
    }
    Bar first = lower.get(0);
    Bar second = lower.get(1);
    return Optional.of(
        first.onLeft()
            ? new Diagonals(first.name(), second.name())
            : new Diagonals(second.name(), first.name()));
  }

  double leftToRightMm(Layout layout) {
    return layout
        .bar(left)
        .orElseThrow()
        .frame()
        .distanceMm(layout.bar(right).orElseThrow().axle());
  }

  double rightToLeftMm(Layout layout) {
    return layout
        .bar(right)
        .orElseThrow()
        .frame()
        .distanceMm(layout.bar(left).orElseThrow().axle());
  }
}
