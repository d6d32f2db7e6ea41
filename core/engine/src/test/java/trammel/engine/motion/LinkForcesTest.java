package trammel.engine.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trammel.engine.motion.Layouts.INCH;
import static trammel.engine.motion.Layouts.inch;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

/** Forces against statics by hand. */
class LinkForcesTest {

  private static final double RADIUS_MM = 13 * INCH;
  private static final double SPRING_BASE_MM = 40 * INCH;
  private static final double FORCE_N = 6000;

  private static List<SpringPoint> uprightSprings() {
    return List.of(
        new SpringPoint("spring_left", inch(0, 20, 24), inch(0, 20, 13), 35),
        new SpringPoint("spring_right", inch(0, -20, 24), inch(0, -20, 13), 35));
  }

  private static Linkage levelBars() {
    return new Layouts()
        .pair("lower", inch(22, 18, 10), inch(0, 18, 10))
        .pair("upper", inch(20, 16, 17), inch(0, 16, 17))
        .bar(inch(0, 17, 14), inch(0, -17, 14))
        .build(60 * INCH, RADIUS_MM);
  }

  private static LinkForces atRide(Linkage linkage, Load... loads) {
    return LinkForces.under(linkage, AxlePose.atRide(RADIUS_MM), uprightSprings(), List.of(loads));
  }

  private static Load atBothPatches(Vector3 forceN) {
    return Load.force(new Point3(0, 0, 0), forceN);
  }

  /**
   * Thrust F at the ground, level links at heights a (lower) and b (upper): forces and moments
   * about the ground give the lower pair -F b/(b-a) and the upper pair +F a/(b-a).
   */
  @Test
  void driveThrustPushesTheLowerAndPullsTheUpperBars() {
    LinkForces forces = atRide(levelBars(), atBothPatches(new Vector3(FORCE_N, 0, 0)));
    double lower = -FORCE_N * 17 / 7 / 2;
    double upper = FORCE_N * 10 / 7 / 2;
    assertEquals(lower, forces.link("lower_left").tensionN(), 1e-6);
    assertEquals(lower, forces.link("lower_right").tensionN(), 1e-6);
    assertEquals(upper, forces.link("upper_left").tensionN(), 1e-6);
    assertEquals(upper, forces.link("upper_right").tensionN(), 1e-6);
    assertEquals(0, forces.link("lateral_bar").tensionN(), 1e-6);
    assertEquals(0, forces.spring("spring_left").tensionN(), 1e-6);
  }

  /** Weight on both wheels goes into the upright springs alone, half each. */
  @Test
  void groundLoadCompressesTheSprings() {
    LinkForces forces = atRide(levelBars(), atBothPatches(new Vector3(0, 0, FORCE_N)));
    assertEquals(-FORCE_N / 2, forces.spring("spring_left").tensionN(), 1e-6);
    assertEquals(-FORCE_N / 2, forces.spring("spring_right").tensionN(), 1e-6);
    assertEquals(0, forces.link("lower_left").tensionN(), 1e-6);
    assertEquals(FORCE_N / 2 / 35, forces.axleShiftMm().z(), 1e-6);
  }

  /**
   * Side force F to the left at the ground: the level lateral bar at height c, whose frame end is
   * on the left, is pushed by F; the moment F c about the axle's own line goes into the springs, F
   * c/s on each.
   */
  @Test
  void corneringForceGoesThroughTheLateralBarAndTheSprings() {
    LinkForces forces = atRide(levelBars(), atBothPatches(new Vector3(0, FORCE_N, 0)));
    double spring = FORCE_N * 14 * INCH / SPRING_BASE_MM;
    assertEquals(-FORCE_N, forces.link("lateral_bar").tensionN(), 1e-6);
    assertEquals(spring, Math.abs(forces.spring("spring_left").tensionN()), 1e-6);
    assertEquals(
        0,
        forces.spring("spring_left").tensionN() + forces.spring("spring_right").tensionN(),
        1e-6);
    // Pushed left at the ground and held above it, the axle leans its left end up.
    assertTrue(forces.spring("spring_left").tensionN() < 0);
    assertTrue(forces.axleTurnRad().x() > 0);
  }

  /**
   * Torque of the shaft about the forward axis loads one side and unloads the other: M/s on each
   * upright spring.
   */
  @Test
  void shaftTorqueLoadsOneSpringAndUnloadsTheOther() {
    double torqueNmm = 500000;
    LinkForces forces = atRide(levelBars(), Load.moment(new Vector3(torqueNmm, 0, 0)));
    assertEquals(-torqueNmm / SPRING_BASE_MM, forces.spring("spring_left").tensionN(), 1e-6);
    assertEquals(torqueNmm / SPRING_BASE_MM, forces.spring("spring_right").tensionN(), 1e-6);
  }

  /**
   * Anti-squat by statics: about the side-view instant centre the links have no moment, so thrust F
   * at the ground takes F z/x off the pressed springs, a pull (the balance behind Barton and
   * Fieldhouse 2018, eq. 3.63). Lower link (24, 11)-(1, 9), upper (20, 18.5)-(-1, 20) in: centre
   * (69.549, 14.961).
   */
  @Test
  void driveThrustLiftsTheBodyByTheSlopeToTheInstantCentre() {
    Linkage linkage =
        new Layouts()
            .pair("lower", inch(24, 18, 11), inch(1, 18, 9))
            .pair("upper", inch(20, 16, 18.5), inch(-1, 16, 20))
            .bar(inch(0, 17, 14), inch(0, -17, 14))
            .build(60 * INCH, RADIUS_MM);
    LinkForces forces = atRide(linkage, atBothPatches(new Vector3(FORCE_N, 0, 0)));
    double lift =
        forces.spring("spring_left").tensionN() + forces.spring("spring_right").tensionN();
    assertEquals(FORCE_N * 14.961 / 69.549, lift, FORCE_N * 2e-5);
  }

  /** Two bars on one line share a force by their stiffness, 1 to 3. */
  @Test
  void barsOnOneLineShareByStiffness() {
    List<Link> links = new ArrayList<>(levelBars().links());
    Link single = links.remove(0);
    links.add(stiff("soft", single, 5000));
    links.add(stiff("stiff", single, 15000));
    LinkForces forces =
        atRide(new Linkage(60 * INCH, RADIUS_MM, links), atBothPatches(new Vector3(FORCE_N, 0, 0)));
    double soft = forces.link("soft").tensionN();
    assertTrue(soft < -100);
    assertEquals(3, forces.link("stiff").tensionN() / soft, 1e-9);
  }

  private static Link stiff(String name, Link pattern, double stiffnessNPerMm) {
    return new Link(name, pattern.kind(), pattern.frame(), pattern.axle(), stiffnessNPerMm);
  }

  @Seeds(300)
  void membersAndLoadsBalanceAtEveryPose(Draw draw) {
    long seed = draw.anyLong();
    double heaveMm = draw.between(-90, 90);
    double rollDeg = draw.between(-6, 6);
    Random random = new Random(seed);
    Linkage linkage = Layouts.ordinary(random);
    AxlePose pose = new PoseSolver(linkage).solve(heaveMm, Math.toRadians(rollDeg)).required();
    List<Load> loads =
        List.of(
            new Load(pose.move(new Point3(0, 700, 0)), vector(random, 5000), vector(random, 1e6)),
            Load.force(pose.move(new Point3(0, -700, 0)), vector(random, 5000)));
    LinkForces forces = LinkForces.under(linkage, pose, uprightSprings(), loads);
    Vector3 force = new Vector3(0, 0, 0);
    Vector3 moment = new Vector3(0, 0, 0);
    Point3 about = new Point3(300, 200, 100);
    for (Load load : loads) {
      force = force.plus(load.forceN());
      moment = moment.plus(load.momentAbout(about));
    }
    List<MemberForce> members = new ArrayList<>(forces.links());
    members.addAll(forces.springs());
    for (MemberForce member : members) {
      force = force.plus(member.onAxleN());
      moment = moment.plus(Load.force(member.axlePivot(), member.onAxleN()).momentAbout(about));
    }
    assertEquals(0, force.norm(), 1e-5);
    assertEquals(0, moment.norm(), 1e-2);
  }

  private static Vector3 vector(Random random, double size) {
    return new Vector3(
        size * (2 * random.nextDouble() - 1),
        size * (2 * random.nextDouble() - 1),
        size * (2 * random.nextDouble() - 1));
  }

  @Test
  void withoutSpringsTheAxleIsNotHeldUp() {
    Linkage linkage = levelBars();
    AxlePose ride = AxlePose.atRide(RADIUS_MM);
    assertThrows(
        IllegalArgumentException.class,
        () -> LinkForces.under(linkage, ride, List.of(), List.of()));
    List<SpringPoint> shocks =
        List.of(new SpringPoint("shock", inch(0, 20, 24), inch(0, 20, 13), 0));
    assertThrows(
        IllegalArgumentException.class, () -> LinkForces.under(linkage, ride, shocks, List.of()));
  }
}
