package trammel.app.documents;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.app.drawings.Drawing;
import trammel.app.drawings.TrueScalePage;
import trammel.app.drawings.TrueScaleTemplate;
import trammel.app.drawings.TrueScaleTemplate.Mark;
import trammel.app.text.Stops;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.TubeNeed;
import trammel.planning.estimate.Estimate;
import trammel.planning.estimate.PlateCut;
import trammel.planning.estimate.SectionCut;
import trammel.reading.quantity.UnitSystem;
import trammel.trade.plates.Bounds;
import trammel.trade.plates.Outline;

/** Shaped plates and cope wraps of a job at true scale, row by row on sheets of Letter or A4. */
public final class TrueScale {
  private static final double LETTER_WIDTH_MM = 215.9;
  private static final double LETTER_HEIGHT_MM = 279.4;
  private static final double A4_WIDTH_MM = 210;
  private static final double A4_HEIGHT_MM = 297;
  private static final double GAP_MM = 8;

  private final double widthMm;
  private final double heightMm;
  private final String job;
  private final List<Drawing> pages = new ArrayList<>();
  private final List<TrueScalePage.Piece> pieces = new ArrayList<>();
  private double x;
  private double y;
  private double rowMm;

  /** Width of the paper that is read in these units (mm). */
  public static double paperWidthMm(UnitSystem units) {
    return units == UnitSystem.US ? LETTER_WIDTH_MM : A4_WIDTH_MM;
  }

  /** Height of the paper that is read in these units (mm). */
  public static double paperHeightMm(UnitSystem units) {
    return units == UnitSystem.US ? LETTER_HEIGHT_MM : A4_HEIGHT_MM;
  }

  private TrueScale(UnitSystem units, String job) {
    widthMm = paperWidthMm(units);
    heightMm = paperHeightMm(units);
    this.job = job;
  }

  /** The sheets: plates first, then wraps; what is larger than a sheet is tiled. */
  public static List<Drawing> of(Estimate estimate, UnitSystem units, Stops stops) {
    String job = "Job " + estimate.draft().job().header().number() + ", templates at true scale";
    TrueScale scale = new TrueScale(units, JobPaper.shortened(stops.before(job)));
    for (TrueScaleTemplate template : templates(estimate)) {
      scale.add(template);
    }
    scale.finishPage();
    return scale.pages;
  }

  private static List<TrueScaleTemplate> templates(Estimate estimate) {
    List<TrueScaleTemplate> templates = new ArrayList<>();
    Map<Outline, String> shapes = new LinkedHashMap<>();
    for (PlateCut cut : estimate.materials().plates()) {
      for (PlateNeed need : cut.needs()) {
        if (!isRectangle(need.plate().outline())) {
          String name = need.quantity() + " x " + need.plate().name();
          shapes.merge(need.plate().outline(), name, (one, other) -> one + ", " + other);
        }
      }
    }
    shapes.forEach((outline, name) -> templates.add(TrueScaleTemplate.of(name, outline)));
    templates.sort(Comparator.comparingDouble(one -> one.bounds().heightMm()));
    for (SectionCut cut : estimate.materials().sections()) {
      for (TubeNeed need : cut.needs()) {
        for (int i = 0; i < need.copes().size(); i++) {
          String name = need.name() + ", wrap " + (i + 1) + " of " + need.copes().size();
          templates.add(TrueScaleTemplate.of(name, need.copes().get(i)));
        }
      }
    }
    return templates;
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
    if (bounds.widthMm() > acrossMm() || bounds.heightMm() + GAP_MM > upMm()) {
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
    if (y + bounds.heightMm() + GAP_MM > upMm()) {
      finishPage();
    }
    pieces.add(new TrueScalePage.Piece(template, bounds, x, y));
    x += cellMm + GAP_MM;
    rowMm = Math.max(rowMm, bounds.heightMm());
  }

  private void finishPage() {
    if (!pieces.isEmpty()) {
      pages.add(new TrueScalePage(widthMm, heightMm, job, pieces));
    }
    pieces.clear();
    x = 0;
    y = 0;
    rowMm = 0;
  }

  private void tile(TrueScaleTemplate template) {
    Bounds whole = template.bounds();
    double overlapMm = TrueScalePage.OVERLAP_MM;
    double stepX = acrossMm() - overlapMm;
    double stepY = upMm() - GAP_MM - overlapMm;
    int columns = (int) Math.max(1, Math.ceil((whole.widthMm() - overlapMm) / stepX));
    int rows = (int) Math.max(1, Math.ceil((whole.heightMm() - overlapMm) / stepY));
    TrueScaleTemplate marked = template.with(marks(whole, columns, rows, stepX, stepY));
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        double left = whole.minXMm() + column * stepX;
        double top = whole.maxYMm() - row * stepY;
        Bounds shown =
            new Bounds(
                left,
                Math.max(whole.minYMm(), top - stepY - overlapMm),
                Math.min(whole.maxXMm(), left + stepX + overlapMm),
                top);
        TrueScalePage.Piece piece = new TrueScalePage.Piece(marked, shown, 0, 0);
        if (piece.isEmpty()) {
          continue;
        }
        String heading =
            job
                + ", "
                + template.name()
                + ", tile "
                + (row * columns + column + 1)
                + " of "
                + rows * columns;
        pages.add(new TrueScalePage(widthMm, heightMm, heading, List.of(piece)));
      }
    }
  }

  /** Two crosses in the middle of every overlap, near the ends of the seam in each tile. */
  private static List<Mark> marks(Bounds whole, int columns, int rows, double stepX, double stepY) {
    List<Mark> marks = new ArrayList<>();
    double half = TrueScalePage.OVERLAP_MM / 2;
    char name = 'A';
    for (int column = 1; column < columns; column++) {
      double x = whole.minXMm() + column * stepX + half;
      for (double share : new double[] {0.2, 0.8}) {
        marks.add(
            new Mark(Character.toString(name++), x, whole.minYMm() + share * whole.heightMm()));
      }
    }
    for (int row = 1; row < rows; row++) {
      double y = whole.maxYMm() - row * stepY - half;
      for (double share : new double[] {0.2, 0.8}) {
        marks.add(
            new Mark(Character.toString(name++), whole.minXMm() + share * whole.widthMm(), y));
      }
    }
    return marks;
  }
}
