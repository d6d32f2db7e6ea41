package trammel.engine.springs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static trammel.engine.quantity.ShopUnits.mPa;
import static trammel.engine.quantity.ShopUnits.mm;
import static trammel.engine.quantity.ShopUnits.mm2;
import static trammel.engine.quantity.ShopUnits.mm3;
import static trammel.engine.quantity.ShopUnits.newtons;
import static trammel.engine.quantity.ShopUnits.pounds;
import static trammel.engine.quantity.ShopUnits.poundsPerInch;
import static trammel.engine.quantity.ShopUnits.psi;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked by hand with p V^n = constant on absolute pressure, atmosphere 14.696 psi. */
class AirChargeTest {
  /** Area 17.6 in2 and 110 in3 at 7 in; 18.8 and 82 at 5.5 in; 16.4 and 137 at 8.6 in. */
  private static final AirSpringSize SLEEVE =
      new AirSpringSize(
          "sleeve",
          List.of(
              new AirSpringPoint(mm(5.5), mm2(18.8), mm3(82)),
              new AirSpringPoint(mm(7), mm2(17.6), mm3(110)),
              new AirSpringPoint(mm(8.6), mm2(16.4), mm3(137))));

  private static AirCharge under(double pounds) {
    return new AirCharge(SLEEVE, mm(7), SLEEVE.gaugeForLoadMPa(mm(7), newtons(pounds)));
  }

  @ParameterizedTest(name = "{0} lb")
  @CsvSource({"742, 42.159", "688, 39.091"})
  void eachSideHasItsOwnPressure(double pounds, double psi) {
    assertEquals(psi, psi(under(pounds).rideGaugeMPa()), 1e-3, "load over effective area");
  }

  @ParameterizedTest(name = "{0} in, n {1}")
  @CsvSource({
    "5.5, 1.38, 70.580, 1326.9",
    "8.6, 1.38, 27.301, 447.7",
    "5.5, 1.0, 61.573, 1157.6",
    "7, 1.38, 42.159, 742.0"
  })
  void airShutInFollowsTheGasLawOnAbsolutePressure(
      double heightIn, double exponent, double psi, double pounds) {
    AirCharge charge = under(742);

    assertEquals(psi, psi(charge.gaugeMPa(mm(heightIn), exponent)), 1e-3);
    assertEquals(pounds, pounds(charge.loadN(mm(heightIn), exponent)), 0.05);
  }

  /** Secant over half an inch each way, area 18.0 and 17.2 in2, volume 101.1 and 118.7 in3. */
  @Test
  void theRateCountsTheChangeOfTheArea() {
    AirSpringSize tapered =
        new AirSpringSize(
            "tapered",
            List.of(
                new AirSpringPoint(mm(6.5), mm2(18.0), mm3(101.1)),
                new AirSpringPoint(mm(7), mm2(17.6), mm3(110)),
                new AirSpringPoint(mm(7.5), mm2(17.2), mm3(118.7))));
    AirCharge charge = new AirCharge(tapered, mm(7), mPa(742 / 17.6));

    assertEquals(257.608, poundsPerInch(charge.rateNPerMm(mm(7))), 0.01, "EMDG198 pp. 22-23");
  }

  /** A tank adds its volume; with the valve open the pressure stays. Formula k, worked by hand. */
  @Test
  void aTankSoftensTheSpring() {
    double rate =
        TrappedAir.constantAreaRateNPerMm(
            mPa(742 / 17.6), mm2(17.6), mm3(110 + 200), TrappedAir.FAST);

    assertEquals(112.127 - 33.727, poundsPerInch(rate), 5e-3, "less p_g dA/dx");
  }

  /** Rate 220.94 lb/in under 742 lb and 299.99 under 1,100: 102.389 and 97.988 cycles a minute. */
  @ParameterizedTest(name = "{0} lb")
  @CsvSource({"742, 220.943, 102.389", "1100, 299.99, 97.988"})
  void moreLoadAtTheSameHeightHardlyChangesTheFrequency(
      double pounds, double poundsPerInch, double cyclesPerMinute) {
    double rate =
        TrappedAir.constantAreaRateNPerMm(mPa(pounds / 17.6), mm2(17.6), mm3(110), TrappedAir.FAST);

    assertEquals(poundsPerInch, poundsPerInch(rate), 5e-3);
    double hertz = RideFrequency.hertz(rate, pounds * 0.45359237);
    assertEquals(cyclesPerMinute, 60 * hertz, 2e-3);
  }

  @Test
  void aHeightOutsideTheTableIsNotGuessed() {
    AirCharge charge = under(742);

    assertThrows(IllegalArgumentException.class, () -> charge.loadN(mm(5), TrappedAir.FAST));
  }
}
