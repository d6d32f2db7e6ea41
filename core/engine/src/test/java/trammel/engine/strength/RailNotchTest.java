package trammel.engine.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import trammel.engine.strength.RailNotch.Shape;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

/** All expected values are worked by hand with the parallel-axis theorem. */
class RailNotchTest {
  private static final FrameRail CHANNEL = FrameRail.open(new ChannelSection(100, 40, 4, 4));

  private static RailNotch notch(double depthMm, double capMm, double sideMm) {
    return new RailNotch(Shape.CIRCULAR, depthMm, 250, capMm, sideMm);
  }

  @Test
  void theOpenChannel() {
    // (40·100³ − 36·92³)/12
    assertEquals(997_269.33, CHANNEL.section().secondMomentXMm4(), 0.01, "hand-worked");
  }

  @Test
  void theBoxedChannelIsABox() {
    // Plate 4 over the flange tips: outside 44 x 100, inside 36 x 92.
    BuiltUpSection box = CHANNEL.boxedWith(4).section();
    assertEquals(44 * 100 - 36 * 92, box.areaMm2(), 1e-9, "hand-worked");
    assertEquals((44e6 - 36 * 778_688.0) / 12, box.secondMomentXMm4(), 0.01, "hand-worked");
    assertEquals(50, box.toTopMm(), 1e-9, "symmetry");
    assertEquals(44, CHANNEL.boxedWith(4).widthMm(), 1e-9, "hand-worked");
  }

  @Test
  void theOpenChannelNotchedWithoutAnyPlate() {
    // Left: web 4 x 60 and top flange 36 x 4; centroid 40.5 above the cut.
    BuiltUpSection left = notch(40, 0, 0).sectionAt(CHANNEL, 0);
    assertEquals(384, left.areaMm2(), 1e-9, "hand-worked");
    assertEquals(40.5, left.toBottomMm(), 1e-9, "hand-worked");
    assertEquals(142_752, left.secondMomentXMm4(), 1e-6, "hand-worked");
    assertEquals(142_752 / 40.5, left.modulusBottomMm3(), 1e-6, "hand-worked");
    double ratio = notch(40, 0, 0).modulusRatio(CHANNEL, CHANNEL);
    assertEquals((142_752 / 40.5) / (997_269.333 / 50), ratio, 1e-6, "hand-worked");
  }

  @Test
  void theBoxedChannelNotchedAndCapped() {
    // Cut 40 deep, cap 44 x 6 below the cut, from 34 to 40; webs 2 of 4 x 60; top flange 36 x 4.
    // Area 264 + 480 + 144 = 888; centroid (264·37 + 480·70 + 144·98)/888 = 64.7297.
    // I = 264·36/12 + 264·27.7297² + 480·3600/12 + 480·5.2703² + 144·16/12 + 144·33.2703²
    BuiltUpSection box = notch(40, 6, 0).sectionAt(CHANNEL.boxedWith(4), 0);
    assertEquals(888, box.areaMm2(), 1e-9, "hand-worked");
    assertEquals(64.7297, box.centroidYMm(), 0.0001, "hand-worked");
    assertEquals(30.7297, box.toBottomMm(), 0.0001, "hand-worked");
    assertEquals(520_712, box.secondMomentXMm4(), 1, "hand-worked");
    assertEquals(34, notch(40, 6, 0).clearDepthMm(), 1e-9, "hand-worked");
  }

  @Test
  void aSidePlateAddsItsOwnRectangle() {
    BuiltUpSection without = notch(40, 0, 0).sectionAt(CHANNEL, 0);
    BuiltUpSection with = notch(40, 0, 5).sectionAt(CHANNEL, 0);
    assertEquals(without.areaMm2() + 5 * 60, with.areaMm2(), 1e-9, "hand-worked");
  }

  @Test
  void besideTheNotchTheRailIsWhole() {
    assertEquals(CHANNEL.section(), notch(40, 6, 5).sectionAt(CHANNEL, 126));
  }

  @Test
  void aCircularNotchTwiceAsLongAsDeepIsAHalfCircle() {
    RailNotch half = new RailNotch(Shape.CIRCULAR, 50, 100, 0, 0);
    assertEquals(50, half.depthAtMm(0), 1e-9, "circle");
    assertEquals(40, half.depthAtMm(30), 1e-9, "3-4-5 triangle");
    assertEquals(30, half.depthAtMm(-40), 1e-9, "3-4-5 triangle");
    assertEquals(0, half.depthAtMm(50), 1e-9, "circle");
  }

  @Test
  void aRectangularNotchIsAsDeepAllAlong() {
    RailNotch notch = new RailNotch(Shape.RECTANGULAR, 50, 80, 0, 0);
    assertEquals(50, notch.depthAtMm(39), "rectangle");
    assertEquals(0, notch.depthAtMm(41), "rectangle");
  }

  @Seeds(1000)
  void aDeeperCutIsWeakerAndAPlateNeverMakesItSofter(Draw draw) {
    double depth = draw.between(5, 80);
    double plate = draw.between(1, 4);
    double bare = notch(depth, 0, 0).sectionAt(CHANNEL, 0).secondMomentXMm4();
    double deeper = notch(depth + 5, 0, 0).sectionAt(CHANNEL, 0).secondMomentXMm4();
    double capped = notch(depth, plate, 0).sectionAt(CHANNEL, 0).secondMomentXMm4();
    double sided = notch(depth, plate, plate).sectionAt(CHANNEL, 0).secondMomentXMm4();
    FrameRail boxedRail = CHANNEL.boxedWith(plate);
    double boxed = notch(depth, plate, plate).sectionAt(boxedRail, 0).secondMomentXMm4();
    assertTrue(deeper < bare && bare < capped && capped < sided && sided < boxed);
    assertTrue(notch(depth, 0, 0).modulusRatio(CHANNEL, CHANNEL) < 1);
  }

  @Seeds(1000)
  void nothingInTheNotchIsNotANumber(Draw draw) {
    double depth = draw.between(1, 95);
    double along = draw.between(-200, 200);
    double plate = draw.between(0.1, 50);
    RailNotch notch = notch(depth, Math.min(plate, 0.9 * depth), plate);
    BuiltUpSection section = notch.sectionAt(CHANNEL.boxedWith(plate), along);
    assertTrue(Double.isFinite(section.leastModulusMm3()) && section.leastModulusMm3() > 0);
  }

  @Test
  void aNotchThroughTheTopFlangeIsRefused() {
    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> notch(97, 0, 0).sectionAt(CHANNEL, 0));
    assertTrue(refusal.getMessage().contains("96 mm"), refusal.getMessage());
    assertTrue(refusal.getMessage().contains("step the frame"), refusal.getMessage());
  }

  @Test
  void aCircleShorterThanItsDepthIsRefused() {
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class, () -> new RailNotch(Shape.CIRCULAR, 60, 100, 0, 0));
    assertTrue(refusal.getMessage().contains("twice its depth, 120 mm"), refusal.getMessage());
    assertThrows(IllegalArgumentException.class, () -> notch(10, 11, 0));
    assertThrows(IllegalArgumentException.class, () -> CHANNEL.boxedWith(0.05));
  }
}
