package trammel.trade.welding;

import trammel.engine.quantity.Given;

/**
 * Rod or stick fed by hand.
 *
 * @param diameterMm diameter of rod or stick core, mm
 * @param meltOffKgPerHour filler melted in an hour of arc, kg/h
 */
public record RodMelt(double diameterMm, double meltOffKgPerHour) implements Filler {

  public RodMelt {
    Given.positive("rod diameter", diameterMm, 8, "mm", "A 3/32 in rod is 2.4 mm.");
    Given.positive(
        "rod melted in kg an hour of arc", meltOffKgPerHour, 20, "", "Stick is about 1 to 2 kg/h.");
  }
}
