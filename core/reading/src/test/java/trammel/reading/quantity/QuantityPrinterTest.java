package trammel.reading.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class QuantityPrinterTest {
  private static final QuantityPrinter US = new QuantityPrinter(UnitSystem.US);
  private static final QuantityPrinter METRIC = new QuantityPrinter(UnitSystem.METRIC);

  @ParameterizedTest
  @CsvSource({
    "749.3,    29 1/2 in",
    "-4.7625,  -3/16 in",
    "-749.3,   -29 1/2 in",
    "0,        0 in",
    "-0.3,     0 in",
    "25.4,     1 in",
    "25.3,     1 in",
    "24.9,     31/32 in",
    "0.79375,  1/32 in",
    "0.39,     0 in",
    "0.40,     1/32 in",
    "3021.80625, 118 31/32 in",
    "1612.9,   63 1/2 in"
  })
  void inchesArePrintedToTheNearestThirtySecondReduced(double lengthMm, String text) {
    assertEquals(text, US.length(lengthMm));
  }

  @Test
  void feetAppearOnlyWhenAskedFor() {
    assertEquals("5' 3 1/2\"", QuantityPrinter.feetAndInches(1612.9));
    assertEquals("5'", QuantityPrinter.feetAndInches(1524));
    assertEquals("11 31/32\"", QuantityPrinter.feetAndInches(304));
    assertEquals("0\"", QuantityPrinter.feetAndInches(0));
    assertEquals("-1' 1\"", QuantityPrinter.feetAndInches(-330.2));
  }

  @Test
  void otherKindsArePrintedInShopUnits() {
    assertEquals("29.500 in", US.decimalLength(749.3, 3));
    assertEquals("2.1 deg", US.angle(Math.toRadians(2.13)));
    assertEquals("-2.13 deg", US.angle(Math.toRadians(-2.13), 2));
    assertEquals("0.0 deg", US.angle(-1e-9));
    assertEquals("820 lb", US.mass(371.9457434));
    assertEquals("12.5 lb", US.mass(12.5 * 0.45359237));
    assertEquals("180 lb/in", US.rate(31.5228303));
    assertEquals("300 lb-ft", US.torque(406745.38));
    assertEquals("80.0 psi", US.pressure(0.55158));
    assertEquals("50.0 ksi", US.stress(344.738));
    assertEquals("60.0 mph", US.speed(26.8224));
    assertEquals("1200 lb", US.force(5337.866));
    assertEquals("3000 rpm", US.rotation(3000.2));
    assertEquals("2.5 h", US.hours(2.5));
    assertEquals("65 %", US.percent(0.65));
    assertEquals("8.25 %", US.percent(0.0825));
  }

  /** A rate of sales tax often has three decimals; a rounded one is another rate. */
  @Test
  void aGivenPercentageIsPrintedAsItIs() {
    assertEquals("6.875 %", QuantityPrinter.percent(new BigDecimal("0.06875")));
    assertEquals("100 %", QuantityPrinter.percent(new BigDecimal("1.00")));
    assertEquals("0 %", QuantityPrinter.percent(new BigDecimal("0.000")));
    assertEquals("33.3333 %", QuantityPrinter.percent(new BigDecimal("0.333333")));
  }

  @Test
  void metricIsPrintedInMillimetresAndNewtons() {
    assertEquals("749.3 mm", METRIC.length(749.3));
    assertEquals("0.0 mm", METRIC.length(-0.04));
    assertEquals("749.30 mm", METRIC.decimalLength(749.3, 3));
    assertEquals("372 kg", METRIC.mass(372));
    assertEquals("31.5 N/mm", METRIC.rate(31.5));
    assertEquals("400 Nm", METRIC.torque(400000));
    assertEquals("550 kPa", METRIC.pressure(0.55));
    assertEquals("355 MPa", METRIC.stress(355));
    assertEquals("96.6 km/h", METRIC.speed(26.8224));
    assertEquals("5338 N", METRIC.force(5337.866));
  }

  @Seeds(1000)
  void printedInchesAreReadBackExactly(Draw draw) {
    int parts = draw.whole(-9600, 9600);
    double lengthMm = parts * 254.0 / 320.0;
    assertEquals(
        lengthMm,
        Quantities.parse(US.length(lengthMm), QuantityKind.LENGTH, UnitSystem.METRIC),
        0.0);
  }

  @Seeds(1000)
  void printedLengthIsReadBackToHalfAStep(Draw draw) {
    double lengthMm = draw.between(-1e5, 1e5);
    assertEquals(
        lengthMm,
        Quantities.parse(US.length(lengthMm), QuantityKind.LENGTH, UnitSystem.US),
        25.4 / 64 + 1e-9);
    assertEquals(
        lengthMm,
        Quantities.parse(METRIC.length(lengthMm), QuantityKind.LENGTH, UnitSystem.US),
        0.05 + 1e-9);
    assertEquals(
        lengthMm,
        Quantities.parse(
            QuantityPrinter.feetAndInches(lengthMm), QuantityKind.LENGTH, UnitSystem.US),
        25.4 / 64 + 1e-9);
  }

  @Seeds(1000)
  void printedValueOfEveryKindIsReadBackToItsLastPlace(Draw draw) {
    QuantityKind kind = draw.oneOf(QuantityKind.class);
    UnitSystem system = draw.oneOf(UnitSystem.class);
    double shopValue = draw.between(-5000, 5000);
    double inside = shopValue * kind.bareUnit(system).factor();
    String printed = new QuantityPrinter(system).print(inside, kind);
    double step = kind == QuantityKind.LENGTH && system == UnitSystem.US ? 1.0 / 32 : 1;
    assertEquals(
        inside,
        Quantities.parse(printed, kind, system),
        kind.bareUnit(system).factor() * (step / 2 + 1e-9));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void whatIsNotANumberIsNeverPrinted(double bad) {
    for (QuantityKind kind : QuantityKind.values()) {
      assertThrows(IllegalArgumentException.class, () -> US.print(bad, kind));
      assertThrows(IllegalArgumentException.class, () -> METRIC.print(bad, kind));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "0.5, 0, 1",
    "-0.5, 0, -1",
    "-0.4, 0, 0",
    "1.005, 1, 1.0",
    "0, 2, 0.00",
    "12.3456, 3, 12.346",
    "99999.99, 1, 100000.0",
    "0.07, 2, 0.07",
    "1e16, 1, 10000000000000000.0"
  })
  void decimalIsRoundedHalfAwayFromZero(double number, int places, String text) {
    assertEquals(text, DecimalText.fixed(number, places));
  }

  @Test
  void trimmedDecimalHasNoZerosAtTheEnd() {
    assertEquals("12.5", DecimalText.trimmed(12.5, 4));
    assertEquals("12", DecimalText.trimmed(12.00001, 4));
    assertEquals("100", DecimalText.trimmed(100, 0));
    assertEquals("-0.1", DecimalText.trimmed(-0.1, 3));
  }

  @ParameterizedTest
  @EnumSource(Unit.class)
  void conversionToAUnitUndoesTheConversionFromIt(Unit unit) {
    assertEquals(7.25, unit.fromInside(7.25 * unit.factor()), 1e-12);
    assertTrue(unit.factor() > 0);
  }
}
