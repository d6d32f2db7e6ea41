package trammel.app.drawings;

import trammel.reading.quantity.DecimalText;

/** A page of paper in millimetres, drawn on and then written as SVG. */
final class SvgPage implements Paper {
  private static final int PLACES = 3;

  private final StringBuilder svg = new StringBuilder(8192);

  SvgPage(double widthMm, double heightMm) {
    String width = number(widthMm);
    String height = number(heightMm);
    svg.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"").append(width);
    svg.append("mm\" height=\"").append(height).append("mm\" viewBox=\"0 0 ");
    svg.append(width).append(' ').append(height).append("\">\n");
    svg.append("<rect width=\"100%\" height=\"100%\" fill=\"white\"/>\n");
  }

  private SvgPage() {}

  /**
   * A page within HTML: no heading of its own, and as wide as its room but not wider than drawn.
   */
  static SvgPage inline(double widthMm, double heightMm, String label) {
    SvgPage page = new SvgPage();
    page.svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-label=\"");
    page.svg.append(Markup.escaped(label)).append("\" style=\"width:100%;max-width:");
    page.svg.append(number(widthMm)).append("mm\" viewBox=\"0 0 ").append(number(widthMm));
    page.svg.append(' ').append(number(heightMm)).append("\">\n");
    return page;
  }

  @Override
  public SvgPage line(double x1, double y1, double x2, double y2, Pen pen) {
    svg.append("<line x1=\"").append(number(x1)).append("\" y1=\"").append(number(y1));
    svg.append("\" x2=\"").append(number(x2)).append("\" y2=\"").append(number(y2)).append('"');
    return end(pen);
  }

  @Override
  public SvgPage frame(double x, double y, double width, double height, Pen pen) {
    svg.append("<rect x=\"").append(number(x)).append("\" y=\"").append(number(y));
    svg.append("\" width=\"").append(number(width)).append("\" height=\"").append(number(height));
    svg.append("\" fill=\"none\"");
    return end(pen);
  }

  @Override
  public SvgPage path(double[] xs, double[] ys, Pen pen) {
    svg.append("<polyline points=\"");
    for (int i = 0; i < xs.length; i++) {
      svg.append(i == 0 ? "" : " ").append(number(xs[i])).append(',').append(number(ys[i]));
    }
    svg.append("\" fill=\"none\"");
    return end(pen);
  }

  @Override
  public SvgPage area(double[] xs, double[] ys, String fill, Pen pen) {
    svg.append("<polygon points=\"");
    for (int i = 0; i < xs.length; i++) {
      svg.append(i == 0 ? "" : " ").append(number(xs[i])).append(',').append(number(ys[i]));
    }
    svg.append("\" fill=\"").append(fill).append('"');
    return end(pen);
  }

  @Override
  public SvgPage disc(double x, double y, double radius, String fill, Pen pen) {
    svg.append("<circle cx=\"").append(number(x)).append("\" cy=\"").append(number(y));
    svg.append("\" r=\"").append(number(radius)).append("\" fill=\"").append(fill).append('"');
    return end(pen);
  }

  private SvgPage end(Pen pen) {
    svg.append(" stroke=\"").append(pen.colour()).append("\" stroke-width=\"");
    svg.append(number(pen.widthMm())).append('"');
    if (!pen.dashes().isEmpty()) {
      svg.append(" stroke-dasharray=\"").append(pen.dashes()).append('"');
    }
    svg.append("/>\n");
    return this;
  }

  @Override
  public SvgPage text(double x, double y, double sizeMm, Anchor anchor, String text) {
    return text(x, y, sizeMm, anchor, false, text);
  }

  @Override
  public SvgPage upright(double x, double y, double sizeMm, String text) {
    return text(x, y, sizeMm, Anchor.MIDDLE, true, text);
  }

  private SvgPage text(
      double x, double y, double sizeMm, Anchor anchor, boolean upright, String text) {
    svg.append("<text x=\"").append(number(x)).append("\" y=\"").append(number(y)).append('"');
    if (upright) {
      svg.append(" transform=\"rotate(-90 ").append(number(x)).append(' ').append(number(y));
      svg.append(")\"");
    }
    svg.append(" font-family=\"DejaVu Sans, Verdana, sans-serif\" font-size=\"");
    svg.append(number(sizeMm)).append("\" text-anchor=\"").append(anchor.word()).append("\">");
    svg.append(Markup.escaped(text)).append("</text>\n");
    return this;
  }

  /** The whole file. */
  String svg() {
    return svg + "</svg>\n";
  }

  private static String number(double value) {
    return DecimalText.trimmed(value, PLACES);
  }
}
