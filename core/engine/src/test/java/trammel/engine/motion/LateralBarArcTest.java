package trammel.engine.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LateralBarArcTest {

  /** Pure geometry, closed form: R - sqrt(R² - d²) from level, and its like from an incline. */
  @ParameterizedTest
  @CsvSource({
    "36, 0, 3, 0.12522",
    "36, 0, 4, 0.22291",
    "30, 0, 3, 0.15038",
    "36, 2, 3, 0.29286",
    "36, 2, -3, -0.04164",
    "34, -1.5, 3, 0"
  })
  void theAxleShiftsByTheVersineOfTheArc(double across, double rise, double travel, double shift) {
    assertEquals(shift, new LateralBarArc(across, rise).shiftMm(travel), 5e-6);
  }

  @Test
  void aBarTooShortForTheTravelIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new LateralBarArc(100, 0).shiftMm(100));
    assertThrows(IllegalArgumentException.class, () -> new LateralBarArc(0, 10));
    assertThrows(IllegalArgumentException.class, () -> new LateralBarArc(Double.NaN, 0));
  }
}
