package trammel.plugins.wattslinkage;

import trammel.brackets.bar.JointSeat;
import trammel.brackets.material.BoltSize;
import trammel.brackets.material.BoltSizes;
import trammel.engine.layout.AxleHousing;

/**
 * Sizes of the rocker and of what carries its pivot. The rocker is two equal plates with the links'
 * joints between them. Its pivot bolt is held in double shear: by a plate ahead of it, on two tubes
 * off the axle tube beside the housing, and by a strap behind it, which two spacers beside the
 * rocker hold to that plate.
 *
 * @param seat the joint of a link between the rocker plates
 * @param linkBolt the bolt through that joint
 * @param pivotBolt the bolt through the pivot
 * @param tubeRadiusMm outside radius of the arms and spacers (mm)
 */
record RockerForm(JointSeat seat, BoltSize linkBolt, BoltSize pivotBolt, double tubeRadiusMm) {
  /** Swing of the rocker to either side for which the spacers leave room (rad). */
  static final double SWING_RAD = Math.toRadians(25);

  /** Air between the rocker and what it swings past, 1/4 in: common practice, no source (mm). */
  static final double AIR_MM = 25.4 / 4;

  /** A bolt's head swings past a plate with 1/8 in: common practice, no source (mm). */
  private static final double HEAD_AIR_MM = 25.4 / 8;

  /** Height of a bolt's head in bolt diameters (ASME B18.2.1, 5/8, from memory) and a little. */
  private static final double HEAD = 0.65;

  /** Room for the weld round a tube, 3/8 in: common practice, no source (mm). */
  static final double LAND_MM = 0.375 * 25.4;

  static RockerForm of(JointSeat seat, BoltSizes bolts, double tubeRadiusMm) {
    return new RockerForm(
        seat,
        bolts.of(seat.joint().boltDiameterMm()),
        bolts.nearest(PivotBush.BOLT_MM),
        tubeRadiusMm);
  }

  private static double headMm(BoltSize bolt) {
    return bolt.washerMm() + HEAD * bolt.diameterMm();
  }

  /** From a rocker plate to the plate or strap that it swings past (mm). */
  double besideMm() {
    return headMm(linkBolt) + HEAD_AIR_MM;
  }

  /** Room between plate and strap, which is the length of the pivot's sleeve (mm). */
  double apartMm() {
    return seat.stackMm() + 2 * besideMm();
  }

  /** What the pivot bolt clamps: sleeve, plate and strap (mm). */
  double gripMm() {
    return apartMm() + 2 * seat.plateMm();
  }

  /** From the rocker's middle to what lies ahead of the pivot bolt's head (mm). */
  double aheadMm() {
    return gripMm() / 2 + headMm(pivotBolt) + AIR_MM;
  }

  /** Radius of the rocker's ends about the links' joints, barrel or nose (mm). */
  double tipMm() {
    return Math.max(seat.noseMm(), seat.joint().barrelRadiusMm());
  }

  /** Least distance from the pivot to a link's joint, so that its barrel clears the shell (mm). */
  double leastArmMm() {
    return PivotBush.SHELL_RADIUS_MM + seat.joint().barrelRadiusMm() + AIR_MM;
  }

  /**
   * Distance of a spacer from the pivot to either side: the rocker is nowhere wider than about its
   * pivot, so at the full swing s its side is w cos s - boss from a spacer at w (mm).
   */
  double spacerOutMm() {
    return (PivotBush.bossMm() + tubeRadiusMm + AIR_MM) / Math.cos(SWING_RAD);
  }

  /** Radius of plate and strap about a tube that is welded to them (mm). */
  double landRadiusMm() {
    return tubeRadiusMm + LAND_MM;
  }

  /** Distance of an arm from the centre plane: beside the housing (mm). */
  double armOutMm(AxleHousing axle) {
    return axle.innerLimitMm() + landRadiusMm();
  }
}
