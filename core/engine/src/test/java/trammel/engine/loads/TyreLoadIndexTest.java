package trammel.engine.loads;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** List of load indices (ETRTO, TRA) as a tyre dealer prints it, in pounds beside the kilograms. */
class TyreLoadIndexTest {
  private static final double KG_A_POUND = 0.45359237;

  @ParameterizedTest
  @CsvSource({
    "62, 265, 584.2",
    "91, 615, 1355.8",
    "100, 800, 1763.7",
    "104, 900, 1984.2",
    "107, 975, 2149.5",
    "112, 1120, 2469.2",
    "116, 1250, 2755.8"
  })
  void theIndexStandsForALoad(int index, double kg, double pounds) {
    assertEquals(kg, TyreLoadIndex.kg(index));
    assertEquals(pounds, TyreLoadIndex.kg(index) / KG_A_POUND, 0.05);
  }

  /** FMVSS 120 S5.1.2: index 112 on a truck, 1,018.18 kg each and 4,489.4 lb an axle. */
  @Test
  void aPassengerTyreOnATruckCarriesATenthLess() {
    double each = TyreLoadIndex.kg(112) / TyreLoadIndex.PASSENGER_ON_TRUCK;
    assertEquals(1018.18, each, 0.005);
    assertEquals(4489.4, 2 * each / KG_A_POUND, 0.05);
  }

  @Test
  void eachIndexCarriesMoreThanTheLast() {
    for (int index = TyreLoadIndex.LEAST; index < TyreLoadIndex.most(); index++) {
      assertTrue(TyreLoadIndex.kg(index) < TyreLoadIndex.kg(index + 1), "index " + index);
    }
  }
}
