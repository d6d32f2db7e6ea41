package trammel.engine.motion;

/**
 * The four free coordinates of the axle while they are being solved for, all in mm: the angles are
 * multiplied by the lever of the linkage. Mutable, so that iterating allocates nothing.
 */
final class FreePosition {

  double forwardMm;
  double lateralMm;
  double yawMm;
  double pitchMm;

  /** Determinant of the last system solved; its sign and size tell how near a fold is. */
  double determinant;

  /** Rows of the link equations of a linkage that closes exactly. */
  final double[] rows = new double[4 * 5];

  void set(double forwardMm, double lateralMm, double yawMm, double pitchMm) {
    this.forwardMm = forwardMm;
    this.lateralMm = lateralMm;
    this.yawMm = yawMm;
    this.pitchMm = pitchMm;
  }

  void set(double[] coordinatesMm) {
    set(coordinatesMm[0], coordinatesMm[1], coordinatesMm[2], coordinatesMm[3]);
  }

  /** Adds a step and returns its largest component (mm). */
  double advance(double dForwardMm, double dLateralMm, double dYawMm, double dPitchMm) {
    forwardMm += dForwardMm;
    lateralMm += dLateralMm;
    yawMm += dYawMm;
    pitchMm += dPitchMm;
    return Math.max(
        Math.max(Math.abs(dForwardMm), Math.abs(dLateralMm)),
        Math.max(Math.abs(dYawMm), Math.abs(dPitchMm)));
  }
}
