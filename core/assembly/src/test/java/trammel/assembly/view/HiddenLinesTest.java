package trammel.assembly.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.assembly.Place;
import trammel.assembly.Prism;
import trammel.assembly.Turned;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

/** What an eye sees of bodies, against rays through blocks and against plain geometry. */
class HiddenLinesTest {
  private static final Vector3 RIGHT = new Vector3(1, 0, 0);
  private static final Vector3 UP = new Vector3(0, 1, 0);

  /** Looks along -z. */
  private static final Eye FROM_ABOVE = new Eye(RIGHT, UP);

  /** As near to a surface as this, a ray tells nothing (mm). */
  private static final double GRAZING_MM = 0.4;

  /** A block of half sizes about its place. */
  private record Block(String id, Place place, double xMm, double yMm, double zMm) {
    Body body() {
      Prism solid = Prism.block(2 * xMm, 2 * yMm, 2 * zMm);
      return new Body(id, solid.mesh().placed(place.shifted(0, 0, -zMm)), true);
    }

    /** Slab test: does a ray towards the eye pass through this block, made larger by so much? */
    boolean stops(Point3 from, Vector3 towards, double largerMm) {
      Point3 own = place.own(from);
      double[] at = {own.xMm(), own.yMm(), own.zMm()};
      double[] way = {towards.dot(place.x()), towards.dot(place.y()), towards.dot(place.z())};
      double[] half = {xMm + largerMm, yMm + largerMm, zMm + largerMm};
      double enters = GRAZING_MM;
      double leaves = Double.POSITIVE_INFINITY;
      for (int i = 0; i < 3; i++) {
        if (Math.abs(way[i]) < 1e-12) {
          if (Math.abs(at[i]) > half[i]) {
            return false;
          }
          continue;
        }
        double one = (-half[i] - at[i]) / way[i];
        double other = (half[i] - at[i]) / way[i];
        enters = Math.max(enters, Math.min(one, other));
        leaves = Math.min(leaves, Math.max(one, other));
      }
      return enters < leaves;
    }
  }

  private static List<SeenLine> seen(List<SeenLine> lines, String id, boolean hidden) {
    return lines.stream().filter(l -> l.id().equals(id) && l.hidden() == hidden).toList();
  }

  private static double lengthMm(List<SeenLine> lines) {
    return lines.stream().mapToDouble(SeenLine::lengthMm).sum();
  }

  @Test
  void aBlockSeenSquareIsItsOutlineAndNoMore() {
    Body block = new Block("block", Place.RIDE, 50, 30, 20).body();
    List<SeenLine> lines = HiddenLines.of(List.of(block), FROM_ABOVE);
    assertEquals(2 * (100 + 60), lengthMm(lines), 1e-6);
    assertTrue(lines.stream().noneMatch(SeenLine::hidden));
  }

  /** A 60 by 200 plate under a 100 square block: 100 mm of both long sides are under it. */
  @Test
  void whatStandsBehindIsHiddenWhereItDoesAndNowhereElse() {
    Body above = new Block("above", Place.at(new Point3(0, 0, 100)), 50, 50, 20).body();
    Body below = new Block("below", Place.RIDE, 30, 100, 5).body();
    List<SeenLine> lines = HiddenLines.of(List.of(below, above), FROM_ABOVE);
    assertEquals(400, lengthMm(seen(lines, "above", false)), 1e-6);
    assertEquals(2 * 100 + 2 * 60, lengthMm(seen(lines, "below", false)), 1e-3);
    assertEquals(2 * 100, lengthMm(seen(lines, "below", true)), 1e-3);
    assertEquals(0, lengthMm(seen(lines, "above", true)), 1e-6);
  }

  /** The same plate under the same block, for a picture without what is hidden. */
  @Test
  void whatIsSeenIsTheSameWhereNothingElseIsAskedFor() {
    Body above = new Block("above", Place.at(new Point3(0, 0, 100)), 50, 50, 20).body();
    Body below = new Block("below", Place.RIDE, 30, 100, 5).body();
    List<SeenLine> lines = HiddenLines.seen(List.of(below, above), FROM_ABOVE);
    assertTrue(lines.stream().noneMatch(SeenLine::hidden), lines.toString());
    assertEquals(400, lengthMm(seen(lines, "above", false)), 1e-6);
    assertEquals(2 * 100 + 2 * 60, lengthMm(seen(lines, "below", false)), 1e-3);
  }

  @Test
  void throughWhatHidesNothingEverythingIsSeen() {
    Body above = new Block("above", Place.at(new Point3(0, 0, 100)), 50, 50, 20).body();
    Body glass = new Body("above", above.mesh(), false);
    Body below = new Block("below", Place.RIDE, 30, 100, 5).body();
    List<SeenLine> lines = HiddenLines.of(List.of(below, glass), FROM_ABOVE);
    assertEquals(2 * 200 + 2 * 60, lengthMm(seen(lines, "below", false)), 1e-6);
    assertEquals(400, lengthMm(seen(lines, "above", false)), 1e-6);
  }

  /** From its side a bar is a rectangle: none of the facets of its round is an edge. */
  @Test
  void aRoundBarFromItsSideIsARectangle() {
    Place lying = Place.along(new Point3(0, 0, 0), RIGHT);
    Body bar = new Body("bar", Turned.bar(15, 400).mesh().placed(lying), true);
    List<SeenLine> lines = HiddenLines.of(List.of(bar), FROM_ABOVE);
    assertTrue(lines.stream().noneMatch(SeenLine::hidden), lines.toString());
    assertEquals(2 * 400 + 2 * 30, lengthMm(lines), 1);
  }

  /** 200 points on the lines of each scene; blocks may cut into each other. */
  @Seeds(60)
  void aPointIsSeenWhereARayFromItMeetsNothing(Draw draw) {
    List<Block> blocks = new ArrayList<>();
    int count = 2 + (int) draw.evenly(0, 9.99);
    for (int i = 0; i < count; i++) {
      blocks.add(block("block " + i, draw));
    }
    Eye eye = new Eye(RIGHT, new Vector3(0, 0.6, 0.8));
    Vector3 towards = eye.right().cross(eye.up());
    List<Body> bodies = blocks.stream().map(Block::body).toList();

    List<SeenLine> lines = HiddenLines.of(bodies, eye);

    assertFalse(lines.isEmpty());
    for (int i = 0; i < 200; i++) {
      SeenLine line = lines.get((int) draw.evenly(0, lines.size() - 1e-9));
      double share = draw.evenly(0.02, 0.98);
      double x = line.fromX() + share * (line.toX() - line.fromX());
      double y = line.fromY() + share * (line.toY() - line.fromY());
      Block own = blocks.stream().filter(b -> b.id.equals(line.id())).findFirst().orElseThrow();
      List<Double> depths = edgesAt(own, eye, x, y);
      assertFalse(depths.isEmpty(), "no edge of " + line.id() + " is there");
      if (line.hidden()) {
        assertTrue(
            depths.stream().anyMatch(z -> !isOpen(blocks, eye, towards, x, y, z, 1)),
            () -> line + " is drawn hidden and nothing stands before it");
      } else {
        assertTrue(
            depths.stream().anyMatch(z -> isOpen(blocks, eye, towards, x, y, z, -1)),
            () -> line + " is drawn seen and stands behind something");
      }
    }
  }

  /** Depths at which a block's twelve edges pass a point of the picture. */
  private static List<Double> edgesAt(Block block, Eye eye, double x, double y) {
    List<Double> depths = new ArrayList<>();
    double[][] signs = {{-1, -1}, {-1, 1}, {1, -1}, {1, 1}};
    double[] half = {block.xMm, block.yMm, block.zMm};
    for (int axis = 0; axis < 3; axis++) {
      for (double[] sign : signs) {
        double[] from = new double[3];
        from[axis] = -half[axis];
        from[(axis + 1) % 3] = sign[0] * half[(axis + 1) % 3];
        from[(axis + 2) % 3] = sign[1] * half[(axis + 2) % 3];
        double[] to = from.clone();
        to[axis] = half[axis];
        Point3 a = eye.see(block.place.point(from[0], from[1], from[2]));
        Point3 b = eye.see(block.place.point(to[0], to[1], to[2]));
        double dx = b.xMm() - a.xMm();
        double dy = b.yMm() - a.yMm();
        double long2 = dx * dx + dy * dy;
        double share = ((x - a.xMm()) * dx + (y - a.yMm()) * dy) / long2;
        double off = Math.hypot(a.xMm() + share * dx - x, a.yMm() + share * dy - y);
        if (share > -0.01 && share < 1.01 && off < 0.2) {
          depths.add(a.zMm() + share * (b.zMm() - a.zMm()));
        }
      }
    }
    return depths;
  }

  private static boolean isOpen(
      List<Block> blocks, Eye eye, Vector3 towards, double x, double y, double z, int larger) {
    Point3 point =
        new Point3(0, 0, 0)
            .plus(eye.right().scaled(x))
            .plus(eye.up().scaled(y))
            .plus(towards.scaled(z));
    return blocks.stream().noneMatch(block -> block.stops(point, towards, larger * GRAZING_MM));
  }

  private static Block block(String id, Draw draw) {
    Vector3 one =
        new Vector3(draw.evenly(-1, 1), draw.evenly(-1, 1), draw.evenly(0.1, 1)).normalized();
    Vector3 helper = new Vector3(draw.evenly(-1, 1), draw.evenly(0.5, 1), draw.evenly(-1, 0));
    Vector3 other = one.cross(helper).normalized();
    Point3 at = new Point3(draw.evenly(-150, 150), draw.evenly(-150, 150), draw.evenly(-150, 150));
    return new Block(
        id, Place.of(at, one, other), draw.evenly(5, 80), draw.evenly(5, 80), draw.evenly(5, 80));
  }
}
