package trammel.cutting.bars;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import trammel.cutting.StockShortageException;
import trammel.cutting.internal.Quantities;

/**
 * Pieces of one section to be sawn from stock lengths and remnants at the least price.
 *
 * <p>A bar of length L holds pieces when trim + sum of (piece + kerf) ≤ L + kerf: the last piece
 * needs no cut behind it when it ends with the bar. With a clamp loss, the stub that the saw cannot
 * feed stays on and the cut before it is made: trim + sum of (piece + kerf) + clamp loss ≤ L.
 *
 * @param stock the lengths to choose from; entries of one name add up and must be alike
 * @param pieces the pieces needed
 * @param kerfMm width of one saw cut, mm
 * @param clampLossMm end of every bar that the saw cannot feed, mm; 0 when there is none
 * @param trimMm cut off the front end of every bar to square it, saw cut included, mm
 * @param usefulOffcutMm what is left of a bar goes back on the rack at this length or more, mm
 */
public record BarCuttingProblem(
    List<BarStock> stock,
    List<BarPiece> pieces,
    double kerfMm,
    double clampLossMm,
    double trimMm,
    double usefulOffcutMm) {
  /** Length from which an offcut is kept unless the shop says otherwise: one foot, mm. */
  public static final double USUAL_USEFUL_OFFCUT_MM = 304.8;

  private static final long MOST_PIECES = 500_000;

  /**
   * @throws IllegalArgumentException when a value is impossible
   * @throws StockShortageException when a piece is longer than every stock length can give
   */
  public BarCuttingProblem {
    stock = List.copyOf(stock);
    pieces = List.copyOf(pieces);
    Quantities.requireLength(kerfMm, "the kerf");
    Quantities.requireLength(clampLossMm, "the clamp loss");
    Quantities.requireLength(trimMm, "the end trim");
    Quantities.requireLength(usefulOffcutMm, "the useful offcut");
    long count = 0;
    for (BarPiece piece : pieces) {
      count += piece.quantity();
    }
    Quantities.requireCount(count, MOST_PIECES);
    requireDistinct(stock);
    requireEveryPieceFits(stock, pieces, clampLossMm + trimMm + (clampLossMm > 0 ? kerfMm : 0));
  }

  /** A problem with the usual least length of a useful offcut. */
  public BarCuttingProblem(
      List<BarStock> stock,
      List<BarPiece> pieces,
      double kerfMm,
      double clampLossMm,
      double trimMm) {
    this(stock, pieces, kerfMm, clampLossMm, trimMm, USUAL_USEFUL_OFFCUT_MM);
  }

  /** Two remnants may well carry the same name, but then they must be alike. */
  private static void requireDistinct(List<BarStock> stock) {
    Map<String, BarStock> seen = new HashMap<>();
    for (BarStock bar : stock) {
      BarStock before = seen.putIfAbsent(bar.id(), bar);
      if (before != null
          && (before.lengthMm() != bar.lengthMm()
              || before.price().compareTo(bar.price()) != 0
              || before.remnant() != bar.remnant())) {
        throw new IllegalArgumentException(
            "the stock "
                + bar.id()
                + " is listed twice, with "
                + Quantities.millimetres(before.lengthMm())
                + " at "
                + before.price().toPlainString()
                + " and "
                + Quantities.millimetres(bar.lengthMm())
                + " at "
                + bar.price().toPlainString()
                + "; one name stands for one length and price. Rename one.");
      }
    }
  }

  private static void requireEveryPieceFits(
      List<BarStock> stock, List<BarPiece> pieces, double lossMm) {
    if (pieces.isEmpty()) {
      return;
    }
    BarStock longest = null;
    for (BarStock bar : stock) {
      boolean some = bar.available().isEmpty() || bar.available().getAsInt() > 0;
      if (some && (longest == null || bar.lengthMm() > longest.lengthMm())) {
        longest = bar;
      }
    }
    if (longest == null) {
      throw new StockShortageException(
          "there is no stock to cut from; at least one bar is needed. Add a stock length.");
    }
    for (BarPiece piece : pieces) {
      if (piece.lengthMm() > longest.lengthMm() - lossMm + BarModel.RESOLUTION_MM) {
        throw new StockShortageException(
            "the piece "
                + piece.id()
                + " is "
                + Quantities.millimetres(piece.lengthMm())
                + "; the longest stock, "
                + longest.id()
                + ", gives at most "
                + Quantities.millimetres(Math.max(0, longest.lengthMm() - lossMm))
                + ". Add a longer stock length, or splice the piece.");
      }
    }
  }
}
