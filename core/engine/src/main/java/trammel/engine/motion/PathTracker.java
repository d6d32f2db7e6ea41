package trammel.engine.motion;

/**
 * Follows the pose of the axle from ride along a straight line in the plane of heave and roll, in
 * small steps along the curve itself (pseudo-arclength continuation, Allgower and Georg,
 * Introduction to Numerical Continuation Methods, SIAM 2003, chs. 2 and 6, from memory), so that it
 * neither jumps to another branch nor runs past a fold unseen.
 *
 * <p>A point of the curve is (the unknowns of the equations, way along the line), all in mm. At a
 * fold the way turns back and the determinant of the equations changes its sign.
 */
public final class PathTracker {

  /** What a walk ended with. */
  public enum End {
    /** The end of the line. */
    ARRIVED,
    /** The travel ends before the end of the line. */
    FOLD,
    /** The curve could not be followed any farther. */
    LOST
  }

  private enum Progress {
    MOVED,
    TOO_LONG,
    ARRIVED,
    FOLD
  }

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

  private final PathEquations equations;
  private final double shortestMm;
  private final double wayMm;

  /** Index of the way, behind the unknowns. */
  private final int way;

  private final int size;
  private final double[] unknowns;
  private double[] point;
  private double[] tangent;
  private double determinant;
  private double reachedMm;

  /**
   * @param equations what holds along the line
   * @param shortestMm shortest link or arm, the scale of the steps (mm, above 0)
   * @param wayMm length of the line from ride (mm, above 0)
   */
  public PathTracker(PathEquations equations, double shortestMm, double wayMm) {
    this.equations = equations;
    this.shortestMm = shortestMm;
    this.wayMm = wayMm;
    way = equations.size();
    size = way + 1;
    unknowns = new double[way];
    point = new double[size];
    tangent = new double[size];
  }

  /** Share of the line from ride that was covered: up to the fold, or up to where it was lost. */
  public double fraction() {
    return Math.max(0, Math.min(1, reachedMm / wayMm));
  }

  /** Unknowns where the walk ended (mm). */
  public double[] unknownsMm() {
    double[] result = new double[way];
    System.arraycopy(point, 0, result, 0, way);
    return result;
  }

  /** Walks until the end of the line, a fold, or the loss of the curve. */
  public End walk() {
    tangent[way] = 1;
    tangent = tangentAt(point, tangent);
    double atRide = determinant;
    double step = Math.min(1e-3 * shortestMm, wayMm);
    double shortestStep = Math.min(1e-9 * shortestMm, 1e-3 * wayMm);
    for (int taken = 0; taken < MOST_STEPS; taken++) {
      reachedMm = point[way];
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
    return Math.max(0.05 * shortestMm, 0.05 * Math.abs(point[way]));
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
      } else if (crossed || direction[way] <= 0) {
        progress = endAtFold(step, before, crossed);
      } else if (next[way] >= wayMm) {
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
      boolean beyond = crossed ? before * determinant <= 0 : direction[way] <= 0;
      if (beyond) {
        high = middle;
      } else {
        low = middle;
        fold = candidate;
      }
    }
    if (fold[way] >= wayMm) {
      return arriveWithin(low);
    }
    reachedMm = fold[way];
    point = fold;
    return Progress.FOLD;
  }

  /** The end of the line lies within the step and no fold before it. */
  private Progress arriveWithin(double step) {
    double low = 0;
    double high = step;
    double[] nearest = point;
    double tolerance = 4e-16 * wayMm + 1e-13;
    for (int i = 0; i < MOST_HALVINGS && Math.abs(nearest[way] - wayMm) > tolerance; i++) {
      double middle =
          i == 0 ? Math.min(step, (wayMm - point[way]) / tangent[way]) : (low + high) / 2;
      nearest = corrected(middle);
      if (nearest == null) {
        return Progress.TOO_LONG;
      }
      if (nearest[way] < wayMm) {
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
    double[] guess = new double[size];
    for (int i = 0; i < size; i++) {
      guess[i] = point[i] + step * tangent[i];
    }
    double[] correction = new double[size];
    double last = Double.POSITIVE_INFINITY;
    for (int k = 0; k < CORRECTIONS; k++) {
      evaluate(guess);
      for (int j = 0; j < way; j++) {
        correction[j] = -equations.residual(j);
      }
      double ahead = -step;
      for (int j = 0; j < size; j++) {
        ahead += tangent[j] * (guess[j] - point[j]);
      }
      correction[way] = -ahead;
      LinearSystem.solve(bordered(tangent), correction);
      double change = 0;
      for (int j = 0; j < size; j++) {
        guess[j] += correction[j];
        change = Math.max(change, Math.abs(correction[j]));
      }
      if (!(change < shortestMm) || (change > CONTRACTION * last && change > CONVERGED_MM)) {
        return null;
      }
      if (change <= CONVERGED_MM) {
        return guess;
      }
      last = change;
    }
    return null;
  }

  /** Unit tangent, turned the way of the last one; sets the determinant. Null where undefined. */
  private double[] tangentAt(double[] at, double[] last) {
    evaluate(at);
    double[] result = new double[size];
    result[way] = 1;
    LinearSystem.solve(bordered(last), result);
    determinant = equations.signedDeterminant();
    double norm = Math.sqrt(dot(result, result));
    if (!(norm > 0 && norm < Double.POSITIVE_INFINITY)) {
      return null;
    }
    for (int i = 0; i < size; i++) {
      result[i] /= norm;
    }
    return result;
  }

  private void evaluate(double[] at) {
    System.arraycopy(at, 0, unknowns, 0, way);
    equations.evaluate(unknowns, at[way]);
  }

  private double[][] bordered(double[] lastRow) {
    double[][] matrix = new double[size][size];
    for (int i = 0; i < way; i++) {
      for (int j = 0; j < way; j++) {
        matrix[i][j] = equations.byUnknown(i, j);
      }
      matrix[i][way] = equations.byWay(i);
    }
    matrix[way] = lastRow.clone();
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
