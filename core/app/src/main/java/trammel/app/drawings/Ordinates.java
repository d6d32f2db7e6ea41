package trammel.app.drawings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import trammel.app.drawings.Paper.Anchor;

/**
 * Dimensions along one edge of a view, each from the same datum, never chained: a hairline from the
 * point to the edge and the value there, spread so that no two values touch.
 */
final class Ordinates {
  private static final double LETTERS_MM = 2.5;
  private static final double APART_MM = 3.5;
  private static final double KINK_MM = 5;

  /** Points whose values read the same and lie closer than this share one line. */
  private static final double SAME_MM = 0.5;

  private final List<Entry> entries = new ArrayList<>();

  private record Entry(double at, double from, String text) {}

  /**
   * Adds a value.
   *
   * @param at where along the edge (mm on the paper)
   * @param from where the point is, square to the edge (mm on the paper)
   * @param text the value
   */
  void add(double at, double from, String text) {
    for (int i = 0; i < entries.size(); i++) {
      Entry entry = entries.get(i);
      if (entry.text.equals(text) && Math.abs(entry.at - at) < SAME_MM) {
        entries.set(i, new Entry(at, Math.min(from, entry.from), text));
        return;
      }
    }
    entries.add(new Entry(at, from, text));
  }

  /** Places for the values, in order, apart enough to be read and within the edge where it can. */
  private double[] places(double least, double greatest) {
    entries.sort(Comparator.comparingDouble(Entry::at));
    double[] places = new double[entries.size()];
    double before = least - APART_MM;
    for (int i = 0; i < places.length; i++) {
      places[i] = Math.max(entries.get(i).at, before + APART_MM);
      before = places[i];
    }
    double after = Math.max(greatest, least + (places.length - 1) * APART_MM) + APART_MM;
    for (int i = places.length - 1; i >= 0; i--) {
      places[i] = Math.min(places[i], after - APART_MM);
      after = places[i];
    }
    return places;
  }

  /** Draws them below a view; the values are read from the right. */
  void below(Paper paper, double edgeY, double leftX, double rightX) {
    double[] places = places(leftX, rightX);
    for (int i = 0; i < places.length; i++) {
      Entry entry = entries.get(i);
      paper.line(entry.at, entry.from, entry.at, edgeY, Pen.DIMENSION);
      paper.line(entry.at, edgeY, places[i], edgeY + KINK_MM, Pen.DIMENSION);
      double halfMm = Paper.widthMm(entry.text, LETTERS_MM) / 2;
      paper.upright(
          places[i] + LETTERS_MM / 3, edgeY + KINK_MM + halfMm + 0.6, LETTERS_MM, entry.text);
    }
  }

  /** Draws them to the right of a view. */
  void beside(Paper paper, double edgeX, double topY, double bottomY) {
    double[] places = places(topY, bottomY);
    for (int i = 0; i < places.length; i++) {
      Entry entry = entries.get(i);
      paper.line(entry.from, entry.at, edgeX, entry.at, Pen.DIMENSION);
      paper.line(edgeX, entry.at, edgeX + KINK_MM, places[i], Pen.DIMENSION);
      paper.text(
          edgeX + KINK_MM + 0.8, places[i] + LETTERS_MM / 3, LETTERS_MM, Anchor.START, entry.text);
    }
  }
}
