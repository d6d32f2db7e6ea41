package trammel.trade.welding;

import trammel.engine.quantity.Given;

/**
 * Flat-faced fillet in a square corner.
 *
 * @param firstLegMm leg along one plate, mm, up to 50
 * @param secondLegMm leg along the other, mm
 */
public record FilletWeld(double firstLegMm, double secondLegMm) implements BeadJoint {

  public FilletWeld {
    checkedLeg(firstLegMm);
    checkedLeg(secondLegMm);
  }

  /** Fillet with equal legs. */
  public static FilletWeld ofLeg(double legMm) {
    return new FilletWeld(legMm, legMm);
  }

  private static void checkedLeg(double legMm) {
    Given.positive("leg of a fillet weld", legMm, 50, "mm", "Give the leg, not the throat.");
  }

  /** Least distance from the root to the face, mm; 0.707 of the leg when the legs are equal. */
  public double throatMm() {
    return firstLegMm * secondLegMm / Math.hypot(firstLegMm, secondLegMm);
  }

  @Override
  public double areaMm2() {
    return firstLegMm * secondLegMm / 2;
  }

  @Override
  public double areaLaidMm2(double overWeldFraction) {
    return areaMm2() * (1 + overWeldFraction) * (1 + overWeldFraction);
  }

  @Override
  public String title() {
    return "fillet";
  }

  @Override
  public double sizeMm() {
    return Math.min(firstLegMm, secondLegMm);
  }
}
