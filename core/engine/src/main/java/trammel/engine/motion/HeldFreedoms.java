package trammel.engine.motion;

import java.util.List;

/**
 * Whether two-point members hold a set of freedoms of the axle. Their directions form a matrix with
 * one row a member; if its rank is below the number of freedoms, a combination of them stretches no
 * member at all.
 */
final class HeldFreedoms {

  /**
   * Least part of a freedom, against the best-held one, that must reach the members. Real layouts,
   * even with all bars nearly parallel, stay above 1e-3.
   */
  private static final double LEAST_HOLD = 1e-6;

  private static final String[] LOOSE = {
    "nothing holds the axle fore and aft; add a link that runs along the car",
    "nothing holds the axle sideways; add a lateral bar, or angle a pair of links in plan view",
    "nothing stops the axle from turning in plan view; move the links of a pair apart",
    "nothing stops the housing from winding up; move the upper and lower links apart in height"
  };

  private HeldFreedoms() {}

  /**
   * @throws IllegalArgumentException if heave and roll being held, the links leave the axle free
   */
  static void require(double trackMm, double radiusMm, List<Link> links) {
    int loose = loosest(directions(trackMm / 3, radiusMm, links));
    if (loose >= 0) {
      throw new IllegalArgumentException("The links leave the axle loose: " + LOOSE[loose] + ".");
    }
  }

  /**
   * The freedom (column) with the largest part in a motion that stretches no member, or -1 if there
   * is no such motion. The rows are overwritten.
   */
  static int loosest(double[][] rows) {
    int freedoms = rows[0].length;
    int[] column = new int[freedoms];
    for (int j = 0; j < freedoms; j++) {
      column[j] = j;
    }
    double firstPivot = 0;
    for (int k = 0; k < freedoms; k++) {
      double pivot = k < rows.length ? bringLargestForward(rows, column, k) : 0;
      firstPivot = k == 0 ? pivot : firstPivot;
      if (!(pivot > LEAST_HOLD * firstPivot)) {
        return largestInLooseMotion(rows, column, k);
      }
      eliminate(rows, k);
    }
    return -1;
  }

  /** Stretch of each link per mm forward, sideways, and of yaw and pitch at the given lever. */
  private static double[][] directions(double leverMm, double radiusMm, List<Link> links) {
    double[][] rows = new double[links.size()][];
    for (int i = 0; i < rows.length; i++) {
      Link link = links.get(i);
      double lengthMm = link.lengthMm();
      double nx = (link.axle().xMm() - link.frame().xMm()) / lengthMm;
      double ny = (link.axle().yMm() - link.frame().yMm()) / lengthMm;
      double nz = (link.axle().zMm() - link.frame().zMm()) / lengthMm;
      double sx = link.axle().xMm();
      double sy = link.axle().yMm();
      double sz = link.axle().zMm() - radiusMm;
      rows[i] = new double[] {nx, ny, (ny * sx - nx * sy) / leverMm, (nz * sx - nx * sz) / leverMm};
    }
    return rows;
  }

  private static double bringLargestForward(double[][] rows, int[] column, int k) {
    int bestRow = k;
    int bestColumn = k;
    for (int i = k; i < rows.length; i++) {
      for (int j = k; j < column.length; j++) {
        if (Math.abs(rows[i][j]) > Math.abs(rows[bestRow][bestColumn])) {
          bestRow = i;
          bestColumn = j;
        }
      }
    }
    double[] row = rows[k];
    rows[k] = rows[bestRow];
    rows[bestRow] = row;
    for (double[] each : rows) {
      double swapped = each[k];
      each[k] = each[bestColumn];
      each[bestColumn] = swapped;
    }
    int original = column[k];
    column[k] = column[bestColumn];
    column[bestColumn] = original;
    return Math.abs(rows[k][k]);
  }

  private static void eliminate(double[][] rows, int k) {
    for (int i = k + 1; i < rows.length; i++) {
      double factor = rows[i][k] / rows[k][k];
      for (int j = k; j < rows[k].length; j++) {
        rows[i][j] -= factor * rows[k][j];
      }
    }
  }

  private static int largestInLooseMotion(double[][] rows, int[] column, int rank) {
    double[] motion = new double[column.length];
    motion[rank] = 1;
    int largest = rank;
    for (int i = rank - 1; i >= 0; i--) {
      double sum = 0;
      for (int j = i + 1; j <= rank; j++) {
        sum += rows[i][j] * motion[j];
      }
      motion[i] = -sum / rows[i][i];
      largest = Math.abs(motion[i]) > Math.abs(motion[largest]) ? i : largest;
    }
    return column[largest];
  }
}
