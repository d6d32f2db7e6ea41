package trammel.cutting.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class PriceStepsTest {
  /** 38.50 and 12.25 are 22 and 7 times 1.75, their greatest common divisor. */
  @Test
  void stepsAreAsLargeAsTheyCanBe() {
    PriceSteps steps = steps("38.5", "12.25", "0");
    assertEquals(22, steps.of(new BigDecimal("38.5")));
    assertEquals(7, steps.of(new BigDecimal("12.25")));
    assertEquals(0, steps.of(new BigDecimal("0")));
    assertEquals(new BigDecimal("1.75"), steps.money(1));
    assertFalse(steps.allFree());
  }

  @Test
  void withoutPricesThereIsNothingToCount() {
    PriceSteps steps = steps("0", "0.00");
    assertTrue(steps.allFree());
    assertEquals(0, steps.of(new BigDecimal("0.00")));
    assertEquals(0, steps.money(5).signum());
  }

  @Seeds(500)
  void sumsAreExact(Draw draw) {
    List<BigDecimal> prices = draw.listOf(1, 8, d -> d.decimal("0", "9999.99", 2));
    PriceSteps steps = new PriceSteps(prices);
    BigDecimal sum = BigDecimal.ZERO;
    long counted = 0;
    for (BigDecimal price : prices) {
      sum = sum.add(price);
      counted += steps.of(price);
    }
    assertEquals(0, sum.compareTo(steps.money(counted)), () -> prices.toString());
  }

  private static PriceSteps steps(String... prices) {
    return new PriceSteps(List.of(prices).stream().map(BigDecimal::new).toList());
  }
}
