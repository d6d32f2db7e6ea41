package trammel.trade.welding;

import trammel.engine.quantity.Given;

/**
 * Reinforcement that stands above the plate: a low parabola.
 *
 * @param widthMm width, mm, up to 100
 * @param heightMm height, mm, not more than the width
 */
public record WeldCap(double widthMm, double heightMm) {

  public WeldCap {
    Given.within("width of a weld cap", widthMm, 0, 100, "mm", "Give the width of the bead.");
    Given.within(
        "height of a weld cap", heightMm, 0, widthMm, "mm", "Give the height above the plate.");
  }

  /** Two thirds of width times height, mm². */
  public double areaMm2() {
    return widthMm * heightMm * 2 / 3;
  }
}
