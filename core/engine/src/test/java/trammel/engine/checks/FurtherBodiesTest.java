package trammel.engine.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.engine.clearance.Body;
import trammel.engine.clearance.Capsule;
import trammel.engine.clearance.Carrier;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.AxleGuide;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Duty;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Slider;
import trammel.engine.mechanism.FurtherBody;
import trammel.engine.mechanism.Pivot;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.BodyPose;
import trammel.engine.motion.LinkReading;

/** Layouts with a rocker or a sliding eye go through the checks like those of plain bars. */
class FurtherBodiesTest {
  private static final double INCH = 25.4;
  private static final double ROCKER_MM = 3 * INCH;
  private static final String ROCKER = "rocker";

  /** The good layout with a Watt's linkage behind the axle in place of its lateral bar. */
  private static Layout watt() {
    Layout good = SampleLayout.good();
    Bar lateral = good.across().get(0);
    Point3 pin = new Point3(-10 * INCH, 0, 15.25 * INCH);
    List<Bar> bars = new ArrayList<>(good.bars());
    bars.remove(lateral);
    bars.add(link(lateral, "watt-left", new Point3(-10 * INCH, 18 * INCH, 15.25 * INCH), pin, 1));
    bars.add(
        link(lateral, "watt-right", new Point3(-10 * INCH, -18 * INCH, 15.25 * INCH), pin, -1));
    Body solid =
        new Body(
            ROCKER, new Capsule(up(pin, ROCKER_MM), up(pin, -ROCKER_MM), INCH), Carrier.on(ROCKER));
    AxleGuide guide =
        new AxleGuide(
            bars,
            List.of(
                new FurtherBody(ROCKER, new Pivot.Pin(BodyPose.AXLE, pin, new Vector3(1, 0, 0)))),
            List.of(),
            List.of(solid));
    return new Layout(good.chassis(), guide, good.springs(), good.shocks());
  }

  private static Point3 up(Point3 point, double byMm) {
    return new Point3(point.xMm(), point.yMm(), point.zMm() + byMm);
  }

  private static Bar link(Bar like, String name, Point3 frame, Point3 pin, int side) {
    Point3 high = up(frame, side * ROCKER_MM);
    return new Bar(
            name,
            Duty.SIDEWAYS.only(),
            high,
            up(pin, side * ROCKER_MM),
            like.frameJoint(),
            like.axleJoint(),
            like.tube())
        .withBody(End.AXLE, ROCKER);
  }

  /**
   * Watt's linkage leads its rocker's pin along a line that is straight to the third order, where a
   * lateral bar leads the axle along its arc (L - sqrt(L2 - h2)).
   */
  @Test
  void wattsLinkageKeepsTheAxleCentralWhereALateralBarShiftsIt() {
    double barMm = SampleLayout.value(SampleLayout.good(), "lateral-shift");
    double wattMm = SampleLayout.value(watt(), "lateral-shift");

    double arcMm = 36 * INCH - Math.sqrt(36 * 36 - 3.5 * 3.5) * INCH;
    assertTrue(barMm >= arcMm, barMm + " mm");
    assertTrue(wattMm < 0.1 * barMm, wattMm + " mm");
  }

  /** A rocker on the axle turns with it in heave: its links swing to the two sides of level. */
  @Test
  void barsOnTheRockerAreReadWhereTheRockerStands() {
    Layout layout = watt();
    AxlePose up = layout.motion().solve(3 * INCH, 0).required();
    List<LinkReading> readings = layout.motion().readings(up);

    // Both links keep their length, so the rocker's joints stand on circles about their anchors.
    for (int i = 4; i <= 5; i++) {
      Bar link = layout.bars().get(i);
      Point3 joint = up.placement().of(ROCKER).move(link.axle());
      assertEquals(link.lengthMm(), joint.distanceMm(link.frame()), 1e-2);
      assertEquals(readings.get(i).lengthMm(), joint.distanceMm(link.frame()), 1e-9);
    }
  }

  @Test
  void everyCheckHasAnAnswerForAWattsLinkage() {
    LayoutAnalysis analysis = new LayoutAnalysis(watt(), SampleLayout.settings());
    for (Check check : StandardChecks.all()) {
      Reading reading = check.read(analysis);
      if (reading instanceof Reading.Value value) {
        assertTrue(Double.isFinite(value.value()), check.id());
      }
    }
  }

  /** The links carry the whole side force between them, one pulled and one pushed: statics. */
  @Test
  void bothLinksOfAWattsLinkageShareTheCorneringForce() {
    Layout layout = watt();
    BarForces forces = new LayoutAnalysis(layout, SampleLayout.settings()).barForces();
    for (int i = 0; i < forces.cases().size(); i++) {
      if (Math.abs(forces.cases().get(i).corneringG()) > 0
          && forces.cases().get(i).brakingG() == 0
          && forces.cases().get(i).driveMultiplier() == 0) {
        double leftN = forces.tensionN(i, 4);
        double rightN = forces.tensionN(i, 5);
        assertTrue(leftN * rightN < 0, leftN + " and " + rightN + " N");
        // The rocker's arms are equal, so are the two forces.
        assertEquals(Math.abs(leftN), Math.abs(rightN), 0.01 * Math.abs(leftN));
        return;
      }
    }
    throw new AssertionError("no load case corners");
  }

  /** An arm that its own bar runs into is found, through the rocker's whole swing. */
  @Test
  void rockerThatStrikesTheHousingIsFound() {
    Layout layout = watt();
    Point3 pin = new Point3(-10 * INCH, 0, 15.25 * INCH);
    Body near =
        new Body(
            "lever",
            new Capsule(up(pin, ROCKER_MM), new Point3(-10 * INCH, 17.6 * INCH, 22 * INCH), INCH),
            Carrier.on(ROCKER));
    AxleGuide guide = layout.guide();
    Layout reaching =
        new Layout(
            layout.chassis(),
            new AxleGuide(guide.bars(), guide.bodies(), guide.sliders(), List.of(near)),
            layout.springs(),
            layout.shocks());

    double without = SampleLayout.value(layout, "clearance-moving");
    double with = SampleLayout.value(reaching, "clearance-moving");
    assertTrue(with < without, with + " against " + without);
  }

  /** Three plain bars and a sliding eye of a torque arm: the eye holds the housing's pitch. */
  @Test
  void slidingEyeOfATorqueArmIsAGuideOfItsOwn() {
    Layout good = SampleLayout.good();
    List<Bar> bars = new ArrayList<>(good.lower());
    bars.addAll(good.across());
    Point3 eye = new Point3(40 * INCH, 0, 16 * INCH);
    AxleGuide guide =
        new AxleGuide(
            bars,
            List.of(),
            List.of(
                new Slider("arm-eye", BodyPose.AXLE, eye, BodyPose.FRAME, new Vector3(1, 0, 0))),
            List.of());
    Layout layout = new Layout(good.chassis(), guide, good.springs(), good.shocks());

    AxlePose up = layout.motion().solve(3 * INCH, 0).required();
    Point3 now = up.move(eye);
    assertEquals(eye.zMm(), now.zMm(), 1e-6);
    assertEquals(eye.yMm(), now.yMm(), 1e-6);
    // The pinion drops its nose by about the rise over the arm's length.
    assertEquals(-Math.atan2(3, 40), up.pitchNoseUpRad(), Math.toRadians(0.3));
    assertInstanceOf(
        Reading.Value.class,
        StandardChecks.all().stream()
            .filter(check -> check.id().equals("anti-squat"))
            .findFirst()
            .orElseThrow()
            .read(new LayoutAnalysis(layout, SampleLayout.settings())));
  }
}
