package trammel.planning.vehicle;

import static trammel.engine.quantity.Amount.length;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.assembly.SeamRun;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.PartNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.clearance.Body;
import trammel.engine.clearance.Capsule;
import trammel.engine.clearance.Carrier;
import trammel.engine.clearance.ClearancePair;
import trammel.engine.clearance.ClearanceSweep;
import trammel.engine.clearance.Cylinder;
import trammel.engine.clearance.Gap;
import trammel.engine.clearance.LeastGap;
import trammel.engine.clearance.Sphere;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Driveline;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Obstacle;
import trammel.engine.layout.ObstacleKind;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;
import trammel.engine.motion.AxlePose;
import trammel.engine.quantity.Phrase;
import trammel.trade.welding.WeldPlace;
import trammel.trade.welding.WeldRun;
import trammel.trade.welding.WeldSeam;

/** Finds which exhaust, tank and floor must move, and how close they come. */
final class ObstacleWork {
  private static final double INCH_MM = 25.4;

  /** Air from exhaust and tank to everything that moves, 2 in: common practice, no source. */
  private static final double MOVING_AIR_MM = 2 * INCH_MM;

  /** Air from a tank to every weld, 12 in: common practice, no source. */
  private static final double WELD_AIR_MM = 12 * INCH_MM;

  /** Air from the bed floor, 1 in: common practice, no source. */
  private static final double FLOOR_AIR_MM = INCH_MM;

  private static final double SAME_GAP_MM = 1;

  private static final double USUAL_SHAFT_RADIUS_MM = 1.75 * INCH_MM;

  /** A weld is taken as a row of small balls; its path is followed this near (mm). */
  private static final double BEAD_RADIUS_MM = 3;

  private static final double CHORD_MM = 10;

  private final LayoutAnalysis analysis;
  private final Layout layout;
  private final List<WeldSeam> welds;
  private final List<Body> moving = new ArrayList<>();
  private final List<Body> rising = new ArrayList<>();

  /**
   * @param welds the welds of the whole job
   */
  ObstacleWork(LayoutAnalysis analysis, List<WeldSeam> welds) {
    this.welds = List.copyOf(welds);
    this.analysis = analysis;
    layout = analysis.layout();
    addTube();
    addSprings();
    addBars();
    addShaft();
  }

  private void addTube() {
    Chassis chassis = layout.chassis();
    double halfMm = chassis.axle().flangeToFlangeMm() / 2;
    double upMm = chassis.axleCentre().zMm();
    Body tube =
        new Body(
            "axle tube",
            new Capsule(
                new Point3(0, halfMm, upMm),
                new Point3(0, -halfMm, upMm),
                chassis.axle().tubeRadiusMm()),
            Carrier.AXLE);
    moving.add(tube);
    rising.add(tube);
  }

  private void addSprings() {
    for (SpringUnit spring : layout.springs()) {
      Cylinder shape = new Cylinder(spring.frame(), spring.axle(), spring.radiusMm());
      Body body = new Body(spring.name(), shape, Carrier.LINK);
      moving.add(body);
      rising.add(body);
    }
    for (ShockUnit shock : layout.shocks()) {
      // Its round end stands for the eye over the upper mount.
      Capsule shape = new Capsule(shock.frame(), shock.axle(), shock.bodyRadiusMm());
      Body body = new Body(shock.name(), shape, Carrier.LINK);
      moving.add(body);
      rising.add(body);
    }
  }

  private void addBars() {
    for (Bar bar : layout.bars()) {
      Capsule shape = new Capsule(bar.frame(), bar.axle(), bar.tube().outsideDiameterMm() / 2);
      moving.add(new Body(bar.name(), shape, bar.carrier()));
    }
    moving.addAll(layout.guide().solids());
  }

  private void addShaft() {
    Driveline driveline = layout.chassis().driveline();
    double radiusMm =
        driveline.shaftDiameterMm().isPresent()
            ? driveline.shaftDiameterMm().getAsDouble() / 2
            : USUAL_SHAFT_RADIUS_MM;
    Capsule shape = new Capsule(driveline.transmissionJoint(), driveline.pinionJoint(), radiusMm);
    moving.add(new Body("driveshaft", shape, Carrier.LINK));
  }

  void addTo(WorkPlan.Builder plan, List<trammel.planning.job.Obstacle> movedAway) {
    Phrase exhaust =
        join(
            moved(movedAway, trammel.planning.job.ObstacleKind.EXHAUST),
            closest(ObstacleKind.EXHAUST, moving, MOVING_AIR_MM));
    if (!exhaust.isBlank()) {
      plan.add(PartNeed.withoutPlace("exhaust-rework", 1, exhaust));
      plan.add(new OperationNeed("move-exhaust", 1, "1 job", exhaust));
    }
    Phrase tank =
        join(
            join(
                moved(movedAway, trammel.planning.job.ObstacleKind.TANK),
                moved(movedAway, trammel.planning.job.ObstacleKind.FUEL_LINE)),
            join(
                join(
                    closest(ObstacleKind.TANK, moving, MOVING_AIR_MM),
                    closest(ObstacleKind.FUEL_LINE, moving, MOVING_AIR_MM)),
                fuelNearWeld()));
    if (!tank.isBlank()) {
      plan.add(
          new OperationNeed(
              "move-fuel-tank",
              1,
              "1 job",
              Phrase.of("{}; drain it and take it out of the vehicle before any weld", tank)));
    }
    Phrase floor =
        join(
            moved(movedAway, trammel.planning.job.ObstacleKind.BED_FLOOR),
            closest(ObstacleKind.BED_FLOOR, rising, FLOOR_AIR_MM));
    if (!floor.isBlank()) {
      plan.add(new OperationNeed("relieve-bed-floor", 1, "1 job", floor));
    }
    Phrase bed = bedOverNotch();
    if (!bed.isBlank()) {
      plan.add(new OperationNeed("bed-off", 1, "1 job", bed));
    }
  }

  private static Phrase moved(
      List<trammel.planning.job.Obstacle> movedAway, trammel.planning.job.ObstacleKind kind) {
    return Phrase.joined(
        "; ",
        movedAway.stream()
            .filter(one -> one.kind() == kind)
            .map(one -> Phrase.of("{} is out of the way before the axle goes in", one.name()))
            .toList());
  }

  /** Which obstacles of a kind come too close to what, in words; empty if none. */
  private Phrase closest(ObstacleKind kind, List<Body> bodies, double airMm) {
    Phrase reasons = Phrase.NONE;
    for (Obstacle obstacle : layout.chassis().obstacles()) {
      if (obstacle.kind() == kind) {
        Optional<LeastGap> least = least(obstacle, bodies);
        if (least.isPresent() && least.get().gap().gapMm() < airMm) {
          reasons = join(reasons, reason(obstacle, least.get(), airMm));
        }
      }
    }
    return reasons;
  }

  private Optional<LeastGap> least(Obstacle obstacle, List<Body> bodies) {
    Body fixed = new Body("obstacle " + obstacle.name(), obstacle.shape(), Carrier.FRAME);
    List<ClearancePair> pairs = new ArrayList<>(bodies.size());
    for (Body body : bodies) {
      pairs.add(ClearancePair.of(body, fixed));
    }
    LeastGap least = null;
    for (LeastGap gap : new ClearanceSweep(pairs, 0, 1).over(analysis.envelope())) {
      if (least == null || gap.gap().gapMm() < least.gap().gapMm()) {
        least = gap;
      }
    }
    return Optional.ofNullable(least);
  }

  private Phrase reason(Obstacle obstacle, LeastGap least, double airMm) {
    double gapMm = least.gap().gapMm();
    String body = least.pair().first().name();
    return Phrase.of(
        "{}{}{}; it needs {}",
        obstacle.name(),
        gapMm < 0
            ? Phrase.of(" is in the way of {} by {}", body, length(-gapMm))
            : Phrase.of(" is within {} of {}", length(gapMm), body),
        where(least),
        length(airMm));
  }

  private String where(LeastGap least) {
    AxlePose ride = AxlePose.atRide(layout.chassis().tyre().loadedRadiusMm());
    double atRideMm =
        Gap.between(least.pair().first().at(ride), least.pair().second().shape()).gapMm();
    if (atRideMm - least.gap().gapMm() < SAME_GAP_MM) {
      return " at ride already";
    }
    Optional<AxlePose> pose = analysis.poseAt(least.heaveMm(), least.rollRad());
    return pose.isPresent() ? ", " + analysis.describe(pose.get()) : "";
  }

  private Phrase fuelNearWeld() {
    Phrase reasons = Phrase.NONE;
    for (Obstacle obstacle : layout.chassis().obstacles()) {
      if (obstacle.kind().holdsFuel()) {
        reasons =
            join(
                reasons,
                nearWeld(
                    obstacle,
                    Phrase.of(
                        "no weld is made within {} of a tank or fuel line", length(WELD_AIR_MM))));
      }
    }
    return reasons;
  }

  /** A rail that is cut and plated under a bed is out of reach, and its heat is under the floor. */
  private Phrase bedOverNotch() {
    Phrase reasons = Phrase.NONE;
    if (layout.chassis().rails().notchDepthMm() > 0) {
      for (Obstacle obstacle : layout.chassis().obstacles()) {
        if (obstacle.kind() == ObstacleKind.BED_FLOOR) {
          reasons =
              join(
                  reasons,
                  nearWeld(
                      obstacle,
                      Phrase.of("the rails are notched and plated where it stands over them")));
        }
      }
    }
    return reasons;
  }

  /** That a weld comes nearer than it may to something; empty if none does. */
  private Phrase nearWeld(Obstacle obstacle, Phrase rule) {
    double leastMm = Double.POSITIVE_INFINITY;
    String nearest = "";
    for (WeldSeam weld : welds) {
      if (weld.place() == WeldPlace.BENCH) {
        continue;
      }
      for (WeldRun run : weld.runs()) {
        double gapMm = run instanceof SeamRun seam ? gapMm(obstacle, seam) : leastMm;
        if (gapMm < leastMm) {
          leastMm = gapMm;
          nearest = weld.name();
        }
      }
    }
    if (!(leastMm < WELD_AIR_MM)) {
      return Phrase.NONE;
    }
    return Phrase.of(
        "{} is {} from the weld '{}'; {}",
        obstacle.name(),
        length(Math.max(0, leastMm)),
        nearest,
        rule);
  }

  private static double gapMm(Obstacle obstacle, SeamRun seam) {
    double leastMm = Double.POSITIVE_INFINITY;
    for (Point3 point : seam.path().points(CHORD_MM)) {
      leastMm =
          Math.min(
              leastMm, Gap.between(obstacle.shape(), new Sphere(point, BEAD_RADIUS_MM)).gapMm());
    }
    return leastMm;
  }

  private static Phrase join(Phrase a, Phrase b) {
    if (a.isBlank()) {
      return b;
    }
    return b.isBlank() ? a : Phrase.of("{}; {}", a, b);
  }
}
