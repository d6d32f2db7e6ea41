package trammel.app.drawings;

/** A drawing of known size that can be put on any paper. */
public interface Drawing {
  /** Width (mm). */
  double widthMm();

  /** Height (mm). */
  double heightMm();

  /** Draws it with its upper left corner in that of the paper. */
  void drawOn(Paper paper);

  /** The drawing as an SVG file. */
  default String svg() {
    SvgPage page = new SvgPage(widthMm(), heightMm());
    drawOn(page);
    return page.svg();
  }

  /**
   * The drawing as SVG within a page of HTML, as wide as the room there.
   *
   * @param label what it shows, for whoever does not see it
   */
  default String inlineSvg(String label) {
    SvgPage page = SvgPage.inline(widthMm(), heightMm(), label);
    drawOn(page);
    return page.svg();
  }
}
