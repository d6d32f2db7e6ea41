package trammel.engine.driveline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trammel.engine.quantity.ShopUnits.degrees;
import static trammel.engine.quantity.ShopUnits.mm;
import static trammel.engine.quantity.ShopUnits.rad;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class JointPairTest {
  @ParameterizedTest(name = "{0}° and {1}°")
  @CsvSource({"5, 4, 3.000, 270.6", "4, 3, 2.646, 210.5", "6, 5, 3.317, 330.7"})
  void residualAndTorsionalAccelerationAtThreeThousandRpm(
      double firstDeg, double secondDeg, double residualDeg, double acceleration) {
    JointPair pair = new JointPair(rad(firstDeg), rad(secondDeg));
    assertEquals(residualDeg, degrees(pair.residualRad()), 0.0005, "standard √|β₁² − β₂²|");
    assertEquals(
        acceleration, pair.torsionalAccelerationRadPerS2(3000), 0.05, "standard ω²β² of it");
  }

  @Test
  void equalAnglesCancel() {
    assertEquals(0.0, new JointPair(rad(7), rad(7)).torsionalAccelerationRadPerS2(4000));
  }

  @Test
  void aQuarterTurnOutOfLineNothingCancelsInKhurmiAndGuptaExample97() {
    JointPair pair = new JointPair(rad(20), rad(20));
    String source = "Khurmi and Gupta ex. 9.7, 500 rpm";
    UniversalJoint first = new UniversalJoint(rad(20));
    assertEquals(532.1, 500 * first.maxSpeedRatio(), 0.05, source);
    assertEquals(469.8, 500 * first.minSpeedRatio(), 0.05, source);
    assertEquals(566.2, 500 * pair.maxSpeedRatioOutOfPhase(), 0.05, source);
    assertEquals(441.5, 500 * pair.minSpeedRatioOutOfPhase(), 0.05, source);
    assertEquals(20 * Math.sqrt(2), degrees(pair.residualOutOfPhaseRad()), 1e-9, "closed form");
  }

  /** Two-joint table for 1500 rpm; its rows follow the residual rule at about 400 rad/s². */
  @ParameterizedTest(name = "first joint {0}°")
  @CsvSource({
    "0, 7.3, 7.30", "1, 7.4, 7.37", "2, 7.6, 7.57", "3, 7.9, 7.89", "4, 8.3, 8.32",
    "5, 8.9, 8.85", "6, 9.5, 9.45", "7, 10.1, 10.11", "8, 10.8, 10.83", "9, 11.6, 11.59"
  })
  void secondJointOfTheTwoJointTable(double firstDeg, double tableDeg, double ruleDeg) {
    double byRule = JointPair.largestSecondAngleRad(rad(firstDeg), rad(7.3));
    assertEquals(ruleDeg, degrees(byRule), 0.006, "closed form √(7.3² + β₁²)");
    double allowed = JointPair.angleForAccelerationRad(1500, JointPair.TWO_JOINT_TABLE_RAD_PER_S2);
    double byLimit = JointPair.largestSecondAngleRad(rad(firstDeg), allowed);
    assertEquals(tableDeg, degrees(byLimit), 0.06, "two-joint table after SAE AE-7 section 3.1.1");
  }

  @ParameterizedTest(name = "{0} rad/s² at {1} rpm")
  @CsvSource({
    "300, 3000, 3.159, 'maker quoted in the trade press, 300 rad/s²'",
    "300, 4000, 2.369, 'maker quoted in the trade press, 300 rad/s²'",
    "1000, 3000, 5.767, 'maker quoted in the trade press, 1000 rad/s²'",
    "1000, 2000, 8.651, 'maker quoted in the trade press, 1000 rad/s²'"
  })
  void angleThatReachesAnAccelerationLimit(
      double limit, double rpm, double angleDeg, String source) {
    double angle = JointPair.angleForAccelerationRad(rpm, limit);
    assertEquals(angleDeg, degrees(angle), 0.0005, source);
  }

  @ParameterizedTest(name = "{0}° plan, {1}° side")
  @CsvSource({
    "2.15, 2.5, 3.296, 3.297, 'J3311-1 p. 13 (prints 3.3)'",
    "3, 4, 4.994, 5.000, closed form",
    "8, 6, 9.954, 10.000, closed form"
  })
  void compoundAngle(
      double planDeg, double sideDeg, double exactDeg, double manualDeg, String source) {
    double exact = degrees(CompoundAngle.trueRad(rad(planDeg), rad(sideDeg)));
    assertEquals(exactDeg, exact, 0.0005, source);
    assertTrue(exact < manualDeg, "the manuals' √(T² + S²) is a little over");
  }

  @Test
  void planAngleFromOffsets() {
    double angle = CompoundAngle.planRad(mm(3.25), 0, mm(48));
    assertEquals(3.873, degrees(angle), 0.0005, "MM-96147 p. 87: 3.25 in over 48 in");
  }

  @Seeds(1000)
  void theCompoundAngleIsNotUnderEitherViewAndDoesNotCareWhichIsWhich(Draw draw) {
    double planDeg = draw.between(-70, 70);
    double sideDeg = draw.between(-70, 70);
    double angle = degrees(CompoundAngle.trueRad(rad(planDeg), rad(sideDeg)));
    assertTrue(angle >= Math.max(Math.abs(planDeg), Math.abs(sideDeg)) - 1e-9);
    assertEquals(angle, degrees(CompoundAngle.trueRad(rad(-sideDeg), rad(planDeg))), 1e-9);
  }

  @Seeds(1000)
  void theSecondJointAtItsLimitLeavesExactlyTheAllowedResidual(Draw draw) {
    double firstDeg = draw.between(0, 20);
    double allowedDeg = draw.between(0.5, 10);
    double second = JointPair.largestSecondAngleRad(rad(firstDeg), rad(allowedDeg));
    double left = new JointPair(rad(firstDeg), second).residualRad();
    assertEquals(allowedDeg, degrees(left), 1e-6);
  }

  @Test
  void anImpossibleAngleIsRefusedByName() {
    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> new JointPair(0.1, -0.1));
    assertTrue(refusal.getMessage().startsWith("The second joint angle ("), refusal.getMessage());
  }
}
