package trammel.engine.driveline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trammel.engine.quantity.ShopUnits.degrees;
import static trammel.engine.quantity.ShopUnits.rad;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class UniversalJointTest {
  @ParameterizedTest(name = "{0}°")
  @CsvSource({
    "3, 1.001372, 0.998630, 0.002743",
    "5, 1.003820, 0.996195, 0.007625",
    "8, 1.009828, 0.990268, 0.019560",
    "10, 1.015427, 0.984808, 0.030619",
    "15, 1.035276, 0.965926, 0.069350",
    "20, 1.064178, 0.939693, 0.124485"
  })
  void speedSwings(double angleDeg, double max, double min, double swing) {
    UniversalJoint joint = new UniversalJoint(rad(angleDeg));
    String source = "Khurmi and Gupta ch. 9, closed form";
    assertEquals(max, joint.maxSpeedRatio(), 0.0000005, source);
    assertEquals(min, joint.minSpeedRatio(), 0.0000005, source);
    assertEquals(swing, joint.nonUniformity(), 0.0000005, source);
    assertEquals(max, joint.speedRatioAt(0), 0.0000005, source);
    assertEquals(min, joint.speedRatioAt(Math.PI / 2), 0.0000005, source);
  }

  @Test
  void accelerationAndTorqueOfKhurmiAndGuptaExample92() {
    UniversalJoint joint = new UniversalJoint(rad(20));
    // The book drops the first term of the equation for θ: 41.43° where the root is 41.46°.
    assertEquals(41.43, degrees(joint.rotationAtMaxAccelerationRad()), 0.03, "ex. 9.2");
    double acceleration = joint.maxAccelerationRadPerS2(1500);
    assertEquals(3083, acceleration, 0.5, "Khurmi and Gupta ex. 9.2, ω not rounded");
    double torque = ShaftTorque.fromInertiaNmm(0.12, acceleration);
    assertEquals(370.0, torque / 1000, 0.05, "Khurmi and Gupta ex. 9.2, N·m");
  }

  @Test
  void angleForATotalFluctuationOfKhurmiAndGuptaExample95() {
    UniversalJoint joint = UniversalJoint.withNonUniformity(100.0 / 1200.0);
    assertEquals(16.42, degrees(joint.angleRad()), 0.005, "Khurmi and Gupta ex. 9.5");
    assertEquals(1251.0, 1200 * joint.maxSpeedRatio(), 0.05, "Khurmi and Gupta ex. 9.5");
    assertEquals(1151.0, 1200 * joint.minSpeedRatio(), 0.05, "Khurmi and Gupta ex. 9.5");
  }

  @ParameterizedTest(name = "{0}°")
  @CsvSource({"3, 270.71, 270.58", "5, 752.58, 751.61"})
  void accelerationAtThreeThousandRpm(double angleDeg, double exact, double smallAngle) {
    double angle = rad(angleDeg);
    assertEquals(
        exact,
        new UniversalJoint(angle).maxAccelerationRadPerS2(3000),
        0.005,
        "Khurmi and Gupta ch. 9, closed form");
    assertEquals(
        smallAngle,
        new JointPair(angle, angle).inertiaAccelerationRadPerS2(3000),
        0.005,
        "closed form ω²β²");
  }

  /** The published row counts the rotation from where the output turns slowest. */
  @Test
  void outputRotationBehindAJointAtTenDegrees() {
    UniversalJoint joint = new UniversalJoint(rad(10));
    double output = joint.outputRotationRad(rad(30 - 90)) + rad(90);
    assertEquals(29.622, degrees(output), 0.0005, "closed form tanθ₂ = tanθ₁ cosβ");
  }

  @Test
  void largestRotationErrorAtTenDegrees() {
    double error = new UniversalJoint(rad(10)).largestRotationErrorRad();
    assertEquals(0.4386, degrees(error), 0.00005, "closed form atan[(1 − cosβ)/(2√cosβ)]");
  }

  @Test
  void aStraightJointIsNoJoint() {
    UniversalJoint straight = new UniversalJoint(0);
    assertEquals(1.0, straight.maxSpeedRatio());
    assertEquals(0.0, straight.nonUniformity());
    assertEquals(0.0, straight.maxAccelerationRadPerS2(5000));
    assertEquals(1.234, straight.outputRotationRad(1.234));
  }

  @Seeds(1000)
  void theSpeedRatioIsTheSlopeOfTheRotationAndStaysBetweenItsExtremes(Draw draw) {
    double angleDeg = draw.between(0, 60);
    double rotationDeg = draw.between(-400, 400);
    UniversalJoint joint = new UniversalJoint(rad(angleDeg));
    double rotation = rad(rotationDeg);
    double step = 1e-5;
    double slope =
        (joint.outputRotationRad(rotation + step) - joint.outputRotationRad(rotation - step))
            / (2 * step);
    double ratio = joint.speedRatioAt(rotation);
    assertEquals(slope, ratio, 1e-6);
    assertTrue(ratio <= joint.maxSpeedRatio() + 1e-12 && ratio >= joint.minSpeedRatio() - 1e-12);
    double error = Math.abs(joint.outputRotationRad(rotation) - rotation);
    assertTrue(error <= joint.largestRotationErrorRad() + 1e-12);
  }

  @Seeds(1000)
  void noRotationAcceleratesMoreThanTheGreatest(Draw draw) {
    double angleDeg = draw.between(0.5, 60);
    double rotationDeg = draw.between(0, 90);
    UniversalJoint joint = new UniversalJoint(rad(angleDeg));
    double step = 1e-5;
    double slope =
        (joint.speedRatioAt(rad(rotationDeg) + step) - joint.speedRatioAt(rad(rotationDeg) - step))
            / (2 * step);
    double speedRpm = 30 / Math.PI;
    assertTrue(Math.abs(slope) <= joint.maxAccelerationRadPerS2(speedRpm) * (1 + 1e-6));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, 81, Double.NaN})
  void anImpossibleAngleIsRefused(double angleDeg) {
    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> new UniversalJoint(rad(angleDeg)));
    assertTrue(refusal.getMessage().contains("from 0° to 80°"), refusal.getMessage());
  }
}
