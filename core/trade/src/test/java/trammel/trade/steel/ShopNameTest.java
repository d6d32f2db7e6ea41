package trammel.trade.steel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names as shops write them: common practice, no source. */
class ShopNameTest {

  @Test
  void tubesAreNamedByOutsideAndWall() {
    RoundTube tube = new RoundTube(44.45, 3.048);
    assertEquals("1-3/4 x .120 wall round tube", tube.usName());
    assertEquals("44.45 x 3.05 mm round tube", tube.metricName());
    assertEquals(
        "3 x 2 x .120 wall rectangular tube", new RectangularTube(76.2, 50.8, 3.048).usName());
    assertEquals("50 x 50 x 3 mm square tube", RectangularTube.square(50, 3).metricName());
  }

  @Test
  void barsAndPlatesAreNamedByTheirSizes() {
    assertEquals("1/4 x 2 flat stock", new FlatBar(50.8, 6.35).usName());
    assertEquals("6.35 x 50.8 mm flat stock", new FlatBar(50.8, 6.35).metricName());
    assertEquals("5/8 round stock", new RoundBar(15.875).usName());
    assertEquals("16 mm round stock", new RoundBar(16).metricName());
    assertEquals("3/16 plate", new PlateStock(4.7625).usName());
    assertEquals("5 mm plate", new PlateStock(5).metricName());
  }

  /** 11/64, 13/64 and 17/64 in decimals: .171875, .203125, .265625. */
  @ParameterizedTest
  @CsvSource({
    ".171875, 11/64 plate",
    ".203125, 13/64 plate",
    ".265625, 17/64 plate",
    ".1196, .120 plate",
    "1.055, 1.055 plate",
    "2, 2 plate",
    "1.5, 1-1/2 plate"
  })
  void sizesThatAreFractionsAreNamedAsFractions(double inches, String name) {
    assertEquals(name, new PlateStock(inches * 25.4).usName());
  }
}
