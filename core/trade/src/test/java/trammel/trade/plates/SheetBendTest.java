package trammel.trade.plates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SheetBendTest {
  private static final double INCH = 25.4;

  @ParameterizedTest
  @CsvSource({
    // thickness, radius, degrees, K, allowance, setback, deduction (in): worked from the formulas.
    "0.1875, 0.1875, 90, 0.42, 0.41822, 0.375, 0.33178",
    "0.1875, 0.25, 45, 0.42, 0.25820, 0.18122, 0.10424",
  })
  void bendHasItsAllowanceSetbackAndDeduction(
      double thickness,
      double radius,
      double degrees,
      double k,
      double allowance,
      double setback,
      double deduction) {
    SheetBend bend = new SheetBend(thickness * INCH, radius * INCH, Math.toRadians(degrees), k);
    assertEquals(allowance, bend.allowanceMm() / INCH, 1e-5);
    assertEquals(setback, bend.outsideSetbackMm() / INCH, 1e-5);
    assertEquals(deduction, bend.deductionMm() / INCH, 1e-5);
  }

  @Test
  void channelOfTheAirframeHandbookHasItsDevelopedLength() {
    // FAA-H-8083-31 vol. 1 ch. 4: legs 1.00/2.00/1.00, T .040, R .16, K .5; developed 3.7655 in.
    SheetBend bend = new SheetBend(0.040 * INCH, 0.16 * INCH, Math.PI / 2.0, 0.5);
    assertEquals(0.200, bend.outsideSetbackMm() / INCH, 1e-9);
    assertEquals(0.2827, bend.allowanceMm() / INCH, 5e-5);
    assertEquals(3.7655, 4.00 - 2.0 * bend.deductionMm() / INCH, 5e-5);
  }

  @Test
  void neutralAxisOutsideTheMiddleIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new SheetBend(3.0, 3.0, 1.0, 0.6));
  }
}
