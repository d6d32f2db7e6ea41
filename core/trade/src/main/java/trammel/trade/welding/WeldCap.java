package trammel.trade.welding;

import trammel.trade.given.Given;

/**
 * Reinforcement that stands above the plate: a low parabola.
 *
 * @param widthMm width, mm, up to 100
 * @param heightMm height, mm, not more than the width
 */
public record WeldCap(double widthMm, double heightMm) {

  public WeldCap {
    Given.between(widthMm, 0, 100, "Width of a weld cap in mm", "Give the width of the bead.");
    Given.between(
        heightMm, 0, widthMm, "Height of a weld cap in mm", "Give the height above the plate.");
  }

  /** Two thirds of width times height, mm². */
  public double areaMm2() {
    return widthMm * heightMm * 2 / 3;
  }
}
