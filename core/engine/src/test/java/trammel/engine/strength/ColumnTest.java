package trammel.engine.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trammel.engine.quantity.ShopUnits.mPa;
import static trammel.engine.quantity.ShopUnits.mm;
import static trammel.engine.quantity.ShopUnits.mm2;
import static trammel.engine.quantity.ShopUnits.pounds;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class ColumnTest {
  private static final SteelGrade DRAWN = PublishedSteel.A513_DRAWN_1020.grade();

  @Test
  void theRodOfWentzellExample35IsLong() {
    RoundTubeSection rod = RoundTubeSection.bar(mm(0.625));
    Column column =
        new Column(
            rod.areaMm2(),
            rod.radiusOfGyrationXMm(),
            rod.toTopMm(),
            mm(30),
            1.0,
            mPa(42_000),
            mPa(30e6));
    String source = "Wentzell, Machine Design, ex. 3.5";
    assertEquals(192.0, column.slenderness(), 0.05, source);
    assertEquals(118.74, column.transitionSlenderness(), 0.005, source);
    assertEquals(Column.Mode.EULER, column.mode(), source);
    assertEquals(2464, pounds(column.criticalLoadN()), 0.5, source);
  }

  @Test
  void theBeamOfWentzellExample36IsShort() {
    Column column =
        new Column(
            mm2(2.26), mm(Math.sqrt(0.764 / 2.26)), mm(1), mm(60), 0.65, mPa(36_000), mPa(30e6));
    String source = "Wentzell, Machine Design, ex. 3.6";
    assertEquals(67.08, column.slenderness(), 0.005, source);
    assertEquals(128.25, column.transitionSlenderness(), 0.005, source);
    assertEquals(Column.Mode.JOHNSON, column.mode(), source);
    assertEquals(70_233, pounds(column.criticalLoadN()), 1, source);
    assertEquals(35_117, pounds(column.criticalLoadN() / 2), 1, source);
  }

  @ParameterizedTest(name = "{0} x {1}, {2} in long")
  @CsvSource({
    "1.75, 0.120, 24, 60, 41.53, 97.68, JOHNSON, 33537, closed form",
    "1.00, 0.120, 36, 75, 114.65, 87.36, EULER, 7224, closed form",
    "1.25, 0.120, 36, 60, 89.61, 97.68, JOHNSON, 14805, closed form"
  })
  void tubesOfLinks(
      double outer,
      double wall,
      double length,
      double yieldKsi,
      double slenderness,
      double transition,
      Column.Mode mode,
      double pounds,
      String source) {
    SteelGrade grade =
        new SteelGrade("test", mPa(1000 * yieldKsi), mPa(1100 * yieldKsi), "given by the case");
    Column column = Column.pivoted(new RoundTubeSection(mm(outer), mm(wall)), mm(length), grade);
    assertEquals(slenderness, column.slenderness(), 0.006, source);
    assertEquals(transition, column.transitionSlenderness(), 0.006, source);
    assertEquals(mode, column.mode(), source);
    assertEquals(pounds, pounds(column.criticalLoadN()), 0.0001 * pounds, source);
  }

  private static Column tube(double lengthMm) {
    return Column.pivoted(new RoundTubeSection(44.45, 3.048), lengthMm, DRAWN);
  }

  @Test
  void theTwoFormulasMeetAtHalfTheYieldLoad() {
    double radius = new RoundTubeSection(44.45, 3.048).radiusOfGyrationXMm();
    Column column = tube(tube(500).transitionSlenderness() * radius);
    double half = 0.5 * column.areaMm2() * column.yieldMPa();
    assertEquals(half, column.criticalLoadN(), 1e-9 * half, "Shigley ch. 4, from memory");
    assertEquals(half, column.eulerLoadN(), 1e-9 * half, "Shigley ch. 4, from memory");
  }

  @Test
  void aBentBarWorkedByHand() {
    // Area 100, r 10, c 15, I 10,000: e 20 makes ec/r² = 3. A length of π·100 with E 200,000 gives
    // Euler's load E I (π/L)² = 200,000 N. At P = 10,000: growth 1/(1 − 0.05) = 1.0526,
    // stress 100 (1 + 3·1.0526) = 415.79.
    Column bar = new Column(100, 10, 15, Math.PI * 100, 1, 500, 200_000);
    assertEquals(200_000, bar.eulerLoadN(), 1e-6, "hand-worked");
    assertEquals(415.789, bar.bentBarStressMPa(10_000, 20), 0.001, "hand-worked");
    // Secant: half angle (π/2)√0.05 = 0.35124, sec = 1.06503.
    assertEquals(100 * (1 + 3 * 1.06503), bar.secantStressMPa(10_000, 20), 0.01, "hand-worked");
    assertEquals(500 * 100 / 4.0, bar.bentBarTensionYieldN(20), 1e-9, "hand-worked");
  }

  @Seeds(1000)
  void atTheBentBarsYieldLoadTheStressIsTheYieldStrength(Draw draw) {
    double lengthMm = draw.between(200, 2000);
    double offsetMm = draw.between(10, 300);
    Column column = tube(lengthMm);
    double load = column.bentBarYieldLoadN(offsetMm);
    assertEquals(column.yieldMPa(), column.bentBarStressMPa(load, offsetMm), 1e-6 * 500);
    double secant = column.secantYieldLoadN(offsetMm);
    assertEquals(column.yieldMPa(), column.secantStressMPa(secant, offsetMm), 1e-6 * 500);
  }

  @Seeds(1000)
  void moreLengthOrOffsetNeverBearsMore(Draw draw) {
    double lengthMm = draw.between(50, 5000);
    double offsetMm = draw.between(0, 500);
    Column column = tube(lengthMm);
    Column longer = tube(1.1 * lengthMm);
    assertTrue(longer.criticalLoadN() < column.criticalLoadN());
    assertTrue(column.bentBarYieldLoadN(offsetMm) <= column.criticalLoadN());
    assertTrue(column.bentBarYieldLoadN(offsetMm + 1) < column.bentBarYieldLoadN(0));
    assertTrue(longer.bentBarYieldLoadN(offsetMm) < column.bentBarYieldLoadN(offsetMm));
    // The secant formula bends a little more: the offset runs the whole length of the bar.
    assertTrue(column.secantYieldLoadN(offsetMm) <= column.bentBarYieldLoadN(offsetMm) + 1e-6);
    assertTrue(column.criticalLoadN() < column.areaMm2() * column.yieldMPa());
  }

  @Test
  void aStraightBarIsTheLimitOfABentOne() {
    Column column = tube(800);
    assertEquals(column.criticalLoadN(), column.bentBarYieldLoadN(0), 1e-6);
    assertEquals(column.criticalLoadN(), column.secantYieldLoadN(0), 1e-6);
  }

  @Test
  void aLoadAtEulersLoadHasNoStress() {
    Column column = tube(800);
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class, () -> column.bentBarStressMPa(column.eulerLoadN(), 10));
    assertTrue(refusal.getMessage().contains("shorter or thicker"), refusal.getMessage());
  }

  @ParameterizedTest
  @CsvSource({"0, 1", "NaN, 1", "500, 0.1", "500, NaN"})
  void anImpossibleColumnIsRefused(double lengthMm, double endFactor) {
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class,
            () -> new Column(100, 10, 15, lengthMm, endFactor, 400, 200_000));
    assertTrue(refusal.getMessage().contains("must be from"), refusal.getMessage());
  }
}
