package trammel.cutting.sheets;

import trammel.cutting.internal.Quantities;

/**
 * A rectangular part that is needed, and how often.
 *
 * @param id what the parts list calls it
 * @param widthMm side along x as drawn, mm
 * @param heightMm side along y as drawn, mm
 * @param quantity how many, at least 1
 * @param mayTurn true when it may lie a quarter turn round; false keeps it to the grain
 */
public record SheetPart(String id, double widthMm, double heightMm, int quantity, boolean mayTurn) {
  /**
   * @throws IllegalArgumentException when a value is impossible
   */
  public SheetPart {
    Quantities.requireName(id, "a part");
    Quantities.requirePositiveLength(widthMm, "the width of the part " + id);
    Quantities.requirePositiveLength(heightMm, "the height of the part " + id);
    if (quantity < 1) {
      throw new IllegalArgumentException(
          "the part "
              + id
              + " is asked for "
              + quantity
              + " times; it must be 1 or more. Leave out parts that are not needed.");
    }
  }
}
