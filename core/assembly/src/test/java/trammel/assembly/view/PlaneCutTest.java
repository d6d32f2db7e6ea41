package trammel.assembly.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.assembly.Mesh;
import trammel.assembly.Place;
import trammel.assembly.Prism;
import trammel.assembly.Turned;
import trammel.engine.geometry.Vector3;

/** Sections against plain geometry. */
class PlaneCutTest {
  private static final Eye FROM_ABOVE = new Eye(new Vector3(1, 0, 0), new Vector3(0, 1, 0));

  private static double lengthMm(List<PlaneCut.Segment> pieces) {
    return pieces.stream()
        .mapToDouble(p -> Math.hypot(p.toX() - p.fromX(), p.toY() - p.fromY()))
        .sum();
  }

  /** Lines over a surface, each as wide as they are apart, cover its area. */
  private static double coveredMm2(PlaneCut cut, double apartMm) {
    return apartMm * lengthMm(cut.hatching(apartMm, Math.toRadians(45)));
  }

  @Test
  void aBlockCutAcrossIsItsRectangle() {
    PlaneCut cut = new PlaneCut(Prism.block(60, 40, 100).mesh(), FROM_ABOVE, 30);
    assertEquals(2 * (60 + 40), lengthMm(cut.outline()), 1e-3);
    assertEquals(60 * 40, coveredMm2(cut, 0.5), 10);
  }

  /** A tube 50 mm across with a bore of 40: pi/4 (50² - 40²) of material, none in the bore. */
  @Test
  void aTubeIsCutToARing() {
    Mesh tube = Turned.ring(20, 25, 100).mesh();
    double area = Math.PI / 4 * (50 * 50 - 40 * 40);
    PlaneCut cut = new PlaneCut(tube, FROM_ABOVE, 50);
    assertEquals(area, coveredMm2(cut, 0.25), 0.01 * area);
    for (PlaneCut.Segment line : cut.hatching(2, Math.toRadians(45))) {
      double middle = Math.hypot((line.fromX() + line.toX()) / 2, (line.fromY() + line.toY()) / 2);
      assertTrue(middle > 19, "a line lies in the bore: " + line);
    }
  }

  @Test
  void nothingIsCutBesideIt() {
    Mesh aside = Prism.block(10, 10, 10).mesh().placed(Place.RIDE);
    assertTrue(new PlaneCut(aside, FROM_ABOVE, 11).outline().isEmpty());
    assertTrue(new PlaneCut(aside, FROM_ABOVE, 11).hatching(1, 0).isEmpty());
  }
}
