package trammel.assembly.view;

import java.util.ArrayList;
import java.util.List;
import trammel.assembly.Mesh;
import trammel.engine.geometry.Point3;

/**
 * A closed surface cut by the plane of a picture: what is left of it in that plane, and lines
 * across its material (ISO 128-3, sections and hatching).
 */
public final class PlaneCut {
  private static final double OFF_CORNERS_MM = 1e-4;

  private final List<Segment> outline = new ArrayList<>();

  /**
   * A straight line in the picture (mm).
   *
   * @param fromX of its start to the right
   * @param fromY of its start up
   * @param toX of its end to the right
   * @param toY of its end up
   */
  public record Segment(double fromX, double fromY, double toX, double toY) {}

  /**
   * Cuts a mesh.
   *
   * @param mesh a closed surface
   * @param eye looks square at the plane
   * @param towardsMm how far the plane stands from the origin towards the eye (mm)
   */
  public PlaneCut(Mesh mesh, Eye eye, double towardsMm) {
    // A hair aside of corners that lie in the plane, so that each facet is cut or is not.
    double planeMm = towardsMm + OFF_CORNERS_MM;
    List<Point3> corners = mesh.corners().stream().map(eye::see).toList();
    for (Mesh.Face face : mesh.faces()) {
      List<Point3> crossings = new ArrayList<>(2);
      addCrossing(crossings, corners.get(face.a()), corners.get(face.b()), planeMm);
      addCrossing(crossings, corners.get(face.b()), corners.get(face.c()), planeMm);
      addCrossing(crossings, corners.get(face.c()), corners.get(face.a()), planeMm);
      if (crossings.size() == 2) {
        Point3 from = crossings.get(0);
        Point3 to = crossings.get(1);
        outline.add(new Segment(from.xMm(), from.yMm(), to.xMm(), to.yMm()));
      }
    }
  }

  private static void addCrossing(List<Point3> crossings, Point3 from, Point3 to, double planeMm) {
    double start = from.zMm() - planeMm;
    double end = to.zMm() - planeMm;
    if (start * end < 0) {
      double share = start / (start - end);
      crossings.add(
          new Point3(
              from.xMm() + share * (to.xMm() - from.xMm()),
              from.yMm() + share * (to.yMm() - from.yMm()),
              planeMm));
    }
  }

  /** Its edge in the plane, in pieces. */
  public List<Segment> outline() {
    return List.copyOf(outline);
  }

  /**
   * Lines across the material.
   *
   * @param apartMm how far they are apart (mm), above 0
   * @param risingRad which way they run, from the right upwards
   */
  public List<Segment> hatching(double apartMm, double risingRad) {
    double cosine = Math.cos(risingRad);
    double sine = Math.sin(risingRad);
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (Segment piece : outline) {
      for (double off :
          List.of(
              off(piece.fromX, piece.fromY, sine, cosine),
              off(piece.toX, piece.toY, sine, cosine))) {
        least = Math.min(least, off);
        most = Math.max(most, off);
      }
    }
    List<Segment> lines = new ArrayList<>();
    for (double off = apartMm * (Math.floor(least / apartMm) + 0.5); off < most; off += apartMm) {
      List<Double> along = new ArrayList<>();
      for (Segment piece : outline) {
        double start = off(piece.fromX, piece.fromY, sine, cosine) - off;
        double end = off(piece.toX, piece.toY, sine, cosine) - off;
        if (start < 0 != end < 0) {
          double share = start / (start - end);
          double x = piece.fromX + share * (piece.toX - piece.fromX);
          double y = piece.fromY + share * (piece.toY - piece.fromY);
          along.add(x * cosine + y * sine);
        }
      }
      along.sort(Double::compare);
      for (int i = 0; i + 1 < along.size(); i += 2) {
        lines.add(
            new Segment(
                along.get(i) * cosine - off * sine,
                along.get(i) * sine + off * cosine,
                along.get(i + 1) * cosine - off * sine,
                along.get(i + 1) * sine + off * cosine));
      }
    }
    return lines;
  }

  private static double off(double x, double y, double sine, double cosine) {
    return y * cosine - x * sine;
  }
}
