package trammel.testsupport;

import java.util.OptionalLong;
import java.util.function.UnaryOperator;
import java.util.stream.LongStream;

/**
 * Which seeds of a property are run: all of them, a multiple, or one alone.
 *
 * @param alone the one seed to run, if only one is asked for
 * @param times how many times the usual number of seeds is run, at least 1
 */
record SeedChoice(OptionalLong alone, int times) {
  static final String ALONE = "trammel.seed";
  static final String TIMES = "trammel.seeds.times";

  SeedChoice {
    if (times < 1) {
      throw new IllegalArgumentException(
          TIMES + " is " + times + ", allowed is 1 or more. Leave it out for the usual number.");
    }
  }

  /**
   * Reads the choice.
   *
   * @param properties gives the text of a system property, or null
   * @throws IllegalArgumentException if a property is no whole number or out of range
   */
  static SeedChoice from(UnaryOperator<String> properties) {
    String alone = properties.apply(ALONE);
    String times = properties.apply(TIMES);
    return new SeedChoice(
        alone == null ? OptionalLong.empty() : OptionalLong.of(whole(ALONE, alone)),
        times == null ? 1 : Math.toIntExact(whole(TIMES, times)));
  }

  /**
   * The seeds of a property that usually runs so many.
   *
   * @throws IllegalArgumentException if that is none
   */
  LongStream seeds(int usual) {
    if (usual < 1) {
      throw new IllegalArgumentException(
          "@Seeds(" + usual + ") runs nothing, allowed is 1 seed or more.");
    }
    return alone.isPresent()
        ? LongStream.of(alone.getAsLong())
        : LongStream.rangeClosed(1, Math.multiplyFull(usual, times));
  }

  private static long whole(String property, String text) {
    try {
      return Long.parseLong(text.strip());
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException(
          property + " is \"" + text + "\", allowed is a whole number such as 17.", e);
    }
  }
}
