package trammel.engine.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trammel.engine.quantity.ShopUnits.cubicInches;
import static trammel.engine.quantity.ShopUnits.fourthPowerInches;
import static trammel.engine.quantity.ShopUnits.inches;
import static trammel.engine.quantity.ShopUnits.mm;
import static trammel.engine.quantity.ShopUnits.mm2;
import static trammel.engine.quantity.ShopUnits.poundsOfMass;
import static trammel.engine.quantity.ShopUnits.squareInches;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class SectionTest {
  private static double poundsPerFoot(Section section) {
    return poundsOfMass(section.massKgPerM() * 0.3048);
  }

  @ParameterizedTest(name = "{0} x {1}")
  @CsvSource({
    "1.25, 0.250, 2.6725, 0.7854, 0.1043, 0.1669, 0.3644",
    "1.50, 0.120, 1.7703, 0.5202, 0.1248, 0.1664, 0.4897",
    "1.75, 0.120, 2.0910, 0.6145, 0.2052, 0.2345, 0.5779",
    "2.00, 0.250, 4.6769, 1.3744, 0.5369, 0.5369, 0.6250"
  })
  void roundTube(
      double outer, double wall, double lbPerFt, double area, double i, double s, double r) {
    RoundTubeSection tube = new RoundTubeSection(mm(outer), mm(wall));
    assertEquals(lbPerFt, poundsPerFoot(tube), 0.001 * lbPerFt, "steel trade 10.69 (D − t) t");
    assertEquals(area, squareInches(tube.areaMm2()), 0.00006, "closed form π(D² − d²)/4");
    assertEquals(i, fourthPowerInches(tube.secondMomentXMm4()), 0.00006, "π(D⁴ − d⁴)/64");
    assertEquals(s, cubicInches(tube.leastModulusMm3()), 0.00006, "closed form 2I/D");
    assertEquals(r, inches(tube.radiusOfGyrationXMm()), 0.00006, "closed form √(D² + d²)/4");
  }

  @ParameterizedTest(name = "HSS{0}x{1}")
  @CsvSource({
    "1.900, 0.145, 2.72, 0.749, 0.293, 0.309, 0.626, AISC Shapes Database v15.0",
    "2.500, 0.250, 6.01, 1.66, 1.08, 0.862, 0.806, AISC Shapes Database v15.0"
  })
  void roundHollowSection(
      double outer,
      double wall,
      double lbPerFt,
      double area,
      double i,
      double s,
      double r,
      String source) {
    RoundTubeSection nominal = new RoundTubeSection(mm(outer), mm(wall));
    RoundTubeSection design = nominal.withDesignWall();
    assertEquals(lbPerFt, poundsPerFoot(nominal), 0.005 + 0.001 * lbPerFt, source);
    assertEquals(area, squareInches(design.areaMm2()), 0.005 * area, source);
    assertEquals(i, fourthPowerInches(design.secondMomentXMm4()), 0.005 * i, source);
    assertEquals(s, cubicInches(design.leastModulusMm3()), 0.005 * s, source);
    assertEquals(r, inches(design.radiusOfGyrationXMm()), 0.003, source);
  }

  @ParameterizedTest(name = "HSS{0}x{1}x{2}")
  @CsvSource({
    "2, 2, 0.25, 5.41, 1.51, 0.747, 0.747, 0.704, 0.747, AISC Shapes Database v15.0",
    "2, 2, 0.1875, 4.32, 1.19, 0.641, 0.641, 0.733, 0.641, AISC Shapes Database v15.0",
    "3, 2, 0.1875, 5.59, 1.54, 1.77, 1.18, 1.07, 0.932, AISC Shapes Database v15.0",
    "4, 2, 0.1875, 6.87, 1.89, 3.66, 1.83, 1.39, 1.22, AISC Shapes Database v15.0"
  })
  void rectangularHollowSection(
      double height,
      double width,
      double wall,
      double lbPerFt,
      double area,
      double ix,
      double sx,
      double rx,
      double iy,
      String source) {
    RectangularTubeSection nominal = new RectangularTubeSection(mm(height), mm(width), mm(wall));
    RectangularTubeSection design = nominal.withDesignWall();
    assertEquals(lbPerFt, poundsPerFoot(nominal), 0.005 + 0.001 * lbPerFt, source);
    assertEquals(area, squareInches(design.areaMm2()), 0.005 * area, source);
    assertEquals(ix, fourthPowerInches(design.secondMomentXMm4()), 0.005 * ix, source);
    assertEquals(sx, cubicInches(design.leastModulusMm3()), 0.005 * sx, source);
    assertEquals(rx, inches(design.radiusOfGyrationXMm()), 0.005, source);
    assertEquals(iy, fourthPowerInches(design.secondMomentYMm4()), 0.005 * iy, source);
  }

  @Test
  void rectangularTubeWeightIsTheTradeFormula() {
    double expected = 3.40277 * (2 * 0.120 * (2 + 3 - 8 * 0.120) + 9.4248 * 0.120 * 0.120);
    RectangularTubeSection tube = new RectangularTubeSection(mm(3), mm(2), mm(0.120));
    assertEquals(expected, poundsPerFoot(tube), 0.001 * expected, "steel trade weight formula");
  }

  /** Dimensions: C3x4.1 3.00, 1.41, 0.170, 0.273; C4x5.4 4.00, 1.58, 0.184, 0.296 (memory). */
  @ParameterizedTest(name = "{0} deep")
  @CsvSource({
    "3.00, 1.41, 0.170, 0.273, 4.1, 1.20, 1.65, 1.10, 1.18, 0.191, AISC Shapes Database v15.0",
    "4.00, 1.58, 0.184, 0.296, 5.4, 1.58, 3.85, 1.92, 1.56, 0.312, AISC Shapes Database v15.0"
  })
  void rolledChannel(
      double depth,
      double flangeWidth,
      double web,
      double flange,
      double lbPerFt,
      double area,
      double ix,
      double sx,
      double rx,
      double iy,
      String source) {
    ChannelSection channel = new ChannelSection(mm(depth), mm(flangeWidth), mm(web), mm(flange));
    assertEquals(lbPerFt, poundsPerFoot(channel), 0.02 * lbPerFt, source);
    assertEquals(area, squareInches(channel.areaMm2()), 0.015 * area, source);
    assertEquals(ix, fourthPowerInches(channel.secondMomentXMm4()), 0.015 * ix, source);
    assertEquals(sx, cubicInches(channel.leastModulusMm3()), 0.015 * sx, source);
    assertEquals(rx, inches(channel.radiusOfGyrationXMm()), 0.015, source);
    // A tapered flange is thick near the web, where it counts little about Y.
    assertEquals(iy, fourthPowerInches(channel.secondMomentYMm4()), 0.23 * iy, source);
  }

  @ParameterizedTest
  @CsvSource({
    "0.1875, 40.8, 7.650, steel trade 40.8 t", "0.1875, 40.84, 7.657, 0.2836 lb/in³",
    "0.25, 40.8, 10.200, steel trade 40.8 t", "0.25, 40.84, 10.210, 0.2836 lb/in³",
    "0.375, 40.8, 15.300, steel trade 40.8 t", "0.375, 40.84, 15.314, 0.2836 lb/in³"
  })
  void plateByTheSquareFoot(double thickness, double factor, double pounds, String source) {
    double kg = SteelMass.plateKg(mm2(144), mm(thickness));
    assertEquals(pounds, poundsOfMass(kg), 0.001 * pounds, source);
    assertEquals(factor * thickness, poundsOfMass(kg), 0.001 * pounds, source);
  }

  @ParameterizedTest
  @CsvSource({"24, 0.25, 1.7016", "4.5, 0.1875, 0.2393", "40, 0.375, 4.2540"})
  void plateParts(double squareInches, double thickness, double pounds) {
    double kg = SteelMass.plateKg(mm2(squareInches), mm(thickness));
    assertEquals(pounds, poundsOfMass(kg), 0.0003 * pounds, "0.2836 lb/in³");
  }

  @Test
  void aLengthWeighsLengthTimesMassPerMetre() {
    RoundTubeSection bar = RoundTubeSection.bar(20);
    double expected = Math.PI * 100 * 500 * 7850e-9;
    assertEquals(expected, SteelMass.lengthKg(bar, 500), 1e-12, "π r² l ρ");
  }

  @Test
  void aSolidBarIsTheLimitOfATube() {
    RoundTubeSection bar = RoundTubeSection.bar(30);
    assertEquals(Math.PI * 225, bar.areaMm2(), 1e-9, "π r²");
    assertEquals(Math.PI * 810_000 / 64, bar.secondMomentXMm4(), 1e-6, "π d⁴/64");
  }

  @Seeds(1000)
  void aChannelIsThreeRectangles(Draw draw) {
    double depth = draw.between(60, 200);
    double width = draw.between(20, 80);
    double web = draw.between(1, 10);
    double flange = draw.between(1, 10);
    ChannelSection channel = new ChannelSection(depth, width, web, flange);
    BuiltUpSection rectangles = FrameRail.open(channel).section();
    assertEquals(channel.areaMm2(), rectangles.areaMm2(), 1e-6);
    assertEquals(channel.centroidFromBackMm(), rectangles.centroidXMm(), 1e-9);
    double ix = channel.secondMomentXMm4();
    double iy = channel.secondMomentYMm4();
    assertEquals(ix, rectangles.secondMomentXMm4(), 1e-9 * ix);
    assertEquals(iy, rectangles.secondMomentYMm4(), 1e-9 * iy);
    assertEquals(channel.leastModulusMm3(), rectangles.leastModulusMm3(), 1e-6);
  }

  /** The corners of a tube are summed here in thin strips. */
  @Seeds(50)
  void rectangularTubeMomentIsTheSumOfThinStrips(Draw draw) {
    double height = draw.between(30, 120);
    double width = draw.between(30, 120);
    double wall = draw.between(1, 7);
    int strips = 20_000;
    double step = height / strips;
    double area = 0;
    double moment = 0;
    for (int strip = 0; strip < strips; strip++) {
      double y = -height / 2 + (strip + 0.5) * step;
      double across =
          chord(y, height, width, 2 * wall) - chord(y, height - 2 * wall, width - 2 * wall, wall);
      area += across * step;
      moment += across * step * y * y;
    }
    RectangularTubeSection tube = new RectangularTubeSection(height, width, wall);
    assertEquals(area, tube.areaMm2(), 0.002 * area);
    assertEquals(moment, tube.secondMomentXMm4(), 0.002 * moment);
  }

  private static double chord(double y, double height, double width, double radius) {
    double fromFlat = Math.abs(y) - (height / 2 - radius);
    if (fromFlat <= 0) {
      return width;
    }
    return fromFlat >= radius
        ? 0
        : width - 2 * (radius - Math.sqrt(radius * radius - fromFlat * fromFlat));
  }

  @Test
  void overlappingPlatesAreRefused() {
    PlateRectangle web = new PlateRectangle(0, 0, 4, 100);
    PlateRectangle flange = new PlateRectangle(0, 96, 40, 4);
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class, () -> new BuiltUpSection(List.of(web, flange)));
    assertTrue(refusal.getMessage().contains("counted twice"), refusal.getMessage());
    assertThrows(IllegalArgumentException.class, () -> new BuiltUpSection(List.of()));
  }

  @Test
  void aWallOverHalfTheDiameterIsRefused() {
    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> new RoundTubeSection(20, 11));
    assertTrue(refusal.getMessage().contains("from 0.01 to 10 mm"), refusal.getMessage());
    assertThrows(IllegalArgumentException.class, () -> new RectangularTubeSection(20, 40, 6));
    assertThrows(IllegalArgumentException.class, () -> new ChannelSection(100, 40, 4, 60));
    assertThrows(IllegalArgumentException.class, () -> RoundTubeSection.bar(Double.NaN));
  }
}
