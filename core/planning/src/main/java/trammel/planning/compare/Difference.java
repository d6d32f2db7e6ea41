package trammel.planning.compare;

import trammel.engine.quantity.Phrase;

/**
 * One line that two variants do not share, or share in another amount.
 *
 * @param kind what it is of
 * @param name which weld, plate, tube, part or operation
 * @param first its amount in the first variant: hours, mm, mm² or a count; 0 for none
 * @param other its amount in the other
 * @param why what asks for it
 */
public record Difference(Kind kind, String name, double first, double other, Phrase why) {
  /** What differs, and in what it is counted. */
  public enum Kind {
    /** Mean hours of an operation. */
    HOURS,
    /** Length of a weld (mm); a plug weld counts by its number. */
    WELD,
    /** Area of all plates of a name (mm²). */
    PLATE,
    /** Length of all tubes of a name (mm). */
    TUBE,
    /** Quantity of a bought item. */
    PART
  }

  /** How much more the other variant has. */
  public double change() {
    return other - first;
  }
}
