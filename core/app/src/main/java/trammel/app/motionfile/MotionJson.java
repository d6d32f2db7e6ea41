package trammel.app.motionfile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.mechanism.BodyPoint;
import trammel.engine.mechanism.BodyTurn;
import trammel.engine.mechanism.Bush;
import trammel.engine.mechanism.ElasticLink;
import trammel.engine.mechanism.ExactJoint;
import trammel.engine.mechanism.Mechanism;
import trammel.engine.mechanism.MechanismPose;
import trammel.engine.mechanism.MechanismRates;
import trammel.engine.mechanism.Pivot;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.LinkReading;
import trammel.engine.motion.MotionRates;
import trammel.engine.motion.PoseResult;
import trammel.engine.motion.RideFigures;
import trammel.engine.motion.ShaftReading;
import trammel.engine.motion.SpringPoint;
import trammel.engine.motion.SpringReading;
import trammel.engine.motion.TravelLimits;
import trammel.reading.tree.ObjectNode;

/** A motion file with its results, as maps and lists under the keys of the format. */
public final class MotionJson {
  /** Anything smaller is the rounding of a zero. */
  private static final double ZERO = 2e-11;

  private static final List<String> COMPUTED =
      List.of("limits", "ride", "lateral_shift_curve_mm", "poses");

  private final MotionStudy study;
  private final Mechanism mechanism;
  private final boolean withBodies;

  private MotionJson(MotionStudy study, boolean withBodies) {
    this.study = study;
    this.withBodies = withBodies;
    mechanism = study.layout().mechanism();
  }

  /** The file as it is written, with limits, ride, lateral shift curve and poses computed. */
  public static Map<String, Object> of(MotionFile file, MotionStudy study) {
    MotionJson json = new MotionJson(study, file.withBodies());
    Map<String, Object> document = new LinkedHashMap<>();
    for (ObjectNode.Member member : file.document().members()) {
      if (!COMPUTED.contains(member.key())) {
        document.put(member.key(), PlainTree.of(member.value()));
      }
    }
    document.put("limits", json.limits());
    document.put("ride", json.ride());
    document.put("lateral_shift_curve_mm", json.lateralShiftCurve());
    document.put("poses", json.poses());
    return document;
  }

  private Map<String, Object> limits() {
    TravelLimits limits = study.limits();
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("heave_min_mm", number(limits.heaveMinMm()));
    json.put("heave_max_mm", number(limits.heaveMaxMm()));
    json.put("roll_min_deg", degrees(limits.rollMinRad()));
    json.put("roll_max_deg", degrees(limits.rollMaxRad()));
    return json;
  }

  // Ride

  private Map<String, Object> ride() {
    Map<String, Object> ride = new LinkedHashMap<>();
    Map<String, Object> links = new LinkedHashMap<>();
    List<LinkReading> readings = study.ride().links();
    for (int i = 0; i < readings.size(); i++) {
      Map<String, Object> entry = new LinkedHashMap<>();
      entry.put("length_mm", number(readings.get(i).lengthMm()));
      putAngles(entry, readings.get(i));
      putArms(entry, mechanism.links().get(i), study.ride());
      links.put(readings.get(i).name(), entry);
    }
    ride.put("links", links);
    putIfAny(ride, "bodies", turnRates());
    putIfAny(ride, "joints", slideRates());
    ride.put("derivatives", derivatives(study.figures().rates()));
    ride.put("side_view", sideView());
    ride.put("roll", roll());
    ride.put("springs", springs());
    ride.put("shocks", shocksAtRide());
    ride.put("rates", rates());
    return ride;
  }

  private static void putIfAny(Map<String, Object> json, String key, Map<String, Object> group) {
    if (!group.isEmpty()) {
      json.put(key, group);
    }
  }

  private void putArms(Map<String, Object> entry, ElasticLink link, MechanismPose pose) {
    putArm(entry, "from_arm_angle_deg", link.from(), pose.fromArmAngleRad(link));
    putArm(entry, "to_arm_angle_deg", link.to(), pose.toArmAngleRad(link));
  }

  /** Only an end on a further body has an arm; without a length it has no angle. */
  private void putArm(
      Map<String, Object> entry, String key, BodyPoint end, OptionalDouble angleRad) {
    if (mechanism.bodies().stream().anyMatch(body -> body.name().equals(end.body()))) {
      entry.put(key, degrees(angleRad));
    }
  }

  private boolean onPin(int body) {
    return mechanism.bodies().get(body).pivot() instanceof Pivot.Pin;
  }

  private Map<String, Object> turnRates() {
    Map<String, Object> json = new LinkedHashMap<>();
    List<MechanismRates.Turning> turns = study.motion().turns();
    for (int i = 0; i < turns.size(); i++) {
      MechanismRates.Turning turning = turns.get(i);
      Map<String, Object> entry = new LinkedHashMap<>();
      if (onPin(i)) {
        entry.put("dangle_dheave_deg_per_mm", degrees(turning.radPerMmHeave().x()));
        entry.put("dangle_droll_deg_per_deg", number(turning.radPerRadRoll().x()));
      } else {
        entry.put("drotation_dheave_deg_per_mm", degrees(turning.radPerMmHeave()));
        entry.put("drotation_droll_deg_per_deg", numbers(turning.radPerRadRoll()));
      }
      json.put(turning.body(), entry);
    }
    return json;
  }

  private Map<String, Object> slideRates() {
    Map<String, Object> json = new LinkedHashMap<>();
    for (MechanismRates.Sliding sliding : study.motion().slides()) {
      Map<String, Object> entry = new LinkedHashMap<>();
      entry.put("dtravel_dheave", number(sliding.mmPerMmHeave()));
      entry.put("dtravel_droll_mm_per_deg", number(Math.toRadians(sliding.mmPerRadRoll())));
      json.put(sliding.slide(), entry);
    }
    return json;
  }

  private static Map<String, Object> derivatives(MotionRates rates) {
    Map<String, Object> heave = new LinkedHashMap<>();
    heave.put("x_mm", number(rates.forwardPerMmHeave()));
    heave.put("y_mm", number(rates.lateralPerMmHeave()));
    heave.put("yaw_deg", degrees(rates.yawRadPerMmHeave()));
    heave.put("pitch_nose_up_deg", degrees(rates.pitchNoseUpRadPerMmHeave()));
    Map<String, Object> roll = new LinkedHashMap<>();
    // Per radian of roll to per degree; angles per angle stay as they are.
    roll.put("x_mm", number(Math.toRadians(rates.forwardMmPerRadRoll())));
    roll.put("y_mm", number(Math.toRadians(rates.lateralMmPerRadRoll())));
    roll.put("yaw_deg", number(rates.yawRadPerRadRoll()));
    roll.put("pitch_nose_up_deg", number(rates.pitchNoseUpRadPerRadRoll()));
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("per_mm_heave", heave);
    json.put("per_deg_roll", roll);
    return json;
  }

  private Map<String, Object> sideView() {
    RideFigures figures = study.figures();
    MotionLayout layout = study.layout();
    double heightMm = layout.sprungCentreOfGravityHeightMm();
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("ic_from_links_mm", sideViewPoint(figures.instantCentreFromLinks()));
    json.put("ic_from_motion_mm", sideViewPoint(figures.instantCentreFromMotion()));
    json.put("ic_at_infinity", figures.instantCentreAtInfinity());
    json.put("swing_arm_length_mm", number(figures.swingArmLengthMm()));
    json.put("ic_slope_from_links", number(figures.slopeFromLinks()));
    json.put("ic_slope_from_motion", number(figures.slopeFromMotion()));
    json.put(
        "anti_squat_percent", number(figures.antiSquatPercent(heightMm, layout.wheelbaseMm())));
    json.put(
        "anti_lift_braking_percent",
        number(figures.antiLiftPercent(layout.frontBrakeShare(), heightMm, layout.wheelbaseMm())));
    return json;
  }

  private Map<String, Object> roll() {
    RideFigures figures = study.figures();
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("roll_centre_height_mm", number(figures.rollCentreHeightMm()));
    json.put("roll_steer_deg_per_deg", number(figures.rollSteerRadPerRad()));
    json.put("roll_understeer_deg_per_deg", number(figures.rollUndersteerRadPerRad()));
    json.put("roll_steer_sense", figures.rollSteerSense().name().toLowerCase(Locale.ROOT));
    json.put("roll_axis_slope", number(figures.rollAxisSlope()));
    json.put("roll_axis_angle_deg", degrees(figures.rollAxisAngleRad()));
    return json;
  }

  private Map<String, Object> springs() {
    Map<String, Object> json = new LinkedHashMap<>();
    for (SpringReading spring : study.rates().springs()) {
      Map<String, Object> entry = new LinkedHashMap<>();
      entry.put("length_mm", number(spring.lengthMm()));
      entry.put("dlength_dheave", number(spring.lengthPerMmHeave()));
      entry.put("dlength_droll_mm_per_deg", number(Math.toRadians(spring.lengthMmPerRadRoll())));
      entry.put("motion_ratio_heave", number(spring.motionRatioHeave()));
      entry.put("motion_ratio_roll", number(spring.motionRatioRoll()));
      json.put(spring.name(), entry);
    }
    return json;
  }

  private Map<String, Object> shocksAtRide() {
    Map<String, Object> json = new LinkedHashMap<>();
    for (SpringPoint shock : study.layout().shocks()) {
      json.put(shock.name(), Map.of("length_mm", number(shock.frame().distanceMm(shock.axle()))));
    }
    return json;
  }

  private Map<String, Object> rates() {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("wheel_rate_heave_N_per_mm", number(study.rates().heaveNPerMm()));
    json.put("roll_stiffness_springs_Nm_per_deg", number(study.rates().rollNmPerDegree()));
    json.put(
        "ride_frequency_Hz",
        number(study.rates().rideFrequencyHz(study.layout().sprungMassPerCornerKg())));
    if (withBodies) {
      json.put("strain_rate_heave_N_per_mm", number(study.motion().strainHeaveNPerMm()));
      json.put(
          "strain_roll_stiffness_Nm_per_deg",
          number(Math.toRadians(study.motion().strainRollNmmPerRad()) / 1000));
    }
    return json;
  }

  // Poses

  private List<Object> lateralShiftCurve() {
    List<Object> curve = new ArrayList<>();
    for (MotionStudy.Solved solved : study.poses()) {
      Optional<AxlePose> pose = solved.result().found();
      if (solved.wanted().set().equals(WantedPose.HEAVE) && pose.isPresent()) {
        curve.add(List.of(number(solved.wanted().heaveMm()), number(pose.get().lateralMm())));
      }
    }
    return curve;
  }

  private List<Object> poses() {
    List<Object> json = new ArrayList<>(study.poses().size());
    for (MotionStudy.Solved solved : study.poses()) {
      Map<String, Object> entry = new LinkedHashMap<>();
      entry.put("set", solved.wanted().set());
      entry.put("heave_mm", number(solved.wanted().heaveMm()));
      entry.put("roll_deg", number(solved.wanted().rollDeg()));
      putResult(entry, solved);
      json.add(entry);
    }
    return json;
  }

  private void putResult(Map<String, Object> entry, MotionStudy.Solved solved) {
    if (solved.pose().isPresent()) {
      entry.put("reachable", true);
      putPose(entry, solved.pose().get());
    } else if (solved.result() instanceof PoseResult.OutOfReach out) {
      entry.put("reachable", false);
      entry.put("reachable_fraction", number(out.fraction()));
    } else {
      // Neither found nor known to be out of reach: say so instead of choosing one.
      entry.put("reachable", null);
      entry.put("reason", solved.result().sentence());
    }
  }

  private void putPose(Map<String, Object> entry, MechanismPose whole) {
    AxlePose pose = whole.axle();
    double trackMm = mechanism.trackMm();
    Optional<ShaftReading> shaft = study.shaft(pose);
    entry.put(
        "centre_displacement_mm",
        List.of(number(pose.forwardMm()), number(pose.lateralMm()), number(pose.heaveMm())));
    entry.put("lateral_shift_mm", number(pose.lateralMm()));
    entry.put("yaw_deg", degrees(pose.yawRad()));
    entry.put("pitch_nose_up_deg", degrees(pose.pitchNoseUpRad()));
    if (shaft.isPresent()) {
      entry.put("pinion_angle_deg", degrees(shaft.get().pinionElevationRad()));
    }
    entry.put("wheel_left_mm", point(pose.wheelLeft(trackMm)));
    entry.put("wheel_right_mm", point(pose.wheelRight(trackMm)));
    putLinks(entry, whole);
    putIfAny(entry, "bodies", turns(whole));
    putIfAny(entry, "joints", joints(whole));
    putBushes(entry, whole);
    entry.put("springs", lengths(study.layout().springs(), pose));
    entry.put("shocks", lengths(study.layout().shocks(), pose));
    if (shaft.isPresent()) {
      entry.put("driveshaft", shaft(shaft.get()));
    }
  }

  private void putLinks(Map<String, Object> entry, MechanismPose pose) {
    Map<String, Object> links = new LinkedHashMap<>();
    double largestMm = 0;
    List<LinkReading> readings = pose.links();
    for (int i = 0; i < readings.size(); i++) {
      LinkReading link = readings.get(i);
      Map<String, Object> reading = new LinkedHashMap<>();
      reading.put("stretch_mm", number(link.stretchMm()));
      putAngles(reading, link);
      putArms(reading, mechanism.links().get(i), pose);
      links.put(link.name(), reading);
      largestMm = Math.max(largestMm, Math.abs(link.stretchMm()));
    }
    entry.put("links", links);
    entry.put("max_abs_stretch_mm", number(largestMm));
  }

  private Map<String, Object> turns(MechanismPose pose) {
    Map<String, Object> json = new LinkedHashMap<>();
    for (int i = 0; i < pose.turns().size(); i++) {
      BodyTurn turn = pose.turns().get(i);
      Map<String, Object> entry = new LinkedHashMap<>();
      if (onPin(i)) {
        entry.put("angle_deg", degrees(turn.angleRad()));
      } else {
        entry.put("rotation_deg", degrees(turn.rotationRad()));
      }
      entry.put("pivot_mm", point(turn.pivot()));
      json.put(turn.body(), entry);
    }
    return json;
  }

  private Map<String, Object> joints(MechanismPose pose) {
    Map<String, Object> json = new LinkedHashMap<>();
    for (ExactJoint joint : mechanism.joints()) {
      Map<String, Object> entry = new LinkedHashMap<>();
      if (joint instanceof ExactJoint.Slide slide) {
        entry.put("travel_mm", number(pose.travelMm(slide)));
        entry.put("point_mm", point(pose.move(slide.point())));
      } else if (joint instanceof ExactJoint.Ball ball) {
        entry.put("point_mm", point(pose.move(new BodyPoint(ball.first(), ball.point()))));
      }
      json.put(joint.name(), entry);
    }
    return json;
  }

  private void putBushes(Map<String, Object> entry, MechanismPose pose) {
    Map<String, Object> json = new LinkedHashMap<>();
    double largestMm = 0;
    for (Bush bush : mechanism.bushes()) {
      Vector3 deflection = pose.deflectionMm(bush);
      json.put(bush.name(), Map.of("deflection_mm", numbers(deflection)));
      largestMm = Math.max(largestMm, deflection.norm());
    }
    if (!json.isEmpty()) {
      entry.put("bushes", json);
      entry.put("max_bush_deflection_mm", number(largestMm));
    }
  }

  private static void putAngles(Map<String, Object> entry, LinkReading link) {
    entry.put("side_view_deg", degrees(link.sideViewRad()));
    entry.put("plan_view_deg", degrees(link.planViewRad()));
    entry.put("elevation_deg", degrees(link.elevationRad()));
  }

  private static Map<String, Object> lengths(List<SpringPoint> springs, AxlePose pose) {
    Map<String, Object> json = new LinkedHashMap<>();
    for (SpringPoint spring : springs) {
      json.put(spring.name(), number(spring.lengthMm(pose)));
    }
    return json;
  }

  private static Map<String, Object> shaft(ShaftReading shaft) {
    double squareDegrees = Math.toDegrees(Math.toDegrees(shaft.squaresDifferenceRad2()));
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("length_mm", number(shaft.lengthMm()));
    json.put("front_joint_deg", degrees(shaft.frontJointRad()));
    json.put("rear_joint_deg", degrees(shaft.rearJointRad()));
    json.put("residual_angle_deg", degrees(shaft.residualRad()));
    json.put("b1sq_minus_b2sq_deg2", number(squareDegrees));
    return json;
  }

  // Values

  private static double number(double value) {
    return Math.abs(value) < ZERO ? 0 : value;
  }

  private static Object number(OptionalDouble value) {
    return value.isPresent() ? number(value.getAsDouble()) : null;
  }

  private static double degrees(double angleRad) {
    return number(Math.toDegrees(angleRad));
  }

  private static Object degrees(OptionalDouble angleRad) {
    return angleRad.isPresent() ? degrees(angleRad.getAsDouble()) : null;
  }

  private static List<Double> numbers(Vector3 three) {
    return List.of(number(three.x()), number(three.y()), number(three.z()));
  }

  private static List<Double> degrees(Vector3 anglesRad) {
    return numbers(anglesRad.scaled(180 / Math.PI));
  }

  private static List<Double> point(Point3 point) {
    return List.of(number(point.xMm()), number(point.yMm()), number(point.zMm()));
  }

  private static List<Double> sideViewPoint(Optional<Point3> point) {
    return point.isPresent() ? List.of(number(point.get().xMm()), number(point.get().zMm())) : null;
  }
}
