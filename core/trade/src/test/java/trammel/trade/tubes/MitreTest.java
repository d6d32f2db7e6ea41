package trammel.trade.tubes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.trade.plates.Point2;

class MitreTest {
  private static final double INCH = 25.4;

  @Test
  void unwrappedMitreIsOneCosine() {
    // 1.75 OD at 22.5 degrees: total height .7249 in; the shape after cut-the-knot.org.
    Mitre mitre = Mitre.forTurn(1.75 * INCH, Math.PI / 4.0);
    assertEquals(0.7249, mitre.heightMm() / INCH, 5e-5);
    List<Point2> wrap = mitre.wrap(8);
    assertEquals(0.0, wrap.get(0).yMm(), 1e-12);
    assertEquals(mitre.halfHeightMm(), wrap.get(2).yMm(), 1e-9);
    assertEquals(mitre.heightMm(), wrap.get(4).yMm(), 1e-9);
    assertEquals(Math.PI * 1.75 * INCH, wrap.get(8).xMm(), 1e-9);
  }

  @Test
  void everyPointOfAMitreLiesInOnePlane() {
    double radius = 22.0;
    Mitre mitre = new Mitre(2.0 * radius, 0.5);
    for (Point2 point : mitre.wrap(36)) {
      double acrossMm = radius * (1.0 - Math.cos(point.xMm() / radius));
      assertEquals(Math.tan(0.5) * acrossMm, point.yMm(), 1e-9);
    }
  }

  @Test
  void steepMitreIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Mitre(40.0, 1.4));
  }
}
