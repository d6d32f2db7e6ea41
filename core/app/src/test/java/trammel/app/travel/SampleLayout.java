package trammel.app.travel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import trammel.engine.layout.Layout;
import trammel.engine.layout.Masses;
import trammel.engine.layout.Rails;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringKind;
import trammel.engine.layout.SpringUnit;
import trammel.engine.layout.Traction;
import trammel.engine.layout.Travel;
import trammel.engine.layout.Tyre;
import trammel.engine.springs.AirSpringPoint;
import trammel.engine.springs.AirSpringSize;
import trammel.engine.springs.RatedAirSpring;

/** An invented vehicle on four bars and a lateral bar, in inches. */
final class SampleLayout {
  static final double INCH = 25.4;
  static final double BUMP_IN = 3.5;
  static final double DROOP_IN = 3;
  static final double TRACK_IN = 64.5;

  /** Two bushings of this stiffness in series make a bar half as stiff (N/mm). */
  static final double BUSHING_N_PER_MM = 10_000;

  private static final OptionalDouble UNKNOWN = OptionalDouble.empty();

  private SampleLayout() {}

  /** Bars of unequal length, a level lateral bar, upright springs with shocks beside them. */
  static Layout fourBars() {
    List<Bar> bars = new ArrayList<>();
    for (int side = 1; side >= -1; side -= 2) {
      String name = side > 0 ? "left" : "right";
      bars.add(
          bar(
              "lower-" + name,
              Duty.DRIVE_AND_BRAKING.only(),
              point(24, side * 14, 12),
              point(0, side * 14, 11.5)));
      bars.add(
          bar(
              "upper-" + name,
              Duty.DRIVE_AND_BRAKING.only(),
              point(18, side * 14, 18.5),
              point(0, side * 14, 19)));
    }
    bars.add(bar("lateral-bar", Duty.SIDEWAYS.only(), point(-6, 18, 16.5), point(-6, -18, 16.5)));
    return layout(bars);
  }

  /** Uppers so short that full bump is out of reach. */
  static Layout shortUppers() {
    List<Bar> bars = new ArrayList<>();
    for (int side = 1; side >= -1; side -= 2) {
      String name = side > 0 ? "left" : "right";
      bars.add(
          bar(
              "lower-" + name,
              Duty.DRIVE_AND_BRAKING.only(),
              point(21, side * 19, 9),
              point(0, side * 19, 8.5)));
      bars.add(
          bar(
              "upper-" + name,
              Duty.DRIVE_AND_BRAKING.only(),
              point(3.75, side * 8.5, 15.25),
              point(-0.25, side * 5, 17)));
    }
    return layout(bars);
  }

  /** Air springs over the axle's line under 742 lb each, travel 1.5 in up and 1.6 in down. */
  static Layout onAirSprings() {
    double square = INCH * INCH;
    AirSpringSize size =
        new AirSpringSize(
            "sleeve",
            List.of(
                new AirSpringPoint(5.4 * INCH, 18.88 * square, 80.1 * square * INCH),
                new AirSpringPoint(5.5 * INCH, 18.8 * square, 82 * square * INCH),
                new AirSpringPoint(7 * INCH, 17.6 * square, 110 * square * INCH),
                new AirSpringPoint(8.6 * INCH, 16.4 * square, 137 * square * INCH),
                new AirSpringPoint(8.7 * INCH, 16.3 * square, 138.6 * square * INCH)));
    List<SpringUnit> springs = new ArrayList<>();
    for (int side = 1; side >= -1; side -= 2) {
      springs.add(
          new SpringUnit(
              side > 0 ? "spring-left" : "spring-right",
              SpringKind.AIR,
              point(0, side * 12, 25),
              point(0, side * 12, 18),
              2.5 * INCH,
              35,
              5.4 * INCH,
              8.7 * INCH,
              Optional.of(new RatedAirSpring(size, 0.8))));
    }
    Layout coils = fourBars();
    double cornerKg = 742 * 0.45359237 + 85;
    Masses masses = new Masses(1150, cornerKg, cornerKg, 170, 25 * INCH);
    return coils
        .withChassis(
            coils.chassis().withMasses(masses).withTravel(new Travel(1.5 * INCH, 1.6 * INCH)))
        .withSprings(springs);
  }

  private static Layout layout(List<Bar> bars) {
    List<SpringUnit> springs = new ArrayList<>();
    List<ShockUnit> shocks = new ArrayList<>();
    for (int side = 1; side >= -1; side -= 2) {
      String name = side > 0 ? "left" : "right";
      springs.add(
          new SpringUnit(
              "spring-" + name,
              SpringKind.COIL,
              point(-6, side * 9.5, 28),
              point(-6, side * 11, 15),
              2 * INCH,
              31,
              8 * INCH,
              18 * INCH));
      shocks.add(
          new ShockUnit(
              "shock-" + name,
              point(4, side * 9.5, 28),
              point(3, side * 14, 14),
              INCH,
              8 * INCH,
              19 * INCH));
    }
    return new Layout(chassis(), bars, springs, shocks);
  }

  private static Chassis chassis() {
    double angle = Math.toRadians(3);
    Vector3 axis = new Vector3(Math.cos(angle), 0, Math.sin(angle));
    return new Chassis(
        118 * INCH,
        118 * INCH,
        new Masses(1150, 400, 395, 170, 25 * INCH),
        new Traction(UNKNOWN, UNKNOWN, UNKNOWN, UNKNOWN, 0.65),
        new Tyre(15 * INCH, 14.5 * INCH, 10 * INCH),
        new AxleHousing(3 * INCH, 0.25 * INCH, 65 * INCH, 6.5 * INCH, 27.5 * INCH, TRACK_IN * INCH),
        new Rails(
            false,
            37 * INCH,
            35 * INCH,
            20.5 * INCH,
            20.25 * INCH,
            26 * INCH,
            6 * INCH,
            2.25 * INCH,
            0.15 * INCH,
            0),
        new Driveline(
            point(11, 0, 13.5), axis, point(60, 0, 15), axis, UNKNOWN, UNKNOWN, UNKNOWN, UNKNOWN),
        List.of(),
        new Travel(BUMP_IN * INCH, DROOP_IN * INCH));
  }

  private static Bar bar(String name, Set<Duty> duties, Point3 frame, Point3 axle) {
    Joint joint =
        new Joint("bushed end", BUSHING_N_PER_MM, Math.toRadians(7), 14.3, 50.8, 25.4, 40_000);
    return new Bar(
        name, duties, frame, axle, joint, joint, new BarTube(1.75 * INCH, 0.12 * INCH, 379));
  }

  static Point3 point(double forwardIn, double leftIn, double upIn) {
    return new Point3(forwardIn * INCH, leftIn * INCH, upIn * INCH);
  }
}
