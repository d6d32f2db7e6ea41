package trammel.trade.steel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class StockWeightTest {

  private static final double INCH = 25.4;
  private static final double KG_PER_M_IN_LB_PER_FT = 0.45359237 / 0.3048;

  private static double poundsPerFoot(SteelSection stock) {
    return stock.kgPerMetre() / KG_PER_M_IN_LB_PER_FT;
  }

  /** ASME B36.10M, weight of plain-end pipe, 10.69 (OD - w) w lb/ft, from memory; within 0.2 %. */
  @ParameterizedTest
  @CsvSource({"1.75, .120, 2.091", "2.00, .250, 4.677"})
  void roundTubeWeighsWhatTheFormulaOfPipeSays(
      double outsideIn, double wallIn, double poundsPerFoot) {
    RoundTube tube = new RoundTube(outsideIn * INCH, wallIn * INCH);
    assertEquals(poundsPerFoot, poundsPerFoot(tube), 0.002 * poundsPerFoot);
  }

  /**
   * Outside corners of 2t, inside corners of t: 2 t (h + w - 8 t) + 3 pi t² is 1.1053 in², times
   * 3.4032 lb/ft per in² (steel of 0.2836 lb/in³).
   */
  @Test
  void rectangularTubeWeighsByItsFlatsAndItsCorners() {
    RectangularTube tube = new RectangularTube(3 * INCH, 2 * INCH, 0.120 * INCH);
    assertEquals(3.761, poundsPerFoot(tube), 0.001);
  }

  /**
   * Square corners would weigh 3.884 lb/ft (derived with 3.40 lb/ft per in², 0.1 % under this
   * project's density): the rolled corner is what is missing.
   */
  @Test
  void rolledCornersAreLighterThanSharpOnes() {
    RectangularTube tube = new RectangularTube(3 * INCH, 2 * INCH, 0.120 * INCH);
    double sharpMm2 = 76.2 * 50.8 - (76.2 - 6.096) * (50.8 - 6.096);
    assertEquals(3.884, sharpMm2 * 1000 * Steel.KG_PER_MM3 / KG_PER_M_IN_LB_PER_FT, 0.005);
    assertTrue(tube.sectionAreaMm2() < sharpMm2);
  }

  /** Steel of 0.2836 lb/in³ is 3.403 t w lb/ft: 12 x 0.2836. */
  @Test
  void flatBarWeighsByItsArea() {
    assertEquals(1.7015, poundsPerFoot(new FlatBar(2 * INCH, INCH / 4)), 0.0005);
  }

  /** 2.67 lb/ft for 1 in round bar, 1 lb/ft is 2.67 d²: common steel tables, from memory. */
  @Test
  void roundBarWeighsWhatTheTablesSay() {
    assertEquals(2.67, poundsPerFoot(new RoundBar(INCH)), 0.005);
  }

  /** 1/4 in sheet of 4 by 8 ft at 0.2836 lb/in³: derived; trade table 10.2 lb/ft². */
  @Test
  void plateWeighsByItsArea() {
    PlateStock plate = new PlateStock(INCH / 4);
    assertEquals(326.7, plate.massKg(48 * INCH * 96 * INCH) / 0.45359237, 0.1);
    assertEquals(10.2, plate.massKg(144 * INCH * INCH) / 0.45359237, 0.02);
  }

  /**
   * Bare: weights of 15 U.S.C. 206, standard gauge for sheet and plate iron and steel, over the
   * 41.82 lb/ft² an inch of the Manufacturers' Standard Gage; galvanised: the usual table; both
   * from memory.
   */
  @ParameterizedTest
  @CsvSource({
    "8, .1644, .1681",
    "10, .1345, .1382",
    "11, .1196, .1233",
    "12, .1046, .1084",
    "14, .0747, .0785",
    "16, .0598, .0635",
    "18, .0478, .0516",
    "20, .0359, .0396",
    "22, .0299, .0336",
    "24, .0239, .0276",
    "26, .0179, .0217"
  })
  void gaugeSheetHasItsTableThickness(int number, double bareIn, double galvanisedIn) {
    SheetGauge gauge = SheetGauge.numbered(number).orElseThrow();
    assertEquals(bareIn * INCH, gauge.thicknessMm(), 1e-9);
    assertEquals(galvanisedIn * INCH, gauge.galvanisedMm().orElseThrow(), 1e-9);
  }

  /** Same tables: 7 gauge .1793, no galvanised row; 10 gauge 5.625 lb/ft². */
  @Test
  void gaugeSheetIsSoldByItsOwnWeight() {
    assertTrue(SheetGauge.GAUGE_7.galvanisedMm().isEmpty());
    assertEquals(0.1793 * INCH, SheetGauge.GAUGE_7.thicknessMm(), 1e-9);
    double kgPerSquareFoot = SheetGauge.GAUGE_10.kgPerMm2() * 144 * INCH * INCH;
    assertEquals(5.625, kgPerSquareFoot / 0.45359237, 0.001);
    assertTrue(SheetGauge.numbered(21).isEmpty());
  }

  /** Closed form: a tube and the bar that fills its bore weigh as much as solid bar. */
  @Seeds(100)
  void tubeAndItsCoreAreSolidBar(Draw draw) {
    double outsideMm = draw.between(20, 200);
    double wallMm = draw.between(0.5, 9);
    RoundTube tube = new RoundTube(outsideMm, wallMm);
    double together = tube.kgPerMetre() + new RoundBar(tube.insideMm()).kgPerMetre();
    assertEquals(new RoundBar(outsideMm).kgPerMetre(), together, 1e-9 * together);
  }

  @ParameterizedTest
  @CsvSource({"44.45, 0", "44.45, -1", "44.45, 22.3", "0, 1", "NaN, 1", "44.45, NaN"})
  void tubeThatCannotBeIsRefusedWithWhatToDo(double outsideMm, double wallMm) {
    String message =
        assertThrows(IllegalArgumentException.class, () -> new RoundTube(outsideMm, wallMm))
            .getMessage();
    assertTrue(message.matches("The .+ \\(.+\\) must be .+\\. .+"), message);
  }

  @Test
  void otherImpossibleStockIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new RectangularTube(50, 60, 2));
    assertThrows(IllegalArgumentException.class, () -> new RectangularTube(50, 20, 6));
    assertThrows(IllegalArgumentException.class, () -> new FlatBar(6, 50));
    assertThrows(IllegalArgumentException.class, () -> new RoundBar(0));
    assertThrows(IllegalArgumentException.class, () -> new PlateStock(-1));
    assertThrows(IllegalArgumentException.class, () -> new RoundBar(10).massKg(-1));
    assertThrows(IllegalArgumentException.class, () -> new PlateStock(6).massKg(Double.NaN));
  }
}
