package trammel.engine.loads;

import trammel.engine.quantity.Given;
import trammel.engine.quantity.Gravity;

/**
 * Weight and outline of the vehicle as far as loads on the rear axle depend on them.
 *
 * @param frontMassKg what the scales read under both front tyres, kg, 1 to 50000
 * @param rearMassKg what the scales read under both rear tyres, kg, 1 to 50000
 * @param rearUnsprungMassKg the part of the rear reading that is axle, wheels and half of the
 *     links, kg, 0 and up, under the rear reading
 * @param centreOfGravityHeightMm height of the centre of gravity, mm, 50 to 3000
 * @param wheelbaseMm wheelbase, mm, 500 to 10000
 * @param rearTrackMm distance between the middles of the rear tyres, mm, 300 to 3000
 */
public record WeightAndSize(
    double frontMassKg,
    double rearMassKg,
    double rearUnsprungMassKg,
    double centreOfGravityHeightMm,
    double wheelbaseMm,
    double rearTrackMm) {
  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if one is outside its range
   */
  public WeightAndSize {
    String weigh = "Weigh the vehicle as it will be driven.";
    Given.within("front axle weight", frontMassKg, 1, 50_000, "kg", weigh);
    Given.within("rear axle weight", rearMassKg, 1, 50_000, "kg", weigh);
    Given.within(
        "rear unsprung weight",
        rearUnsprungMassKg,
        0,
        0.99 * rearMassKg,
        "kg",
        "It is a part of the rear axle weight.");
    Given.within(
        "height of the centre of gravity",
        centreOfGravityHeightMm,
        50,
        3000,
        "mm",
        "The height of the camshaft is a usual first guess.");
    Given.within("wheelbase", wheelbaseMm, 500, 10_000, "mm", "Measure axle to axle.");
    Given.within("rear track", rearTrackMm, 300, 3000, "mm", "Measure tyre middle to middle.");
  }

  /**
   * Weight of the whole vehicle.
   *
   * @return weight, N
   */
  public double totalWeightN() {
    return (frontMassKg + rearMassKg) * Gravity.M_PER_S2;
  }

  /**
   * Static load on the rear axle.
   *
   * @return load, N
   */
  public double rearWeightN() {
    return rearMassKg * Gravity.M_PER_S2;
  }

  /**
   * Height of the centre of gravity over the wheelbase.
   *
   * @return ratio
   */
  double heightOverWheelbase() {
    return centreOfGravityHeightMm / wheelbaseMm;
  }
}
