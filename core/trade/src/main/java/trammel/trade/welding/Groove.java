package trammel.trade.welding;

import trammel.engine.quantity.Given;

/** What the groove welds have in common: limits of their sizes. */
final class Groove {

  private Groove() {}

  static void checkedEdge(double thicknessMm, double rootGapMm) {
    Given.positive("thickness at a groove weld", thicknessMm, 100, "mm", "Give the thinner plate.");
    Given.within("root gap of a groove weld", rootGapMm, 0, 20, "mm", "Give the fit-up gap.");
  }

  static void checkedPreparation(double thicknessMm, double landMm, double angleRad) {
    Given.within(
        "land of a groove weld", landMm, 0, thicknessMm, "mm", "It is the edge left square.");
    Given.positive(
        "angle of a groove weld in rad",
        angleRad,
        Math.toRadians(120),
        "",
        "Give the bevel of one plate, or for a V the angle between both faces.");
  }
}
