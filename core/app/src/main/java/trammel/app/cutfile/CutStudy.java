package trammel.app.cutfile;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.cutting.StockShortageException;
import trammel.cutting.bars.BarCutter;
import trammel.cutting.bars.BarCuttingPlan;
import trammel.cutting.bars.BarStock;
import trammel.cutting.bars.CutBar;
import trammel.cutting.bars.PlacedPiece;
import trammel.cutting.outlines.NestedSheet;
import trammel.cutting.outlines.NestingCutter;
import trammel.cutting.outlines.NestingPlan;
import trammel.cutting.outlines.NestingStripCutter;
import trammel.cutting.outlines.NestingStripPlan;
import trammel.cutting.outlines.PlacedOutline;
import trammel.cutting.sheets.CutSheet;
import trammel.cutting.sheets.PlacedPart;
import trammel.cutting.sheets.SheetCutter;
import trammel.cutting.sheets.SheetCuttingPlan;
import trammel.cutting.sheets.SheetStock;
import trammel.cutting.sheets.StripCutter;
import trammel.cutting.sheets.StripPlan;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.Location;
import trammel.reading.tree.Problem;

/** Cuts what a file asks for. */
public final class CutStudy {
  private static final String STRIP = "strip";
  private static final double SHORTEST_SECONDS = 0.01;

  private final CutFile file;
  private final Optional<Duration> limit;

  private CutStudy(CutFile file, Optional<Duration> limit) {
    this.file = file;
    this.limit = limit;
  }

  /**
   * The plans of a file: one for each section of bars, one for anything else.
   *
   * @param limit longest time for the whole file; empty for the usual effort of its kind, counted,
   *     which gives the same plan on any machine
   * @throws BadInputException if the stock does not hold the pieces
   */
  public static List<CutPlan> of(CutFile file, Optional<Duration> limit) {
    return new CutStudy(file, limit).plans();
  }

  private List<CutPlan> plans() {
    if (file.task() instanceof CutTask.Bars bars) {
      return sections(bars.sections());
    }
    return List.of(single());
  }

  private CutPlan single() {
    CutTask task = file.task();
    Location place = stockPlace(task);
    try {
      if (task instanceof CutTask.Sheets sheets) {
        return sheets(sheets);
      }
      if (task instanceof CutTask.Strip strip) {
        return strip(strip);
      }
      if (task instanceof CutTask.Outlines outlines) {
        return outlines(outlines);
      }
      return outlineStrip((CutTask.OutlineStrip) task);
    } catch (StockShortageException shortage) {
      throw task instanceof CutTask.Strip ? tooLong(place) : shortage(place);
    }
  }

  private static BadInputException tooLong(Location place) {
    return new BadInputException(
        List.of(
            Problem.error(
                place,
                "parts that need more than 1000000 of the strip's length",
                "parts that a strip of that length holds",
                "Check the quantities and the unit, or split the list into several files.")));
  }

  private static Location stockPlace(CutTask task) {
    if (task instanceof CutTask.Sheets sheets) {
      return sheets.stockPlace();
    }
    if (task instanceof CutTask.Strip strip) {
      return strip.stockPlace();
    }
    return task instanceof CutTask.Outlines outlines
        ? outlines.stockPlace()
        : ((CutTask.OutlineStrip) task).stockPlace();
  }

  private static BadInputException shortage(Location place) {
    return new BadInputException(
        List.of(
            Problem.error(
                place,
                "stock on which not all pieces could be placed in the time given",
                "stock that holds all pieces, with the kerf between them",
                "Raise the number available, add a larger size, or give more --time.")));
  }

  // Bars

  /**
   * Given a time, what is left of it is shared by the sections that are left. Else each section has
   * the usual effort.
   */
  private List<CutPlan> sections(List<CutTask.Section> sections) {
    long start = System.nanoTime();
    List<CutPlan> plans = new ArrayList<>(sections.size());
    for (int i = 0; i < sections.size(); i++) {
      int sectionsLeft = sections.size() - i;
      BarCutter cutter =
          limit
              .map(
                  time ->
                      new BarCutter(
                          share(time.minusNanos(System.nanoTime() - start), sectionsLeft)))
              .orElseGet(BarCutter::new);
      plans.add(section(sections.get(i), cutter));
    }
    return plans;
  }

  private static Duration share(Duration left, int sections) {
    double seconds = Math.max(SHORTEST_SECONDS, left.toNanos() * 1e-9 / sections);
    return Duration.ofMillis((long) (1000 * seconds));
  }

  private static CutPlan section(CutTask.Section section, BarCutter cutter) {
    BarCuttingPlan plan;
    try {
      plan = cutter.cut(section.problem());
    } catch (StockShortageException shortage) {
      throw shortage(section.stockPlace());
    }
    List<CutStock> bars = new ArrayList<>(plan.bars().size());
    for (CutBar bar : plan.bars()) {
      List<CutPiece> pieces = new ArrayList<>(bar.pieces().size());
      for (PlacedPiece piece : bar.pieces()) {
        pieces.add(
            new CutPiece(
                "",
                List.of(new BigDecimal(piece.pieceId())),
                CutNumbers.plain(piece.atMm()),
                BigDecimal.ZERO,
                BigDecimal.ZERO));
      }
      bars.add(
          new CutStock(
              bar.stock().id(),
              List.of(CutNumbers.plain(bar.stock().lengthMm())),
              pieces,
              Optional.of(CutNumbers.plain(Math.max(0, bar.offcutMm())))));
    }
    return new CutPlan(
        section.name(),
        barMeasure(section.problem().stock()),
        CutNumbers.plain(plan.price()),
        CutNumbers.plain(plan.lowerBound()),
        plan.status(),
        plan.seconds(),
        bars);
  }

  private static CutPlan.Measure barMeasure(List<BarStock> stock) {
    for (BarStock bar : stock) {
      if (bar.price().compareTo(BigDecimal.ONE) != 0) {
        return CutPlan.Measure.PRICE;
      }
    }
    return CutPlan.Measure.COUNT;
  }

  // Rectangles

  private CutPlan sheets(CutTask.Sheets task) {
    SheetCuttingPlan plan =
        limit.map(SheetCutter::new).orElseGet(SheetCutter::new).cut(task.problem());
    List<CutStock> sheets = new ArrayList<>(plan.sheets().size());
    for (CutSheet sheet : plan.sheets()) {
      sheets.add(sheet(sheet.stock(), rectangles(sheet.parts(), task.sizes())));
    }
    return new CutPlan(
        "",
        sheetMeasure(task.problem().stock()),
        CutNumbers.plain(plan.price()),
        CutNumbers.plain(plan.lowerBound()),
        plan.status(),
        plan.seconds(),
        sheets);
  }

  private static CutStock sheet(SheetStock stock, List<CutPiece> pieces) {
    return new CutStock(
        stock.id(),
        List.of(CutNumbers.plain(stock.widthMm()), CutNumbers.plain(stock.heightMm())),
        pieces,
        Optional.empty());
  }

  private static CutPlan.Measure sheetMeasure(List<SheetStock> stock) {
    for (SheetStock sheet : stock) {
      if (sheet.price().compareTo(BigDecimal.ONE) != 0) {
        return CutPlan.Measure.PRICE;
      }
    }
    return CutPlan.Measure.COUNT;
  }

  private static List<CutPiece> rectangles(List<PlacedPart> parts, List<List<BigDecimal>> sizes) {
    List<CutPiece> pieces = new ArrayList<>(parts.size());
    for (PlacedPart part : parts) {
      pieces.add(
          new CutPiece(
              "",
              sizes.get(Integer.parseInt(part.partId())),
              CutNumbers.plain(part.xMm()),
              CutNumbers.plain(part.yMm()),
              part.turned() ? BigDecimal.valueOf(90) : BigDecimal.ZERO));
    }
    return pieces;
  }

  private CutPlan strip(CutTask.Strip task) {
    StripPlan plan = limit.map(StripCutter::new).orElseGet(StripCutter::new).cut(task.problem());
    BigDecimal length = CutNumbers.plain(plan.lengthMm());
    return new CutPlan(
        "",
        CutPlan.Measure.LENGTH,
        length,
        CutNumbers.plain(plan.lowerBoundMm()),
        plan.status(),
        plan.seconds(),
        List.of(
            new CutStock(
                STRIP,
                List.of(CutNumbers.plain(task.problem().widthMm()), length),
                rectangles(plan.parts(), task.sizes()),
                Optional.empty())));
  }

  // Outlines

  private CutPlan outlines(CutTask.Outlines task) {
    NestingPlan plan =
        limit.map(NestingCutter::new).orElseGet(NestingCutter::new).cut(task.problem());
    List<CutStock> sheets = new ArrayList<>(plan.sheets().size());
    for (NestedSheet sheet : plan.sheets()) {
      sheets.add(sheet(sheet.stock(), placed(sheet.parts(), task.ids())));
    }
    return new CutPlan(
        "",
        sheetMeasure(task.problem().stock()),
        CutNumbers.plain(plan.price()),
        CutNumbers.plain(plan.lowerBound()),
        plan.status(),
        plan.seconds(),
        sheets);
  }

  private CutPlan outlineStrip(CutTask.OutlineStrip task) {
    NestingStripPlan plan =
        limit.map(NestingStripCutter::new).orElseGet(NestingStripCutter::new).cut(task.problem());
    BigDecimal length = CutNumbers.exact(plan.lengthMm());
    return new CutPlan(
        "",
        CutPlan.Measure.LENGTH,
        length,
        CutNumbers.exact(plan.lowerBoundMm()),
        plan.status(),
        plan.seconds(),
        List.of(
            new CutStock(
                STRIP,
                List.of(length, CutNumbers.plain(task.problem().widthMm())),
                placed(plan.parts(), task.ids()),
                Optional.empty())));
  }

  private static List<CutPiece> placed(List<PlacedOutline> parts, Map<String, Object> ids) {
    List<CutPiece> pieces = new ArrayList<>(parts.size());
    for (PlacedOutline part : parts) {
      pieces.add(
          new CutPiece(
              ids.get(part.partId()),
              List.of(),
              CutNumbers.exact(part.xMm()),
              CutNumbers.exact(part.yMm()),
              CutNumbers.exact(part.turnDeg())));
    }
    return pieces;
  }
}
