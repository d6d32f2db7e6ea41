package trammel.app.drawings;

import java.util.List;
import trammel.app.drawings.Paper.Anchor;

/**
 * Charts on an upright page of paper, two side by side, black on white with one accent.
 *
 * @param title heading of the page
 * @param subtitle line below it
 * @param charts the charts, row by row
 * @param footing line at the foot of the page
 * @param paper the paper; more than four rows make the page longer
 */
public record ChartSheet(
    String title, String subtitle, List<Chart> charts, String footing, PaperSize paper)
    implements Drawing {
  private static final int MOST_ROWS = 4;
  private static final double MARGIN_MM = 12;
  private static final double HEAD_MM = 20;
  private static final double FOOT_MM = 15;

  /** Nothing is set nearer to the edge of the paper: printers leave it white. */
  private static final double FROM_THE_EDGE_MM = 9;

  private static final double LEFT_MM = 17;
  private static final double BELOW_MM = 14;
  private static final double ABOVE_MM = 11;
  private static final double GAP_MM = 6;
  private static final double LARGE_MM = 5;
  private static final double TEXT_MM = 3.2;
  private static final double SMALL_MM = 2.6;
  private static final int COLUMNS = 2;

  /** A long subtitle stands on so many lines. */
  private static final int SUBTITLE_LINES = 2;

  /** The smallest letters that are read on paper (ISO 3098-1: 2.5 mm or next to it). */
  private static final double LEAST_MM = 2.3;

  /** Room that a letter takes on average, as a share of its height. */
  private static final double LETTER = 0.55;

  /** Copies the list. */
  public ChartSheet {
    charts = List.copyOf(charts);
  }

  @Override
  public double widthMm() {
    return paper.widthMm();
  }

  @Override
  public double heightMm() {
    int rows = (charts.size() + COLUMNS - 1) / COLUMNS;
    return Math.max(paper.heightMm(), MARGIN_MM + HEAD_MM + rows * rowMm() + FOOT_MM);
  }

  /** Four rows fill a sheet. */
  private double rowMm() {
    return (paper.heightMm() - MARGIN_MM - HEAD_MM - FOOT_MM) / MOST_ROWS;
  }

  @Override
  public void drawOn(Paper page) {
    heading(page, MARGIN_MM + LARGE_MM, LARGE_MM, title);
    double subtitleY = MARGIN_MM + LARGE_MM + 6;
    double across = paper.widthMm() - 2 * MARGIN_MM;
    if (Paper.widthMm(subtitle, TEXT_MM) <= across) {
      page.text(MARGIN_MM, subtitleY, TEXT_MM, Anchor.START, subtitle);
    } else {
      for (String line : Paper.lines(subtitle, SMALL_MM, across, SUBTITLE_LINES)) {
        page.text(MARGIN_MM, subtitleY - 0.6, SMALL_MM, Anchor.START, line);
        subtitleY += SMALL_MM + 1;
      }
    }
    double columnMm = (paper.widthMm() - 2 * MARGIN_MM - GAP_MM) / COLUMNS;
    for (int i = 0; i < charts.size(); i++) {
      double x = MARGIN_MM + i % COLUMNS * (columnMm + GAP_MM);
      double y = MARGIN_MM + HEAD_MM + i / COLUMNS * rowMm();
      draw(page, charts.get(i), x, y, columnMm);
    }
    page.text(MARGIN_MM, heightMm() - FROM_THE_EDGE_MM, SMALL_MM, Anchor.START, footing);
  }

  /** A heading across the page, in letters that can be read; what has no room is cut short. */
  private void heading(Paper page, double y, double sizeMm, String text) {
    double room = paper.widthMm() - 2 * MARGIN_MM;
    double letters = Math.max(LEAST_MM, Paper.fitting(text, sizeMm, room));
    page.text(MARGIN_MM, y, letters, Anchor.START, Paper.cut(text, letters, room));
  }

  private void draw(Paper page, Chart chart, double x, double y, double columnMm) {
    Panel panel =
        new Panel(
            x + LEFT_MM,
            y + ABOVE_MM,
            columnMm - LEFT_MM,
            rowMm() - ABOVE_MM - BELOW_MM,
            across(chart),
            up(chart));
    page.text(x, y + TEXT_MM, TEXT_MM, Anchor.START, chart.title());
    legend(page, chart, x, y + TEXT_MM + 4.6);
    grid(page, panel);
    for (Curve curve : chart.curves()) {
      page.path(panel.xs(curve.xs()), panel.ys(curve.ys()), curve.pen());
    }
    page.frame(panel.left(), panel.top(), panel.width(), panel.height(), Pen.FRAME);
    page.text(
        panel.left() + panel.width() / 2,
        panel.top() + panel.height() + 9,
        SMALL_MM,
        Anchor.MIDDLE,
        chart.across());
    page.upright(x + SMALL_MM, panel.top() + panel.height() / 2, SMALL_MM, chart.up());
  }

  private static void legend(Paper page, Chart chart, double x, double y) {
    double at = x;
    for (Curve curve : chart.curves()) {
      page.line(at, y - SMALL_MM / 3, at + 7, y - SMALL_MM / 3, curve.pen());
      page.text(at + 8, y, SMALL_MM, Anchor.START, curve.label());
      at += 8 + LETTER * SMALL_MM * curve.label().length() + 4;
    }
  }

  private static void grid(Paper page, Panel panel) {
    double bottom = panel.top() + panel.height();
    for (double tick : panel.across().ticks()) {
      double x = panel.x(tick);
      page.line(x, panel.top(), x, bottom, tick == 0 ? Pen.AXIS : Pen.GRID);
      page.text(x, bottom + 4, SMALL_MM, Anchor.MIDDLE, panel.across().label(tick));
    }
    for (double tick : panel.up().ticks()) {
      double y = panel.y(tick);
      page.line(panel.left(), y, panel.left() + panel.width(), y, Pen.GRID);
      page.text(panel.left() - 1.2, y + SMALL_MM / 3, SMALL_MM, Anchor.END, panel.up().label(tick));
    }
  }

  private static Scale across(Chart chart) {
    double least = Double.POSITIVE_INFINITY;
    double greatest = Double.NEGATIVE_INFINITY;
    for (Curve curve : chart.curves()) {
      for (double x : curve.xs()) {
        least = Math.min(least, x);
        greatest = Math.max(greatest, x);
      }
    }
    return least <= greatest ? Scale.holding(least, greatest, 1e-3) : Scale.holding(0, 1, 1);
  }

  private static Scale up(Chart chart) {
    double least = Double.POSITIVE_INFINITY;
    double greatest = Double.NEGATIVE_INFINITY;
    for (Curve curve : chart.curves()) {
      for (double y : curve.ys()) {
        least = Math.min(least, y);
        greatest = Math.max(greatest, y);
      }
    }
    return least <= greatest
        ? Scale.holding(least, greatest, chart.leastSpan())
        : Scale.holding(0, 1, 1);
  }

  /** Where a chart's axes lie on the page. */
  private record Panel(
      double left, double top, double width, double height, Scale across, Scale up) {
    double x(double value) {
      return left + width * across.share(value);
    }

    double y(double value) {
      return top + height * (1 - up.share(value));
    }

    double[] xs(double[] values) {
      double[] xs = new double[values.length];
      for (int i = 0; i < xs.length; i++) {
        xs[i] = x(values[i]);
      }
      return xs;
    }

    double[] ys(double[] values) {
      double[] ys = new double[values.length];
      for (int i = 0; i < ys.length; i++) {
        ys[i] = y(values[i]);
      }
      return ys;
    }
  }
}
