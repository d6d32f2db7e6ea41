package trammel.engine.clearance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;

class GapTest {

  private static final double TOLERANCE_MM = 1e-6;

  /**
   * Plain geometry: the distance of two segments is that of their lines if these come closest
   * within both, else that of an end (Ericson, Real-Time Collision Detection, 2005, ch. 5, from
   * memory); the radii 3 and 4 come off.
   */
  @ParameterizedTest
  @CsvSource({
    // skew at right angles, crossing within both: 40 apart
    "0,0,0, 100,0,0, 50,-50,40, 50,50,40, 33",
    // skew, the second ends 30 before the crossing: hypot(30, 40) = 50
    "0,0,0, 100,0,0, 50,30,40, 50,90,40, 43",
    // skew, both end before the crossing: corners (100,0,0) and (130,40,120): 130
    "0,0,0, 100,0,0, 130,40,120, 130,90,120, 123",
    // parallel side by side, 25 apart
    "0,0,0, 100,0,0, 20,25,0, 300,25,0, 18",
    // parallel one after another: (100,0,0) to (112,16,0) = 20
    "0,0,0, 100,0,0, 112,16,0, 200,16,0, 13",
    // opposed directions, one after another on one line
    "0,0,0, 100,0,0, 190,0,0, 130,0,0, 23",
    // a ball beside the middle: 60
    "0,0,0, 100,0,0, 40,0,60, 40,0,60, 53",
    // two balls: (0,0,0) to (2,3,6)*10 = 70
    "0,0,0, 0,0,0, 20,30,60, 20,30,60, 63",
    // axes that cross: as deep as both radii
    "0,0,0, 100,0,0, 50,-50,0, 50,50,0, -7",
    // one axis ends on the other
    "0,0,0, 100,0,0, 50,0,0, 50,80,0, -7",
    // axes on one line, overlapping
    "0,0,0, 100,0,0, 60,0,0, 160,0,0, -7",
    // the same axis, and the same point
    "0,0,0, 100,0,0, 0,0,0, 100,0,0, -7",
    "9,9,9, 9,9,9, 9,9,9, 9,9,9, -7",
    // touching: 7 apart
    "0,0,0, 100,0,0, 0,7,0, 100,7,0, 0"
  })
  void capsulesKeepTheDistanceOfTheirAxesLessTheirRadii(
      double ax,
      double ay,
      double az,
      double bx,
      double by,
      double bz,
      double cx,
      double cy,
      double cz,
      double dx,
      double dy,
      double dz,
      double expectedMm) {
    Capsule first = new Capsule(new Point3(ax, ay, az), new Point3(bx, by, bz), 3);
    Capsule second = new Capsule(new Point3(cx, cy, cz), new Point3(dx, dy, dz), 4);

    assertGap(expectedMm, first, second);
  }

  /** Nearly parallel axes: 0.1 mm of lean on 1 m; by hand the far ends stand 19.9 apart. */
  @Test
  void leaningAxesComeClosestAtTheLeaningEnd() {
    Capsule first = new Capsule(new Point3(0, 0, 0), new Point3(1000, 0, 0), 5);
    Capsule second = new Capsule(new Point3(0, 0, 20), new Point3(1000, 0, 19.9), 5);

    Gap gap = Gap.between(first, second);

    assertEquals(9.9, gap.gapMm(), 1e-5);
    assertEquals(1000, gap.onFirst().xMm(), 0.01);
  }

  @ParameterizedTest
  @CsvSource({
    // face to face: 10 along x
    "110,0,0, 10",
    // edge to edge: 3-4-5
    "103,104,0, 5",
    // corner to corner: 2-3-6-7
    "102,103,106, 7",
    // face to face the other way about
    "0,-112,5, 12",
    // touching with a face, an edge and a corner
    "100,20,30, 0",
    "100,100,0, 0",
    "100,100,100, 0",
    // overlapping 3 along x, more along the others: shortest way out
    "97,50,40, -3",
    "-20,95,-10, -5",
    // one in the place of the other: a whole side
    "0,0,0, -100"
  })
  void squareBoxesKeepTheDistanceOfTheirNearestSides(
      double shiftX, double shiftY, double shiftZ, double expectedMm) {
    Box first = Box.between(0, 100, 0, 100, 0, 100);
    Box second = Box.between(shiftX, shiftX + 100, shiftY, shiftY + 100, shiftZ, shiftZ + 100);

    assertGap(expectedMm, first, second);
  }

  /** Cubes of half-side 10 turned by 45 degrees reach 10 times the square root of 2. */
  @Test
  void crossedEdgesKeepTheDistanceBetweenThem() {
    double half = Math.sqrt(0.5);
    Point3 low = new Point3(0, 0, 0);
    Box edgeAlongX =
        new Box(
            low,
            10,
            10,
            10,
            new Vector3(1, 0, 0),
            new Vector3(0, half, half),
            new Vector3(0, -half, half));
    Point3 high = new Point3(0, 0, 20 * Math.sqrt(2) + 7);
    Box edgeAlongY =
        Box.between(-10, 10, -10, 10, high.zMm() - 10, high.zMm() + 10)
            .turnedInSideView(Math.PI / 4, high);

    assertGap(7, edgeAlongX, edgeAlongY);
  }

  /** A cube of half-side 10 standing on its corner reaches 10 times the square root of 3 down. */
  @ParameterizedTest
  @CsvSource({"8", "-2"})
  void cornerKeepsItsHeightOverAFace(double heightMm) {
    Vector3 up = new Vector3(1, 1, 1).normalized();
    Vector3 side = new Vector3(1, -1, 0).normalized();
    Vector3 third = up.cross(side);
    // Axes whose sum points straight up: the mirror image of the turn that lays (1,1,1) upright.
    Box onCorner =
        new Box(
            new Point3(3, 4, 10 * Math.sqrt(3) + heightMm),
            10,
            10,
            10,
            new Vector3(side.x(), third.x(), up.x()),
            new Vector3(side.y(), third.y(), up.y()),
            new Vector3(side.z(), third.z(), up.z()));
    Box floor = Box.between(-100, 100, -100, 100, -50, 0);

    assertGap(heightMm, onCorner, floor);
  }

  @Test
  void boxInsideABoxHasToLeaveByTheNearestFace() {
    Box outer = Box.between(-10, 10, -10, 10, -10, 10);
    Box inner = Box.between(3, 5, -1, 1, -1, 1);

    // From its rear face at 3 to the outer front face at 10.
    assertGap(-7, inner, outer);
  }

  @ParameterizedTest
  @CsvSource({
    // over a face: 30 - 5
    "20,10,130, 25",
    // beside an edge: 3-4-5 times ten, less 5
    "130,10,140, 45",
    // off a corner: 2-3-6-7 times ten, less 5
    "120,130,160, 65",
    // touching a face
    "20,10,105, 0",
    // centre on the face, and 3 under it
    "20,10,100, -5",
    "20,10,97, -8"
  })
  void sphereKeepsItsDistanceFromABox(double x, double y, double z, double expectedMm) {
    Box box = Box.between(-100, 100, -100, 100, -100, 100);

    assertGap(expectedMm, new Sphere(new Point3(x, y, z), 5), box);
  }

  @ParameterizedTest
  @CsvSource({
    // lying over the top face: 20 - 6
    "-300,0,120, 300,0,120, 14",
    // past an edge at 45 degrees: the axis runs square to (1,0,1), 40 over the edge (100,y,100)
    "60,0,220, 220,0,60, 50.568542494923804",
    // an end over the corner: 2-3-6-7 times ten, less 6
    "120,130,160, 220,130,260, 64",
    // straight through, nearest way out across the 200 mm wide box: 100 + 6
    "-300,0,0, 300,0,0, -106",
    // straight through, 30 under the top
    "-300,10,70, 300,10,70, -36"
  })
  void capsuleKeepsItsDistanceFromABox(
      double ax, double ay, double az, double bx, double by, double bz, double expectedMm) {
    Box box = Box.between(-100, 100, -100, 100, -100, 100);
    Capsule capsule = new Capsule(new Point3(ax, ay, az), new Point3(bx, by, bz), 6);

    assertGap(expectedMm, capsule, box);
  }

  /** An upright cylinder of radius 50 from z = 0 to 100 against boxes. */
  @ParameterizedTest
  @CsvSource({
    // flat end under a face: 12
    "-80,80, -80,80, 112,150, 12",
    // round side beside a face: 70 - 50
    "70,90, -80,80, 20,60, 20",
    // round side beside an upright edge at (80,60): 100 - 50
    "80,95, 60,95, 20,60, 50",
    // rim to the edge that runs across: 3-4-5
    "53,95, -80,80, 104,150, 5",
    // rim to a corner at (80,60) over it, 120 above: hypot(50, 120) = 130
    "80,95, 60,95, 220,250, 130",
    // flat end touching
    "-80,80, -80,80, 100,150, 0",
    // flat end 4 deep
    "-80,80, -80,80, 96,150, -4",
    // round side 8 deep
    "42,200, -80,80, -300,400, -8"
  })
  void cylinderKeepsItsDistanceFromABox(
      double minX,
      double maxX,
      double minY,
      double maxY,
      double minZ,
      double maxZ,
      double expectedMm) {
    Cylinder cylinder = new Cylinder(new Point3(0, 0, 0), new Point3(0, 0, 100), 50);
    Box box = Box.between(minX, maxX, minY, maxY, minZ, maxZ);

    assertGap(expectedMm, cylinder, box);
  }

  /** Tilted by 45 degrees, the rim hangs radius times root one half under the end's centre. */
  @Test
  void tiltedCylinderStandsOnItsRim() {
    Cylinder cylinder = new Cylinder(new Point3(0, 0, 100), new Point3(80, 0, 180), 50);
    Box floor = Box.between(-500, 500, -500, 500, -20, 0);

    assertGap(100 - 50 * Math.sqrt(0.5), cylinder, floor);
  }

  @ParameterizedTest
  @CsvSource({
    // stacked on one axis: 15
    "0,0,115, 0,0,200, 15",
    // parallel side by side: 150 - 50 - 30
    "150,0,20, 150,0,90, 70",
    // crossed at right angles, round sides facing: 140 - 50 - 30
    "140,-200,50, 140,200,50, 60",
    // parallel and overlapping by 6, far from both ends
    "74,0,-900, 74,0,900, -6",
    // round side lying on the flat end: touching
    "0,-200,130, 0,200,130, 0"
  })
  void cylindersKeepTheDistanceOfTheirSidesAndEnds(
      double ax, double ay, double az, double bx, double by, double bz, double expectedMm) {
    Cylinder first = new Cylinder(new Point3(0, 0, 0), new Point3(0, 0, 100), 50);
    Cylinder second = new Cylinder(new Point3(ax, ay, az), new Point3(bx, by, bz), 30);

    assertGap(expectedMm, first, second);
  }

  /** Shapes in one place, thin plates and slivers, hundreds of metres off: an answer every time. */
  @Test
  void everyPairOfAwkwardShapesHasAFiniteGap() {
    double far = 900_000;
    List<Shape> shapes =
        List.of(
            new Capsule(new Point3(0, 0, 0), new Point3(0, 0, 0), 0.001),
            new Capsule(new Point3(0, 0, 0), new Point3(1e-9, 0, 0), 1),
            new Capsule(new Point3(-50_000, 0, 0), new Point3(50_000, 0, 0), 0.001),
            new Cylinder(new Point3(0, 0, 0), new Point3(0, 0, 0.001), 1000),
            new Cylinder(new Point3(0, 0, 0), new Point3(100_000, 0, 0), 0.001),
            new Cylinder(new Point3(0, 0, 0), new Point3(70, 70, 70), 20),
            Box.between(0, 0.002, 0, 0.002, 0, 0.002),
            Box.between(-1000, 1000, -1000, 1000, 0, 0.002),
            Box.between(-1000, 1000, -0.001, 0.001, -0.001, 0.001),
            Box.between(-50, 50, -50, 50, -50, 50),
            Box.between(-50, 50, -50, 50, -50, 50).turnedInSideView(1e-9, new Point3(0, 0, 0)),
            new Sphere(new Point3(0, 0, 0), 100_000),
            new Sphere(new Point3(far, far, far), 0.001));

    assertTimeoutPreemptively(
        Duration.ofSeconds(5),
        () -> {
          for (Shape first : shapes) {
            for (Shape second : shapes) {
              Gap gap = Gap.between(first, second);
              assertTrue(Double.isFinite(gap.gapMm()), () -> first + " to " + second);
              assertEquals(Math.abs(gap.gapMm()), gap.onFirst().distanceMm(gap.onSecond()), 1e-4);
            }
          }
        });
  }

  @Test
  void overlapIsFlaggedAndNothingElse() {
    Box box = Box.between(0, 100, 0, 100, 0, 100);

    assertTrue(Gap.between(box, new Sphere(new Point3(50, 50, 101), 2)).isOverlap());
    assertFalse(Gap.between(box, new Sphere(new Point3(50, 50, 103), 2)).isOverlap());
  }

  @Test
  void impossibleSizesAreRefusedWithTheirValue() {
    Point3 origin = new Point3(0, 0, 0);
    Point3 aside = new Point3(0, 10, 0);

    assertRefused("-3.0", () -> new Sphere(origin, -3));
    assertRefused("0.0", () -> new Capsule(origin, aside, 0));
    assertRefused("NaN", () -> new Capsule(origin, aside, Double.NaN));
    assertRefused("200000.0", () -> new Cylinder(origin, aside, 200_000));
    assertRefused("length is 0.0", () -> new Cylinder(origin, origin, 5));
    assertRefused("5.0 to 5.0", () -> Box.between(5, 5, 0, 1, 0, 1));
    assertRefused("9.0 to 2.0", () -> Box.between(0, 1, 9, 2, 0, 1));
    assertRefused("2000000.0", () -> new Sphere(new Point3(2e6, 0, 0), 5));
    assertRefused(
        "lengthwise with crosswise",
        () ->
            new Box(
                origin,
                1,
                1,
                1,
                new Vector3(1, 0, 0),
                new Vector3(0.6, 0.8, 0),
                new Vector3(0, 0, 1)));
  }

  /** A quarter turn, nose up, about the origin takes the front to the top. */
  @Test
  void sideViewTurnRaisesTheFront() {
    Box turned =
        Box.between(90, 110, -5, 5, -1, 1).turnedInSideView(Math.PI / 2, new Point3(0, 0, 0));

    assertEquals(0, turned.centre().xMm(), 1e-9);
    assertEquals(100, turned.centre().zMm(), 1e-9);
    assertEquals(1, turned.lengthwise().z(), 1e-12);
  }

  private static void assertGap(double expectedMm, Shape first, Shape second) {
    Gap gap = Gap.between(first, second);
    assertEquals(expectedMm, gap.gapMm(), TOLERANCE_MM);
    assertEquals(Math.abs(expectedMm), gap.onFirst().distanceMm(gap.onSecond()), TOLERANCE_MM);
    assertEquals(0, Solids.distanceMm(first, gap.onFirst()), TOLERANCE_MM, "point on the first");
    assertEquals(0, Solids.distanceMm(second, gap.onSecond()), TOLERANCE_MM, "point on the second");
    assertEquals(expectedMm, Gap.between(second, first).gapMm(), TOLERANCE_MM, "swapped");
  }

  private static void assertRefused(String given, Executable construction) {
    String message = assertThrows(IllegalArgumentException.class, construction).getMessage();
    assertTrue(message.contains(given), message);
  }
}
