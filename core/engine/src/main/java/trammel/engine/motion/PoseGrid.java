package trammel.engine.motion;

/**
 * Results over a grid of heave and roll. Poses are kept as plain numbers and made into objects when
 * asked for.
 */
public final class PoseGrid {

  private static final int WIDTH = 4;

  private final double[] heavesMm;
  private final double[] rollsRad;
  private final double loadedRadiusMm;
  private final double leverMm;
  private final double[] coordinatesMm;
  private final PoseResult[] failures;
  private int failed;

  PoseGrid(double[] heavesMm, double[] rollsRad, double loadedRadiusMm, double leverMm) {
    this.heavesMm = heavesMm;
    this.rollsRad = rollsRad;
    this.loadedRadiusMm = loadedRadiusMm;
    this.leverMm = leverMm;
    coordinatesMm = new double[heavesMm.length * rollsRad.length * WIDTH];
    failures = new PoseResult[heavesMm.length * rollsRad.length];
  }

  /** Number of heaves. */
  public int heaveCount() {
    return heavesMm.length;
  }

  /** Number of rolls. */
  public int rollCount() {
    return rollsRad.length;
  }

  /** Heave of a column (mm). */
  public double heaveMm(int heaveIndex) {
    return heavesMm[heaveIndex];
  }

  /** Roll of a row (rad). */
  public double rollRad(int rollIndex) {
    return rollsRad[rollIndex];
  }

  /** Whether every pose of the grid was found. */
  public boolean complete() {
    return failed == 0;
  }

  /** What became of a pose. */
  public PoseResult result(int heaveIndex, int rollIndex) {
    int cell = cell(heaveIndex, rollIndex);
    if (failures[cell] != null) {
      return failures[cell];
    }
    int at = cell * WIDTH;
    return new PoseResult.Solved(
        new AxlePose(
            heavesMm[heaveIndex],
            rollsRad[rollIndex],
            coordinatesMm[at],
            coordinatesMm[at + 1],
            coordinatesMm[at + 2] / leverMm,
            coordinatesMm[at + 3] / leverMm,
            loadedRadiusMm));
  }

  boolean solved(int heaveIndex, int rollIndex) {
    return failures[cell(heaveIndex, rollIndex)] == null;
  }

  void put(int heaveIndex, int rollIndex, FreePosition found) {
    int at = cell(heaveIndex, rollIndex) * WIDTH;
    coordinatesMm[at] = found.forwardMm;
    coordinatesMm[at + 1] = found.lateralMm;
    coordinatesMm[at + 2] = found.yawMm;
    coordinatesMm[at + 3] = found.pitchMm;
  }

  void put(int heaveIndex, int rollIndex, PoseResult result) {
    int cell = cell(heaveIndex, rollIndex);
    boolean before = failures[cell] != null;
    if (result instanceof PoseResult.Solved solved) {
      AxlePose pose = solved.pose();
      int at = cell * WIDTH;
      coordinatesMm[at] = pose.forwardMm();
      coordinatesMm[at + 1] = pose.lateralMm();
      coordinatesMm[at + 2] = pose.yawRad() * leverMm;
      coordinatesMm[at + 3] = pose.pitchNoseUpRad() * leverMm;
      failures[cell] = null;
    } else {
      failures[cell] = result;
    }
    failed += (failures[cell] != null ? 1 : 0) - (before ? 1 : 0);
  }

  /** Adds a weighted pose to the position: a term of an extrapolation. */
  void addTo(FreePosition sum, int heaveIndex, int rollIndex, double weight) {
    int at = cell(heaveIndex, rollIndex) * WIDTH;
    sum.forwardMm += weight * coordinatesMm[at];
    sum.lateralMm += weight * coordinatesMm[at + 1];
    sum.yawMm += weight * coordinatesMm[at + 2];
    sum.pitchMm += weight * coordinatesMm[at + 3];
  }

  private int cell(int heaveIndex, int rollIndex) {
    return rollIndex * heavesMm.length + heaveIndex;
  }
}
