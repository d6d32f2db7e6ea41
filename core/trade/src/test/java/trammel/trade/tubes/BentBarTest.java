package trammel.trade.tubes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class BentBarTest {
  @Test
  void developedLengthIsThatOfTheAirframeHandbookChannel() {
    // FAA-H-8083-31 vol. 1 ch. 4 in units of 1 in: flats .8, 1.6, .8, neutral radius .18, 3.7655.
    Bend bend = new Bend(Math.PI / 2.0, 0.18);
    BentBar bar = new BentBar(List.of(0.8, 1.6, 0.8), List.of(bend, bend));
    assertEquals(3.7655, bar.developedLengthMm(), 5e-5);
  }

  @Test
  void straightBarHasNoOffset() {
    BentBar bar = BentBar.straight(600.0);
    assertEquals(600.0, bar.centreToCentreMm(), 1e-12);
    assertEquals(0.0, bar.offsetMm(), 1e-12);
  }

  @Test
  void rightAngleBendHasItsPlaneGeometry() {
    // Legs a = b = 100, R = 50: ends at (150, 150) apart sqrt(2) 150; the apex of the arc
    // stands off the diagonal by (150 - 50) / sqrt(2) + 50 ... measured to the arc's middle.
    BentBar bar = new BentBar(List.of(100.0, 100.0), List.of(new Bend(Math.PI / 2.0, 50.0)));
    assertEquals(150.0 * Math.sqrt(2.0), bar.centreToCentreMm(), 1e-9);
    // The corner is 150 / sqrt(2) off the diagonal; the arc misses it by R (sqrt(2) - 1).
    double apex = 150.0 / Math.sqrt(2.0) - 50.0 * (Math.sqrt(2.0) - 1.0);
    assertEquals(apex, bar.offsetMm(), 1e-9);
  }

  @Seeds(300)
  void archedBarReachesItsOffsetOverItsSpan(Draw draw) {
    double spanMm = draw.between(400.0, 900.0);
    double offsetMm = draw.between(5.0, 50.0);
    double radiusMm = draw.between(60.0, 150.0);
    BentBar bar = BentBar.arched(spanMm, offsetMm, radiusMm);
    assertEquals(spanMm, bar.centreToCentreMm(), 1e-7);
    assertEquals(offsetMm, bar.offsetMm(), 1e-7);
    assertTrue(bar.developedLengthMm() > spanMm);
    // No longer than the two straight lines over a corner at twice the offset's height.
    assertTrue(bar.developedLengthMm() < 2.0 * Math.hypot(spanMm / 2.0, 2.0 * offsetMm) + 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"200, 30, 120, 60", "150, 45, 100, 100"})
  void joggledBarHasParallelEndsAnOffsetApart(
      double endLeg, double degrees, double radius, double offset) {
    BentBar bar = BentBar.joggled(endLeg, Math.toRadians(degrees), radius, offset);
    var line = bar.centreLine();
    assertEquals(offset, line.get(line.size() - 1).to().yMm(), 1e-9);
    assertEquals(0.0, line.get(line.size() - 1).endHeadingRad(), 1e-9);
  }

  @Test
  void offsetThatOneBendCannotReachIsRefused() {
    String message =
        assertThrows(IllegalArgumentException.class, () -> BentBar.arched(200.0, 150.0, 150.0))
            .getMessage();
    assertTrue(message.contains("150 mm") && message.contains("two bends"), message);
    assertThrows(IllegalArgumentException.class, () -> BentBar.joggled(100.0, 1.0, 200.0, 20.0));
  }
}
