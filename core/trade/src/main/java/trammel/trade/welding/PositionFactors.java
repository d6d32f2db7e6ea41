package trammel.trade.welding;

import trammel.engine.quantity.Given;

/**
 * How much longer the arc burns for the same metal than in the flat position.
 *
 * @param horizontal factor, 1 to 5
 * @param vertical factor, 1 to 5
 * @param overhead factor, 1 to 5
 */
public record PositionFactors(double horizontal, double vertical, double overhead) {

  /** Common practice, no published source: smaller settings out of position. */
  public static final PositionFactors COMMON = new PositionFactors(1.05, 1.30, 1.40);

  /** Every position as fast as flat. */
  public static final PositionFactors NONE = new PositionFactors(1, 1, 1);

  public PositionFactors {
    checkedFactor(horizontal, "Horizontal");
    checkedFactor(vertical, "Vertical");
    checkedFactor(overhead, "Overhead");
  }

  private static void checkedFactor(double factor, String which) {
    Given.within(which + " position factor", factor, 1, 5, "", "Flat is 1; give how much longer.");
  }

  /** The factor of a position. */
  public double of(WeldPosition position) {
    return switch (position) {
      case FLAT -> 1;
      case HORIZONTAL -> horizontal;
      case VERTICAL -> vertical;
      case OVERHEAD -> overhead;
    };
  }
}
