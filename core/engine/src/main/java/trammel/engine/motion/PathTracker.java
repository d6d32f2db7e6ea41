package trammel.engine.motion;

/**
 * Follows the pose of the axle from ride along a straight line in the plane of heave and roll, in
 * small steps along the curve itself (pseudo-arclength continuation, Allgower and Georg,
 * Introduction to Numerical Continuation Methods, SIAM 2003, chs. 2 and 6, from memory), so that it
 * neither jumps to another branch nor runs past a fold unseen.
 *
 * <p>A point of the curve is (four free coordinates, way along the line), all in mm. At a fold the
 * way turns back and the determinant of the equations changes its sign.
 */
final class PathTracker {

  enum End {
    ARRIVED,
    FOLD,
    LOST
  }

  private enum Progress {
    MOVED,
    TOO_LONG,
    ARRIVED,
    FOLD
  }

  private static final int WAY = LengthExpansion.FREE;
  private static final int SIZE = WAY + 1;

  /** Largest change of a point that still counts as arrived (mm). */
  private static final double CONVERGED_MM = 1e-9;

  /** A step whose first correction shrinks less than this is too long. */
  private static final double CONTRACTION = 0.25;

  /** Least cosine between the directions at both ends of a step. */
  private static final double STRAIGHT = 0.99;

  /** Share of the determinant at ride below which the equations are singular. */
  private static final double SINGULAR = 1e-3;

  /** Share of the shortest link below which a step hides nothing. */
  private static final double SURE_SHARE = 1e-4;

  private static final int CORRECTIONS = 8;
  private static final int MOST_STEPS = 2000;
  private static final int MOST_HALVINGS = 60;

  private final MotionEquations equations;
  private final double shortestMm;
  private final double heavePart;
  private final double rollPart;
  private final double wayMm;

  private final double[] free = new double[WAY];
  private double[] point = new double[SIZE];
  private double[] tangent = new double[SIZE];
  private double determinant;
  private double reachedMm;

  PathTracker(LinkTable table, double heaveMm, double rollRad) {
    equations = new MotionEquations(table);
    shortestMm = table.shortestMm;
    double rollMm = rollRad * table.leverMm;
    wayMm = Math.hypot(heaveMm, rollMm);
    heavePart = heaveMm / wayMm;
    rollPart = rollMm / wayMm;
  }

  /** Share of the line from ride that was covered: up to the fold, or up to where it was lost. */
  double fraction() {
    return Math.max(0, Math.min(1, reachedMm / wayMm));
  }

  /** Free coordinates where the walk ended (mm). */
  double[] freeMm() {
    double[] result = new double[WAY];
    System.arraycopy(point, 0, result, 0, WAY);
    return result;
  }

  /** Walks until the end of the line, a fold, or the loss of the curve. */
  End walk() {
    tangent[WAY] = 1;
    tangent = tangentAt(point, tangent);
    double atRide = determinant;
    double step = Math.min(1e-3 * shortestMm, wayMm);
    double shortestStep = Math.min(1e-9 * shortestMm, 1e-3 * wayMm);
    for (int taken = 0; taken < MOST_STEPS; taken++) {
      reachedMm = point[WAY];
      switch (advance(step)) {
        case ARRIVED:
          return End.ARRIVED;
        case FOLD:
          return End.FOLD;
        case MOVED:
          step = Math.min(1.5 * step, longestStepMm());
          break;
        default:
          step /= 2;
          if (step < shortestStep) {
            return lostOrFolded(atRide);
          }
      }
    }
    return End.LOST;
  }

  /**
   * Where several bars come upright at once, two closures meet in more than one way and the curve
   * cannot be followed through the fold itself; the vanishing determinant still tells it.
   */
  private End lostOrFolded(double determinantAtRide) {
    return Math.abs(determinant) < SINGULAR * Math.abs(determinantAtRide) ? End.FOLD : End.LOST;
  }

  /** Far out, where the links are stretched many times over, the curve is straight. */
  private double longestStepMm() {
    return Math.max(0.05 * shortestMm, 0.05 * Math.abs(point[WAY]));
  }

  /** Two folds close together, or a fold close to ride, would hide in a step of such a change. */
  private static boolean changedMuch(double before, double after) {
    return !(Math.abs(after - before) <= 0.5 * Math.abs(before));
  }

  /** Takes a step if the curve can be followed over it. */
  private Progress advance(double step) {
    double before = determinant;
    double[] next = corrected(step);
    double[] direction = next == null ? null : tangentAt(next, tangent);
    Progress progress = Progress.TOO_LONG;
    if (direction != null && dot(direction, tangent) >= STRAIGHT) {
      boolean crossed = before * determinant <= 0;
      if (step > SURE_SHARE * shortestMm && changedMuch(before, determinant)) {
        progress = Progress.TOO_LONG;
      } else if (crossed || direction[WAY] <= 0) {
        progress = endAtFold(step, before, crossed);
      } else if (next[WAY] >= wayMm) {
        progress = arriveWithin(step);
      } else {
        point = next;
        tangent = direction;
        return Progress.MOVED;
      }
    }
    determinant = before;
    return progress;
  }

  /** The fold lies within the step; the end of the line may lie before it. */
  private Progress endAtFold(double step, double before, boolean crossed) {
    double low = 0;
    double high = step;
    double[] fold = point;
    for (int i = 0; i < MOST_HALVINGS && high - low > 1e-8 * step; i++) {
      double middle = 0.5 * (low + high);
      double[] candidate = corrected(middle);
      double[] direction = candidate == null ? null : tangentAt(candidate, tangent);
      if (direction == null) {
        return Progress.TOO_LONG;
      }
      boolean beyond = crossed ? before * determinant <= 0 : direction[WAY] <= 0;
      if (beyond) {
        high = middle;
      } else {
        low = middle;
        fold = candidate;
      }
    }
    if (fold[WAY] >= wayMm) {
      return arriveWithin(low);
    }
    reachedMm = fold[WAY];
    point = fold;
    return Progress.FOLD;
  }

  /** The end of the line lies within the step and no fold before it. */
  private Progress arriveWithin(double step) {
    double low = 0;
    double high = step;
    double[] nearest = point;
    double tolerance = 4e-16 * wayMm + 1e-13;
    for (int i = 0; i < MOST_HALVINGS && Math.abs(nearest[WAY] - wayMm) > tolerance; i++) {
      double middle =
          i == 0 ? Math.min(step, (wayMm - point[WAY]) / tangent[WAY]) : (low + high) / 2;
      nearest = corrected(middle);
      if (nearest == null) {
        return Progress.TOO_LONG;
      }
      if (nearest[WAY] < wayMm) {
        low = middle;
      } else {
        high = middle;
      }
    }
    point = nearest;
    reachedMm = wayMm;
    return Progress.ARRIVED;
  }

  /** The curve's point in the plane a step ahead across the tangent, or null if not found. */
  private double[] corrected(double step) {
    double[] guess = new double[SIZE];
    for (int i = 0; i < SIZE; i++) {
      guess[i] = point[i] + step * tangent[i];
    }
    double[] correction = new double[SIZE];
    double last = Double.POSITIVE_INFINITY;
    for (int k = 0; k < CORRECTIONS; k++) {
      evaluate(guess);
      for (int j = 0; j < WAY; j++) {
        correction[j] = -equations.residual[j];
      }
      double ahead = -step;
      for (int j = 0; j < SIZE; j++) {
        ahead += tangent[j] * (guess[j] - point[j]);
      }
      correction[WAY] = -ahead;
      LinearSystem.solve(bordered(tangent), correction);
      double size = 0;
      for (int j = 0; j < SIZE; j++) {
        guess[j] += correction[j];
        size = Math.max(size, Math.abs(correction[j]));
      }
      if (!(size < shortestMm) || (size > CONTRACTION * last && size > CONVERGED_MM)) {
        return null;
      }
      if (size <= CONVERGED_MM) {
        return guess;
      }
      last = size;
    }
    return null;
  }

  /** Unit tangent, turned the way of the last one; sets the determinant. Null where undefined. */
  private double[] tangentAt(double[] at, double[] last) {
    evaluate(at);
    double[] result = new double[SIZE];
    result[WAY] = 1;
    LinearSystem.solve(bordered(last), result);
    determinant = equations.signedDeterminant();
    double norm = Math.sqrt(dot(result, result));
    if (!(norm > 0 && norm < Double.POSITIVE_INFINITY)) {
      return null;
    }
    for (int i = 0; i < SIZE; i++) {
      result[i] /= norm;
    }
    return result;
  }

  private void evaluate(double[] at) {
    System.arraycopy(at, 0, free, 0, WAY);
    equations.evaluate(free, at[WAY] * heavePart, at[WAY] * rollPart);
  }

  private double[][] bordered(double[] lastRow) {
    double[][] matrix = new double[SIZE][SIZE];
    for (int i = 0; i < WAY; i++) {
      System.arraycopy(equations.byFree[i], 0, matrix[i], 0, WAY);
      matrix[i][WAY] = heavePart * equations.byHeave[i] + rollPart * equations.byRoll[i];
    }
    matrix[WAY] = lastRow.clone();
    return matrix;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
