package trammel.trade.steel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class BendTest {

  private static final double INCH = 25.4;

  private static PlateBend bendIn(double thickness, double radius, double k, double degrees) {
    return new PlateBend(thickness * INCH, radius * INCH, k, Math.toRadians(degrees));
  }

  /**
   * FAA-H-8083-31 vol. 1 ch. 4, U channel: setback .200, flats .8, 1.6, .8, allowance .2827,
   * developed 3.7655 (developed length from memory, recomputed).
   */
  @Test
  void channelOfTheAirframeHandbookDevelops() {
    PlateBend bend = bendIn(0.040, 0.16, 0.5, 90);
    BentPlate channel = new BentPlate(List.of(1 * INCH, 2 * INCH, 1 * INCH), List.of(bend, bend));
    assertEquals(0.200, bend.outsideSetbackMm() / INCH, 1e-9);
    assertEquals(0.2827, bend.allowanceMm() / INCH, 0.00005);
    assertEquals(0.8, channel.straightMm(0) / INCH, 1e-9);
    assertEquals(1.6, channel.straightMm(1) / INCH, 1e-9);
    assertEquals(0.8, channel.straightMm(2) / INCH, 1e-9);
    assertEquals(3.7655, channel.flatLengthMm() / INCH, 0.0001);
  }

  /** Derived: 3/16 plate, R 3/16, K .42, 90°: BA .41822, OSSB .375, BD .33178, flat 4.66822. */
  @Test
  void squareBracketDevelops() {
    PlateBend bend = bendIn(0.1875, 0.1875, 0.42, 90);
    assertEquals(0.41822, bend.allowanceMm() / INCH, 0.000005);
    assertEquals(0.375, bend.outsideSetbackMm() / INCH, 1e-9);
    assertEquals(0.33178, bend.deductionMm() / INCH, 0.000005);
    BentPlate bracket = new BentPlate(List.of(3 * INCH, 2 * INCH), List.of(bend));
    assertEquals(4.66822, bracket.flatLengthMm() / INCH, 0.000005);
  }

  /** Derived: 3/16 plate, R 1/4, K .42, 45°: BA .25820, OSSB .18122, BD .10424. */
  @Test
  void halfBendDevelops() {
    PlateBend bend = bendIn(0.1875, 0.25, 0.42, 45);
    assertEquals(0.25820, bend.allowanceMm() / INCH, 0.000005);
    assertEquals(0.18122, bend.outsideSetbackMm() / INCH, 0.000005);
    assertEquals(0.10424, bend.deductionMm() / INCH, 0.000005);
  }

  /** Soft-steel rule .64 T + 1.57 R for 90°, from memory: the same as K = .407 within 1 %. */
  @Test
  void softSteelRuleIsAKFactor() {
    assertEquals(
        0.64 * 0.1875 + 1.57 * 0.25, bendIn(0.1875, 0.25, 0.407, 90).allowanceMm() / INCH, 0.005);
  }

  /** Closed form: straights and allowances are the flat length. */
  @Seeds(100)
  void flatIsStraightsAndAllowances(Draw draw) {
    double thicknessMm = draw.between(1, 10);
    double radiusMm = draw.between(0, 20);
    double angleRad = draw.between(0.01, 2);
    PlateBend bend = new PlateBend(thicknessMm, radiusMm, 0.42, angleRad);
    BentPlate plate = new BentPlate(List.of(120.0, 150.0), List.of(bend));
    assertEquals(
        plate.straightMm(0) + bend.allowanceMm() + plate.straightMm(1), plate.flatLengthMm(), 1e-9);
  }

  @Test
  void plateThatCannotBeBentIsRefused() {
    PlateBend bend = bendIn(0.25, 1, 0.42, 90);
    assertThrows(IllegalArgumentException.class, () -> new BentPlate(List.of(50.0), List.of(bend)));
    assertThrows(
        IllegalArgumentException.class, () -> new BentPlate(List.of(20.0, 80.0), List.of(bend)));
    assertThrows(IllegalArgumentException.class, () -> bendIn(0.25, 1, 0.42, 180));
  }
}
