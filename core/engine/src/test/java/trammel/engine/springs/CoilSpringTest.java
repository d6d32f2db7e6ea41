package trammel.engine.springs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trammel.engine.quantity.ShopUnits.mPa;
import static trammel.engine.quantity.ShopUnits.mm;
import static trammel.engine.quantity.ShopUnits.nPerMm;
import static trammel.engine.quantity.ShopUnits.poundsPerInch;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class CoilSpringTest {
  @ParameterizedTest(name = "{6}")
  @CsvSource({
    "0.105, 0.620, 10.792, 11.85e6, 70.0, 0.05, 'Wentzell, Machine Design, ex. 8.2 p. 163'",
    "0.037, 0.400, 10.5, 11.85e6, 4.131, 0.001, 'Shigley ex. 10-1, from memory (book 4.13)'"
  })
  void rateFollowsFromWireAndCoil(
      double wireIn,
      double meanIn,
      double coils,
      double shearPsi,
      double expectedLbPerIn,
      double tolerance,
      String source) {
    CoilSpring spring = new CoilSpring(mm(wireIn), mm(meanIn), coils, mPa(shearPsi));
    assertEquals(expectedLbPerIn, poundsPerInch(spring.rateNPerMm()), tolerance, source);
  }

  @Test
  void activeCoilsForAWantedRateAreThoseOfWentzellExample82() {
    double coils =
        CoilSpring.activeCoilsForRate(mm(0.105), mm(0.620), mPa(11.85e6), nPerMm(35 / 0.5));
    assertEquals(10.792, coils, 0.001, "Wentzell, Machine Design, ex. 8.2");
  }

  @Test
  void indexIsMeanDiameterOverWire() {
    assertEquals(8.0, new CoilSpring(10, 80, 6, 79_290).index(), "definition");
  }

  @Seeds(1000)
  void oneSizeUpInEveryLengthIsOneSizeUpInRate(Draw draw) {
    double wireMm = draw.between(1, 20);
    double index = draw.between(1.5, 12);
    double coils = draw.between(1, 20);
    CoilSpring small = new CoilSpring(wireMm, wireMm * index, coils, 79_290);
    CoilSpring large = new CoilSpring(2 * wireMm, 2 * wireMm * index, coils, 79_290);
    assertTrue(small.rateNPerMm() > 0);
    assertEquals(2.0, large.rateNPerMm() / small.rateNPerMm(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 80, 6, 79290, wire diameter",
    "10, NaN, 6, 79290, mean coil diameter",
    "10, 80, 0, 79290, active coils",
    "10, 80, 6, 79, shear modulus",
    "10, 9, 6, 79290, over the wire diameter"
  })
  void anImpossibleSpringIsRefusedByName(
      double wireMm, double meanMm, double coils, double shearMPa, String named) {
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class, () -> new CoilSpring(wireMm, meanMm, coils, shearMPa));
    assertTrue(refusal.getMessage().contains(named), refusal.getMessage());
  }
}
