package trammel.engine.layout;

import java.util.OptionalDouble;
import trammel.engine.quantity.Given;

/**
 * The rigid axle.
 *
 * @param tubeDiameterMm outside diameter of the axle tube (mm), above 0
 * @param tubeWallMm its wall (mm), above 0
 * @param flangeToFlangeMm distance between the wheel mounting faces (mm), above 0
 * @param innerLimitMm half-width of the centre housing: brackets sit outside it (mm), above 0
 * @param outerLimitMm half-distance to the spring pads or backing plates: brackets sit inside it
 *     (mm), above the inner limit
 * @param trackMm distance between the wheels' centre planes (mm), above 0
 * @param housingRadiusMm largest radius of the centre housing about the axle's line (mm), at least
 *     that of the tube; empty where it is not measured
 */
public record AxleHousing(
    double tubeDiameterMm,
    double tubeWallMm,
    double flangeToFlangeMm,
    double innerLimitMm,
    double outerLimitMm,
    double trackMm,
    OptionalDouble housingRadiusMm) {
  /** Radius of a centre housing that is not measured, 6 in: from memory (mm). */
  public static final double USUAL_HOUSING_MM = 6 * 25.4;

  public AxleHousing {
    Given.positive("axle tube diameter (mm)", tubeDiameterMm);
    Given.within("axle tube wall (mm)", tubeWallMm, Double.MIN_NORMAL, tubeDiameterMm / 2);
    Given.positive("flange-to-flange width (mm)", flangeToFlangeMm);
    Given.positive("inner limit for brackets (mm)", innerLimitMm);
    Given.positive("track (mm)", trackMm);
    if (housingRadiusMm.isPresent()) {
      Given.within(
          "radius of the centre housing (mm)",
          housingRadiusMm.getAsDouble(),
          tubeDiameterMm / 2,
          Double.MAX_VALUE);
    }
    if (!(outerLimitMm > innerLimitMm)) {
      throw new IllegalArgumentException(
          "outer limit for brackets is "
              + outerLimitMm
              + " mm from the centre; it must be over the inner limit, "
              + innerLimitMm
              + " mm. Measure both from the middle of the axle.");
    }
  }

  /** An axle whose centre housing is not measured. */
  public AxleHousing(
      double tubeDiameterMm,
      double tubeWallMm,
      double flangeToFlangeMm,
      double innerLimitMm,
      double outerLimitMm,
      double trackMm) {
    this(
        tubeDiameterMm,
        tubeWallMm,
        flangeToFlangeMm,
        innerLimitMm,
        outerLimitMm,
        trackMm,
        OptionalDouble.empty());
  }

  /** Radius of the centre housing as measured; where it is not, the usual one (mm). */
  public double takenHousingRadiusMm() {
    return housingRadiusMm.orElse(Math.max(USUAL_HOUSING_MM, tubeRadiusMm()));
  }

  /** Outside radius of the axle tube (mm). */
  public double tubeRadiusMm() {
    return tubeDiameterMm / 2;
  }
}
