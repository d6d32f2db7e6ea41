package trammel.app.drawings;

import java.util.List;
import java.util.stream.DoubleStream;
import trammel.assembly.view.SeenLine;

/**
 * How far lines reach in a view (mm of what is drawn); all 0 where there are none.
 *
 * @param left least across
 * @param right most across
 * @param bottom least up
 * @param top most up
 */
record LineReach(double left, double right, double bottom, double top) {
  /** How far all of them reach. */
  static LineReach of(List<SeenLine> lines) {
    if (lines.isEmpty()) {
      return new LineReach(0, 0, 0, 0);
    }
    var across =
        lines.stream()
            .flatMapToDouble(line -> DoubleStream.of(line.fromX(), line.toX()))
            .summaryStatistics();
    var up =
        lines.stream()
            .flatMapToDouble(line -> DoubleStream.of(line.fromY(), line.toY()))
            .summaryStatistics();
    return new LineReach(across.getMin(), across.getMax(), up.getMin(), up.getMax());
  }

  double width() {
    return right - left;
  }

  double height() {
    return top - bottom;
  }
}
