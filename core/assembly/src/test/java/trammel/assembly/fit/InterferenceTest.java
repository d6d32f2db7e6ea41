package trammel.assembly.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trammel.assembly.Assembly;
import trammel.assembly.CopedTube;
import trammel.assembly.FlatPath;
import trammel.assembly.Mate;
import trammel.assembly.PartKind;
import trammel.assembly.Place;
import trammel.assembly.PlacedPart;
import trammel.assembly.PlacedSeam;
import trammel.assembly.Pose;
import trammel.assembly.Prism;
import trammel.assembly.SeamRun;
import trammel.assembly.Solid;
import trammel.assembly.Turned;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.quantity.Phrase;
import trammel.trade.plates.Loop;
import trammel.trade.plates.Outline;
import trammel.trade.plates.Point2;
import trammel.trade.plates.RoundHole;
import trammel.trade.steel.RoundTube;
import trammel.trade.tubes.Cope;

/** Blocks, plates and tubes whose overlap is plain from their sizes; all lengths in mm. */
class InterferenceTest {
  private static final Vector3 X = new Vector3(1, 0, 0);
  private static final Vector3 Y = new Vector3(0, 1, 0);
  private static final Vector3 Z = new Vector3(0, 0, 1);

  private static PlacedPart part(String id, PartKind kind, Place place, Solid solid) {
    return new PlacedPart(
        id, id, kind, Assembly.FRAME, place, solid, 0, Phrase.of("asked for by a test"));
  }

  private static PlacedPart plate(String id, Place place, double xMm, double yMm, double mm) {
    return part(id, PartKind.PLATE, place, Prism.block(xMm, yMm, mm));
  }

  private static List<Overlap> overlaps(PlacedPart... parts) {
    return Interference.of(
        new Assembly(List.of("frame", "axle"), List.of(parts), List.of(), List.of()));
  }

  private static Place at(double x, double y, double z) {
    return Place.at(new Point3(x, y, z));
  }

  /** A sheet of 1 mm shares less with a block than a weld fills, and is yet in the midst of it. */
  @Test
  void aThinSheetInsideABlockIsFoundHoweverItLies() {
    PlacedPart block = plate("block", at(0, 0, 0), 100, 100, 100);
    PlacedPart level = plate("level", at(0, 0, 50), 60, 60, 1);
    PlacedPart upright =
        part(
            "upright",
            PartKind.PLATE,
            Place.of(new Point3(0, 0, 50), X, Z),
            Prism.block(60, 60, 1));
    assertEquals(1, overlaps(block, level).size());
    assertEquals(1, overlaps(block, upright).size());
  }

  @Test
  void aBlockPushedIntoAnotherIsAsDeepInItAsItWasPushed() {
    // From -50 to 50 along x; the small one from 40 on: 10 in, and 20 or more from all else.
    PlacedPart large = plate("large", at(0, 0, 0), 100, 100, 100);
    PlacedPart small = plate("small", at(50, 0, 40), 20, 20, 20);
    List<Overlap> found = overlaps(large, small);
    assertEquals(1, found.size());
    assertEquals(10, found.get(0).depthMm(), 1e-9);
  }

  @Test
  void whatTouchesDoesNotCut() {
    PlacedPart lower = plate("lower", at(0, 0, 0), 100, 100, 10);
    PlacedPart standing = plate("standing", Place.of(new Point3(0, 0, 35), X, Z), 80, 50, 6);
    assertEquals(List.of(), overlaps(lower, standing));
    assertEquals(List.of(), overlaps(lower, plate("upper", at(0, 0, 10), 100, 100, 10)));
  }

  /** Crossed like an X, no corner of either in the other: an edge of each passes through. */
  @Test
  void twoPlatesThroughEachOtherAreFound() {
    PlacedPart level = plate("level", at(0, 0, -3), 200, 200, 6);
    PlacedPart upright = plate("upright", Place.of(new Point3(0, 3, 0), X, Z), 120, 120, 6);
    List<Overlap> found = overlaps(level, upright);
    assertEquals(1, found.size());
    // Half of the thickness of 6 from either face.
    assertEquals(3, found.get(0).depthMm(), 0.2);
  }

  /** A tube of 38 through a plate without a hole; with a hole of 40 it passes. */
  @Test
  void aTubePassesAHoleAndNothingElse() {
    PlacedPart tube =
        part("tube", PartKind.TUBE, at(0, 0, -100), CopedTube.square(new RoundTube(38, 3), 200));
    assertEquals(1, overlaps(plate("plate", at(0, 0, 0), 150, 150, 8), tube).size());
    Loop square =
        Loop.through(
            List.of(
                new Point2(-75, -75),
                new Point2(75, -75),
                new Point2(75, 75),
                new Point2(-75, 75)));
    Outline holed = new Outline(square, List.of(new RoundHole(new Point2(0, 0), 40)));
    PlacedPart passed = part("plate", PartKind.PLATE, at(0, 0, 0), Prism.plate(holed, 8));
    assertEquals(List.of(), overlaps(passed, tube));
  }

  /** The bore of a tube is no room for a block. */
  @Test
  void whatStandsInATubesBoreCutsIntoTheTube() {
    PlacedPart tube =
        part("tube", PartKind.TUBE, at(0, 0, 0), CopedTube.square(new RoundTube(60, 3), 100));
    PlacedPart inside = plate("inside", at(0, 0, 40), 20, 20, 20);
    assertEquals(1, overlaps(tube, inside).size());
  }

  /** A tube coped to a barrel across it ends where the barrel begins. */
  @Test
  void aCopedTubeEndsAtItsBarrel() {
    Cope cope = new Cope(19, 25, Math.PI / 2, 0);
    PlacedPart tube =
        part(
            "tube",
            PartKind.TUBE,
            at(0, 0, 0),
            new CopedTube(new RoundTube(38, 3), 200, Optional.of(cope), Optional.empty()));
    // Over the tips of the cope: the barrel's middle is sqrt(25^2 - 19^2) before them.
    double middleMm = -Math.sqrt(25 * 25 - 19 * 19);
    PlacedPart barrel =
        part(
            "barrel",
            PartKind.BOUGHT,
            Place.along(new Point3(-40, 0, middleMm), X),
            Turned.bar(25, 80));
    assertEquals(List.of(), overlaps(tube, barrel));
    PlacedPart further =
        part(
            "barrel",
            PartKind.BOUGHT,
            Place.along(new Point3(-40, 0, middleMm + 6), X),
            Turned.bar(25, 80));
    assertEquals(6, overlaps(tube, further).get(0).depthMm(), 0.5);
  }

  /** A bolt may be in its hole, and 4 mm of what is welded on is ground off in fitting. */
  @Test
  void whatIsHeldIsLeftOut() {
    PlacedPart plate = plate("plate", at(0, 0, 0), 100, 100, 10);
    PlacedPart bolt = part("bolt", PartKind.BOLT, at(0, 0, -20), Turned.bar(6, 50));
    PlacedPart gusset = plate("gusset", Place.of(new Point3(0, 0, 31), X, Z), 80, 50, 6);
    List<PlacedPart> parts = List.of(plate, bolt, gusset);
    PlacedSeam seam =
        new PlacedSeam(
            "seam",
            "seam",
            new SeamRun(
                "gusset", "plate", FlatPath.between(new Point3(0, 0, 10), new Point3(40, 0, 10))),
            5,
            "flat");
    List<Mate> mates =
        List.of(
            new Mate(Mate.Kind.BOLTED, "bolt", "plate", 1),
            new Mate(Mate.Kind.BOLTED, "bolt", "gusset", 1));
    List<String> bodies = List.of("frame", "axle");
    assertEquals(List.of(), Interference.of(new Assembly(bodies, parts, List.of(seam), mates)));
    assertTrue(Interference.of(new Assembly(bodies, parts, List.of(), List.of())).size() >= 3);
  }

  /** Where one stands against the other does not matter. */
  @Test
  void turningBothChangesNothing() {
    Place turned =
        Place.of(new Point3(300, -200, 50), new Vector3(1, 2, 0.5), Y.minus(X.scaled(0.5)));
    PlacedPart large = part("large", PartKind.PLATE, turned, Prism.block(100, 100, 100));
    PlacedPart small =
        part("small", PartKind.PLATE, turned.after(at(50, 0, 40)), Prism.block(20, 20, 20));
    assertEquals(10, overlaps(large, small).get(0).depthMm(), 1e-6);
  }

  private static PlacedPart on(String carrier, PartKind kind, String id, Place place) {
    double sideMm = carrier.equals(Assembly.AXLE) ? 30 : 50;
    Solid block = Prism.block(sideMm, sideMm, 20);
    return new PlacedPart(id, id, kind, carrier, place, block, 0, Phrase.of("asked for by a test"));
  }

  /** An axle part 30 under a frame part: raised by 36 it is 6 deep in it, lowered it is clear. */
  @Test
  void whatTheTravelBringsTogetherIsFoundWithItsPose() {
    List<PlacedPart> parts =
        List.of(
            on(Assembly.FRAME, PartKind.PLATE, "over", at(0, 0, 100)),
            on(Assembly.AXLE, PartKind.PLATE, "under", at(0, 0, 50)),
            on(Assembly.AXLE, PartKind.PLATE, "beside it on the axle", at(200, 0, 50)));
    Assembly assembly = new Assembly(List.of("frame", "axle"), parts, List.of(), List.of());
    Pose lowered = new Pose(Map.of(Assembly.AXLE, at(0, 0, -60)));
    Pose raised = new Pose(Map.of(Assembly.AXLE, at(0, 0, 36)));
    assertEquals(List.of(), Interference.of(assembly));
    List<Overlap> found = Interference.of(assembly, List.of(lowered, raised));
    assertEquals(1, found.size());
    assertEquals(1, found.get(0).pose());
    assertEquals(6, found.get(0).depthMm(), 1e-9);
  }

  /** A bump stop is squeezed, and a spring that the pose does not place gets shorter. */
  @Test
  void whatGivesWayIsLeftOutOfTheTravel() {
    List<PlacedPart> parts =
        List.of(
            on(Assembly.FRAME, PartKind.BOUGHT, "bump stop", at(0, 0, 100)),
            on("spring", PartKind.PLATE, "spring's end", at(200, 0, 100)),
            on(Assembly.AXLE, PartKind.PLATE, "pad", at(0, 0, 50)),
            on(Assembly.AXLE, PartKind.PLATE, "seat", at(200, 0, 50)));
    Assembly assembly =
        new Assembly(List.of("frame", "axle", "spring"), parts, List.of(), List.of());
    Pose raised = new Pose(Map.of(Assembly.AXLE, at(0, 0, 36)));
    assertEquals(List.of(), Interference.of(assembly, List.of(raised)));
  }
}
