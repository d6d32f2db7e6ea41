package trammel.brackets.mount;

import java.util.List;
import trammel.engine.geometry.Point3;

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

  /** The least distance from a point of the frame (mm). */
  public double shortestMm(Point3 frame) {
    double least = Double.POSITIVE_INFINITY;
    for (Point3 place : places) {
      least = Math.min(least, frame.distanceMm(place));
    }
    return least;
  }

  /** The greatest distance from a point of the frame (mm). */
  public double longestMm(Point3 frame) {
    double most = 0;
    for (Point3 place : places) {
      most = Math.max(most, frame.distanceMm(place));
    }
    return most;
  }
}
