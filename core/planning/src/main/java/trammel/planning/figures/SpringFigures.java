package trammel.planning.figures;

import java.util.List;
import trammel.engine.springs.AirSpringPoint;
import trammel.engine.springs.AirSpringSize;
import trammel.engine.springs.AntiRollBarSize;
import trammel.engine.springs.BumpStop;
import trammel.engine.springs.CoilSpring;
import trammel.engine.springs.Isolation;
import trammel.engine.springs.RideFrequency;
import trammel.engine.springs.RollStiffness;
import trammel.engine.springs.SpringRates;
import trammel.engine.springs.TrappedAir;
import trammel.reading.fields.Field;
import trammel.reading.quantity.UnitSystem;

/** Springs and the ride. */
final class SpringFigures implements FigureGroup {
  /** A height to hang a table on where the height itself plays no part. */
  private static final double HEIGHT_MM = 10 * AirSpringSize.RATE_HALF_STEP_MM;

  /** The step of the rate, and a breath more, so that rounding cannot end the table before it. */
  private static final double TABLE_STEP_MM = AirSpringSize.RATE_HALF_STEP_MM * (1 + 1e-9);

  private static final Field<Double> WIRE = Shop.inches("wire", "wire diameter", 0.005, 3.9);
  private static final Field<Double> MEAN =
      Shop.inches("mean_diameter", "coil diameter to the middle of the wire", 0.01, 78);
  private static final Field<Double> COILS =
      Field.number("active_coils", "coils that twist", 0.5, 100);
  private static final Field<Double> SHEAR_MODULUS =
      Shop.psi("shear_modulus", "shear modulus of the wire", 1_500_000, 29_000_000)
          .withDefault(Shop.fromPsi(11.5e6));
  private static final Field<Double> RATE =
      Shop.poundsPerInch("rate", "rate of the spring along its own line", 0.01, 50_000);
  private static final Field<Double> VERTICAL_RATE =
      Shop.poundsPerInch(
          "rate",
          "vertical rate of one spring; one that leans has less than along its line, see leaning-spring",
          0.01,
          50_000);
  private static final Field<Double> SECOND_RATE =
      Shop.poundsPerInch("second_rate", "rate of the other one", 0.01, 50_000);
  private static final Field<Double> MOTION_RATIO =
      Field.number("motion_ratio", "spring travel over wheel travel", 0.001, 10);
  private static final Field<Double> LEAN = Shop.degrees("lean", "lean from upright", 0, 80);
  private static final Field<Double> WHEEL_RATE =
      Shop.poundsPerInch("wheel_rate", "rate at the wheel", 0.01, 50_000);
  private static final Field<Double> SPRUNG =
      Shop.pounds("weight", "sprung weight on that wheel", 0.1, 100_000);
  private static final Field<Double> SAG =
      Shop.inches("deflection", "static deflection: load over rate", 0.001, 100);
  private static final Field<Double> BASE =
      Shop.inches("spring_base", "distance between the springs across the vehicle", 0.1, 400);
  private static final Field<Double> BODY_WEIGHT =
      Shop.pounds("weight", "sprung weight", 1, 100_000);
  private static final Field<Double> ARM =
      Shop.inches("height", "height of the centre of gravity above the roll axis", 0, 150);
  private static final Field<Double> FRONT_RATE =
      Shop.poundsPerInch("front_rate", "vertical rate of one front spring", 0.01, 50_000);
  private static final Field<Double> FRONT_BASE =
      Shop.inches("front_base", "front spring base", 0.1, 400);
  private static final Field<Double> REAR_RATE =
      Shop.poundsPerInch("rear_rate", "vertical rate of one rear spring", 0.01, 50_000);
  private static final Field<Double> REAR_BASE =
      Shop.inches("rear_base", "rear spring base", 0.1, 400);
  private static final Field<Double> DROPPED =
      Shop.pounds("weight", "weight that falls", 0.001, 100_000);
  private static final Field<Double> DROP_RATE =
      Shop.poundsPerInch("rate", "rate of the spring", 0.001, 50_000);
  private static final Field<Double> FALL =
      Shop.inches("fall", "how far it falls before it meets the spring", 0, 400);
  private static final Field<Double> STOP_WEIGHT =
      Shop.pounds("weight", "sprung weight on that wheel", 1, 100_000);
  private static final Field<Double> ABOVE_RIDE =
      Shop.inches("above_ride", "how far above ride the stop is met", 0, 20);
  private static final Field<Double> STOP_RATE =
      Shop.poundsPerInch("stop_rate", "rate of the stop when it is just met", 0, 10_000);
  private static final Field<Double> STOP_CUBIC =
      Field.number("stop_cubic_lb_in3", "how it stiffens, lb an inch cubed", 0, 1e6);
  private static final Field<Double> MET_AT =
      Field.number("met_at_in_s", "upward speed of the wheel, inches a second", 0.1, 1000);
  private static final Field<Double> BAR = Shop.inches("diameter", "diameter of the bar", 0.1, 4);
  private static final Field<Double> BORE =
      Shop.inches("bore", "inside diameter; 0 for a solid bar", 0, 3.9).withDefault(0.0);
  private static final Field<Double> STRAIGHT =
      Shop.inches("straight", "what is twisted, from arm to arm", 1, 100);
  private static final Field<Double> LEVER =
      Shop.inches("lever", "from the bar's axis to the arm's end, square to the axis", 0.5, 60);
  private static final Field<Double> ARM_LENGTH =
      Shop.inches("arm", "length of an arm along itself; left out, its lever", 0.5, 60).optional();
  private static final Field<Double> ENDS_APART =
      Shop.inches("apart", "between the two arms' ends, across the vehicle", 1, 150);
  private static final Field<Double> PRESSURE = Shop.psi("pressure", "gauge pressure", 0, 1450);
  private static final Field<Double> AREA_IN2 =
      Field.number("area_in2", "effective area, square inches", 0.01, 10_000);
  private static final Field<Double> VOLUME_IN3 =
      Field.number("volume_in3", "air volume with its reservoir, cubic inches", 0.01, 1_000_000);
  private static final Field<Double> EXPONENT =
      Field.number("exponent", "1.0 for slow, 1.38 for fast movement", 1, 1.4)
          .withDefault(TrappedAir.FAST);
  private static final Field<Double> AREA_BELOW =
      Field.number("area_below_in2", "effective area 1/2 in lower, square inches", 0.01, 10_000);
  private static final Field<Double> AREA_ABOVE =
      Field.number("area_above_in2", "effective area 1/2 in higher, square inches", 0.01, 10_000);
  private static final Field<Double> VOLUME_BELOW =
      Field.number("volume_below_in3", "volume 1/2 in lower, cubic inches", 0.01, 50_000);
  private static final Field<Double> VOLUME_AT =
      Field.number("volume_in3", "volume at the height, cubic inches", 0.01, 50_000);
  private static final Field<Double> VOLUME_ABOVE =
      Field.number("volume_above_in3", "volume 1/2 in higher, cubic inches", 0.01, 50_000);
  private static final Field<Double> VOLUME_AFTER =
      Field.number("volume_after_in3", "volume after, cubic inches", 0.01, 1_000_000);
  private static final Field<Double> NATURAL =
      Field.number("natural_cpm", "natural frequency, cycles a minute", 0.1, 1_000_000);
  private static final Field<Double> FORCING =
      Field.number("forcing_cpm", "frequency of the vibration, cycles a minute", 0.1, 1_000_000);

  @Override
  public String title() {
    return "Springs and ride";
  }

  @Override
  public List<Figure> figures() {
    return List.of(
        Figure.draft(this, "coil-rate", "Rate of a coil spring")
            .takes(WIRE, MEAN, COILS, SHEAR_MODULUS)
            .gives("rate", "rate", FigureUnit.RATE)
            .gives("index", "spring index", FigureUnit.RATIO)
            .by(
                "k = G d4/(8 D3 Na)",
                "Wentzell, Machine Design, ch. 8; Shigley ch. 10, from memory",
                "wire=0.105 mean_diameter=0.620 active_coils=10.792"),
        Figure.draft(this, "coil-count", "Coils that give a wanted rate")
            .takes(WIRE, MEAN, RATE, SHEAR_MODULUS)
            .gives("active_coils", "active coils", FigureUnit.RATIO)
            .by(
                "Na = G d4/(8 D3 k)",
                "Wentzell, Machine Design, ch. 8",
                "wire=0.105 mean_diameter=0.620 rate=70"),
        Figure.draft(this, "wheel-rate", "Wheel rate from the motion ratio")
            .takes(RATE, MOTION_RATIO)
            .gives("wheel_rate", "rate at the wheel", FigureUnit.RATE)
            .by(
                "k x ratio squared",
                "Barton and Fieldhouse, Automotive Chassis Engineering, Springer 2018, eq. 3.33",
                "rate=300 motion_ratio=0.85"),
        Figure.draft(this, "leaning-spring", "What a leaning spring loses")
            .takes(RATE, LEAN)
            .gives("rate", "vertical rate", FigureUnit.RATE)
            .gives("force_factor", "factor on its force", FigureUnit.RATIO)
            .by(
                "k cos2 of the lean; its force only by cos",
                "geometry; trade tables that take cos once give the force",
                "rate=250 lean=20"),
        Figure.draft(this, "springs-in-series", "Two springs in series")
            .takes(RATE, SECOND_RATE)
            .gives("rate", "rate together", FigureUnit.RATE)
            .by("1/(1/k1 + 1/k2)", "textbook", "rate=150 second_rate=1200"),
        Figure.draft(this, "ride-frequency", "Ride frequency from wheel rate and weight")
            .takes(WHEEL_RATE, SPRUNG)
            .gives("frequency", "ride frequency", FigureUnit.FREQUENCY)
            .gives("cycles", "the same", FigureUnit.CYCLES)
            .by(
                "root of (k/m) / 2 pi; 187.64/root of the deflection in inches, cycles a minute",
                "Gillespie 1992 ch. 5, from memory",
                "wheel_rate=150 weight=650"),
        Figure.draft(this, "sag-frequency", "Ride frequency from the static deflection")
            .takes(SAG)
            .gives("frequency", "ride frequency", FigureUnit.FREQUENCY)
            .gives("cycles", "the same", FigureUnit.CYCLES)
            .by(
                "root of (g/deflection) / 2 pi; 188/root of inches in print",
                "air-spring maker's engineering manual, p. 22",
                "deflection=10"),
        Figure.draft(this, "roll-stiffness", "Roll stiffness of a rigid axle on two springs")
            .takes(VERTICAL_RATE, BASE)
            .gives("stiffness", "roll stiffness", FigureUnit.ROLL_STIFFNESS)
            .by("k s2/2", "Gillespie 1992 ch. 6, from memory", "rate=200 spring_base=40"),
        Figure.draft(this, "body-roll", "Roll of the body in a bend")
            .takes(BODY_WEIGHT, ARM, FRONT_RATE, FRONT_BASE, REAR_RATE, REAR_BASE)
            .gives("roll_per_g", "roll at 1 g sideways", FigureUnit.ANGLE)
            .by(
                "W h/(sum of k s2/2 - W h)",
                "Gillespie 1992 ch. 6, from memory",
                "weight=3000 height=20 front_rate=150 front_base=60 rear_rate=100 rear_base=60"),
        Figure.draft(this, "anti-roll-bar", "Rate of an anti-roll bar bent from one bar")
            .takes(BAR, BORE, STRAIGHT, LEVER, ARM_LENGTH, ENDS_APART, SHEAR_MODULUS)
            .gives("rate", "force at each end for a difference between them", FigureUnit.RATE)
            .gives("torsion", "the same with arms that do not bend", FigureUnit.RATE)
            .gives("stiffness", "roll stiffness", FigureUnit.ROLL_STIFFNESS)
            .by(
                "1/K = A2 B/(G J) + 2 C3/(3 E I); K b2; bushings and links left out",
                "Puhn, How to Make Your Car Handle, from memory; derived again",
                "diameter=1 straight=34 lever=9 arm=9.5 apart=40"),
        Figure.draft(this, "air-spring", "Load and rate of an air spring of constant area")
            .takes(PRESSURE, AREA_IN2, VOLUME_IN3, EXPONENT)
            .gives("load", "load", FigureUnit.FORCE)
            .gives("rate", "rate", FigureUnit.RATE)
            .by(
                "load = p A; k = n (p + 14.7) A2/V",
                "textbook, from memory",
                "pressure=70 area_in2=20 volume_in3=140"),
        Figure.draft(this, "air-spring-rate", "Rate of an air spring from its table")
            .takes(PRESSURE, AREA_BELOW, AREA_ABOVE, VOLUME_BELOW, VOLUME_AT, VOLUME_ABOVE)
            .gives("rate", "rate", FigureUnit.RATE)
            .by(
                "(p + 14.7)[Ac (V1/Vc)^1.38 - Ae (V1/Ve)^1.38] - 14.7 (Ac - Ae), 1/2 in each way",
                "air-spring maker's engineering manual, pp. 22-23",
                "pressure=80 area_below_in2=58.4 area_above_in2=47.6 volume_below_in3=752"
                    + " volume_in3=782 volume_above_in3=809"),
        Figure.draft(this, "trapped-air", "Pressure of trapped air after its volume changed")
            .takes(PRESSURE, VOLUME_IN3, VOLUME_AFTER, EXPONENT)
            .gives("pressure", "gauge pressure after", FigureUnit.PRESSURE)
            .by(
                "(p + 14.7)(V1/V2)^n - 14.7",
                "gas law, textbook",
                "pressure=60 volume_in3=100 volume_after_in3=80"),
        Figure.draft(this, "drop-on-spring", "A weight that falls on a spring")
            .takes(DROPPED, DROP_RATE, FALL)
            .gives("squeeze", "the spring is squeezed by", FigureUnit.LENGTH)
            .gives("factor", "times its squeeze under the resting weight", FigureUnit.RATIO)
            .gives("force", "greatest force", FigureUnit.FORCE)
            .by(
                "s (1 + root of (1 + 2 h/s)), s = W/k",
                "Gere, Mechanics of Materials, problem 2.8-5",
                "weight=1 rate=0.5 fall=12"),
        Figure.draft(this, "bump-stop", "How hard a wheel meets a bump stop")
            .takes(STOP_WEIGHT, WHEEL_RATE, ABOVE_RIDE, STOP_RATE, STOP_CUBIC, MET_AT)
            .gives("energy", "energy of what comes up, lb-in or J", FigureUnit.RATIO)
            .gives("squeeze", "the stop is squeezed by", FigureUnit.LENGTH)
            .gives("force", "force of the stop", FigureUnit.FORCE)
            .gives("load_factor", "load on the wheel, times that at rest", FigureUnit.RATIO)
            .by(
                "m v2/2 = k (d x + x2/2) + a x2/2 + b x4/4",
                "conservation of energy",
                "weight=700 wheel_rate=160 above_ride=3 stop_rate=400 stop_cubic_lb_in3=250"
                    + " met_at_in_s=40"),
        Figure.draft(this, "isolation", "Vibration that a spring lets through")
            .takes(NATURAL, FORCING)
            .gives("transmission", "share that gets through", FigureUnit.PERCENT)
            .by(
                "1/((forcing/natural)2 - 1)",
                "air-spring maker's engineering manual, p. 23",
                "natural_cpm=106 forcing_cpm=850"));
  }

  @Override
  public void work(String name, FigureInputs given, FigureAnswers answers) {
    switch (name) {
      case "coil-rate" -> {
        CoilSpring coil =
            new CoilSpring(
                given.get(WIRE), given.get(MEAN), given.get(COILS), given.get(SHEAR_MODULUS));
        answers.put("rate", coil.rateNPerMm()).put("index", coil.index());
      }
      case "coil-count" ->
          answers.put(
              "active_coils",
              CoilSpring.activeCoilsForRate(
                  given.get(WIRE), given.get(MEAN), given.get(SHEAR_MODULUS), given.get(RATE)));
      case "wheel-rate" ->
          answers.put(
              "wheel_rate", SpringRates.wheelRateNPerMm(given.get(RATE), given.get(MOTION_RATIO)));
      case "leaning-spring" ->
          answers
              .put("rate", SpringRates.leaningRateNPerMm(given.get(RATE), given.get(LEAN)))
              .put("force_factor", SpringRates.verticalForceFactor(given.get(LEAN)));
      case "springs-in-series" ->
          answers.put("rate", SpringRates.inSeriesNPerMm(given.get(RATE), given.get(SECOND_RATE)));
      case "ride-frequency" ->
          frequency(RideFrequency.hertz(given.get(WHEEL_RATE), given.get(SPRUNG)), answers);
      case "sag-frequency" -> frequency(RideFrequency.hertzFromDeflection(given.get(SAG)), answers);
      case "roll-stiffness" ->
          answers.put(
              "stiffness",
              RollStiffness.rigidAxleNmmPerRad(given.get(VERTICAL_RATE), given.get(BASE)));
      case "anti-roll-bar" -> antiRollBar(given, answers);
      case "body-roll" -> bodyRoll(given, answers);
      default -> air(name, given, answers);
    }
  }

  private static void air(String name, FigureInputs given, FigureAnswers answers) {
    switch (name) {
      case "air-spring" -> {
        double areaMm2 = Shop.squareInches(given.get(AREA_IN2));
        double volumeMm3 = Shop.cubicInches(given.get(VOLUME_IN3));
        double pressureMPa = given.get(PRESSURE);
        answers
            .put("load", constantArea(areaMm2, volumeMm3).loadN(HEIGHT_MM, pressureMPa))
            .put(
                "rate",
                TrappedAir.constantAreaRateNPerMm(
                    pressureMPa, areaMm2, volumeMm3, given.get(EXPONENT)));
      }
      case "air-spring-rate" -> airSpringRate(given, answers);
      case "trapped-air" ->
          answers.put(
              "pressure",
              TrappedAir.gaugeAfterMPa(
                  given.get(PRESSURE),
                  Shop.cubicInches(given.get(VOLUME_IN3)),
                  Shop.cubicInches(given.get(VOLUME_AFTER)),
                  given.get(EXPONENT)));
      case "drop-on-spring" -> {
        double weightN = Shop.weightN(given.get(DROPPED));
        double rate = given.get(DROP_RATE);
        double squeezeMm = BumpStop.underFallMm(weightN, rate, given.get(FALL));
        answers
            .put("squeeze", squeezeMm)
            .put("factor", squeezeMm * rate / weightN)
            .put("force", squeezeMm * rate);
      }
      case "bump-stop" -> bumpStop(given, answers);
      case "isolation" ->
          answers.put(
              "transmission",
              Isolation.transmission(given.get(NATURAL) / 60, given.get(FORCING) / 60));
      default -> throw FigureGroup.unknown(name);
    }
  }

  private static AirSpringSize constantArea(double areaMm2, double volumeMm3) {
    return new AirSpringSize(
        "constant area",
        List.of(
            new AirSpringPoint(HEIGHT_MM, areaMm2, volumeMm3),
            new AirSpringPoint(2 * HEIGHT_MM, areaMm2, 1.01 * volumeMm3)));
  }

  private static void frequency(double hertz, FigureAnswers answers) {
    answers.put("frequency", hertz).put("cycles", hertz);
  }

  private static void bumpStop(FigureInputs given, FigureAnswers answers) {
    BumpStop stop =
        new BumpStop(
            given.get(STOP_RATE),
            Shop.inchPoundsToNmm(given.get(STOP_CUBIC)) / Math.pow(Shop.toMm(1), 4),
            Shop.toMm(given.get(MET_AT)));
    double massKg = given.get(STOP_WEIGHT);
    double rate = given.get(WHEEL_RATE);
    double aboveMm = given.get(ABOVE_RIDE);
    double squeezeMm = stop.squeezedMm(massKg, rate, aboveMm);
    double restingN = Shop.weightN(massKg);
    double unitNmm = given.units() == UnitSystem.US ? Shop.inchPoundsToNmm(1) : 1000;
    answers
        .put("energy", stop.movingNmm(massKg) / unitNmm)
        .put("squeeze", squeezeMm)
        .put("force", stop.forceN(squeezeMm))
        .put("load_factor", 1 + (rate * (aboveMm + squeezeMm) + stop.forceN(squeezeMm)) / restingN);
  }

  private static void antiRollBar(FigureInputs given, FigureAnswers answers) {
    double leverMm = given.get(LEVER);
    double armMm = given.find(ARM_LENGTH).orElse(leverMm);
    AntiRollBarSize bar =
        AntiRollBarSize.bent(
            given.get(BAR),
            given.get(BORE),
            given.get(STRAIGHT),
            leverMm,
            armMm,
            given.get(SHEAR_MODULUS));
    answers
        .put("rate", bar.rateNPerMm())
        .put("torsion", bar.torsionOnlyNPerMm())
        .put("stiffness", bar.rollNmmPerRad(given.get(ENDS_APART)));
  }

  private static void bodyRoll(FigureInputs given, FigureAnswers answers) {
    double stiffness =
        RollStiffness.rigidAxleNmmPerRad(given.get(FRONT_RATE), given.get(FRONT_BASE))
            + RollStiffness.rigidAxleNmmPerRad(given.get(REAR_RATE), given.get(REAR_BASE));
    answers.put(
        "roll_per_g",
        RollStiffness.rollRadPerG(Shop.weightN(given.get(BODY_WEIGHT)), given.get(ARM), stiffness));
  }

  private static void airSpringRate(FigureInputs given, FigureAnswers answers) {
    double below = Shop.squareInches(given.get(AREA_BELOW));
    double above = Shop.squareInches(given.get(AREA_ABOVE));
    // The area at the height itself plays no part in the rate; only its neighbours do.
    AirSpringSize size =
        new AirSpringSize(
            "the table",
            List.of(
                new AirSpringPoint(
                    HEIGHT_MM - TABLE_STEP_MM, below, Shop.cubicInches(given.get(VOLUME_BELOW))),
                new AirSpringPoint(
                    HEIGHT_MM, (below + above) / 2, Shop.cubicInches(given.get(VOLUME_AT))),
                new AirSpringPoint(
                    HEIGHT_MM + TABLE_STEP_MM, above, Shop.cubicInches(given.get(VOLUME_ABOVE)))));
    answers.put("rate", size.rateNPerMm(HEIGHT_MM, given.get(PRESSURE)));
  }
}
