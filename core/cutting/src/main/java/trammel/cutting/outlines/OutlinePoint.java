package trammel.cutting.outlines;

/**
 * A corner of an outline.
 *
 * @param xMm mm, in the drawing's own axes
 * @param yMm mm, in the drawing's own axes
 */
public record OutlinePoint(double xMm, double yMm) {
  /**
   * @throws IllegalArgumentException when a value is not a number
   */
  public OutlinePoint {
    if (!Double.isFinite(xMm) || !Double.isFinite(yMm)) {
      throw new IllegalArgumentException(
          "a corner of an outline lies at ("
              + xMm
              + ", "
              + yMm
              + "); both must be numbers in mm. Check the drawing.");
    }
  }
}
