package trammel.engine.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trammel.engine.checks.SampleLayout.INCH;

import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Layout;
import trammel.engine.layout.SpringUnit;
import trammel.engine.motion.Load;

/**
 * Tube 3.0 x 0.250 in: S 1.37240 in3. The tyre's load acts 9.5 in outboard of the station. CALC:
 * bending M/S as a vector sum, twist T/2S, von Mises.
 */
class AxleTubeTest {
  private static final double POUND_N = 4.4482216152605;
  private static final double PSI_MPA = POUND_N / (INCH * INCH);
  private static final Chassis CHASSIS = SampleLayout.chassis();

  private static Load atTyre(double outIn, double aheadLb, double upLb, double radiusIn) {
    return Load.force(
        new Point3(0, outIn * INCH, (14.5 - radiusIn) * INCH),
        new Vector3(aheadLb * POUND_N, 0, upLb * POUND_N));
  }

  /** 3 g on a wheel of 1,500 lb: M 42,750 in lb, 31,150 psi. */
  @Test
  void aBumpBendsTheTubeByItsArm() {
    List<Load> bump = List.of(atTyre(29.5, 0, 4500, 14));

    assertEquals(
        31_150, AxleTube.stressMPa(CHASSIS, bump, 20 * INCH, false) / PSI_MPA, 0.001 * 31_150);
  }

  /** 2 g upright, 1,200 lb fore and aft and its torque on 14 in: von Mises 24,752 psi. */
  @Test
  void bendingBothWaysAndTwistCountTogether() {
    List<Load> braking = List.of(atTyre(29.5, 1200, 3000, 14));

    assertEquals(
        24_752, AxleTube.stressMPa(CHASSIS, braking, 20 * INCH, false) / PSI_MPA, 0.001 * 24_752);
  }

  /**
   * Side force and upright load work against each other on the outer wheel and together on the
   * inner: 2,000 up and 1,600 in at the ground: 2,000 x 9.5 - 1,600 x 14 = -3,400 in lb; 700 and
   * 560 outward: +14,490 in lb.
   */
  @Test
  void sideForceAtTheGroundBendsAgainstTheLoadOnTheOuterWheel() {
    Load outer =
        Load.force(
            new Point3(0, 29.5 * INCH, 0.5 * INCH),
            new Vector3(0, -1600 * POUND_N, 2000 * POUND_N));
    Load inner =
        Load.force(
            new Point3(0, 29.5 * INCH, 0.5 * INCH), new Vector3(0, 560 * POUND_N, 700 * POUND_N));
    double areaIn2 = Math.PI / 4 * (9 - 6.25);

    assertEquals(
        3400 / 1.3724 + 1600 / areaIn2,
        AxleTube.stressMPa(CHASSIS, List.of(outer), 20 * INCH, false) / PSI_MPA,
        2);
    assertEquals(
        14_490 / 1.3724 + 560 / areaIn2,
        AxleTube.stressMPa(CHASSIS, List.of(inner), 20 * INCH, false) / PSI_MPA,
        10);
  }

  /** Springs nearer to the middle leave a longer arm from the tyre. */
  @Test
  void springsFurtherInBendTheTubeMore() {
    Layout layout = SampleLayout.good();
    Layout further =
        layout.withSprings(
            layout.springs().stream().map(spring -> outward(spring, 8 * INCH)).toList());

    assertTrue(
        SampleLayout.value(further, "axle-tube") > SampleLayout.value(layout, "axle-tube"),
        "further apart is stronger");
  }

  private static SpringUnit outward(SpringUnit spring, double byMm) {
    double side = Math.signum(spring.axle().yMm());
    Vector3 by = new Vector3(0, side * byMm, 0);
    return spring
        .withPoint(trammel.engine.layout.End.FRAME, spring.frame().plus(by))
        .withPoint(trammel.engine.layout.End.AXLE, spring.axle().plus(by));
  }
}
