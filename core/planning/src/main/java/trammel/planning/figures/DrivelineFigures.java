package trammel.planning.figures;

import java.util.List;
import java.util.Optional;
import trammel.engine.driveline.CompoundAngle;
import trammel.engine.driveline.CriticalSpeedConstant;
import trammel.engine.driveline.DriveShaftTube;
import trammel.engine.driveline.JointAngleTable;
import trammel.engine.driveline.JointPair;
import trammel.engine.driveline.ShaftSpeed;
import trammel.engine.driveline.ShaftTorque;
import trammel.engine.driveline.UniversalJoint;
import trammel.reading.fields.Field;

/** The driveshaft and its joints. */
final class DrivelineFigures implements FigureGroup {
  private static final Field<Double> ANGLE = Shop.degrees("angle", "working angle", 0, 80);
  private static final Field<Double> SPEED =
      Field.speedRpm("speed", "shaft speed", 1, 20_000).withDefault(3000.0);
  private static final Field<Double> INERTIA =
      Field.number("inertia_kg_m2", "inertia that is driven, kg m2", 0, 1000).optional();
  private static final Field<Double> SWING =
      Field.percent("swing", "total swing of the output speed over the input speed", 0, 5);
  private static final Field<Double> FIRST =
      Shop.degrees("first", "angle of the joint at the transmission", 0, 80);
  private static final Field<Double> SECOND =
      Shop.degrees("second", "angle of the joint at the axle", 0, 80);
  private static final Field<Double> PLAN = Shop.degrees("plan", "angle in plan view", -80, 80);
  private static final Field<Double> SIDE = Shop.degrees("side", "angle in side view", -80, 80);
  private static final Field<Double> OFFSET_FRONT =
      Shop.inches("front_offset", "front end from the centre plane, left positive", -100, 100);
  private static final Field<Double> OFFSET_REAR =
      Shop.inches("rear_offset", "rear end from the centre plane, left positive", -100, 100)
          .withDefault(0.0);
  private static final Field<Double> APART =
      Shop.inches("length", "distance between them along the vehicle", 0.1, 400);
  private static final Field<Double> LIMIT_SPEED =
      Field.speedRpm("speed", "highest shaft speed in use", 1, 20_000);
  private static final Field<Double> ACCELERATION =
      Field.number("limit_rad_s2", "angular acceleration allowed, rad/s2", 0, 100_000)
          .withDefault(JointPair.TORSIONAL_LIMIT_RAD_PER_S2);

  /** Inertia of what one joint drives and coasts: installation manual J3311-1. */
  private static final double SINGLE_JOINT_RAD_PER_S2 = 1000;

  private static final Field<Double> HOSE_FORWARD =
      Shop.inches(
          "forward", "between the fittings fore and aft, where they are farthest apart", 0, 100);
  private static final Field<Double> HOSE_ACROSS =
      Shop.inches("across", "the same across the vehicle", 0, 100).withDefault(0.0);
  private static final Field<Double> HOSE_UP = Shop.inches("up", "the same upright", 0, 100);
  private static final Field<Double> SLACK =
      Field.percent("slack", "how much longer the hose is", 0.05, 0.5).withDefault(0.08);
  private static final Field<Double> BALANCE_GRADE =
      Field.number(
              "grade",
              "balance grade G, mm/s: 16 for propeller shafts, 40 for car shafts",
              0.4,
              4000)
          .withDefault(16.0);
  private static final Field<Double> SHAFT_WEIGHT =
      Shop.pounds("weight", "weight of the shaft", 0.1, 1000);
  private static final Field<Double> SHAFT_LENGTH =
      Shop.inches("length", "length from joint to joint", 2, 190);
  private static final Field<Boolean> PARALLEL =
      Field.flag("parallel", "transmission output and pinion are parallel").withDefault(true);
  private static final Field<Double> OUTSIDE =
      Shop.inches("outside", "outside diameter of the shaft", 0.25, 19);
  private static final Field<Double> WALL = Shop.inches("wall", "wall of the shaft", 0.01, 5);
  private static final Field<String> CONSTANT =
      Field.choice("constant", "published constant", List.of("usual", "metric", "handbook"))
          .withDefault("usual");
  private static final Field<Double> ROAD_SPEED =
      Field.speedMPerS("road_speed", "road speed", 0, 200);
  private static final Field<Double> TYRE_RADIUS =
      Shop.inches("tyre_radius", "rolling radius of the tyre", 2, 59);
  private static final Field<Double> RATIO =
      Field.number("axle_ratio", "shaft turns for one turn of the wheel", 0.5, 20);
  private static final Field<Double> ENGINE_TORQUE =
      Field.torqueNmm("engine_torque", "engine torque", 0, 1e8);
  private static final Field<Double> GEAR =
      Field.number("gear_ratio", "engine turns for one turn of the shaft", 0.2, 200);
  private static final Field<Double> EFFICIENCY =
      Field.percent("efficiency", "share of the torque that arrives", 0.01, 1).withDefault(0.95);
  private static final Field<Double> AXLE_LOAD =
      Shop.poundsForce("axle_load", "load on the driven axle at that moment", 0, 100_000);
  private static final Field<Double> FRICTION =
      Field.number("friction", "friction of tyre on road", 0, 5).withDefault(1.0);
  private static final Field<Double> TORQUE =
      Field.torqueNmm("torque", "torque in the shaft", 0, 1e8);

  @Override
  public String title() {
    return "Driveline";
  }

  @Override
  public List<Figure> figures() {
    return List.of(
        Figure.draft(this, "joint-speed", "How unevenly one universal joint turns")
            .takes(ANGLE, SPEED, INERTIA)
            .gives("fastest", "fastest over mean", FigureUnit.RATIO)
            .gives("slowest", "slowest over mean", FigureUnit.RATIO)
            .gives("unevenness", "swing over mean", FigureUnit.RATIO)
            .gives("largest_lag", "largest lag of the output", FigureUnit.ANGLE)
            .gives("rotation", "rotation at the largest acceleration", FigureUnit.ANGLE)
            .gives("acceleration", "largest angular acceleration", FigureUnit.ANGULAR_ACCELERATION)
            .gives("torque", "torque that it makes", FigureUnit.TORQUE)
            .by(
                "output over input cos b/(1 - sin2 b cos2 t); extremes 1/cos b and cos b",
                "Khurmi and Gupta, Theory of Machines, ch. 9; Mechanical Engineer's Data Handbook,"
                    + " section 2.4.3",
                "angle=5"),
        Figure.draft(this, "joint-angle-for-swing", "Joint angle that gives a speed swing")
            .takes(SWING, SPEED)
            .gives("angle", "working angle", FigureUnit.ANGLE)
            .gives("fastest", "fastest speed", FigureUnit.ROTATION)
            .gives("slowest", "slowest speed", FigureUnit.ROTATION)
            .by(
                "1/cos b - cos b = swing",
                "Khurmi and Gupta, Theory of Machines, ch. 9",
                "swing=8.3333 speed=1200"),
        Figure.draft(this, "residual-angle", "What two joints leave of each other's unevenness")
            .takes(FIRST, SECOND, SPEED)
            .gives("residual", "residual angle, yokes in phase", FigureUnit.ANGLE)
            .gives("torsional", "torsional acceleration", FigureUnit.ANGULAR_ACCELERATION)
            .gives("inertia", "inertia acceleration of the shaft", FigureUnit.ANGULAR_ACCELERATION)
            .gives("out_of_phase", "residual angle, yokes out of phase", FigureUnit.ANGLE)
            .gives("out_of_phase_fastest", "fastest, yokes out of phase", FigureUnit.RATIO)
            .gives("out_of_phase_slowest", "slowest, yokes out of phase", FigureUnit.RATIO)
            .by(
                "root of |b1 squared - b2 squared|; acceleration speed squared x angle squared",
                "standard; fits the two-joint table that refers to SAE AE-7 section 3.1.1",
                "first=5 second=4"),
        Figure.draft(this, "joint-angles", "True joint angle from plan and side view")
            .takes(PLAN, SIDE)
            .gives("angle", "true angle", FigureUnit.ANGLE)
            .by(
                "tan2 = tan2 plan + tan2 side; about the root of the squares",
                "driveline installation manuals",
                "plan=3 side=4"),
        Figure.draft(this, "plan-angle", "Plan angle from offsets")
            .takes(OFFSET_FRONT, OFFSET_REAR, APART)
            .gives("angle", "angle in plan view", FigureUnit.ANGLE)
            .by(
                "arc tangent of (difference of the offsets / length)",
                "driveline manual, p. 87",
                "front_offset=3.25 length=48"),
        Figure.draft(this, "joint-limit", "Largest joint angle at a shaft speed")
            .takes(LIMIT_SPEED, ACCELERATION)
            .gives("by_table", "by the maker's table", FigureUnit.ANGLE)
            .gives("single", "one joint by itself, by 1000 rad/s2", FigureUnit.ANGLE)
            .gives(
                "by_acceleration",
                "what two joints together may leave, by the acceleration allowed",
                FigureUnit.ANGLE)
            .by(
                "table of speed and angle; root of the limit / speed",
                "driveline installation manual J3311-1; limits 300, 400 and 1000 rad/s2 are"
                    + " published",
                "speed=3000"),
        Figure.draft(this, "hose-length", "Length of a brake hose to order")
            .takes(HOSE_FORWARD, HOSE_ACROSS, HOSE_UP, SLACK)
            .gives("apart", "farthest between the fittings", FigureUnit.LENGTH)
            .gives("length", "hose to order, fittings not counted", FigureUnit.LENGTH)
            .gives("drawn", "least, for a hose that draws up 4 % under pressure", FigureUnit.LENGTH)
            .by(
                "root of the sum of squares; x (1 + slack); / 0.96",
                "FAA AC 43.13-1B fig. 9-9: 5 to 8 % slack; length changes by +2 to -4 %",
                "forward=8 up=8 across=1"),
        Figure.draft(this, "shaft-balance", "What a balanced shaft may be out by")
            .takes(SHAFT_WEIGHT, LIMIT_SPEED, BALANCE_GRADE)
            .gives("per_mass", "for each kg of the shaft, g mm", FigureUnit.RATIO)
            .gives("g_mm", "in all, g mm", FigureUnit.RATIO)
            .gives("each_plane", "in each of two planes, g mm", FigureUnit.RATIO)
            .by(
                "9549 G/n g mm for each kg; half of it in each plane",
                "ISO 21940-11",
                "weight=19.84 speed=3000"),
        Figure.draft(this, "shaft-length-limit", "Largest joint angle for a short shaft")
            .takes(SHAFT_LENGTH, PARALLEL)
            .gives("angle", "largest angle", FigureUnit.ANGLE)
            .by(
                "inches / 5 degrees with parallel ends, / 10 with crossing ends",
                "trade rule of a driveline supplier",
                "length=30"),
        Figure.draft(this, "critical-speed", "Critical speed of a tube shaft")
            .takes(OUTSIDE, WALL, SHAFT_LENGTH, CONSTANT)
            .gives("critical", "critical speed", FigureUnit.ROTATION)
            .gives("usable", "usable speed, 0.7 of the usual one", FigureUnit.ROTATION)
            .by(
                "4.8e6 root of (D2 + d2)/L2 in inches; 1.21e8 in mm; 4.705e6 in handbooks",
                "SAE joint selection graph as a supplier prints it; handbook constant from memory",
                "outside=3 wall=0.083 length=50"),
        Figure.draft(this, "shaft-speed", "Shaft speed at a road speed")
            .takes(ROAD_SPEED, TYRE_RADIUS, RATIO)
            .gives("speed", "shaft speed", FigureUnit.ROTATION)
            .by(
                "road speed / tyre radius x axle ratio",
                "kinematics, closed form",
                "road_speed=60 tyre_radius=14 axle_ratio=3.73"),
        Figure.draft(this, "shaft-torque", "Torque in the shaft from the engine")
            .takes(ENGINE_TORQUE, GEAR, EFFICIENCY)
            .gives("torque", "torque in the shaft", FigureUnit.TORQUE)
            .by(
                "engine torque x gear ratio x efficiency",
                "statics, closed form",
                "engine_torque=300 gear_ratio=2.5"),
        Figure.draft(this, "slip-torque", "Torque in the shaft at which the tyres slip")
            .takes(AXLE_LOAD, FRICTION, TYRE_RADIUS, RATIO)
            .gives("torque", "torque in the shaft", FigureUnit.TORQUE)
            .by(
                "load x friction x tyre radius / axle ratio",
                "statics, closed form",
                "axle_load=2000 tyre_radius=14 axle_ratio=3.73"),
        Figure.draft(this, "shaft-stress", "Shear stress in a tube shaft")
            .takes(OUTSIDE, WALL, TORQUE)
            .gives("stress", "shear stress at the surface", FigureUnit.STRESS)
            .by("16 T D/(pi (D4 - d4))", "textbook", "outside=3 wall=0.083 torque=1000"));
  }

  @Override
  public void work(String name, FigureInputs given, FigureAnswers answers) {
    switch (name) {
      case "joint-speed" -> jointSpeed(given, answers);
      case "joint-angle-for-swing" -> {
        UniversalJoint joint = UniversalJoint.withNonUniformity(given.get(SWING));
        answers
            .put("angle", joint.angleRad())
            .put("fastest", given.get(SPEED) * joint.maxSpeedRatio())
            .put("slowest", given.get(SPEED) * joint.minSpeedRatio());
      }
      case "residual-angle" -> residual(given, answers);
      case "joint-angles" ->
          answers.put("angle", CompoundAngle.trueRad(given.get(PLAN), given.get(SIDE)));
      case "plan-angle" ->
          answers.put(
              "angle",
              CompoundAngle.planRad(
                  given.get(OFFSET_FRONT), given.get(OFFSET_REAR), given.get(APART)));
      case "joint-limit" ->
          answers
              .put("by_table", JointAngleTable.largestAngleRad(given.get(LIMIT_SPEED)))
              .put(
                  "single",
                  JointPair.angleForAccelerationRad(
                      given.get(LIMIT_SPEED), SINGLE_JOINT_RAD_PER_S2))
              .put(
                  "by_acceleration",
                  JointPair.angleForAccelerationRad(
                      given.get(LIMIT_SPEED), given.get(ACCELERATION)));
      case "hose-length" -> {
        double apart =
            Math.hypot(
                Math.hypot(given.get(HOSE_FORWARD), given.get(HOSE_ACROSS)), given.get(HOSE_UP));
        answers
            .put("apart", apart)
            .put("length", apart * (1 + given.get(SLACK)))
            .put("drawn", apart / 0.96);
      }
      case "shaft-balance" -> {
        double perKg = 30_000 / Math.PI * given.get(BALANCE_GRADE) / given.get(LIMIT_SPEED);
        double all = perKg * given.get(SHAFT_WEIGHT);
        answers.put("per_mass", perKg).put("g_mm", all).put("each_plane", all / 2);
      }
      case "shaft-length-limit" ->
          answers.put(
              "angle",
              JointAngleTable.largestAngleByLengthRad(
                  given.get(SHAFT_LENGTH), given.get(PARALLEL)));
      default -> shaft(name, given, answers);
    }
  }

  private static void shaft(String name, FigureInputs given, FigureAnswers answers) {
    switch (name) {
      case "critical-speed" -> {
        DriveShaftTube tube = tube(given, given.get(SHAFT_LENGTH));
        answers
            .put("critical", tube.criticalSpeedRpm(constant(given.get(CONSTANT))))
            .put("usable", tube.usableSpeedRpm());
      }
      case "shaft-speed" ->
          answers.put(
              "speed",
              ShaftSpeed.rpmAtRoadSpeed(
                  given.get(ROAD_SPEED), given.get(TYRE_RADIUS), given.get(RATIO)));
      case "shaft-torque" ->
          answers.put(
              "torque",
              ShaftTorque.fromEngineNmm(
                  given.get(ENGINE_TORQUE), given.get(GEAR), given.get(EFFICIENCY)));
      case "slip-torque" ->
          answers.put(
              "torque",
              ShaftTorque.atTyreSlipNmm(
                  given.get(AXLE_LOAD),
                  given.get(FRICTION),
                  given.get(TYRE_RADIUS),
                  given.get(RATIO)));
      case "shaft-stress" ->
          // Its length plays no part in the stress; any will do.
          answers.put("stress", tube(given, 1000).shearStressMPa(given.get(TORQUE)));
      default -> throw FigureGroup.unknown(name);
    }
  }

  private static DriveShaftTube tube(FigureInputs given, double lengthMm) {
    double outsideMm = given.get(OUTSIDE);
    double wallMm = given.get(WALL);
    if (!(2 * wallMm < outsideMm)) {
      throw new IllegalArgumentException(
          "wall: given "
              + wallMm
              + " mm for a shaft of "
              + outsideMm
              + " mm; allowed: less than half of it. Measure the wall, not the bore.");
    }
    return new DriveShaftTube(outsideMm, outsideMm - 2 * wallMm, lengthMm);
  }

  private static CriticalSpeedConstant constant(String word) {
    return switch (word) {
      case "metric" -> CriticalSpeedConstant.JOINT_SELECTION_GRAPH_METRIC;
      case "handbook" -> CriticalSpeedConstant.HANDBOOK;
      default -> CriticalSpeedConstant.JOINT_SELECTION_GRAPH;
    };
  }

  private static void jointSpeed(FigureInputs given, FigureAnswers answers) {
    UniversalJoint joint = new UniversalJoint(given.get(ANGLE));
    double acceleration = joint.maxAccelerationRadPerS2(given.get(SPEED));
    answers
        .put("fastest", joint.maxSpeedRatio())
        .put("slowest", joint.minSpeedRatio())
        .put("unevenness", joint.nonUniformity())
        .put("largest_lag", joint.largestRotationErrorRad())
        .put("rotation", joint.rotationAtMaxAccelerationRad())
        .put("acceleration", acceleration);
    Optional<Double> inertia = given.find(INERTIA);
    if (inertia.isPresent()) {
      answers.put("torque", ShaftTorque.fromInertiaNmm(inertia.get(), acceleration));
    }
  }

  private static void residual(FigureInputs given, FigureAnswers answers) {
    JointPair pair = new JointPair(given.get(FIRST), given.get(SECOND));
    answers
        .put("residual", pair.residualRad())
        .put("torsional", pair.torsionalAccelerationRadPerS2(given.get(SPEED)))
        .put("inertia", pair.inertiaAccelerationRadPerS2(given.get(SPEED)))
        .put("out_of_phase", pair.residualOutOfPhaseRad())
        .put("out_of_phase_fastest", pair.maxSpeedRatioOutOfPhase())
        .put("out_of_phase_slowest", pair.minSpeedRatioOutOfPhase());
  }
}
