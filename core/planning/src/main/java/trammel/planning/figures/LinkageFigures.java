package trammel.planning.figures;

import java.util.List;
import java.util.Optional;
import trammel.engine.geometry.Point3;
import trammel.engine.motion.LateralBarArc;
import trammel.engine.motion.Link;
import trammel.engine.motion.LinkKind;
import trammel.engine.motion.Linkage;
import trammel.engine.motion.PoseSolver;
import trammel.engine.motion.PowerSquat;
import trammel.engine.motion.RideFigures;
import trammel.engine.quantity.Gravity;
import trammel.reading.fields.Field;

/** What a linkage does at ride height, from a handful of points. */
final class LinkageFigures implements FigureGroup {
  private static final double MOST = 200;

  /** Any track, tyre and stiffness will do: none of these figures depends on them. */
  private static final double TRACK_MM = 1500;

  private static final double RADIUS_MM = 320;
  private static final double STIFFNESS_N_PER_MM = 10_000;

  /** Where bars stand that are only known in side view (mm from the centre plane). */
  private static final double BARS_LEFT_MM = 450;

  private static final Field<Double> ACROSS =
      Shop.inches("across", "distance between the ends across the vehicle", 0.1, MOST);
  private static final Field<Double> RISE =
      Shop.inches("rise", "axle end above the frame end at rest; negative below", -100, 100)
          .withDefault(0.0);
  private static final Field<Double> TRAVEL =
      Shop.inches("travel", "travel of the axle, bump positive", -50, 50);
  private static final Field<Double> AXLE_LEFT =
      coordinate("axle_left", "axle end, left of the centre plane");
  private static final Field<Double> AXLE_UP = coordinate("axle_up", "axle end above ground");
  private static final Field<Double> FRAME_LEFT =
      coordinate("frame_left", "frame end, left of the centre plane");
  private static final Field<Double> FRAME_UP = coordinate("frame_up", "frame end above ground");

  private static final Field<Double> LOWER_FRAME_FORWARD =
      coordinate("lower_frame_forward", "lower bar, frame end ahead of the axle line");
  private static final Field<Double> LOWER_FRAME_LEFT =
      coordinate("lower_frame_left", "lower bar, frame end left of the centre plane");
  private static final Field<Double> LOWER_FRAME_UP =
      coordinate("lower_frame_up", "lower bar, frame end above ground");
  private static final Field<Double> LOWER_AXLE_FORWARD =
      coordinate("lower_axle_forward", "lower bar, axle end ahead of the axle line");
  private static final Field<Double> LOWER_AXLE_LEFT =
      coordinate("lower_axle_left", "lower bar, axle end left of the centre plane");
  private static final Field<Double> LOWER_AXLE_UP =
      coordinate("lower_axle_up", "lower bar, axle end above ground");
  private static final Field<Double> UPPER_FRAME_FORWARD =
      coordinate("upper_frame_forward", "upper bar, frame end ahead of the axle line");
  private static final Field<Double> UPPER_FRAME_LEFT =
      coordinate("upper_frame_left", "upper bar, frame end left of the centre plane");
  private static final Field<Double> UPPER_FRAME_UP =
      coordinate("upper_frame_up", "upper bar, frame end above ground");
  private static final Field<Double> UPPER_AXLE_FORWARD =
      coordinate("upper_axle_forward", "upper bar, axle end ahead of the axle line");
  private static final Field<Double> UPPER_AXLE_LEFT =
      coordinate("upper_axle_left", "upper bar, axle end left of the centre plane");
  private static final Field<Double> UPPER_AXLE_UP =
      coordinate("upper_axle_up", "upper bar, axle end above ground");

  private static final Field<Double> GRAVITY_HEIGHT =
      Shop.inches("cg_height", "height of the centre of gravity", 1, 120);
  private static final Field<Double> WHEELBASE = Shop.inches("wheelbase", "wheelbase", 20, 400);
  private static final Field<Double> FRONT_BRAKE =
      Field.percent("front_brake", "share of the brake force at the front", 0, 1).optional();

  private static final Field<Double> WEIGHT =
      Shop.pounds("weight", "weight of the vehicle", 100, 100_000);
  private static final Field<Double> ACCELERATION =
      Field.number("acceleration", "forward acceleration in g", 0, 5);
  private static final Field<Double> CENTRE_FORWARD =
      Shop.inches("centre_forward", "instant centre ahead of the axle line", 1, 10_000);
  private static final Field<Double> CENTRE_UP =
      Shop.inches("centre_up", "instant centre above ground", -MOST, MOST);
  private static final Field<Double> REAR_RATE =
      Shop.poundsPerInch("rear_rate", "rate of both rear springs together at the wheels", 1, 1e5);
  private static final Field<Double> FRONT_RATE =
      Shop.poundsPerInch("front_rate", "rate of both front springs together at the wheels", 1, 1e5);

  private static final Field<Double> DECELERATION =
      Field.number("deceleration", "deceleration in g", 0, 3);
  private static final Field<Double> FRONT_SHARE =
      Field.percent("front_brake", "share of the brake force at the front", 0, 1);
  private static final Field<Double> SIDE_FORCE =
      Shop.poundsForce("force", "side force that the bar carries", 0, 100_000);
  private static final Field<Double> AXLE_SPRUNG =
      Shop.pounds("weight", "sprung weight on this axle", 1, 100_000);
  private static final Field<Double> SIDEWAYS =
      Field.number("acceleration", "sideways acceleration in g", 0, 3);
  private static final Field<Double> ROLL_STIFFNESS =
      Field.number(
          "stiffness_lb_in_deg",
          "roll stiffness of this axle with its anti-roll bar, lb-in a degree",
          0,
          1e6);
  private static final Field<Double> ROLL = Shop.degrees("roll", "roll of the body", 0, 45);
  private static final Field<Double> ROLL_CENTRE =
      Shop.inches("roll_centre", "this axle's roll centre above ground", -20, 60);
  private static final Field<Double> AXLE_UNSPRUNG =
      Shop.pounds("unsprung", "axle and wheels", 0, 100_000);
  private static final Field<Double> UNSPRUNG_HEIGHT =
      Shop.inches("unsprung_height", "their centre of gravity above ground", 0, 60);
  private static final Field<Double> TRACK = Shop.inches("track", "track of this axle", 20, 120);

  private static Field<Double> coordinate(String key, String help) {
    return Shop.inches(key, help, -MOST, MOST);
  }

  @Override
  public String title() {
    return "Linkage at ride height";
  }

  @Override
  public List<Figure> figures() {
    return List.of(
        Figure.draft(this, "lateral-bar-arc", "How far a lateral bar pushes the axle sideways")
            .takes(ACROSS, TRAVEL, RISE)
            .gives("length", "length of the bar", FigureUnit.LENGTH)
            .gives("shift", "shift toward the frame end", FigureUnit.LENGTH)
            .by(
                "H - root of (R2 - (v + d)2), R2 = H2 + v2",
                "pure geometry, closed form",
                "across=36 travel=3"),
        Figure.draft(
                this, "lateral-bar-roll-centre", "Roll centre on a lateral bar at the axle line")
            .takes(AXLE_LEFT, AXLE_UP, FRAME_LEFT, FRAME_UP)
            .gives("height", "roll centre above ground", FigureUnit.LENGTH)
            .by(
                "height at which the bar crosses the centre plane, the other bars being level",
                "Gillespie 1992 ch. 7, from memory; Heisler, Advanced Vehicle Technology, fig."
                    + " 10.28",
                "axle_left=-18 axle_up=12 frame_left=18 frame_up=15"),
        sideView(Figure.draft(this, "instant-centre", "Side-view instant centre of two bars"))
            .gives("forward", "instant centre ahead of the axle line", FigureUnit.LENGTH)
            .gives("up", "instant centre above ground", FigureUnit.LENGTH)
            .gives("slope", "slope from the contact patch to it", FigureUnit.RATIO)
            .gives(
                "pinion",
                "pinion angle per bump travel, nose up positive",
                FigureUnit.ANGLE_PER_TRAVEL)
            .by(
                "pole of the axle's motion in heave: where the lines of the bars meet",
                "Gillespie 1992 ch. 7, from memory; Milliken and Milliken 1995 ch. 17, from memory",
                SIDE_EXAMPLE),
        sideView(Figure.draft(this, "anti-squat", "Anti-squat and anti-lift of two bars"))
            .takes(GRAVITY_HEIGHT, WHEELBASE, FRONT_BRAKE)
            .gives("anti_squat", "anti-squat, driven rigid axle", FigureUnit.PERCENT)
            .gives("anti_lift", "anti-lift, brakes on the axle", FigureUnit.PERCENT)
            .by(
                "(z/x)/(h/L); anti-lift times (1 - front share of the brakes)",
                "Barton and Fieldhouse, Automotive Chassis Engineering, Springer 2018, eq. 3.63;"
                    + " Gillespie 1992 ch. 7, from memory",
                SIDE_EXAMPLE + " cg_height=24 wheelbase=112 front_brake=65"),
        Figure.draft(this, "power-squat", "How a vehicle squats and pitches when it pulls away")
            .takes(
                WEIGHT,
                ACCELERATION,
                GRAVITY_HEIGHT,
                WHEELBASE,
                CENTRE_FORWARD,
                CENTRE_UP,
                REAR_RATE,
                FRONT_RATE)
            .gives("rear_sinks", "the rear sinks by", FigureUnit.LENGTH)
            .gives("front_rises", "the front rises by", FigureUnit.LENGTH)
            .gives("pitch", "nose comes up by", FigureUnit.ANGLE)
            .gives("anti_squat", "anti-squat", FigureUnit.PERCENT)
            .gives(
                "no_pitch_slope",
                "slope to the instant centre that would leave no pitch",
                FigureUnit.RATIO)
            .by(
                "m a (h/L - z/x)/k rear, m a (h/L)/k front; no pitch at (h/L)(1 + k rear/k front)",
                "Barton and Fieldhouse, Automotive Chassis Engineering, Springer 2018, eq. 3.63,"
                    + " 3.64 and 3.69",
                "weight=3307 acceleration=0.306 cg_height=21.65 wheelbase=106.3"
                    + " centre_forward=74.8 centre_up=13.78 rear_rate=251.2 front_rate=228.4"),
        Figure.draft(this, "brake-lift", "How far the rear rises under braking")
            .takes(
                WEIGHT,
                DECELERATION,
                GRAVITY_HEIGHT,
                WHEELBASE,
                FRONT_SHARE,
                CENTRE_FORWARD,
                CENTRE_UP,
                REAR_RATE)
            .gives("rear_rises", "the rear rises by", FigureUnit.LENGTH)
            .gives("anti_lift", "anti-lift", FigureUnit.PERCENT)
            .by(
                "m a (h/L - (1 - front share) z/x)/k rear",
                "Barton and Fieldhouse, Automotive Chassis Engineering, Springer 2018, section 3.11",
                "weight=3600 deceleration=0.7 cg_height=25 wheelbase=118 front_brake=65"
                    + " centre_forward=80 centre_up=14 rear_rate=320"),
        Figure.draft(
                this, "lateral-bar-jacking", "How a sloping lateral bar lifts the body in a turn")
            .takes(ACROSS, RISE, SIDE_FORCE)
            .gives("slope", "slope of the bar", FigureUnit.ANGLE)
            .gives("lift", "up in one turn, down in the other", FigureUnit.FORCE)
            .by("F tan of the slope", "statics", "across=36 rise=2.5 force=800"),
        Figure.draft(this, "sideways-transfer", "Load that moves across an axle in a turn")
            .takes(
                AXLE_SPRUNG,
                SIDEWAYS,
                ROLL_STIFFNESS,
                ROLL,
                ROLL_CENTRE,
                AXLE_UNSPRUNG,
                UNSPRUNG_HEIGHT,
                TRACK)
            .gives("by_springs", "by springs and anti-roll bar", FigureUnit.FORCE)
            .gives("by_roll_centre", "straight through the roll centre", FigureUnit.FORCE)
            .gives("by_unsprung", "by axle and wheels", FigureUnit.FORCE)
            .gives("transfer", "together, from the inner to the outer tyre", FigureUnit.FORCE)
            .by(
                "(K roll + a Ws z + a wu h)/t",
                "Barton and Fieldhouse, Automotive Chassis Engineering, Springer 2018, p. 225",
                "weight=1620 acceleration=0.7 stiffness_lb_in_deg=4300 roll=3.2368 roll_centre=11"
                    + " unsprung=380 unsprung_height=13.5 track=60"),
        Figure.draft(this, "roll-axis", "Roll axis and roll steer of a triangulated four-link")
            .takes(
                UPPER_FRAME_FORWARD,
                UPPER_FRAME_LEFT,
                UPPER_FRAME_UP,
                UPPER_AXLE_FORWARD,
                UPPER_AXLE_LEFT,
                UPPER_AXLE_UP,
                LOWER_FRAME_FORWARD,
                LOWER_FRAME_LEFT,
                LOWER_FRAME_UP,
                LOWER_AXLE_FORWARD,
                LOWER_AXLE_LEFT,
                LOWER_AXLE_UP)
            .gives("roll_centre", "roll centre above ground, at the axle line", FigureUnit.LENGTH)
            .gives(
                "slope", "slope of the roll axis, rising to the front positive", FigureUnit.RATIO)
            .gives("axis_angle", "angle of the roll axis", FigureUnit.ANGLE)
            .gives("understeer", "roll steer, understeer positive", FigureUnit.PERCENT)
            .by(
                "points of the centre plane that do not move sideways in a small roll",
                "Gillespie 1992 ch. 7, from memory",
                "upper_frame_forward=20 upper_frame_left=16 upper_frame_up=19 upper_axle_forward=0"
                    + " upper_axle_left=5 upper_axle_up=21 lower_frame_forward=26"
                    + " lower_frame_left=16 lower_frame_up=11 lower_axle_forward=0"
                    + " lower_axle_left=20 lower_axle_up=9.5"));
  }

  private static final String SIDE_EXAMPLE =
      "lower_frame_forward=24 lower_frame_up=11 lower_axle_forward=1 lower_axle_up=9"
          + " upper_frame_forward=20 upper_frame_up=18.5 upper_axle_forward=-1 upper_axle_up=20";

  private static Figure.Draft sideView(Figure.Draft draft) {
    return draft.takes(
        LOWER_FRAME_FORWARD, LOWER_FRAME_UP,
        LOWER_AXLE_FORWARD, LOWER_AXLE_UP,
        UPPER_FRAME_FORWARD, UPPER_FRAME_UP,
        UPPER_AXLE_FORWARD, UPPER_AXLE_UP);
  }

  @Override
  public void work(String name, FigureInputs given, FigureAnswers answers) {
    switch (name) {
      case "lateral-bar-arc" -> {
        LateralBarArc arc = new LateralBarArc(given.get(ACROSS), given.get(RISE));
        answers.put("length", arc.lengthMm()).put("shift", arc.shiftMm(given.get(TRAVEL)));
      }
      case "lateral-bar-roll-centre" ->
          answers.put("height", lateralBarFigures(given).rollCentreHeightMm());
      case "instant-centre" -> instantCentre(sideViewFigures(given), answers);
      case "anti-squat" -> antiSquat(sideViewFigures(given), given, answers);
      case "power-squat" -> powerSquat(given, answers);
      case "brake-lift" -> brakeLift(given, answers);
      case "lateral-bar-jacking" -> {
        double slope = Math.atan(Math.abs(given.get(RISE)) / given.get(ACROSS));
        answers.put("slope", slope).put("lift", given.get(SIDE_FORCE) * Math.tan(slope));
      }
      case "sideways-transfer" -> sideways(given, answers);
      case "roll-axis" -> rollAxis(given, answers);
      default -> throw FigureGroup.unknown(name);
    }
  }

  /** Level bars fore and aft leave the sideways motion to the lateral bar alone. */
  private static RideFigures lateralBarFigures(FigureInputs given) {
    Link bar =
        link(
            "lateral",
            LinkKind.LATERAL,
            new Point3(0, given.get(FRAME_LEFT), given.get(FRAME_UP)),
            new Point3(0, given.get(AXLE_LEFT), given.get(AXLE_UP)));
    Link lower = level("lower", RADIUS_MM - 80);
    Link upper = level("upper", RADIUS_MM + 80);
    return figures(List.of(lower, other(lower), upper, other(upper), bar));
  }

  private static Link level(String name, double heightMm) {
    return foreAndAft(
        name, new Point3(500, BARS_LEFT_MM, heightMm), new Point3(0, BARS_LEFT_MM, heightMm));
  }

  /** A level lateral bar at the axle's height takes no part in a small heave. */
  private static RideFigures sideViewFigures(FigureInputs given) {
    Link lower =
        foreAndAft(
            "lower",
            beside(given, LOWER_FRAME_FORWARD, LOWER_FRAME_UP),
            beside(given, LOWER_AXLE_FORWARD, LOWER_AXLE_UP));
    Link upper =
        foreAndAft(
            "upper",
            beside(given, UPPER_FRAME_FORWARD, UPPER_FRAME_UP),
            beside(given, UPPER_AXLE_FORWARD, UPPER_AXLE_UP));
    Link bar =
        link(
            "lateral",
            LinkKind.LATERAL,
            new Point3(0, BARS_LEFT_MM, RADIUS_MM),
            new Point3(0, -BARS_LEFT_MM, RADIUS_MM));
    return figures(List.of(lower, other(lower), upper, other(upper), bar));
  }

  private static void instantCentre(RideFigures figures, FigureAnswers answers) {
    Optional<Point3> centre = figures.instantCentreFromMotion();
    if (centre.isPresent()) {
      answers.put("forward", centre.get().xMm()).put("up", centre.get().zMm());
    } else {
      answers.put("forward", "at infinity: the bars are parallel").put("up", "at infinity");
    }
    answers
        .put("slope", figures.slopeFromMotion())
        .put("pinion", figures.rates().pitchNoseUpRadPerMmHeave());
  }

  private static void antiSquat(RideFigures figures, FigureInputs given, FigureAnswers answers) {
    double heightMm = given.get(GRAVITY_HEIGHT);
    double wheelbaseMm = given.get(WHEELBASE);
    answers.put("anti_squat", figures.antiSquatPercent(heightMm, wheelbaseMm) / 100);
    Optional<Double> front = given.find(FRONT_BRAKE);
    if (front.isPresent()) {
      answers.put("anti_lift", figures.antiLiftPercent(front.get(), heightMm, wheelbaseMm) / 100);
    }
  }

  private static void powerSquat(FigureInputs given, FigureAnswers answers) {
    PowerSquat squat =
        new PowerSquat(
            given.get(WEIGHT),
            given.get(ACCELERATION) * Gravity.M_PER_S2,
            given.get(GRAVITY_HEIGHT),
            given.get(WHEELBASE),
            given.get(CENTRE_UP) / given.get(CENTRE_FORWARD),
            given.get(REAR_RATE),
            given.get(FRONT_RATE));
    answers
        .put("rear_sinks", squat.rearSinksMm())
        .put("front_rises", squat.frontRisesMm())
        .put("pitch", squat.pitchRad())
        .put("anti_squat", squat.antiSquat())
        .put("no_pitch_slope", squat.slopeWithoutPitch());
  }

  private static void brakeLift(FigureInputs given, FigureAnswers answers) {
    double needed = given.get(GRAVITY_HEIGHT) / given.get(WHEELBASE);
    double held = (1 - given.get(FRONT_SHARE)) * given.get(CENTRE_UP) / given.get(CENTRE_FORWARD);
    double brakeN = Shop.weightN(given.get(WEIGHT)) * given.get(DECELERATION);
    answers
        .put("rear_rises", brakeN * (needed - held) / given.get(REAR_RATE))
        .put("anti_lift", held / needed);
  }

  private static void sideways(FigureInputs given, FigureAnswers answers) {
    double trackMm = given.get(TRACK);
    double g = given.get(SIDEWAYS);
    double springs =
        Shop.inchPoundsToNmm(given.get(ROLL_STIFFNESS)) * Math.toDegrees(given.get(ROLL)) / trackMm;
    double centre = g * Shop.weightN(given.get(AXLE_SPRUNG)) * given.get(ROLL_CENTRE) / trackMm;
    double unsprung =
        g * Shop.weightN(given.get(AXLE_UNSPRUNG)) * given.get(UNSPRUNG_HEIGHT) / trackMm;
    answers
        .put("by_springs", springs)
        .put("by_roll_centre", centre)
        .put("by_unsprung", unsprung)
        .put("transfer", springs + centre + unsprung);
  }

  private static void rollAxis(FigureInputs given, FigureAnswers answers) {
    Link upper =
        foreAndAft(
            "upper",
            point(given, UPPER_FRAME_FORWARD, UPPER_FRAME_LEFT, UPPER_FRAME_UP),
            point(given, UPPER_AXLE_FORWARD, UPPER_AXLE_LEFT, UPPER_AXLE_UP));
    Link lower =
        foreAndAft(
            "lower",
            point(given, LOWER_FRAME_FORWARD, LOWER_FRAME_LEFT, LOWER_FRAME_UP),
            point(given, LOWER_AXLE_FORWARD, LOWER_AXLE_LEFT, LOWER_AXLE_UP));
    RideFigures figures = figures(List.of(lower, other(lower), upper, other(upper)));
    answers
        .put("roll_centre", figures.rollCentreHeightMm())
        .put("slope", figures.rollAxisSlope())
        .put("axis_angle", figures.rollAxisAngleRad())
        .put("understeer", figures.rollUndersteerRadPerRad());
  }

  private static Point3 point(
      FigureInputs given, Field<Double> forward, Field<Double> left, Field<Double> up) {
    return new Point3(given.get(forward), given.get(left), given.get(up));
  }

  /** A point in side view; how far it lies to the left has no part in it. */
  private static Point3 beside(FigureInputs given, Field<Double> forward, Field<Double> up) {
    return new Point3(given.get(forward), BARS_LEFT_MM, given.get(up));
  }

  /** A bar that runs fore and aft. */
  private static Link foreAndAft(String name, Point3 frame, Point3 axle) {
    return link(name, LinkKind.LONGITUDINAL, frame, axle);
  }

  private static Link link(String name, LinkKind kind, Point3 frame, Point3 axle) {
    return new Link(name, kind, frame, axle, STIFFNESS_N_PER_MM);
  }

  private static Link other(Link link) {
    Link mirrored = link.mirrored();
    return link(link.name() + " right", link.kind(), mirrored.frame(), mirrored.axle());
  }

  private static RideFigures figures(List<Link> links) {
    try {
      return RideFigures.of(new PoseSolver(new Linkage(TRACK_MM, RADIUS_MM, links)));
    } catch (IllegalStateException atTheEnd) {
      throw new IllegalArgumentException(
          "These bars have no motion at ride height: " + atTheEnd.getMessage(), atTheEnd);
    }
  }
}
