package trammel.plugins.coilspring;

import java.util.List;
import trammel.brackets.mount.Side;
import trammel.planning.catalog.Catalog;
import trammel.planning.options.MountOptions;
import trammel.reading.fields.Field;

/** The options of coil springs. */
final class CoilOptions {
  private static final double INCH_MM = 25.4;

  /** 1 lb/in in N/mm. */
  private static final double LB_PER_INCH = 4.4482216152605 / INCH_MM;

  static final Field<String> PLACEMENT =
      Field.choice(
              "placement",
              "side of the axle tube on which they stand; left out, behind if there is room, else"
                  + " ahead",
              Side.words())
          .optional();

  static final Field<Double> RATE =
      Field.rateNPerMm(
              "rate",
              "rate of each spring, the nearest stocked one is taken; left out, it follows from"
                  + " ride_frequency, the weight on the corner and the motion ratio",
              30 * LB_PER_INCH,
              1000 * LB_PER_INCH)
          .optional();

  static final Field<Double> RIDE_FREQUENCY =
      Field.number(
              "ride_frequency",
              "natural frequency of the rear on its springs that is wanted, in Hz (cycles a"
                  + " second)",
              0.8,
              2.8)
          .withDefault(1.4);

  static final Field<Double> LEAN = MountOptions.lean("lean", 0, 25, 12);

  static final Field<Double> BEHIND =
      Field.lengthMm(
              "behind",
              "lower mount from the axle's centre, to the rear or with placement ahead-of-axle to"
                  + " the front; left out, as close as the spring clears tube and bars",
              2 * INCH_MM,
              14 * INCH_MM)
          .optional();

  static final Field<Double> LOWER_HEIGHT = MountOptions.lowerHeight();

  private CoilOptions() {}

  static List<Field<?>> all(Catalog catalog) {
    return List.of(
        MountOptions.shock(catalog, true),
        RATE,
        RIDE_FREQUENCY,
        LEAN,
        PLACEMENT,
        BEHIND,
        LOWER_HEIGHT,
        MountOptions.crossmemberUnderSprings(catalog),
        MountOptions.legs(),
        MountOptions.bracketPlate(catalog),
        MountOptions.boxingPlate(catalog));
  }
}
