package trammel.app.drawings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trammel.app.drawings.Paper.Anchor;
import trammel.assembly.CopePath;
import trammel.assembly.PlacedSeam;
import trammel.engine.geometry.Point3;
import trammel.planning.fitup.Bracket;
import trammel.reading.quantity.UnitSystem;
import trammel.trade.welding.SingleBevelGroove;
import trammel.trade.welding.SpotJoint;
import trammel.trade.welding.SquareGroove;
import trammel.trade.welding.VGroove;
import trammel.trade.welding.WeldJoint;
import trammel.trade.welding.WeldPlace;
import trammel.trade.welding.WeldSeam;

/**
 * A weld by its symbol (AWS A2.4, ISO 2553 system B): size and length at the sign of its kind,
 * below the line for the side that the arrow points to and above it for the other, a circle for all
 * round, a flag for a weld on the vehicle.
 *
 * @param name the line of the weld list
 * @param sign what kind of weld it is
 * @param size its size as it stands before the sign
 * @param length length of each as it stands after the sign; empty for a spot
 * @param places how many there are in this bracket
 * @param bothSides true if each place is welded on both of its sides
 * @param allRound true if it runs once round
 * @param onVehicle true if it is welded on the vehicle
 * @param at a point of it, in vehicle axes
 */
record WeldMark(
    String name,
    Sign sign,
    String size,
    String length,
    int places,
    boolean bothSides,
    boolean allRound,
    boolean onVehicle,
    Point3 at) {
  static final double ROW_MM = 10;
  static final double LINE_MM = 33;
  private static final double CHORD_MM = 0.5;
  private static final double LETTERS_MM = 2.3;
  private static final double LEG_MM = 2.6;
  private static final double TAIL_MM = 1.6;

  /** The strokes of a square groove stand so far apart. */
  private static final double STROKES_MM = 1.2;

  /** Two runs along one plate no further apart than this are its two sides (mm). */
  private static final double SIDES_APART_MM = 15;

  private static final double ALIKE_MM = 0.5;

  /** The kinds of welds that have a sign of their own. */
  enum Sign {
    /** A triangle, its upright leg always on the left. */
    FILLET,
    /** Two upright strokes: square edges. */
    SQUARE,
    /** An upright stroke on the left and a slanted one. */
    BEVEL,
    /** Two slanted strokes that meet on the line. */
    VEE,
    /** A box: a plug or a slot. */
    SPOT;

    static Sign of(WeldJoint joint) {
      if (joint instanceof SquareGroove) {
        return SQUARE;
      }
      if (joint instanceof SingleBevelGroove) {
        return BEVEL;
      }
      if (joint instanceof VGroove) {
        return VEE;
      }
      return joint instanceof SpotJoint ? SPOT : FILLET;
    }

    /**
     * The size of a groove is how deep it is welded: in brackets by AWS A2.4, after an s by ISO
     * 2553. That of a fillet is its leg, which ISO 2553 has after a z, since it measures some by
     * the throat, after an a.
     */
    String size(String length, UnitSystem units) {
      if (this == SPOT) {
        return length;
      }
      if (this == FILLET) {
        return units == UnitSystem.US ? length : "z" + length;
      }
      return units == UnitSystem.US ? "(" + length + ")" : "s" + length;
    }
  }

  /** The welds that hold the parts of a bracket to each other and to what it is set on. */
  static List<WeldMark> of(ShopJob job, Bracket bracket) {
    Set<String> own =
        new java.util.HashSet<>(bracket.parts().stream().map(span -> span.part().id()).toList());
    Map<String, List<PlacedSeam>> byName = new LinkedHashMap<>();
    for (PlacedSeam seam : job.assembly().seams()) {
      if (seam.run().parts().stream().anyMatch(own::contains)) {
        // Welds of one line that differ in length have a symbol each.
        long length = Math.round(seam.run().lengthMm() / ALIKE_MM / 2);
        byName.computeIfAbsent(seam.name() + "\n" + length, n -> new ArrayList<>()).add(seam);
      }
    }
    return byName.values().stream().map(seams -> mark(job, seams)).toList();
  }

  private static WeldMark mark(ShopJob job, List<PlacedSeam> seams) {
    PlacedSeam first = seams.get(0);
    List<Point3> points = first.run().path().points(CHORD_MM);
    boolean both =
        seams.size() % 2 == 0
            && seams.stream().skip(1).anyMatch(other -> isOtherSide(first, other));
    boolean round =
        first.run().path() instanceof CopePath
            || points.size() > 2
                && points.get(0).distanceMm(points.get(points.size() - 1)) < ALIKE_MM;
    WeldSeam line =
        job.plan().welds().stream()
            .filter(weld -> weld.name().equals(first.name()))
            .findFirst()
            .orElseThrow(() -> new IllegalStateException("no weld called " + first.name()));
    Sign sign = Sign.of(line.joint());
    return new WeldMark(
        Bracket.withoutSide(first.name()),
        sign,
        sign.size(job.length(first.sizeMm()), job.units()),
        sign == Sign.SPOT ? "" : job.length(first.run().lengthMm()),
        both ? seams.size() / 2 : seams.size(),
        both,
        round,
        line.place() == WeldPlace.VEHICLE,
        points.get(points.size() / 2));
  }

  private static boolean isOtherSide(PlacedSeam one, PlacedSeam other) {
    List<Point3> points = one.run().path().points(CHORD_MM);
    List<Point3> others = other.run().path().points(CHORD_MM);
    return one.run().parts().equals(other.run().parts())
        && one.run().onto().equals(other.run().onto())
        && points.get(points.size() / 2).distanceMm(others.get(others.size() / 2)) < SIDES_APART_MM;
  }

  /**
   * Draws it.
   *
   * @param x left end of its line
   * @param y height of its line
   * @param roomMm from there to the right, words and all
   * @param fromRight true if the arrow starts at the right end of the line
   */
  void drawOn(
      Paper paper,
      double x,
      double y,
      double roomMm,
      boolean fromRight,
      double arrowX,
      double arrowY) {
    double lineX = fromRight ? x + roomMm - LINE_MM : x;
    paper.line(lineX, y, lineX + LINE_MM, y, Pen.EXISTING);
    tail(paper, fromRight ? lineX : lineX + LINE_MM, y, fromRight ? -TAIL_MM : TAIL_MM);
    double kinkX = fromRight ? lineX + LINE_MM : lineX;
    arrow(paper, kinkX, y, arrowX, arrowY);
    if (allRound) {
      paper.disc(kinkX, y, 0.9, "none", Pen.EXISTING);
    }
    if (onVehicle) {
      double[] xs = {kinkX, kinkX + 2.2, kinkX};
      double[] ys = {y - 4.4, y - 3.5, y - 2.6};
      paper.line(kinkX, y, kinkX, y - 4.4, Pen.EXISTING);
      paper.area(xs, ys, "black", Pen.FINE);
    }
    double legX = lineX + 14;
    sign(paper, legX, y, 1);
    if (bothSides) {
      sign(paper, legX, y, -1);
    }
    double wordsX = fromRight ? x : lineX + LINE_MM + TAIL_MM + 1;
    double wordsMm = roomMm - LINE_MM - TAIL_MM - 2;
    String text = (places > 1 ? places + " x " : "") + name;
    double lineY = y - 0.6;
    for (String line : Paper.lines(text, LETTERS_MM, wordsMm)) {
      paper.text(wordsX, lineY, LETTERS_MM, Anchor.START, line);
      lineY += 2.8;
    }
  }

  /** What is said of a weld in words stands in the tail of its symbol. */
  private static void tail(Paper paper, double x, double y, double away) {
    paper.line(x, y, x + away, y - TAIL_MM, Pen.EXISTING);
    paper.line(x, y, x + away, y + TAIL_MM, Pen.EXISTING);
  }

  private void sign(Paper paper, double x, double y, int down) {
    double tipY = y + down * LEG_MM;
    double right = x + LEG_MM;
    switch (sign) {
      case FILLET -> {
        double[] xs = {x, x, right};
        double[] ys = {y, tipY, y};
        paper.area(xs, ys, "none", Pen.EXISTING);
      }
      case SPOT -> {
        double[] xs = {x, x, right, right};
        double[] ys = {y, tipY, tipY, y};
        paper.area(xs, ys, "none", Pen.EXISTING);
      }
      case SQUARE -> {
        double middle = x + LEG_MM / 2;
        paper.line(middle - STROKES_MM / 2, y, middle - STROKES_MM / 2, tipY, Pen.EXISTING);
        paper.line(middle + STROKES_MM / 2, y, middle + STROKES_MM / 2, tipY, Pen.EXISTING);
      }
      case BEVEL -> {
        paper.line(x, y, x, tipY, Pen.EXISTING);
        paper.line(x, y, right, tipY, Pen.EXISTING);
      }
      case VEE -> {
        paper.line(x + LEG_MM / 2, y, x, tipY, Pen.EXISTING);
        paper.line(x + LEG_MM / 2, y, right, tipY, Pen.EXISTING);
      }
    }
    double baseY = down > 0 ? y + LETTERS_MM + 0.2 : y - 0.7;
    paper.text(x - 0.8, baseY, LETTERS_MM, Anchor.END, size);
    if (!length.isEmpty()) {
      paper.text(right + 0.8, baseY, LETTERS_MM, Anchor.START, length);
    }
  }

  private static void arrow(Paper paper, double fromX, double fromY, double toX, double toY) {
    paper.line(fromX, fromY, toX, toY, Pen.FINE);
    double length = Math.max(0.1, Math.hypot(toX - fromX, toY - fromY));
    double ux = (toX - fromX) / length;
    double uy = (toY - fromY) / length;
    double[] xs = {toX, toX - 1.8 * ux + 0.5 * uy, toX - 1.8 * ux - 0.5 * uy};
    double[] ys = {toY, toY - 1.8 * uy - 0.5 * ux, toY - 1.8 * uy + 0.5 * ux};
    paper.area(xs, ys, "black", Pen.FINE);
  }
}
