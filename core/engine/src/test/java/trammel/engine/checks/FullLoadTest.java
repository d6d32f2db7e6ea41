package trammel.engine.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trammel.engine.checks.SampleLayout.INCH;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Masses;
import trammel.engine.layout.Payload;

/** What the vehicle carries, by the lever rule and by arithmetic. */
class FullLoadTest {
  private static final double POUND_KG = 0.45359237;

  /** Front share = load times the distance ahead of the rear axle over the wheelbase. */
  @ParameterizedTest
  @CsvSource({"800, 8, 120, 53.33, 746.67", "600, -14, 118, -71.19, 671.19"})
  void aLoadWeighsOnTheAxlesByItsStation(
      double pounds, double aheadIn, double wheelbaseIn, double frontLb, double rearLb) {
    Payload payload = Payload.at(pounds * POUND_KG, aheadIn * INCH, wheelbaseIn * INCH);

    assertEquals(frontLb, payload.frontKg() / POUND_KG, 5e-3);
    assertEquals(rearLb, payload.rearKg() / POUND_KG, 5e-3);
  }

  private static Layout carrying(double rearLb) {
    Layout layout = SampleLayout.good();
    Masses masses = layout.chassis().masses();
    return layout.withChassis(
        layout
            .chassis()
            .withMasses(
                new Masses(
                    masses.frontAxleKg(),
                    masses.rearLeftKg(),
                    masses.rearRightKg(),
                    masses.rearUnsprungKg(),
                    masses.centreOfGravityHeightMm(),
                    OptionalDouble.empty(),
                    new Payload(0, rearLb * POUND_KG))));
  }

  /** 373.33 lb a side on a wheel rate of 165 lb/in sag 2.2626 in; here by the layout's own rate. */
  @Test
  void coilsSagByLoadOverWheelRateAndLoseBump() {
    Layout layout = carrying(746.67);
    LayoutAnalysis analysis = new LayoutAnalysis(layout, SampleLayout.settings());
    double rateLbPerIn = analysis.ride().rates().heaveNPerMm() * INCH / 4.4482216152605;

    double bumpIn = SampleLayout.value(layout, "bump-travel-loaded") / INCH;
    assertEquals(3.5 - 373.33 / rateLbPerIn, bumpIn, 1e-3);
    assertEquals(2.2626, 373.33 / 165, 1e-4, "the published case");
  }

  /** Frequency falls with the root of the sprung weight: 650 to 1,023.3 lb is 0.79698. */
  @Test
  void onCoilsTheFrequencyFallsWithTheRootOfTheWeight() {
    Layout layout = carrying(2 * (1023.3 / 650 - 1) * 685);

    double share =
        SampleLayout.value(layout, "ride-frequency-loaded")
            / SampleLayout.value(layout, "ride-frequency");
    assertEquals(0.79698, share, 1e-4);
  }

  @Test
  void moreWeightLoadsTheAxleTubeMore() {
    Layout layout = carrying(800);

    assertTrue(
        SampleLayout.value(layout, "axle-tube-loaded") < SampleLayout.value(layout, "axle-tube"));
  }

  @Test
  void whereNothingIsSaidOfTheLoadItIsAskedFor() {
    Reading reading = SampleLayout.readingOrReason(SampleLayout.good(), "bump-travel-loaded");

    assertTrue(
        assertInstanceOf(Reading.Unknown.class, reading)
            .reason()
            .toString()
            .contains("measured.loads"));
  }

  /**
   * Sag shifts where the driveline stands: what `travel` shows at that height, both from the body.
   */
  @Test
  void pinionAndJointsAreJudgedWhereTheLoadedAxleStands() {
    Layout layout = carrying(746.67);
    LayoutAnalysis analysis = new LayoutAnalysis(layout, SampleLayout.settings());
    double sagMm = FullLoad.sagMm(analysis);
    assertTrue(sagMm > 25, "it sags by " + sagMm);

    // The pinion's nose goes down in bump on these bars, as the hand-worked pickup's does.
    double loaded = SampleLayout.value(layout, "pinion-parallel-loaded");
    double empty = SampleLayout.value(layout, "pinion-parallel");
    assertTrue(loaded > empty + Math.toRadians(0.1), loaded + " against " + empty);
    assertEquals(
        "pinion's nose is low",
        SampleLayout.reading(layout, "pinion-parallel-loaded").where().toString());
    assertInstanceOf(
        Reading.NotApplicable.class,
        SampleLayout.readingOrReason(SampleLayout.good(), "pinion-parallel-loaded"));
  }

  /** There is more to catch, and coils have sagged towards the stop. */
  @Test
  void aLoadedBodySqueezesItsStopsFurther() {
    Layout layout = carrying(400);

    double loaded = SampleLayout.value(layout, "bump-stop-room-loaded");
    assertTrue(loaded < SampleLayout.value(layout, "bump-stop-room") - 1);
  }
}
