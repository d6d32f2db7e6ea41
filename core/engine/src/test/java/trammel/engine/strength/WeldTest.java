package trammel.engine.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trammel.engine.quantity.ShopUnits.inches;
import static trammel.engine.quantity.ShopUnits.mPa;
import static trammel.engine.quantity.ShopUnits.mm;
import static trammel.engine.quantity.ShopUnits.nPerMm;
import static trammel.engine.quantity.ShopUnits.newtons;
import static trammel.engine.quantity.ShopUnits.pounds;
import static trammel.engine.quantity.ShopUnits.rad;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class WeldTest {
  private static double kip(double newtons) {
    return pounds(newtons) / 1000;
  }

  @ParameterizedTest(name = "{0} in leg")
  @CsvSource({"0.125, 1.856", "0.1875, 2.784", "0.25, 3.712", "0.3125, 4.640"})
  void strengthOfAnInchOfE70(double legIn, double kipPerInch) {
    double tenInches = kip(new FilletSeam(mm(legIn), mm(10), Electrode.E70).allowableN());
    assertEquals(kipPerInch, tenInches / 10, 0.001, "AISC 360 Table J2.5, allowable stress");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"E60, 0.7955", "E70, 0.92808", "E80, 1.0607"})
  void strengthOfASixteenthByElectrode(Electrode electrode, double kipPerInch) {
    FilletSeam weld = new FilletSeam(mm(1.0 / 16), mm(10), electrode);
    assertEquals(kipPerInch, kip(weld.allowableN()) / 10, 0.00006, "AISC 360 Table J2.5");
  }

  @Test
  void designStrengthOfASixteenthOfE70() {
    FilletSeam weld = new FilletSeam(mm(1.0 / 16), mm(10), Electrode.E70);
    assertEquals(1.392, kip(weld.designN()) / 10, 0.0005, "AISC 360, load and resistance factors");
  }

  @ParameterizedTest(name = "{0} leg, {1} long")
  @CsvSource({
    "0.25, 4, 14.85, AISC 360 J2.4",
    "0.1875, 10, 27.84, AISC 360 J2.4",
    "0.125, 5.4977871, 10.20, 'AISC 360 J2.4, all round a 1.75 in tube'"
  })
  void strengthOfAWeld(double legIn, double lengthIn, double kips, String source) {
    FilletSeam weld = new FilletSeam(mm(legIn), mm(lengthIn), Electrode.E70);
    assertEquals(kips, kip(weld.allowableN()), 0.006, source);
  }

  @Test
  void aShortWeldCountsAsAQuarterOfItsLength() {
    FilletSeam weld = new FilletSeam(mm(0.1875), mm(0.5), Electrode.E70);
    assertEquals(0.125, inches(weld.effectiveLegMm()), 1e-12, "AISC 360 J2.2b");
  }

  @ParameterizedTest
  @CsvSource({"0, 1.0", "45, 1.2973", "90, 1.5"})
  void directionFactor(double degrees, double factor) {
    assertEquals(factor, FilletSeam.directionFactor(rad(degrees)), 0.00005, "AISC 360 J2.4");
  }

  @Test
  void baseMetalAsStrongAsTheWeld() {
    double thickness = FilletSize.matchingThicknessMm(mm(3.0 / 16), Electrode.E70, mPa(58_000));
    assertEquals(0.160, inches(thickness), 0.0005, "AISC Manual part 9, from memory: 3.09·3/58");
  }

  @Test
  void sideWeldsOfLevinsonExample151() {
    double load = newtons(6 * 0.5 * 20_000);
    double side = FilletSize.sideWeldMm(load, nPerMm(3750), mm(6));
    assertEquals(5.00, inches(side), 0.005, "Levinson ex. 15.1");
    assertEquals(0, FilletSize.sideWeldMm(load, nPerMm(3750), mm(20)), "end weld is enough");
  }

  @Test
  void throatStressOfJindalExample121() {
    double stress = new FilletSeam(8, 240, Electrode.E70).throatStressMPa(100_000);
    assertEquals(73.7, stress, 0.05, "Jindal, Machine Design, ex. 12-1");
  }

  @Test
  void linePropertiesOfCommonGroups() {
    String torsion = "Shigley Table 9-1, from memory: ";
    String bending = "Shigley Table 9-2, from memory: ";
    WeldGroup pair = WeldGroup.pair(100, 80);
    assertEquals(80 * (30_000 + 6400) / 6.0, pair.polarMomentMm3(), 1e-6, torsion + "d(3b²+d²)/6");
    assertEquals(80 * 80 * 80 / 6.0, pair.secondMomentXMm3(), 1e-6, bending + "d³/6");
    WeldGroup box = WeldGroup.rectangle(80, 120);
    assertEquals(200 * 200 * 200 / 6.0, box.polarMomentMm3(), 1e-6, torsion + "(b+d)³/6");
    assertEquals(14_400 * 360 / 6.0, box.secondMomentXMm3(), 1e-6, bending + "d²(3b+d)/6");
    WeldGroup ring = WeldGroup.roundTube(50);
    double r3 = 25 * 25 * 25;
    assertEquals(Math.PI * 50, ring.lengthMm(), 1e-9, "circumference");
    assertEquals(2 * Math.PI * r3, ring.polarMomentMm3(), 0.001 * 6 * r3, torsion + "2πr³");
    assertEquals(Math.PI * r3, ring.secondMomentXMm3(), 0.001 * 3 * r3, bending + "πr³");
    // Open to the right: b 60, d 100.
    WeldGroup open =
        new WeldGroup(
            List.of(
                new WeldLine(0, 0, 0, 100),
                new WeldLine(0, 0, 60, 0),
                new WeldLine(0, 100, 60, 100)));
    assertEquals(3600 / 220.0, open.centroidXMm(), 1e-9, torsion + "b²/(2b+d)");
    assertEquals(468_424, open.polarMomentMm3(), 0.5, torsion + "(8b³+6bd²+d³)/12 − b⁴/(2b+d)");
  }

  @Test
  void aBracketHungOnTwoUprightWeldsTwistsInItsPlane() {
    // L 200, J 666,667. 10 kN down, 250 mm off: twist 3.75 N/mm for each mm.
    // At (50, ±50): sideways 187.5, down 187.5 + 10,000/200 = 237.5; together 302.59.
    WeldGroup pair = WeldGroup.pair(100, 100);
    WeldLoad load = WeldLoad.force(0, -10_000, 0, 250, 0, 0);
    assertEquals(302.59, pair.largestFlowNPerMm(load), 0.005, "hand-worked, Shigley 9-4 method");
    double stress = pair.throatStressMPa(load, 6);
    assertEquals(302.59 / (0.70711 * 6), stress, 0.005, "hand-worked: over the throat");
  }

  @Test
  void aBracketStandingOffItsWeldsBendsThem() {
    // L 400, Ix 864,000. 6 kN down, 150 mm out: 900,000·60/864,000 = 62.5, shear 15.
    WeldGroup box = WeldGroup.rectangle(80, 120);
    WeldLoad load = WeldLoad.force(0, -6000, 0, 0, 0, 150);
    assertEquals(
        Math.hypot(62.5, 15), box.largestFlowNPerMm(load), 1e-6, "hand-worked, Shigley 9-5 method");
  }

  @Test
  void aPullBesideTheCentroidBendsTheWelds() {
    // Iy = 80²(3·120 + 80)/6 = 469,333. 4 kN out, 30 mm to the right: 4000/400 = 10 and
    // 120,000·40/469,333 = 10.227.
    WeldGroup box = WeldGroup.rectangle(80, 120);
    WeldLoad load = WeldLoad.force(0, 0, 4000, 30, 0, 0);
    assertEquals(20.2273, box.largestFlowNPerMm(load), 0.0001, "hand-worked");
  }

  @Test
  void theLegNeededIsStressedAsFarAsAllowed() {
    WeldGroup box = WeldGroup.rectangle(80, 120);
    WeldLoad load = new WeldLoad(1000, -6000, 2000, 0, 0, 50, 1e5, 2e5, 3e5);
    double leg = box.neededLegMm(load, Electrode.E70);
    double stress = box.throatStressMPa(load, leg);
    assertEquals(Electrode.E70.allowableThroatMPa(), stress, 1e-9, "definition");
  }

  /** An angle of two unequal welds, which has no axis of symmetry. */
  private static final List<WeldLine> ANGLE =
      List.of(new WeldLine(0, 0, 90, 0), new WeldLine(0, 0, 0, 50));

  @Seeds(1000)
  void theResultDoesNotDependOnTheAxes(Draw draw) {
    double turnDeg = draw.between(-180, 180);
    double shiftMm = draw.between(-500, 500);
    WeldLoad load = new WeldLoad(1000, -2000, 3000, 20, 30, 40, 5e4, -6e4, 7e4);
    double turn = rad(turnDeg);
    double[] force = turned(1000, -2000, turn);
    double[] at = turned(20, 30, turn);
    double[] moment = turned(5e4, -6e4, turn);
    WeldLoad turnedLoad =
        new WeldLoad(
            force[0], force[1], 3000, at[0] + shiftMm, at[1], 40, moment[0], moment[1], 7e4);
    List<WeldLine> turnedLines = new ArrayList<>();
    for (WeldLine line : ANGLE) {
      double[] start = turned(line.startXMm(), line.startYMm(), turn);
      double[] end = turned(line.endXMm(), line.endYMm(), turn);
      turnedLines.add(new WeldLine(start[0] + shiftMm, start[1], end[0] + shiftMm, end[1]));
    }
    double expected = new WeldGroup(ANGLE).largestFlowNPerMm(load);
    double flow = new WeldGroup(turnedLines).largestFlowNPerMm(turnedLoad);
    assertEquals(expected, flow, 1e-6 * expected);
  }

  private static double[] turned(double x, double y, double angle) {
    return new double[] {
      x * Math.cos(angle) - y * Math.sin(angle), x * Math.sin(angle) + y * Math.cos(angle)
    };
  }

  /** Bending flow of the angle by the textbook formula with the product moment. */
  @Test
  void unsymmetricalBendingOfAnAngle() {
    double length = 140;
    double cx = 90 * 45 / length;
    double cy = 50 * 25 / length;
    double ix = 90 * cy * cy + 50 * (2500 / 12.0 + (25 - cy) * (25 - cy));
    double iy = 50 * cx * cx + 90 * (8100 / 12.0 + (45 - cx) * (45 - cx));
    double ixy = 90 * (45 - cx) * (0 - cy) + 50 * (0 - cx) * (25 - cy);
    double moment = 1e5;
    double determinant = ix * iy - ixy * ixy;
    double largest = 0;
    for (double[] end : new double[][] {{0, 0}, {90, 0}, {0, 50}}) {
      double flow = moment * (iy * (end[1] - cy) - ixy * (end[0] - cx)) / determinant;
      largest = Math.max(largest, Math.abs(flow));
    }
    WeldLoad load = new WeldLoad(0, 0, 0, 0, 0, 0, moment, 0, 0);
    double flow = new WeldGroup(ANGLE).largestFlowNPerMm(load);
    assertEquals(largest, flow, 1e-9 * largest, "unsymmetrical bending, Timoshenko, from memory");
  }

  @Seeds(100)
  void twiceTheLoadIsTwiceTheFlow(Draw draw) {
    double force = draw.between(-1e5, 1e5);
    WeldGroup ring = WeldGroup.roundTube(60);
    double one = ring.largestFlowNPerMm(WeldLoad.force(force, 500, -force, 30, 20, 100));
    double two = ring.largestFlowNPerMm(WeldLoad.force(2 * force, 1000, -2 * force, 30, 20, 100));
    assertEquals(2 * one, two, 1e-9 * two);
  }

  @Test
  void oneStraightWeldCannotBearAMomentAboutItself() {
    WeldGroup line = new WeldGroup(List.of(new WeldLine(0, 0, 100, 0)));
    WeldLoad bends = WeldLoad.force(0, 1000, 0, 50, 0, 60);
    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> line.largestFlowNPerMm(bends));
    assertTrue(refusal.getMessage().contains("Add a weld"), refusal.getMessage());
    WeldLoad pulls = WeldLoad.force(1000, 0, 500, 50, 0, 0);
    assertEquals(Math.hypot(10, 5), line.largestFlowNPerMm(pulls), 1e-9, "hand-worked");
  }

  @Seeds(1000)
  void aLongerOrLargerWeldBearsMore(Draw draw) {
    double leg = draw.between(1, 20);
    double length = draw.between(5, 1000);
    double one = new FilletSeam(leg, length, Electrode.E70).allowableN();
    assertTrue(new FilletSeam(leg, 1.1 * length, Electrode.E70).allowableN() > one);
    assertTrue(new FilletSeam(1.1 * leg, length, Electrode.E70).allowableN() >= one);
    assertTrue(new FilletSeam(leg, length, Electrode.E70).designN() > one);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -3, 60, Double.NaN})
  void anImpossibleLegIsRefused(double leg) {
    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> new FilletSeam(leg, 100, Electrode.E70));
    assertTrue(refusal.getMessage().contains("fillet gauge"), refusal.getMessage());
  }

  @Test
  void anEmptyGroupAndAPointAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new WeldGroup(List.of()));
    assertThrows(IllegalArgumentException.class, () -> new WeldLine(3, 4, 3, 4));
    assertThrows(IllegalArgumentException.class, () -> WeldLoad.force(Double.NaN, 0, 0, 0, 0, 0));
  }
}
