package trammel.planning.figures;

import java.util.List;
import trammel.engine.strength.ChannelSection;
import trammel.engine.strength.FrameRail;
import trammel.engine.strength.PublishedSteel;
import trammel.engine.strength.RectangularTubeSection;
import trammel.engine.strength.RoundTubeSection;
import trammel.engine.strength.Section;
import trammel.engine.strength.SteelGrade;
import trammel.reading.fields.Field;
import trammel.trade.steel.FlatBar;
import trammel.trade.steel.PlateStock;
import trammel.trade.steel.RectangularTube;
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
      Field.choice("gauge", "gauge number of sheet", List.of("7", "10", "11", "14", "16"));
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
        weight("flat-bar-weight", "Weight of flat bar")
            .takes(WIDTH, THICKNESS, LENGTH)
            .gives("weight_per_length", "weight per length", FigureUnit.MASS_PER_LENGTH)
            .gives("weight", "weight of the piece", FigureUnit.MASS)
            .by("width x thickness x density", DENSITY, "width=2 thickness=1/4"),
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
        section("tube-section", "Section of round tube or bar")
            .takes(OUTSIDE, WALL, DESIGN_WALL)
            .gives("area", "area", FigureUnit.AREA)
            .gives("second_moment", "second moment of area", FigureUnit.SECOND_MOMENT)
            .gives("modulus", "section modulus", FigureUnit.VOLUME)
            .gives("radius", "radius of gyration", FigureUnit.LENGTH)
            .by(
                "A = pi (D2 - d2)/4; I = pi (D4 - d4)/64; S = 2 I/D; r = root of I/A",
                SECTION_SOURCE,
                "outside=1.75 wall=0.120"),
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
            .takes(DEPTH, FLANGE_WIDTH, WEB, FLANGE)
            .gives("area", "area", FigureUnit.AREA)
            .gives("second_moment", "second moment, bending upright", FigureUnit.SECOND_MOMENT)
            .gives("modulus", "section modulus, bending upright", FigureUnit.VOLUME)
            .gives("radius", "radius of gyration, bending upright", FigureUnit.LENGTH)
            .gives(
                "side_second_moment", "second moment, bending sideways", FigureUnit.SECOND_MOMENT)
            .by(
                "web and two flanges as rectangles, fillets left out",
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
      case "flat-bar-weight" ->
          bar(new FlatBar(given.get(WIDTH), given.get(THICKNESS)), given, answers);
      case "plate-weight" -> plate(given, answers);
      case "sheet-gauge" -> sheet(given, answers);
      case "tube-section" -> tubeSection(given, answers);
      case "rectangular-tube-section" -> rectangularSection(given, answers);
      case "channel-section" -> {
        Section section = channel(given);
        bending(section, answers);
        answers.put("side_second_moment", section.secondMomentYMm4());
      }
      case "boxed-rail" -> {
        Section rail = new FrameRail(channel(given), given.get(BOXING)).section();
        answers
            .put("area", rail.areaMm2())
            .put("second_moment", rail.secondMomentXMm4())
            .put("modulus", rail.leastModulusMm3());
      }
      case "steel-strength" -> steel(given, answers);
      default -> throw FigureGroup.unknown(name);
    }
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
        .put("galvanised", gauge.galvanisedMm())
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
