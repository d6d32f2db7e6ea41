package trammel.engine.mechanism;

import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.motion.BodyPose;

/**
 * Where all bodies stand at one set of coordinates, and which way each coordinate moves them: a
 * shift, or a turn about an axis through a centre.
 */
final class Stand {
  private static final int CENTRE = 3;

  final Coordinates coordinates;

  /** Turn and shift of each body: {@code p = turn p0 + shift}. */
  private final double[][] turns;

  private final double[][] shifts;

  /** Direction of shift, or axis of turn over its lever, of each coordinate. */
  private final double[][] axes;

  /** Centre of turn of each coordinate; null for a shift. */
  private final double[][] centres;

  Stand(Coordinates coordinates) {
    this.coordinates = coordinates;
    int bodies = coordinates.bodies.size() + 2;
    turns = new double[bodies][];
    shifts = new double[bodies][];
    axes = new double[coordinates.count][];
    centres = new double[coordinates.count][];
    turns[0] = Rotation.identity();
    shifts[0] = new double[3];
  }

  /**
   * Puts all bodies in place.
   *
   * @param freeMm the free coordinates (mm)
   * @param heaveMm rise of the axle's middle (mm)
   * @param rollMm roll times the axle's lever (mm)
   */
  void place(double[] freeMm, double heaveMm, double rollMm) {
    placeAxle(freeMm, heaveMm, rollMm / coordinates.axleLeverMm);
    for (int i = 0; i < coordinates.bodies.size(); i++) {
      placeFurther(i, freeMm);
    }
  }

  private void placeAxle(double[] freeMm, double heaveMm, double rollRad) {
    double lever = coordinates.axleLeverMm;
    double yaw = freeMm[2] / lever;
    double pitch = freeMm[CENTRE] / lever;
    double[] line = {
      -Math.sin(yaw) * Math.cos(rollRad), Math.cos(yaw) * Math.cos(rollRad), Math.sin(rollRad)
    };
    double[] rollAxis = {Math.cos(yaw), Math.sin(yaw), 0};
    double[] level = Rotation.product(Rotation.of(0, 0, yaw), Rotation.of(rollRad, 0, 0));
    turns[1] = Rotation.product(level, Rotation.of(0, -pitch, 0));
    double[] centre = {freeMm[0], freeMm[1], coordinates.radiusMm + heaveMm};
    double[] middle = {0, 0, coordinates.radiusMm};
    shifts[1] = Rotation.minus(centre, Rotation.turned(turns[1], middle));
    shift(0, 1, 0, 0);
    shift(1, 0, 1, 0);
    shift(coordinates.heave, 0, 0, 1);
    turn(2, new double[] {0, 0, 1}, centre, lever);
    // Nose up is a turn about the axle line's opposite.
    turn(3, new double[] {-line[0], -line[1], -line[2]}, centre, lever);
    turn(coordinates.roll, rollAxis, centre, lever);
  }

  private void placeFurther(int further, double[] freeMm) {
    Pivot pivot = coordinates.bodies.get(further).pivot();
    int on = coordinates.index(pivot.on());
    int first = coordinates.firstTurn(further);
    double lever = coordinates.leverMm(further);
    double[] centre = at(on, pivot.point());
    double[] own;
    if (pivot instanceof Pivot.Pin pin) {
      double angle = freeMm[first] / lever;
      double norm = pin.axis().norm();
      double[] axis = {pin.axis().x() / norm, pin.axis().y() / norm, pin.axis().z() / norm};
      own = Rotation.of(angle * axis[0], angle * axis[1], angle * axis[2]);
      turn(first, Rotation.turned(turns[on], axis), centre, lever);
    } else {
      double x = freeMm[first] / lever;
      double y = freeMm[first + 1] / lever;
      double z = freeMm[first + 2] / lever;
      own = Rotation.of(x, y, z);
      double[] spin = Rotation.product(turns[on], Rotation.spinOf(x, y, z));
      for (int i = 0; i < 3; i++) {
        turn(first + i, Rotation.column(spin, i), centre, lever);
      }
    }
    int index = further + 2;
    turns[index] = Rotation.product(turns[on], own);
    double[] pivotAtRide = array(pivot.point());
    shifts[index] = Rotation.minus(centre, Rotation.turned(turns[index], pivotAtRide));
  }

  private void shift(int column, double x, double y, double z) {
    axes[column] = new double[] {x, y, z};
    centres[column] = null;
  }

  private void turn(int column, double[] axis, double[] centre, double leverMm) {
    axes[column] = new double[] {axis[0] / leverMm, axis[1] / leverMm, axis[2] / leverMm};
    centres[column] = centre;
  }

  static double[] array(Point3 point) {
    return new double[] {point.xMm(), point.yMm(), point.zMm()};
  }

  double[] turnOf(int body) {
    return turns[body];
  }

  /** Where a body stands now, for use without the coordinates. */
  BodyPose pose(int body, String name, Vector3 turnRad) {
    double[] turn = turns[body];
    double[] shift = shifts[body];
    return new BodyPose(
        name,
        turnRad,
        vector(Rotation.column(turn, 0)),
        vector(Rotation.column(turn, 1)),
        vector(Rotation.column(turn, 2)),
        vector(shift));
  }

  private static Vector3 vector(double[] three) {
    return new Vector3(three[0], three[1], three[2]);
  }

  /** Where a point of a body stands now. */
  double[] at(int body, Point3 atRide) {
    double[] turned = Rotation.turned(turns[body], array(atRide));
    double[] shift = shifts[body];
    return new double[] {turned[0] + shift[0], turned[1] + shift[1], turned[2] + shift[2]};
  }

  /** How a point that moves with a body moves with a coordinate (mm per mm). */
  double[] velocity(int body, double[] now, int column) {
    if (!coordinates.moves(body, column)) {
      return new double[3];
    }
    return centres[column] == null
        ? axes[column]
        : Rotation.cross(axes[column], Rotation.minus(now, centres[column]));
  }

  /** How a body turns with a coordinate (rad per mm). */
  double[] spin(int body, int column) {
    return coordinates.moves(body, column) && centres[column] != null
        ? axes[column]
        : new double[3];
  }
}
