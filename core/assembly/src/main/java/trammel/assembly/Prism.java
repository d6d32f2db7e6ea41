package trammel.assembly;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.geometry.Point3;
import trammel.trade.given.Dimension;
import trammel.trade.plates.Belt;
import trammel.trade.plates.Disc;
import trammel.trade.plates.Loop;
import trammel.trade.plates.Outline;
import trammel.trade.plates.Point2;
import trammel.trade.plates.Window;

/**
 * An outline drawn out along its own z axis: a plate from its outline and thickness, a rectangular
 * tube from its section and length, a block. Its two ends are square, or slanted along x as a tube
 * is sawn off square.
 *
 * @param section the outline, the very one that is cut
 * @param lengthMm from z = 0 to here on the line x = 0 (mm), above 0
 * @param startSlope rise of the start face in z per x
 * @param endSlope rise of the end face in z per x
 */
public record Prism(Outline section, double lengthMm, double startSlope, double endSlope)
    implements Solid {
  /** Chords of the mesh stay this near to an arc (mm). */
  private static final double CHORD_MM = 0.1;

  /**
   * @throws IllegalArgumentException if the ends meet
   */
  public Prism {
    Dimension.positiveMm("length of a solid", lengthMm);
    Dimension.finiteMm("slope of its start", startSlope);
    Dimension.finiteMm("slope of its end", endSlope);
    double halfMm =
        Math.max(Math.abs(section.bounds().minXMm()), Math.abs(section.bounds().maxXMm()));
    Dimension.positiveMm(
        "length left between two slanted ends",
        lengthMm - Math.abs(endSlope - startSlope) * halfMm);
  }

  /** A plate. */
  public static Prism plate(Outline outline, double thicknessMm) {
    return new Prism(outline, thicknessMm, 0, 0);
  }

  /** A block with x and y about its middle and z from 0. */
  public static Prism block(double xMm, double yMm, double zMm) {
    return plate(rectangle(xMm, yMm), zMm);
  }

  /** A rectangle about the origin. */
  public static Outline rectangle(double xMm, double yMm) {
    return Outline.solid(rounded(xMm, yMm, 0));
  }

  /**
   * The section of a rectangular tube about the origin: outside corners rounded to twice the wall,
   * inside ones to once.
   */
  public static Outline tubeSection(double xMm, double yMm, double wallMm) {
    return new Outline(
        rounded(xMm, yMm, 2 * wallMm),
        List.of(new Window(rounded(xMm - 2 * wallMm, yMm - 2 * wallMm, wallMm))));
  }

  private static Loop rounded(double xMm, double yMm, double radiusMm) {
    double x = xMm / 2;
    double y = yMm / 2;
    if (radiusMm == 0) {
      return Loop.through(
          List.of(new Point2(-x, -y), new Point2(x, -y), new Point2(x, y), new Point2(-x, y)));
    }
    return Belt.around(
        List.of(
            new Disc(new Point2(radiusMm - x, radiusMm - y), radiusMm),
            new Disc(new Point2(x - radiusMm, radiusMm - y), radiusMm),
            new Disc(new Point2(x - radiusMm, y - radiusMm), radiusMm),
            new Disc(new Point2(radiusMm - x, y - radiusMm), radiusMm)));
  }

  @Override
  public double volumeMm3() {
    if (startSlope == endSlope) {
      return section.areaMm2() * lengthMm;
    }
    return section.areaMm2() * lengthMm + (endSlope - startSlope) * AreaMoments.of(section).x();
  }

  @Override
  public Point3 centre() {
    AreaMoments area = AreaMoments.of(section);
    double apart = endSlope - startSlope;
    double volume = area.area() * lengthMm + apart * area.x();
    double z =
        lengthMm * lengthMm * area.area()
            + 2 * lengthMm * endSlope * area.x()
            + (endSlope * endSlope - startSlope * startSlope) * area.xx();
    return new Point3(
        (lengthMm * area.x() + apart * area.xx()) / volume,
        (lengthMm * area.y() + apart * area.xy()) / volume,
        z / 2 / volume);
  }

  @Override
  public Mesh mesh() {
    List<List<Point2>> rings = new ArrayList<>();
    rings.add(section.polygon(CHORD_MM));
    for (Loop hole : section.holeLoops()) {
      Loop clockwise = hole.isAnticlockwise() ? hole.reversed() : hole;
      rings.add(clockwise.polygon(CHORD_MM));
    }
    List<Point3> corners = new ArrayList<>();
    List<Mesh.Face> faces = new ArrayList<>();
    for (List<Point2> ring : rings) {
      addSides(ring, corners, faces);
    }
    for (Mesh.Face cap : Triangulation.of(rings)) {
      faces.add(new Mesh.Face(2 * cap.a() + 1, 2 * cap.b() + 1, 2 * cap.c() + 1));
      faces.add(new Mesh.Face(2 * cap.a(), 2 * cap.c(), 2 * cap.b()));
    }
    return new Mesh(corners, faces);
  }

  /** Corners in pairs, start and end, in the order of the rings. */
  private void addSides(List<Point2> ring, List<Point3> corners, List<Mesh.Face> faces) {
    int first = corners.size();
    for (int i = 0; i < ring.size(); i++) {
      Point2 point = ring.get(i);
      corners.add(new Point3(point.xMm(), point.yMm(), startSlope * point.xMm()));
      corners.add(new Point3(point.xMm(), point.yMm(), lengthMm + endSlope * point.xMm()));
      int here = first + 2 * i;
      int next = first + 2 * ((i + 1) % ring.size());
      faces.add(new Mesh.Face(here, next, next + 1));
      faces.add(new Mesh.Face(here, next + 1, here + 1));
    }
  }
}
