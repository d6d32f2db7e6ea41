package trammel.planning.job;

import java.util.Optional;
import trammel.reading.quantity.MeasuredAngle;
import trammel.reading.quantity.MeasuredPosition;
import trammel.reading.quantity.Measurement;

/**
 * The axle housing.
 *
 * @param tubeDiameterMm outside diameter of the axle tube, mm
 * @param tubeWallMm wall of the axle tube, mm
 * @param flangeToFlange wheel-mounting face to wheel-mounting face
 * @param innerLimit half-width of the housing's centre section: brackets sit outside it
 * @param outerLimit half-distance to the spring pad or backing plate: brackets sit inside it
 * @param housingRadius largest radius of the centre housing about the axle's line, if measured
 * @param pinion rear universal joint from the axle's centre, in the attitude of pinionAngle
 * @param pinionAngle elevation of the pinion's axis, nose up positive
 * @param ratingKg what the axle may carry by its maker (kg), if it was given
 */
public record Axle(
    double tubeDiameterMm,
    double tubeWallMm,
    Measurement flangeToFlange,
    Measurement innerLimit,
    Measurement outerLimit,
    Optional<Measurement> housingRadius,
    MeasuredPosition pinion,
    MeasuredAngle pinionAngle,
    Optional<Double> ratingKg) {
  /** Refuses a wall that leaves no bore. */
  public Axle {
    if (!(tubeWallMm > 0 && 2 * tubeWallMm < tubeDiameterMm)) {
      throw new IllegalArgumentException(
          "The axle tube ("
              + tubeDiameterMm
              + " mm) with wall ("
              + tubeWallMm
              + " mm) has no bore: the wall must be more than 0 and under half the diameter.");
    }
  }
}
