package trammel.engine.mechanism;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import trammel.engine.mechanism.MechanismFaultException.Kind;

/** Whether a mechanism can move at ride, and only as it should. */
final class RideRank {
  /** Least pivot, against the largest, that counts. */
  private static final double LEAST = 1e-9;

  private RideRank() {}

  static void require(
      double trackMm,
      double radiusMm,
      List<FurtherBody> bodies,
      List<ElasticLink> links,
      List<ExactJoint> joints,
      List<Bush> bushes) {
    Coordinates coordinates = new Coordinates(trackMm, radiusMm, bodies, links, joints, bushes);
    Strain strain = new Strain(coordinates, links, joints, bushes);
    strain.evaluate(new double[coordinates.free], 0, 0);
    requireMoving(strain, coordinates);
    requireHeld(strain, coordinates);
  }

  private static void requireMoving(Strain strain, Coordinates coordinates) {
    int rank = rank(columns(strain.exactBy, coordinates.free, -1));
    List<String> locked = new ArrayList<>(2);
    if (rank(columns(strain.exactBy, coordinates.free, coordinates.heave)) > rank) {
      locked.add("heave");
    }
    if (rank(columns(strain.exactBy, coordinates.free, coordinates.roll)) > rank) {
      locked.add("roll");
    }
    if (!locked.isEmpty()) {
      throw new MechanismFaultException(
          Kind.LOCKED,
          locked,
          "The joints that are held exactly allow no "
              + String.join(" and no ", locked)
              + ". Make one of them a bush, or let it slide.");
    }
    if (rank < strain.exact.length) {
      throw new MechanismFaultException(
          Kind.REDUNDANT,
          "The joints that are held exactly repeat one another: "
              + strain.exact.length
              + " equations hold "
              + rank
              + " motions. Make one of them a bush, or take it out.");
    }
  }

  private static void requireHeld(Strain strain, Coordinates coordinates) {
    double[][] exact = columns(strain.exactBy, coordinates.free, -1);
    double[][] elastic = columns(strain.elasticBy, coordinates.free, -1);
    double[][] all = Arrays.copyOf(exact, exact.length + elastic.length);
    System.arraycopy(elastic, 0, all, exact.length, elastic.length);
    int rank = rank(all);
    if (rank < coordinates.free) {
      throw new MechanismFaultException(
          Kind.FREE_MOTION,
          "Links, bushes and joints hold "
              + rank
              + " of "
              + coordinates.free
              + " motions at ride; one is left free. Add a link, or move one out of line with its"
              + " arm.");
    }
  }

  /** The free columns and, unless it is negative, one more. */
  private static double[][] columns(double[][] rows, int free, int more) {
    double[][] copy = new double[rows.length][];
    for (int i = 0; i < rows.length; i++) {
      copy[i] = Arrays.copyOf(rows[i], more < 0 ? free : free + 1);
      if (more >= 0) {
        copy[i][free] = rows[i][more];
      }
    }
    return copy;
  }

  /** Rank by elimination with complete pivoting; the rows are overwritten. */
  static int rank(double[][] rows) {
    double first = 0;
    int rank = 0;
    while (rank < rows.length && rank < rows[0].length) {
      double pivot = bringLargestForward(rows, rank);
      first = rank == 0 ? pivot : first;
      if (!(pivot > LEAST * first)) {
        return rank;
      }
      for (int i = rank + 1; i < rows.length; i++) {
        double factor = rows[i][rank] / rows[rank][rank];
        for (int j = rank; j < rows[i].length; j++) {
          rows[i][j] -= factor * rows[rank][j];
        }
      }
      rank++;
    }
    return rank;
  }

  private static double bringLargestForward(double[][] rows, int k) {
    int bestRow = k;
    int bestColumn = k;
    for (int i = k; i < rows.length; i++) {
      for (int j = k; j < rows[i].length; j++) {
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
    return Math.abs(rows[k][k]);
  }
}
