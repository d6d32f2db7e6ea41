package trammel.trade.welding;

import trammel.trade.given.Given;

/** What the groove welds have in common: limits of their sizes. */
final class Groove {

  private Groove() {}

  static void checkedEdge(double thicknessMm, double rootGapMm) {
    Given.positive(thicknessMm, 100, "Thickness at a groove weld in mm", "Give the thinner plate.");
    Given.between(rootGapMm, 0, 20, "Root gap of a groove weld in mm", "Give the fit-up gap.");
  }

  static void checkedPreparation(double thicknessMm, double landMm, double angleRad) {
    Given.between(
        landMm, 0, thicknessMm, "Land of a groove weld in mm", "It is the edge left square.");
    Given.positive(
        angleRad,
        Math.toRadians(120),
        "Angle of a groove weld in rad",
        "Give the bevel of one plate, or for a V the angle between both faces.");
  }
}
