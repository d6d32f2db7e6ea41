package trammel.engine.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.Random;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

/** What must hold for every layout. */
class PoseSolverPropertyTest {

  private static final double TRAVEL_MM = 100;
  private static final double ROLL_DEG = 6;

  @Seeds(200)
  void aMirroredLayoutMovesMirrored(Draw draw) {
    long seed = draw.anyLong();
    double heaveMm = draw.between(-TRAVEL_MM, TRAVEL_MM);
    double rollDeg = draw.between(-ROLL_DEG, ROLL_DEG);
    double rollRad = Math.toRadians(rollDeg);
    Linkage linkage = Layouts.ordinary(new Random(seed));
    AxlePose pose = new PoseSolver(linkage).solve(heaveMm, rollRad).required();
    AxlePose mirrored = new PoseSolver(linkage.mirrored()).solve(heaveMm, -rollRad).required();
    assertEquals(pose.forwardMm(), mirrored.forwardMm(), 1e-8);
    assertEquals(pose.lateralMm(), -mirrored.lateralMm(), 1e-8);
    assertEquals(pose.yawRad(), -mirrored.yawRad(), 1e-10);
    assertEquals(pose.pitchNoseUpRad(), mirrored.pitchNoseUpRad(), 1e-10);
  }

  @Seeds(200)
  void halfATurnAboutTheUprightAxisChangesNothingInItself(Draw draw) {
    long seed = draw.anyLong();
    double heaveMm = draw.between(-TRAVEL_MM, TRAVEL_MM);
    double rollDeg = draw.between(-ROLL_DEG, ROLL_DEG);
    double rollRad = Math.toRadians(rollDeg);
    Linkage linkage = Layouts.ordinary(new Random(seed));
    AxlePose pose = new PoseSolver(linkage).solve(heaveMm, rollRad).required();
    AxlePose turned =
        new PoseSolver(Layouts.halfTurned(linkage)).solve(heaveMm, -rollRad).required();
    assertEquals(pose.forwardMm(), -turned.forwardMm(), 1e-8);
    assertEquals(pose.lateralMm(), -turned.lateralMm(), 1e-8);
    assertEquals(pose.yawRad(), turned.yawRad(), 1e-10);
    assertEquals(pose.pitchNoseUpRad(), -turned.pitchNoseUpRad(), 1e-10);
  }

  @Seeds(200)
  void aLayoutInAnotherSizeMovesInThatSize(Draw draw) {
    long seed = draw.anyLong();
    double factor = draw.between(0.01, 1000);
    double heaveMm = draw.between(-TRAVEL_MM, TRAVEL_MM);
    double rollDeg = draw.between(-ROLL_DEG, ROLL_DEG);
    double rollRad = Math.toRadians(rollDeg);
    Linkage linkage = Layouts.ordinary(new Random(seed));
    AxlePose pose = new PoseSolver(linkage).solve(heaveMm, rollRad).required();
    AxlePose scaled =
        new PoseSolver(Layouts.scaled(linkage, factor)).solve(heaveMm * factor, rollRad).required();
    assertEquals(pose.forwardMm(), scaled.forwardMm() / factor, 1e-7);
    assertEquals(pose.lateralMm(), scaled.lateralMm() / factor, 1e-7);
    assertEquals(pose.yawRad(), scaled.yawRad(), 1e-9);
    assertEquals(pose.pitchNoseUpRad(), scaled.pitchNoseUpRad(), 1e-9);
  }

  @Seeds(300)
  void noPoseBesideTheSolvedOneStoresLessEnergy(Draw draw) {
    long seed = draw.anyLong();
    double heaveMm = draw.between(-TRAVEL_MM, TRAVEL_MM);
    double rollDeg = draw.between(-ROLL_DEG, ROLL_DEG);
    double aside = draw.between(0.01, 1);
    double rollRad = Math.toRadians(rollDeg);
    Random random = new Random(seed);
    Linkage linkage = Layouts.ordinary(random);
    AxlePose pose = new PoseSolver(linkage).solve(heaveMm, rollRad).required();
    AxlePose beside =
        new AxlePose(
            heaveMm,
            rollRad,
            pose.forwardMm() + aside * random.nextGaussian(),
            pose.lateralMm() + aside * random.nextGaussian(),
            pose.yawRad() + aside * random.nextGaussian() / 500,
            pose.pitchNoseUpRad() + aside * random.nextGaussian() / 500,
            pose.loadedRadiusMm());
    assertTrue(Layouts.energyNmm(linkage, beside) > Layouts.energyNmm(linkage, pose));
  }

  @Seeds(300)
  void linksThatCloseExactlyKeepTheirLength(Draw draw) {
    long seed = draw.anyLong();
    double heaveMm = draw.between(-TRAVEL_MM, TRAVEL_MM);
    double rollDeg = draw.between(-ROLL_DEG, ROLL_DEG);
    double rollRad = Math.toRadians(rollDeg);
    Linkage linkage = Layouts.ordinary(new Random(seed));
    if (!linkage.closesExactly()) {
      linkage = Layouts.triangulated();
    }
    AxlePose pose = new PoseSolver(linkage).solve(heaveMm, rollRad).required();
    for (LinkReading link : LinkReading.of(linkage, pose)) {
      assertEquals(0, link.stretchMm(), 1e-8, link.name());
    }
  }

  @Seeds(300)
  void energyNeverRisesFromStepToStep(Draw draw) {
    long seed = draw.anyLong();
    double heaveMm = draw.between(-TRAVEL_MM, TRAVEL_MM);
    double rollDeg = draw.between(-ROLL_DEG, ROLL_DEG);
    double rollRad = Math.toRadians(rollDeg);
    Linkage linkage = Layouts.ordinary(new Random(seed));
    PoseSolver solver = new PoseSolver(linkage);
    NewtonStep newton = new NewtonStep(solver.table());
    FreePosition at = new FreePosition();
    new RideExpansion(solver.table()).start(at, heaveMm, rollRad);
    double last = Layouts.energyNmm(linkage, solver.poseAt(at, heaveMm, rollRad));
    for (int step = 0; step < 5; step++) {
      newton.advance(at, heaveMm, Math.sin(rollRad), Math.cos(rollRad));
      double energy = Layouts.energyNmm(linkage, solver.poseAt(at, heaveMm, rollRad));
      assertTrue(energy <= last + 1e-9 * last + 1e-12, energy + " after " + last);
      last = energy;
    }
  }

  @Seeds(200)
  void aDirectSearchEndsOnTheBranchOfSmallSteps(Draw draw) {
    long seed = draw.anyLong();
    double heaveMm = draw.between(-250, 250);
    double rollDeg = draw.between(-17, 17);
    double rollRad = Math.toRadians(rollDeg);
    Linkage linkage = Layouts.ordinary(new Random(seed));
    PoseSolver solver = new PoseSolver(linkage);
    PoseResult direct = solver.solve(heaveMm, rollRad);
    if (!(direct instanceof PoseResult.Solved)) {
      return;
    }
    NewtonStep newton = new NewtonStep(solver.table());
    FreePosition at = new FreePosition();
    int steps = 2000;
    for (int k = 1; k <= steps; k++) {
      double roll = rollRad * k / steps;
      for (int i = 0; i < 4; i++) {
        newton.advance(at, heaveMm * k / steps, Math.sin(roll), Math.cos(roll));
      }
    }
    AxlePose walked = solver.poseAt(at, heaveMm, rollRad);
    AxlePose pose = direct.required();
    assertEquals(walked.forwardMm(), pose.forwardMm(), 1e-6);
    assertEquals(walked.lateralMm(), pose.lateralMm(), 1e-6);
    assertEquals(walked.yawRad(), pose.yawRad(), 1e-8);
    assertEquals(walked.pitchNoseUpRad(), pose.pitchNoseUpRad(), 1e-8);
  }

  @Seeds(400)
  void noLayoutAndNoTravelLeadsToNonsense(Draw draw) {
    long seed = draw.anyLong();
    double heaveMm = draw.between(-1e7, 1e7);
    double rollDeg = draw.between(-89.99, 89.99);
    double rollRad = Math.toRadians(rollDeg);
    Random random = new Random(seed);
    Linkage linkage = Layouts.wild(random);
    double reach = random.nextInt(4) == 0 ? 1 : Math.pow(10, -1 - 5 * random.nextDouble());
    PoseSolver solver = new PoseSolver(linkage);
    PoseResult result =
        assertTimeoutPreemptively(
            Duration.ofSeconds(2), () -> solver.solve(heaveMm * reach, rollRad));
    if (result instanceof PoseResult.OutOfReach out) {
      assertTrue(out.fraction() >= 0 && out.fraction() <= 1);
    } else if (result instanceof PoseResult.NotConverged lost) {
      assertTrue(lost.fraction() >= 0 && lost.fraction() <= 1);
    } else if (linkage.closesExactly()) {
      for (LinkReading link : LinkReading.of(linkage, result.required())) {
        assertEquals(0, link.stretchMm(), 1e-6, link.name());
      }
    }
  }

  @Seeds(300)
  void theTravelEndsWhereItIsSaidToEnd(Draw draw) {
    long seed = draw.anyLong();
    double heaveMm = draw.between(-900, 900);
    double rollDeg = draw.between(-30, 30);
    double rollRad = Math.toRadians(rollDeg);
    Linkage linkage = Layouts.ordinary(new Random(seed));
    PoseSolver solver = new PoseSolver(linkage);
    if (solver.solve(heaveMm, rollRad) instanceof PoseResult.OutOfReach out) {
      double inside = out.fraction() * 0.9999;
      assertTrue(solver.solve(heaveMm * inside, rollRad * inside) instanceof PoseResult.Solved);
      double outside = Math.min(1, out.fraction() * 1.0001);
      PoseResult beyond = solver.solve(heaveMm * outside, rollRad * outside);
      assertTrue(beyond instanceof PoseResult.OutOfReach, beyond.sentence());
    }
  }
}
