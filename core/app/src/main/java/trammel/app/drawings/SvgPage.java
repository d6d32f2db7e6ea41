package trammel.app.drawings;

import trammel.planning.quantity.DecimalText;

/** A page of paper in millimetres, drawn on and then written as SVG. */
final class SvgPage {
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

  /** Where a text stands against its point. */
  enum Anchor {
    START("start"),
    MIDDLE("middle"),
    END("end");

    private final String word;

    Anchor(String word) {
      this.word = word;
    }
  }

  SvgPage line(double x1, double y1, double x2, double y2, Pen pen) {
    svg.append("<line x1=\"").append(number(x1)).append("\" y1=\"").append(number(y1));
    svg.append("\" x2=\"").append(number(x2)).append("\" y2=\"").append(number(y2)).append('"');
    return end(pen);
  }

  SvgPage frame(double x, double y, double width, double height, Pen pen) {
    svg.append("<rect x=\"").append(number(x)).append("\" y=\"").append(number(y));
    svg.append("\" width=\"").append(number(width)).append("\" height=\"").append(number(height));
    svg.append("\" fill=\"none\"");
    return end(pen);
  }

  SvgPage path(double[] xs, double[] ys, Pen pen) {
    svg.append("<polyline points=\"");
    for (int i = 0; i < xs.length; i++) {
      svg.append(i == 0 ? "" : " ").append(number(xs[i])).append(',').append(number(ys[i]));
    }
    svg.append("\" fill=\"none\"");
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

  SvgPage text(double x, double y, double sizeMm, Anchor anchor, String text) {
    return text(x, y, sizeMm, anchor, false, text);
  }

  /** A text that is read from the right-hand side of the paper, for upright axes. */
  SvgPage upright(double x, double y, double sizeMm, String text) {
    return text(x, y, sizeMm, Anchor.MIDDLE, true, text);
  }

  private SvgPage text(
      double x, double y, double sizeMm, Anchor anchor, boolean upright, String text) {
    svg.append("<text x=\"").append(number(x)).append("\" y=\"").append(number(y)).append('"');
    if (upright) {
      svg.append(" transform=\"rotate(-90 ").append(number(x)).append(' ').append(number(y));
      svg.append(")\"");
    }
    svg.append(" font-family=\"Helvetica, Arial, sans-serif\" font-size=\"");
    svg.append(number(sizeMm)).append("\" text-anchor=\"").append(anchor.word).append("\">");
    svg.append(escaped(text)).append("</text>\n");
    return this;
  }

  /** The text with what XML takes for its own written out; control characters become blanks. */
  static String escaped(String text) {
    StringBuilder escaped = new StringBuilder(text.length() + 16);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> escaped.append("&amp;");
        case '<' -> escaped.append("&lt;");
        case '>' -> escaped.append("&gt;");
        case '"' -> escaped.append("&quot;");
        case '\'' -> escaped.append("&#39;");
        default -> escaped.append(isPrintable(text, i) ? c : ' ');
      }
    }
    return escaped.toString();
  }

  /** Half a surrogate pair, and the two last code units, have no place in XML. */
  private static boolean isPrintable(String text, int index) {
    char c = text.charAt(index);
    if (Character.isHighSurrogate(c)) {
      return index + 1 < text.length() && Character.isLowSurrogate(text.charAt(index + 1));
    }
    if (Character.isLowSurrogate(c)) {
      return index > 0 && Character.isHighSurrogate(text.charAt(index - 1));
    }
    return !Character.isISOControl(c) && c < '\ufffe';
  }

  /** The whole file. */
  String svg() {
    return svg + "</svg>\n";
  }

  private static String number(double value) {
    return DecimalText.trimmed(value, PLACES);
  }
}
