package trammel.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.trade.plates.Arc;
import trammel.trade.plates.Belt;
import trammel.trade.plates.Disc;
import trammel.trade.plates.Hole;
import trammel.trade.plates.HoleRules;
import trammel.trade.plates.Loop;
import trammel.trade.plates.Outline;
import trammel.trade.plates.PickUpRow;
import trammel.trade.plates.Point2;
import trammel.trade.plates.RoundHole;
import trammel.trade.plates.Straight;
import trammel.trade.plates.TubeBracket;
import trammel.trade.steel.RoundTube;
import trammel.trade.tubes.Cope;

/** Volumes and centres against formulas of solid geometry, meshes against the exact volumes. */
class SolidTest {
  private static final RoundTube TUBE = new RoundTube(38.1, 3.05);

  @Test
  void aPlateWithAHoleWeighsWhatItsAreaSays() {
    Outline square =
        new Outline(
            Loop.through(
                List.of(
                    new Point2(0, 0), new Point2(100, 0), new Point2(100, 80), new Point2(0, 80))),
            List.of(new RoundHole(new Point2(30, 40), 20)));
    Prism plate = Prism.plate(square, 6);
    double holeMm2 = Math.PI * 100;
    assertEquals((8000 - holeMm2) * 6, plate.volumeMm3(), 1e-6);
    double expectedX = (8000 * 50 - holeMm2 * 30) / (8000 - holeMm2);
    assertEquals(expectedX, plate.centre().xMm(), 1e-9);
    assertEquals(40, plate.centre().yMm(), 1e-9);
    assertEquals(3, plate.centre().zMm(), 1e-12);
  }

  /** Half a disc: the centroid lies 4r/3pi from the straight side (any handbook of mechanics). */
  @Test
  void arcsCountInTheCentre() {
    Point2 centre = new Point2(0, 0);
    Loop half =
        new Loop(
            List.of(
                Arc.about(centre, 50, 0, Math.PI),
                new Straight(new Point2(-50, 0), new Point2(50, 0))));
    Prism plate = Prism.plate(Outline.solid(half), 10);
    assertEquals(Math.PI * 2500 / 2 * 10, plate.volumeMm3(), 1e-6);
    assertEquals(4 * 50 / (3 * Math.PI), plate.centre().yMm(), 1e-7);
  }

  /** A tube sawn off square at one end: the cut takes nothing off its mean length. */
  @Test
  void aSlantedEndMovesTheMiddleNotTheVolume() {
    Outline section = Prism.tubeSection(50.8, 50.8, 4.7625);
    // Two flats and four corners as the mills state them: 2t(h + w - 8t) + 3 pi t2.
    double areaMm2 = 2 * 4.7625 * (101.6 - 8 * 4.7625) + 3 * Math.PI * 4.7625 * 4.7625;
    Prism tube = new Prism(section, 800, 0.04, -0.04);
    assertEquals(areaMm2 * 800, tube.volumeMm3(), 1e-6 * areaMm2 * 800);
    assertTrue(tube.centre().xMm() < 0, "more metal on the long side");
    assertEquals(400, tube.centre().zMm(), 1e-9);
  }

  @Test
  void turnedPartsFollowPappus() {
    assertEquals(Math.PI * 100 * 50, Turned.bar(10, 50).volumeMm3(), 1e-8);
    assertEquals(Math.PI * (400 - 100) * 50, Turned.ring(10, 20, 50).volumeMm3(), 1e-8);
    // A ring of round section: 2 pi2 R r2.
    Turned torus = new Turned(Loop.circle(new Point2(300, 0), 40));
    assertEquals(2 * Math.PI * Math.PI * 300 * 1600, torus.volumeMm3(), 1e-3);
    // A cone: a third of its cylinder, its centre a quarter up.
    Turned cone = Turned.through(0, 0, 30, 0, 0, 80);
    assertEquals(Math.PI * 900 * 80 / 3, cone.volumeMm3(), 1e-8);
    assertEquals(20, cone.centre().zMm(), 1e-9);
  }

  /**
   * The saddle that a thin tube as wide as its barrel loses at one end: the tube's wall times the
   * integral of R - sqrt(R2 - R2 sin2) from the tips, R times 2 pi R times the mean of |cos|, 2/pi.
   */
  @Test
  void aCopeTakesItsSaddleOff() {
    double radiusMm = 25;
    double wallMm = 0.001;
    RoundTube thin = new RoundTube(2 * radiusMm + wallMm, wallMm);
    Cope cope = new Cope(radiusMm + wallMm / 2, radiusMm + wallMm / 2, Math.PI / 2, 0);
    CopedTube tube = new CopedTube(thin, 200, Optional.empty(), Optional.of(cope));
    double meanCutMm = radiusMm * 2 / Math.PI;
    double expected = 2 * Math.PI * radiusMm * wallMm * (200 - meanCutMm);
    assertEquals(expected, tube.volumeMm3(), 2e-3 * expected);
    CopedTube square = CopedTube.square(TUBE, 500);
    assertEquals(TUBE.sectionAreaMm2() * 500, square.volumeMm3(), 1e-9);
    assertEquals(250, square.centre().zMm(), 1e-9);
  }

  /** Every edge of a closed surface is run once each way; the mesh's volume is near the exact. */
  @Test
  void everyMeshIsClosedAndKeepsTheVolume() {
    solids()
        .forEach(
            solid -> {
              Mesh mesh = solid.mesh();
              assertClosed(solid, mesh);
              double exact = solid.volumeMm3();
              assertEquals(exact, mesh.volumeMm3(), Solid.MESH_SHARE * exact, solid.toString());
            });
  }

  private static Stream<Solid> solids() {
    Cope cope = new Cope(19.05, 25.4, Math.PI / 2, 0);
    TubeBracket bracket =
        new TubeBracket(
            "tab",
            6.35,
            76.2,
            0,
            TubeBracket.USUAL_WRAP_RAD,
            PickUpRow.single(new Point2(20, 110), 13),
            HoleRules.SHOP);
    Solid bar = new CopedTube(TUBE, 500, Optional.of(cope), Optional.of(cope));
    return Stream.of(
        Prism.block(10, 20, 30),
        Prism.plate(bracket.outline(), 6.35),
        new Prism(Prism.tubeSection(50.8, 38.1, 3.2), 700, 0.05, -0.05),
        Turned.bar(8, 60),
        Turned.ring(100, 350, 220),
        Turned.through(0, 0, 30, 0, 0, 80),
        bar,
        new Compound(
            List.of(
                new Compound.Member(Place.RIDE, bar),
                new Compound.Member(Place.at(new Point3(0, 90, 0)), Turned.bar(8, 60)))));
  }

  private static void assertClosed(Solid solid, Mesh mesh) {
    Map<Long, Integer> runs = new HashMap<>();
    for (Mesh.Face face : mesh.faces()) {
      count(runs, face.a(), face.b());
      count(runs, face.b(), face.c());
      count(runs, face.c(), face.a());
    }
    runs.forEach((edge, sum) -> assertEquals(0, sum, () -> "an open edge in " + solid));
  }

  private static void count(Map<Long, Integer> runs, int from, int to) {
    long key = Math.min(from, to) * 1_000_000L + Math.max(from, to);
    runs.merge(key, from < to ? 1 : -1, Integer::sum);
  }

  /** Plates with many holes: the triangles cover what JTS says is left, seeds 1 to 60. */
  @Test
  void trianglesCoverEveryPlate() {
    for (int seed = 1; seed <= 60; seed++) {
      Outline outline = pierced(new Random(seed));
      List<List<Point2>> rings = new ArrayList<>();
      rings.add(outline.polygon(0.1));
      outline
          .holeLoops()
          .forEach(
              hole -> rings.add((hole.isAnticlockwise() ? hole.reversed() : hole).polygon(0.1)));
      List<Point2> points = rings.stream().flatMap(List::stream).toList();
      double sum = 0;
      for (Mesh.Face face : Triangulation.of(rings)) {
        Polygon triangle =
            new GeometryFactory()
                .createPolygon(
                    new Coordinate[] {
                      at(points.get(face.a())),
                      at(points.get(face.b())),
                      at(points.get(face.c())),
                      at(points.get(face.a()))
                    });
        sum += triangle.getArea();
      }
      assertEquals(polygon(rings).getArea(), sum, 1e-6 * sum, "seed " + seed);
    }
  }

  private static Outline pierced(Random random) {
    Loop outer =
        Belt.around(
            List.of(
                new Disc(new Point2(0, 0), 20 + 20 * random.nextDouble()),
                new Disc(new Point2(260, 10 * random.nextDouble()), 30 * random.nextDouble() + 5),
                new Disc(new Point2(130, 160), 10 + 20 * random.nextDouble())));
    List<Hole> holes = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      Point2 centre = new Point2(20 + 220 * random.nextDouble(), 150 * random.nextDouble());
      RoundHole hole = new RoundHole(centre, 6 + 14 * random.nextDouble());
      boolean apart =
          outer.contains(centre)
              && outer.distanceMm(centre) > hole.diameterMm() / 2 + 1
              && holes.stream()
                  .allMatch(
                      other ->
                          other.loop().distanceMm(hole.loop()) > 1
                              && !other.loop().contains(centre)
                              && !hole.loop().contains(((RoundHole) other).centre()));
      if (apart) {
        holes.add(hole);
      }
    }
    return new Outline(outer, holes);
  }

  private static Polygon polygon(List<List<Point2>> rings) {
    GeometryFactory factory = new GeometryFactory();
    LinearRing[] holes = new LinearRing[rings.size() - 1];
    for (int i = 1; i < rings.size(); i++) {
      holes[i - 1] = factory.createLinearRing(closed(rings.get(i)));
    }
    return factory.createPolygon(factory.createLinearRing(closed(rings.get(0))), holes);
  }

  private static Coordinate[] closed(List<Point2> ring) {
    return Stream.concat(ring.stream(), ring.stream().limit(1))
        .map(SolidTest::at)
        .toArray(Coordinate[]::new);
  }

  private static Coordinate at(Point2 point) {
    return new Coordinate(point.xMm(), point.yMm());
  }

  @Test
  void aPlaceIsARigidMotion() {
    Place side = Place.sideView(new Point3(100, 300, 400));
    assertEquals(new Vector3(0, -1, 0), side.z(), "seen from the left, z goes to the right");
    Point3 moved = side.point(10, 20, 5);
    assertEquals(0, moved.distanceMm(new Point3(110, 295, 420)), 1e-12);
    assertEquals(0, side.own(moved).distanceMm(new Point3(10, 20, 5)), 1e-12);
    Place quarter = Place.of(new Point3(0, 0, 0), new Vector3(0, 1, 0), new Vector3(-1, 0, 0));
    Point3 twice = quarter.after(side).apply(new Point3(1, 2, 3));
    assertEquals(0, twice.distanceMm(quarter.apply(side.apply(new Point3(1, 2, 3)))), 1e-9);
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new Place(
                new Vector3(1, 0, 0),
                new Vector3(0, 1, 0),
                new Vector3(0, 0, -1),
                new Point3(0, 0, 0)));
  }

  @Test
  void seamsAreAsLongAsTheirPaths() {
    Place plane = Place.sideView(new Point3(0, 0, 0));
    assertEquals(50, FlatPath.line(plane, 0, 0, 30, 40).lengthMm(), 1e-12);
    assertEquals(
        38.1 * 2 * Math.PI / 3, FlatPath.arc(plane, 38.1, 1, 2 * Math.PI / 3).lengthMm(), 1e-9);
    Cope cope = new Cope(19.05, 25.4, Math.PI / 2, 0);
    List<Point3> points = new CopePath(Place.RIDE, cope).points(0.01);
    double chords = 0;
    for (int i = 1; i < points.size(); i++) {
      chords += points.get(i - 1).distanceMm(points.get(i));
    }
    assertEquals(cope.edgeLengthMm(), chords, 1e-3 * chords);
  }
}
