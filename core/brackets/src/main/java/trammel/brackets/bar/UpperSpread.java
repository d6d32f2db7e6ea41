package trammel.brackets.bar;

import static trammel.engine.quantity.Amount.length;

import trammel.brackets.UnworkableLayoutException;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Chassis;
import trammel.engine.quantity.Phrase;
import trammel.trade.plates.RailBracket;

/**
 * Upper bars that run from close together over the housing to the rails' inner faces ahead. How far
 * they open in plan follows from their length and from the room between the rails.
 *
 * @param chassis the vehicle
 * @param makeUp joints and plates
 * @param railGapMm gap kept to the rails (mm)
 */
public record UpperSpread(Chassis chassis, BarMakeUp makeUp, double railGapMm) {
  private static final double WIDEST_RAD = Math.toRadians(80);
  private static final int HALVINGS = 60;

  /**
   * Half the room across the vehicle that a bracket takes when it is turned in plan to face its bar
   * (mm).
   */
  public static double halfAcrossMm(JointSeat seat, double planRad) {
    double baseMm = RailBracket.baseByRuleMm(seat.reachMm(), seat.noseMm());
    return (seat.stackMm() * Math.cos(planRad) + baseMm * Math.sin(planRad)) / 2;
  }

  /**
   * The joint on the left rail.
   *
   * @param axle the left bar's joint on the axle
   * @param lengthMm joint centre to joint centre
   * @param fallRad fall to the front as seen from the side
   */
  public Point3 frame(Point3 axle, double lengthMm, double fallRad) {
    double planRad = planRad(axle, lengthMm, fallRad);
    return point(axle, lengthMm, fallRad, planRad);
  }

  private static Point3 point(Point3 axle, double lengthMm, double fallRad, double planRad) {
    double steep = Math.tan(fallRad) * Math.cos(planRad);
    double levelMm = lengthMm / Math.sqrt(1 + steep * steep);
    double forwardMm = levelMm * Math.cos(planRad);
    return new Point3(
        axle.xMm() + forwardMm,
        axle.yMm() + levelMm * Math.sin(planRad),
        axle.zMm() - forwardMm * Math.tan(fallRad));
  }

  private double planRad(Point3 axle, double lengthMm, double fallRad) {
    double low = 0;
    double high = WIDEST_RAD;
    if (overMm(axle, lengthMm, fallRad, low) > 0) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "the upper bars would have to close towards the front: at the axle their"
                  + " joints are {} apart and the rails leave {} there. Set upper_spread"
                  + " smaller.",
              length(2 * axle.yMm()),
              length(2 * (axle.yMm() - overMm(axle, lengthMm, fallRad, 0)))));
    }
    if (overMm(axle, lengthMm, fallRad, high) < 0) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "the upper bars are {} long and do not reach the rails: at the widest"
                  + " they end {} short. Set upper_length longer.",
              length(lengthMm),
              length(-overMm(axle, lengthMm, fallRad, high))));
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (overMm(axle, lengthMm, fallRad, middle) > 0) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return (low + high) / 2;
  }

  /** How far the bracket on the frame would be past its place against the rail (mm). */
  private double overMm(Point3 axle, double lengthMm, double fallRad, double planRad) {
    Point3 joint = point(axle, lengthMm, fallRad, planRad);
    double halfMm = halfAcrossMm(makeUp.frameSeat(), planRad);
    return joint.yMm() + halfMm + railGapMm - chassis.rails().innerFaceMm(joint.xMm());
  }
}
