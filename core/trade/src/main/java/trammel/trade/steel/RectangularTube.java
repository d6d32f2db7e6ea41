package trammel.trade.steel;

import trammel.engine.quantity.Given;

/**
 * Square or rectangular steel tube with the usual rolled corner: outside radius twice the wall,
 * inside radius once.
 *
 * @param heightMm longer or equal outside side, mm, up to 500
 * @param widthMm other outside side, mm, more than four walls
 * @param wallMm wall, mm
 */
public record RectangularTube(double heightMm, double widthMm, double wallMm)
    implements SteelSection {

  public RectangularTube {
    Given.positive("height of a tube", heightMm, 500, "mm", "Measure the tube across its outside.");
    Given.positive(
        "width of a tube in mm, beside a height of " + heightMm + " mm",
        widthMm,
        heightMm,
        "",
        "Give the longer side as the height.");
    Given.positive(
        "wall of a tube in mm, beside a width of " + widthMm + " mm",
        wallMm,
        widthMm / 4,
        "",
        "Give the wall of the tube; its rolled corners take up four walls of each side.");
  }

  /** Square tube. */
  public static RectangularTube square(double sideMm, double wallMm) {
    return new RectangularTube(sideMm, sideMm, wallMm);
  }

  /**
   * Area of steel, mm²: 2t(h + w − 8t) for the flats and 3πt² for the four corners, a ring of radii
   * t and 2t (closed form).
   */
  @Override
  public double sectionAreaMm2() {
    return 2 * wallMm * (heightMm + widthMm - 8 * wallMm) + 3 * Math.PI * wallMm * wallMm;
  }

  @Override
  public double outsidePerimeterMm() {
    return 2 * (heightMm + widthMm - 8 * wallMm) + 4 * Math.PI * wallMm;
  }

  @Override
  public String usName() {
    return ShopLength.inches(heightMm)
        + " x "
        + ShopLength.inches(widthMm)
        + " x "
        + ShopLength.decimalInches(wallMm)
        + " wall "
        + shape();
  }

  @Override
  public String metricName() {
    return ShopLength.millimetres(heightMm)
        + " x "
        + ShopLength.millimetres(widthMm)
        + " x "
        + ShopLength.millimetres(wallMm)
        + " mm "
        + shape();
  }

  private String shape() {
    return heightMm == widthMm ? "square tube" : "rectangular tube";
  }
}
