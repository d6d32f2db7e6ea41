package trammel.engine.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trammel.engine.checks.SampleLayout.INCH;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Masses;
import trammel.engine.springs.RollStiffness;

/** Roll of the body; formulas of Gillespie 1992 ch. 6 and Barton and Fieldhouse 2018 p. 225. */
class BodyRollTest {
  private static final double POUND_KG = 0.45359237;
  private static final double INCH_POUND_NMM = 4.4482216152605 * INCH;

  private static double perRad(double inchPoundsPerDegree) {
    return Math.toDegrees(inchPoundsPerDegree * INCH_POUND_NMM);
  }

  /** k 180 lb/in each, 38 in apart: half k s squared, 2,268.2 in lb/deg. */
  @Test
  void springsInboardOfTheTyresHoldRollByTheirOwnBase() {
    double stiffness = RollStiffness.rigidAxleNmmPerRad(180 * 4.4482216152605 / INCH, 38 * INCH);

    assertEquals(perRad(2268.2), stiffness, 1e-4 * stiffness);
    // At tyres 62 in apart that is 67.617 lb/in each, k (s/t)2, against 180 in heave.
    double atTyre = 2 * stiffness / Math.pow(62 * INCH, 2) / 4.4482216152605 * INCH;
    assertEquals(67.617, atTyre, 1e-4 * atTyre);
  }

  /** W 3,600 lb sprung, 14.5 in over the axis, 7,900 + 4,300 in lb/deg: 4.6240 deg/g. */
  @Test
  void theBodyRollsByWeightTimesArmOverWhatIsLeftOfTheStiffness() {
    double rollRad =
        RollStiffness.rollRadPerG(3600 * 4.4482216152605, 14.5 * INCH, perRad(7900) + perRad(4300));

    assertEquals(4.6240, Math.toDegrees(rollRad), 5e-4);
  }

  /**
   * By hand: front 2,200 lb of which 264 are unsprung, rear 2,000 with 380; radius 14.5 in, height
   * 25. The sprung 3,556 lb lie at (4,200 x 25 - 644 x 14.5)/3,556 = 26.902 in; with the rear's
   * roll centre at 16 in the axis passes 16 x 1,620/3,556 = 7.289 in under them: arm 19.613 in.
   * With 9,000 and 3,000 in lb/deg they roll 69,743/(687,549 - 69,743) = 0.11289 rad, 6.468 deg a
   * g. The rear tyres hold 3,000 x 6.468 + 1,620 x 16 + 380 x 14.5 = 50,834 in lb of 105,000.
   */
  @Test
  void eachAxleCarriesItsSpringsItsRollCentreAndItsOwnWeight() {
    Masses masses =
        new Masses(
            2200 * POUND_KG,
            1000 * POUND_KG,
            1000 * POUND_KG,
            380 * POUND_KG,
            25 * INCH,
            OptionalDouble.of(perRad(9000)));
    Chassis chassis = SampleLayout.chassis().withMasses(masses);
    BodyRoll roll = BodyRoll.of(chassis, perRad(3000), 0, 16 * INCH);

    assertEquals(19.613, roll.armMm() / INCH, 1e-3);
    assertEquals(6.468, Math.toDegrees(roll.rollRadPerG().orElseThrow()), 2e-3);
    assertEquals(50_834.0 / 105_000, roll.rearTransferShare(), 1e-4);
    assertEquals(0.25, roll.rearStiffnessShare(), 1e-9);
    assertTrue(roll.frontMeasured(), "measured");
  }

  /** Springs too soft to hold the body upright. */
  @Test
  void aBodyThatTheSpringsCannotHoldHasNoAngle() {
    Masses masses = new Masses(1000, 450, 450, 170, 1000, OptionalDouble.of(perRad(300)));
    BodyRoll roll = BodyRoll.of(SampleLayout.chassis().withMasses(masses), perRad(200), 0, 300);

    assertTrue(roll.rollRadPerG().isEmpty(), "falls over");
    assertTrue(roll.rearTransferShare() <= 1, "a share");
  }
}
