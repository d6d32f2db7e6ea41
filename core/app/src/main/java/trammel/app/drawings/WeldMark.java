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
import trammel.trade.welding.WeldPlace;
import trammel.trade.welding.WeldSeam;

/**
 * A weld by its symbol (AWS A2.4, ISO 2553 system B): size and length at a fillet's triangle, below
 * the line for the side that the arrow points to and above it for the other, a circle for all
 * round, a flag for a weld on the vehicle.
 *
 * @param name the line of the weld list
 * @param sizeMm its leg (mm)
 * @param lengthMm length of each (mm)
 * @param places how many there are in this bracket
 * @param bothSides true if each place is welded on both of its sides
 * @param allRound true if it runs once round
 * @param onVehicle true if it is welded on the vehicle
 * @param at a point of it, in vehicle axes
 */
record WeldMark(
    String name,
    double sizeMm,
    double lengthMm,
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

  /** Two runs along one plate no further apart than this are its two sides (mm). */
  private static final double SIDES_APART_MM = 15;

  private static final double ALIKE_MM = 0.5;

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
    boolean onVehicle =
        job.plan().welds().stream()
            .filter(weld -> weld.name().equals(first.name()))
            .map(WeldSeam::place)
            .anyMatch(WeldPlace.VEHICLE::equals);
    return new WeldMark(
        Bracket.withoutSide(first.name()),
        first.sizeMm(),
        first.run().lengthMm(),
        both ? seams.size() / 2 : seams.size(),
        both,
        round,
        onVehicle,
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
      ShopJob job,
      double x,
      double y,
      double roomMm,
      boolean fromRight,
      double arrowX,
      double arrowY) {
    double lineX = fromRight ? x + roomMm - LINE_MM : x;
    paper.line(lineX, y, lineX + LINE_MM, y, Pen.EXISTING);
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
    triangle(paper, job, legX, y, 1);
    if (bothSides) {
      triangle(paper, job, legX, y, -1);
    }
    double wordsX = fromRight ? x : lineX + LINE_MM + 1.5;
    double wordsMm = roomMm - LINE_MM - 2.5;
    String text = (places > 1 ? places + " x " : "") + name;
    double lineY = y - 0.6;
    for (String line : Paper.lines(text, LETTERS_MM, wordsMm)) {
      paper.text(wordsX, lineY, LETTERS_MM, Anchor.START, line);
      lineY += 2.8;
    }
  }

  private void triangle(Paper paper, ShopJob job, double x, double y, int down) {
    double[] xs = {x, x, x + LEG_MM};
    double[] ys = {y, y + down * LEG_MM, y};
    paper.area(xs, ys, "none", Pen.EXISTING);
    double baseY = down > 0 ? y + LETTERS_MM + 0.2 : y - 0.7;
    paper.text(x - 0.8, baseY, LETTERS_MM, Anchor.END, job.length(sizeMm));
    paper.text(x + LEG_MM + 0.8, baseY, LETTERS_MM, Anchor.START, job.length(lengthMm));
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
