package trammel.brackets.bar;

import static trammel.engine.quantity.Amount.length;

import trammel.brackets.UnworkableLayoutException;
import trammel.engine.geometry.Point3;
import trammel.engine.quantity.Phrase;

/**
 * Room over the centre housing for a bridge that carries joints.
 *
 * @param housingHeightMm top of the housing above the axle's centre (mm)
 * @param seat the joints in their brackets
 */
public record HousingRoom(double housingHeightMm, JointSeat seat) {
  /** Air between housing and bridge, 1/4 in: common practice, no source. */
  public static final double AIR_MM = 25.4 / 4;

  /** Least depth of the bridge's webs, 1 in: common practice, no source. */
  public static final double LEAST_WEB_MM = 25.4;

  /** Height of the deck's top above the axle's centre for joints at a height (mm). */
  public double deckTopMm(double riseMm) {
    return riseMm - seat.reachMm();
  }

  /** Depth of the webs under the deck for joints at a height (mm). */
  public double webMm(double riseMm) {
    return deckTopMm(riseMm) - seat.plateMm() - housingHeightMm - AIR_MM;
  }

  /** Least height of the joints above the axle's centre that leaves room for the bridge (mm). */
  public double leastRiseMm() {
    return housingHeightMm + AIR_MM + LEAST_WEB_MM + seat.plateMm() + seat.reachMm();
  }

  /**
   * Accepts a height of the joints that leaves room for the bridge.
   *
   * @param riseMm joints above the axle's centre (mm)
   * @throws UnworkableLayoutException if it does not
   */
  public double require(double riseMm) {
    double neededMm = leastRiseMm();
    if (!(riseMm >= neededMm - 1e-6)) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "the upper joints are {} above the axle's centre; over a housing of {}"
                  + " the bridge and its brackets need {}. Set upper_rise to that or more,"
                  + " or choose a joint with a smaller barrel.",
              length(riseMm),
              length(housingHeightMm),
              length(neededMm)));
    }
    return riseMm;
  }

  /**
   * Accepts two joints side by side whose brackets stay apart.
   *
   * @param left the left joint on the axle
   * @param planRad how far its bracket is turned in plan
   * @throws UnworkableLayoutException if the brackets would meet in the middle
   */
  public static void requireApart(Point3 left, double planRad, JointSeat seat) {
    double neededMm = 2 * UpperSpread.halfAcrossMm(seat, Math.abs(planRad));
    double foundMm = 2 * left.yMm();
    if (!(foundMm >= neededMm - 1e-6)) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "the upper joints are {} apart at the axle; their brackets need {} side"
                  + " by side. Set upper_spread to that or more.",
              length(foundMm),
              length(neededMm)));
    }
  }
}
