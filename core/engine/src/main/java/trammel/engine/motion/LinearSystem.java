package trammel.engine.motion;

/** Small square systems of equations by elimination with partial pivoting, in place. */
public final class LinearSystem {

  private LinearSystem() {}

  /**
   * Solves {@code a x = b}; {@code a} is overwritten, {@code b} becomes {@code x}.
   *
   * @return the determinant of {@code a}; zero or not finite when there is no single solution, and
   *     then {@code b} is worthless
   */
  public static double solve(double[][] a, double[] b) {
    int n = b.length;
    double determinant = 1;
    for (int k = 0; k < n; k++) {
      int pivot = k;
      for (int i = k + 1; i < n; i++) {
        pivot = Math.abs(a[i][k]) > Math.abs(a[pivot][k]) ? i : pivot;
      }
      if (pivot != k) {
        swap(a, b, k, pivot);
        determinant = -determinant;
      }
      determinant *= a[k][k];
      if (!(Math.abs(a[k][k]) > 0)) {
        return 0;
      }
      for (int i = k + 1; i < n; i++) {
        double factor = a[i][k] / a[k][k];
        for (int j = k + 1; j < n; j++) {
          a[i][j] -= factor * a[k][j];
        }
        b[i] -= factor * b[k];
      }
    }
    for (int i = n - 1; i >= 0; i--) {
      for (int j = i + 1; j < n; j++) {
        b[i] -= a[i][j] * b[j];
      }
      b[i] /= a[i][i];
    }
    return determinant;
  }

  private static void swap(double[][] a, double[] b, int i, int j) {
    double[] row = a[i];
    a[i] = a[j];
    a[j] = row;
    double value = b[i];
    b[i] = b[j];
    b[j] = value;
  }
}
