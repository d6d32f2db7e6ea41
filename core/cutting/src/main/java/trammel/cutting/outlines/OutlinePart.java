package trammel.cutting.outlines;

import java.util.List;
import trammel.cutting.internal.Quantities;

/**
 * A plate part by its true outline, and how often it is needed.
 *
 * @param id what the parts list calls it
 * @param outline corners in order, either way round, last not repeated; no side may cross another
 * @param turnsDeg ways round in which it may lie, degrees counter-clockwise about the origin of its
 *     drawing; at least one
 * @param quantity how many, at least 1
 */
public record OutlinePart(
    String id, List<OutlinePoint> outline, List<Double> turnsDeg, int quantity) {
  /**
   * @throws IllegalArgumentException when a value is impossible
   */
  public OutlinePart {
    Quantities.requireName(id, "a part");
    outline = List.copyOf(outline);
    turnsDeg = List.copyOf(turnsDeg);
    if (outline.size() < 3) {
      throw new IllegalArgumentException(
          "the outline of the part "
              + id
              + " has "
              + outline.size()
              + " corners; it must have 3 or more. Give every corner once, in order.");
    }
    if (turnsDeg.isEmpty()) {
      throw new IllegalArgumentException(
          "the part " + id + " may lie no way round; give at least one turn, such as 0 degrees.");
    }
    if (quantity < 1) {
      throw new IllegalArgumentException(
          "the part "
              + id
              + " is asked for "
              + quantity
              + " times; it must be 1 or more. Leave out parts that are not needed.");
    }
    requireSimple(id, outline);
  }

  private static void requireSimple(String id, List<OutlinePoint> outline) {
    int n = outline.size();
    for (int i = 0; i < n; i++) {
      for (int j = i + 2; j < n; j++) {
        boolean neighbours = i == 0 && j == n - 1;
        if (!neighbours
            && crosses(
                outline.get(i),
                outline.get((i + 1) % n),
                outline.get(j),
                outline.get((j + 1) % n))) {
          throw new IllegalArgumentException(
              "the outline of the part "
                  + id
                  + " crosses itself: side "
                  + (i + 1)
                  + " meets side "
                  + (j + 1)
                  + ". Give the corners in order around the part.");
        }
      }
    }
    if (Math.abs(area(outline)) == 0) {
      throw new IllegalArgumentException(
          "the outline of the part " + id + " encloses nothing. Check its corners.");
    }
  }

  private static boolean crosses(OutlinePoint a, OutlinePoint b, OutlinePoint c, OutlinePoint d) {
    return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
  }

  private static double side(OutlinePoint a, OutlinePoint b, OutlinePoint p) {
    return Math.signum(
        (b.xMm() - a.xMm()) * (p.yMm() - a.yMm()) - (b.yMm() - a.yMm()) * (p.xMm() - a.xMm()));
  }

  /** Signed area, mm²: positive when the corners run counter-clockwise. */
  private static double area(List<OutlinePoint> outline) {
    double twice = 0;
    for (int i = 0; i < outline.size(); i++) {
      OutlinePoint p = outline.get(i);
      OutlinePoint q = outline.get((i + 1) % outline.size());
      twice += p.xMm() * q.yMm() - q.xMm() * p.yMm();
    }
    return twice / 2;
  }

  /** Area inside the outline, mm². */
  public double areaMm2() {
    return Math.abs(area(outline));
  }
}
