package trammel.app.drawings;

/**
 * One curve of a chart.
 *
 * @param label what it shows, for the legend
 * @param xs values along the horizontal axis, rising
 * @param ys values along the vertical axis, one for each
 * @param pen how it is drawn
 */
public record Curve(String label, double[] xs, double[] ys, Pen pen) {
  /**
   * Keeps its own copy of the values.
   *
   * @throws IllegalArgumentException if they do not go together or are not finite
   */
  public Curve {
    if (xs.length != ys.length) {
      throw new IllegalArgumentException(
          "The curve " + label + " has " + xs.length + " x and " + ys.length + " y values.");
    }
    for (int i = 0; i < xs.length; i++) {
      if (!Double.isFinite(xs[i]) || !Double.isFinite(ys[i])) {
        throw new IllegalArgumentException(
            "The curve " + label + " has a point (" + xs[i] + ", " + ys[i] + ") without a place.");
      }
    }
    xs = xs.clone();
    ys = ys.clone();
  }

  @Override
  public double[] xs() {
    return xs.clone();
  }

  @Override
  public double[] ys() {
    return ys.clone();
  }
}
