package trammel.trade.labour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

/** Arithmetic of hours over hands; sharing hands evenly is common practice, no source. */
class LabourPlanTest {
  @Test
  void twoHandsHalveTheDays() {
    assertEquals(10, new LabourPlan(1, 1, 8).days(80), 1e-12);
    assertEquals(5, new LabourPlan(2, 1, 8).days(80), 1e-12);
    assertEquals(5, new LabourPlan(2, 3, 8).days(80), 1e-12);
  }

  /** Two bays, a hand each at 8 h: 40 h and 80 h start at once, the third follows the shorter. */
  @Test
  void theNextJobTakesTheBayThatIsFreeFirst() {
    List<LabourPlan.Slot> slots = new LabourPlan(2, 2, 8).place(List.of(40.0, 80.0, 16.0));
    assertEquals(new LabourPlan.Slot(1, 0, 5), slots.get(0));
    assertEquals(new LabourPlan.Slot(2, 0, 10), slots.get(1));
    assertEquals(new LabourPlan.Slot(1, 5, 7), slots.get(2));
  }

  @Seeds(1000)
  void noHourIsLost(Draw draw) {
    List<Double> hours = draw.listOf(1, 20, d -> d.between(0, 400));
    int hands = draw.whole(1, 6);
    int bays = draw.whole(1, 6);
    LabourPlan plan = new LabourPlan(hands, bays, 7.5);
    int used = Math.min(Math.min(hands, bays), hours.size());
    double wanted = hours.stream().mapToDouble(Double::doubleValue).sum();
    double placed =
        plan.place(hours).stream().mapToDouble(LabourPlan.Slot::days).sum() * 7.5 * hands / used;
    assertEquals(wanted, placed, 1e-6);
  }

  @Test
  void aShopWithoutHandsIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new LabourPlan(0, 1, 8));
    assertThrows(IllegalArgumentException.class, () -> new LabourPlan(1, 1, 25));
  }
}
