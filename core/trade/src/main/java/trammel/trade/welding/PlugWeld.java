package trammel.trade.welding;

import trammel.trade.given.Given;

/**
 * A round hole filled with weld (plug or rosette weld).
 *
 * @param diameterMm diameter of the hole, mm, up to 50
 * @param depthMm thickness of the plate with the hole, mm, up to 50
 */
public record PlugWeld(double diameterMm, double depthMm) implements SpotJoint {

  public PlugWeld {
    Given.positive(diameterMm, 50, "Hole of a plug weld in mm", "Give the size of the hole.");
    Given.positive(depthMm, 50, "Depth of a plug weld in mm", "Give the plate with the hole.");
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
