package trammel.engine.mechanism;

/** Turns as matrices of nine numbers, row by row. */
final class Rotation {
  /** Below this turn the series is exact to the last digit (rad). */
  private static final double SMALL_RAD = 1e-4;

  private Rotation() {}

  static double[] identity() {
    return new double[] {1, 0, 0, 0, 1, 0, 0, 0, 1};
  }

  /** The turn by |v| about v (Rodrigues' formula). */
  static double[] of(double x, double y, double z) {
    double angle = Math.sqrt(x * x + y * y + z * z);
    double sine = angle < SMALL_RAD ? 1 - angle * angle / 6 : Math.sin(angle) / angle;
    double half = Math.sin(angle / 2);
    double versine =
        angle < SMALL_RAD ? 0.5 - angle * angle / 24 : 2 * half * half / (angle * angle);
    return combined(x, y, z, 1, sine, versine);
  }

  /**
   * What turns a change of v into the angular velocity of the turn by v: the left Jacobian of the
   * rotation vector (Sola, Deray and Atchuthan, A micro Lie theory for state estimation in
   * robotics, arXiv:1812.01537, eq. 145, from memory).
   */
  static double[] spinOf(double x, double y, double z) {
    double angle = Math.sqrt(x * x + y * y + z * z);
    double square = angle * angle;
    double half = Math.sin(angle / 2);
    double first = angle < SMALL_RAD ? 0.5 - square / 24 : 2 * half * half / square;
    double second =
        angle < SMALL_RAD ? 1.0 / 6 - square / 120 : (angle - Math.sin(angle)) / (square * angle);
    return combined(x, y, z, 1, first, second);
  }

  /** {@code one I + first [v] + second [v]²}. */
  private static double[] combined(
      double x, double y, double z, double one, double first, double second) {
    return new double[] {
      one - second * (y * y + z * z),
      second * x * y - first * z,
      second * x * z + first * y,
      second * x * y + first * z,
      one - second * (x * x + z * z),
      second * y * z - first * x,
      second * x * z - first * y,
      second * y * z + first * x,
      one - second * (x * x + y * y)
    };
  }

  static double[] product(double[] a, double[] b) {
    double[] c = new double[9];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        c[3 * i + j] = a[3 * i] * b[j] + a[3 * i + 1] * b[3 + j] + a[3 * i + 2] * b[6 + j];
      }
    }
    return c;
  }

  static double[] turned(double[] a, double[] v) {
    return new double[] {
      a[0] * v[0] + a[1] * v[1] + a[2] * v[2],
      a[3] * v[0] + a[4] * v[1] + a[5] * v[2],
      a[6] * v[0] + a[7] * v[1] + a[8] * v[2]
    };
  }

  static double[] turnedBack(double[] a, double[] v) {
    return new double[] {
      a[0] * v[0] + a[3] * v[1] + a[6] * v[2],
      a[1] * v[0] + a[4] * v[1] + a[7] * v[2],
      a[2] * v[0] + a[5] * v[1] + a[8] * v[2]
    };
  }

  static double[] column(double[] a, int j) {
    return new double[] {a[j], a[3 + j], a[6 + j]};
  }

  static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }

  static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  static double[] minus(double[] a, double[] b) {
    return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
  }
}
