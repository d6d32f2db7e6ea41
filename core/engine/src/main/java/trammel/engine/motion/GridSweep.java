package trammel.engine.motion;

/**
 * Walks over a grid of heave and roll from the pose nearest to ride outwards, row by row, and
 * starts each pose from the curve through the three before it.
 */
final class GridSweep {

  private static final int TERMS = 3;

  private final PoseSolver solver;
  private final double[] heavesMm;
  private final double[] rollsRad;
  private final PoseGrid grid;
  private final FreePosition at = new FreePosition();

  GridSweep(PoseSolver solver, double[] heavesMm, double[] rollsRad) {
    this.solver = solver;
    this.heavesMm = heavesMm.clone();
    this.rollsRad = rollsRad.clone();
    requireRising("heaves", this.heavesMm);
    requireRising("rolls", this.rollsRad);
    PoseSolver.requireTravel(this.heavesMm[0], this.rollsRad[0]);
    PoseSolver.requireTravel(
        this.heavesMm[heavesMm.length - 1], this.rollsRad[rollsRad.length - 1]);
    grid =
        new PoseGrid(
            this.heavesMm,
            this.rollsRad,
            solver.linkage().tyreLoadedRadiusMm(),
            solver.table().leverMm);
  }

  PoseGrid run() {
    int middleHeave = nearestToZero(heavesMm);
    int middleRoll = nearestToZero(rollsRad);
    double[] upward = weights(heavesMm, middleHeave, 1);
    double[] downward = weights(heavesMm, middleHeave, -1);
    for (int row = middleRoll; row < rollsRad.length; row++) {
      solveRow(row, middleHeave, upward, downward);
    }
    for (int row = middleRoll - 1; row >= 0; row--) {
      solveRow(row, middleHeave, upward, downward);
    }
    if (!grid.complete()) {
      settleAroundFolds();
    }
    return grid;
  }

  private void solveRow(int row, int middle, double[] upward, double[] downward) {
    double sinRoll = SmallAngle.sin(rollsRad[row]);
    double cosRoll = SmallAngle.cos(rollsRad[row]);
    grid.put(middle, row, solver.solve(heavesMm[middle], rollsRad[row]));
    for (int column = middle + 1; column < heavesMm.length; column++) {
      solveNext(row, column, -1, column - middle, upward, sinRoll, cosRoll);
    }
    for (int column = middle - 1; column >= 0; column--) {
      solveNext(row, column, 1, middle - column, downward, sinRoll, cosRoll);
    }
  }

  /** One pose, with {@code known} poses behind it in the direction {@code back}. */
  private void solveNext(
      int row, int column, int back, int known, double[] weights, double sinRoll, double cosRoll) {
    int terms = Math.min(TERMS, known);
    boolean started = true;
    at.set(0, 0, 0, 0);
    for (int k = 0; k < terms; k++) {
      int from = column + (k + 1) * back;
      started &= grid.solved(from, row);
      grid.addTo(at, from, row, weights[column * TERMS + k]);
    }
    if (started && solver.converges(at, heavesMm[column], sinRoll, cosRoll)) {
      grid.put(column, row, at);
    } else {
      grid.put(column, row, solver.solve(heavesMm[column], rollsRad[row]));
    }
  }

  /** Where the travel ends, a pose counts only if the straight way from ride to it is open. */
  private void settleAroundFolds() {
    for (int row = 0; row < rollsRad.length; row++) {
      for (int column = 0; column < heavesMm.length; column++) {
        if (grid.solved(column, row)) {
          grid.put(column, row, solver.solve(heavesMm[column], rollsRad[row]));
        }
      }
    }
  }

  /** Weights of the polynomial through the last one, two or three poses (Lagrange). */
  private static double[] weights(double[] places, int middle, int direction) {
    double[] weights = new double[places.length * TERMS];
    for (int i = middle + direction; i >= 0 && i < places.length; i += direction) {
      int terms = Math.min(TERMS, Math.abs(i - middle));
      for (int k = 0; k < terms; k++) {
        double node = places[i - (k + 1) * direction];
        double weight = 1;
        for (int other = 0; other < terms; other++) {
          double place = places[i - (other + 1) * direction];
          weight *= other == k ? 1 : (places[i] - place) / (node - place);
        }
        weights[i * TERMS + k] = weight;
      }
    }
    return weights;
  }

  private static int nearestToZero(double[] values) {
    int nearest = 0;
    for (int i = 1; i < values.length; i++) {
      nearest = Math.abs(values[i]) < Math.abs(values[nearest]) ? i : nearest;
    }
    return nearest;
  }

  private static void requireRising(String what, double[] values) {
    if (values.length == 0) {
      throw new IllegalArgumentException("The grid has no " + what + "; give at least one.");
    }
    for (int i = 1; i < values.length; i++) {
      if (!(values[i] > values[i - 1])) {
        throw new IllegalArgumentException(
            "The "
                + what
                + " of the grid go from "
                + values[i - 1]
                + " to "
                + values[i]
                + "; they must rise from each to the next. Sort them and leave out repeats.");
      }
    }
  }
}
