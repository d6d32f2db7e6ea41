package trammel.trade.welding;

import trammel.trade.given.Given;

/**
 * Rod or stick fed by hand.
 *
 * @param diameterMm diameter of rod or stick core, mm
 * @param meltOffKgPerHour filler melted in an hour of arc, kg/h
 */
public record RodMelt(double diameterMm, double meltOffKgPerHour) implements Filler {

  public RodMelt {
    Given.positive(diameterMm, 8, "Rod diameter in mm", "A 3/32 in rod is 2.4 mm.");
    Given.positive(
        meltOffKgPerHour, 20, "Rod melted in kg an hour of arc", "Stick is about 1 to 2 kg/h.");
  }
}
