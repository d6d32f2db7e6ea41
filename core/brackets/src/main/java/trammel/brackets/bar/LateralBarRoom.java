package trammel.brackets.bar;

import static trammel.engine.quantity.Amount.length;

import trammel.brackets.UnworkableLayoutException;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Chassis;
import trammel.engine.quantity.Phrase;
import trammel.trade.plates.RailBracket;

/**
 * Room across the vehicle for a level lateral bar: its frame end hangs inside one rail, its axle
 * end stands on the tube as far over to the other side as rails, housing and the brackets of the
 * other bars leave.
 *
 * @param chassis the vehicle
 * @param bars plane of the other bars
 * @param makeUp joints and plates
 * @param railGapMm gap kept to rails (mm)
 */
public record LateralBarRoom(Chassis chassis, BarPlane bars, BarMakeUp makeUp, double railGapMm) {
  /** Kept between the welds of neighbouring brackets, 1/4 in: common practice, no source. */
  private static final double WELD_ROOM_MM = 25.4 / 4;

  /** A shorter bar shoves the axle sideways too far; 16 in: common practice, no source. */
  private static final double SHORTEST_MM = 16 * 25.4;

  /** The usual distance behind the axle, 6 in: common practice, no source. */
  private static final double USUAL_BEHIND_MM = 6 * 25.4;

  /** Air to the centre housing, 1/2 in, and 1/8 in for the tape: common practice, no source. */
  private static final double HOUSING_AIR_MM = 25.4 * 5 / 8;

  /**
   * How far behind the axle the bar passes the centre housing wherever the axle is: the usual
   * distance where that does, else the least that does, in steps of 1/8 in (mm).
   */
  public double clearBehindMm() {
    double radiusMm = makeUp.tube().tube().outsideDiameterMm() / 2;
    double clearMm = chassis.axle().takenHousingRadiusMm() + radiusMm + HOUSING_AIR_MM;
    return Math.max(USUAL_BEHIND_MM, NearestHeight.roundedUpMm(Math.max(clearMm, besideTubeMm())));
  }

  /** Half the length along the tube that the axle bracket takes (mm). */
  public double halfBaseMm() {
    JointSeat seat = makeUp.axleSeat();
    double baseMm = RailBracket.baseByRuleMm(seat.reachMm(), seat.noseMm());
    return Math.max(baseMm / 2, seat.joint().barrelRadiusMm());
  }

  /**
   * The joint on the frame.
   *
   * @param side +1 for the left rail, -1 for the right
   */
  public Point3 frame(int side, double behindMm, double riseMm) {
    double inMm = chassis.rails().innerFaceMm(-behindMm);
    double acrossMm = inMm - makeUp.frameSeat().joint().barrelRadiusMm() - railGapMm;
    return new Point3(-behindMm, side * acrossMm, height(riseMm));
  }

  /**
   * The joint on the axle.
   *
   * @param frame the joint on the frame
   */
  public Point3 axle(Point3 frame, double behindMm, double riseMm) {
    requireBehindTube(behindMm);
    double outMm = outermostCentreMm(behindMm);
    double lengthMm = Math.abs(frame.yMm()) + outMm;
    if (!(lengthMm >= SHORTEST_MM)) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "the lateral bar would be {} long; it needs {} at least to hold the axle"
                  + " central. Choose a smaller rail_gap or a joint with a smaller barrel.",
              length(lengthMm),
              length(SHORTEST_MM)));
    }
    return new Point3(-behindMm, -Math.signum(frame.yMm()) * outMm, height(riseMm));
  }

  private double height(double riseMm) {
    return chassis.axleCentre().zMm() + riseMm;
  }

  private void requireBehindTube(double behindMm) {
    double neededMm = besideTubeMm();
    if (!(behindMm >= neededMm - 1e-6)) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "the lateral bar is {} behind the axle; its bracket needs {} to stand"
                  + " clear of the axle tube. Set lateral_behind to that or more.",
              length(behindMm),
              length(neededMm)));
    }
  }

  /** How far behind the axle the bar's bracket stands clear of the axle tube (mm). */
  private double besideTubeMm() {
    return chassis.axle().tubeRadiusMm()
        + WELD_ROOM_MM
        + makeUp.bracket().form().thicknessMm()
        + makeUp.axleSeat().stackMm() / 2;
  }

  private double outermostCentreMm(double behindMm) {
    double railMm =
        Math.min(chassis.rails().innerFaceMm(0), chassis.rails().innerFaceMm(-behindMm));
    double outsideMm = Math.min(railMm - railGapMm, BarPlane.outermostMm(chassis));
    double halfMm = halfBaseMm();
    if (bars.mounting() == Mounting.OUTBOARD) {
      return centre(outsideMm, chassis.axle().innerLimitMm(), halfMm);
    }
    double barOutsideMm = bars.leftMm() + makeUp.halfAcrossMm() + WELD_ROOM_MM;
    if (outsideMm - barOutsideMm >= 2 * halfMm) {
      return outsideMm - halfMm;
    }
    double besideBarsMm = bars.leftMm() - makeUp.halfAcrossMm() - WELD_ROOM_MM;
    return centre(Math.min(outsideMm, besideBarsMm), chassis.axle().innerLimitMm(), halfMm);
  }

  private double centre(double outsideMm, double insideMm, double halfMm) {
    double foundMm = outsideMm - insideMm;
    if (!(foundMm >= 2 * halfMm - 1e-6)) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "there is {} along the axle tube for the lateral bar's bracket, from the"
                  + " centre housing ({} from the centre plane) outwards; it needs {}, so {}"
                  + " is missing. Choose mounting: outboard, a smaller rail_gap or joints"
                  + " with a narrower sleeve.",
              length(Math.max(0, foundMm)),
              length(insideMm),
              length(2 * halfMm),
              length(2 * halfMm - foundMm)));
    }
    return outsideMm - halfMm;
  }
}
