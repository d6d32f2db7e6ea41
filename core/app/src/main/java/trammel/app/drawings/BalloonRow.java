package trammel.app.drawings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import trammel.app.drawings.Paper.Anchor;

/** Numbers in a row above a view, each led to its part; in the order of the parts, so apart. */
final class BalloonRow {
  private static final double RADIUS_MM = 2.3;
  private static final double APART_MM = 5.4;
  private static final double LETTERS_MM = 2.3;

  private final List<Target> targets = new ArrayList<>();

  private record Target(String number, double x, double y) {}

  /** Adds a number for a place on the paper. */
  void add(String number, double x, double y) {
    targets.add(new Target(number, x, y));
  }

  /** How many there are. */
  int size() {
    return targets.size();
  }

  /** Most that find room side by side. */
  static int room(double widthMm) {
    return (int) Math.floor(widthMm / APART_MM);
  }

  /** Draws them with their middles at a height, from one edge of the view to the other. */
  void drawOn(Paper paper, double y, double leftX, double rightX) {
    targets.sort(Comparator.comparingDouble(Target::x));
    double[] places = new double[targets.size()];
    double before = leftX - APART_MM + RADIUS_MM;
    for (int i = 0; i < places.length; i++) {
      places[i] = Math.max(targets.get(i).x(), before + APART_MM);
      before = places[i];
    }
    double after = rightX - RADIUS_MM + APART_MM;
    for (int i = places.length - 1; i >= 0; i--) {
      places[i] = Math.min(places[i], after - APART_MM);
      after = places[i];
    }
    for (int i = 0; i < places.length; i++) {
      Target target = targets.get(i);
      paper.line(places[i], y + RADIUS_MM, target.x(), target.y(), Pen.FINE);
      paper.disc(target.x(), target.y(), 0.4, "black", Pen.FINE);
      paper.disc(places[i], y, RADIUS_MM, "white", Pen.FRAME);
      paper.text(places[i], y + LETTERS_MM / 3, LETTERS_MM, Anchor.MIDDLE, target.number());
    }
  }
}
