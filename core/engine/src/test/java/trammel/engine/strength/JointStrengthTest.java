package trammel.engine.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trammel.engine.quantity.ShopUnits.degrees;
import static trammel.engine.quantity.ShopUnits.mm;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.engine.strength.PinnedJoint.Mode;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

/** Bracket tabs and rod ends. */
class JointStrengthTest {
  private static final SteelGrade PLATE = new SteelGrade("test plate", 250, 400, "invented");

  private static PinnedJoint tabs(double edgeMm, double widthMm) {
    return new PinnedJoint(6, 2, 16, 17, edgeMm, widthMm, PLATE);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "BEARING, 86400, 43200, 'AISC 360 J7, from memory: 1.8·250·16·12'",
    "TEAR_OUT, 169920, 84960, 'AISC 360 D5.1, from memory: 0.6·400·2·12·(21.5 + 8)'",
    "NET_SECTION, 206400, 103200, 'AISC 360 D5.1, from memory: 400·2·12·21.5'",
    "GROSS_SECTION, 180000, 107784.4, 'AISC 360 D2, from memory: 250·60·12'"
  })
  void aClevisOfTwoTabsWorkedByHand(Mode mode, double nominal, double allowable, String source) {
    PinnedJoint joint = tabs(30, 60);
    assertEquals(nominal, joint.nominalN(mode), 0.01, source);
    assertEquals(allowable, joint.allowableN(mode), 0.1, source);
  }

  @Test
  void theWeakestManagesTheJoint() {
    assertEquals(Mode.BEARING, tabs(30, 60).governing(), "hand-worked");
    assertEquals(43_200, tabs(30, 60).allowableN(), 0.01, "hand-worked");
    assertEquals(Mode.TEAR_OUT, tabs(9, 60).governing(), "hand-worked: 0.6·400·2·12·(0.5 + 8)");
    assertEquals(Mode.NET_SECTION, tabs(30, 21).governing(), "hand-worked");
  }

  @Test
  void aWideTabCountsOnlyTwoThicknessesAndSixteenMillimetresBesideThePin() {
    // 2·6 + 16 = 28 mm a side.
    double net = tabs(100, 300).nominalN(Mode.NET_SECTION);
    assertEquals(400 * 2 * 28 * 12, net, 1e-6, "AISC 360 D5.1, from memory");
  }

  @Seeds(1000)
  void moreMetalNeverBearsLess(Draw draw) {
    double edgeMm = draw.between(10, 100);
    double widthMm = draw.between(20, 200);
    double allowable = tabs(edgeMm, widthMm).allowableN();
    assertTrue(allowable > 0 && Double.isFinite(allowable));
    assertTrue(tabs(edgeMm + 1, widthMm).allowableN() >= allowable);
    assertTrue(tabs(edgeMm, widthMm + 1).allowableN() >= allowable);
  }

  @ParameterizedTest
  @CsvSource({"8.5, 60, edge distance", "30, 17, plate width", "NaN, 60, edge distance"})
  void aHoleThatLeavesNoMetalIsRefused(double edgeMm, double widthMm, String named) {
    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> tabs(edgeMm, widthMm));
    assertTrue(refusal.getMessage().contains(named), refusal.getMessage());
  }

  @Test
  void tiltOfTheBallInItsHousing() {
    RodEnd end = new RodEnd(mm(0.75), mm(1.125), mm(0.5625), mm(1.5), 0);
    assertEquals(11.81, degrees(end.tiltOfBallRad()), 0.005, "catalogue P-1930 p. 214 formula");
  }

  /** At the tilt found, the corner of the head just reaches the plane of the ball's face. */
  @Seeds(1000)
  void theHeadTouchesTheClevisAtItsTilt(Draw draw) {
    double housingShare = draw.between(0.4, 0.95);
    double ballShare = draw.between(1.05, 2);
    double chamferShare = draw.between(0, 0.05);
    double width = 20;
    double ball = ballShare * width;
    double outer = 1.4 * ball;
    double chamfer = chamferShare * outer;
    RodEnd end = new RodEnd(width, ball, housingShare * width, outer, chamfer);
    double tilt = end.tiltInClevisRad();
    double cornerAcross = outer / 2 - chamfer;
    double cornerAlong = housingShare * width / 2;
    double reach = cornerAcross * Math.sin(tilt) + cornerAlong * Math.cos(tilt);
    assertEquals(width / 2, reach, 1e-9);
    assertTrue(end.tiltOfBallRad() > 0 && end.tiltOfBallRad() < Math.PI / 2);
  }

  @Test
  void theWorkingLoadIsAQuarterOfTheStaticCapacity() {
    assertEquals(10_000, RodEnd.workingLoadN(40_000), "a rod end maker's terms");
    assertThrows(IllegalArgumentException.class, () -> RodEnd.workingLoadN(0));
  }

  @Test
  void aRodEndWithoutRoomToTiltIsRefused() {
    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> new RodEnd(20, 30, 20, 45, 0));
    assertTrue(refusal.getMessage().contains("stands proud"), refusal.getMessage());
    assertThrows(IllegalArgumentException.class, () -> new RodEnd(20, 19, 10, 45, 0));
  }
}
