package trammel.app.drawings;

import java.util.Optional;
import trammel.assembly.view.SeenLine;

/** Cuts lines off at the edges of a picture. */
final class Clip {
  private Clip() {}

  /** The piece of a line within a window (Liang and Barsky, A new concept for clipping, 1984). */
  static Optional<SeenLine> within(
      double left, double bottom, double right, double top, SeenLine line) {
    double[] span = {0, 1};
    double dx = line.toX() - line.fromX();
    double dy = line.toY() - line.fromY();
    boolean some =
        clips(-dx, line.fromX() - left, span)
            && clips(dx, right - line.fromX(), span)
            && clips(-dy, line.fromY() - bottom, span)
            && clips(dy, top - line.fromY(), span);
    return some ? Optional.of(line.piece(span[0], span[1], line.hidden())) : Optional.empty();
  }

  private static boolean clips(double outwards, double room, double[] span) {
    if (outwards == 0) {
      return room >= 0;
    }
    double at = room / outwards;
    if (outwards < 0) {
      span[0] = Math.max(span[0], at);
    } else {
      span[1] = Math.min(span[1], at);
    }
    return span[0] < span[1];
  }
}
