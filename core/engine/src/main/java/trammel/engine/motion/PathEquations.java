package trammel.engine.motion;

/**
 * As many equations as unknowns, all in mm, that hold along a straight line in the plane of heave
 * and roll. Every unknown is 0 at ride, where the equations hold.
 */
public interface PathEquations {

  /** Number of equations, and of unknowns. */
  int size();

  /**
   * Works the equations out.
   *
   * @param unknownsMm where the unknowns stand (mm; angles times a lever)
   * @param wayMm way along the line from ride (mm)
   */
  void evaluate(double[] unknownsMm, double wayMm);

  /** What is left of an equation at the last {@link #evaluate}. */
  double residual(int row);

  /** Derivative of an equation by an unknown at the last {@link #evaluate}. */
  double byUnknown(int row, int column);

  /** Derivative of an equation by the way at the last {@link #evaluate}. */
  double byWay(int row);

  /**
   * Determinant of the equations by their unknowns at the last {@link #evaluate}. It changes its
   * sign at a fold.
   */
  double signedDeterminant();
}
