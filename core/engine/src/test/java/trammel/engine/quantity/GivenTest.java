package trammel.engine.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GivenTest {
  @Test
  void aRefusalSaysWhatWasGivenWhatIsAllowedAndWhatToDo() {
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class,
            () -> Given.within("wire diameter", -3, 0.1, 100, "mm", "Measure the wire."));
    assertEquals(
        "The wire diameter (-3 mm) must be from 0.1 to 100 mm. Measure the wire.",
        refusal.getMessage());
  }

  @Test
  void anAngleIsRefusedInDegrees() {
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class,
            () -> Given.angle("joint angle", Math.PI / 2, 0, Math.PI / 6, "Lower it."));
    assertEquals("The joint angle (90°) must be from 0° to 30°. Lower it.", refusal.getMessage());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY, 1e13, 1e-7})
  void whatMustBeOverZeroIsRefusedOtherwise(double value) {
    assertThrows(
        IllegalArgumentException.class, () -> Given.positive("load", value, "N", "Weigh it."));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1e-9, Double.NaN, Double.NEGATIVE_INFINITY})
  void whatMustNotBeNegativeIsRefusedOtherwise(double value) {
    assertThrows(
        IllegalArgumentException.class, () -> Given.notNegative("load", value, "N", "Weigh it."));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.NEGATIVE_INFINITY, 1e13})
  void whatMustBeFiniteIsRefusedOtherwise(double value) {
    assertThrows(IllegalArgumentException.class, () -> Given.finite("load", value, "N"));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "1000000000000, 1000000000000",
    "0.000001, 0.000001",
    "12.3456789, 12.3457",
    "-0.5, -0.5",
    "1e300, 1.0E300",
    "NaN, not a number",
    "Infinity, infinite",
    "-Infinity, minus infinite"
  })
  void numbersAreWrittenAsPeopleWriteThem(double value, String text) {
    assertEquals(text, Given.text(value));
  }
}
