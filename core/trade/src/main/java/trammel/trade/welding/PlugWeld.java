package trammel.trade.welding;

import trammel.engine.quantity.Given;

/**
 * A round hole filled with weld (plug or rosette weld).
 *
 * @param diameterMm diameter of the hole, mm, up to 50
 * @param depthMm thickness of the plate with the hole, mm, up to 50
 */
public record PlugWeld(double diameterMm, double depthMm) implements SpotJoint {

  public PlugWeld {
    Given.positive("hole of a plug weld", diameterMm, 50, "mm", "Give the size of the hole.");
    Given.positive("depth of a plug weld", depthMm, 50, "mm", "Give the plate with the hole.");
  }

  @Override
  public double volumeMm3() {
    return Math.PI * diameterMm * diameterMm / 4 * depthMm;
  }

  @Override
  public String title() {
    return "plug";
  }

  @Override
  public double sizeMm() {
    return diameterMm;
  }
}
