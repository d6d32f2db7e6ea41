package trammel.app.documents;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import trammel.app.drawings.Drawing;
import trammel.app.drawings.PaperSize;
import trammel.app.drawings.Tiling;
import trammel.app.drawings.TrueScalePage;
import trammel.app.drawings.TrueScaleTemplate;
import trammel.app.text.Stops;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.TubeNeed;
import trammel.planning.drawings.CheckSquare;
import trammel.planning.estimate.Estimate;
import trammel.planning.estimate.PlateCut;
import trammel.planning.estimate.SectionCut;
import trammel.planning.job.JobHeader;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.trade.plates.Bounds;
import trammel.trade.plates.Hole;
import trammel.trade.plates.Outline;
import trammel.trade.plates.RoundHole;
import trammel.trade.tubes.Cope;

/** Shaped plates and cope wraps of a job at true scale, row by row on sheets of Letter or A4. */
public final class TrueScale {
  private static final double GAP_MM = 8;

  private final double widthMm;
  private final double heightMm;
  private final String job;
  private final QuantityPrinter printer;
  private final CheckSquare square;
  private final List<Drawing> pages = new ArrayList<>();
  private final List<TrueScalePage.Piece> pieces = new ArrayList<>();
  private double x;
  private double y;
  private double rowMm;

  /** Width of the paper that is read in these units (mm). */
  public static double paperWidthMm(UnitSystem units) {
    return PaperSize.of(units).widthMm();
  }

  /** Height of the paper that is read in these units (mm). */
  public static double paperHeightMm(UnitSystem units) {
    return PaperSize.of(units).heightMm();
  }

  private TrueScale(UnitSystem units, String job, QuantityPrinter printer) {
    widthMm = paperWidthMm(units);
    heightMm = paperHeightMm(units);
    this.job = job;
    this.printer = printer;
    square = CheckSquare.of(units);
  }

  /** The sheets: plates first, then wraps; what is larger than a sheet is tiled. */
  public static List<Drawing> of(Estimate estimate, UnitSystem units, Stops stops) {
    JobHeader header = estimate.draft().job().header();
    String job = "Job " + header.number() + ", " + header.date() + ", templates at true scale";
    TrueScale scale =
        new TrueScale(units, JobPaper.shortened(stops.before(job)), new QuantityPrinter(units));
    for (TrueScaleTemplate template : scale.templates(estimate)) {
      scale.add(template);
    }
    scale.finishPage();
    return scale.pages;
  }

  private List<TrueScaleTemplate> templates(Estimate estimate) {
    List<TrueScaleTemplate> templates = new ArrayList<>();
    for (PlateCut cut : estimate.materials().plates()) {
      Map<Outline, String> shapes = new LinkedHashMap<>();
      for (PlateNeed need : cut.needs()) {
        if (!isRectangle(need.plate().outline())) {
          String name = need.quantity() + " x " + need.plate().name();
          shapes.merge(need.plate().outline(), name, (one, other) -> one + ", " + other);
        }
      }
      shapes.forEach(
          (outline, name) ->
              templates.add(
                  TrueScaleTemplate.of(name, cut.material().title() + bored(outline), outline)));
    }
    templates.sort(Comparator.comparingDouble(one -> one.bounds().heightMm()));
    for (SectionCut cut : estimate.materials().sections()) {
      for (TubeNeed need : cut.needs()) {
        for (int i = 0; i < need.copes().size(); i++) {
          String name = need.name() + ", wrap " + (i + 1) + " of " + need.copes().size();
          Cope cope = need.copes().get(i);
          String note =
              "for "
                  + cut.material().title()
                  + ", "
                  + printer.length(2 * Math.PI * cope.branchRadiusMm())
                  + " about";
          templates.add(TrueScaleTemplate.of(name, note, cope));
        }
      }
    }
    return templates;
  }

  /** The sizes of the round holes, each with how many there are. */
  private String bored(Outline outline) {
    Map<String, Integer> sizes = new TreeMap<>();
    for (Hole hole : outline.holes()) {
      if (hole instanceof RoundHole round) {
        sizes.merge(printer.length(round.diameterMm()), 1, Integer::sum);
      }
    }
    StringBuilder bored = new StringBuilder();
    sizes.forEach(
        (size, count) ->
            bored
                .append(bored.length() == 0 ? "; holes " : ", ")
                .append(count)
                .append(" x ")
                .append(size));
    return bored.toString();
  }

  /** A rectangle without holes is marked out from the sizes in the cut list. */
  private static boolean isRectangle(Outline outline) {
    Bounds bounds = outline.bounds();
    double aroundMm = bounds.widthMm() * bounds.heightMm();
    return outline.holes().isEmpty() && outline.areaMm2() > aroundMm * (1 - 1e-9);
  }

  private double acrossMm() {
    return TrueScalePage.roomAcrossMm(widthMm);
  }

  private double upMm() {
    return TrueScalePage.roomUpMm(heightMm);
  }

  private void add(TrueScaleTemplate template) {
    Bounds bounds = template.bounds();
    double captionMm = TrueScalePage.captionMm(template);
    if (bounds.widthMm() > acrossMm() || bounds.heightMm() + captionMm > upMm()) {
      finishPage();
      tile(template);
      return;
    }
    double cellMm = TrueScalePage.acrossMm(template);
    if (x + cellMm > acrossMm()) {
      x = 0;
      y += rowMm + GAP_MM;
      rowMm = 0;
    }
    if (y + bounds.heightMm() + captionMm > upMm()) {
      finishPage();
    }
    pieces.add(TrueScalePage.Piece.whole(template, x, y));
    x += cellMm + GAP_MM;
    rowMm = Math.max(rowMm, bounds.heightMm() + captionMm);
  }

  private void finishPage() {
    if (!pieces.isEmpty()) {
      pages.add(new TrueScalePage(widthMm, heightMm, job, pieces, List.of(), square));
    }
    pieces.clear();
    x = 0;
    y = 0;
    rowMm = 0;
  }

  private void tile(TrueScaleTemplate template) {
    Tiling tiling = new Tiling(template, acrossMm(), upMm());
    List<String> remarks = new ArrayList<>();
    remarks.add(template.name() + "; " + template.note());
    remarks.add(
        "Crosses of the same name lie on each other where sheets join, two a seam; a hole is drawn"
            + " on the sheet that shows all of it.");
    if (!tiling.blank().isEmpty()) {
      remarks.add(
          "Blank, and not printed: tile "
              + tiling.blank().stream().map(String::valueOf).collect(Collectors.joining(", "))
              + ".");
    }
    for (Tiling.Tile tile : tiling.drawn()) {
      String heading = job + ", tile " + tile.number() + " of " + tiling.count();
      pages.add(
          new TrueScalePage(
              widthMm,
              heightMm,
              heading,
              List.of(new TrueScalePage.Piece(template, tile.shown(), tile.marks(), 0, 0)),
              remarks,
              square));
    }
  }
}
