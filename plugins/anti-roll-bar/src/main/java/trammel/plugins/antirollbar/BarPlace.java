package trammel.plugins.antirollbar;

import trammel.brackets.mount.MountPractice;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.AntiRollBar;
import trammel.engine.layout.Chassis;
import trammel.engine.springs.AntiRollBarSize;
import trammel.trade.plates.HoleRules;
import trammel.trade.plates.PickUpRow;
import trammel.trade.plates.Point2;
import trammel.trade.plates.ShockTab;
import trammel.trade.plates.TubeBracket;

/**
 * Where an anti-roll bar stands, on the left: across behind the axle in a bearing on a plate that
 * saddles the axle tube, its arm to the rear, an upright link from the arm's end to a tab on the
 * face of the rail.
 *
 * @param chassis the vehicle
 * @param outside true for arms outside the rails, false for arms between them
 * @param plateMm thickness of plates
 * @param barMm diameter of the bar
 * @param armMm from the bar's axis to the hole at the arm's end
 * @param behindMm how far behind the axle's line the bar lies
 * @param belowMm how far below it
 * @param reachMm from the rail's face to the link
 * @param bearingMm from the centre plane to the middle of the bearing
 */
record BarPlace(
    Chassis chassis,
    boolean outside,
    double plateMm,
    double barMm,
    double armMm,
    double behindMm,
    double belowMm,
    double reachMm,
    double bearingMm) {
  private static final double INCH_MM = 25.4;

  /** Flat steel of the arms: an invented size. */
  static final double ARM_THICK_MM = INCH_MM / 2;

  static final double ARM_DEEP_MM = 1.5 * INCH_MM;

  /** Width of a link's eye, and half of it beside the arm. */
  static final double EYE_MM = INCH_MM / 2;

  static final double EYE_RADIUS_MM = 0.625 * INCH_MM;
  static final double BOLT_MM = INCH_MM / 2;
  static final double HOLE_MM = BOLT_MM + MountPractice.BOLT_CLEARANCE_MM;

  /** A bearing's shell: 3/8 in of bush and shell round the bar, 1 1/2 in along it; invented. */
  static final double SHELL_MM = 0.375 * INCH_MM;

  static final double BEARING_LONG_MM = 1.5 * INCH_MM;

  /** Metal about the hole of a shell that is welded in, 3/4 of its diameter: common practice. */
  private static final HoleRules ROUND_A_SHELL = new HoleRules(0.75, 0.5);

  /** A tab's foot, 2 1/2 in: common practice, no source. */
  static final double FOOT_MM = 2.5 * INCH_MM;

  /** Room for the link, the arm beside it and the head of their bolt. */
  static final double LEAST_REACH_MM = 1.75 * INCH_MM;

  /** The place of a bar that a layout has. */
  static BarPlace of(AntiRollBar bar, Chassis chassis, double plateMm) {
    double linkMm = bar.linkTop().yMm();
    double outerMm = chassis.rails().outerFaceMm(bar.linkTop().xMm());
    double innerMm = chassis.rails().innerFaceMm(bar.linkTop().xMm());
    boolean outside = linkMm > (outerMm + innerMm) / 2;
    return new BarPlace(
        chassis,
        outside,
        plateMm,
        bar.size().outsideMm(),
        bar.size().leverMm(),
        -bar.barEnd().xMm(),
        chassis.axleCentre().zMm() - bar.barEnd().zMm(),
        outside ? linkMm - outerMm : innerMm - linkMm,
        bar.bearing().yMm());
  }

  /** The rail's face that the tab stands on, left of the centre plane (mm). */
  double faceMm() {
    double linkXMm = -behindMm - armMm;
    return outside ? chassis.rails().outerFaceMm(linkXMm) : chassis.rails().innerFaceMm(linkXMm);
  }

  /** Away from the rail: 1 to the left for a link outside it, -1 to the right. */
  int away() {
    return outside ? 1 : -1;
  }

  double linkMm() {
    return faceMm() + away() * reachMm;
  }

  /** The middle of the arm, which stands beside the link's eye towards the centre plane (mm). */
  double armPlaneMm() {
    return linkMm() - (EYE_MM + ARM_THICK_MM) / 2;
  }

  double barUpMm() {
    return chassis.axleCentre().zMm() - belowMm;
  }

  double linkTopUpMm() {
    double xMm = -behindMm - armMm;
    return (chassis.rails().undersideMm(xMm) + chassis.rails().topMm(xMm)) / 2;
  }

  Point3 linkTop() {
    return new Point3(-behindMm - armMm, linkMm(), linkTopUpMm());
  }

  Point3 linkBottom() {
    return new Point3(-behindMm - armMm, linkMm(), barUpMm());
  }

  Point3 armEnd() {
    return new Point3(-behindMm - armMm, armPlaneMm(), barUpMm());
  }

  Point3 barEnd() {
    return new Point3(-behindMm, armPlaneMm(), barUpMm());
  }

  Point3 bearing() {
    return new Point3(-behindMm, bearingMm, barUpMm());
  }

  /** The middle of the rail tab's foot: the tab stands ahead of the link's eye. */
  Point3 tabFoot() {
    return new Point3(-behindMm - armMm + (EYE_MM + plateMm) / 2, faceMm(), linkTopUpMm());
  }

  /** From arm to arm, over both (mm). */
  double lengthMm() {
    return 2 * armPlaneMm() + ARM_THICK_MM;
  }

  BarPlace withBearing(double fromCentreMm) {
    return new BarPlace(
        chassis, outside, plateMm, barMm, armMm, behindMm, belowMm, reachMm, fromCentreMm);
  }

  double shellRadiusMm() {
    return barMm / 2 + SHELL_MM;
  }

  double noseMm() {
    return ROUND_A_SHELL.edgeFactor() * 2 * shellRadiusMm();
  }

  /** The bar as a spring between the two sides. */
  AntiRollBar asSpring() {
    double second = ARM_THICK_MM * ARM_DEEP_MM * ARM_DEEP_MM * ARM_DEEP_MM / 12;
    return new AntiRollBar(
        linkTop(),
        linkBottom(),
        barEnd(),
        bearing(),
        new AntiRollBarSize(
            barMm,
            0,
            2 * armPlaneMm(),
            armMm,
            armMm,
            second,
            AntiRollBarSize.STEEL_SHEAR_MPA,
            AntiRollBarSize.STEEL_YOUNG_MPA));
  }

  ShockTab railTab() {
    return new ShockTab(
        "anti-roll bar rail tab",
        plateMm,
        FOOT_MM,
        reachMm,
        HOLE_MM,
        HoleRules.SHOP.edgeFactor() * HOLE_MM,
        HoleRules.SHOP);
  }

  /** Seen from the left: x forward, y up, the tube's centre at the origin. */
  TubeBracket axleBracket() {
    PickUpRow hole =
        new PickUpRow(new Point2(-behindMm, -belowMm), 2 * shellRadiusMm(), noseMm(), 1, 0, 0, 0);
    return new TubeBracket(
        "anti-roll bar axle bracket",
        plateMm,
        chassis.axle().tubeDiameterMm(),
        0,
        TubeBracket.USUAL_WRAP_RAD,
        hole,
        ROUND_A_SHELL);
  }
}
