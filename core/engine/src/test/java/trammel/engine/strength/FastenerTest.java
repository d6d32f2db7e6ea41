package trammel.engine.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trammel.engine.quantity.ShopUnits.inchPounds;
import static trammel.engine.quantity.ShopUnits.inches;
import static trammel.engine.quantity.ShopUnits.mPa;
import static trammel.engine.quantity.ShopUnits.mm;
import static trammel.engine.quantity.ShopUnits.newtons;
import static trammel.engine.quantity.ShopUnits.pounds;
import static trammel.engine.quantity.ShopUnits.psi;
import static trammel.engine.quantity.ShopUnits.squareInches;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import trammel.engine.strength.Bolt.ShearPlane;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

/** Steel, threads and bolts. */
class FastenerTest {
  /** Proof loads of fine threads in N: ISO 898-1:2013, table 7, from memory, in whole hundreds. */
  @ParameterizedTest
  @CsvSource({
    "12, 1.25, CLASS_8_8, 53400",
    "12, 1.25, CLASS_10_9, 76400",
    "16, 1.5, CLASS_10_9, 139000",
    "20, 1.5, CLASS_8_8, 163000",
    "20, 1.5, CLASS_10_9, 226000"
  })
  void metricBoltsHoldTheProofLoadsOfTheirClass(
      double diameterMm, double pitchMm, BoltGrade grade, double proofN) {
    // Stress area of ISO 898-1: pi/4 ((d2 + d3)/2)^2 = pi/4 (d - 0.9382 P)^2.
    double areaMm2 = Math.PI / 4 * Math.pow(diameterMm - 0.9382 * pitchMm, 2);
    assertEquals(proofN, grade.proofMPa(diameterMm) * areaMm2, 0.005 * proofN);
  }

  private static UnifiedThread thread(double diameterIn, double threadsPerInch) {
    return new UnifiedThread(mm(diameterIn), 25.4 / threadsPerInch);
  }

  private static Bolt bolt(double diameterIn, double threadsPerInch, BoltGrade grade) {
    return new Bolt(thread(diameterIn, threadsPerInch), grade);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "A513_WELDED_1010, 32, 45, ASTM A513 as a merchant prints it",
    "A513_WELDED_1015, 35, 48, ASTM A513 as a merchant prints it",
    "A513_WELDED_1020, 38, 52, ASTM A513 as a merchant prints it",
    "A513_DRAWN_1015_RELIEVED, 50, 60, ASTM A513 as a merchant prints it",
    "A513_DRAWN_1020_RELIEVED, 55, 65, ASTM A513 as a merchant prints it",
    "A513_DRAWN_1026_RELIEVED, 65, 75, ASTM A513 as a merchant prints it",
    "A513_DRAWN_1020, 60, 70, a merchant's page",
    "A513_DRAWN_1026, 70, 80, 'ASTM table, from memory; the lower of two'",
    "A500_B_ROUND, 42, 58, ASTM A500",
    "A500_B_SHAPED, 46, 58, ASTM A500",
    "A500_C_ROUND, 46, 62, ASTM A500",
    "A500_C_SHAPED, 50, 62, ASTM A500",
    "A36, 36, 58, ASTM A36",
    "CHROME_MOLY_THIN, 75, 95, 'MIL-T-6736B, from memory'",
    "CHROME_MOLY_THICK, 70, 90, 'MIL-T-6736B, from memory'"
  })
  void steels(PublishedSteel steel, double yieldKsi, double tensileKsi, String source) {
    assertEquals(yieldKsi, psi(steel.grade().yieldMPa()) / 1000, 1e-6, source);
    assertEquals(tensileKsi, psi(steel.grade().tensileMPa()) / 1000, 1e-6, source);
  }

  @ParameterizedTest(name = "{0}, {1} in")
  @CsvSource({
    "GRADE_5, 0.5, 85000, 92000, 120000, SAE J429",
    "GRADE_5, 1.0, 85000, 92000, 120000, SAE J429",
    "GRADE_5, 1.25, 74000, 81000, 105000, SAE J429",
    "GRADE_8, 0.5, 120000, 130000, 150000, SAE J429",
    "GRADE_8, 1.5, 120000, 130000, 150000, SAE J429"
  })
  void boltGrades(
      BoltGrade grade, double diameterIn, double proof, double yield, double tensile, String from) {
    assertEquals(proof, psi(grade.proofMPa(mm(diameterIn))), 0.01, from);
    assertEquals(yield, psi(grade.yieldMPa(mm(diameterIn))), 0.01, from);
    assertEquals(tensile, psi(grade.tensileMPa(mm(diameterIn))), 0.01, from);
  }

  /** Published loads come from the rounded area. */
  @ParameterizedTest(name = "{0} in, {1} threads")
  @CsvSource({
    "0.375, 24, 0.0878, 0.00005, 7463, 10536, 10536, 13170, 0.332, 79",
    "0.4375, 20, 0.1187, 0.00005, 10090, 14244, 14244, 17805, 0.390625, 72",
    "0.5, 13, 0.1419, 0.00005, 12062, 17028, 17028, 21285, 0.421875, 78",
    "0.5, 20, 0.1599, 0.00006, 13592, 19188, 19188, 23985, 0.453125, 72",
    "0.625, 18, 0.256, 0.0005, 21760, 30720, 30720, 38400, 0.578125, 65",
    "0.75, 16, 0.373, 0.0005, 31705, 44760, 44760, 55950, 0.6875, 77"
  })
  void threads(
      double diameterIn,
      double threadsPerInch,
      double area,
      double areaTolerance,
      double proof5,
      double tensile5,
      double proof8,
      double tensile8,
      double drillIn,
      double percent) {
    UnifiedThread thread = thread(diameterIn, threadsPerInch);
    assertEquals(area, squareInches(thread.stressAreaMm2()), areaTolerance, "ASME B1.1 table");
    assertEquals(percent, thread.threadPercent(mm(drillIn)), 0.5, "tap drill chart");
    assertEquals(mm(drillIn), thread.tapDrillMm(thread.threadPercent(mm(drillIn))), 1e-9);
    Bolt five = new Bolt(thread, BoltGrade.GRADE_5);
    Bolt eight = new Bolt(thread, BoltGrade.GRADE_8);
    String source = "thread table and SAE J429";
    assertEquals(proof5, pounds(five.proofLoadN()), 0.002 * proof5, source);
    assertEquals(tensile5, pounds(five.tensileLoadN()), 0.002 * tensile5, source);
    assertEquals(proof8, pounds(eight.proofLoadN()), 0.002 * proof8, source);
    assertEquals(tensile8, pounds(eight.tensileLoadN()), 0.002 * tensile8, source);
  }

  @Test
  void theSmallerStressAreaForStrongSteel() {
    double area = thread(0.5, 13).minimumStressAreaMm2(mm(0.4435));
    assertEquals(0.13757, squareInches(area), 0.000005, "Machinery's Handbook, 1/2-13 UNC-2A");
  }

  @ParameterizedTest(name = "{0} in, {1} threads")
  @CsvSource({
    "0.5, 20, 0.4619, 0.457, 0.400, 0.80, 'FED-STD-H28/2B, limits from memory'",
    "0.625, 18, 0.5828, 0.578, 0.513, 0.82, 'FED-STD-H28/2B, limits from memory'"
  })
  void fullStrengthEngagement(
      double diameterIn,
      double threadsPerInch,
      double pitchDiameterIn,
      double minorIn,
      double lengthIn,
      double diameters,
      String source) {
    UnifiedThread thread = thread(diameterIn, threadsPerInch);
    double length = thread.fullStrengthEngagementMm(mm(pitchDiameterIn), mm(minorIn));
    assertEquals(lengthIn, inches(length), 0.0005, source);
    assertEquals(diameters, length / thread.majorDiameterMm(), 0.005, source);
    assertTrue(length < thread.leastEngagementMm(true), "the rule of 1 D is on the safe side");
    assertEquals(1.5 * mm(diameterIn), thread.leastEngagementMm(false), "common practice");
  }

  @Test
  void tighteningOfWentzellExample61() {
    Bolt bolt = bolt(0.75, 10, BoltGrade.GRADE_5);
    String source = "Wentzell, Machine Design, ex. 6.1, area rounded to 0.334";
    assertEquals(24_132, pounds(bolt.preloadN(0.85)), 0.002 * 24_132, source);
    double torque = bolt.tighteningTorqueNmm(0.85, Bolt.DRY_NUT_FACTOR);
    assertEquals(3619.7, inchPounds(torque), 0.002 * 3619.7, source);
  }

  @Test
  void tighteningOfAReusableJoint() {
    Bolt bolt = bolt(0.625, 18, BoltGrade.GRADE_8);
    double share = Bolt.REUSABLE_PRELOAD_SHARE;
    String source = "Shigley 75 % of proof, from memory, area rounded to 0.256";
    assertEquals(23_040, pounds(bolt.preloadN(share)), 0.002 * 23_040, source);
    double torque = bolt.tighteningTorqueNmm(share, Bolt.DRY_NUT_FACTOR);
    assertEquals(240.0, inchPounds(torque) / 12, 0.5, source);
  }

  @ParameterizedTest(name = "{0}-{1}")
  @CsvSource({
    "0.5, 20, 35.34, 28.27, 28.78, 16.58, 13.25",
    "0.625, 18, 55.22, 44.18, 46.08, 25.91, 20.71"
  })
  void doubleShear(
      double diameterIn,
      double threadsPerInch,
      double shank8,
      double shank5,
      double thread8,
      double excluded,
      double included) {
    Bolt eight = bolt(diameterIn, threadsPerInch, BoltGrade.GRADE_8);
    Bolt five = bolt(diameterIn, threadsPerInch, BoltGrade.GRADE_5);
    String estimate = "0.6 Su, usual estimate";
    assertEquals(shank8, kip(eight.shearStrengthN(2, ShearPlane.SHANK)), 0.006, estimate);
    assertEquals(shank5, kip(five.shearStrengthN(2, ShearPlane.SHANK)), 0.006, estimate);
    assertEquals(thread8, kip(eight.shearStrengthN(2, ShearPlane.THREAD)), 0.03, estimate);
    String standard = "AISC 360-10 Table J3.2, allowable stress design";
    assertEquals(excluded, kip(eight.allowableShearN(2, ShearPlane.SHANK)), 0.006, standard);
    assertEquals(included, kip(eight.allowableShearN(2, ShearPlane.THREAD)), 0.006, standard);
  }

  private static double kip(double newtons) {
    return pounds(newtons) / 1000;
  }

  @Test
  void thePinOfWentzellExample33Fails() {
    Bolt pin = bolt(0.5, 13, BoltGrade.GRADE_5);
    double stress = psi(pin.shearStressMPa(newtons(20_000), 2, ShearPlane.SHANK));
    assertEquals(50_930, stress, 5, "Wentzell, Machine Design, ex. 3.3");
    assertTrue(stress > 0.6 * 80_000, "Wentzell ex. 3.3: over 0.6 Su of 80 ksi");
  }

  @Seeds(1000)
  void twoPlanesBearTwiceOneAndThreadsLessThanShank(Draw draw) {
    double diameterIn = draw.between(0.25, 1.5);
    Bolt bolt = bolt(diameterIn, 20, BoltGrade.GRADE_5);
    double one = bolt.shearStrengthN(1, ShearPlane.SHANK);
    assertEquals(2 * one, bolt.shearStrengthN(2, ShearPlane.SHANK), 1e-6);
    assertTrue(bolt.shearStrengthN(1, ShearPlane.THREAD) < one);
    assertTrue(bolt.allowableShearN(1, ShearPlane.SHANK) < one);
    assertTrue(bolt.proofLoadN() < bolt.tensileLoadN());
  }

  @ParameterizedTest
  @EnumSource(BoltGrade.class)
  void aBoltOutsideTheStandardIsRefused(BoltGrade grade) {
    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> bolt(1.75, 5, grade));
    String range = grade.title().startsWith("grade") ? "1/4 to 1-1/2 in" : "from M6 on";
    assertTrue(refusal.getMessage().contains(range), refusal.getMessage());
  }

  @Test
  void impossibleThreadsAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> thread(0.5, 0));
    assertThrows(IllegalArgumentException.class, () -> thread(0.1, 5));
    assertThrows(IllegalArgumentException.class, () -> thread(0.5, 20).threadPercent(mm(0.6)));
    assertThrows(IllegalArgumentException.class, () -> thread(0.5, 20).tapDrillMm(120));
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class,
            () -> thread(0.5, 20).fullStrengthEngagementMm(mm(0.46), mm(0.47)));
    assertTrue(refusal.getMessage().contains("do not touch"), refusal.getMessage());
  }

  @Test
  void aSteelWeakerInTensionThanInYieldIsRefused() {
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class,
            () -> new SteelGrade("mystery", mPa(60_000), mPa(50_000), "hearsay"));
    assertTrue(refusal.getMessage().contains("certificate"), refusal.getMessage());
    assertThrows(IllegalArgumentException.class, () -> new SteelGrade("A36", 250, 400, " "));
  }
}
