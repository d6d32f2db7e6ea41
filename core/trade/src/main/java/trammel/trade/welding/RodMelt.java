package trammel.trade.welding;

import trammel.engine.quantity.Given;

/**
 * Rod or covered electrode fed by hand.
 *
 * @param diameterMm diameter of the rod, or of the core of the electrode, mm
 * @param meltOffKgPerHour filler melted in an hour of arc, kg/h
 */
public record RodMelt(double diameterMm, double meltOffKgPerHour) implements Filler {

  public RodMelt {
    Given.positive("rod diameter", diameterMm, 8, "mm", "A 3/32 in rod is 2.4 mm.");
    Given.positive(
        "rod melted in kg an hour of arc",
        meltOffKgPerHour,
        20,
        "",
        "Covered electrodes melt about 1 to 2 kg/h.");
  }
}
