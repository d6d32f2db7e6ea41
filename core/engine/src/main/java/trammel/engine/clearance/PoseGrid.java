package trammel.engine.clearance;

import java.util.Arrays;
import java.util.List;
import trammel.engine.motion.AxlePose;

/** Poses sorted into rows of heave and columns of roll; places may be empty. */
final class PoseGrid {

  /** Poses closer than this stand in the same row or column. */
  private static final double SAME_HEAVE_MM = 1e-6;

  private static final double SAME_ROLL_RAD = 1e-9;
  private static final int EMPTY = -1;

  private final List<AxlePose> poses;
  private final double[] heavesMm;
  private final double[] rollsRad;
  private final int[] row;
  private final int[] column;
  private final int[] poseAt;

  PoseGrid(List<AxlePose> givenPoses) {
    poses = List.copyOf(givenPoses);
    if (poses.isEmpty()) {
      throw new IllegalArgumentException(
          "The clearance check got 0 poses of the axle; it needs at least 1."
              + " Check that the linkage reaches its ride height.");
    }
    double[] heaves = new double[poses.size()];
    double[] rolls = new double[poses.size()];
    for (int k = 0; k < heaves.length; k++) {
      heaves[k] = poses.get(k).heaveMm();
      rolls[k] = poses.get(k).rollRad();
    }
    heavesMm = distinct(heaves, SAME_HEAVE_MM);
    rollsRad = distinct(rolls, SAME_ROLL_RAD);
    row = places(heaves, heavesMm);
    column = places(rolls, rollsRad);
    poseAt = new int[heavesMm.length * rollsRad.length];
    Arrays.fill(poseAt, EMPTY);
    for (int k = 0; k < heaves.length; k++) {
      poseAt[row[k] * rollsRad.length + column[k]] = k;
    }
  }

  private static double[] distinct(double[] values, double same) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int kept = 1;
    for (int k = 1; k < sorted.length; k++) {
      if (sorted[k] - sorted[kept - 1] > same) {
        sorted[kept++] = sorted[k];
      }
    }
    return Arrays.copyOf(sorted, kept);
  }

  private static int[] places(double[] values, double[] distinct) {
    int[] places = new int[values.length];
    for (int k = 0; k < values.length; k++) {
      int found = Arrays.binarySearch(distinct, values[k]);
      // Within the tolerance above the value that stands for its row, never below it.
      places[k] = found >= 0 ? found : -found - 2;
    }
    return places;
  }

  int size() {
    return poses.size();
  }

  AxlePose pose(int index) {
    return poses.get(index);
  }

  /** Index of the pose some rows and columns away, or -1 where there is none. */
  int neighbour(int index, int rows, int columns) {
    int r = row[index] + rows;
    int c = column[index] + columns;
    if (r < 0 || r >= heavesMm.length || c < 0 || c >= rollsRad.length) {
      return EMPTY;
    }
    return poseAt[r * rollsRad.length + c];
  }

  /** Wider of the steps to the next rows, or zero if there is one row only. */
  double heaveStepMm(int index) {
    return widerStep(heavesMm, row[index]);
  }

  /** Wider of the steps to the next columns, or zero if there is one column only. */
  double rollStepRad(int index) {
    return widerStep(rollsRad, column[index]);
  }

  private static double widerStep(double[] values, int at) {
    double before = at > 0 ? values[at] - values[at - 1] : 0;
    double after = at < values.length - 1 ? values[at + 1] - values[at] : 0;
    return Math.max(before, after);
  }

  double withinHeaveMm(double heaveMm) {
    return Math.max(heavesMm[0], Math.min(heavesMm[heavesMm.length - 1], heaveMm));
  }

  double withinRollRad(double rollRad) {
    return Math.max(rollsRad[0], Math.min(rollsRad[rollsRad.length - 1], rollRad));
  }
}
