package trammel.trade.plates;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import trammel.trade.given.Dimension;

/**
 * The cut edge of a plate: one outer path and its holes, in the plate's own axes, mm. The outer
 * path is kept anticlockwise. Holes lie wholly inside and apart from each other.
 */
public record Outline(Loop outer, List<Hole> holes) {
  private static final double WRITING_MM = 0.5;

  public Outline {
    outer = outer.isAnticlockwise() ? outer : outer.reversed();
    holes = List.copyOf(holes);
    List<Loop> loops = loopsOf(holes);
    for (int i = 0; i < loops.size(); i++) {
      requireInside(outer, loops.get(i), i);
      for (int j = 0; j < i; j++) {
        requireApart(loops.get(j), loops.get(i), j, i);
      }
    }
  }

  /** An outline without holes. */
  public static Outline solid(Loop outer) {
    return new Outline(outer, List.of());
  }

  private static List<Loop> loopsOf(List<Hole> holes) {
    List<Loop> loops = new ArrayList<>(holes.size());
    for (Hole hole : holes) {
      loops.add(hole.loop());
    }
    return loops;
  }

  private static void requireInside(Loop outer, Loop hole, int index) {
    boolean inside = outer.contains(hole.edges().get(0).from());
    if (!inside || outer.distanceMm(hole) <= 0.0) {
      throw new IllegalArgumentException(
          "Hole "
              + (index + 1)
              + " at "
              + middleText(hole)
              + " is not wholly inside the plate; it must be.\n"
              + "Move the hole inwards or make the plate larger there.");
    }
  }

  private static void requireApart(Loop one, Loop other, int oneIndex, int otherIndex) {
    boolean nested =
        one.contains(other.edges().get(0).from()) || other.contains(one.edges().get(0).from());
    if (nested || one.distanceMm(other) <= 0.0) {
      throw new IllegalArgumentException(
          "Hole "
              + (oneIndex + 1)
              + " at "
              + middleText(one)
              + " and hole "
              + (otherIndex + 1)
              + " at "
              + middleText(other)
              + " run into each other; holes must be apart.\nUse a larger pitch or smaller holes.");
    }
  }

  private static String middleText(Loop loop) {
    Bounds bounds = loop.bounds();
    return "("
        + Dimension.numberText((bounds.minXMm() + bounds.maxXMm()) / 2.0)
        + ", "
        + Dimension.numberText((bounds.minYMm() + bounds.maxYMm()) / 2.0)
        + ") mm";
  }

  /** The cut paths of the holes, in order. */
  public List<Loop> holeLoops() {
    return List.copyOf(loopsOf(holes));
  }

  /** Area of metal, mm2: outer path less holes, exact for arcs. */
  public double areaMm2() {
    double area = outer.areaMm2();
    for (Hole hole : holes) {
      area -= hole.loop().areaMm2();
    }
    return area;
  }

  /** Length of all cut paths, holes included. */
  public double cutLengthMm() {
    double length = outer.lengthMm();
    for (Hole hole : holes) {
      length += hole.loop().lengthMm();
    }
    return length;
  }

  /** How often the torch must pierce: once a hole and once outside. */
  public int pierces() {
    return 1 + holes.size();
  }

  public Bounds bounds() {
    return outer.bounds();
  }

  /** Least metal between any hole and the outer edge or another hole; empty without holes. */
  public OptionalDouble minimumLigamentMm() {
    if (holes.isEmpty()) {
      return OptionalDouble.empty();
    }
    List<Loop> loops = loopsOf(holes);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < loops.size(); i++) {
      least = Math.min(least, outer.distanceMm(loops.get(i)));
      for (int j = 0; j < i; j++) {
        least = Math.min(least, loops.get(j).distanceMm(loops.get(i)));
      }
    }
    return OptionalDouble.of(least);
  }

  /** The outer path as a polygon; see {@link Loop#polygon}. */
  public List<Point2> polygon(double chordToleranceMm) {
    return outer.polygon(chordToleranceMm);
  }

  /** The holes as polygons; see {@link Loop#polygon}. */
  public List<List<Point2>> holePolygons(double chordToleranceMm) {
    List<List<Point2>> polygons = new ArrayList<>(holes.size());
    for (Hole hole : holes) {
      polygons.add(hole.loop().polygon(chordToleranceMm));
    }
    return polygons;
  }

  /** A place to write on: the middle of the widest run of metal half way up. */
  public Point2 middle() {
    double yMm = (bounds().minYMm() + bounds().maxYMm()) / 2;
    List<List<Point2>> polygons = new ArrayList<>(holePolygons(WRITING_MM));
    polygons.add(polygon(WRITING_MM));
    List<Double> crossings = CutSection.crossings(yMm, polygons);
    double widestMm = 0;
    double xMm = (bounds().minXMm() + bounds().maxXMm()) / 2;
    for (int i = 0; i + 1 < crossings.size(); i += 2) {
      double runMm = crossings.get(i + 1) - crossings.get(i);
      if (runMm > widestMm) {
        widestMm = runMm;
        xMm = crossings.get(i) + runMm / 2;
      }
    }
    return new Point2(xMm, yMm);
  }

  public Outline placed(Placement placement) {
    List<Hole> moved = new ArrayList<>(holes.size());
    for (Hole hole : holes) {
      moved.add(hole.placed(placement));
    }
    return new Outline(outer.placed(placement), moved);
  }

  /** The other hand of the plate. */
  public Outline mirrored() {
    return placed(Placement.mirror());
  }
}
