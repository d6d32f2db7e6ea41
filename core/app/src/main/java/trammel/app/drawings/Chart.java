package trammel.app.drawings;

import java.util.List;

/**
 * Curves over one pair of axes.
 *
 * @param title what is shown
 * @param across name and unit of the horizontal axis
 * @param up name and unit of the vertical axis
 * @param leastSpan least span of the vertical axis, so that rounding is not drawn as motion
 * @param curves the curves
 */
public record Chart(String title, String across, String up, double leastSpan, List<Curve> curves) {
  /** Copies the list. */
  public Chart {
    curves = List.copyOf(curves);
  }
}
