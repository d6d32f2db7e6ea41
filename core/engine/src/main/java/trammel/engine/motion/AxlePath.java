package trammel.engine.motion;

/** The equations of the axle's free coordinates along a line in the plane of heave and roll. */
final class AxlePath implements PathEquations {
  private final MotionEquations equations;
  private final double heavePart;
  private final double rollPart;

  /** Length of the line (mm; roll times the lever). */
  final double wayMm;

  AxlePath(LinkTable table, double heaveMm, double rollRad) {
    equations = new MotionEquations(table);
    double rollMm = rollRad * table.leverMm;
    wayMm = Math.hypot(heaveMm, rollMm);
    heavePart = heaveMm / wayMm;
    rollPart = rollMm / wayMm;
  }

  @Override
  public int size() {
    return LengthExpansion.FREE;
  }

  @Override
  public void evaluate(double[] unknownsMm, double wayMm) {
    equations.evaluate(unknownsMm, wayMm * heavePart, wayMm * rollPart);
  }

  @Override
  public double residual(int row) {
    return equations.residual[row];
  }

  @Override
  public double byUnknown(int row, int column) {
    return equations.byFree[row][column];
  }

  @Override
  public double byWay(int row) {
    return heavePart * equations.byHeave[row] + rollPart * equations.byRoll[row];
  }

  @Override
  public double signedDeterminant() {
    return equations.signedDeterminant();
  }
}
