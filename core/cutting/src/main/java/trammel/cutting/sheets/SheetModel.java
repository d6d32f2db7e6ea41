package trammel.cutting.sheets;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import trammel.cutting.internal.PriceSteps;

/**
 * A sheet problem in whole numbers. Every size includes one kerf, and every sheet one kerf beyond
 * its usable area, so that touching rectangles are a kerf apart.
 */
final class SheetModel {
  /** Lengths are told apart down to this. */
  static final double RESOLUTION_MM = 1e-6;

  static final int UNLIMITED = Integer.MAX_VALUE;

  private static final double STEPS_PER_MM = 1e6;
  private static final double STEP_NOISE = 0.01;

  /** Longest side in steps; finer steps are made coarser so that areas stay exact. */
  private static final long LONGEST_SIDE = 1L << 24;

  final int[] width;
  final int[] height;
  final int[] count;
  final boolean[] mayTurn;
  final int[] sheetWidth;
  final int[] sheetHeight;
  final long[] price;
  final int[] available;
  final PriceSteps priceSteps;

  /** Length of one step, mm. */
  final double stepMm;

  private final List<SheetStock> stocks;
  private final List<List<SheetPart>> partsOfType;

  private SheetModel(
      int[] width,
      int[] height,
      int[] count,
      boolean[] mayTurn,
      int[] sheetWidth,
      int[] sheetHeight,
      long[] price,
      int[] available,
      PriceSteps priceSteps,
      double stepMm,
      List<SheetStock> stocks,
      List<List<SheetPart>> partsOfType) {
    this.width = width;
    this.height = height;
    this.count = count;
    this.mayTurn = mayTurn;
    this.sheetWidth = sheetWidth;
    this.sheetHeight = sheetHeight;
    this.price = price;
    this.available = available;
    this.priceSteps = priceSteps;
    this.stepMm = stepMm;
    this.stocks = stocks;
    this.partsOfType = partsOfType;
  }

  static SheetModel of(SheetCuttingProblem problem) {
    List<SheetStock> stocks = new ArrayList<>();
    for (SheetStock stock : problem.stock()) {
      double least = 2 * problem.marginMm();
      if (stock.available().orElse(1) > 0 && stock.widthMm() > least && stock.heightMm() > least) {
        stocks.add(stock);
      }
    }
    return new Builder(problem.parts(), stocks, problem.marginMm(), problem.kerfMm()).build();
  }

  /** A strip as one sheet of open length; lengths are then bounded by the caller. */
  static SheetModel of(StripProblem problem) {
    double longest = 2 * problem.marginMm() + 1;
    for (SheetPart part : problem.parts()) {
      double side = part.mayTurn() ? Math.max(part.widthMm(), part.heightMm()) : part.heightMm();
      longest += (side + problem.kerfMm()) * part.quantity();
    }
    SheetStock strip =
        SheetStock.bought("strip", problem.widthMm(), Math.min(longest, 1e6), BigDecimal.ONE);
    return new Builder(problem.parts(), List.of(strip), problem.marginMm(), problem.kerfMm())
        .build();
  }

  /** The same parts and sheets with across and along exchanged. */
  SheetModel transposed() {
    return new SheetModel(
        height,
        width,
        count,
        mayTurn,
        sheetHeight,
        sheetWidth,
        price,
        available,
        priceSteps,
        stepMm,
        stocks,
        partsOfType);
  }

  int types() {
    return width.length;
  }

  int sheets() {
    return sheetWidth.length;
  }

  SheetStock stock(int sheet) {
    return stocks.get(sheet);
  }

  List<SheetPart> partsOfType(int type) {
    return partsOfType.get(type);
  }

  long area(int type) {
    return (long) width[type] * height[type];
  }

  long sheetArea(int sheet) {
    return (long) sheetWidth[sheet] * sheetHeight[sheet];
  }

  long area(int[] counts) {
    long total = 0;
    for (int t = 0; t < counts.length; t++) {
      total = Math.addExact(total, Math.multiplyExact(area(t), (long) counts[t]));
    }
    return total;
  }

  boolean fits(int type, int sheet) {
    return fits(type, sheetWidth[sheet], sheetHeight[sheet]);
  }

  boolean fits(int type, int roomWidth, int roomHeight) {
    return (width[type] <= roomWidth && height[type] <= roomHeight)
        || (mayTurn[type] && height[type] <= roomWidth && width[type] <= roomHeight);
  }

  BigDecimal money(long steps) {
    return priceSteps.money(steps);
  }

  /** Gathers the numbers; lengths are in fine steps until the common step is known. */
  private static final class Builder {
    private final List<SheetStock> stocks;
    private final List<List<SheetPart>> groups = new ArrayList<>();
    private final long[] fineWidth;
    private final long[] fineHeight;
    private final double marginMm;
    private final double kerfMm;
    private long common;
    private long coarse = 1;

    Builder(List<SheetPart> parts, List<SheetStock> stocks, double marginMm, double kerfMm) {
      this.stocks = new ArrayList<>(stocks);
      this.marginMm = marginMm;
      this.kerfMm = kerfMm;
      for (SheetPart part : parts) {
        groupOf(part).add(part);
      }
      fineWidth = new long[groups.size()];
      fineHeight = new long[groups.size()];
      long kerf = steps(kerfMm);
      for (int t = 0; t < fineWidth.length; t++) {
        SheetPart part = groups.get(t).get(0);
        fineWidth[t] = steps(part.widthMm()) + kerf;
        fineHeight[t] = steps(part.heightMm()) + kerf;
        common = gcd(gcd(common, fineWidth[t]), fineHeight[t]);
      }
      common = Math.max(1, common);
      for (SheetStock stock : stocks) {
        if (!takesAny(stock)) {
          this.stocks.remove(stock);
        }
      }
      long longest = 1;
      for (SheetStock stock : this.stocks) {
        longest = Math.max(longest, room(stock.widthMm()) / common);
        longest = Math.max(longest, room(stock.heightMm()) / common);
      }
      if (longest > LONGEST_SIDE) {
        coarse = longest / LONGEST_SIDE + 1;
      }
    }

    private boolean takesAny(SheetStock stock) {
      long roomWidth = room(stock.widthMm());
      long roomHeight = room(stock.heightMm());
      for (int t = 0; t < fineWidth.length; t++) {
        boolean straight = fineWidth[t] <= roomWidth && fineHeight[t] <= roomHeight;
        boolean turned = fineHeight[t] <= roomWidth && fineWidth[t] <= roomHeight;
        if (straight || (groups.get(t).get(0).mayTurn() && turned)) {
          return true;
        }
      }
      return false;
    }

    private List<SheetPart> groupOf(SheetPart part) {
      for (List<SheetPart> group : groups) {
        SheetPart first = group.get(0);
        if (first.widthMm() == part.widthMm()
            && first.heightMm() == part.heightMm()
            && first.mayTurn() == part.mayTurn()) {
          return group;
        }
      }
      List<SheetPart> group = new ArrayList<>();
      groups.add(group);
      return group;
    }

    private long room(double sideMm) {
      return steps(sideMm) - 2 * steps(marginMm) + steps(kerfMm);
    }

    private int sheetSide(double sideMm) {
      return (int) (room(sideMm) / (common * coarse));
    }

    private int partSide(long fine) {
      return (int) ((fine / common + coarse - 1) / coarse);
    }

    SheetModel build() {
      int types = groups.size();
      int[] width = new int[types];
      int[] height = new int[types];
      int[] count = new int[types];
      boolean[] mayTurn = new boolean[types];
      int pieces = 0;
      for (int t = 0; t < types; t++) {
        width[t] = partSide(fineWidth[t]);
        height[t] = partSide(fineHeight[t]);
        mayTurn[t] = groups.get(t).get(0).mayTurn() && width[t] != height[t];
        for (SheetPart part : groups.get(t)) {
          count[t] = Math.addExact(count[t], part.quantity());
        }
        pieces = Math.addExact(pieces, count[t]);
      }
      int sheets = stocks.size();
      int[] sheetWidth = new int[sheets];
      int[] sheetHeight = new int[sheets];
      int[] available = new int[sheets];
      for (int s = 0; s < sheets; s++) {
        sheetWidth[s] = sheetSide(stocks.get(s).widthMm());
        sheetHeight[s] = sheetSide(stocks.get(s).heightMm());
        int limit = stocks.get(s).available().orElse(UNLIMITED);
        available[s] = limit >= pieces ? UNLIMITED : limit;
      }
      long[] price = new long[sheets];
      PriceSteps priceSteps = prices(price);
      return new SheetModel(
          width,
          height,
          count,
          mayTurn,
          sheetWidth,
          sheetHeight,
          price,
          available,
          priceSteps,
          (double) common * coarse / STEPS_PER_MM,
          stocks,
          groups);
    }

    /** Prices in the largest step that divides them all; without prices every sheet counts one. */
    private PriceSteps prices(long[] price) {
      List<BigDecimal> prices = new ArrayList<>();
      boolean allRemnants = true;
      for (SheetStock stock : stocks) {
        prices.add(stock.price());
        allRemnants &= stock.remnant();
      }
      PriceSteps steps = new PriceSteps(prices);
      for (int s = 0; s < price.length; s++) {
        boolean counts = allRemnants || !stocks.get(s).remnant();
        price[s] = steps.allFree() ? (counts ? 1 : 0) : steps.of(prices.get(s));
      }
      return steps;
    }

    private static long steps(double lengthMm) {
      return (long) Math.floor(lengthMm * STEPS_PER_MM + STEP_NOISE);
    }

    private static long gcd(long a, long b) {
      long x = a;
      long y = b;
      while (y != 0) {
        long rest = x % y;
        x = y;
        y = rest;
      }
      return x;
    }
  }
}
