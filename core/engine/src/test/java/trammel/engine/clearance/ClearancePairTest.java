package trammel.engine.clearance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import trammel.engine.geometry.Point3;
import trammel.engine.motion.AxlePose;

class ClearancePairTest {

  private static final Body RAIL =
      new Body("rail", Box.between(-500, 500, 350, 400, 400, 500), Carrier.FRAME);
  private static final Body FLOOR =
      new Body("floor", Box.between(-500, 500, -400, 400, 500, 501), Carrier.FRAME);
  private static final Body TUBE =
      new Body(
          "axle tube",
          new Capsule(new Point3(0, -600, 350), new Point3(0, 600, 350), 38),
          Carrier.AXLE);
  private static final Body TYRE =
      new Body(
          "tyre",
          new Cylinder(new Point3(0, 600, 350), new Point3(0, 850, 350), 350),
          Carrier.AXLE);
  private static final Body LINK =
      new Body(
          "lower link",
          new Capsule(new Point3(600, 300, 350), new Point3(0, 300, 280), 22),
          Carrier.LINK);
  private static final Body SHOCK =
      new Body(
          "shock",
          new Capsule(new Point3(-80, 300, 700), new Point3(-80, 300, 300), 30),
          Carrier.LINK);

  @Test
  void everythingThatMovesAgainstEverythingElseIsPaired() {
    List<Body> bodies = List.of(RAIL, FLOOR, TUBE, TYRE, LINK, SHOCK);

    assertEquals(
        List.of(
            "rail/axle tube",
            "rail/tyre",
            "rail/lower link",
            "rail/shock",
            "floor/axle tube",
            "floor/tyre",
            "floor/lower link",
            "floor/shock",
            "axle tube/lower link",
            "axle tube/shock",
            "tyre/lower link",
            "tyre/shock",
            "lower link/shock"),
        names(ClearancePair.among(bodies, List.of())));
  }

  @Test
  void joinedBodiesAreLeftOutInEitherOrder() {
    List<Body> bodies = List.of(RAIL, TUBE, LINK);
    List<Joint> joints = List.of(Joint.whole("lower link", "rail"));

    assertEquals(
        List.of("rail/axle tube", "axle tube/lower link"),
        names(ClearancePair.among(bodies, joints)));
  }

  @Test
  void linkIsCutBackAtItsJointOnlyAgainstWhatItIsJoinedTo() {
    List<Body> bodies = List.of(RAIL, TUBE, LINK);
    List<Joint> joints =
        List.of(
            Joint.atAxleEnd("lower link", "axle tube", 120),
            Joint.atFrameEnd("lower link", "axle tube", 30),
            Joint.atFrameEnd("lower link", "rail", 80));

    List<ClearancePair> pairs = ClearancePair.among(bodies, joints);

    assertEquals(new EndCut(80, 0), pairs.get(1).secondCut());
    assertEquals(new EndCut(30, 120), pairs.get(2).secondCut());
    assertEquals(EndCut.NONE, pairs.get(2).firstCut());
  }

  @Test
  void linkWithNothingLeftIsNotCompared() {
    List<Joint> joints = List.of(Joint.atAxleEnd("lower link", "axle tube", 2000));

    assertTrue(ClearancePair.among(List.of(TUBE, LINK), joints).isEmpty());
  }

  /**
   * By hand: tube axis at x = 0, link level 100 under it from x = 600 to x = 0; without its last
   * 200 mm the nearest of its axis is (200, 100 under), so hypot(200, 100) less the radii 38 and
   * 22.
   */
  @Test
  void gapOfALinkCutBackIsTakenFromWhatIsLeft() {
    Body level =
        new Body(
            "level link",
            new Capsule(new Point3(600, 300, 250), new Point3(0, 300, 250), 22),
            Carrier.LINK);
    List<ClearancePair> pairs =
        ClearancePair.among(
            List.of(TUBE, level), List.of(Joint.atAxleEnd("level link", "axle tube", 200)));

    LeastGap least = ClearanceSweep.of(pairs).over(List.of(AxlePose.atRide(350))).get(0);

    assertEquals(Math.hypot(200, 100) - 60, least.gap().gapMm(), 1e-6);
    assertEquals(100 - 60, Gap.between(TUBE.shape(), level.shape()).gapMm(), 1e-6);
  }

  /** The frame end stays, the axle end rises with the axle. */
  @Test
  void linkStretchesBetweenFrameAndAxle() {
    Capsule raised = (Capsule) LINK.at(new AxlePose(70, 0, 0, 0, 0, 0, 350));

    assertEquals(new Point3(600, 300, 350), raised.from());
    assertEquals(new Point3(0, 300, 350), raised.to());
    assertEquals(RAIL.shape(), RAIL.at(new AxlePose(70, 0, 0, 0, 0, 0, 350)));
  }

  @Test
  void mistakesAreRefusedByName() {
    assertRefused("'rail'", () -> ClearancePair.among(List.of(RAIL, TUBE, RAIL), List.of()));
    assertRefused(
        "'sway bar'",
        () -> ClearancePair.among(List.of(RAIL), List.of(Joint.whole("rail", "sway bar"))));
    assertRefused(
        "'axle tube'",
        () ->
            ClearancePair.among(
                List.of(RAIL, TUBE), List.of(Joint.atAxleEnd("axle tube", "rail", 50))));
    assertRefused("-5.0", () -> Joint.atAxleEnd("lower link", "rail", -5));
    assertRefused("itself", () -> Joint.whole("rail", "rail"));
    assertRefused("'slab'", () -> new Body("slab", Box.between(0, 1, 0, 1, 0, 1), Carrier.LINK));
    assertRefused("no name", () -> new Body(" ", RAIL.shape(), Carrier.FRAME));
  }

  private static void assertRefused(String given, Executable mistake) {
    String message = assertThrows(IllegalArgumentException.class, mistake).getMessage();
    assertTrue(message.contains(given), message);
  }

  private static List<String> names(List<ClearancePair> pairs) {
    List<String> names = new ArrayList<>();
    for (ClearancePair pair : pairs) {
      names.add(pair.first().name() + "/" + pair.second().name());
    }
    return names;
  }
}
