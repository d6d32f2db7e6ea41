package trammel.engine.motion;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Finds where the axle stands for a given heave and roll: the free coordinates minimise the sum of
 * stiffness times squared stretch over the links, on the branch that is connected to ride.
 *
 * <p>Newton's method with exact derivatives starts from the second-order expansion of the motion
 * about ride, or from a neighbour. Its answer is taken only if the first step corrected the start
 * by little, every further step shrank to less than a quarter of the one before and the equations
 * stayed well away from a fold. In every other case the motion is followed from ride in small
 * steps, which settles the branch and finds the fold.
 *
 * <p>Immutable; one solver may serve many threads.
 */
public final class PoseSolver {

  /** Largest part of an error left by the last Newton step (mm). */
  private static final double ERROR_MM = 1e-9;

  /** A Newton step of size s leaves about s*s over this share of the shortest link. */
  private static final double CURVATURE_SHARE = 0.2;

  /** A start is trusted if the first step corrects it by less than this share of that link. */
  private static final double TRUSTED_SHARE = 0.03;

  private static final double CONTRACTION = 0.25;

  /** Steps below this are rounding and need not shrink any more (mm). */
  private static final double ROUNDING_MM = 1e-7;

  /** Share of the determinant at ride below which a fold may be near. */
  private static final double WELL_AWAY = 0.2;

  private static final int MOST_STEPS = 8;
  private static final double STEEPEST_ROLL_RAD = Math.PI / 2;

  private final Linkage linkage;
  private final LinkTable table;
  private final NewtonStep newton;
  private final RideExpansion expansion;
  private final double convergedSquare;
  private final double trustedMm;
  private final double determinantAtRide;

  /** Prepares the search for a linkage; costs about as much as a few poses. */
  public PoseSolver(Linkage linkage) {
    this.linkage = Objects.requireNonNull(linkage, "linkage");
    table = new LinkTable(linkage);
    newton = new NewtonStep(table);
    expansion = new RideExpansion(table);
    convergedSquare = ERROR_MM * CURVATURE_SHARE * table.shortestMm;
    trustedMm = TRUSTED_SHARE * table.shortestMm;
    FreePosition ride = new FreePosition();
    newton.advance(ride, 0, 0, 1);
    determinantAtRide = ride.determinant;
  }

  /** The linkage that moves. */
  public Linkage linkage() {
    return linkage;
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
    requireTravel(heaveMm, rollRad);
    FreePosition at = new FreePosition();
    expansion.start(at, heaveMm, rollRad);
    return converges(at, heaveMm, rollRad)
        ? solved(at, heaveMm, rollRad)
        : follow(at, heaveMm, rollRad);
  }

  /**
   * Pose at a heave and roll near a pose that is known. The answer is that of {@link #solve(double,
   * double)}.
   *
   * @param neighbour solved pose of the same linkage
   * @param heaveMm rise of the axle's middle, bump positive (mm)
   * @param rollRad elevation of the axle line, left wheel up positive (rad), within a quarter turn
   * @throws IllegalArgumentException if heave or roll is no number, or the roll is a quarter turn
   *     or more
   */
  public PoseResult solveNear(AxlePose neighbour, double heaveMm, double rollRad) {
    requireTravel(heaveMm, rollRad);
    FreePosition at = new FreePosition();
    at.set(
        neighbour.forwardMm(),
        neighbour.lateralMm(),
        neighbour.yawRad() * table.leverMm,
        neighbour.pitchNoseUpRad() * table.leverMm);
    expansion.shift(at, neighbour.heaveMm(), neighbour.rollRad(), heaveMm, rollRad);
    return converges(at, heaveMm, rollRad) ? solved(at, heaveMm, rollRad) : solve(heaveMm, rollRad);
  }

  /**
   * Poses over a grid of heave and roll, each started from its neighbours.
   *
   * @param heavesMm heaves in rising order (mm)
   * @param rollsRad rolls in rising order (rad)
   * @throws IllegalArgumentException if a list is empty, not rising, or holds an impossible value
   */
  public PoseGrid sweep(double[] heavesMm, double[] rollsRad) {
    return new GridSweep(this, heavesMm, rollsRad).run();
  }

  /**
   * Where the links run out of travel within a range.
   *
   * @param heaveRangeMm farthest heave to look at, both ways (mm, above 0)
   * @param rollRangeRad farthest roll to look at, both ways (rad, above 0 and below a quarter turn)
   * @throws IllegalArgumentException if a range is not a positive number
   */
  public TravelLimits limits(double heaveRangeMm, double rollRangeRad) {
    requireTravel(heaveRangeMm, rollRangeRad);
    if (!(heaveRangeMm > 0 && rollRangeRad > 0)) {
      throw new IllegalArgumentException(
          "The range to look for limits of travel is heave "
              + heaveRangeMm
              + " mm and roll "
              + rollRangeRad
              + " rad; both must be above 0.");
    }
    if (!linkage.closesExactly()) {
      OptionalDouble none = OptionalDouble.empty();
      return new TravelLimits(none, none, none, none);
    }
    return new TravelLimits(
        limit(-heaveRangeMm, 0),
        limit(heaveRangeMm, 0),
        limit(0, -rollRangeRad),
        limit(0, rollRangeRad));
  }

  /**
   * How the axle moves on from a pose when heave or roll change.
   *
   * @param pose solved pose of this linkage
   * @throws IllegalStateException if the pose lies at an end of the travel, where there is no
   *     onward motion
   */
  public MotionRates ratesAt(AxlePose pose) {
    double lever = table.leverMm;
    MotionEquations equations = new MotionEquations(table);
    equations.evaluate(
        new double[] {
          pose.forwardMm(), pose.lateralMm(), pose.yawRad() * lever, pose.pitchNoseUpRad() * lever
        },
        pose.heaveMm(),
        pose.rollRad() * lever);
    return MotionRates.of(equations.follow(1, 0), equations.follow(0, 1), lever);
  }

  private OptionalDouble limit(double heaveMm, double rollRad) {
    if (solve(heaveMm, rollRad) instanceof PoseResult.OutOfReach out) {
      return OptionalDouble.of(out.fraction() * (rollRad == 0 ? heaveMm : rollRad));
    }
    return OptionalDouble.empty();
  }

  /** Newton from where the position is; true only if the answer is beyond doubt. */
  boolean converges(FreePosition at, double heaveMm, double rollRad) {
    return converges(at, heaveMm, SmallAngle.sin(rollRad), SmallAngle.cos(rollRad));
  }

  boolean converges(FreePosition at, double heaveMm, double sinRoll, double cosRoll) {
    double last = trustedMm;
    for (int k = 0; k < MOST_STEPS; k++) {
      double step = newton.advance(at, heaveMm, sinRoll, cosRoll);
      if (!(step < trustedMm) || (k > 0 && step > CONTRACTION * last && step > ROUNDING_MM)) {
        return false;
      }
      if (step * step < convergedSquare) {
        return at.determinant / determinantAtRide > WELL_AWAY;
      }
      last = step;
    }
    return false;
  }

  private PoseResult follow(FreePosition at, double heaveMm, double rollRad) {
    AxlePath path = new AxlePath(table, heaveMm, rollRad);
    PathTracker tracker = new PathTracker(path, table.shortestMm, path.wayMm);
    switch (tracker.walk()) {
      case ARRIVED:
        at.set(tracker.unknownsMm());
        polish(at, heaveMm, rollRad);
        return solved(at, heaveMm, rollRad);
      case FOLD:
        return new PoseResult.OutOfReach(heaveMm, rollRad, tracker.fraction());
      default:
        return new PoseResult.NotConverged(heaveMm, rollRad, tracker.fraction());
    }
  }

  /** Takes Newton steps while they are small and shrink; close to a fold they may do neither. */
  private void polish(FreePosition at, double heaveMm, double rollRad) {
    double sinRoll = SmallAngle.sin(rollRad);
    double cosRoll = SmallAngle.cos(rollRad);
    double last = 1e-5;
    for (int k = 0; k < MOST_STEPS; k++) {
      double x = at.forwardMm;
      double y = at.lateralMm;
      double yaw = at.yawMm;
      double pitch = at.pitchMm;
      double step = newton.advance(at, heaveMm, sinRoll, cosRoll);
      if (!(step < last)) {
        at.set(x, y, yaw, pitch);
        return;
      }
      last = 0.5 * step;
    }
  }

  private PoseResult solved(FreePosition at, double heaveMm, double rollRad) {
    return new PoseResult.Solved(poseAt(at, heaveMm, rollRad));
  }

  AxlePose poseAt(FreePosition at, double heaveMm, double rollRad) {
    return new AxlePose(
        heaveMm,
        rollRad,
        at.forwardMm,
        at.lateralMm,
        at.yawMm / table.leverMm,
        at.pitchMm / table.leverMm,
        linkage.tyreLoadedRadiusMm());
  }

  LinkTable table() {
    return table;
  }

  static void requireTravel(double heaveMm, double rollRad) {
    if (!(Math.abs(heaveMm) <= Link.FARTHEST_MM)) {
      throw new IllegalArgumentException(
          "The heave is "
              + heaveMm
              + " mm; it must be a number between -10000000 and 10000000 mm. Give the travel of the"
              + " axle's middle, bump positive.");
    }
    if (!(Math.abs(rollRad) < STEEPEST_ROLL_RAD)) {
      throw new IllegalArgumentException(
          "The roll is "
              + Math.toDegrees(rollRad)
              + " degrees; it must be a number between -90 and 90 degrees, both excluded.");
    }
  }
}
