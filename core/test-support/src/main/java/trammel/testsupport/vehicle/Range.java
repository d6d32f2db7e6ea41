package trammel.testsupport.vehicle;

import trammel.testsupport.Draw;

/**
 * What a measurement may be on vehicles of one kind.
 *
 * @param least the least value
 * @param greatest the greatest value
 */
record Range(double least, double greatest) {
  private static final double TAPE_STEPS = 16;

  Range {
    if (!(least <= greatest)) {
      throw new IllegalArgumentException(
          "The range " + least + " to " + greatest + " is empty. Put the lesser number first.");
    }
  }

  static Range of(double least, double greatest) {
    return new Range(least, greatest);
  }

  /** Any value of the range. */
  double draw(Draw draw) {
    return draw.evenly(least, greatest);
  }

  /** A length as a tape reads it, to a sixteenth of an inch. */
  double onTheTape(Draw draw) {
    return onTheTape(draw(draw));
  }

  static double onTheTape(double inches) {
    return stepped(inches, 1 / TAPE_STEPS);
  }

  static double stepped(double value, double step) {
    return Math.rint(value / step) * step;
  }
}
