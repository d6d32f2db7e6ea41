package trammel.engine.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.engine.mechanism.ElasticLink;
import trammel.engine.mechanism.ExactJoint;
import trammel.engine.mechanism.Mechanism;
import trammel.engine.mechanism.MechanismForces;
import trammel.engine.mechanism.MechanismSolver;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.Link;
import trammel.engine.motion.LinkForces;
import trammel.engine.motion.LinkReading;
import trammel.engine.motion.Linkage;
import trammel.engine.motion.Load;
import trammel.engine.motion.MotionRates;
import trammel.engine.motion.Placement;
import trammel.engine.motion.PoseResult;
import trammel.engine.motion.PoseSolver;
import trammel.engine.motion.RideFigures;
import trammel.engine.motion.SpringPoint;

/**
 * How an axle moves on what guides it. Plain bars, the common case, are solved by themselves, which
 * is faster; further bodies and sliding joints by the mechanism that they make.
 */
public final class AxleMotion {
  /** Heave step for rates away from ride (mm); what it leaves out is below its square. */
  private static final double HEAVE_STEP_MM = 0.25;

  private final Linkage linkage;
  private final Mechanism mechanism;
  private final double radiusMm;
  private PoseSolver bars;
  private MechanismSolver bodies;

  private AxleMotion(Linkage linkage, Mechanism mechanism, double radiusMm) {
    this.linkage = linkage;
    this.mechanism = mechanism;
    this.radiusMm = radiusMm;
  }

  static AxleMotion of(AxleGuide guide, double trackMm, double radiusMm) {
    if (guide.isPlain()) {
      List<Link> links = guide.bars().stream().map(Bar::link).toList();
      return new AxleMotion(new Linkage(trackMm, radiusMm, links), null, radiusMm);
    }
    List<ElasticLink> links = guide.bars().stream().map(Bar::elastic).toList();
    List<ExactJoint> slides = new ArrayList<>(guide.sliders().size());
    for (Slider slider : guide.sliders()) {
      slides.add(slider.slide());
    }
    return new AxleMotion(
        null, new Mechanism(trackMm, radiusMm, guide.bodies(), links, slides, List.of()), radiusMm);
  }

  /** The bars, where there is nothing else. */
  public Optional<Linkage> plain() {
    return Optional.ofNullable(linkage);
  }

  private PoseSolver bars() {
    if (bars == null) {
      bars = new PoseSolver(linkage);
    }
    return bars;
  }

  private MechanismSolver bodies() {
    if (bodies == null) {
      bodies = new MechanismSolver(mechanism);
    }
    return bodies;
  }

  /**
   * Pose at a heave and roll.
   *
   * @param heaveMm rise of the axle's middle, bump positive (mm)
   * @param rollRad elevation of the axle line, left wheel up positive (rad), within a quarter turn
   * @throws IllegalArgumentException if heave or roll is no number, or the roll is a quarter turn
   *     or more
   */
  public PoseResult solve(double heaveMm, double rollRad) {
    return mechanism == null
        ? bars().solve(heaveMm, rollRad)
        : bodies().solve(heaveMm, rollRad).result();
  }

  /** The axle at ride, with every further body. */
  public AxlePose atRide() {
    return mechanism == null ? AxlePose.atRide(radiusMm) : bodies().atRide().axle();
  }

  /** How the axle moves on from ride when heave or roll change. */
  public MotionRates ratesAtRide() {
    return mechanism == null ? bars().ratesAt(atRide()) : bodies().ratesAtRide().axle();
  }

  /**
   * How the axle moves on from a pose when heave or roll change. Where there are further bodies,
   * from poses close by on either side.
   *
   * @param pose solved pose of this motion
   * @throws IllegalStateException if the pose lies at an end of the travel, where there is no
   *     onward motion
   */
  public MotionRates ratesAt(AxlePose pose) {
    if (mechanism == null) {
      return bars().ratesAt(pose);
    }
    if (pose.heaveMm() == 0 && pose.rollRad() == 0) {
      return ratesAtRide();
    }
    double rollStepRad = HEAVE_STEP_MM * 2 / mechanism.trackMm();
    return MotionRates.between(
        near(pose, -HEAVE_STEP_MM, 0),
        near(pose, HEAVE_STEP_MM, 0),
        near(pose, 0, -rollStepRad),
        near(pose, 0, rollStepRad));
  }

  private AxlePose near(AxlePose pose, double heaveMm, double rollRad) {
    return solve(pose.heaveMm() + heaveMm, pose.rollRad() + rollRad).required();
  }

  /** The figures at ride height. */
  public RideFigures rideFigures() {
    return mechanism == null
        ? RideFigures.of(bars())
        : RideFigures.of(ratesAtRide(), mechanism.sideViewLines(), radiusMm);
  }

  /** What the bars do at a pose, in their order. */
  public List<LinkReading> readings(AxlePose pose) {
    if (mechanism == null) {
      return LinkReading.of(linkage, pose);
    }
    Placement placement = pose.placement();
    return mechanism.links().stream().map(link -> link.at(placement)).toList();
  }

  /**
   * The forces at ride under several sets of loads on the axle, each by itself.
   *
   * @param springs two springs or more with a rate above zero
   * @param loadSets the loads of each set
   * @return forces of bars and springs, and of sliders in their order
   * @throws IllegalArgumentException if the springs leave the axle loose, or one has no rate
   */
  public List<MechanismForces> forcesAtRide(List<SpringPoint> springs, List<List<Load>> loadSets) {
    if (mechanism != null) {
      return MechanismForces.underEach(mechanism, springs, loadSets);
    }
    List<MechanismForces> forces = new ArrayList<>(loadSets.size());
    for (LinkForces plain : LinkForces.underEach(linkage, atRide(), springs, loadSets)) {
      forces.add(new MechanismForces(plain, List.of()));
    }
    return forces;
  }
}
