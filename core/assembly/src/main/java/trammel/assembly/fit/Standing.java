package trammel.assembly.fit;

import trammel.assembly.Place;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;

/** A simple solid of a part where it stands, with the blocks round it. */
final class Standing {
  private static final int AXES = 3;

  /** Points along an edge are looked at this far apart (mm). */
  private static final double SPACING_MM = 3;

  private final Filled form;
  private final double[][] axes;
  private final double[] origin;
  private final double[] middle = new double[AXES];
  private final double[] half = new double[AXES];
  private final double[] reach = new double[AXES];

  Standing(Filled form, Place place) {
    this.form = form;
    axes = new double[][] {numbers(place.x()), numbers(place.y()), numbers(place.z())};
    Point3 at = place.origin();
    origin = new double[] {at.xMm(), at.yMm(), at.zMm()};
    System.arraycopy(origin, 0, middle, 0, AXES);
    for (int i = 0; i < AXES; i++) {
      half[i] = (form.most(i) - form.least(i)) / 2;
      for (int j = 0; j < AXES; j++) {
        middle[j] += axes[i][j] * (form.most(i) + form.least(i)) / 2;
        reach[j] += half[i] * Math.abs(axes[i][j]);
      }
    }
  }

  private static double[] numbers(Vector3 v) {
    return new double[] {v.x(), v.y(), v.z()};
  }

  /** Where the upright block round it begins along an axis of the vehicle (mm). */
  double lowMm(int axis) {
    return middle[axis] - reach[axis];
  }

  /** Where it ends (mm). */
  double highMm(int axis) {
    return middle[axis] + reach[axis];
  }

  /** Whether the blocks round two solids, each in its own axes, overlap by more than a bound. */
  boolean isNear(Standing other, double boundMm) {
    for (int i = 0; i < AXES; i++) {
      double apart = Math.abs(middle[i] - other.middle[i]);
      if (reach[i] + other.reach[i] - apart < boundMm) {
        return false;
      }
    }
    return !isBeside(other, boundMm) && !other.isBeside(this, boundMm);
  }

  private boolean isBeside(Standing other, double boundMm) {
    for (double[] axis : axes) {
      double apart = 0;
      double reachMm = 0;
      for (int j = 0; j < AXES; j++) {
        apart += axis[j] * (other.middle[j] - middle[j]);
      }
      for (int i = 0; i < AXES; i++) {
        double[] own = other.axes[i];
        reachMm += other.half[i] * Math.abs(axis[0] * own[0] + axis[1] * own[1] + axis[2] * own[2]);
      }
      double ownMm = axis == axes[0] ? half[0] : axis == axes[1] ? half[1] : half[2];
      if (ownMm + reachMm - Math.abs(apart) < boundMm) {
        return true;
      }
    }
    return false;
  }

  /** How deep this solid's edges lie in another at most; 0 where none does (mm). */
  double depthInMm(Standing other) {
    double[] edges = form.edges();
    double[] from = new double[AXES];
    double[] to = new double[AXES];
    double deepest = 0;
    for (int i = 0; i < edges.length; i += 2 * AXES) {
      carry(edges, i, other, from);
      carry(edges, i + AXES, other, to);
      deepest = Math.max(deepest, other.deepestMm(from, to, deepest));
    }
    return deepest;
  }

  /** A point of its own in the axes of another. */
  private void carry(double[] points, int at, Standing other, double[] into) {
    double x = points[at];
    double y = points[at + 1];
    double z = points[at + 2];
    double dx = origin[0] + x * axes[0][0] + y * axes[1][0] + z * axes[2][0] - other.origin[0];
    double dy = origin[1] + x * axes[0][1] + y * axes[1][1] + z * axes[2][1] - other.origin[1];
    double dz = origin[2] + x * axes[0][2] + y * axes[1][2] + z * axes[2][2] - other.origin[2];
    for (int i = 0; i < AXES; i++) {
      into[i] = dx * other.axes[i][0] + dy * other.axes[i][1] + dz * other.axes[i][2];
    }
  }

  /** The deepest of the points looked at along a line, where it is deeper than is known already. */
  private double deepestMm(double[] from, double[] to, double knownMm) {
    double start = 0;
    double end = 1;
    double squared = 0;
    for (int i = 0; i < AXES; i++) {
      double low = form.least(i) + knownMm;
      double high = form.most(i) - knownMm;
      double run = to[i] - from[i];
      squared += run * run;
      if (Math.abs(run) < 1e-12) {
        if (from[i] <= low || from[i] >= high) {
          return 0;
        }
        continue;
      }
      double one = (low - from[i]) / run;
      double two = (high - from[i]) / run;
      start = Math.max(start, Math.min(one, two));
      end = Math.min(end, Math.max(one, two));
      if (start >= end) {
        return 0;
      }
    }
    // An even number of steps has the middle among them, where a line is deepest in a plate.
    int steps = 2 * (int) Math.ceil(Math.sqrt(squared) * (end - start) / (2 * SPACING_MM));
    double deepest = 0;
    for (int k = 0; k <= steps; k++) {
      double share = start + (end - start) * k / Math.max(1, steps);
      double depth =
          form.depthMm(
              from[0] + share * (to[0] - from[0]),
              from[1] + share * (to[1] - from[1]),
              from[2] + share * (to[2] - from[2]));
      deepest = Math.max(deepest, depth);
    }
    return deepest;
  }
}
