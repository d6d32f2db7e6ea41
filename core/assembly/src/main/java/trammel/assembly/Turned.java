package trammel.assembly;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.geometry.Point3;
import trammel.trade.plates.Bounds;
import trammel.trade.plates.Loop;
import trammel.trade.plates.Point2;

/**
 * A profile turned about its own z axis: bolts, barrels, tyres, air springs, round bar.
 *
 * @param profile closed path with x the radius, 0 or more, and y along the axis (mm)
 */
public record Turned(Loop profile) implements Solid {
  private static final int LEAST_SEGMENTS = 24;
  private static final int MOST_SEGMENTS = 96;

  /** So far at most from a chord of a ring to its arc, where there are enough segments (mm). */
  private static final double SAGITTA_MM = 0.4;

  private static final double CHORD_MM = 0.5;

  /**
   * @throws IllegalArgumentException if the profile crosses the axis
   */
  public Turned {
    Bounds bounds = profile.bounds();
    if (bounds.minXMm() < 0) {
      throw new IllegalArgumentException(
          "A turned part's profile reaches "
              + -bounds.minXMm()
              + " mm past its axis; radii are 0 or more. Draw one side of it.");
    }
    profile = profile.isAnticlockwise() ? profile : profile.reversed();
  }

  /** A straight-sided profile through points of radius and height, in order round it. */
  public static Turned through(double... radiusAndHeightMm) {
    List<Point2> points = new ArrayList<>(radiusAndHeightMm.length / 2);
    for (int i = 0; i + 1 < radiusAndHeightMm.length; i += 2) {
      points.add(new Point2(radiusAndHeightMm[i], radiusAndHeightMm[i + 1]));
    }
    return new Turned(Loop.through(points));
  }

  /** A round bar from z = 0 on. */
  public static Turned bar(double radiusMm, double lengthMm) {
    return through(0, 0, radiusMm, 0, radiusMm, lengthMm, 0, lengthMm);
  }

  /** A ring or sleeve from z = 0 on. */
  public static Turned ring(double insideMm, double outsideMm, double lengthMm) {
    return through(insideMm, 0, outsideMm, 0, outsideMm, lengthMm, insideMm, lengthMm);
  }

  /** By Pappus's rule, from the profile's first moment about the axis. */
  @Override
  public double volumeMm3() {
    return 2 * Math.PI * AreaMoments.of(profile).x();
  }

  @Override
  public Point3 centre() {
    AreaMoments area = AreaMoments.of(profile);
    return new Point3(0, 0, area.xy() / area.x());
  }

  /** As many round the axis as the largest radius asks for. */
  private int segments() {
    double radiusMm = Math.max(profile.bounds().maxXMm(), 1);
    double enough = Math.PI / Math.acos(1 - Math.min(1, SAGITTA_MM / radiusMm));
    int fours = 4 * (int) Math.ceil(enough / 4);
    return Math.max(LEAST_SEGMENTS, Math.min(MOST_SEGMENTS, fours));
  }

  /**
   * Corners of a ring of the mesh stand out beyond the circle by this factor, so that the ring
   * encloses the circle's area and the mesh the exact volume.
   */
  static double equalArea(int segments) {
    return Math.sqrt(2 * Math.PI / segments / Math.sin(2 * Math.PI / segments));
  }

  @Override
  public Mesh mesh() {
    int segments = segments();
    List<Point2> ring = profile.polygon(CHORD_MM);
    List<Point3> corners = new ArrayList<>();
    int[] first = new int[ring.size()];
    for (int i = 0; i < ring.size(); i++) {
      first[i] = corners.size();
      double radiusMm = equalArea(segments) * ring.get(i).xMm();
      int count = onAxis(ring.get(i)) ? 1 : segments;
      for (int k = 0; k < count; k++) {
        double angleRad = 2 * Math.PI * k / segments;
        corners.add(
            new Point3(
                radiusMm * Math.cos(angleRad), radiusMm * Math.sin(angleRad), ring.get(i).yMm()));
      }
    }
    List<Mesh.Face> faces = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      int next = (i + 1) % ring.size();
      for (int k = 0; k < segments; k++) {
        int j = (k + 1) % segments;
        boolean hereOnAxis = onAxis(ring.get(i));
        boolean nextOnAxis = onAxis(ring.get(next));
        int here = first[i] + (hereOnAxis ? 0 : k);
        int there = first[next] + (nextOnAxis ? 0 : k);
        if (!hereOnAxis) {
          faces.add(new Mesh.Face(here, first[i] + j, there));
        }
        if (!nextOnAxis) {
          faces.add(new Mesh.Face(there, first[i] + (hereOnAxis ? 0 : j), first[next] + j));
        }
      }
    }
    return new Mesh(corners, faces);
  }

  private static boolean onAxis(Point2 point) {
    return point.xMm() < Loop.JOIN_MM;
  }
}
