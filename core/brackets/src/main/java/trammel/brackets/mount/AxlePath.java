package trammel.brackets.mount;

import java.util.List;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.motion.Placement;

/**
 * Where a point of the axle goes over the travel, and its twin, mirrored to the same side. Plain
 * numbers: every place that is tried for a mount asks for a path.
 */
public final class AxlePath {
  private final double[] xMm;
  private final double[] yMm;
  private final double[] zMm;

  /**
   * @param axle the point at ride
   * @param travel where the axle goes
   */
  AxlePath(Point3 axle, List<Placement> travel) {
    int count = travel.size();
    xMm = new double[2 * count];
    yMm = new double[2 * count];
    zMm = new double[2 * count];
    Point3 twin = axle.mirrored();
    for (int i = 0; i < count; i++) {
      Point3 place = travel.get(i).move(axle);
      xMm[2 * i] = place.xMm();
      yMm[2 * i] = place.yMm();
      zMm[2 * i] = place.zMm();
      // Mirrored back, so that both are held against one point of the frame.
      Point3 ofTwin = travel.get(i).move(twin);
      xMm[2 * i + 1] = ofTwin.xMm();
      yMm[2 * i + 1] = 0 - ofTwin.yMm();
      zMm[2 * i + 1] = ofTwin.zMm();
    }
  }

  /**
   * Distances of the places from a point of the frame.
   *
   * @param leastMm the least (mm)
   * @param mostMm the greatest (mm)
   */
  public record Range(double leastMm, double mostMm) {
    /** Half way between the two (mm). */
    public double middleMm() {
      return (leastMm + mostMm) / 2;
    }
  }

  /** How near to a point of the frame the places come, and how far from it they go. */
  public Range from(Point3 frame) {
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (int i = 0; i < xMm.length; i++) {
      double dx = xMm[i] - frame.xMm();
      double dy = yMm[i] - frame.yMm();
      double dz = zMm[i] - frame.zMm();
      double square = dx * dx + dy * dy + dz * dz;
      least = Math.min(least, square);
      most = Math.max(most, square);
    }
    return new Range(Math.sqrt(least), Math.sqrt(most));
  }

  /**
   * How far the places lie along a direction from the one at ride.
   *
   * @param lowestMm of the lowest of them (mm), 0 or less
   * @param highestMm of the highest (mm), 0 or more
   * @param asideSquared square of the highest one's offset from the direction's line (mm²)
   */
  record Along(double lowestMm, double highestMm, double asideSquared) {
    /**
     * The stroke that a shock needs at least, whatever its length at ride, from a frame end on the
     * direction's line: its greatest length is at least the distance along the line to the lowest
     * place, and its least at most the distance to the highest, which leans by its offset.
     *
     * @param closedMm the least length of the shock (mm)
     */
    double leastStrokeMm(double closedMm) {
      double leftMm = closedMm - highestMm;
      return leftMm <= 0 ? 0 : highestMm - lowestMm - asideSquared / (2 * leftMm);
    }
  }

  /**
   * How far the places lie along a direction.
   *
   * @param ride the place at ride (mm)
   * @param upward unit vector towards the frame
   */
  Along along(Point3 ride, Vector3 upward) {
    double lowestMm = 0;
    double highestMm = 0;
    double asideSquared = 0;
    for (int i = 0; i < xMm.length; i++) {
      double dx = xMm[i] - ride.xMm();
      double dy = yMm[i] - ride.yMm();
      double dz = zMm[i] - ride.zMm();
      double upMm = dx * upward.x() + dy * upward.y() + dz * upward.z();
      lowestMm = Math.min(lowestMm, upMm);
      if (upMm > highestMm) {
        highestMm = upMm;
        asideSquared = Math.max(0, dx * dx + dy * dy + dz * dz - upMm * upMm);
      }
    }
    return new Along(lowestMm, highestMm, asideSquared);
  }
}
