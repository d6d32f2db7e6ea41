package trammel.engine.mechanism;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.Link;
import trammel.engine.motion.LinkForces;
import trammel.engine.motion.LinkKind;
import trammel.engine.motion.Linkage;
import trammel.engine.motion.Load;
import trammel.engine.motion.MemberForce;
import trammel.engine.motion.SpringPoint;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

/** Forces in mechanisms at ride, against statics worked out beside them. */
class MechanismForcesTest {
  private static final double TRACK_MM = 1500;
  private static final double RADIUS_MM = 330;
  private static final Point3 CENTRE = new Point3(0, 0, RADIUS_MM);
  private static final double STIFFNESS = 10_000;
  private static final double ARM_MM = 1200;

  private static final List<SpringPoint> SPRINGS =
      List.of(
          new SpringPoint("left", new Point3(-60, 500, 700), new Point3(-60, 500, 300), 30),
          new SpringPoint("right", new Point3(-60, -500, 700), new Point3(-60, -500, 300), 30));

  private static ElasticLink link(String name, Point3 axle, Point3 frame) {
    return ElasticLink.of(new Link(name, LinkKind.LONGITUDINAL, frame, axle, STIFFNESS));
  }

  /** Two level lower bars at the axle's height, a level lateral bar through its middle. */
  private static List<ElasticLink> thrustAndSideways() {
    return List.of(
        link("lower-left", new Point3(0, 400, RADIUS_MM), new Point3(600, 400, RADIUS_MM)),
        link("lower-right", new Point3(0, -400, RADIUS_MM), new Point3(600, -400, RADIUS_MM)),
        link("lateral", new Point3(0, -450, RADIUS_MM), new Point3(0, 450, RADIUS_MM)));
  }

  private static Mechanism torqueArm() {
    Point3 eye = new Point3(ARM_MM, 0, RADIUS_MM + 40);
    return new Mechanism(
        TRACK_MM,
        RADIUS_MM,
        List.of(),
        thrustAndSideways(),
        List.of(
            new ExactJoint.Slide(
                "eye",
                new BodyPoint(Mechanism.AXLE, eye),
                new BodyPoint(Mechanism.FRAME, eye),
                new Vector3(1, 0, 0))),
        List.of());
  }

  /** What turns the housing is held by the eye's upright force at the arm's length: statics. */
  @Test
  void slidingEyeOfATorqueArmHoldsTheTorqueAtItsLength() {
    double torqueNmm = 2_400_000;
    Load drive = Load.moment(new Vector3(0, -torqueNmm, 0));
    MechanismForces forces =
        MechanismForces.underEach(torqueArm(), SPRINGS, List.of(List.of(drive))).get(0);

    // The springs stand 60 mm behind the axle and give up what the eye presses down: the couple of
    // the two
    // has the arm of the eye's distance from the springs.
    double eyeN = torqueNmm / (ARM_MM + 60);
    assertEquals(-eyeN, forces.slidersN().get(0).z(), 1e-6 * eyeN);
    assertEquals(0, forces.slidersN().get(0).y(), 1e-6);
    for (MemberForce spring : forces.members().springs()) {
      assertEquals(eyeN / 2, spring.tensionN(), 1e-6 * eyeN);
    }
  }

  /** Forces and moments on an axle that stands still add up to nothing: statics. */
  @Seeds(20)
  void axleOfATorqueArmIsInBalance(Draw draw) {
    Mechanism mechanism = torqueArm();
    Load load = anyLoad(draw);
    MechanismForces forces =
        MechanismForces.underEach(mechanism, SPRINGS, List.of(List.of(load))).get(0);
    List<Load> all = new ArrayList<>(List.of(load));
    addMembers(all, forces.members().links());
    addMembers(all, forces.members().springs());
    all.add(Load.force(new Point3(ARM_MM, 0, RADIUS_MM + 40), forces.slidersN().get(0)));
    assertBalance(all);
  }

  /** A rocker has no mass: what its two links do to it turns it nowhere, by statics. */
  @Seeds(20)
  void rockerOnTheFrameIsInBalanceAboutItsPin(Draw draw) {
    Point3 pin = new Point3(-150, 0, RADIUS_MM);
    Point3 top = new Point3(-150, 0, RADIUS_MM + 70);
    Point3 bottom = new Point3(-150, 0, RADIUS_MM - 70);
    FurtherBody rocker =
        new FurtherBody("rocker", new Pivot.Pin(Mechanism.FRAME, pin, new Vector3(1, 0, 0)));
    Point3 left = new Point3(-150, 420, RADIUS_MM + 70);
    Point3 right = new Point3(-150, -420, RADIUS_MM - 70);
    List<ElasticLink> links = new ArrayList<>(thrustAndSideways().subList(0, 2));
    links.add(link("upper", new Point3(0, 150, RADIUS_MM + 120), new Point3(450, 150, 460)));
    links.add(watt("watt-left", left, top));
    links.add(watt("watt-right", right, bottom));
    Mechanism mechanism =
        new Mechanism(TRACK_MM, RADIUS_MM, List.of(rocker), links, List.of(), List.of());

    Load load = anyLoad(draw);
    MechanismForces forces =
        MechanismForces.underEach(mechanism, SPRINGS, List.of(List.of(load))).get(0);

    List<Load> onAxle = new ArrayList<>(List.of(load));
    addMembers(onAxle, forces.members().links());
    addMembers(onAxle, forces.members().springs());
    assertBalance(onAxle);
    Vector3 aboutPin = new Vector3(0, 0, 0);
    for (MemberForce link : forces.members().links().subList(3, 5)) {
      Point3 end = link.name().equals("watt-left") ? top : bottom;
      aboutPin = aboutPin.plus(pin.to(end).cross(link.onAxleN().scaled(-1)));
    }
    assertEquals(0, aboutPin.x(), 1e-3);
  }

  private static ElasticLink watt(String name, Point3 axle, Point3 onRocker) {
    return new ElasticLink(
        name,
        LinkKind.LATERAL,
        new BodyPoint(Mechanism.AXLE, axle),
        new BodyPoint("rocker", onRocker),
        STIFFNESS);
  }

  /** The displacement method on six freedoms, which has a solution of its own for plain bars. */
  @Seeds(20)
  void plainBarsAreLoadedAsTheirOwnSolutionSays(Draw draw) {
    List<Link> links = new ArrayList<>();
    for (int side = 1; side >= -1; side -= 2) {
      String name = side > 0 ? "left" : "right";
      links.add(bar("lower-" + name, draw, 600, side * 400, -80));
      links.add(bar("upper-" + name, draw, 450, side * 350, 120));
    }
    links.add(
        new Link(
            "lateral",
            LinkKind.LATERAL,
            new Point3(-150, 450, 380),
            new Point3(-150, -450, 380 + 20 * draw.evenly(0, 1)),
            STIFFNESS));
    Linkage linkage = new Linkage(TRACK_MM, RADIUS_MM, links);
    List<Load> loads = List.of(anyLoad(draw));

    LinkForces own = LinkForces.under(linkage, AxlePose.atRide(RADIUS_MM), SPRINGS, loads);
    LinkForces general =
        MechanismForces.underEach(Mechanism.of(linkage), SPRINGS, List.of(loads)).get(0).members();

    for (int i = 0; i < links.size(); i++) {
      assertEquals(own.links().get(i).tensionN(), general.links().get(i).tensionN(), 1e-5);
    }
    assertEquals(0, own.axleTurnRad().minus(general.axleTurnRad()).norm(), 1e-12);
    assertEquals(0, own.axleShiftMm().minus(general.axleShiftMm()).norm(), 1e-9);
  }

  private static Link bar(String name, Draw draw, double lengthMm, double leftMm, double upMm) {
    Point3 axle = new Point3(0, leftMm, RADIUS_MM + upMm);
    Point3 frame =
        new Point3(
            lengthMm, leftMm + 40 * draw.evenly(0, 1), RADIUS_MM + upMm + 30 * draw.evenly(0, 1));
    return new Link(name, LinkKind.LONGITUDINAL, frame, axle, STIFFNESS);
  }

  private static Load anyLoad(Draw draw) {
    return new Load(
        new Point3(part(draw, 300), part(draw, 750), 300 * draw.evenly(0, 1)),
        new Vector3(part(draw, 9000), part(draw, 6000), part(draw, 12_000)),
        new Vector3(part(draw, 1e6), part(draw, 3e6), part(draw, 1e6)));
  }

  private static double part(Draw draw, double most) {
    return most * (2 * draw.evenly(0, 1) - 1);
  }

  private static void addMembers(List<Load> loads, List<MemberForce> members) {
    for (MemberForce member : members) {
      loads.add(Load.force(member.axlePivot(), member.onAxleN()));
    }
  }

  private static void assertBalance(List<Load> loads) {
    Vector3 force = new Vector3(0, 0, 0);
    Vector3 moment = new Vector3(0, 0, 0);
    for (Load load : loads) {
      force = force.plus(load.forceN());
      moment = moment.plus(load.momentAbout(CENTRE));
    }
    assertEquals(0, force.norm(), 1e-5);
    assertEquals(0, moment.norm(), 1e-2);
  }
}
