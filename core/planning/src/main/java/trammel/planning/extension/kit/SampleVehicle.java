package trammel.planning.extension.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.AxleHousing;
import trammel.engine.layout.Bar;
import trammel.engine.layout.BarTube;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Driveline;
import trammel.engine.layout.Duty;
import trammel.engine.layout.Joint;
import trammel.engine.layout.Masses;
import trammel.engine.layout.Rails;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringKind;
import trammel.engine.layout.SpringUnit;
import trammel.engine.layout.Traction;
import trammel.engine.layout.Travel;
import trammel.engine.layout.Tyre;

/** An invented pick-up truck to try plugins on; no figure is of a vehicle that exists. */
public final class SampleVehicle {
  private static final double INCH_MM = 25.4;
  private static final double POUND_KG = 0.45359237;

  private SampleVehicle() {}

  /** A half-ton truck with channel rails, 6 x 2 1/4 in, 17 1/2 in off the ground at the axle. */
  public static Chassis pickup() {
    return new Chassis(
        118 * INCH_MM,
        118 * INCH_MM,
        new Masses(2550 * POUND_KG, 875 * POUND_KG, 875 * POUND_KG, 380 * POUND_KG, 25 * INCH_MM),
        new Traction(
            OptionalDouble.of(400_000),
            OptionalDouble.of(3.06),
            OptionalDouble.of(3.55),
            OptionalDouble.of(0.9),
            0.65),
        new Tyre(15 * INCH_MM, 14.5 * INCH_MM, 9 * INCH_MM),
        new AxleHousing(
            3 * INCH_MM, INCH_MM / 4, 65 * INCH_MM, 6.5 * INCH_MM, 27.5 * INCH_MM, 64 * INCH_MM),
        channelRails(),
        driveline(),
        List.of(),
        new Travel(3 * INCH_MM, 3 * INCH_MM));
  }

  private static Rails channelRails() {
    return new Rails(
        false,
        37 * INCH_MM,
        35 * INCH_MM,
        17.5 * INCH_MM,
        17.5 * INCH_MM,
        26 * INCH_MM,
        6 * INCH_MM,
        2.25 * INCH_MM,
        0.15 * INCH_MM,
        0);
  }

  private static Driveline driveline() {
    double slopeRad = Math.toRadians(3);
    Vector3 axis = new Vector3(Math.cos(slopeRad), 0, Math.sin(slopeRad));
    return new Driveline(
        new Point3(11 * INCH_MM, 0, 13 * INCH_MM),
        axis,
        new Point3(60 * INCH_MM, 0, 17.5 * INCH_MM),
        axis,
        OptionalDouble.of(3 * INCH_MM),
        OptionalDouble.of(0.083 * INCH_MM),
        OptionalDouble.of(3.25 * INCH_MM),
        OptionalDouble.of(1 * INCH_MM));
  }

  /**
   * The same rails with other figures.
   *
   * @param boxed true for closed rails
   * @param widerMm how much wider over both rails at both stations
   * @param higherMm how much higher off the ground
   */
  static Rails rails(Rails rails, boolean boxed, double widerMm, double higherMm) {
    return new Rails(
        boxed,
        rails.outsideAtAxleMm() + widerMm,
        rails.outsideAtFrontMm() + widerMm,
        rails.undersideAtAxleMm() + higherMm,
        rails.undersideAtFrontMm() + higherMm,
        rails.frontMountsForwardMm(),
        rails.depthMm(),
        rails.flangeMm(),
        rails.wallMm(),
        rails.notchDepthMm());
  }

  /** A chassis with its rails wider over both and higher off the ground (mm). */
  public static Chassis withRailsMoved(Chassis chassis, double widerMm, double higherMm) {
    Rails rails = chassis.rails();
    return chassis.withRails(rails(rails, rails.boxed(), widerMm, higherMm));
  }

  /** A chassis with closed rails. */
  public static Chassis withBoxedRails(Chassis chassis) {
    return chassis.withRails(rails(chassis.rails(), true, 0, 0));
  }

  /** Stand-in springs for a layout that is tried without a spring mount. */
  public static List<SpringUnit> springs(Chassis chassis) {
    Point3 seat = new Point3(-80, 400, chassis.axleCentre().zMm());
    Point3 top = new Point3(-80, 380, chassis.axleCentre().zMm() + 300);
    return List.of(
        spring("spring-left", top, seat), spring("spring-right", top.mirrored(), seat.mirrored()));
  }

  private static SpringUnit spring(String name, Point3 frame, Point3 axle) {
    return new SpringUnit(name, SpringKind.COIL, frame, axle, 40, 30, 150, 450);
  }

  /** Stand-in shocks for a layout that is tried without a spring mount. */
  public static List<ShockUnit> shocks(Chassis chassis) {
    double upMm = chassis.axleCentre().zMm();
    Point3 axle = new Point3(-120, 330, upMm - 60);
    Point3 frame = new Point3(-120, 300, upMm + 390);
    return List.of(
        new ShockUnit("shock-left", frame, axle, 25, 330, 600),
        new ShockUnit("shock-right", frame.mirrored(), axle.mirrored(), 25, 330, 600));
  }

  /** Stand-in bars for a layout that is tried without a linkage: four bars and a lateral bar. */
  public static List<Bar> bars(Chassis chassis) {
    double upMm = chassis.axleCentre().zMm();
    double leftMm = chassis.rails().innerFaceMm(0) - 80;
    List<Bar> bars = new ArrayList<>(5);
    addPair(bars, "lower", Duty.DRIVE_AND_BRAKING.only(), new Point3(0, leftMm, upMm - 76), 610);
    addPair(bars, "upper", Duty.DRIVE_AND_BRAKING.only(), new Point3(0, leftMm, upMm + 114), 457);
    Point3 lateralFrame = new Point3(-152, leftMm, upMm + 50);
    Point3 lateralAxle = new Point3(-152, 90 - leftMm, upMm + 50);
    bars.add(bar("lateral-bar", Duty.SIDEWAYS.only(), lateralFrame, lateralAxle));
    return List.copyOf(bars);
  }

  private static void addPair(
      List<Bar> bars, String name, Set<Duty> duties, Point3 axle, double lengthMm) {
    Point3 frame = new Point3(axle.xMm() + lengthMm, axle.yMm(), axle.zMm());
    bars.add(bar(name + "-left", duties, frame, axle));
    bars.add(bar(name + "-right", duties, frame.mirrored(), axle.mirrored()));
  }

  private static Bar bar(String name, Set<Duty> duties, Point3 frame, Point3 axle) {
    Joint joint = new Joint("bushed end", 12_000, 0.12, 12.7, 50.8, 25.4, 35_000);
    return new Bar(name, duties, frame, axle, joint, joint, new BarTube(38.1, 3.05, 414));
  }
}
