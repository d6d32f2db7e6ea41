package trammel.engine.springs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trammel.engine.quantity.ShopUnits.degrees;
import static trammel.engine.quantity.ShopUnits.inchPounds;
import static trammel.engine.quantity.ShopUnits.kg;
import static trammel.engine.quantity.ShopUnits.mm;
import static trammel.engine.quantity.ShopUnits.nPerMm;
import static trammel.engine.quantity.ShopUnits.newtons;
import static trammel.engine.quantity.ShopUnits.nmm;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

/** Ride frequency, roll and isolation. */
class RideTest {
  @ParameterizedTest(name = "{0} lb on {1} lb/in")
  @CsvSource({
    "800, 200, 93.82, 'closed form, exact constant 187.64'",
    "650, 150, 90.14, 'closed form, exact constant 187.64'"
  })
  void rateAndWeightGiveTheFrequency(
      double pounds, double lbPerIn, double cyclesPerMinute, String source) {
    double hertz = RideFrequency.hertz(nPerMm(lbPerIn), kg(pounds));
    assertEquals(cyclesPerMinute, 60 * hertz, 0.01, source);
    double fromDeflection = RideFrequency.hertzFromDeflection(mm(pounds / lbPerIn));
    assertEquals(hertz, fromDeflection, 1e-9, "both forms are one formula");
  }

  @ParameterizedTest(name = "{0} in")
  @CsvSource({
    "10, 0.989, closed form",
    "9.78, 1.000, closed form",
    "9.8425197, 0.997, 'closed form, 250 mm'"
  })
  void staticDeflectionGivesTheFrequency(double deflectionIn, double hertz, String source) {
    assertEquals(hertz, RideFrequency.hertzFromDeflection(mm(deflectionIn)), 0.0006, source);
  }

  @Test
  void anAirSpringManualRoundsTheSameFrequencyTo106() {
    double hertz = RideFrequency.hertz(nPerMm(1373), kg(4280));
    assertEquals(106, 60 * hertz, 0.5, "EMDG198 pp. 22-23: 4,280 lb, 1,373 lb/in");
  }

  @Test
  void threeHundredAndFiftyKilogramsOnTwentyEightPointOne() {
    assertEquals(1.4261, RideFrequency.hertz(28.1, 350), 0.00005, "closed form √(k/m)/2π");
  }

  @Seeds(1000)
  void theRateForAFrequencyGivesThatFrequency(Draw draw) {
    double hertz = draw.between(0.1, 20);
    double massKg = draw.between(1, 5000);
    double rate = RideFrequency.wheelRateForNPerMm(hertz, massKg);
    assertEquals(hertz, RideFrequency.hertz(rate, massKg), 1e-9 * hertz);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -350, Double.NaN})
  void noMassIsRefused(double massKg) {
    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> RideFrequency.hertz(28, massKg));
    assertTrue(refusal.getMessage().startsWith("The sprung mass ("), refusal.getMessage());
  }

  @Test
  void rollStiffnessOfARigidAxle() {
    double stiffness = RollStiffness.rigidAxleNmmPerRad(nPerMm(200), mm(40));
    assertEquals(160_000, inchPounds(stiffness), 0.5, "Gillespie ch. 6, from memory: ½ k s²");
    assertEquals(2792.5, inchPounds(stiffness) / degrees(1), 0.05, "the same for each degree");
  }

  @Test
  void rollForEachG() {
    double both =
        RollStiffness.rigidAxleNmmPerRad(nPerMm(150), mm(60))
            + RollStiffness.rigidAxleNmmPerRad(nPerMm(100), mm(60));
    double roll = RollStiffness.rollRadPerG(newtons(3000), mm(20), both);
    assertEquals(0.153846, roll, 0.0000005, "examination problem: W 3000 lb, arm 20, base 60");
    assertEquals(8.815, degrees(roll), 0.0005, "the same in degrees");
  }

  @Test
  void aBodyThatWouldFallOverIsRefused() {
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class,
            () -> RollStiffness.rollRadPerG(newtons(3000), mm(20), nmm(60_000)));
    assertTrue(refusal.getMessage().contains("stiffer springs"), refusal.getMessage());
  }

  @Test
  void isolationOfAVibration() {
    double share = Isolation.transmission(106 / 60.0, 850 / 60.0);
    assertEquals(0.0158, share, 0.00005, "EMDG198 pp. 22-23 (book 1.6 %)");
  }

  @Seeds(1000)
  void aSofterSpringIsolatesBetter(Draw draw) {
    double naturalHz = draw.between(0.5, 6);
    double share = Isolation.transmission(naturalHz, 14);
    assertTrue(share > 0 && share <= 1);
    assertTrue(Isolation.transmission(0.9 * naturalHz, 14) < share);
  }

  @Test
  void aSpringThatMagnifiesIsRefused() {
    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> Isolation.transmission(10, 14));
    assertTrue(refusal.getMessage().contains("softer spring"), refusal.getMessage());
  }
}
