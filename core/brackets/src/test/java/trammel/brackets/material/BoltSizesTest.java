package trammel.brackets.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.engine.strength.BoltGrade;
import trammel.trade.hardware.ScrewThread;
import trammel.trade.hardware.ThreadForm;

class BoltSizesTest {
  private static final BoltSizes SIZES =
      BoltSizes.of(List.of(size("half", 12.7), size("five-eighths", 15.875)));

  private static BoltSize size(String key, double diameterMm) {
    return new BoltSize(
        key,
        key + " grade 8",
        new ScrewThread(key, ThreadForm.UNIFIED, diameterMm, 25.4 / 20),
        BoltGrade.GRADE_8,
        diameterMm,
        2.5,
        List.of(new BoltSize.Stocked(76.2, BigDecimal.ONE)),
        BigDecimal.ONE,
        BigDecimal.ONE,
        "supplier",
        1);
  }

  @Test
  void aBoltIsFoundByItsDiameterWithinTheRoundingOfInches() {
    assertEquals("half", SIZES.of(12.7).key());
    assertEquals("five-eighths", SIZES.of(15.9).key());
  }

  @Test
  void aDiameterThatIsNotSoldIsRefusedWithThoseThatAre() {
    String message = assertThrows(MissingEntryException.class, () -> SIZES.of(14)).getMessage();
    assertTrue(message.contains("14.0 mm") && message.contains("half, five-eighths"), message);
  }

  @Test
  void aHoleThatIsDrilledToSuitTakesTheNearest() {
    // 14.0 - 12.7 = 1.3, 15.875 - 14.0 = 1.875.
    assertEquals("half", SIZES.nearest(14).key());
    assertEquals("five-eighths", SIZES.nearest(14.5).key());
    assertThrows(MissingEntryException.class, () -> new BoltSizes(List.of()).nearest(14));
  }
}
