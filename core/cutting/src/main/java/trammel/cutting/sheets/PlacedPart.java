package trammel.cutting.sheets;

/**
 * A part in its place.
 *
 * @param partId the part as the problem calls it
 * @param xMm its left edge, from the left edge of the sheet, mm
 * @param yMm its lower edge, from the lower edge of the sheet, mm
 * @param widthMm side along x as it lies, mm
 * @param heightMm side along y as it lies, mm
 * @param turnDeg how far it is turned from the way it is drawn, counter-clockwise: 0, 90, 180 or
 *     270
 */
public record PlacedPart(
    String partId, double xMm, double yMm, double widthMm, double heightMm, int turnDeg) {
  public PlacedPart {
    if (turnDeg < 0 || turnDeg > 270 || turnDeg % 90 != 0) {
      throw new IllegalArgumentException(
          "the part "
              + partId
              + " is turned by "
              + turnDeg
              + " degrees; it must be 0, 90, 180 or 270. Turn it by quarters.");
    }
  }

  /** True when its width as drawn lies along the sheet's y. */
  public boolean turned() {
    return turnDeg % 180 != 0;
  }
}
