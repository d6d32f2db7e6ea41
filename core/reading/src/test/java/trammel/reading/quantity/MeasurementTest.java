package trammel.reading.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class MeasurementTest {
  @Test
  void repeatsHaveMeanSpreadAndCount() {
    Measurement three = new Measurement(QuantityKind.LENGTH, List.of(100.0, 101.0, 102.0), 1.5);
    assertEquals(101, three.meanMm());
    assertEquals(2, three.spread());
    assertEquals(3, three.count());
    assertTrue(three.needsMeasuringAgain());
  }

  @Test
  void spreadOfExactlyTheToleranceIsGood() {
    double tapeMm = 25.4 / 16;
    assertFalse(
        new Measurement(QuantityKind.LENGTH, List.of(38 * 25.4, 38.0625 * 25.4), tapeMm)
            .needsMeasuringAgain());
  }

  @Test
  void singleReadingHasNoSpread() {
    Measurement one = Measurement.ofLengthMm(12.7, 1);
    assertEquals(0, one.spread());
    assertFalse(one.needsMeasuringAgain());
  }

  @Test
  void whatIsNotAMeasurementIsRefused() {
    assertThrows(
        IllegalArgumentException.class, () -> new Measurement(QuantityKind.LENGTH, List.of(), 1));
    assertThrows(IllegalArgumentException.class, () -> Measurement.ofLengthMm(Double.NaN, 1));
    assertThrows(IllegalArgumentException.class, () -> Measurement.ofLengthMm(1, 0));
    assertThrows(IllegalArgumentException.class, () -> Measurement.ofLengthMm(1, Double.NaN));
  }

  @Test
  void lengthIsNotGivenAsAnAngle() {
    assertThrows(IllegalArgumentException.class, () -> Measurement.ofLengthMm(1, 1).meanRad());
    assertThrows(
        IllegalArgumentException.class,
        () -> new MeasuredAngle(Measurement.ofLengthMm(1, 1), Datum.LEVEL));
  }

  @Seeds(1000)
  void meanLiesBetweenLeastAndGreatest(Draw draw) {
    List<Double> readings = draw.listOf(1, 20, d -> d.between(-1e4, 1e4));
    Measurement measured = new Measurement(QuantityKind.LENGTH, readings, 1);
    double least = readings.stream().mapToDouble(r -> r).min().getAsDouble();
    assertTrue(measured.mean() >= least - 1e-9);
    assertTrue(measured.mean() <= least + measured.spread() + 1e-9);
  }

  @Test
  void everyInstrumentHasAToleranceAndOtherKindsHaveNone() {
    assertEquals(1.5875, Tolerances.USUAL.of(QuantityKind.LENGTH), 1e-12);
    assertEquals(Math.toRadians(0.2), Tolerances.USUAL.of(QuantityKind.ANGLE), 1e-12);
    assertEquals(2.26796185, Tolerances.USUAL.of(QuantityKind.MASS), 1e-12);
    assertThrows(IllegalArgumentException.class, () -> Tolerances.USUAL.of(QuantityKind.PRESSURE));
    assertThrows(IllegalArgumentException.class, () -> new Tolerances(0, 1, 1));
  }
}
