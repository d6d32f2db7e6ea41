package trammel.trade.welding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.engine.quantity.Phrase;

/** Source of the printed figures: ESAB, Filler Metal Data Handbook, section 8, unless named. */
class WeldMetalTest {

  private static final double INCH = 25.4;
  private static final double POUND = 0.45359237;

  private static double poundsPerFoot(double areaMm2) {
    return WeldMetal.kgPerMetre(areaMm2) * 0.3048 / POUND;
  }

  @ParameterizedTest
  @CsvSource({
    ".125, .0265, .027",
    ".1875, .0597, .060",
    ".25, .1061, .106",
    ".375, .2388, .239",
    ".5, .4245, .424"
  })
  void filletWeighsWhatTheTablePrints(double legIn, double exact, double printed) {
    double weight = poundsPerFoot(FilletWeld.ofLeg(legIn * INCH).areaMm2());
    assertEquals(exact, weight, 0.00006);
    assertEquals(printed, weight, 0.0006);
  }

  @ParameterizedTest
  @CsvSource({"6.35, .158", "12.7, .632"})
  void metricFilletWeighsWhatTheTablePrints(double legMm, double printedKgPerMetre) {
    // The metric table rounds the density up to 7.85; 0.283 lb/in³ is 7.833.
    double weight = WeldMetal.kgPerMetre(FilletWeld.ofLeg(legMm).areaMm2());
    assertEquals(printedKgPerMetre, weight, 0.003 * printedKgPerMetre);
  }

  /** Derived: 3/16 leg laid 10 % larger, .07223 lb/ft. */
  @Test
  void heavyHandGrowsBothLegs() {
    FilletWeld fillet = FilletWeld.ofLeg(0.1875 * INCH);
    assertEquals(0.07223, poundsPerFoot(fillet.areaLaidMm2(0.10)), 0.00001);
    assertEquals(FilletWeld.ofLeg(1.1 * 0.1875 * INCH).areaMm2(), fillet.areaLaidMm2(0.10), 1e-9);
  }

  /** Procedure Handbook of Arc Welding, table 12-1, as reprinted in the trade press: .819 lb. */
  @Test
  void filletOfTheProcedureHandbookWeighsWhatItPrints() {
    WeldSeam seam =
        WeldSeam.alone(
            "handbook",
            FilletWeld.ofLeg(INCH / 4),
            76.5 * INCH,
            1,
            WeldPosition.FLAT,
            WeldPlace.BENCH,
            Phrase.of("published case"));
    double volumeIn3 = seam.depositMm3(0.10) / (INCH * INCH * INCH);
    assertEquals(2.893, volumeIn3, 0.001);
    assertEquals(0.0378, volumeIn3 / 76.5, 0.0001);
    assertEquals(0.8186, volumeIn3 * 0.283, 0.0002);
  }

  @Test
  void grooveElementsWeighWhatTheTablePrints() {
    WeldCap flush = new WeldCap(0, 0);
    double gapOnly = new SquareGroove(INCH / 4, INCH / 8, flush).areaMm2();
    assertEquals(0.1061, poundsPerFoot(gapOnly), 0.00006);
    double bevel =
        new SingleBevelGroove(INCH / 4, INCH / 8, 0, Math.toRadians(30), 0).areaMm2() - gapOnly;
    assertEquals(0.0613, poundsPerFoot(bevel), 0.00006);
    WeldCap cap = new WeldCap(0.375 * INCH, INCH / 16);
    assertEquals(0.0531, poundsPerFoot(cap.areaMm2()), 0.00006);
    assertEquals(
        0.1061 + 0.0531,
        poundsPerFoot(new SquareGroove(INCH / 4, INCH / 8, cap).areaMm2()),
        0.0001);
  }

  /** Derived from the elements: T 1/4, gap 1/8, 60°: .2287 lb/ft bare, .2872 with 1/16 cap. */
  @Test
  void vGrooveIsTheSumOfItsElements() {
    VGroove bare = new VGroove(INCH / 4, INCH / 8, 0, Math.toRadians(60), 0);
    assertEquals(0.06733, bare.areaMm2() / (INCH * INCH), 0.000005);
    assertEquals(0.2287, poundsPerFoot(bare.areaMm2()), 0.00006);
    assertEquals(0.228, poundsPerFoot(bare.areaMm2()), 0.001);
    assertEquals(0.4137, bare.faceWidthMm() / INCH, 0.00005);
    VGroove capped = new VGroove(INCH / 4, INCH / 8, 0, Math.toRadians(60), INCH / 16);
    assertEquals(0.2872, poundsPerFoot(capped.areaMm2()), 0.00006);
  }

  /** Derived: pi d² h / 4 each, .01389 and .00407 lb. */
  @ParameterizedTest
  @CsvSource({".5, .25, .01389", ".3125, .1875, .00407"})
  void plugIsTheVolumeOfItsHole(double diameterIn, double depthIn, double pounds) {
    PlugWeld plug = new PlugWeld(diameterIn * INCH, depthIn * INCH);
    assertEquals(pounds, plug.volumeMm3() * WeldMetal.KG_PER_MM3 / POUND, 0.000005);
  }

  /** Closed form: a slot as long as it is wide is a plug. */
  @Test
  void shortestSlotIsAPlug() {
    assertEquals(new PlugWeld(12, 5).volumeMm3(), new SlotWeld(12, 12, 5).volumeMm3(), 1e-9);
    assertEquals(
        new PlugWeld(12, 5).volumeMm3() + 12 * 30 * 5, new SlotWeld(12, 42, 5).volumeMm3(), 1e-9);
  }

  /** Closed form: throat of an equal fillet is leg / √2. */
  @Test
  void throatIsTheLeastWayThroughTheFillet() {
    assertEquals(6 / Math.sqrt(2), FilletWeld.ofLeg(6).throatMm(), 1e-12);
    assertEquals(2.4, new FilletWeld(3, 4).throatMm(), 1e-12);
  }

  @Test
  void weldsThatCannotBeAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> FilletWeld.ofLeg(0));
    assertThrows(IllegalArgumentException.class, () -> FilletWeld.ofLeg(Double.NaN));
    WeldCap flush = new WeldCap(0, 0);
    assertThrows(IllegalArgumentException.class, () -> new SquareGroove(6, 0, flush));
    assertThrows(IllegalArgumentException.class, () -> new VGroove(6, 3, 7, 1, 0));
    assertThrows(IllegalArgumentException.class, () -> new SlotWeld(12, 10, 5));
    assertThrows(
        IllegalArgumentException.class,
        () ->
            WeldSeam.alone(
                "no length",
                FilletWeld.ofLeg(5),
                0,
                1,
                WeldPosition.FLAT,
                WeldPlace.BENCH,
                Phrase.of("invented")));
  }
}
