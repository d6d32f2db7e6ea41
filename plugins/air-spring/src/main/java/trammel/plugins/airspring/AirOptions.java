package trammel.plugins.airspring;

import java.util.List;
import trammel.brackets.mount.Side;
import trammel.planning.catalog.Catalog;
import trammel.planning.options.MountOptions;
import trammel.reading.fields.Field;

/** The options of air springs. */
final class AirOptions {
  private static final double INCH_MM = 25.4;

  static final Field<String> PLACEMENT =
      Field.choice(
              "placement",
              "side of the axle tube on which the air springs stand, the shocks on the other where"
                  + " there is room; left out, behind if there is room, else ahead",
              Side.words())
          .optional();

  static final Field<String> ACROSS =
      Field.choice(
              "across",
              "between the rails under a bridge, or outside them under outriggers; left out, outside"
                  + " them if there is room, else between",
              AirSpringAcross.words())
          .optional();

  static final Field<Double> RIDE_HEIGHT =
      Field.lengthMm(
              "ride_height",
              "height of the air spring between its seats at ride; left out, the design height:"
                  + " as much of its table left in bump as in droop",
              2 * INCH_MM,
              20 * INCH_MM)
          .optional();

  static final Field<Double> SHOCK_LEAN = MountOptions.lean("shock_lean", 0, 25, 15);

  static final Field<Double> LOWER_HEIGHT = MountOptions.lowerHeight();

  private AirOptions() {}

  static Field<String> airSpring(Catalog catalog) {
    return Field.choice(
            "air_spring",
            "air spring by its catalog key; left out, the smallest that carries the corner with a"
                + " third of its pressure to spare",
            List.copyOf(catalog.airSprings().keySet()))
        .optional();
  }

  static List<Field<?>> all(Catalog catalog) {
    return List.of(
        airSpring(catalog),
        PLACEMENT,
        ACROSS,
        RIDE_HEIGHT,
        MountOptions.shock(catalog, false),
        SHOCK_LEAN,
        LOWER_HEIGHT,
        MountOptions.crossmember(catalog),
        MountOptions.legs(),
        MountOptions.bracketPlate(catalog),
        MountOptions.boxingPlate(catalog));
  }
}
