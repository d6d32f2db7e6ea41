package trammel.app.drawings;

import trammel.reading.quantity.UnitSystem;

/**
 * An upright sheet of paper.
 *
 * @param widthMm its width (mm)
 * @param heightMm its height (mm)
 */
public record PaperSize(double widthMm, double heightMm) {
  /** Letter, 8 1/2 in by 11 in (ANSI/ASME Y14.1). */
  public static final PaperSize LETTER = new PaperSize(215.9, 279.4);

  /** A4 (ISO 216). */
  public static final PaperSize A4 = new PaperSize(210, 297);

  /** The paper of a shop that reads these units. */
  public static PaperSize of(UnitSystem units) {
    return units == UnitSystem.US ? LETTER : A4;
  }
}
