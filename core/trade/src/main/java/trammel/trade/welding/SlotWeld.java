package trammel.trade.welding;

import trammel.engine.quantity.Given;

/**
 * A slot with round ends filled with weld.
 *
 * @param widthMm width, mm, up to 50
 * @param overallMm length over the round ends, mm, at least the width
 * @param depthMm thickness of the plate with the slot, mm, up to 50
 */
public record SlotWeld(double widthMm, double overallMm, double depthMm) implements SpotJoint {

  public SlotWeld {
    Given.positive("width of a slot weld", widthMm, 50, "mm", "Give the width of the slot.");
    Given.within(
        "length of a slot weld over its ends",
        overallMm,
        widthMm,
        500,
        "mm",
        "A slot is at least as long as it is wide.");
    Given.positive("depth of a slot weld", depthMm, 50, "mm", "Give the plate with the slot.");
  }

  @Override
  public double volumeMm3() {
    return (widthMm * (overallMm - widthMm) + Math.PI * widthMm * widthMm / 4) * depthMm;
  }

  @Override
  public String title() {
    return "slot";
  }

  @Override
  public double sizeMm() {
    return widthMm;
  }
}
