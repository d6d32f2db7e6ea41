package trammel.engine.driveline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trammel.engine.quantity.ShopUnits.degrees;
import static trammel.engine.quantity.ShopUnits.mm;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.Shaft;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

/** Critical speed, joint angle against speed, torque. */
class DriveShaftTest {
  @ParameterizedTest(name = "{0} x {1} in, {2} in long")
  @CsvSource({
    "3.0, 0.083, 50, 7924, 5547, 7767, 'SAE joint selection graph, 4.8e6'",
    "3.5, 0.083, 60, 6445, 4512, 6317.5, 'SAE joint selection graph, 4.8e6'"
  })
  void criticalSpeedOfATubeInInches(
      double outerIn,
      double wallIn,
      double lengthIn,
      double rpm,
      double usableRpm,
      double handbookRpm,
      String source) {
    DriveShaftTube tube = new DriveShaftTube(mm(outerIn), mm(outerIn - 2 * wallIn), mm(lengthIn));
    assertEquals(rpm, tube.criticalSpeedRpm(), 0.5, source);
    assertEquals(usableRpm, tube.usableSpeedRpm(), 0.5, source);
    assertEquals(
        handbookRpm,
        tube.criticalSpeedRpm(CriticalSpeedConstant.HANDBOOK),
        0.5,
        "handbook constant 4.705e6, from memory");
  }

  @Test
  void criticalSpeedOfATubeInMillimetres() {
    DriveShaftTube tube = new DriveShaftTube(76, 72, 1200);
    double rpm = tube.criticalSpeedRpm(CriticalSpeedConstant.JOINT_SELECTION_GRAPH_METRIC);
    assertEquals(8797, rpm, 0.5, "SAE joint selection graph, 1.21e8");
    assertEquals(6158, DriveShaftTube.USABLE_SHARE * rpm, 0.5, "0.7 of it in vehicles");
  }

  /**
   * Joints 50.0 in apart and 2.5 in down at ride; 49.8 and 0.5 up in bump, 49.7 and 5.5 down in
   * droop: roots of the sums of squares. The yoke is pushed in by 0.2600 in in bump and, though the
   * shaft hangs twice as steep, by 0.0591 in droop.
   */
  @ParameterizedTest
  @CsvSource({"0, 0, 0", "0.2, 3, -0.2600", "0.3, -3, -0.0591"})
  void theSlipYokeMovesByTheShaftsLengthNotByItsHeight(
      double forwardIn, double upIn, double movedIn) {
    Vector3 forward = new Vector3(1, 0, 0);
    Point3 pinion = new Point3(mm(11), 0, mm(14.5));
    Point3 transmission = new Point3(mm(61), 0, mm(17));
    Shaft shaft = new Shaft(pinion, forward, transmission, forward);
    AxlePose pose = new AxlePose(mm(upIn), 0, mm(forwardIn), 0, 0, 0, mm(14.5));

    assertEquals(mm(50.0625 + movedIn), shaft.at(pose).lengthMm(), mm(0.0001));
  }

  /** Pinned beam, first mode: N = 30 π √(EI/(ρA))/L², E 30e6 psi, 0.283 lb/in³. */
  @Test
  void theConstantIsWithinTwoPercentOfBeamTheory() {
    DriveShaftTube tube = new DriveShaftTube(76.2, 71.984, 1270);
    double modulusPa = 30e6 * 6894.757;
    double density = 0.283 * 0.45359237 / Math.pow(0.0254, 3);
    double gyrationM = Math.hypot(76.2, 71.984) / 4000;
    double lengthM = 1.270;
    double beamRpm =
        30 * Math.PI / (lengthM * lengthM) * Math.sqrt(modulusPa / density) * gyrationM;
    assertEquals(beamRpm, tube.criticalSpeedRpm(), 0.02 * beamRpm, "beam theory");
  }

  @ParameterizedTest(name = "{0} rpm")
  @CsvSource({
    "5000, 3.2, J3311-1",
    "4500, 3.7, J3311-1",
    "4000, 4.2, J3311-1",
    "3500, 5.0, J3311-1",
    "3000, 5.8, 'J3311-1, from memory'",
    "2500, 7.0, 'J3311-1, from memory'",
    "2000, 8.7, 'J3311-1, from memory'",
    "1500, 11.5, 'J3311-1, from memory'"
  })
  void largestJointAngleAtASpeed(double rpm, double angleDeg, String source) {
    assertEquals(angleDeg, degrees(JointAngleTable.largestAngleRad(rpm)), 1e-9, source);
  }

  @Seeds(1000)
  void theTableAllowsLessAtMoreSpeedAndHoldsTheInertiaLimit(Draw draw) {
    double rpm = draw.between(0, 19_000);
    double angle = JointAngleTable.largestAngleRad(rpm);
    assertTrue(angle > 0);
    assertTrue(JointAngleTable.largestAngleRad(rpm + 500) <= angle);
    double acceleration = new JointPair(angle, angle).inertiaAccelerationRadPerS2(rpm);
    assertTrue(acceleration < 1.03 * JointPair.INERTIA_LIMIT_RAD_PER_S2, "J3311-1, 0.1° rounded");
  }

  @ParameterizedTest
  @CsvSource({"30, true, 6", "30, false, 3"})
  void largestJointAngleByShaftLength(double lengthIn, boolean parallel, double angleDeg) {
    double angle = JointAngleTable.largestAngleByLengthRad(mm(lengthIn), parallel);
    assertEquals(angleDeg, degrees(angle), 1e-9, "drivetrain supplier's rule, common practice");
  }

  @Test
  void shearStressOfASolidShaft() {
    // π d³/16 of a 20 mm bar is 1570.8 mm³.
    DriveShaftTube bar = new DriveShaftTube(20, 0, 1000);
    assertEquals(100.0, bar.shearStressMPa(157_079.63), 1e-4, "closed form 16T/πd³");
    assertEquals(100.0, bar.shearStressMPa(-157_079.63), 1e-4, "either direction");
  }

  /**
   * 380 lb-ft, converter 2.1 at stall, first 2.84: 2,266.3 lb-ft in the shaft. Tyres of 14 in under
   * 2,200 lb at 0.9 hold 2,310 lb-ft at the axle, 619.3 at the shaft through 3.73.
   */
  @Test
  void engineAndTyresEachHaveTheirTorqueAtTheShaft() {
    double poundFoot = 1355.8179483314;
    double engine = ShaftTorque.fromEngineNmm(380 * poundFoot, 2.1 * 2.84, 1);
    assertEquals(2266.3, engine / poundFoot, 0.05);
    double grip = ShaftTorque.atTyreSlipNmm(2200 * 4.4482216152605, 0.9, 14 * 25.4, 3.73);
    assertEquals(619.3, grip / poundFoot, 0.05);
    assertEquals(2310, grip * 3.73 / poundFoot, 0.1);
  }

  @Test
  void theTorqueInTheShaftIsTheSmallerOfEngineAndGrip() {
    double engine = ShaftTorque.fromEngineNmm(400_000, 2.5, 0.95);
    assertEquals(950_000, engine, 1e-6, "hand-worked: 400 × 2.5 × 0.95 N·m");
    double grip = ShaftTorque.atTyreSlipNmm(9000, 1.0, 350, 3.5);
    assertEquals(900_000, grip, 1e-6, "hand-worked: 1.0 × 9000 N × 0.35 m / 3.5");
  }

  @Test
  void shaftSpeedAtARoadSpeed() {
    // 35 m/s on 0.35 m is 100 rad/s, 954.93 rpm at the wheel.
    double rpm = ShaftSpeed.rpmAtRoadSpeed(35, 350, 4);
    assertEquals(3819.72, rpm, 0.005, "hand-worked");
  }

  @ParameterizedTest
  @ValueSource(doubles = {76.2, 80, -1, Double.NaN})
  void aTubeWithoutWallIsRefused(double innerMm) {
    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> new DriveShaftTube(76.2, innerMm, 1200));
    assertTrue(refusal.getMessage().contains("twice the wall"), refusal.getMessage());
  }

  @Test
  void aBackwardSpeedIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> JointAngleTable.largestAngleRad(-1));
    assertThrows(IllegalArgumentException.class, () -> ShaftSpeed.radPerS(-1));
  }
}
