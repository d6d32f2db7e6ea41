package trammel.trade.welding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import trammel.engine.quantity.Phrase;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class WeldPracticeTest {

  private static final double INCH = 25.4;
  private static final double POUND = 0.45359237;
  private static final double CUBIC_FOOT_L = 28.316846592;

  /**
   * Wire of .035 in at 220 in/min, 3648 in of it in a pound (ESAB); 30 cubic feet of gas an hour.
   */
  private static final WeldProcess MIG =
      new WeldProcess(
          "mig",
          "MIG, solid wire",
          new WireFeed(0.035 * INCH, 220 * INCH, 3648 * INCH / POUND),
          0.94,
          0.35,
          0.20,
          30 * CUBIC_FOOT_L / 60);

  /** ESAB, MIG Handbook, p. 7-10: inches of mild steel wire in a pound; geometry is 1 % higher. */
  @ParameterizedTest
  @CsvSource({".030, 4956, 4999", ".035, 3648, 3673", ".045, 2196, 2222", ".0625, 1152, 1152"})
  void wireInAPoundIsNearThePublishedTable(double wireIn, double published, double geometric) {
    WireFeed wire = WireFeed.solidSteel(wireIn * INCH, 5000);
    double inchesPerPound = wire.wireMmPerKg() * POUND / INCH;
    assertEquals(published, inchesPerPound, 0.015 * published);
    assertEquals(geometric, inchesPerPound, 1);
  }

  /** ESAB, MIG Handbook, p. 7-10, its wire lengths; deposited at 96 % derived. */
  @ParameterizedTest
  @CsvSource({"220, 3648, 3.618, 3.474", "250, 4956, 3.027, 2.906"})
  void wireFeedSetsTheDeposit(
      double feedInPerMin, double inchesPerPound, double meltOff, double deposited) {
    WireFeed wire = new WireFeed(0.9, feedInPerMin * INCH, inchesPerPound * INCH / POUND);
    assertEquals(meltOff, wire.meltOffKgPerHour() / POUND, 0.0005);
    WeldProcess process = new WeldProcess("test", "test", wire, 0.96, 0.35, 0.2, 14);
    assertEquals(deposited, process.depositKgPerHour() / POUND, 0.0006);
  }

  /** ESAB, Basic Welding Filler Metal Technology, lesson IX: 55.7 % and 58.3 %. */
  @ParameterizedTest
  @CsvSource({"14, 2, .65, .557", "18, 4, .75, .583"})
  void stubLowersTheEfficiency(double lengthIn, double stubIn, double lab, double expected) {
    StickElectrode stick = new StickElectrode(lengthIn * INCH, stubIn * INCH, lab);
    assertEquals(expected, stick.depositionEfficiency(), 0.0005);
  }

  private static WeldPractice practiceOfConstructedShop() {
    WireFeed wire = new WireFeed(0.035 * INCH, 220 * INCH, 3648 * INCH / POUND);
    double gasLitresPerMin = 30 * CUBIC_FOOT_L / 60;
    WeldProcess process = new WeldProcess("a", "shop A", wire, 0.96, 0.25, 0.15, gasLitresPerMin);
    return new WeldPractice(process, 0.10, PositionFactors.NONE, 0);
  }

  private static WeldSeam fillet(double lengthMm, WeldPosition position, WeldPlace place) {
    return WeldSeam.alone(
        "seam",
        FilletWeld.ofLeg(0.1875 * INCH),
        lengthMm,
        1,
        position,
        place,
        Phrase.of("invented"));
  }

  /**
   * Constructed on the ESAB formulas: 140 in of 3/16 fillet laid 10 % larger; metal .8427 lb, wire
   * .8778 lb $2.81, arc .2426 h, clock .9704 h $92.19, gas 7.278 ft³ $1.46, total $96.45, 9.62
   * in/min.
   */
  @Test
  void constructedShopWeldsItsSeam() {
    SeamEstimate seam =
        practiceOfConstructedShop()
            .estimate(fillet(140 * INCH, WeldPosition.FLAT, WeldPlace.BENCH));
    assertEquals(0.8427, seam.depositKg() / POUND, 0.00006);
    assertEquals(0.8778, seam.fillerKg() / POUND, 0.00006);
    assertEquals(0.2426, seam.arcHours(), 0.00006);
    assertEquals(3.4737, seam.depositKg() / POUND / seam.arcHours(), 0.00006);
    assertEquals(0.9704, seam.clockHours(), 0.00006);
    assertEquals(7.278, seam.gasLitres() / CUBIC_FOOT_L, 0.001);
    assertEquals(9.62, seam.travelMmPerMin() / INCH, 0.005);
    double wire = seam.fillerKg() / POUND * 3.20;
    double labour = seam.clockHours() * 95;
    double gas = seam.gasLitres() / CUBIC_FOOT_L * 0.20;
    assertEquals(2.81, wire, 0.005);
    assertEquals(92.19, labour, 0.005);
    assertEquals(1.46, gas, 0.005);
    assertEquals(96.45, wire + labour + gas, 0.005);
  }

  /** ESAB, Filler Metal Data Handbook, p. 8-8: 9.80 + 2.05 + .08 = 11.93 $/lb. */
  @Test
  void costOfAPoundIsThePublishedExample() {
    DepositCost cost =
        new DepositCost(
            45, 10.2 * POUND, 0.45, 1.78 / POUND, 0.87, 40 * CUBIC_FOOT_L, 0.02 / CUBIC_FOOT_L);
    assertEquals(9.80, cost.labourPerKg() * POUND, 0.005);
    assertEquals(2.05, cost.fillerPerDepositKg() * POUND, 0.005);
    assertEquals(0.08, cost.gasPerKg() * POUND, 0.005);
    assertEquals(11.93, cost.perKg() * POUND, 0.005);
  }

  /** The cost of a kilogram and the estimate of a seam are the same formula. */
  @Test
  void costOfAPoundAgreesWithTheSeam() {
    WeldPractice practice = practiceOfConstructedShop();
    SeamEstimate seam = practice.estimate(fillet(500, WeldPosition.FLAT, WeldPlace.BENCH));
    WeldProcess process = practice.process();
    DepositCost cost =
        new DepositCost(
            95, process.depositKgPerHour(), 0.25, 7, 0.96, process.gasLitresPerMin() * 60, 0.007);
    double bySeam = seam.clockHours() * 95 + seam.fillerKg() * 7 + seam.gasLitres() * 0.007;
    assertEquals(bySeam, cost.perKg() * seam.depositKg(), 1e-9);
  }

  /** ESAB, Basic Welding Filler Metal Technology, lesson IX: 400 lb, 108.1 h, 13.5 days of 8 h. */
  @Test
  void purchasePaysBackAsPublished() {
    EquipmentPayback payback = new EquipmentPayback(2800, 7.00 / POUND, 7.4 * POUND, 0.50);
    assertEquals(400, payback.depositKg() / POUND, 1e-9);
    assertEquals(108.1, payback.clockHours(), 0.05);
    assertEquals(13.5, payback.clockHours() / 8, 0.05);
  }

  /** Welder owner's manual OM-283007, p. 27: 62.5 A takes 219, 125 and 100 in/min. */
  @ParameterizedTest
  @CsvSource({".024, 219", ".030, 125", ".035, 100"})
  void startingFeedFollowsTheThickness(double wireIn, double feedInPerMin) {
    double amps = StartingCurrent.amps(0.0625 * INCH);
    assertEquals(62.5, amps, 1e-9);
    double feed = StartingCurrent.feedMmPerMin(wireIn * INCH, amps).orElseThrow();
    assertEquals(feedInPerMin, feed / INCH, 0.5);
  }

  @Test
  void startingFeedOfAnotherWireIsNotGuessed() {
    assertTrue(StartingCurrent.feedMmPerMin(1.6, 100).isEmpty());
  }

  @ParameterizedTest
  @EnumSource(WeldPosition.class)
  void positionCostsTimeAndGasButNoMetal(WeldPosition position) {
    WeldPractice practice = new WeldPractice(MIG, 0.1, PositionFactors.COMMON, 0.5);
    SeamEstimate flat = practice.estimate(fillet(300, WeldPosition.FLAT, WeldPlace.BENCH));
    SeamEstimate placed = practice.estimate(fillet(300, position, WeldPlace.BENCH));
    double factor = PositionFactors.COMMON.of(position);
    assertEquals(flat.fillerKg(), placed.fillerKg(), 1e-12);
    assertEquals(flat.clockHours() * factor, placed.clockHours(), 1e-12);
    assertEquals(flat.gasLitres() * factor, placed.gasLitres(), 1e-9);
  }

  /** Given by the operating factors: .35 at the bench against .20 under the vehicle. */
  @Test
  void underTheVehicleTakesLonger() {
    WeldPractice practice = new WeldPractice(MIG, 0.1, PositionFactors.NONE, 0.5);
    SeamEstimate bench = practice.estimate(fillet(300, WeldPosition.FLAT, WeldPlace.BENCH));
    SeamEstimate vehicle = practice.estimate(fillet(300, WeldPosition.FLAT, WeldPlace.VEHICLE));
    assertEquals(0.35 / 0.20, vehicle.clockHours() / bench.clockHours(), 1e-9);
  }

  @Test
  void onlyRestartsCostTime() {
    WeldPractice practice = new WeldPractice(MIG, 0.1, PositionFactors.NONE, 0.5);
    WeldSeam through = fillet(600, WeldPosition.FLAT, WeldPlace.BENCH);
    WeldSeam skipped = through.inSteps(new SkipSequence(600, 75));
    assertEquals(8, skipped.starts());
    double difference =
        practice.estimate(skipped).clockHours() - practice.estimate(through).clockHours();
    assertEquals(7 * 0.5 / 60, difference, 1e-12);
  }

  /** Conservation: twice the weld is twice the metal, the wire, the gas and the time. */
  @Seeds(50)
  void twiceTheWeldIsTwiceTheWire(Draw draw) {
    double lengthMm = draw.between(10, 2000);
    WeldPosition position = draw.oneOf(WeldPosition.class);
    WeldPlace place = draw.oneOf(WeldPlace.class);
    WeldPractice practice = practiceOfConstructedShop();
    SeamEstimate once = practice.estimate(fillet(lengthMm, position, place));
    SeamEstimate twice = practice.estimate(fillet(2 * lengthMm, position, place));
    assertEquals(2 * once.depositKg(), twice.depositKg(), 1e-12);
    assertEquals(2 * once.fillerKg(), twice.fillerKg(), 1e-12);
    assertEquals(2 * once.gasLitres(), twice.gasLitres(), 1e-9);
    assertEquals(2 * once.clockHours(), twice.clockHours(), 1e-12);
  }

  @Seeds(50)
  void listIsTheSumOfItsLines(Draw draw) {
    double lengthMm = draw.between(10, 2000);
    int count = draw.whole(1, 20);
    WeldPractice practice = practiceOfConstructedShop();
    WeldSeam bench = fillet(lengthMm, WeldPosition.FLAT, WeldPlace.BENCH);
    WeldSeam plugs =
        WeldSeam.spots(
            "plugs",
            new PlugWeld(12, 5),
            Collections.nCopies(count, WeldRun.ofLength(0)),
            WeldPosition.FLAT,
            WeldPlace.VEHICLE,
            Phrase.of("invented"));
    WeldEstimate list = practice.estimate(List.of(bench, plugs));
    SeamEstimate first = practice.estimate(bench);
    SeamEstimate second = practice.estimate(plugs);
    assertEquals(lengthMm, list.lengthMm(), 1e-9);
    assertEquals(first.depositKg() + second.depositKg(), list.depositKg(), 1e-12);
    assertEquals(first.fillerKg() + second.fillerKg(), list.fillerKg(), 1e-12);
    assertEquals(first.gasLitres() + second.gasLitres(), list.gasLitres(), 1e-9);
    assertEquals(first.arcHours() + second.arcHours(), list.arcHours(), 1e-12);
    assertEquals(second.clockHours(), list.clockHours(WeldPlace.VEHICLE), 1e-12);
    assertEquals(
        list.clockHours(WeldPlace.BENCH) + list.clockHours(WeldPlace.VEHICLE),
        list.clockHours(),
        1e-12);
  }

  @Test
  void processesThatCannotBeAreRefused() {
    WireFeed wire = WireFeed.solidSteel(0.9, 5000);
    assertThrows(
        IllegalArgumentException.class, () -> new WeldProcess("k", "t", wire, 1.1, 0.3, 0.2, 14));
    assertThrows(
        IllegalArgumentException.class, () -> new WeldProcess("k", "t", wire, 0.9, 0, 0.2, 14));
    assertThrows(IllegalArgumentException.class, () -> WireFeed.solidSteel(0, 5000));
    assertThrows(IllegalArgumentException.class, () -> new PositionFactors(0.9, 1, 1));
    assertThrows(IllegalArgumentException.class, () -> new StickElectrode(350, 350, 0.6));
  }
}
