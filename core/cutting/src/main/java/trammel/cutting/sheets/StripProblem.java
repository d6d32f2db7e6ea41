package trammel.cutting.sheets;

import java.util.List;
import trammel.cutting.StockShortageException;
import trammel.cutting.internal.Quantities;

/**
 * Rectangular parts to be cut from the least length of a strip or coil.
 *
 * <p>The strip lies with its width along x; its length runs along y.
 *
 * @param widthMm width of the strip, mm
 * @param parts the parts needed
 * @param marginMm strip along every edge, ends included, that is not used, mm
 * @param kerfMm least distance between parts, mm
 */
public record StripProblem(double widthMm, List<SheetPart> parts, double marginMm, double kerfMm) {
  /**
   * @throws IllegalArgumentException when a value is impossible
   * @throws StockShortageException when a part is wider than the strip
   */
  public StripProblem {
    parts = List.copyOf(parts);
    Quantities.requirePositiveLength(widthMm, "the width of the strip");
    Quantities.requireLength(marginMm, "the margin");
    Quantities.requireLength(kerfMm, "the kerf");
    Quantities.requireCount(SheetCuttingProblem.count(parts), SheetCuttingProblem.MOST_PARTS);
    double roomMm = widthMm - 2 * marginMm;
    for (SheetPart part : parts) {
      double narrowMm = part.mayTurn() ? Math.min(part.widthMm(), part.heightMm()) : part.widthMm();
      if (narrowMm > roomMm + SheetModel.RESOLUTION_MM) {
        throw new StockShortageException(
            "the part "
                + part.id()
                + " needs "
                + Quantities.millimetres(narrowMm)
                + " across the strip, which gives at most "
                + Quantities.millimetres(Math.max(0, roomMm))
                + ". Use a wider strip, or split the part.");
      }
    }
  }
}
