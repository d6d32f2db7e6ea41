package trammel.trade.hardware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.engine.strength.BoltGrade;

class ScrewThreadTest {
  private static final double INCH = 25.4;
  private static final double N_PER_LB = 4.4482216152605;
  private static final double NMM_PER_FT_LB = 1355.8179483314;

  private static double proofN(BoltGrade grade, ScrewThread thread) {
    return grade.proofMPa(thread.diameterMm()) * thread.stressAreaMm2();
  }

  private static double tensileN(BoltGrade grade, ScrewThread thread) {
    return grade.tensileMPa(thread.diameterMm()) * thread.stressAreaMm2();
  }

  @ParameterizedTest
  @CsvSource({
    // Stress areas of ASME B1.1, strengths of SAE J429, both from memory.
    // thread, At in2, G5 proof, G5 tensile, G8 proof, G8 tensile lb
    "3/8-24, 0.0878, 7463, 10536, 10536, 13170",
    "7/16-20, 0.1187, 10090, 14244, 14244, 17805",
    "1/2-13, 0.1419, 12062, 17028, 17028, 21285",
    "1/2-20, 0.1599, 13592, 19188, 19188, 23985",
    "5/8-18, 0.256, 21760, 30720, 30720, 38400",
    "3/4-16, 0.373, 31705, 44760, 44760, 55950",
  })
  void stressAreaAndBoltLoadsAreAsPublished(
      String name, double areaIn2, double proof5, double tensile5, double proof8, double tensile8) {
    ScrewThread thread = ScrewThread.of(name);
    assertEquals(areaIn2, thread.stressAreaMm2() / (INCH * INCH), 0.0012 * areaIn2);
    assertEquals(proof5, proofN(BoltGrade.GRADE_5, thread) / N_PER_LB, 0.0015 * proof5);
    assertEquals(tensile5, tensileN(BoltGrade.GRADE_5, thread) / N_PER_LB, 0.0015 * tensile5);
    assertEquals(proof8, proofN(BoltGrade.GRADE_8, thread) / N_PER_LB, 0.0015 * proof8);
    assertEquals(tensile8, tensileN(BoltGrade.GRADE_8, thread) / N_PER_LB, 0.0015 * tensile8);
  }

  @ParameterizedTest
  // ISO 898-1 table of stress areas, from memory.
  @CsvSource({"M8x1.25, 36.6", "M10x1.5, 58.0", "M12x1.75, 84.3", "M16x2, 157"})
  void metricStressAreaIsAsInTheStandard(String name, double areaMm2) {
    assertEquals(areaMm2, ScrewThread.of(name).stressAreaMm2(), 0.0025 * areaMm2);
  }

  @ParameterizedTest
  @CsvSource({
    // Tap chart (docslib.org/doc/4942776): drill in inches, percent of thread.
    "3/8-24, 0.332, 79",
    "7/16-20, 0.390625, 72",
    "1/2-13, 0.421875, 78",
    "1/2-20, 0.453125, 72",
    "5/8-18, 0.578125, 65",
    "3/4-16, 0.6875, 77",
  })
  void tapDrillLeavesThePublishedThread(String name, double drillIn, double percent) {
    ScrewThread thread = ScrewThread.of(name);
    assertEquals(percent, thread.threadPercent(drillIn * INCH), 0.6);
    double back = thread.tapDrillMm(thread.threadPercent(drillIn * INCH));
    assertEquals(drillIn * INCH, back, 1e-9);
  }

  @ParameterizedTest
  // Wentzell, Machine Design, ex. 6.1 (as re-keyed by FOSSEE): 85 % of proof, 3,619.7 in lb;
  // the book rounds the area to 0.334 in2.
  @CsvSource({"3/4-10, 0.85, 24132, 301.64"})
  void torqueOfTheTextbookJoint(String name, double share, double preloadLb, double footPounds) {
    Tightening tightening = new Tightening(0.2, share);
    ScrewThread thread = ScrewThread.of(name);
    double preload = tightening.preloadN(thread, BoltGrade.GRADE_5) / N_PER_LB;
    double torque = tightening.torqueNmm(thread, BoltGrade.GRADE_5) / NMM_PER_FT_LB;
    assertEquals(preloadLb, preload, 0.0025 * preloadLb);
    assertEquals(footPounds, torque, 0.0025 * footPounds);
  }

  @ParameterizedTest
  // 75 % of proof for a reusable joint (Shigley, from memory): 5/8-18 grade 8, 240.0 ft lb.
  @CsvSource({"5/8-18, 23040, 240.0"})
  void torqueOfAReusableJoint(String name, double preloadLb, double footPounds) {
    ScrewThread thread = ScrewThread.of(name);
    BoltGrade grade = BoltGrade.GRADE_8;
    assertEquals(
        preloadLb, Tightening.REUSABLE.preloadN(thread, grade) / N_PER_LB, 0.0015 * preloadLb);
    double torque = Tightening.REUSABLE.torqueNmm(thread, grade) / NMM_PER_FT_LB;
    assertEquals(footPounds, torque, 0.0015 * footPounds);
  }

  @ParameterizedTest
  @CsvSource({"1-1/4-12, 31.75", "1.25-12, 31.75", "9/16-18, 14.2875", "M14x1.5, 14"})
  void threadsAreReadAsTheTradeWritesThem(String text, double diameterMm) {
    assertEquals(diameterMm, ScrewThread.of(text).diameterMm(), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "5/8", "M12", "Mx1", "half-20", "5/0-18", "-18", "5/8-0", "M12x9"})
  void unreadableThreadsAreRefusedWithAnExample(String text) {
    String message =
        assertThrows(IllegalArgumentException.class, () -> ScrewThread.of(text)).getMessage();
    assertTrue(message.contains("allowed is"), message);
  }
}
