package trammel.engine.checks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
import trammel.engine.loads.LoadCase;

/** An invented pickup on four bars and a lateral bar, all figures good, in inches and degrees. */
public final class SampleLayout {
  public static final double INCH = 25.4;
  private static final double POUND_KG = 0.45359237;
  private static final OptionalDouble UNKNOWN = OptionalDouble.empty();

  private SampleLayout() {}

  public static Layout good() {
    return new Layout(chassis(), bars(), springs(), shocks());
  }

  public static AnalysisSettings settings() {
    return new AnalysisSettings(75 * 0.44704, LoadCase.usual());
  }

  static Chassis chassis() {
    double angle = Math.toRadians(3);
    Vector3 axis = new Vector3(Math.cos(angle), 0, Math.sin(angle));
    return new Chassis(
        118 * INCH,
        118 * INCH,
        new Masses(2550 * POUND_KG, 880 * POUND_KG, 870 * POUND_KG, 380 * POUND_KG, 25 * INCH),
        new Traction(
            OptionalDouble.of(406_745),
            OptionalDouble.of(3.06),
            OptionalDouble.of(3.55),
            OptionalDouble.of(0.9),
            0.65),
        new Tyre(15 * INCH, 14.5 * INCH, 10 * INCH),
        housing(OptionalDouble.of(5 * INCH)),
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
            point(11, 0, 13.5),
            axis,
            point(60, 0, 15.0),
            axis,
            OptionalDouble.of(3 * INCH),
            OptionalDouble.of(0.083 * INCH),
            OptionalDouble.of(3.25 * INCH),
            OptionalDouble.of(1.5 * INCH)),
        List.of(),
        new Travel(3.5 * INCH, 3 * INCH));
  }

  /** An axle with its centre housing as far out from its line as said. */
  private static AxleHousing housing(OptionalDouble radiusMm) {
    return new AxleHousing(
        3 * INCH, 0.25 * INCH, 65 * INCH, 6.5 * INCH, 27.5 * INCH, 64.5 * INCH, radiusMm);
  }

  /** The good layout with another centre housing. */
  static Layout withHousing(OptionalDouble radiusMm) {
    Chassis chassis = chassis();
    return good()
        .withChassis(
            new Chassis(
                chassis.wheelbaseLeftMm(),
                chassis.wheelbaseRightMm(),
                chassis.masses(),
                chassis.traction(),
                chassis.tyre(),
                housing(radiusMm),
                chassis.rails(),
                chassis.driveline(),
                chassis.obstacles(),
                chassis.travel()));
  }

  private static List<Bar> bars() {
    List<Bar> bars = new ArrayList<>();
    for (int side = 1; side >= -1; side -= 2) {
      String name = side > 0 ? "left" : "right";
      bars.add(
          bar(
              "lower-" + name,
              Duty.DRIVE_AND_BRAKING.only(),
              point(24, side * 14, 11.9),
              point(0, side * 14, 11.5)));
      bars.add(
          bar(
              "upper-" + name,
              Duty.DRIVE_AND_BRAKING.only(),
              point(18, side * 14, 18.5),
              point(0, side * 14, 19)));
    }
    bars.add(
        bar("lateral-bar", Duty.SIDEWAYS.only(), point(-10, 18, 15.25), point(-10, -18, 15.25)));
    return bars;
  }

  private static Bar bar(String name, Set<Duty> duties, Point3 frame, Point3 axle) {
    Joint joint = new Joint("bushed end", 10_000, Math.toRadians(7), 12.7, 50.8, 25.4, 80_000);
    return new Bar(
        name, duties, frame, axle, joint, joint, new BarTube(1.75 * INCH, 0.12 * INCH, 379));
  }

  private static List<SpringUnit> springs() {
    List<SpringUnit> springs = new ArrayList<>();
    for (int side = 1; side >= -1; side -= 2) {
      springs.add(
          new SpringUnit(
              side > 0 ? "spring-left" : "spring-right",
              SpringKind.COIL,
              point(-6, side * 9.5, 28),
              point(-6, side * 11, 15),
              2 * INCH,
              31,
              8 * INCH,
              18 * INCH));
    }
    return springs;
  }

  private static List<ShockUnit> shocks() {
    List<ShockUnit> shocks = new ArrayList<>();
    for (int side = 1; side >= -1; side -= 2) {
      shocks.add(
          new ShockUnit(
              side > 0 ? "shock-left" : "shock-right",
              point(-6, side * 9.5, 28),
              point(-6, side * 11, 15),
              1.25 * INCH,
              8.5 * INCH,
              17.5 * INCH));
    }
    return shocks;
  }

  static Point3 point(double forwardIn, double leftIn, double upIn) {
    return new Point3(forwardIn * INCH, leftIn * INCH, upIn * INCH);
  }

  /** The limits of the project's own table; common practice, no source. */
  public static Map<String, Limit> limits() {
    String source = "common practice, no source";
    Map<String, Limit> limits = new HashMap<>();
    limits.put("wheelbase-square", Limit.atMost(INCH / 16, INCH / 4, source));
    for (String bar : List.of("lower", "upper")) {
      limits.put(bar + "-bar-angle", Limit.atMost(rad(2), rad(5), source));
      limits.put(bar + "-bar-match", Limit.atMost(INCH / 16, INCH / 8, source));
    }
    limits.put("lateral-bar-angle", Limit.atMost(rad(1), rad(5), source));
    limits.put("lateral-shift", Limit.atMost(INCH / 4, 0.375 * INCH, source));
    limits.put("linkage-reach", Limit.atLeast(1, 1, source));
    limits.put("bar-bind", Limit.atMost(INCH / 16, INCH / 8, source));
    limits.put("joint-misalignment", Limit.atMost(0.8, 1, source));
    for (String group : List.of("moving", "between", "housing")) {
      limits.put("clearance-" + group, Limit.atLeast(INCH / 2, 0, source));
    }
    limits.put("clearance-tyre", Limit.atLeast(INCH, 0, source));
    limits.put("bump-stop-room", Limit.atLeast(INCH / 4, 0, source));
    limits.put("pinion-wind-up", Limit.atMost(rad(2), Double.POSITIVE_INFINITY, source));
    limits.put("air-lost", Limit.atMost(1, 2, source));
    limits.put("clearance-fuel", Limit.atLeast(INCH, 0, source));
    limits.put("clearance-obstacles", Limit.atLeast(INCH / 2, Double.NEGATIVE_INFINITY, source));
    limits.put("torsional-acceleration", Limit.atMost(300, 500, source));
    limits.put("shaft-critical-speed", Limit.atLeast(1, 0.9, source));
    limits.put("bolt-strength", Limit.atLeast(3, 2, source));
    limits.put("joint-rating", Limit.atMost(1, 1.5, source));
    limits.put("rail-modulus", Limit.atLeast(1, 0.9, source));
    limits.put("axle-tube", Limit.atLeast(1.5, 1, source));
    double any = Double.NEGATIVE_INFINITY;
    limits.put("bump-stop-room-loaded", Limit.atLeast(0, any, source));
    limits.put("pinion-parallel-loaded", Limit.atMost(rad(1), rad(3), source));
    limits.put("front-joint-angle-loaded", new Limit(0, rad(3), any, rad(90), source));
    limits.put("rear-joint-angle-loaded", new Limit(0, rad(3), any, rad(90), source));
    limits.put("bump-travel-loaded", Limit.atLeast(2 * INCH, INCH, source));
    limits.put("air-pressure-loaded", Limit.atMost(0.9, 1, source));
    limits.put("ride-frequency-loaded", new Limit(1, 2, 0.8, 2.8, source));
    limits.put("bar-strength-loaded", Limit.atLeast(2, 1.3, source));
    limits.put("joint-rating-loaded", Limit.atMost(1, 1.5, source));
    limits.put("bar-strength-hard", Limit.atLeast(1.5, 1, source));
    limits.put("bolt-strength-hard", Limit.atLeast(2, 1.2, source));
    limits.put("joint-rating-hard", Limit.atMost(2, 4, source));
    limits.put("axle-tube-hard", Limit.atLeast(1.2, 1, source));
    limits.put("axle-tube-loaded", Limit.atLeast(1.5, 1, source));
    limits.put("rail-shear", Limit.atLeast(1, 0.9, source));
    limits.put("rail-torsion", Limit.atLeast(1, Double.NEGATIVE_INFINITY, source));
    limits.put("bump-travel", Limit.atLeast(3 * INCH, 2 * INCH, source));
    limits.put("axle-to-rail", Limit.atLeast(INCH / 2, 0, source));
    limits.put("spring-lean", Limit.atMost(rad(20), rad(25), source));
    limits.put("spring-to-tube", Limit.atLeast(INCH / 4, 0, source));
    limits.put("shock-travel-bump", Limit.atLeast(0.375 * INCH, 0, source));
    limits.put("shock-travel-droop", Limit.atLeast(0.375 * INCH, 0, source));
    limits.put("pinion-parallel", Limit.atMost(rad(1), rad(3), source));
    limits.put(
        "front-joint-angle",
        new Limit(rad(0.5), rad(3), Double.NEGATIVE_INFINITY, rad(90), source));
    limits.put(
        "rear-joint-angle", new Limit(rad(0.5), rad(3), Double.NEGATIVE_INFINITY, rad(90), source));
    limits.put("slip-room", Limit.atLeast(0.75 * INCH, 0, source));
    limits.put("slip-engagement", Limit.atLeast(INCH, 0, source));
    limits.put(
        "anti-squat",
        new Limit(0.2, 1.4, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, source));
    limits.put("roll-steer", new Limit(-0.05, 0.08, -0.12, 0.12, source));
    limits.put("air-pressure", Limit.atMost(0.9, 1, source));
    limits.put("air-spring-height", Limit.atLeast(INCH / 4, 0, source));
    limits.put("ride-frequency", new Limit(1, 2, 0.8, 2.8, source));
    limits.put("bar-strength", Limit.atLeast(2, 1.3, source));
    return limits;
  }

  /** The value of a standard check on a layout. */
  static double value(Layout layout, String id) {
    return reading(layout, id).value();
  }

  /** What a standard check that has a value reads on a layout. */
  static Reading.Value reading(Layout layout, String id) {
    if (readingOrReason(layout, id) instanceof Reading.Value value) {
      return value;
    }
    throw new AssertionError("check " + id + " has no value");
  }

  static Reading readingOrReason(Layout layout, String id) {
    for (Check check : StandardChecks.all()) {
      if (check.id().equals(id)) {
        return check.read(new LayoutAnalysis(layout, settings()));
      }
    }
    throw new AssertionError("there is no check " + id);
  }

  static double rad(double degrees) {
    return Math.toRadians(degrees);
  }
}
