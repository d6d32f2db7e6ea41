package trammel.app.drawings;

import java.util.ArrayList;
import java.util.List;

/**
 * A page in millimetres that takes a drawing, whatever file it ends in. x runs to the right and y
 * down from the upper left corner.
 */
public interface Paper {
  /**
   * Width of a drawing that stands in a document (mm): the body of A4, 210 mm less a margin of 14
   * mm on each side, which is narrower than that of Letter.
   */
  double BODY_WIDTH_MM = 182;

  /** Where a text stands against its point. */
  enum Anchor {
    /** The text begins there. */
    START("start"),
    /** The text's middle is there. */
    MIDDLE("middle"),
    /** The text ends there. */
    END("end");

    private final String word;

    Anchor(String word) {
      this.word = word;
    }

    String word() {
      return word;
    }
  }

  /** A straight line. */
  Paper line(double x1, double y1, double x2, double y2, Pen pen);

  /** A rectangle, not filled. */
  Paper frame(double x, double y, double width, double height, Pen pen);

  /** A line through points. */
  Paper path(double[] xs, double[] ys, Pen pen);

  /** A filled area with a line round it. */
  Paper area(double[] xs, double[] ys, String fill, Pen pen);

  /** A circle, filled. */
  Paper disc(double x, double y, double radius, String fill, Pen pen);

  /** A text; its base line runs through y. */
  Paper text(double x, double y, double sizeMm, Anchor anchor, String text);

  /** A text that is read from the right-hand side of the paper. */
  Paper upright(double x, double y, double sizeMm, String text);

  /** About how wide a text is (mm), a little more rather than less. */
  static double widthMm(String text, double sizeMm) {
    double letters = 0;
    for (int i = 0; i < text.length(); i++) {
      letters += wideness(text.charAt(i));
    }
    return letters * sizeMm;
  }

  /** The size of letters, at most so large, at which a text takes no more than some room (mm). */
  static double fitting(String text, double mostMm, double roomMm) {
    return Math.min(mostMm, mostMm * roomMm / Math.max(1, widthMm(text, mostMm)));
  }

  /** A text in lines of some width (mm), broken between words; a longer word within itself. */
  static List<String> lines(String text, double sizeMm, double roomMm) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.split(" ")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (widthMm(longer, sizeMm) <= roomMm) {
        line = longer;
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line);
      }
      line = word;
      while (widthMm(line, sizeMm) > roomMm && line.length() > 1) {
        int fits = line.length() - 1;
        while (fits > 1 && widthMm(line.substring(0, fits), sizeMm) > roomMm) {
          fits--;
        }
        lines.add(line.substring(0, fits));
        line = line.substring(fits);
      }
    }
    lines.add(line);
    return lines;
  }

  /** A text in so many lines at most (mm); what has no room in the last is cut short. */
  static List<String> lines(String text, double sizeMm, double roomMm, int most) {
    List<String> lines = lines(text, sizeMm, roomMm);
    if (lines.size() <= most) {
      return lines;
    }
    List<String> kept = new ArrayList<>(lines.subList(0, most - 1));
    kept.add(cut(String.join(" ", lines.subList(most - 1, lines.size())), sizeMm, roomMm));
    return kept;
  }

  /** A text, cut short with an ellipsis where it takes more than some room (mm). */
  static String cut(String text, double sizeMm, double roomMm) {
    String cut = text;
    while (widthMm(cut, sizeMm) > roomMm && cut.length() > 1) {
      cut = cut.substring(0, cut.length() - (cut.endsWith("…") ? 2 : 1)) + "…";
    }
    return cut;
  }

  private static double wideness(char letter) {
    if (letter == 'W' || letter == 'M' || letter == '@' || letter == '%' || letter > 0x24ff) {
      return 1;
    }
    if (letter == ' ' || letter == '.' || letter == ',' || letter == '\'') {
      return 0.34;
    }
    return Character.isUpperCase(letter) ? 0.78 : 0.64;
  }
}
