package trammel.engine.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.engine.geometry.Vector3;
import trammel.engine.loads.LoadCase;

/** What the axle puts into the frame, by statics of the axle as a free body. */
class FrameLoadsTest {
  private static final double POUND_N = 4.4482216152605;

  private static LayoutAnalysis analysis(LoadCase... cases) {
    AnalysisSettings settings = new AnalysisSettings(30, List.of(cases));
    return new LayoutAnalysis(SampleLayout.good(), settings.withHardCases(List.of(cases)));
  }

  private static Vector3 sum(FrameLoads.AtOnce atOnce) {
    Vector3 sum = new Vector3(0, 0, 0);
    for (FrameLoads.Force force : atOnce.forces()) {
      sum = sum.plus(force.forceN());
    }
    return sum.scaled(1 / POUND_N);
  }

  /** The frame carries what the rear weighs less axle and wheels: 1,750 - 380 lb. */
  @Test
  void standingTheFrameCarriesTheSprungWeight() {
    LayoutAnalysis standing = analysis(new LoadCase("standing", 0, 0, 0, 1, 1, 1));

    Vector3 sum = sum(FrameLoads.of(standing).get(0));

    assertEquals(1_370, sum.z(), 1);
    assertEquals(0, sum.x(), 1);
    assertEquals(0, sum.y(), 1);
  }

  /**
   * Braking at 1 g, the rear tyres by their grip of 0.9: 4,300 lb x 25/118 = 911 come off them, 0.9
   * x 839 = 755 lb push back at the ground; the axle's own 380 lb push forward. The frame is held
   * back by 375 lb and carries 1,370 - 911.
   */
  @Test
  void brakingTheFrameIsHeldBackByTheTyresLessTheAxle() {
    LayoutAnalysis braking = analysis(new LoadCase("braking", 0, 1, 0, 1, 1, 1));

    Vector3 sum = sum(FrameLoads.of(braking).get(0));

    assertEquals(-375, sum.x(), 2);
    assertEquals(459, sum.z(), 2);
  }

  /** In a bend it is pushed outward: a left-hand bend, to the right, by 0.8 of 1,370 lb. */
  @Test
  void inABendTheFrameIsPushedOutward() {
    LayoutAnalysis bend = analysis(new LoadCase("bend", 0, 0, 0.8, 1, 1, 1));

    assertEquals(0.8 * 1_370, Math.abs(sum(FrameLoads.of(bend).get(0)).y()), 2);
  }

  /** Under blows the stops push on both rails, and springs go past full bump. */
  @Test
  void underBlowsTheStopsAreMetAtSpeed() {
    LayoutAnalysis usual = analysis(new LoadCase("standing", 0, 0, 0, 1, 1, 1));
    LayoutAnalysis blows = usual.underBlows().orElseThrow();
    List<FrameLoads.AtOnce> all = FrameLoads.of(blows);
    FrameLoads.AtOnce met = all.get(1);

    assertEquals("bump stops met at speed", met.name());
    assertEquals(2, met.forces().stream().filter(one -> one.unit().equals("bump stop")).count());
    double pastBump = BumpStopRoom.caughtAtMm(usual) - 3.5 * SampleLayout.INCH;
    assertTrue(pastBump > 0, "met a third before full bump at 40 in/s");
    double more = blows.mountForces().shortestN(0) - usual.mountForces().shortestN(0);
    // A coil that leans little: its rate times what it is squeezed further.
    double rate = SampleLayout.good().springs().get(0).rateNPerMm();
    assertEquals(rate * pastBump, more, 0.1 * rate * pastBump);
  }

  /** An axle that tops out pulls with three times its half, with five times under blows. */
  @Test
  void aBlowPullsHarderOnAShock() {
    LayoutAnalysis usual = analysis(new LoadCase("standing", 0, 0, 0, 1, 1, 1));
    MountForces blows = usual.underBlows().orElseThrow().mountForces();
    double ratio = Math.abs(usual.ride().shocks().get(0).lengthPerMmHeave());

    assertEquals(3 * 190 / ratio, usual.mountForces().hangingN(0) / POUND_N, 1);
    assertEquals(5 * 190 / ratio, blows.hangingN(0) / POUND_N, 1);
    assertEquals(usual.mountForces().fastN(0), blows.fastN(0), 1e-9, "2 m/s is a pothole already");
  }
}
