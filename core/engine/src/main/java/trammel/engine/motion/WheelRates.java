package trammel.engine.motion;

import java.util.ArrayList;
import java.util.List;

/**
 * What the springs do at the wheels. Preload (force times the change of the motion ratio), tyres,
 * bushings and anti-roll bars are left out.
 *
 * @param springs each spring by itself
 * @param heaveNPerMm rate at each of the two wheels in heave (N/mm): half the sum of rate times
 *     motion ratio squared (Barton and Fieldhouse 2018, p. 179, eq. 3.33)
 * @param rollNmmPerRad stiffness in roll of the springs alone (Nmm/rad)
 */
public record WheelRates(List<SpringReading> springs, double heaveNPerMm, double rollNmmPerRad) {

  /** Copies the list. */
  public WheelRates {
    springs = List.copyOf(springs);
  }

  /**
   * Rates of a set of springs at a pose.
   *
   * @param solver motion of the axle
   * @param pose solved pose
   * @param springs springs of both sides
   */
  public static WheelRates of(PoseSolver solver, AxlePose pose, List<SpringPoint> springs) {
    return of(solver.ratesAt(pose), pose, solver.linkage().trackMm(), springs);
  }

  /**
   * Rates of a set of springs at a pose.
   *
   * @param rates motion at that pose
   * @param pose solved pose
   * @param trackMm distance between the wheel centres (mm)
   * @param springs springs of both sides
   */
  public static WheelRates of(
      MotionRates rates, AxlePose pose, double trackMm, List<SpringPoint> springs) {
    List<SpringReading> readings = new ArrayList<>(springs.size());
    double heave = 0;
    double roll = 0;
    for (SpringPoint spring : springs) {
      SpringReading reading = spring.at(pose, rates, trackMm);
      readings.add(reading);
      heave += 0.5 * spring.rateNPerMm() * reading.lengthPerMmHeave() * reading.lengthPerMmHeave();
      roll += spring.rateNPerMm() * reading.lengthMmPerRadRoll() * reading.lengthMmPerRadRoll();
    }
    return new WheelRates(readings, heave, roll);
  }

  /** Roll stiffness as it is usually quoted (Nm per degree). */
  public double rollNmPerDegree() {
    return Math.toRadians(rollNmmPerRad) / 1000;
  }

  /**
   * Undamped natural frequency of the body on its springs (Gillespie 1992 ch. 5, from memory).
   *
   * @param sprungMassPerCornerKg sprung mass carried by one wheel (kg, above 0)
   * @throws IllegalArgumentException if the mass is not positive
   */
  public double rideFrequencyHz(double sprungMassPerCornerKg) {
    if (!(sprungMassPerCornerKg > 0 && sprungMassPerCornerKg < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "The sprung mass per corner is "
              + sprungMassPerCornerKg
              + " kg; it must be above 0. Give the corner weight less half the axle.");
    }
    return Math.sqrt(1000 * heaveNPerMm / sprungMassPerCornerKg) / (2 * Math.PI);
  }
}
