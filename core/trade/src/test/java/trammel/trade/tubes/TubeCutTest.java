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
import trammel.trade.hardware.ScrewThread;
import trammel.trade.steel.RoundTube;

class TubeCutTest {
  private static final double INCH = 25.4;
  private static final double LB_PER_KG = 2.20462262;
  private static final RoundTube TUBE = new RoundTube(1.75 * INCH, 0.120 * INCH);

  /** Invented joint: shank 60 with 45 of thread, 3/4-16, jam nut 10. */
  private static final ThreadedShank JOINT =
      new ThreadedShank("joint 3/4", ScrewThread.of("3/4-16"), 60.0, 45.0, 10.0);

  @ParameterizedTest
  @CsvSource({
    // lb/ft from pi (D - t) t at 0.2836 lb/in3: steel tube table.
    "1.25, 0.250, 2.6725",
    "1.50, 0.120, 1.7703",
    "1.75, 0.120, 2.0910",
    "2.00, 0.250, 4.6769",
  })
  void tubeHasThePublishedWeight(double outside, double wall, double poundsPerFoot) {
    RoundTube tube = new RoundTube(outside * INCH, wall * INCH);
    assertEquals(poundsPerFoot, tube.massKg(12.0 * INCH) * LB_PER_KG, 0.0005 * poundsPerFoot);
  }

  @ParameterizedTest
  @CsvSource({"1.75, 0.120, 0.6145", "2.00, 0.250, 1.3744", "1.25, 0.250, 0.7854"})
  void tubeHasThePublishedArea(double outside, double wall, double areaIn2) {
    RoundTube tube = new RoundTube(outside * INCH, wall * INCH);
    assertEquals(areaIn2, tube.sectionAreaMm2() / (INCH * INCH), 5e-5);
  }

  @Test
  void threadRangeRunsFromTheJamNutToTheLeastEngagement() {
    // Neck 15 and jam nut 10: no nearer than 25. One diameter of 19.05: no further than 40.95.
    ThreadRange range = ThreadedEnd.of(JOINT, 8.0, 30.0, 38.0).range();
    assertEquals(25.0, range.shortestMm(), 1e-9);
    assertEquals(40.95, range.longestMm(), 1e-9);
    assertEquals(32.975, range.middleMm(), 1e-9);
  }

  @Test
  void shallowBoreLimitsHowFarTheJointScrewsIn() {
    // Thread 30 deep: the tip bottoms when the joint is 60 - 30 = 30 from the face.
    assertEquals(30.0, ThreadedEnd.of(JOINT, 8.0, 30.0, 30.0).range().shortestMm(), 1e-9);
  }

  @Test
  void cutLengthIsCentresLessBothEnds() {
    ThreadedEnd threaded = ThreadedEnd.of(JOINT, 8.0, 30.0, 38.0);
    BushedEnd bushed = BushedEnd.square(2.0 * INCH);
    TubeCut cut = TubeCut.straight("lower bar", TUBE, 650.0, bushed, threaded);
    // Tips of the cope: sqrt(R2 - r2) = sqrt(1 - .875^2) in from the barrel's centre.
    double tips = Math.sqrt(1.0 - 0.875 * 0.875) * INCH;
    assertEquals(650.0 - tips - (32.975 + 8.0), cut.lengthMm(), 1e-6);
    assertEquals(650.0 - 7.975, cut.shortestBarMm(), 1e-9);
    assertEquals(650.0 + 7.975, cut.longestBarMm(), 1e-9);
  }

  @Test
  void bentBarIsCutToItsDevelopedLength() {
    BentBar bar = BentBar.arched(600.0, 40.0, 120.0);
    TubeCut cut = new TubeCut("upper bar", TUBE, bar, new PlainEnd(30.0), new PlainEnd(20.0));
    assertEquals(bar.developedLengthMm() - 50.0, cut.lengthMm(), 1e-9);
    assertEquals(TUBE.massKg(cut.lengthMm()), cut.weightKg(), 1e-12);
  }

  @Seeds(300)
  void everySettingWithinTheRangeKeepsEngagementAndJamNut(Draw draw) {
    double shankMm = draw.between(40.0, 90.0);
    double threadShare = draw.between(0.4, 1.0);
    double boreMm = draw.between(20.0, 60.0);
    double setting = draw.between(0.0, 1.0);
    ThreadedShank joint =
        new ThreadedShank("joint", ScrewThread.of("5/8-18"), shankMm, threadShare * shankMm, 9.0);
    ThreadRange range;
    try {
      range = ThreadRange.of(joint, boreMm, 15.875);
    } catch (IllegalArgumentException refused) {
      // With so little thread even the jam nut and one diameter do not fit together.
      assertTrue(threadShare * shankMm <= 9.0 + 15.875 || boreMm <= 15.875);
      return;
    }
    double gap = range.shortestMm() + setting * (range.longestMm() - range.shortestMm());
    double engaged = shankMm - gap;
    assertTrue(engaged >= 15.875 - 1e-9, "engagement of one diameter");
    assertTrue(engaged <= boreMm + 1e-9, "tip within the bore");
    double neck = shankMm - threadShare * shankMm;
    assertTrue(gap >= neck + 9.0 - 1e-9, "jam nut on thread");
  }

  @Test
  void endsThatTakeUpTheWholeBarAreRefused() {
    ThreadedEnd threaded = ThreadedEnd.of(JOINT, 8.0, 30.0, 38.0);
    String message =
        assertThrows(
                IllegalArgumentException.class,
                () -> TubeCut.straight("short bar", TUBE, 120.0, threaded, threaded))
            .getMessage();
    // Both weld-in ends reach 30 into the tube: 60 needed.
    assertTrue(message.contains("60 mm (2.362 in) or more"), message);
  }

  @Test
  void jointWithoutAdjustmentIsRefused() {
    ThreadedShank stub = new ThreadedShank("stub", ScrewThread.of("3/4-16"), 40.0, 25.0, 10.0);
    String message =
        assertThrows(IllegalArgumentException.class, () -> ThreadedEnd.of(stub, 8.0, 30.0, 38.0))
            .getMessage();
    // Neck 15 + nut 10 = 25 against 40 - 19.05 = 20.95.
    assertTrue(message.contains("longer thread by 4.05 mm"), message);
  }

  @Test
  void engagementBelowOneDiameterIsRefused() {
    assertThrows(
        IllegalArgumentException.class, () -> new ThreadedEnd(JOINT, 8.0, 30.0, 38.0, 12.0, 0.0));
  }

  @Test
  void bendTooNearTheJointIsRefused() {
    BentBar bar = new BentBar(List.of(60.0, 400.0), List.of(new Bend(0.3, 120.0)));
    ThreadedEnd threaded = ThreadedEnd.of(JOINT, 8.0, 30.0, 38.0);
    assertThrows(
        IllegalArgumentException.class,
        () -> new TubeCut("upper bar", TUBE, bar, threaded, new PlainEnd(0.0)));
  }

  @Test
  void thickTubeMayBeTappedAndThinMayNot() {
    ThreadedShank joint =
        new ThreadedShank("joint 7/8", ScrewThread.of("7/8-14"), 70.0, 50.0, 12.0);
    TappedEnd tapped = TappedEnd.of(joint, 45.0);
    RoundTube thick = new RoundTube(1.25 * INCH, 0.250 * INCH);
    TubeCut cut = TubeCut.straight("bar", thick, 600.0, tapped, tapped);
    assertEquals(600.0 - 2.0 * tapped.range().middleMm(), cut.lengthMm(), 1e-9);
    // Full thread and the four threads of a plug tap's lead.
    assertEquals(45.0 + 4.0 * INCH / 14.0, tapped.drillDepthMm(), 1e-9);
    RoundTube thin = new RoundTube(1.25 * INCH, 0.120 * INCH);
    String message =
        assertThrows(
                IllegalArgumentException.class,
                () -> TubeCut.straight("bar", thin, 600.0, tapped, tapped))
            .getMessage();
    assertTrue(message.contains("thicker wall"), message);
  }

  @Test
  void spigotLargerThanTheBoreIsRefused() {
    ThreadedEnd end = new ThreadedEnd(JOINT, 8.0, 30.0, 38.0, 19.05, 1.6 * INCH);
    assertThrows(
        IllegalArgumentException.class,
        () -> TubeCut.straight("bar", TUBE, 600.0, end, new PlainEnd(0.0)));
  }

  @Test
  void tubeFatterThanItsBarrelIsRefused() {
    BushedEnd small = BushedEnd.square(1.5 * INCH);
    assertThrows(
        IllegalArgumentException.class,
        () -> TubeCut.straight("bar", TUBE, 600.0, small, new PlainEnd(0.0)));
  }
}
