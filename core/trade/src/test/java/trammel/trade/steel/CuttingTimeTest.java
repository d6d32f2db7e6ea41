package trammel.trade.steel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class CuttingTimeTest {

  private static final double INCH = 25.4;
  private static final double FOOT = 304.8;

  /**
   * Eight cuts of 1.75 x .120 tube, 0.6145 in² each, at 9 in²/min and 1.5 min of handling: 8 x
   * (0.0683 + 1.5) is 12.55 min, by hand.
   */
  @Test
  void sawTimeIsCutsTimesAreaOverRateAndHandling() {
    RoundTube tube = new RoundTube(1.75 * INCH, 0.120 * INCH);
    assertEquals(0.6145, tube.sectionAreaMm2() / (INCH * INCH), 0.0001);
    SawSetup saw = new SawSetup(9 * INCH * INCH, 1.5);
    assertEquals(12.55, saw.minutes(8, tube.sectionAreaMm2()), 0.005);
  }

  /** Machinery's Handbook, n = 12 V / (pi d), from memory: 1/2 in at 80 ft/min, 611.155. */
  @Test
  void spindleSpeedFollowsFromRimSpeed() {
    assertEquals(611.155, DrillSetup.turnsPerMin(80 * FOOT, INCH / 2), 0.001);
    // 4,584 is worked with the trade's 3.82 for 12/pi, 0.01 % above the exact figure.
    assertEquals(4584, DrillSetup.turnsPerMin(300 * FOOT, INCH / 4), 1);
  }

  /** Derived: 1/2 in through 1/4 plate at .006 in per turn, lead .1502 in, .1091 min. */
  @Test
  void drillingTimeCountsThePoint() {
    assertEquals(0.1502 * INCH, DrillSetup.pointLeadMm(INCH / 2), 0.0001 * INCH);
    DrillSetup drill = new DrillSetup(80 * FOOT, 0.006 * INCH);
    assertEquals(0.1091, drill.minutes(INCH / 2, INCH / 4), 0.0001);
  }

  /** Derived: 1/2-13 at 30 ft/min, .5 in deep, 4 threads of lead: 229.2 turns/min, .0916 min. */
  @Test
  void tappingTimeCountsTheWayOut() {
    assertEquals(229.2, DrillSetup.turnsPerMin(30 * FOOT, INCH / 2), 0.05);
    TapSetup tap = new TapSetup(30 * FOOT, 4);
    assertEquals(0.0916, tap.minutes(INCH / 2, INCH / 13, INCH / 2), 0.00005);
  }

  /**
   * Constructed: 4 pieces with 22.6 in edge and one 17/32 hole each, lead .25 in, 75 in/min, .4 s:
   * 99.076 in, 1.374 min.
   */
  @Test
  void plasmaTimeCountsLeadInsAndPierces() {
    PlasmaSetup plasma = new PlasmaSetup(75 * INCH, 0.4, 0.25 * INCH);
    double edgeMm = 4 * (22.6 + Math.PI * 17 / 32) * INCH;
    assertEquals(99.076, plasma.travelMm(edgeMm, 8) / INCH, 0.001);
    assertEquals(1.374, plasma.minutes(edgeMm, 8), 0.0005);
  }

  @Test
  void impossibleSettingsAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new SawSetup(0, 1));
    assertThrows(IllegalArgumentException.class, () -> new SawSetup(100, 1).minutes(-1, 10));
    assertThrows(IllegalArgumentException.class, () -> new DrillSetup(1, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new TapSetup(1000, 99));
    assertThrows(IllegalArgumentException.class, () -> new PlasmaSetup(-5, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> new PlasmaSetup(1000, 0, 0).minutes(-1, 0));
  }
}
