package trammel.cutting.outlines;

import java.util.List;
import trammel.cutting.StockShortageException;
import trammel.cutting.internal.Quantities;
import trammel.cutting.sheets.SheetStock;

/**
 * Outlines of one thickness to be nested on sheets and drops at the least price.
 *
 * @param stock the sheets to choose from
 * @param parts the parts needed
 * @param marginMm strip along every edge that is not used, mm
 * @param kerfMm least distance between parts, mm
 */
public record NestingProblem(
    List<SheetStock> stock, List<OutlinePart> parts, double marginMm, double kerfMm) {
  private static final double TOLERANCE_MM = 1e-6;
  private static final long MOST_PARTS = 100_000;

  /**
   * @throws IllegalArgumentException when a value is impossible
   * @throws StockShortageException when a part fits no sheet
   */
  public NestingProblem {
    stock = List.copyOf(stock);
    parts = List.copyOf(parts);
    Quantities.requireLength(marginMm, "the margin");
    Quantities.requireCount(count(parts), MOST_PARTS);
    Quantities.requireLength(kerfMm, "the kerf");
    for (OutlinePart part : parts) {
      requireFits(part, stock, marginMm);
    }
  }

  private static long count(List<OutlinePart> parts) {
    long count = 0;
    for (OutlinePart part : parts) {
      count += part.quantity();
    }
    return count;
  }

  /** How many parts there are, each as often as it is needed. */
  public int partCount() {
    return (int) count(parts);
  }

  /** The longest side of any of its sheets, mm. */
  double longestSheetMm() {
    double longestMm = 0;
    for (SheetStock sheet : stock) {
      longestMm = Math.max(longestMm, Math.max(sheet.widthMm(), sheet.heightMm()));
    }
    return longestMm;
  }

  private static void requireFits(OutlinePart part, List<SheetStock> stock, double marginMm) {
    double largestWidthMm = 0;
    double largestHeightMm = 0;
    OutlineBox first = OutlineBox.of(part, new OutlineTurn(part.turnsDeg().get(0)));
    for (SheetStock sheet : stock) {
      double widthMm = sheet.widthMm() - 2 * marginMm + TOLERANCE_MM;
      double heightMm = sheet.heightMm() - 2 * marginMm + TOLERANCE_MM;
      for (double turnDeg : part.turnsDeg()) {
        OutlineBox shape = OutlineBox.of(part, new OutlineTurn(turnDeg));
        if (sheet.available().orElse(1) > 0
            && shape.width() <= widthMm
            && shape.height() <= heightMm) {
          return;
        }
      }
      if (widthMm * heightMm > largestWidthMm * largestHeightMm) {
        largestWidthMm = widthMm;
        largestHeightMm = heightMm;
      }
    }
    throw new StockShortageException(
        "the part "
            + part.id()
            + " is "
            + Quantities.millimetres(first.width())
            + " x "
            + Quantities.millimetres(first.height())
            + "; the largest sheet gives at most "
            + Quantities.millimetres(largestWidthMm)
            + " x "
            + Quantities.millimetres(largestHeightMm)
            + " whichever way the part may lie. Add a larger sheet, or split the part.");
  }
}
