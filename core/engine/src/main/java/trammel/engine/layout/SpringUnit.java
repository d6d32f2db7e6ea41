package trammel.engine.layout;

import java.util.Objects;
import java.util.Optional;
import trammel.engine.geometry.Point3;
import trammel.engine.quantity.Given;
import trammel.engine.springs.RatedAirSpring;

/**
 * One spring between frame and axle at ride.
 *
 * @param name the name that parts list and job file use, such as {@code spring-left}
 * @param kind coil or air
 * @param frame centre of its seat on the frame (mm)
 * @param axle centre of its seat on the axle at ride (mm)
 * @param radiusMm largest outside radius over the travel (mm), above 0
 * @param rateNPerMm rate at ride height (N/mm), above 0
 * @param shortestMm length below which it is coil-bound or on its bumper (mm), above 0
 * @param longestMm length beyond which it is loose or over-stretched (mm), above the shortest
 * @param air its table and highest pressure if it is an air spring that has them
 */
public record SpringUnit(
    String name,
    SpringKind kind,
    Point3 frame,
    Point3 axle,
    double radiusMm,
    double rateNPerMm,
    double shortestMm,
    double longestMm,
    Optional<RatedAirSpring> air) {
  public SpringUnit {
    Objects.requireNonNull(air, "air");
    Given.text("spring name", name);
    Objects.requireNonNull(kind, "kind");
    Given.positive("radius of " + name + " (mm)", radiusMm);
    Given.positive("rate of " + name + " (N/mm)", rateNPerMm);
    Given.positive("shortest length of " + name + " (mm)", shortestMm);
    if (!(longestMm > shortestMm)) {
      throw new IllegalArgumentException(
          "longest length of "
              + name
              + " is "
              + longestMm
              + " mm; it must be over the shortest, "
              + shortestMm
              + " mm. Check the catalog entry.");
    }
    if (frame.distanceMm(axle) < 1) {
      throw new IllegalArgumentException(
          name + " has both its seats at " + frame + "; they must be apart. Check its points.");
    }
  }

  /** A spring of which no table is known. */
  public SpringUnit(
      String name,
      SpringKind kind,
      Point3 frame,
      Point3 axle,
      double radiusMm,
      double rateNPerMm,
      double shortestMm,
      double longestMm) {
    this(name, kind, frame, axle, radiusMm, rateNPerMm, shortestMm, longestMm, Optional.empty());
  }

  /** Distance between the seats at ride (mm). */
  public double lengthMm() {
    return frame.distanceMm(axle);
  }

  /** The centre of the seat at one end at ride (mm). */
  public Point3 point(End end) {
    return end == End.FRAME ? frame : axle;
  }

  /** This spring with one seat elsewhere. */
  public SpringUnit withPoint(End end, Point3 point) {
    Point3 newFrame = end == End.FRAME ? point : frame;
    Point3 newAxle = end == End.AXLE ? point : axle;
    return new SpringUnit(
        name, kind, newFrame, newAxle, radiusMm, rateNPerMm, shortestMm, longestMm, air);
  }

  /** This spring with another rate (N/mm). */
  public SpringUnit withRate(double newRateNPerMm) {
    return new SpringUnit(
        name, kind, frame, axle, radiusMm, newRateNPerMm, shortestMm, longestMm, air);
  }
}
