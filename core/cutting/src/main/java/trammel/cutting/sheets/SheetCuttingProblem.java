package trammel.cutting.sheets;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import trammel.cutting.StockShortageException;
import trammel.cutting.internal.Quantities;

/**
 * Rectangular parts of one thickness to be cut from sheets and drops at the least price.
 *
 * <p>Parts keep the margin from every edge of the sheet, and a kerf from each other.
 *
 * @param stock the sheets to choose from; entries of one name add up and must be alike
 * @param parts the parts needed
 * @param marginMm strip along every edge that is not used, mm
 * @param kerfMm least distance between parts, mm
 * @param method shear or free cutting
 * @param usefulOffcutMm a left-over rectangle goes back on the rack when its shorter side is at
 *     least this, mm
 */
public record SheetCuttingProblem(
    List<SheetStock> stock,
    List<SheetPart> parts,
    double marginMm,
    double kerfMm,
    CuttingMethod method,
    double usefulOffcutMm) {
  /** Shorter side from which a left-over is kept unless the shop says otherwise: 6 in, mm. */
  public static final double USUAL_USEFUL_OFFCUT_MM = 152.4;

  /** Parts that one plan takes at most. */
  static final long MOST_PARTS = 100_000;

  /**
   * @throws IllegalArgumentException when a value is impossible
   * @throws StockShortageException when a part fits no sheet
   */
  public SheetCuttingProblem {
    stock = List.copyOf(stock);
    parts = List.copyOf(parts);
    Quantities.requireLength(marginMm, "the margin");
    Quantities.requireLength(kerfMm, "the kerf");
    Quantities.requireLength(usefulOffcutMm, "the useful offcut");
    Quantities.requireCount(count(parts), MOST_PARTS);
    requireAlike(stock);
    for (SheetPart part : parts) {
      requireFits(part, stock, marginMm);
    }
  }

  /** A problem with the usual least size of a useful offcut. */
  public SheetCuttingProblem(
      List<SheetStock> stock,
      List<SheetPart> parts,
      double marginMm,
      double kerfMm,
      CuttingMethod method) {
    this(stock, parts, marginMm, kerfMm, method, USUAL_USEFUL_OFFCUT_MM);
  }

  /**
   * What is worth keeping of sheets whose parts were placed by other means, and stay where they
   * lie: rectangles a kerf away from every part, the largest of each sheet first.
   */
  public List<SheetOffcut> offcuts(List<CutSheet> sheets) {
    LeftOvers leftOvers = new LeftOvers(this);
    OffcutNames names = new OffcutNames();
    List<SheetOffcut> offcuts = new ArrayList<>();
    for (CutSheet sheet : sheets) {
      offcuts.addAll(leftOvers.of(sheet, names.ofNext(sheet.stock())));
    }
    return offcuts;
  }

  static long count(List<SheetPart> parts) {
    long count = 0;
    for (SheetPart part : parts) {
      count += part.quantity();
    }
    return count;
  }

  private static void requireAlike(List<SheetStock> stock) {
    Map<String, SheetStock> seen = new HashMap<>();
    for (SheetStock sheet : stock) {
      SheetStock before = seen.putIfAbsent(sheet.id(), sheet);
      if (before != null
          && (before.widthMm() != sheet.widthMm()
              || before.heightMm() != sheet.heightMm()
              || before.price().compareTo(sheet.price()) != 0)) {
        throw new IllegalArgumentException(
            "the sheet "
                + sheet.id()
                + " is listed twice with different sizes or prices;"
                + " one name stands for one size and price. Rename one.");
      }
    }
  }

  private static void requireFits(SheetPart part, List<SheetStock> stock, double marginMm) {
    SheetStock largest = null;
    for (SheetStock sheet : stock) {
      if (sheet.available().orElse(1) == 0) {
        continue;
      }
      double widthMm = sheet.widthMm() - 2 * marginMm + SheetModel.RESOLUTION_MM;
      double heightMm = sheet.heightMm() - 2 * marginMm + SheetModel.RESOLUTION_MM;
      boolean asDrawn = part.widthMm() <= widthMm && part.heightMm() <= heightMm;
      boolean turned = part.heightMm() <= widthMm && part.widthMm() <= heightMm;
      if (asDrawn || (part.mayTurn() && turned)) {
        return;
      }
      if (largest == null || area(sheet) > area(largest)) {
        largest = sheet;
      }
    }
    if (largest == null) {
      throw new StockShortageException(
          "there is no sheet to cut from; at least one is needed. Add a sheet.");
    }
    throw new StockShortageException(
        "the part "
            + part.id()
            + " is "
            + Quantities.millimetres(part.widthMm())
            + " x "
            + Quantities.millimetres(part.heightMm())
            + "; the largest sheet, "
            + largest.id()
            + ", gives at most "
            + Quantities.millimetres(Math.max(0, largest.widthMm() - 2 * marginMm))
            + " x "
            + Quantities.millimetres(Math.max(0, largest.heightMm() - 2 * marginMm))
            + (part.mayTurn() ? "" : " and the part may not turn")
            + ". Add a larger sheet, or split the part.");
  }

  private static double area(SheetStock sheet) {
    return sheet.widthMm() * sheet.heightMm();
  }
}
