package trammel.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;

class PriceStepsTest {
  /** 38.50 and 12.25 are 22 and 7 times 1.75, their greatest common divisor. */
  @Example
  void stepsAreAsLargeAsTheyCanBe() {
    PriceSteps steps = steps("38.5", "12.25", "0");
    assertEquals(22, steps.of(new BigDecimal("38.5")));
    assertEquals(7, steps.of(new BigDecimal("12.25")));
    assertEquals(0, steps.of(new BigDecimal("0")));
    assertEquals(new BigDecimal("1.75"), steps.money(1));
    assertFalse(steps.allFree());
  }

  @Example
  void withoutPricesThereIsNothingToCount() {
    PriceSteps steps = steps("0", "0.00");
    assertTrue(steps.allFree());
    assertEquals(0, steps.of(new BigDecimal("0.00")));
    assertEquals(0, steps.money(5).signum());
  }

  @Property(tries = 500)
  void sumsAreExact(
      @ForAll @Size(min = 1, max = 8)
          List<@BigRange(min = "0", max = "9999.99") @Scale(2) BigDecimal> prices) {
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
