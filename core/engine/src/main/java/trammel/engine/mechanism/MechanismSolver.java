package trammel.engine.mechanism;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.BodyPose;
import trammel.engine.motion.MotionRates;
import trammel.engine.motion.PathTracker;
import trammel.engine.motion.PoseResult;
import trammel.engine.motion.PoseSolver;
import trammel.engine.motion.TravelLimits;

/**
 * Finds where a mechanism stands for a given heave and roll by following its motion from ride, so
 * that the answer is on the branch that the vehicle is on.
 *
 * <p>Immutable; one solver may serve many threads.
 */
public final class MechanismSolver {
  private static final double STEEPEST_ROLL_RAD = Math.PI / 2;

  private final Mechanism mechanism;
  private final Coordinates coordinates;
  private final double shortestMm;

  /** Solves plain bars, and faster. */
  private final Optional<PoseSolver> plain;

  /**
   * @param mechanism what moves
   * @throws IllegalArgumentException if it is a linkage of plain bars that cannot hold an axle
   */
  public MechanismSolver(Mechanism mechanism) {
    this.mechanism = Objects.requireNonNull(mechanism, "mechanism");
    coordinates =
        new Coordinates(
            mechanism.trackMm(),
            mechanism.tyreLoadedRadiusMm(),
            mechanism.bodies(),
            mechanism.links(),
            mechanism.joints(),
            mechanism.bushes());
    double shortest = coordinates.axleLeverMm;
    for (ElasticLink link : mechanism.links()) {
      shortest = Math.min(shortest, link.lengthMm());
    }
    for (int i = 0; i < mechanism.bodies().size(); i++) {
      shortest = Math.min(shortest, coordinates.leverMm(i));
    }
    shortestMm = shortest;
    plain = mechanism.plain().map(PoseSolver::new);
  }

  /** What moves. */
  public Mechanism mechanism() {
    return mechanism;
  }

  /**
   * What the search for a pose ended with.
   *
   * @param result the axle's part of it
   * @param pose the pose, if there is one
   */
  public record Outcome(PoseResult result, Optional<MechanismPose> pose) {}

  /** The mechanism at ride. */
  public MechanismPose atRide() {
    return pose(new double[coordinates.free], 0, 0);
  }

  /**
   * Pose at a heave and roll.
   *
   * @param heaveMm rise of the axle's middle, bump positive (mm)
   * @param rollRad elevation of the axle line, left wheel up positive (rad), within a quarter turn
   * @throws IllegalArgumentException if heave or roll is no number, or the roll is a quarter turn
   *     or more
   */
  public Outcome solve(double heaveMm, double rollRad) {
    if (!(Math.abs(heaveMm) < Double.POSITIVE_INFINITY)
        || !(Math.abs(rollRad) < STEEPEST_ROLL_RAD)) {
      throw new IllegalArgumentException(
          "The axle was asked to heave "
              + heaveMm
              + " mm and roll "
              + Math.toDegrees(rollRad)
              + " degrees; give numbers, and less than 90 degrees.");
    }
    if (plain.isPresent()) {
      PoseResult result = plain.get().solve(heaveMm, rollRad);
      return new Outcome(result, result.found().map(this::pose));
    }
    double rollMm = rollRad * coordinates.axleLeverMm;
    double wayMm = Math.hypot(heaveMm, rollMm);
    if (wayMm == 0) {
      return solved(atRide());
    }
    PathTracker tracker = new PathTracker(path(heaveMm / wayMm, rollMm / wayMm), shortestMm, wayMm);
    return switch (tracker.walk()) {
      case ARRIVED -> solved(pose(tracker.unknownsMm(), heaveMm, rollRad));
      case FOLD -> failed(new PoseResult.OutOfReach(heaveMm, rollRad, tracker.fraction()));
      case LOST -> failed(new PoseResult.NotConverged(heaveMm, rollRad, tracker.fraction()));
    };
  }

  private static Outcome solved(MechanismPose pose) {
    return new Outcome(new PoseResult.Solved(pose.axle()), Optional.of(pose));
  }

  private static Outcome failed(PoseResult result) {
    return new Outcome(result, Optional.empty());
  }

  private MechanismPath path(double heavePart, double rollPart) {
    return new MechanismPath(coordinates, strain(), heavePart, rollPart);
  }

  private Strain strain() {
    return new Strain(coordinates, mechanism.links(), mechanism.joints(), mechanism.bushes());
  }

  private MechanismPose pose(double[] unknownsMm, double heaveMm, double rollRad) {
    Stand stand = new Stand(coordinates);
    stand.place(unknownsMm, heaveMm, rollRad * coordinates.axleLeverMm);
    AxlePose axle =
        new AxlePose(
            heaveMm,
            rollRad,
            unknownsMm[0],
            unknownsMm[1],
            unknownsMm[2] / coordinates.axleLeverMm,
            unknownsMm[3] / coordinates.axleLeverMm,
            mechanism.tyreLoadedRadiusMm());
    List<BodyTurn> turns = new ArrayList<>(mechanism.bodies().size());
    List<BodyPose> further = new ArrayList<>(mechanism.bodies().size());
    for (int i = 0; i < mechanism.bodies().size(); i++) {
      turns.add(turn(i, unknownsMm, stand));
      String name = mechanism.bodies().get(i).name();
      further.add(stand.pose(i + 2, name, turned(i, unknownsMm)));
    }
    return new MechanismPose(mechanism, axle.withBodies(further), stand, turns);
  }

  private MechanismPose pose(AxlePose axle) {
    double lever = coordinates.axleLeverMm;
    double[] unknownsMm = {
      axle.forwardMm(), axle.lateralMm(), axle.yawRad() * lever, axle.pitchNoseUpRad() * lever
    };
    return pose(unknownsMm, axle.heaveMm(), axle.rollRad());
  }

  private BodyTurn turn(int further, double[] unknownsMm, Stand stand) {
    FurtherBody body = mechanism.bodies().get(further);
    double[] pivot = stand.at(further + 2, body.pivot().point());
    Vector3 turned = turned(further, unknownsMm);
    boolean pin = body.pivot() instanceof Pivot.Pin;
    return new BodyTurn(
        body.name(),
        pin ? turned.x() : turned.norm(),
        body.pivot() instanceof Pivot.Pin own ? own.axis().normalized().scaled(turned.x()) : turned,
        new Point3(pivot[0], pivot[1], pivot[2]));
  }

  /** The turn coordinates of a body as angles; a pin's only one is X. */
  private Vector3 turned(int further, double[] unknownsMm) {
    int first = coordinates.firstTurn(further);
    double lever = coordinates.leverMm(further);
    boolean pin = mechanism.bodies().get(further).pivot() instanceof Pivot.Pin;
    return new Vector3(
        unknownsMm[first] / lever,
        pin ? 0 : unknownsMm[first + 1] / lever,
        pin ? 0 : unknownsMm[first + 2] / lever);
  }

  /**
   * Where the mechanism runs out of travel within a range. Empty for one that does not close
   * exactly, whose bushings give instead.
   *
   * @param heaveRangeMm farthest heave to look at, both ways (mm, above 0)
   * @param rollRangeRad farthest roll to look at, both ways (rad, above 0 and below a quarter turn)
   */
  public TravelLimits limits(double heaveRangeMm, double rollRangeRad) {
    if (plain.isPresent()) {
      return plain.get().limits(heaveRangeMm, rollRangeRad);
    }
    if (!mechanism.closesExactly()) {
      OptionalDouble none = OptionalDouble.empty();
      return new TravelLimits(none, none, none, none);
    }
    return new TravelLimits(
        limit(-heaveRangeMm, 0),
        limit(heaveRangeMm, 0),
        limit(0, -rollRangeRad),
        limit(0, rollRangeRad));
  }

  private OptionalDouble limit(double heaveMm, double rollRad) {
    return solve(heaveMm, rollRad).result() instanceof PoseResult.OutOfReach out
        ? OptionalDouble.of(out.fraction() * (rollRad == 0 ? heaveMm : rollRad))
        : OptionalDouble.empty();
  }

  /**
   * How the mechanism moves on from ride.
   *
   * @throws IllegalStateException if ride is at the very end of the travel
   */
  public MechanismRates ratesAtRide() {
    double lever = coordinates.axleLeverMm;
    double[] heave = follow(1, 0);
    double[] roll = follow(0, 1);
    List<MechanismRates.Turning> turns = new ArrayList<>();
    for (int i = 0; i < mechanism.bodies().size(); i++) {
      turns.add(
          new MechanismRates.Turning(
              mechanism.bodies().get(i).name(), turned(i, heave), turned(i, roll).scaled(lever)));
    }
    Strain strain = strain();
    strain.evaluate(new double[coordinates.free], 0, 0);
    List<MechanismRates.Sliding> slides = new ArrayList<>();
    for (ExactJoint joint : mechanism.joints()) {
      if (joint instanceof ExactJoint.Slide slide) {
        slides.add(
            new MechanismRates.Sliding(
                slide.name(),
                slideRate(slide, strain.stand(), heave, coordinates.heave),
                lever * slideRate(slide, strain.stand(), roll, coordinates.roll)));
      }
    }
    return new MechanismRates(
        MotionRates.of(heave, roll, lever),
        turns,
        slides,
        energyRate(strain, heave, coordinates.heave),
        lever * lever * energyRate(strain, roll, coordinates.roll));
  }

  /** The unknowns per mm of heave, or of roll times lever, at ride. */
  private double[] follow(double heavePart, double rollPart) {
    MechanismPath path = path(heavePart, rollPart);
    path.evaluate(new double[path.size()], 0);
    return path.follow();
  }

  private double energyRate(Strain strain, double[] rates, int imposed) {
    double sum = 0;
    for (int i = 0; i < strain.elastic.length; i++) {
      double rate = strain.elasticBy[i][imposed];
      for (int j = 0; j < coordinates.free; j++) {
        rate += strain.elasticBy[i][j] * rates[j];
      }
      sum += strain.stiffness[i] * rate * rate;
    }
    return sum;
  }

  private double slideRate(ExactJoint.Slide slide, Stand stand, double[] rates, int imposed) {
    int body = coordinates.index(slide.point().body());
    int line = coordinates.index(slide.line().body());
    double[] point = Stand.array(slide.point().atRide());
    double[] start = Stand.array(slide.line().atRide());
    Vector3 unit = slide.direction().normalized();
    double[] direction = {unit.x(), unit.y(), unit.z()};
    double[] way = Rotation.minus(point, start);
    double sum = 0;
    for (int column = 0; column < coordinates.count; column++) {
      double rate = column == imposed ? 1 : column < coordinates.free ? rates[column] : 0;
      double[] relative =
          Rotation.minus(stand.velocity(body, point, column), stand.velocity(line, start, column));
      double[] turning = Rotation.cross(stand.spin(line, column), direction);
      sum += rate * (Rotation.dot(direction, relative) + Rotation.dot(turning, way));
    }
    return sum;
  }
}
