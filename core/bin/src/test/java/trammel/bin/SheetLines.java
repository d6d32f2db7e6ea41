package trammel.bin;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The lines, rings and texts of one sheet, as its SVG has them. */
final class SheetLines {
  /** Width of a dimension line and of nothing else. */
  private static final String DIMENSION = "0.16";

  /** Lines that meet at an end do not cross (mm). */
  private static final double END_MM = 0.05;

  private static final double SQUARE_MM = 0.02;

  private static final Pattern LINE =
      Pattern.compile(
          "<line x1=\"([-.0-9]+)\" y1=\"([-.0-9]+)\" x2=\"([-.0-9]+)\" y2=\"([-.0-9]+)\""
              + " stroke=\"[^\"]*\" stroke-width=\"([.0-9]+)\"");
  private static final Pattern TEXT =
      Pattern.compile(
          "<text x=\"([-.0-9]+)\" y=\"([-.0-9]+)\"( transform[^>]*?)? font-family[^>]*"
              + " font-size=\"([.0-9]+)\" text-anchor=\"(\\w+)\">([^<]*)<");
  private static final Pattern RING =
      Pattern.compile("<circle cx=\"([-.0-9]+)\" cy=\"([-.0-9]+)\" r=\"([.0-9]+)\" fill=\"none\"");

  private final List<Line2D> dimensions = new ArrayList<>();
  private final List<Rectangle2D> rings = new ArrayList<>();
  private final List<Word> words = new ArrayList<>();

  private record Word(String text, Rectangle2D box) {}

  SheetLines(String svg) {
    Matcher lines = LINE.matcher(svg);
    while (lines.find()) {
      if (lines.group(5).equals(DIMENSION)) {
        dimensions.add(
            new Line2D.Double(
                number(lines, 1), number(lines, 2), number(lines, 3), number(lines, 4)));
      }
    }
    Matcher texts = TEXT.matcher(svg);
    while (texts.find()) {
      words.add(word(texts));
    }
    Matcher circles = RING.matcher(svg);
    while (circles.find()) {
      double radius = number(circles, 3);
      rings.add(
          new Rectangle2D.Double(
              number(circles, 1) - radius, number(circles, 2) - radius, 2 * radius, 2 * radius));
    }
  }

  private static double number(Matcher found, int group) {
    return Double.parseDouble(found.group(group));
  }

  /** Letters are half as wide as they are high, and stand 0.7 of their size over their line. */
  private static Word word(Matcher found) {
    double size = number(found, 4);
    String text = found.group(6).replaceAll("&[#\\w]+;", "'");
    double wide = 0.5 * size * text.length();
    double start = Map.of("start", 0.0, "middle", wide / 2, "end", wide).get(found.group(5));
    double x = number(found, 1);
    double y = number(found, 2);
    double high = 0.7 * size;
    return new Word(
        text,
        found.group(3) == null
            ? new Rectangle2D.Double(x - start, y - high, wide, high)
            : new Rectangle2D.Double(x - high, y - wide + start, high, wide));
  }

  /** How many dimension lines there are. */
  int count() {
    return dimensions.size();
  }

  /**
   * Dimension lines that cross each other. Only where one runs out to the side and one down, square
   * to each other and to the sheet, may they (ISO 129-1, ASME Y14.5: projection lines, where it
   * cannot be helped).
   */
  List<String> crossings() {
    List<String> crossings = new ArrayList<>();
    for (int i = 0; i < dimensions.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (cross(dimensions.get(i), dimensions.get(j))) {
          crossings.add(said(dimensions.get(i)) + " crosses " + said(dimensions.get(j)));
        }
      }
    }
    return crossings;
  }

  private static boolean cross(Line2D one, Line2D other) {
    boolean projections = isUpright(one) && isLevel(other) || isLevel(one) && isUpright(other);
    boolean meet =
        other.ptSegDist(one.getP1()) < END_MM
            || other.ptSegDist(one.getP2()) < END_MM
            || one.ptSegDist(other.getP1()) < END_MM
            || one.ptSegDist(other.getP2()) < END_MM;
    return !projections && !meet && one.intersectsLine(other);
  }

  private static boolean isUpright(Line2D line) {
    return Math.abs(line.getX1() - line.getX2()) < SQUARE_MM;
  }

  private static boolean isLevel(Line2D line) {
    return Math.abs(line.getY1() - line.getY2()) < SQUARE_MM;
  }

  /** Texts that a dimension line runs through. */
  List<String> struck() {
    List<String> struck = new ArrayList<>();
    for (Word word : words) {
      for (Line2D line : dimensions) {
        if (line.intersects(word.box)) {
          struck.add(word.text + " by " + said(line));
        }
      }
    }
    return struck;
  }

  /** Texts that a ring or a symbol's circle touches. */
  List<String> ringed() {
    List<String> ringed = new ArrayList<>();
    for (Word word : words) {
      for (Rectangle2D ring : rings) {
        if (ring.intersects(word.box)) {
          ringed.add(word.text);
        }
      }
    }
    return ringed;
  }

  private static String said(Line2D line) {
    return "(%.1f, %.1f to %.1f, %.1f)"
        .formatted(line.getX1(), line.getY1(), line.getX2(), line.getY2());
  }
}
