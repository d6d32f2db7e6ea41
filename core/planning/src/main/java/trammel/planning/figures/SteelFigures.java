package trammel.planning.figures;

import java.util.Arrays;
import java.util.List;
import trammel.engine.strength.AngleSection;
import trammel.engine.strength.ChannelSection;
import trammel.engine.strength.FrameRail;
import trammel.engine.strength.OpenChannel;
import trammel.engine.strength.PublishedSteel;
import trammel.engine.strength.RectangularTubeSection;
import trammel.engine.strength.RoundTubeSection;
import trammel.engine.strength.Section;
import trammel.engine.strength.SteelGrade;
import trammel.engine.strength.SteelMass;
import trammel.reading.fields.Field;
import trammel.trade.steel.FlatBar;
import trammel.trade.steel.PlateStock;
import trammel.trade.steel.RectangularTube;
import trammel.trade.steel.RoundBar;
import trammel.trade.steel.RoundTube;
import trammel.trade.steel.SheetGauge;
import trammel.trade.steel.SteelSection;

/** Weights and sections of steel. */
final class SteelFigures implements FigureGroup {
  private static final String DENSITY = "steel at 7850 kg/m3 (0.2836 lb/in3)";
  private static final String SECTION_SOURCE =
      "closed form; checked against the AISC Shapes Database v15.0";

  private static final Field<Double> OUTSIDE =
      Shop.inches("outside", "outside diameter", 0.125, 19);
  private static final Field<Double> WALL = Shop.inches("wall", "wall thickness", 0.01, 2);
  private static final Field<Double> HEIGHT = Shop.inches("height", "height outside", 0.25, 19);
  private static final Field<Double> WIDTH = Shop.inches("width", "width outside", 0.25, 19);
  private static final Field<Double> LENGTH =
      Shop.inches("length", "length of one piece", 0.125, 600).withDefault(304.8);
  private static final Field<Double> PLATE_LENGTH = Shop.inches("length", "length", 0.125, 390);
  private static final Field<Double> PLATE_WIDTH = Shop.inches("width", "width", 0.125, 390);
  private static final Field<Double> THICKNESS = Shop.inches("thickness", "thickness", 0.01, 3.5);
  private static final Field<String> GAUGE =
      Field.choice("gauge", "gauge number of sheet", gauges());
  private static final Field<Boolean> ROLLED =
      Field.flag(
              "rolled", "a rolled channel, whose flanges taper by 1 in 6; a pressed one's do not")
          .withDefault(false);
  private static final Field<Double> LEG_ONE = Shop.inches("leg", "longer leg", 0.25, 12);
  private static final Field<Double> LEG_TWO =
      Shop.inches("other_leg", "shorter leg; left out, both are alike", 0.25, 12).optional();

  private static List<String> gauges() {
    return Arrays.stream(SheetGauge.values())
        .map(gauge -> Integer.toString(gauge.number()))
        .toList();
  }

  private static final Field<Boolean> DESIGN_WALL =
      Field.flag("design_wall", "take 0.93 of the wall, as section tables of structural tube do")
          .withDefault(false);
  private static final Field<Double> DEPTH =
      Shop.inches("depth", "depth over both flanges", 0.5, 30);
  private static final Field<Double> FLANGE_WIDTH =
      Shop.inches("flange_width", "width of a flange over the web", 0.25, 20);
  private static final Field<Double> WEB = Shop.inches("web", "thickness of the web", 0.01, 2);
  private static final Field<Double> FLANGE =
      Shop.inches("flange", "mean thickness of a flange", 0.01, 2);
  private static final Field<Double> BOXING =
      Shop.inches("boxing", "plate that closes the open side; 0 for none", 0, 1).withDefault(0.0);
  private static final Field<Double> TORQUE =
      Shop.poundFeet("torque", "torque at the middle of the bay: load times its arm", 0, 1e5);
  private static final Field<Double> BAY =
      Shop.inches("bay", "from crossmember to crossmember", 2, 200);
  private static final Field<Double> CLOSING =
      Shop.inches("boxing", "plate that would close the open side", 0.02, 1)
          .withDefault(3.0 / 16 * 25.4);
  private static final Field<String> STEEL =
      Field.choice("steel", "published steel", SteelChoice.words());

  @Override
  public String title() {
    return "Steel: weights and sections";
  }

  @Override
  public List<Figure> figures() {
    return List.of(
        weight("tube-weight", "Weight of round tube")
            .takes(OUTSIDE, WALL, LENGTH)
            .gives("weight_per_length", "weight per length", FigureUnit.MASS_PER_LENGTH)
            .gives("weight", "weight of the piece", FigureUnit.MASS)
            .by(
                "pi (D - t) t x density; in shop units 10.69 (D - t) t lb/ft",
                DENSITY + "; trade formula 10.69 (D - t) t, often printed with 10.68",
                "outside=1.75 wall=0.120"),
        weight("rectangular-tube-weight", "Weight of square or rectangular tube")
            .takes(HEIGHT, WIDTH, WALL, LENGTH)
            .gives("weight_per_length", "weight per length", FigureUnit.MASS_PER_LENGTH)
            .gives("weight", "weight of the piece", FigureUnit.MASS)
            .by(
                "area with corners rounded to 2t outside and t inside x density; in shop units"
                    + " 3.403 (2t (H + B - 8t) + 9.4248 t2) lb/ft",
                DENSITY + "; tube merchants' weight formula",
                "height=3 width=2 wall=0.120"),
        weight("flat-stock-weight", "Weight of flat stock")
            .takes(WIDTH, THICKNESS, LENGTH)
            .gives("weight_per_length", "weight per length", FigureUnit.MASS_PER_LENGTH)
            .gives("weight", "weight of the piece", FigureUnit.MASS)
            .by("width x thickness x density", DENSITY, "width=2 thickness=1/4"),
        weight("round-stock-weight", "Weight of solid round stock")
            .takes(OUTSIDE, LENGTH)
            .gives("weight_per_length", "weight per length", FigureUnit.MASS_PER_LENGTH)
            .gives("weight", "weight of the piece", FigureUnit.MASS)
            .by("pi D2/4 x density; in shop units 2.67 D2 lb/ft", DENSITY, "outside=1"),
        weight("angle-weight", "Weight of angle iron")
            .takes(LEG_ONE, LEG_TWO, THICKNESS, LENGTH)
            .gives("weight_per_length", "weight per length", FigureUnit.MASS_PER_LENGTH)
            .gives("weight", "weight of the piece", FigureUnit.MASS)
            .by("t (a + b - t) x density, fillet left out", DENSITY, "leg=2 thickness=1/4"),
        weight("plate-weight", "Weight of a plate")
            .takes(PLATE_LENGTH, PLATE_WIDTH, THICKNESS)
            .gives("weight_per_area", "weight per area", FigureUnit.MASS_PER_AREA)
            .gives("weight", "weight of the piece", FigureUnit.MASS)
            .by("length x width x thickness x density", DENSITY, "length=6 width=4 thickness=1/4"),
        weight("sheet-gauge", "Thickness and weight of sheet by its gauge")
            .takes(GAUGE)
            .gives("thickness", "thickness, bare", FigureUnit.LENGTH)
            .gives("galvanised", "thickness, galvanised", FigureUnit.LENGTH)
            .gives("weight_per_area", "weight per area, bare", FigureUnit.MASS_PER_AREA)
            .by(
                "table; 41.82 lb/ft2 for an inch of thickness",
                "Manufacturers' Standard Gage; tube walls go by another gauge",
                "gauge=11"),
        section("tube-section", "Section of round tube")
            .takes(OUTSIDE, WALL, DESIGN_WALL)
            .gives("area", "area", FigureUnit.AREA)
            .gives("second_moment", "second moment of area", FigureUnit.SECOND_MOMENT)
            .gives("modulus", "section modulus", FigureUnit.VOLUME)
            .gives("radius", "radius of gyration", FigureUnit.LENGTH)
            .by(
                "A = pi (D2 - d2)/4; I = pi (D4 - d4)/64; S = 2 I/D; r = root of I/A",
                SECTION_SOURCE,
                "outside=1.75 wall=0.120"),
        section("round-stock-section", "Section of solid round stock")
            .takes(OUTSIDE)
            .gives("area", "area", FigureUnit.AREA)
            .gives("second_moment", "second moment of area", FigureUnit.SECOND_MOMENT)
            .gives("modulus", "section modulus", FigureUnit.VOLUME)
            .gives("radius", "radius of gyration", FigureUnit.LENGTH)
            .by("A = pi D2/4; I = pi D4/64; S = pi D3/32; r = D/4", "closed form", "outside=1"),
        section("angle-section", "Section of angle iron")
            .takes(LEG_ONE, LEG_TWO, THICKNESS)
            .gives("area", "area", FigureUnit.AREA)
            .gives("second_moment", "second moment, longer leg upright", FigureUnit.SECOND_MOMENT)
            .gives("modulus", "section modulus, longer leg upright", FigureUnit.VOLUME)
            .gives("centroid", "centroid from the back of the shorter leg", FigureUnit.LENGTH)
            .gives("least_radius", "least radius of gyration", FigureUnit.LENGTH)
            .by(
                "two rectangles about their common centroid, fillet left out; least radius about the"
                    + " principal axis",
                "parallel axis theorem; AISC Shapes Database v15.0 has fillets and is within 2 %",
                "leg=2 thickness=1/4"),
        section("rectangular-tube-section", "Section of square or rectangular tube")
            .takes(HEIGHT, WIDTH, WALL, DESIGN_WALL)
            .gives("area", "area", FigureUnit.AREA)
            .gives("second_moment", "second moment, bending upright", FigureUnit.SECOND_MOMENT)
            .gives("modulus", "section modulus, bending upright", FigureUnit.VOLUME)
            .gives("radius", "radius of gyration, bending upright", FigureUnit.LENGTH)
            .gives(
                "side_second_moment", "second moment, bending sideways", FigureUnit.SECOND_MOMENT)
            .by(
                "rectangles and corners rounded to 2t outside and t inside",
                SECTION_SOURCE + " to 0.5 %",
                "height=4 width=2 wall=3/16"),
        section("channel-section", "Section of an open channel")
            .takes(DEPTH, FLANGE_WIDTH, WEB, FLANGE, ROLLED)
            .gives("area", "area", FigureUnit.AREA)
            .gives("second_moment", "second moment, bending upright", FigureUnit.SECOND_MOMENT)
            .gives("modulus", "section modulus, bending upright", FigureUnit.VOLUME)
            .gives("radius", "radius of gyration, bending upright", FigureUnit.LENGTH)
            .gives(
                "side_second_moment", "second moment, bending sideways", FigureUnit.SECOND_MOMENT)
            .by(
                "web and two flanges as rectangles, fillets left out; sideways, the flanges of a"
                    + " rolled channel taper by 1 in 6, and as rectangles would be up to a quarter"
                    + " too stiff",
                SECTION_SOURCE,
                "depth=6 flange_width=2 web=0.120 flange=0.120"),
        section("boxed-rail", "Section of a channel rail, open or boxed")
            .takes(DEPTH, FLANGE_WIDTH, WEB, FLANGE, BOXING)
            .gives("area", "area", FigureUnit.AREA)
            .gives("second_moment", "second moment, bending upright", FigureUnit.SECOND_MOMENT)
            .gives("modulus", "section modulus, bending upright", FigureUnit.VOLUME)
            .by(
                "rectangles about their common centroid",
                "parallel axis theorem",
                "depth=6 flange_width=2 web=0.120 flange=0.120 boxing=3/16"),
        section("channel-twist", "Twist of a channel rail between two crossmembers")
            .takes(DEPTH, FLANGE_WIDTH, WEB, FLANGE, TORQUE, BAY, CLOSING)
            .gives("shear_centre", "shear centre outside the back of the web", FigureUnit.LENGTH)
            .gives("twist", "twist, ends free to warp", FigureUnit.ANGLE)
            .gives("twist_held", "twist, ends held against warping", FigureUnit.ANGLE)
            .gives("uniform", "twist without warping", FigureUnit.ANGLE)
            .gives("shear", "shear of uniform torsion", FigureUnit.STRESS)
            .gives("warping", "stress along the rail by warping, at the flanges", FigureUnit.STRESS)
            .gives("closed", "twist when a plate closes the whole bay", FigureUnit.ANGLE)
            .by(
                "J = sum of b t3/3, a = root of (E Cw/(G J)); torque at the middle of the bay: T/(2 G"
                    + " J) (L/2 - a tanh L/2a) free, T L/(4 G J) (1 - 4a/L tanh L/4a) held; closed by"
                    + " Bredt, 4 A2/sum of s/t",
                "Beer and Johnston, Mechanics of Materials; Megson, Aircraft Structures; Vlasov's"
                    + " theory derived again",
                "depth=6 flange_width=2.5 web=3/16 flange=3/16 torque=600 bay=30"),
        section("steel-strength", "Least strengths of a published steel")
            .takes(STEEL)
            .gives("yield", "yield strength", FigureUnit.STRESS)
            .gives("tensile", "tensile strength", FigureUnit.STRESS)
            .gives("standard", "from", FigureUnit.WORD)
            .by(
                "table",
                "ASTM A36, A500, A513 and MIL-T-6736B, where they differ the lower value",
                "steel=a513-drawn-1020"));
  }

  private Figure.Draft weight(String name, String what) {
    return Figure.draft(this, name, what);
  }

  private Figure.Draft section(String name, String what) {
    return Figure.draft(this, name, what);
  }

  @Override
  public void work(String name, FigureInputs given, FigureAnswers answers) {
    switch (name) {
      case "tube-weight" -> bar(new RoundTube(given.get(OUTSIDE), given.get(WALL)), given, answers);
      case "rectangular-tube-weight" ->
          bar(
              new RectangularTube(
                  Math.max(given.get(HEIGHT), given.get(WIDTH)),
                  Math.min(given.get(HEIGHT), given.get(WIDTH)),
                  given.get(WALL)),
              given,
              answers);
      case "flat-stock-weight" ->
          bar(new FlatBar(given.get(WIDTH), given.get(THICKNESS)), given, answers);
      case "round-stock-weight" -> bar(new RoundBar(given.get(OUTSIDE)), given, answers);
      case "angle-weight" -> {
        double kgPerMm = angle(given).areaMm2() * SteelMass.DENSITY_KG_PER_MM3;
        answers.put("weight_per_length", 1000 * kgPerMm).put("weight", kgPerMm * given.get(LENGTH));
      }
      case "round-stock-section" -> bending(roundBar(given), answers);
      case "angle-section" -> {
        AngleSection angle = angle(given);
        answers
            .put("area", angle.areaMm2())
            .put("second_moment", angle.secondMomentMm4())
            .put("modulus", angle.modulusMm3())
            .put("centroid", angle.centroidMm())
            .put("least_radius", angle.leastRadiusMm());
      }
      case "plate-weight" -> plate(given, answers);
      case "sheet-gauge" -> sheet(given, answers);
      case "tube-section" -> tubeSection(given, answers);
      case "rectangular-tube-section" -> rectangularSection(given, answers);
      case "channel-section" -> {
        ChannelSection section = channel(given);
        bending(section, answers);
        answers.put(
            "side_second_moment",
            given.get(ROLLED) ? section.taperedYMm4(1.0 / 6) : section.secondMomentYMm4());
      }
      case "boxed-rail" -> {
        Section rail = new FrameRail(channel(given), given.get(BOXING)).section();
        answers
            .put("area", rail.areaMm2())
            .put("second_moment", rail.secondMomentXMm4())
            .put("modulus", rail.leastModulusMm3());
      }
      case "channel-twist" -> twist(given, answers);
      case "steel-strength" -> steel(given, answers);
      default -> throw FigureGroup.unknown(name);
    }
  }

  private static void twist(FigureInputs given, FigureAnswers answers) {
    OpenChannel rail = OpenChannel.of(channel(given));
    double torque = given.get(TORQUE);
    double bay = given.get(BAY);
    double closed = rail.closedTorsionMm4(given.get(CLOSING));
    answers
        .put("shear_centre", rail.shearCentreMm() - given.get(WEB) / 2)
        .put("twist", rail.twistRad(torque, bay, false))
        .put("twist_held", rail.twistRad(torque, bay, true))
        .put("uniform", rail.uniformTwistRad(torque, bay))
        .put("shear", rail.uniformShearMPa(torque / 2))
        .put("warping", rail.warpingStressMPa(torque, bay))
        .put("closed", rail.uniformTwistRad(torque, bay) * rail.torsionMm4() / closed);
  }

  private static RoundTubeSection roundBar(FigureInputs given) {
    return RoundTubeSection.bar(given.get(OUTSIDE));
  }

  private static AngleSection angle(FigureInputs given) {
    double longerMm = given.get(LEG_ONE);
    return new AngleSection(longerMm, given.find(LEG_TWO).orElse(longerMm), given.get(THICKNESS));
  }

  private static void bar(SteelSection bar, FigureInputs given, FigureAnswers answers) {
    answers.put("weight_per_length", bar.kgPerMetre()).put("weight", bar.massKg(given.get(LENGTH)));
  }

  private static void plate(FigureInputs given, FigureAnswers answers) {
    PlateStock plate = new PlateStock(given.get(THICKNESS));
    double areaMm2 = given.get(PLATE_LENGTH) * given.get(PLATE_WIDTH);
    answers.put("weight_per_area", plate.massKg(1e6)).put("weight", plate.massKg(areaMm2));
  }

  private static void sheet(FigureInputs given, FigureAnswers answers) {
    SheetGauge gauge = SheetGauge.numbered(Integer.parseInt(given.get(GAUGE))).orElseThrow();
    answers
        .put("thickness", gauge.thicknessMm())
        .put("galvanised", gauge.galvanisedMm(), "not sold so thick")
        .put("weight_per_area", 1e6 * gauge.kgPerMm2());
  }

  private static void tubeSection(FigureInputs given, FigureAnswers answers) {
    RoundTubeSection tube = new RoundTubeSection(given.get(OUTSIDE), given.get(WALL));
    bending(given.get(DESIGN_WALL) ? tube.withDesignWall() : tube, answers);
  }

  private static void rectangularSection(FigureInputs given, FigureAnswers answers) {
    RectangularTubeSection nominal =
        new RectangularTubeSection(given.get(HEIGHT), given.get(WIDTH), given.get(WALL));
    Section tube = given.get(DESIGN_WALL) ? nominal.withDesignWall() : nominal;
    bending(tube, answers);
    answers.put("side_second_moment", tube.secondMomentYMm4());
  }

  private static ChannelSection channel(FigureInputs given) {
    return new ChannelSection(
        given.get(DEPTH), given.get(FLANGE_WIDTH), given.get(WEB), given.get(FLANGE));
  }

  private static void bending(Section section, FigureAnswers answers) {
    answers
        .put("area", section.areaMm2())
        .put("second_moment", section.secondMomentXMm4())
        .put("modulus", section.leastModulusMm3())
        .put("radius", section.radiusOfGyrationXMm());
  }

  private static void steel(FigureInputs given, FigureAnswers answers) {
    PublishedSteel steel = SteelChoice.of(given.get(STEEL));
    SteelGrade grade = steel.grade();
    answers
        .put("yield", grade.yieldMPa())
        .put("tensile", grade.tensileMPa())
        .put("standard", grade.name() + ", " + grade.source());
  }
}
