package trammel.testsupport.vehicle;

import trammel.testsupport.Draw;

/**
 * Rear tyre and wheel.
 *
 * @param widthMm nominal section width, mm
 * @param aspect height of the section in percent of its width
 * @param rimIn rim diameter, inches
 * @param rimWidthIn width of the rim between the beads, inches
 * @param wheelOffsetIn mounting face outboard of the rim's middle, inches
 * @param loadedRadiusIn wheel centre above the ground, inches; below the free radius
 */
record TyreAndWheel(
    int widthMm,
    int aspect,
    int rimIn,
    double rimWidthIn,
    double wheelOffsetIn,
    double loadedRadiusIn) {
  private static final double INCH_MM = 25.4;

  /** A radial tyre on its load stands a little below its free radius. */
  private static final Range LOADED_SHARE = Range.of(0.945, 0.97);

  private static final Range RIM_SHARE = Range.of(0.7, 0.82);
  private static final Range OFFSET_IN = Range.of(-0.75, 0.75);

  static TyreAndWheel draw(Draw draw, VehicleKind.Wheels wheels) {
    int widthMm = draw.oneOf(wheels.widthsMm());
    int aspect = draw.oneOf(wheels.aspects());
    int rimIn = draw.oneOf(wheels.rimsIn());
    double freeRadiusIn = freeRadiusIn(widthMm, aspect, rimIn);
    return new TyreAndWheel(
        widthMm,
        aspect,
        rimIn,
        Range.stepped(RIM_SHARE.draw(draw) * widthMm / INCH_MM, 0.5),
        Range.stepped(OFFSET_IN.draw(draw), 0.25),
        Range.onTheTape(freeRadiusIn * LOADED_SHARE.draw(draw)));
  }

  /** Half the rim and one height of section. */
  static double freeRadiusIn(int widthMm, int aspect, int rimIn) {
    return rimIn / 2.0 + widthMm * aspect / 100.0 / INCH_MM;
  }

  double freeRadiusIn() {
    return freeRadiusIn(widthMm, aspect, rimIn);
  }

  double widthIn() {
    return widthMm / INCH_MM;
  }

  String code() {
    return widthMm + "/" + aspect + "R" + rimIn;
  }
}
