package trammel.planning.drawings;

import trammel.reading.quantity.UnitSystem;

/**
 * The square beside a template at true scale, which is measured on the print: of a round size on
 * the rule at hand.
 *
 * @param sideMm its side (mm)
 * @param words its side as the reader's rule has it
 */
public record CheckSquare(double sideMm, String words) {
  private static final CheckSquare INCHES = new CheckSquare(50.8, "2 in");
  private static final CheckSquare MILLIMETRES = new CheckSquare(50, "50 mm");

  /** That of a shop which reads these units. */
  public static CheckSquare of(UnitSystem units) {
    return units == UnitSystem.US ? INCHES : MILLIMETRES;
  }
}
