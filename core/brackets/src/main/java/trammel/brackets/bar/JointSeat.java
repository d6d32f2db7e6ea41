package trammel.brackets.bar;

import trammel.engine.layout.Joint;
import trammel.trade.plates.HoleRules;
import trammel.trade.plates.PickUpRow;
import trammel.trade.plates.Point2;

/**
 * A joint between its two bracket plates.
 *
 * @param joint the joint
 * @param plateMm thickness of each bracket plate (mm), above 0
 * @param row the holes that it may sit in
 */
public record JointSeat(Joint joint, double plateMm, HoleRow row) {
  /** 1/64 in over the bolt, a close fit: common practice, no source. */
  public static final double BOLT_CLEARANCE_MM = 25.4 / 64;

  /** Air kept between the joint's barrel and any metal behind it, 1/4 in: common practice. */
  public static final double BARREL_AIR_MM = 25.4 / 4;

  public JointSeat {
    if (!(plateMm > 0)) {
      throw new IllegalArgumentException(
          "a bracket plate is " + plateMm + " mm thick; it must be above 0. Choose another plate.");
    }
  }

  /** A joint with one hole for it. */
  public JointSeat(Joint joint, double plateMm) {
    this(joint, plateMm, HoleRow.SINGLE);
  }

  /** Hole for the bolt (mm). */
  public double holeMm() {
    return joint.boltDiameterMm() + BOLT_CLEARANCE_MM;
  }

  /** Radius of metal about the hole (mm). */
  public double noseMm() {
    return HoleRules.SHOP.edgeFactor() * holeMm();
  }

  /** Both plates and the joint between them: the bolt's grip and the bracket's width (mm). */
  public double stackMm() {
    return joint.widthMm() + 2 * plateMm;
  }

  /** Least distance from the layout's joint to the metal behind it, in whichever hole it sits. */
  public double reachMm() {
    return airMm() + row.nearMm();
  }

  /** Least distance from a joint's centre to the metal behind it (mm). */
  public double airMm() {
    return Math.max(noseMm(), joint.barrelRadiusMm() + BARREL_AIR_MM);
  }

  /** The hole or holes in a plate's own axes, y up to what the bracket is fixed to. */
  public PickUpRow hole(double xMm, double yMm) {
    return row.about(new Point2(xMm, yMm), holeMm());
  }
}
