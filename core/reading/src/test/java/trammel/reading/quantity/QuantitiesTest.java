package trammel.reading.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class QuantitiesTest {
  private static final List<String> PIECES =
      List.of(
          "29",
          "1",
          "0",
          "1/2",
          "/",
          " ",
          "-",
          "+",
          ".",
          ".5",
          "in",
          "\"",
          "'",
          "ft",
          "mm",
          "m",
          "deg",
          "°",
          "lb",
          "lb/in",
          "%",
          "kg",
          ",",
          "e",
          "99999999999999999999",
          "½",
          "\u0000");

  /** One inch is 25.4 mm exactly (international inch, NIST SP 811 appendix B). */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "29 1/2 in      | 749.3",
        "29-1/2\"       | 749.3",
        "29-1/2 in      | 749.3",
        "29.5in         | 749.3",
        "29.5 in        | 749.3",
        "29.50 inches   | 749.3",
        "29 1/2         | 749.3",
        "+29.5          | 749.3",
        "  29   1/2  in | 749.3",
        "29 1/2\u2033   | 749.3",
        "29 1/2\u201d   | 749.3",
        "29 1/2 IN      | 749.3",
        "29 1/2 in.     | 749.3",
        "3/16 in        | 4.7625",
        "-3/16 in       | -4.7625",
        "\u22123/16 in  | -4.7625",
        "-29 1/2 in     | -749.3",
        "1/64 in        | 0.396875",
        ".5 in          | 12.7",
        "0 in           | 0",
        "-0 in          | 0",
        "5' 3 1/2\"     | 1612.9",
        "5'3 1/2\"      | 1612.9",
        "5'-3 1/2\"     | 1612.9",
        "5 ft 3 1/2 in  | 1612.9",
        "5 ft. 3 1/2 in | 1612.9",
        "-5' 3 1/2\"    | -1612.9",
        "5' 0\"         | 1524",
        "5'             | 1524",
        "5.5 ft         | 1676.4",
        "1/2 ft         | 152.4",
        "5' .5\"        | 1536.7",
        "750 mm         | 750",
        "750mm          | 750",
        "2.5 cm         | 25",
        "1.2 m          | 1200",
        "0.083 in       | 2.1082",
        "118 31/32 in   | 3021.80625"
      })
  void lengthIsReadInInchesFeetAndMetric(String text, double lengthMm) {
    assertEquals(lengthMm, Quantities.parse(text, QuantityKind.LENGTH, UnitSystem.US), 0.0);
  }

  /** Factors to seven digits: NIST SP 811 appendix B.8, from memory. */
  @ParameterizedTest
  @CsvSource({
    "1 lb,          MASS,     0.45359237,   1e-12",
    "820 lbs,       MASS,     371.9457434,  1e-9",
    "372 kg,        MASS,     372,          0",
    "1 lb,          FORCE,    4.448222,     5e-7",
    "1 lbf,         FORCE,    4.448222,     5e-7",
    "5.3 kN,        FORCE,    5300,         0",
    "12 N,          FORCE,    12,           0",
    "1 lb/in,       RATE,     0.1751268,    5e-8",
    "1 lbs/in,      RATE,     0.1751268,    5e-8",
    "31.5 N/mm,     RATE,     31.5,         0",
    "31.5 kN/m,     RATE,     31.5,         0",
    "1 lb-ft,       TORQUE,   1355.818,     5e-4",
    "1 ft-lb,       TORQUE,   1355.818,     5e-4",
    "1 ft lb,       TORQUE,   1355.818,     5e-4",
    "1 in-lb,       TORQUE,   112.9848,     5e-5",
    "400 Nm,        TORQUE,   400000,       0",
    "400 N·m,       TORQUE,   400000,       0",
    "1 psi,         PRESSURE, 0.006894757,  5e-10",
    "1 ksi,         PRESSURE, 6.894757,     5e-7",
    "550 kPa,       PRESSURE, 0.55,         0",
    "5.5 bar,       PRESSURE, 0.55,         1e-16",
    "355 MPa,       PRESSURE, 355,          0",
    "60 mph,        SPEED,    26.8224,      1e-13",
    "100 km/h,      SPEED,    27.7777778,   5e-8",
    "3000 rpm,      ROTATION, 3000,         0",
    "2.5 h,         TIME,     2.5,          0",
    "1 1/2 hours,   TIME,     1.5,          0",
    "90 min,        TIME,     1.5,          0",
    "65 %,          PERCENT,  0.65,         0",
    "65,            PERCENT,  0.65,         0",
    "8.25%,         PERCENT,  0.0825,       0",
    "0.5 %,         PERCENT,  0.005,        0",
    "180 deg,       ANGLE,    3.141592653589793, 1e-15",
    "-2 deg,        ANGLE,    -0.034906585, 5e-10",
    "1.5°,          ANGLE,    0.026179939,  5e-10",
    "1.5,           ANGLE,    0.026179939,  5e-10"
  })
  void otherKindsAreRead(String text, QuantityKind kind, double inside, double tolerance) {
    assertEquals(inside, Quantities.parse(text, kind, UnitSystem.US), tolerance);
  }

  @ParameterizedTest
  @CsvSource({
    "LENGTH, 25.4, 1",
    "ANGLE, 0.017453292519943295, 0.017453292519943295",
    "MASS, 0.45359237, 1",
    "FORCE, 4.4482216152605, 1",
    "RATE, 0.17512683524647636, 1",
    "TORQUE, 1355.8179483314004, 1000",
    "PRESSURE, 0.0068947572931683, 0.001",
    "SPEED, 0.44704, 0.2777777777777778",
    "ROTATION, 1, 1",
    "TIME, 1, 1"
  })
  void bareNumberTakesTheUnitSystem(QuantityKind kind, double us, double metric) {
    assertEquals(us, Quantities.parse("1", kind, UnitSystem.US), us * 1e-13);
    assertEquals(metric, Quantities.parse("1", kind, UnitSystem.METRIC), metric * 1e-13);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "1/2/3          | more than one number",
        "29 1/2 1/4     | more than one number",
        "1,5            | comma",
        "1,250 mm       | comma",
        "10 deg         | deg is for an angle",
        "10 lb          | lb is for a weight",
        "3 1            | side by side",
        "3 1 in         | side by side",
        "29-1           | side by side",
        "29 - 1/2 in    | unit",
        "29 -1/2 in     | unit",
        "11/2 in        | space may be missing",
        "1 4/4 in       | space may be missing",
        "1/3 in         | halves, quarters",
        "1/0 in         | halves, quarters",
        "1/128 in       | halves, quarters",
        "1/ in          | whole fraction",
        "/2 in          | start with a number",
        "1.5 1/2 in     | more than one number",
        "1.5/2 in       | more than one number",
        "1.2.3          | more than one number",
        "1. in          | after the point",
        ". in           | start with a number",
        "in             | start with a number",
        "''             | start with a number",
        "--1 in         | start with a number",
        "- in           | start with a number",
        "5' 3           | inches with their mark",
        "5' 3'          | inches with their mark",
        "5' 14\"        | less than 12",
        "5' 3 1/2 1/4\" | more than one number",
        "5' 3\" 2\"     | inches with their mark",
        "5 1/2 ft 3 in  | more than one number",
        "29 in 1/2      | more than one number",
        "1e3 mm         | unit e",
        "0x10 mm        | unit x",
        "1_000 mm       | unit _",
        "NaN            | start with a number",
        "Infinity       | start with a number",
        "29 1/2 mm      | Fractions are for inches",
        "12 furlong     | unit furlong",
        "29 \u00bd in   | unit",
        "12345678901234567 mm | too many digits",
        "about 30 in    | start with a number",
        "30 in or so    | unit in or so"
      })
  void ambiguousLengthIsRefusedWithARemedy(String text, String remedy) {
    QuantityFormatException refused =
        assertThrows(
            QuantityFormatException.class,
            () -> Quantities.parse(text, QuantityKind.LENGTH, UnitSystem.US));
    assertTrue(refused.remedy().contains(remedy), refused.remedy());
    assertEquals("'" + text + "'", refused.given());
    assertTrue(refused.allowed().contains("29 1/2 in"), refused.allowed());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "\t", "\n", "\u0000", "%", "°", "☃", "𝟛 in"})
  void textWithoutNumberIsRefused(String text) {
    for (QuantityKind kind : QuantityKind.values()) {
      assertThrows(
          QuantityFormatException.class, () -> Quantities.parse(text, kind, UnitSystem.METRIC));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"0.65", "1", "0.01"})
  void barePercentageOfOneOrLessIsRefusedBecauseItMayBeAShare(String text) {
    QuantityFormatException refused =
        assertThrows(
            QuantityFormatException.class,
            () -> Quantities.parse(text, QuantityKind.PERCENT, UnitSystem.US));
    assertTrue(refused.remedy().contains("65 %"), refused.remedy());
  }

  @Test
  void bareMixedNumberIsRefusedWhereBareNumbersAreMillimetres() {
    assertThrows(
        QuantityFormatException.class,
        () -> Quantities.parse("29 1/2", QuantityKind.LENGTH, UnitSystem.METRIC));
  }

  @Test
  void kilogramIsNotAForce() {
    QuantityFormatException refused =
        assertThrows(
            QuantityFormatException.class,
            () -> Quantities.parse("10 kg", QuantityKind.FORCE, UnitSystem.METRIC));
    assertTrue(refused.remedy().contains("kg is for a weight"), refused.remedy());
  }

  @ParameterizedTest
  @EnumSource(QuantityKind.class)
  void exampleOfEveryKindIsUnderstood(QuantityKind kind) {
    for (UnitSystem system : UnitSystem.values()) {
      assertTrue(Quantities.parse(kind.example(system), kind, system) > 0);
    }
  }

  @Seeds(1000)
  void everyFractionEqualsItsDecimal(Draw draw) {
    int whole = draw.whole(0, 400);
    int top = draw.whole(1, 63);
    boolean hyphen = draw.either();
    String fraction = whole + (hyphen ? "-" : " ") + top + "/64 in";
    String decimal =
        new java.math.BigDecimal(whole * 64 + top)
                .divide(new java.math.BigDecimal(64))
                .toPlainString()
            + " in";
    assertEquals(
        Quantities.parse(decimal, QuantityKind.LENGTH, UnitSystem.US),
        Quantities.parse(fraction, QuantityKind.LENGTH, UnitSystem.US),
        0.0);
  }

  @Seeds(1000)
  void feetAndInchesEqualInches(Draw draw) {
    int feet = draw.whole(0, 30);
    int inches = draw.whole(0, 11);
    int top = draw.whole(1, 31);
    assertEquals(
        Quantities.parse(
            (feet * 12 + inches) + " " + top + "/32 in", QuantityKind.LENGTH, UnitSystem.US),
        Quantities.parse(
            feet + "' " + inches + " " + top + "/32\"", QuantityKind.LENGTH, UnitSystem.US),
        1e-9);
  }

  @Seeds(3000)
  void noTextDoesAnythingButGiveAFiniteValueOrBeRefused(Draw draw) {
    String text = almostAQuantity(draw);
    QuantityKind kind = draw.oneOf(QuantityKind.class);
    UnitSystem system = draw.oneOf(UnitSystem.class);
    try {
      assertTrue(Double.isFinite(Quantities.parse(text, kind, system)));
    } catch (QuantityFormatException refused) {
      assertTrue(!refused.remedy().isBlank() && !refused.allowed().isBlank());
    }
  }

  private static String almostAQuantity(Draw draw) {
    return String.join("", draw.listOf(0, 8, d -> d.oneOf(PIECES)));
  }
}
