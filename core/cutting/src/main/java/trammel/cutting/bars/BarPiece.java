package trammel.cutting.bars;

import trammel.cutting.internal.Quantities;

/**
 * A finished length that is needed, and how often.
 *
 * @param id what the parts list calls it; several pieces may share a length
 * @param lengthMm finished length, mm, without any kerf
 * @param quantity how many, at least 1
 */
public record BarPiece(String id, double lengthMm, int quantity) {
  /**
   * @throws IllegalArgumentException when a value is impossible
   */
  public BarPiece {
    Quantities.requireName(id, "a piece");
    Quantities.requirePositiveLength(lengthMm, "the piece " + id);
    if (quantity < 1) {
      throw new IllegalArgumentException(
          "the piece "
              + id
              + " is asked for "
              + quantity
              + " times; it must be 1 or more. Leave out pieces that are not needed.");
    }
  }
}
