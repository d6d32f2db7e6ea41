package trammel.planning.figures;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.engine.quantity.Phrase;
import trammel.reading.fields.Field;
import trammel.trade.welding.BeadJoint;
import trammel.trade.welding.DepositCost;
import trammel.trade.welding.EquipmentPayback;
import trammel.trade.welding.FilletWeld;
import trammel.trade.welding.PlugWeld;
import trammel.trade.welding.PositionFactors;
import trammel.trade.welding.SeamEstimate;
import trammel.trade.welding.SingleBevelGroove;
import trammel.trade.welding.SquareGroove;
import trammel.trade.welding.StartingCurrent;
import trammel.trade.welding.StickElectrode;
import trammel.trade.welding.VGroove;
import trammel.trade.welding.WeldCap;
import trammel.trade.welding.WeldMetal;
import trammel.trade.welding.WeldPlace;
import trammel.trade.welding.WeldPosition;
import trammel.trade.welding.WeldPractice;
import trammel.trade.welding.WeldProcess;
import trammel.trade.welding.WeldSeam;
import trammel.trade.welding.WireFeed;

/** Weld metal, wire, time and cost. */
final class WeldingFigures implements FigureGroup {
  private static final String HANDBOOK =
      "ESAB, Filler Metal Data Handbook, section 8; steel at 0.283 lb/in3";

  private static final Field<Double> LEG = Shop.inches("leg", "leg of the fillet", 0.02, 1.9);
  private static final Field<Double> OTHER_LEG =
      Shop.inches("other_leg", "the other leg, if it is not the same", 0.02, 1.9).optional();
  private static final Field<Double> OVER =
      Field.percent("over", "how much larger each leg is laid than drawn", 0, 1).withDefault(0.0);
  private static final Field<Double> LENGTH =
      Shop.inches("length", "length of weld", 0.1, 3900).withDefault(304.8);
  private static final Field<String> GROOVE =
      Field.choice("groove", "shape of the groove", List.of("square", "bevel", "vee"));
  private static final Field<Double> THICKNESS =
      Shop.inches("thickness", "thickness of the plate", 0.01, 3.9);
  private static final Field<Double> GAP = Shop.inches("gap", "root gap", 0, 0.75).withDefault(0.0);
  private static final Field<Double> LAND =
      Shop.inches("land", "edge that is left square", 0, 3.9).withDefault(0.0);
  private static final Field<Double> ANGLE =
      Shop.degrees("angle", "bevel of one plate, or the whole angle of a vee", 1, 120).optional();
  private static final Field<Double> CAP =
      Shop.inches("cap", "height of the cap", 0, 0.39).withDefault(0.0);
  private static final Field<Double> CAP_WIDTH =
      Shop.inches("cap_width", "width of the cap of a square groove", 0, 3.9).withDefault(0.0);
  private static final Field<Double> HOLE =
      Shop.inches("diameter", "hole of the plug weld", 0.02, 1.9);
  private static final Field<Double> DEPTH = Shop.inches("depth", "plate with the hole", 0.01, 1.9);
  private static final Field<Integer> COUNT =
      Field.count("count", "how many", 1, 10_000).withDefault(1);
  private static final Field<Double> WIRE = Shop.inches("wire", "wire diameter", 0.01, 0.15);
  private static final Field<Double> WIRE_SPEED =
      Field.number("speed_in_min", "wire speed, inches a minute", 1, 1900);
  private static final Field<Double> IN_PER_LB =
      Field.number(
              "in_per_lb",
              "wire in a pound, inches; left out, it follows from the steel",
              50,
              50_000)
          .optional();
  private static final Field<Double> EFFICIENCY =
      Field.percent("efficiency", "weld metal from a pound of wire", 0.1, 1).withDefault(0.94);
  private static final Field<Double> PLATE =
      Shop.inches("thickness", "thickness of the plate", 0.01, 0.5);
  private static final Field<Double> START_WIRE =
      Shop.inches("wire", "wire diameter: 0.024, 0.030 or 0.035", 0.01, 0.15)
          .withDefault(0.035 * 25.4);
  private static final Field<Double> ELECTRODE =
      Shop.inches("length", "length of a new electrode", 1, 39);
  private static final Field<Double> STUB =
      Shop.inches("stub", "what is thrown away", 0, 30).withDefault(50.8);
  private static final Field<Double> LAB_EFFICIENCY =
      Field.percent("efficiency", "efficiency in the laboratory", 0.1, 1);
  private static final Field<Double> OPERATING =
      Field.percent("operating", "share of the time the arc burns", 0.01, 1);
  private static final Field<Double> GAS_CFH =
      Field.number("gas_cfh", "gas, cubic feet an hour", 0, 120).withDefault(30.0);
  private static final Field<Double> LABOUR =
      Field.number("labour_per_h", "labour and overhead for an hour, money", 0, 1e6);
  private static final Field<Double> DEPOSIT =
      Field.number("deposit_lb_h", "weld metal in an hour of arc, pounds", 0.01, 100);
  private static final Field<Double> FILLER_PRICE =
      Field.number("filler_per_lb", "price of a pound of filler", 0, 1e5);
  private static final Field<Double> GAS_PRICE =
      Field.number("gas_per_ft3", "price of a cubic foot of gas", 0, 1e4).withDefault(0.0);
  private static final Field<Double> PRICE =
      Field.number("price", "what the equipment costs", 0.01, 1e8);
  private static final Field<Double> SAVED =
      Field.number("saved_per_lb", "money saved on a pound of weld metal", 0.0001, 1e5);

  @Override
  public String title() {
    return "Welding: metal, wire, time, cost";
  }

  @Override
  public List<Figure> figures() {
    return List.of(
        metal(
                Figure.draft(this, "weld-metal", "Metal in a fillet weld")
                    .takes(LEG, OTHER_LEG, OVER, LENGTH))
            .by("z1 z2/2, each leg (1 + over) as laid, x density", HANDBOOK, "leg=3/16 over=10"),
        metal(
                Figure.draft(this, "groove-weld", "Metal in a groove weld")
                    .takes(GROOVE, THICKNESS, GAP, LAND, ANGLE, CAP, CAP_WIDTH, LENGTH))
            .gives("face_width", "width at the face", FigureUnit.LENGTH)
            .by(
                "T G + (T - f)2 tan b/2, a vee twice that; cap 2/3 w h",
                HANDBOOK,
                "groove=vee thickness=1/4 gap=1/8 angle=60 cap=1/16"),
        Figure.draft(this, "plug-weld", "Metal in a plug weld")
            .takes(HOLE, DEPTH, COUNT)
            .gives("volume", "volume of one", FigureUnit.VOLUME)
            .gives("weight", "weld metal in all", FigureUnit.MASS)
            .by("pi d2 h/4 x density", "closed form; " + HANDBOOK, "diameter=1/2 depth=1/4"),
        Figure.draft(this, "wire-feed", "Weld metal from a wire speed")
            .takes(WIRE, WIRE_SPEED, IN_PER_LB, EFFICIENCY)
            .gives("melt_off", "wire melted in an hour of arc", FigureUnit.MASS_PER_HOUR)
            .gives("deposit", "weld metal in an hour of arc", FigureUnit.MASS_PER_HOUR)
            .by(
                "60 x speed / inches in a pound; x efficiency",
                "ESAB, MIG Handbook, p. 7-10",
                "wire=0.035 speed_in_min=220 in_per_lb=3648 efficiency=96"),
        Figure.draft(this, "starting-current", "Where to set a MIG welder first")
            .takes(PLATE, START_WIRE)
            .gives("current", "current", FigureUnit.CURRENT)
            .gives("wire_speed", "wire speed", FigureUnit.FEED)
            .by(
                "1 A for 0.001 in; 3.5, 2.0 or 1.6 in a minute for each ampere",
                "welder owner's manual OM-283007, p. 27",
                "thickness=0.0625 wire=0.030"),
        Figure.draft(this, "electrode-stub", "Efficiency of covered electrodes with their stubs")
            .takes(ELECTRODE, LAB_EFFICIENCY, STUB)
            .gives("efficiency", "efficiency", FigureUnit.PERCENT)
            .by(
                "laboratory efficiency x (length - stub)/length",
                "ESAB, Basic Welding Filler Metal Technology, lesson IX",
                "length=14 efficiency=65"),
        Figure.draft(this, "weld-time", "Metal, wire, gas and hours of a fillet weld")
            .takes(LEG, LENGTH, OVER, WIRE, WIRE_SPEED, IN_PER_LB, EFFICIENCY, OPERATING, GAS_CFH)
            .gives("metal", "weld metal", FigureUnit.MASS)
            .gives("wire", "wire to buy", FigureUnit.MASS)
            .gives("gas", "gas", FigureUnit.GAS)
            .gives("arc", "arc time", FigureUnit.HOURS)
            .gives("clock", "time by the clock", FigureUnit.HOURS)
            .gives("travel", "mean travel of the arc", FigureUnit.FEED)
            .by(
                "metal / deposit an hour / operating factor",
                "ESAB, Filler Metal Data Handbook, section 8; MIG Handbook p. 7-10",
                "leg=3/16 length=140 over=10 wire=0.035 speed_in_min=220 in_per_lb=3648"
                    + " efficiency=96 operating=25"),
        Figure.draft(this, "weld-cost", "Cost of a pound of weld metal")
            .takes(LABOUR, DEPOSIT, OPERATING, FILLER_PRICE, EFFICIENCY, GAS_CFH, GAS_PRICE)
            .gives("labour", "labour and overhead", FigureUnit.MONEY_PER_MASS)
            .gives("filler", "filler", FigureUnit.MONEY_PER_MASS)
            .gives("gas", "gas", FigureUnit.MONEY_PER_MASS)
            .gives("cost", "together", FigureUnit.MONEY_PER_MASS)
            .by(
                "labour/(deposit x operating) + filler/efficiency + gas/deposit",
                "ESAB, Filler Metal Data Handbook, p. 8-8",
                "labour_per_h=45 deposit_lb_h=10.2 operating=45 filler_per_lb=1.78 efficiency=87"
                    + " gas_cfh=40 gas_per_ft3=0.02"),
        Figure.draft(this, "payback", "When welding equipment has paid for itself")
            .takes(PRICE, SAVED, DEPOSIT, OPERATING)
            .gives("metal", "weld metal to lay", FigureUnit.MASS)
            .gives("time", "time by the clock", FigureUnit.HOURS)
            .by(
                "price / saving; / (deposit x operating)",
                "ESAB, Basic Welding Filler Metal Technology, lesson IX",
                "price=2800 saved_per_lb=7 deposit_lb_h=7.4 operating=50"));
  }

  private static Figure.Draft metal(Figure.Draft draft) {
    return draft
        .gives("area", "area", FigureUnit.AREA)
        .gives("weight_per_length", "weld metal per length", FigureUnit.MASS_PER_LENGTH)
        .gives("weight", "weld metal", FigureUnit.MASS);
  }

  @Override
  public void work(String name, FigureInputs given, FigureAnswers answers) {
    switch (name) {
      case "weld-metal" -> {
        double areaMm2 = fillet(given).areaLaidMm2(given.get(OVER));
        metal(areaMm2, given, answers);
      }
      case "groove-weld" -> groove(given, answers);
      case "plug-weld" -> {
        PlugWeld plug = new PlugWeld(given.get(HOLE), given.get(DEPTH));
        answers
            .put("volume", plug.volumeMm3())
            .put("weight", given.get(COUNT) * plug.volumeMm3() * WeldMetal.KG_PER_MM3);
      }
      case "wire-feed" -> {
        double meltOff = wire(given).meltOffKgPerHour();
        answers.put("melt_off", meltOff).put("deposit", process(given, 1).depositKgPerHour());
      }
      case "starting-current" -> start(given, answers);
      case "electrode-stub" ->
          answers.put(
              "efficiency",
              new StickElectrode(given.get(ELECTRODE), given.get(STUB), given.get(LAB_EFFICIENCY))
                  .depositionEfficiency());
      case "weld-time" -> time(given, answers);
      case "weld-cost" -> cost(given, answers);
      case "payback" -> {
        EquipmentPayback payback =
            new EquipmentPayback(
                given.get(PRICE),
                Shop.perPoundToPerKg(given.get(SAVED)),
                Shop.poundsToKg(given.get(DEPOSIT)),
                given.get(OPERATING));
        answers.put("metal", payback.depositKg()).put("time", payback.clockHours());
      }
      default -> throw FigureGroup.unknown(name);
    }
  }

  private static FilletWeld fillet(FigureInputs given) {
    Optional<Double> other = given.find(OTHER_LEG);
    return other.isPresent()
        ? new FilletWeld(given.get(LEG), other.get())
        : FilletWeld.ofLeg(given.get(LEG));
  }

  private static void metal(double areaMm2, FigureInputs given, FigureAnswers answers) {
    double kgPerMetre = WeldMetal.kgPerMetre(areaMm2);
    answers
        .put("area", areaMm2)
        .put("weight_per_length", kgPerMetre)
        .put("weight", kgPerMetre * given.get(LENGTH) / 1000);
  }

  private static void groove(FigureInputs given, FigureAnswers answers) {
    String shape = given.get(GROOVE).toLowerCase(Locale.ROOT);
    double thicknessMm = given.get(THICKNESS);
    if (shape.equals("square")) {
      BeadJoint square =
          new SquareGroove(
              thicknessMm, given.get(GAP), new WeldCap(given.get(CAP_WIDTH), given.get(CAP)));
      metal(square.areaMm2(), given, answers);
      return;
    }
    Optional<Double> angle = given.find(ANGLE);
    if (angle.isEmpty()) {
      throw new IllegalArgumentException(
          "angle: given nothing; allowed: the bevel of one plate, or the whole angle of a vee."
              + " Write it like angle=60.");
    }
    if (shape.equals("bevel")) {
      SingleBevelGroove bevel =
          new SingleBevelGroove(
              thicknessMm, given.get(GAP), given.get(LAND), angle.get(), given.get(CAP));
      metal(bevel.areaMm2(), given, answers);
      answers.put("face_width", bevel.faceWidthMm());
    } else {
      VGroove vee =
          new VGroove(thicknessMm, given.get(GAP), given.get(LAND), angle.get(), given.get(CAP));
      metal(vee.areaMm2(), given, answers);
      answers.put("face_width", vee.faceWidthMm());
    }
  }

  private static WireFeed wire(FigureInputs given) {
    double speed = Shop.toMm(given.get(WIRE_SPEED));
    Optional<Double> length = given.find(IN_PER_LB);
    return length.isPresent()
        ? new WireFeed(given.get(WIRE), speed, Shop.perPoundToPerKg(Shop.toMm(length.get())))
        : WireFeed.solidSteel(given.get(WIRE), speed);
  }

  private static WeldProcess process(FigureInputs given, double operating) {
    return new WeldProcess(
        "own", "as given", wire(given), given.get(EFFICIENCY), operating, operating, 0);
  }

  private static void start(FigureInputs given, FigureAnswers answers) {
    double amps = StartingCurrent.amps(given.get(PLATE));
    OptionalDouble feed = StartingCurrent.feedMmPerMin(given.get(START_WIRE), amps);
    answers.put("current", amps).put("wire_speed", feed, "no rule for this wire");
  }

  private static void time(FigureInputs given, FigureAnswers answers) {
    double operating = given.get(OPERATING);
    WeldProcess process =
        new WeldProcess(
            "own",
            "as given",
            wire(given),
            given.get(EFFICIENCY),
            operating,
            operating,
            Shop.cubicFeetToLitres(given.get(GAS_CFH)) / 60);
    WeldSeam seam =
        WeldSeam.alone(
            "fillet",
            FilletWeld.ofLeg(given.get(LEG)),
            given.get(LENGTH),
            1,
            WeldPosition.FLAT,
            WeldPlace.BENCH,
            Phrase.of("asked for"));
    SeamEstimate estimate =
        new WeldPractice(process, given.get(OVER), PositionFactors.NONE, 0).estimate(seam);
    answers
        .put("metal", estimate.depositKg())
        .put("wire", estimate.fillerKg())
        .put("gas", estimate.gasLitres())
        .put("arc", estimate.arcHours())
        .put("clock", estimate.clockHours())
        .put("travel", estimate.travelMmPerMin());
  }

  private static void cost(FigureInputs given, FigureAnswers answers) {
    DepositCost cost =
        new DepositCost(
            given.get(LABOUR),
            Shop.poundsToKg(given.get(DEPOSIT)),
            given.get(OPERATING),
            Shop.perPoundToPerKg(given.get(FILLER_PRICE)),
            given.get(EFFICIENCY),
            Shop.cubicFeetToLitres(given.get(GAS_CFH)),
            given.get(GAS_PRICE) / Shop.cubicFeetToLitres(1));
    answers
        .put("labour", cost.labourPerKg())
        .put("filler", cost.fillerPerDepositKg())
        .put("gas", cost.gasPerKg())
        .put("cost", cost.perKg());
  }
}
