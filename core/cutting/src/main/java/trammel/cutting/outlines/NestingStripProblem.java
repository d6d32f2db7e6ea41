package trammel.cutting.outlines;

import java.util.List;
import trammel.cutting.StockShortageException;
import trammel.cutting.internal.Quantities;

/**
 * Outlines to be nested on the least length of a strip or coil.
 *
 * <p>The length of the strip runs along x and its width along y, in the axes of the drawings.
 *
 * @param widthMm width of the strip, mm
 * @param parts the parts needed
 * @param marginMm strip along every edge, ends included, that is not used, mm
 * @param kerfMm least distance between parts, mm
 */
public record NestingStripProblem(
    double widthMm, List<OutlinePart> parts, double marginMm, double kerfMm) {
  private static final double TOLERANCE_MM = 1e-6;
  private static final long MOST_PARTS = 2_000;

  /**
   * @throws IllegalArgumentException when a value is impossible
   * @throws StockShortageException when a part is wider than the strip
   */
  public NestingStripProblem {
    parts = List.copyOf(parts);
    Quantities.requirePositiveLength(widthMm, "the width of the strip");
    Quantities.requireLength(marginMm, "the margin");
    long count = 0;
    for (OutlinePart part : parts) {
      count += part.quantity();
    }
    Quantities.requireCount(count, MOST_PARTS);
    Quantities.requireLength(kerfMm, "the kerf");
    double roomMm = widthMm - 2 * marginMm;
    for (OutlinePart part : parts) {
      double leastMm = Double.POSITIVE_INFINITY;
      for (double turnDeg : part.turnsDeg()) {
        leastMm = Math.min(leastMm, OutlineBox.of(part, new OutlineTurn(turnDeg)).height());
      }
      if (leastMm > roomMm + TOLERANCE_MM) {
        throw new StockShortageException(
            "the part "
                + part.id()
                + " needs "
                + Quantities.millimetres(leastMm)
                + " across the strip, which gives at most "
                + Quantities.millimetres(Math.max(0, roomMm))
                + ". Use a wider strip, or split the part.");
      }
    }
  }
}
