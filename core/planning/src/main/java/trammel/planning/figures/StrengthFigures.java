package trammel.planning.figures;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import trammel.engine.strength.Column;
import trammel.engine.strength.Electrode;
import trammel.engine.strength.FatigueCurve;
import trammel.engine.strength.FilletSeam;
import trammel.engine.strength.FilletSize;
import trammel.engine.strength.RodEnd;
import trammel.engine.strength.RoundTubeSection;
import trammel.reading.fields.Field;
import trammel.trade.welding.FilletLegs;

/** Bars that press, welds that hold, joints that tilt: screening figures, no certification. */
final class StrengthFigures implements FigureGroup {
  private static final Field<Double> OUTSIDE =
      Shop.inches("outside", "outside diameter", 0.125, 19);
  private static final Field<Double> WALL =
      Shop.inches("wall", "wall thickness; leave it out for solid stock", 0.01, 2).optional();
  private static final Field<Double> LENGTH =
      Shop.inches("length", "length from pivot to pivot", 0.5, 700);
  private static final Field<Double> YIELD = Shop.psi("yield", "yield strength", 8_000, 400_000);
  private static final Field<Double> END_FACTOR =
      Field.number("end_factor", "effective length over length: 1 for two pivots", 0.3, 2.5)
          .withDefault(1.0);
  private static final Field<Double> MODULUS =
      Shop.psi("modulus", "Young's modulus", 1_500_000, 70_000_000).withDefault(Shop.fromPsi(29e6));
  private static final Field<Double> SAFETY =
      Field.number("safety_factor", "factor the load is divided by", 1, 20).withDefault(2.0);
  private static final Field<Double> BESIDE =
      Shop.inches("beside", "how far beside its axis the load runs, at both ends", 0, 390);
  private static final Field<Double> BOW =
      Shop.inches("bow", "its axis, at most, off the line between the pivots", 0, 390);
  private static final Field<Double> AREA_IN2 =
      Field.number("area_in2", "area of the section, square inches", 0.001, 1000);
  private static final Field<Double> RADIUS =
      Shop.inches("radius", "least radius of gyration", 0.01, 39);
  private static final Field<Double> LEG = Shop.inches("leg", "leg of the fillet", 0.02, 1.9);
  private static final Field<Double> ASKED_LEG =
      Shop.inches("leg", "leg asked about", 0.02, 1.9).withDefault(3.0 / 16 * 25.4);
  private static final Field<Double> WELD_LENGTH =
      Shop.inches("length", "length of the weld", 0.05, 3900);
  private static final Field<String> FILLER =
      Field.choice("filler", "strength of the filler", List.of("e60", "e70", "e80"))
          .withDefault("e70");
  private static final Field<Double> LOAD_ANGLE =
      Shop.degrees("angle", "angle between the load and the weld's line", 0, 90).withDefault(0.0);
  private static final Field<Double> THINNER =
      Shop.inches("thickness", "thickness of the thinner part", 0.01, 7);
  private static final Field<Double> LOAD = Shop.poundsForce("load", "load", 0, 2_000_000);
  private static final Field<Double> BASE_TENSILE =
      Shop.psi("tensile", "tensile strength of the plate", 8_000, 500_000);
  private static final Field<Double> WELD_STRENGTH =
      Shop.poundsPerInch("strength", "strength of the weld along its length", 1, 1_000_000);
  private static final Field<Double> END_WELD =
      Shop.inches("end_weld", "length of weld across the end", 0, 400).withDefault(0.0);
  private static final Field<Double> BALL_WIDTH =
      Shop.inches("ball_width", "width over the faces of the ball", 0.05, 19);
  private static final Field<Double> BALL =
      Shop.inches("ball_diameter", "diameter of the ball", 0.05, 19);
  private static final Field<Double> HOUSING =
      Shop.inches("housing_width", "width of the housing", 0.02, 19);
  private static final Field<Double> HEAD =
      Shop.inches("head_diameter", "outside diameter of the head", 0.05, 38).optional();
  private static final Field<Double> CHAMFER =
      Shop.inches("chamfer", "chamfer of the head", 0, 2).withDefault(0.0);
  private static final Field<Double> CATEGORY =
      Field.number("category_mpa", "detail category, MPa, as the standard names it", 10, 200);
  private static final Field<Double> RANGE =
      Shop.psi("range", "range of stress, greatest less least", 100, 200_000);
  private static final Field<Double> PARTIAL =
      Field.number("partial_factor", "factor the category is divided by", 1, 2).withDefault(1.0);
  private static final Field<Double> CAPACITY =
      Shop.poundsForce("capacity", "radial static capacity of the rod end", 1, 1_000_000);

  @Override
  public String title() {
    return "Strength: bars, welds, joints (screening figures, not certification)";
  }

  @Override
  public List<Figure> figures() {
    return List.of(
        columnResults(
                Figure.draft(
                        this,
                        "column",
                        "Load at which a bar of round tube or solid round stock buckles")
                    .takes(OUTSIDE, WALL, LENGTH, YIELD, END_FACTOR, SAFETY, MODULUS))
            .by(
                "Johnson A Sy [1 - SR2/(2 Cc2)] up to Cc = root of (2 pi2 E/Sy), Euler pi2 E I/(K"
                    + " L)2 beyond",
                "Shigley, Mechanical Engineering Design, ch. 4, from memory; Wentzell, Machine"
                    + " Design, ch. 3",
                "outside=1.75 wall=0.120 length=24 yield=60000"),
        columnResults(
                Figure.draft(this, "section-column", "Load at which a bar of any section buckles")
                    .takes(AREA_IN2, RADIUS, LENGTH, YIELD, END_FACTOR, SAFETY, MODULUS))
            .by(
                "as column, with area and least radius of gyration from a table",
                "Wentzell, Machine Design, ch. 3",
                "area_in2=2.26 radius=0.5814 length=60 yield=36000 end_factor=0.65"),
        Figure.draft(this, "off-centre-bar", "Bar that is pushed beside its axis")
            .takes(OUTSIDE, WALL, LENGTH, YIELD, LOAD, BESIDE, END_FACTOR, MODULUS)
            .gives("stress", "stress at the outer face", FigureUnit.STRESS)
            .gives("yield_load", "load at which it yields or buckles", FigureUnit.FORCE)
            .by(
                "P/A [1 + (e c/r2) sec((K L/2r) root of (P/(E A)))]",
                "secant formula: Shigley, Mechanical Engineering Design, ch. 4, from memory",
                "outside=1.50 wall=0.120 length=28 yield=60000 load=6000 beside=0.1"),
        Figure.draft(this, "bowed-bar", "Bar that is bent for clearance, pushed or pulled")
            .takes(OUTSIDE, WALL, LENGTH, YIELD, LOAD, BOW, MODULUS)
            .gives("stress", "stress at the outer face when it is pushed", FigureUnit.STRESS)
            .gives("yield_load", "push at which it yields or buckles", FigureUnit.FORCE)
            .gives("pull_load", "pull at which it yields", FigureUnit.FORCE)
            .by(
                "P/A [1 + (e c/r2)/(1 - P/Pe)], Pe = pi2 E I/L2; pulled A Sy/(1 + e c/r2)",
                "bar with a bow from the start (Perry): Timoshenko, Theory of Elastic Stability,"
                    + " from memory",
                "outside=1.50 wall=0.120 length=28 yield=60000 load=3000 bow=1"),
        Figure.draft(this, "fillet-weld", "Load a fillet weld may carry")
            .takes(LEG, WELD_LENGTH, FILLER, LOAD_ANGLE)
            .gives("throat", "throat", FigureUnit.LENGTH)
            .gives(
                "counted_leg",
                "leg that counts; a short weld counts as a smaller one",
                FigureUnit.LENGTH)
            .gives("per_length", "allowed along the weld", FigureUnit.RATE)
            .gives("allowed", "allowed load", FigureUnit.FORCE)
            .gives("design", "design strength by load factors", FigureUnit.FORCE)
            .gives(
                "direction_factor",
                "factor for the load's direction, use 1 unless proved",
                FigureUnit.RATIO)
            .by(
                "0.30 x filler strength x 0.707 leg x length; factor 1 + 0.5 sin^1.5 of the angle",
                "AWS D1.1; AISC 360 Table J2.5 and section J2.2b",
                "leg=1/4 length=4"),
        Figure.draft(this, "fillet-size", "Least and largest leg of a fillet weld")
            .takes(THINNER, ASKED_LEG)
            .gives("least_leg", "least leg for the thickness", FigureUnit.LENGTH)
            .gives("largest_leg", "largest leg along an edge of it", FigureUnit.LENGTH)
            .gives("fits", "whether a leg suits both", FigureUnit.WORD)
            .gives("least_length", "least length of the leg asked about", FigureUnit.LENGTH)
            .gives("least_step", "least step of an intermittent weld", FigureUnit.LENGTH)
            .by(
                "table by the thinner part; along an edge t, less 1/16 in from 1/4 in; 4 legs",
                "AISC 360 Table J2.4 and section J2.2b",
                "thickness=3/16"),
        Figure.draft(this, "weld-stress", "Stress on the throat of a fillet weld")
            .takes(LEG, WELD_LENGTH, LOAD, FILLER)
            .gives("stress", "stress on the throat", FigureUnit.STRESS)
            .gives("allowed", "allowed on the throat", FigureUnit.STRESS)
            .by(
                "load / (0.707 leg x length); allowed 0.30 of the filler",
                "Jindal, Machine Design, ch. 12; AISC 360 Table J2.5",
                "leg=1/4 length=4 load=8000"),
        Figure.draft(
                this, "weld-base-metal", "Thinnest plate that lets a one-sided fillet work in full")
            .takes(LEG, FILLER, BASE_TENSILE)
            .gives("thickness", "thickness", FigureUnit.LENGTH)
            .by(
                "0.707 leg x filler strength / plate strength; 3.09 D/Fu for E70, D in sixteenths",
                "AISC Manual part 9, from memory",
                "leg=3/16 tensile=58000"),
        Figure.draft(this, "side-weld", "Length of two side welds for a load")
            .takes(LOAD, WELD_STRENGTH, END_WELD)
            .gives("each_side", "length on each side", FigureUnit.LENGTH)
            .by(
                "(load / strength - end weld) / 2",
                "Levinson, Machine Design, ch. 15",
                "load=60000 strength=3750 end_weld=6"),
        Figure.draft(this, "misalignment", "How far a spherical joint tilts")
            .takes(BALL_WIDTH, BALL, HOUSING, HEAD, CHAMFER)
            .gives("clevis_tilt", "tilt in a clevis, each way", FigureUnit.ANGLE)
            .gives("ball_tilt", "tilt of the ball in its housing, each way", FigureUnit.ANGLE)
            .by(
                "asin(W/E) - asin(H/E); in a clevis asin(W/A) - asin(H/A), A = root of ((D - 2C)2 +"
                    + " H2)",
                "rod-end maker's catalog, misalignment formulas",
                "ball_width=0.75 ball_diameter=1.125 housing_width=0.5625"),
        Figure.draft(this, "fatigue-cycles", "How often a welded detail stands a range of stress")
            .takes(CATEGORY, RANGE, PARTIAL)
            .gives("knee", "range at the knee of the curve", FigureUnit.STRESS)
            .gives("cut_off", "range that does nothing", FigureUnit.STRESS)
            .gives("cycles", "times", FigureUnit.WORD)
            .by(
                "2e6 (C/S)3 to 5 million, 5e6 (knee/S)5 to 100 million, nothing below; for"
                    + " comparing details, never a promise of life",
                "EN 1993-1-9; categories of details stand in its tables",
                "category_mpa=71 range=14504"),
        Figure.draft(this, "rod-end-load", "Working load of a rod end")
            .takes(CAPACITY)
            .gives("working_load", "working load", FigureUnit.FORCE)
            .by(
                "a quarter of the radial static capacity",
                "rod-end maker's terms: keep the working load at or under 1/4",
                "capacity=12000"));
  }

  private static Figure.Draft columnResults(Figure.Draft draft) {
    return draft
        .gives("slenderness", "slenderness K L/r", FigureUnit.RATIO)
        .gives("transition", "slenderness at which the formulas meet", FigureUnit.RATIO)
        .gives("formula", "formula that decides", FigureUnit.WORD)
        .gives("euler_load", "Euler's load, whatever the slenderness", FigureUnit.FORCE)
        .gives("critical_load", "load at which it gives way", FigureUnit.FORCE)
        .gives("safe_load", "that load over the safety factor", FigureUnit.FORCE);
  }

  @Override
  public void work(String name, FigureInputs given, FigureAnswers answers) {
    switch (name) {
      case "column" -> column(roundColumn(given, given.get(END_FACTOR)), given, answers);
      case "section-column" -> column(sectionColumn(given), given, answers);
      case "off-centre-bar" -> {
        Column bar = roundColumn(given, given.get(END_FACTOR));
        answers
            .put("stress", bar.secantStressMPa(given.get(LOAD), given.get(BESIDE)))
            .put("yield_load", bar.secantYieldLoadN(given.get(BESIDE)));
      }
      case "bowed-bar" -> {
        Column bar = roundColumn(given, 1);
        answers
            .put("stress", bar.bentBarStressMPa(given.get(LOAD), given.get(BOW)))
            .put("yield_load", bar.bentBarYieldLoadN(given.get(BOW)))
            .put("pull_load", bar.bentBarTensionYieldN(given.get(BOW)));
      }
      case "fillet-weld" -> filletWeld(given, answers);
      case "fillet-size" ->
          answers
              .put("least_leg", FilletLegs.leastByTableMm(given.get(THINNER)))
              .put("largest_leg", FilletLegs.largestAlongEdgeMm(given.get(THINNER)))
              .put("fits", legs(given.get(THINNER)))
              .put("least_length", FilletLegs.leastLengthMm(given.get(ASKED_LEG)))
              .put("least_step", FilletLegs.shortestStepMm(given.get(ASKED_LEG)));
      case "weld-stress" -> {
        Electrode filler = filler(given);
        FilletSeam weld = new FilletSeam(given.get(LEG), given.get(WELD_LENGTH), filler);
        answers
            .put("stress", weld.throatStressMPa(given.get(LOAD)))
            .put("allowed", filler.allowableThroatMPa());
      }
      case "weld-base-metal" ->
          answers.put(
              "thickness",
              FilletSize.matchingThicknessMm(
                  given.get(LEG), filler(given), given.get(BASE_TENSILE)));
      case "side-weld" ->
          answers.put(
              "each_side",
              FilletSize.sideWeldMm(
                  given.get(LOAD), given.get(WELD_STRENGTH), given.get(END_WELD)));
      case "misalignment" -> misalignment(given, answers);
      case "fatigue-cycles" -> {
        FatigueCurve curve = new FatigueCurve(given.get(CATEGORY)).dividedBy(given.get(PARTIAL));
        double cycles = curve.cycles(given.get(RANGE));
        answers
            .put("knee", curve.kneeMPa())
            .put("cut_off", curve.cutOffMPa())
            .put(
                "cycles",
                Double.isInfinite(cycles)
                    ? "any number: below the cut-off"
                    : Long.toString(Math.round(cycles)));
      }
      case "rod-end-load" -> answers.put("working_load", RodEnd.workingLoadN(given.get(CAPACITY)));
      default -> throw FigureGroup.unknown(name);
    }
  }

  /** Sheet is thinner than the least leg: no fillet along its edge has that. */
  private static String legs(double thicknessMm) {
    return FilletLegs.leastByTableMm(thicknessMm) > FilletLegs.largestAlongEdgeMm(thicknessMm)
        ? "none: the least leg is above the largest, so the edge is melted away; lap it and weld"
            + " away from the edge, or follow a code for sheet (AWS D1.3)"
        : "any from the least to the largest";
  }

  private static Column roundColumn(FigureInputs given, double endFactor) {
    double outsideMm = given.get(OUTSIDE);
    Optional<Double> wall = given.find(WALL);
    RoundTubeSection section =
        wall.isPresent()
            ? new RoundTubeSection(outsideMm, wall.get())
            : RoundTubeSection.bar(outsideMm);
    return new Column(
        section.areaMm2(),
        section.leastRadiusOfGyrationMm(),
        section.toTopMm(),
        given.get(LENGTH),
        endFactor,
        given.get(YIELD),
        given.get(MODULUS));
  }

  /** The distance to the face plays no part in a load without offset; the radius stands in. */
  private static Column sectionColumn(FigureInputs given) {
    return new Column(
        Shop.squareInches(given.get(AREA_IN2)),
        given.get(RADIUS),
        given.get(RADIUS),
        given.get(LENGTH),
        given.get(END_FACTOR),
        given.get(YIELD),
        given.get(MODULUS));
  }

  private static void column(Column column, FigureInputs given, FigureAnswers answers) {
    answers
        .put("slenderness", column.slenderness())
        .put("transition", column.transitionSlenderness())
        .put("formula", column.mode().name().toLowerCase(Locale.ROOT))
        .put("euler_load", column.eulerLoadN())
        .put("critical_load", column.criticalLoadN())
        .put("safe_load", column.criticalLoadN() / given.get(SAFETY));
  }

  private static void filletWeld(FigureInputs given, FigureAnswers answers) {
    FilletSeam weld = new FilletSeam(given.get(LEG), given.get(WELD_LENGTH), filler(given));
    answers
        .put("throat", weld.throatMm())
        .put("counted_leg", weld.effectiveLegMm())
        .put("per_length", weld.allowableN() / given.get(WELD_LENGTH))
        .put("allowed", weld.allowableN())
        .put("design", weld.designN())
        .put("direction_factor", FilletSeam.directionFactor(given.get(LOAD_ANGLE)));
  }

  private static Electrode filler(FigureInputs given) {
    return Electrode.valueOf(given.get(FILLER).toUpperCase(Locale.ROOT));
  }

  private static void misalignment(FigureInputs given, FigureAnswers answers) {
    Optional<Double> head = given.find(HEAD);
    // Without a head only the tilt of the ball is wanted, which no head takes part in.
    double headMm = head.isPresent() ? head.get() : 2 * given.get(BALL);
    RodEnd joint =
        new RodEnd(
            given.get(BALL_WIDTH), given.get(BALL), given.get(HOUSING), headMm, given.get(CHAMFER));
    answers.put("ball_tilt", joint.tiltOfBallRad());
    if (head.isPresent()) {
      answers.put("clevis_tilt", joint.tiltInClevisRad());
    }
  }
}
