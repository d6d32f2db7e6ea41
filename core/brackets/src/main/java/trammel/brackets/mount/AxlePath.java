package trammel.brackets.mount;

import java.util.List;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;

/**
 * Where a point of the axle goes over the travel.
 *
 * @param places its places, and those of its twin mirrored to the same side; at least one
 */
public record AxlePath(List<Point3> places) {
  public AxlePath {
    places = List.copyOf(places);
    if (places.isEmpty()) {
      throw new IllegalArgumentException("A path has no places; give at least the one at ride.");
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
    for (Point3 place : places) {
      double dx = place.xMm() - frame.xMm();
      double dy = place.yMm() - frame.yMm();
      double dz = place.zMm() - frame.zMm();
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
    for (Point3 place : places) {
      Vector3 gone = ride.to(place);
      double upMm = gone.dot(upward);
      lowestMm = Math.min(lowestMm, upMm);
      if (upMm > highestMm) {
        highestMm = upMm;
        asideSquared = Math.max(0, gone.dot(gone) - upMm * upMm);
      }
    }
    return new Along(lowestMm, highestMm, asideSquared);
  }
}
