package trammel.plugins.limitingstraps;

import trammel.brackets.mount.MountPractice;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Chassis;
import trammel.trade.plates.HoleRules;
import trammel.trade.plates.ShockTab;

/**
 * Where the tabs of a strap stand, on the left. Both lie in the upright plane through the axle's
 * line: one on a face of the rail, or on the notch's plate over it, and one on top of the axle
 * tube, farther off, so that they pass each other in bump.
 *
 * @param chassis the vehicle
 * @param outside true outside the rail, false between the rails
 * @param plateMm thickness of the tabs
 * @param outMm how much farther off the rail than as close as can be (mm), 0 or more
 * @param tubeHoleMm height of the lower tab's hole above the tube (mm)
 */
record StrapPlace(
    Chassis chassis, boolean outside, double plateMm, double outMm, double tubeHoleMm) {
  private static final double INCH_MM = 25.4;

  /** Webbing, its sewn ends and their bolts: common sizes, from memory. */
  static final double WIDTH_MM = 2 * INCH_MM;

  static final double THICKNESS_MM = INCH_MM / 4;
  static final double PAST_EYE_MM = 0.75 * INCH_MM;
  static final double BOLT_MM = INCH_MM / 2;

  /** Hole of a tab, 1/64 in over the bolt. */
  static final double HOLE_MM = BOLT_MM + MountPractice.BOLT_CLEARANCE_MM;

  /** A tab's foot is as long as the strap is wide: common practice, no source. */
  static final double FOOT_MM = WIDTH_MM;

  /** The strap's inner edge keeps clear of the rail, and its lower end of the tube. */
  private static final double LEAST_REACH_MM = 1.375 * INCH_MM;

  static final double LOWEST_HOLE_MM = 1.25 * INCH_MM;

  /** A taller tab bends: common practice, no source. */
  static final double TALLEST_HOLE_MM = 3 * INCH_MM;

  /** From the upper hole to the lower one, away from the rail: two noses and 1/4 in of air. */
  private static final double PASSING_MM =
      2 * HoleRules.SHOP.edgeFactor() * HOLE_MM + MountPractice.WELD_ROOM_MM;

  /** Lowest hole of the rail's tab: above a notch its foot stands on what the notch leaves. */
  static double lowestRailHoleMm(Chassis chassis) {
    return chassis.rails().undersideMm(0) + chassis.rails().cutDepthMm() + footRoomMm();
  }

  static double highestRailHoleMm(Chassis chassis) {
    return chassis.rails().topMm(0) - footRoomMm();
  }

  /** Half a foot and room for the end of its welds. */
  private static double footRoomMm() {
    return FOOT_MM / 2 + MountPractice.WELD_ROOM_MM;
  }

  /** The tallest that the lower tab may be, with an inch between the holes at ride (mm). */
  static double tallestTubeHoleMm(Chassis chassis) {
    double roomMm = railHoleUpMm(chassis) - tubeTopMm(chassis) - INCH_MM;
    return Math.min(TALLEST_HOLE_MM, roomMm);
  }

  /** Half way up what there is of the rail. */
  private static double railHoleUpMm(Chassis chassis) {
    return (lowestRailHoleMm(chassis) + highestRailHoleMm(chassis)) / 2;
  }

  private static double tubeTopMm(Chassis chassis) {
    return chassis.axleCentre().zMm() + chassis.axle().tubeRadiusMm();
  }

  StrapPlace withTubeHole(double heightMm) {
    return new StrapPlace(chassis, outside, plateMm, outMm, heightMm);
  }

  boolean onNotchPlate() {
    return chassis.rails().notchDepthMm() > 0;
  }

  /** Thickness of what the rail's tab is welded to (mm). */
  double railWallMm() {
    double plate = chassis.rails().notchSidePlateMm();
    return onNotchPlate() && plate > 0 ? plate : chassis.rails().wallMm();
  }

  /** The face that the rail's tab stands on, left of the centre plane (mm). */
  double faceMm() {
    double plate = onNotchPlate() ? chassis.rails().notchSidePlateMm() : 0;
    return outside
        ? chassis.rails().outerFaceMm(0) + plate
        : chassis.rails().innerFaceMm(0) - plate;
  }

  /** Away from the rail: 1 to the left, on a strap outside it, -1 to the right. */
  int away() {
    return outside ? 1 : -1;
  }

  double reachMm() {
    return LEAST_REACH_MM + outMm;
  }

  /** The middle of the rail tab's foot. */
  Point3 railFoot() {
    return new Point3(chassis.axleCentre().xMm(), faceMm(), railHoleUpMm(chassis));
  }

  /** The upper eye. */
  Point3 upper() {
    Point3 foot = railFoot();
    return new Point3(foot.xMm(), foot.yMm() + away() * reachMm(), foot.zMm());
  }

  /** The middle of the lower tab's foot, on top of the axle tube. */
  Point3 tubeFoot() {
    Point3 upper = upper();
    return new Point3(upper.xMm(), upper.yMm() + away() * PASSING_MM, tubeTopMm(chassis));
  }

  /** The lower eye at ride. */
  Point3 lower() {
    Point3 foot = tubeFoot();
    return new Point3(foot.xMm(), foot.yMm(), foot.zMm() + tubeHoleMm);
  }

  /** From eye to eye at ride, where the strap hangs slack (mm). */
  double apartMm() {
    return upper().distanceMm(lower());
  }

  /** Whether the axle tube is there for the lower tab. */
  boolean isOnTube() {
    return tubeFoot().yMm() + FOOT_MM / 2 <= chassis.axle().outerLimitMm()
        && tubeFoot().yMm() - FOOT_MM / 2 >= chassis.axle().innerLimitMm();
  }

  ShockTab railTab() {
    return tab("limiting strap rail tab", reachMm());
  }

  ShockTab tubeTab() {
    return tab("limiting strap axle tab", tubeHoleMm);
  }

  private ShockTab tab(String name, double holeMm) {
    double noseMm = HoleRules.SHOP.edgeFactor() * HOLE_MM;
    return new ShockTab(name, plateMm, FOOT_MM, holeMm, HOLE_MM, noseMm, HoleRules.SHOP);
  }
}
