package trammel.planning.figures;

import java.math.BigDecimal;
import java.util.List;
import trammel.cutting.bars.BarCutter;
import trammel.cutting.bars.BarCuttingPlan;
import trammel.cutting.bars.BarCuttingProblem;
import trammel.cutting.bars.BarStock;
import trammel.cutting.bars.CutBar;
import trammel.cutting.bars.PlacedPiece;
import trammel.reading.fields.Field;
import trammel.reading.quantity.QuantityPrinter;
import trammel.trade.hardware.ScrewThread;
import trammel.trade.steel.DrillSetup;
import trammel.trade.steel.PlasmaSetup;
import trammel.trade.steel.SawSetup;
import trammel.trade.steel.TapSetup;

/** Drilling, sawing, plasma, and what a list of pieces takes. */
final class CuttingFigures implements FigureGroup {
  private static final Field<Double> DRILL = Shop.inches("diameter", "drill diameter", 0.01, 7);
  private static final Field<Double> DEPTH =
      Shop.inches("depth", "thickness drilled through", 0.005, 39);
  private static final Field<Double> RIM_SPEED =
      Field.number("speed_sfm", "rim speed, feet a minute: mild steel 70 to 100", 1, 3000)
          .withDefault(80.0);
  private static final Field<Double> FEED =
      Shop.inches("feed", "feed for each turn", 0.0005, 0.07).withDefault(0.006 * 25.4);
  private static final Field<String> THREAD =
      Field.text("thread", "thread: inches and threads an inch, such as 1/2-13", 20);
  private static final Field<Double> THREAD_DEPTH =
      Shop.inches("depth", "depth of full thread", 0.01, 19);
  private static final Field<Double> TAP_SPEED =
      Field.number("speed_sfm", "rim speed, feet a minute", 1, 500).withDefault(30.0);
  private static final Field<Double> CHAMFER =
      Field.number("chamfer", "lead of the tap in threads: 4 for a plug tap", 0, 12)
          .withDefault(4.0);
  private static final Field<Integer> CUTS = Field.count("cuts", "saw cuts", 1, 10_000);
  private static final Field<Double> AREA_IN2 =
      Field.number("area_in2", "steel in one cut, square inches", 0.0001, 380);
  private static final Field<Double> SAW_RATE =
      Field.number("rate_in2_min", "sawing rate, square inches a minute", 0.01, 150);
  private static final Field<Double> HANDLING =
      Field.number("handling_min", "handling of one cut, minutes", 0, 120).withDefault(1.5);
  private static final Field<Double> EDGE =
      Shop.inches("edge", "length of all outlines and holes", 0, 300_000);
  private static final Field<Integer> PIERCES = Field.count("pierces", "pierces", 0, 100_000);
  private static final Field<Double> PLASMA_SPEED =
      Field.number("speed_in_min", "cutting speed, inches a minute", 0.1, 1900);
  private static final Field<Double> PIERCE_DELAY =
      Field.number("pierce_s", "pierce delay, seconds", 0, 30).withDefault(0.4);
  private static final Field<Double> LEAD_IN =
      Shop.inches("lead_in", "lead-in of one pierce", 0, 3.9).withDefault(6.35);
  private static final Field<Double> STICK = Shop.inches("stick", "length of a stick", 1, 1200);
  private static final Field<String> PIECES =
      Field.text("pieces", "pieces with how many of each, such as 60x4,40x6", 600);
  private static final Field<Double> KERF =
      Shop.inches("kerf", "width of a saw cut", 0, 1).withDefault(25.4 / 16);
  private static final Field<Double> TRIM =
      Shop.inches("trim", "cut off the front end of every stick", 0, 24).withDefault(0.0);

  @Override
  public String title() {
    return "Cutting: drill, tap, saw, plasma, stock";
  }

  @Override
  public List<Figure> figures() {
    return List.of(
        Figure.draft(this, "drilling", "Speed, feed and time of a drilled hole")
            .takes(DRILL, DEPTH, RIM_SPEED, FEED)
            .gives("turns", "drill speed", FigureUnit.ROTATION)
            .gives("feed_rate", "feed", FigureUnit.FEED)
            .gives("point", "lead of the point", FigureUnit.LENGTH)
            .gives("time", "time", FigureUnit.MINUTES)
            .by(
                "N = 12 V/(pi D), in print 3.82 V/D; lead D/(2 tan 59 deg); (depth + lead)/(f N)",
                "drill charts; Machinery's Handbook",
                "diameter=1/2 depth=1/4"),
        Figure.draft(this, "tapping", "Speed and time of a tapped hole")
            .takes(THREAD, THREAD_DEPTH, TAP_SPEED, CHAMFER)
            .gives("turns", "tap speed", FigureUnit.ROTATION)
            .gives("time", "time in and out", FigureUnit.MINUTES)
            .by(
                "2 (depth x threads an inch + lead)/N, out as fast as in",
                "closed form; common practice, no source",
                "thread=1/2-13 depth=1/2"),
        Figure.draft(this, "sawing", "Time at the saw")
            .takes(CUTS, AREA_IN2, SAW_RATE, HANDLING)
            .gives("time", "time", FigureUnit.MINUTES)
            .by(
                "cuts x (area / rate + handling)",
                "band-saw speed and feed chart; Machinery's Handbook, 31st edition, p. 1245",
                "cuts=8 area_in2=0.6145 rate_in2_min=9"),
        Figure.draft(this, "plasma-time", "Time at the plasma table")
            .takes(EDGE, PIERCES, PLASMA_SPEED, PIERCE_DELAY, LEAD_IN)
            .gives("travel", "length the torch cuts", FigureUnit.LENGTH)
            .gives("time", "time", FigureUnit.MINUTES)
            .by(
                "(edge + pierces x lead-in)/speed + pierces x delay",
                "closed form; speeds from a plasma cutter's manual, p. 31",
                "edge=97.076 pierces=8 speed_in_min=75"),
        Figure.draft(this, "stick-cut", "Sticks needed for a list of pieces")
            .takes(STICK, PIECES, KERF, TRIM)
            .gives("sticks", "sticks", FigureUnit.COUNT)
            .gives("least_possible", "fewest that can be proved", FigureUnit.COUNT)
            .gives("certainty", "certainty", FigureUnit.WORD)
            .gives("left_over", "left over in all", FigureUnit.LENGTH)
            .gives("plan", "plan", FigureUnit.WORD)
            .by(
                "fewest sticks such that pieces and saw cuts fit in each",
                "cutting-stock problem; Martello and Toth 1990, Chvatal 1983 ch. 13",
                "stick=240 pieces=60x4,40x6,30x8"));
  }

  @Override
  public void work(String name, FigureInputs given, FigureAnswers answers) {
    switch (name) {
      case "drilling" -> drilling(given, answers);
      case "tapping" -> tapping(given, answers);
      case "sawing" ->
          answers.put(
              "time",
              new SawSetup(Shop.squareInches(given.get(SAW_RATE)), given.get(HANDLING))
                  .minutes(given.get(CUTS), Shop.squareInches(given.get(AREA_IN2))));
      case "plasma-time" -> plasma(given, answers);
      case "stick-cut" -> barCut(given, answers);
      default -> throw FigureGroup.unknown(name);
    }
  }

  private static void drilling(FigureInputs given, FigureAnswers answers) {
    double diameterMm = given.get(DRILL);
    double rimSpeed = Shop.feetToMm(given.get(RIM_SPEED));
    double turns = DrillSetup.turnsPerMin(rimSpeed, diameterMm);
    answers
        .put("turns", turns)
        .put("feed_rate", turns * given.get(FEED))
        .put("point", DrillSetup.pointLeadMm(diameterMm))
        .put(
            "time",
            new DrillSetup(rimSpeed, given.get(FEED)).minutes(diameterMm, given.get(DEPTH)));
  }

  private static void tapping(FigureInputs given, FigureAnswers answers) {
    ScrewThread thread = ScrewThread.of(given.get(THREAD));
    double rimSpeed = Shop.feetToMm(given.get(TAP_SPEED));
    answers
        .put("turns", DrillSetup.turnsPerMin(rimSpeed, thread.diameterMm()))
        .put(
            "time",
            new TapSetup(rimSpeed, given.get(CHAMFER))
                .minutes(thread.diameterMm(), thread.pitchMm(), given.get(THREAD_DEPTH)));
  }

  private static void plasma(FigureInputs given, FigureAnswers answers) {
    PlasmaSetup table =
        new PlasmaSetup(
            Shop.toMm(given.get(PLASMA_SPEED)), given.get(PIERCE_DELAY), given.get(LEAD_IN));
    answers
        .put("travel", table.travelMm(given.get(EDGE), given.get(PIERCES)))
        .put("time", table.minutes(given.get(EDGE), given.get(PIERCES)));
  }

  private static void barCut(FigureInputs given, FigureAnswers answers) {
    BarStock stick = BarStock.bought("stick", given.get(STICK), BigDecimal.ONE);
    BarCuttingPlan plan =
        new BarCutter()
            .cut(
                new BarCuttingProblem(
                    List.of(stick),
                    WrittenLists.pieces(given.get(PIECES), given.units()),
                    given.get(KERF),
                    0,
                    given.get(TRIM)));
    double leftMm = 0;
    StringBuilder words = new StringBuilder();
    QuantityPrinter printer = new QuantityPrinter(given.units());
    for (CutBar bar : plan.bars()) {
      leftMm += bar.offcutMm();
      words.append(words.length() == 0 ? "" : " | ");
      for (int i = 0; i < bar.pieces().size(); i++) {
        PlacedPiece piece = bar.pieces().get(i);
        words.append(i == 0 ? "" : " + ").append(printer.length(piece.lengthMm()));
      }
    }
    answers
        .put("sticks", plan.bars().size())
        .put("least_possible", Math.ceil(plan.lowerBound().doubleValue() - 1e-9))
        .put("certainty", plan.status().word())
        .put("left_over", leftMm)
        .put("plan", words.toString());
  }
}
