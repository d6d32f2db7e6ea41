package trammel.engine.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trammel.engine.checks.SampleLayout.INCH;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trammel.engine.clearance.Box;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Obstacle;
import trammel.engine.layout.ObstacleKind;
import trammel.engine.layout.SpringKind;
import trammel.engine.layout.SpringUnit;
import trammel.engine.quantity.Gravity;
import trammel.engine.springs.BumpStop;

/** What happens at the ends of the travel, at the tyres, and to the pinion. */
class MotionAtItsEndsTest {
  private static final Layout GOOD = SampleLayout.good();

  private static double detail(Reading.Value reading, String words) {
    return reading.details().stream()
        .filter(detail -> detail.words().startsWith(words))
        .findFirst()
        .orElseThrow()
        .value();
  }

  /**
   * The stop takes up the last third of 3 1/2 in. What moves is caught by the springs, squeezed by
   * two thirds already, and the stop: both sides of the balance of energy.
   */
  @Test
  void theStopsTakeUpWhatTheSpringsLeave() {
    Reading.Value reading = SampleLayout.reading(GOOD, "bump-stop-room");
    LayoutAnalysis analysis = new LayoutAnalysis(GOOD, SampleLayout.settings());
    BumpStop stop = AnalysisSettings.USUAL_STOP;
    double sprungKg = GOOD.chassis().masses().sprungPerRearCornerKg();
    double rate = analysis.ride().rates().heaveNPerMm();
    double squeezed = detail(reading, "stop squeezed by");
    double metAt = 3.5 * INCH * 2 / 3;

    double moving = 0.5 * sprungKg / 1000 * Math.pow(40 * INCH, 2);
    double springs = rate * (Math.pow(metAt + squeezed, 2) - metAt * metAt) / 2;
    assertEquals(moving, springs + stop.energyNmm(squeezed), 1e-6 * moving);
    assertEquals(moving, detail(reading, "energy of each side"), 1e-6 * moving);
    double load =
        1 + (rate * (metAt + squeezed) + stop.forceN(squeezed)) / (sprungKg * Gravity.M_PER_S2);
    assertEquals(load, detail(reading, "load that the body"), 1e-9 * load);
    assertEquals(
        SampleLayout.value(GOOD, "axle-to-rail") + 3.5 * INCH / 3 - squeezed,
        reading.value(),
        1e-6);
  }

  /** Tyre 10 in wide, middle 32.25 in out: its inner face is 8.75 in from the rail 18.5 in out. */
  @Test
  void aWheelHouseThatTheTyreReachesIsAStop() {
    double free = SampleLayout.value(GOOD, "clearance-tyre");
    Box house =
        Box.between(
            -200, 200, 27 * INCH, 40 * INCH, (14.5 + 15 + 2) * INCH, (14.5 + 15 + 2.1) * INCH);
    Layout under =
        GOOD.withChassis(
            GOOD.chassis()
                .withObstacles(
                    List.of(new Obstacle("left wheel house", ObstacleKind.OTHER, house))));
    Reading.Value reading = SampleLayout.reading(under, "clearance-tyre");

    assertTrue(free > INCH && free < 8.75 * INCH, "" + free);
    // 2 in over the tyre at ride, 3 1/2 in of bump; the tyre leans in roll, so a little more.
    assertEquals(-1.5 * INCH, reading.value(), 0.7 * INCH);
    assertTrue(reading.where().toString().contains("wheel house"), reading.where().toString());
  }

  /** Stiffer bushings turn less; driven the nose comes up, braked it goes down. */
  @Test
  void driveAndBrakingTurnThePinionAgainstTheBushings() {
    LayoutAnalysis analysis = new LayoutAnalysis(GOOD, SampleLayout.settings());
    BarForces forces = analysis.barForces();
    double launch = 0;
    double braking = 0;
    for (int i = 0; i < forces.cases().size(); i++) {
      String name = forces.cases().get(i).name();
      if (name.equals("launch")) {
        launch = forces.windUpRad(i);
      } else if (name.equals("braking")) {
        braking = forces.windUpRad(i);
      }
    }
    assertTrue(launch > 0, "nose up under drive: " + launch);
    assertTrue(braking < 0, "nose down under braking: " + braking);
    Reading.Value reading = SampleLayout.reading(GOOD, "pinion-wind-up");
    assertTrue(reading.value() >= Math.abs(launch) - 1e-12, reading.where().toString());
  }

  /**
   * Statics by hand. A grip of 0.9 under 1,750 lb and what drive throws onto it, 25/118 of the
   * push: 0.9 x 7,784/(1 - 0.9 x 25/118) = 8,657 N at 14 1/2 in below the axle. About the upper
   * bars' ends, 4 1/2 in over it, and the lower ones', 3 in under it: 13,274 N in the two upper
   * bars, 21,931 N in the lower. Each bar gives by 5,000 N/mm: (1.327 + 2.193) mm over 7 1/2 in,
   * 18.5 mrad. The slope of the bars carries 734 N of the 1,834 N that come onto the axle, the
   * springs 6 in behind it the rest, which turns it by 0.9 mrad more.
   */
  @Test
  void launchTurnsThePinionByWhatTheBushingsGive() {
    Reading.Value reading = SampleLayout.reading(GOOD, "pinion-wind-up");

    assertEquals("launch, nose up", reading.where().toString());
    assertEquals(0.0194, reading.value(), 0.02 * 0.0194);
  }

  /** A coil keeps the body up; without air it lies on its stop, and the joints turn. */
  @Test
  void airThatIsLostTurnsTheJoints() {
    assertTrue(
        SampleLayout.readingOrReason(GOOD, "air-lost") instanceof Reading.NotApplicable, "coils");
    List<SpringUnit> air =
        GOOD.springs().stream()
            .map(
                one ->
                    new SpringUnit(
                        one.name(),
                        SpringKind.AIR,
                        one.frame(),
                        one.axle(),
                        one.radiusMm(),
                        one.rateNPerMm(),
                        4 * INCH,
                        18 * INCH,
                        Optional.empty()))
            .toList();
    Layout onAir = GOOD.withSprings(air);
    Reading.Value reading = SampleLayout.reading(onAir, "air-lost");
    // The body leans by 3 1/2 in over a track of 64 1/2 in.
    assertEquals(Math.asin(3.5 / 64.5), detail(reading, "the body leans"), 1e-9);
    double largest = 0;
    for (String words : List.of("front joint, ", "rear joint, ")) {
      largest =
          Math.max(
              largest,
              reading.details().stream()
                  .filter(detail -> detail.words().startsWith(words))
                  .mapToDouble(detail -> detail.value())
                  .max()
                  .orElse(0));
    }
    assertEquals(largest / detail(reading, "allowed"), reading.value(), 1e-9);
  }
}
