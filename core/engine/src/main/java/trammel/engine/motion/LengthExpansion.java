package trammel.engine.motion;

import trammel.engine.geometry.Point3;

/**
 * Length between a point of the body and a point of the axle, with its exact first and second
 * derivatives by all six freedoms of the axle. Order of the freedoms: forward, lateral, yaw, pitch
 * (the free ones), heave, roll; angles are multiplied by the lever, so that every freedom is in mm.
 */
final class LengthExpansion {

  static final int FREE = 4;
  static final int HEAVE = 4;
  static final int ROLL = 5;
  static final int FREEDOMS = 6;

  private static final int[] ANGLES = {2, 3, 5};

  final double[] gradient = new double[FREEDOMS];
  final double[][] hessian = new double[FREEDOMS][FREEDOMS];
  double lengthMm;

  private final double leverMm;

  // Turned arm (row 0) and its derivatives by yaw, pitch and roll (rows 1 to 3).
  private final double[][] arm = new double[4][3];
  private final double[] reach = new double[3];
  private final double[] second = new double[3];
  private final double[] upAxis = {0, 0, 1};
  private final double[] rollAxis = new double[3];
  private final double[] pitchAxis = new double[3];
  private final double[] matrix = new double[9];
  private double heaveMm;
  private double forwardMm;
  private double lateralMm;

  LengthExpansion(double leverMm) {
    this.leverMm = leverMm;
  }

  /** Puts the axle where the following lengths are wanted. */
  void place(
      double heaveMm,
      double rollRad,
      double forwardMm,
      double lateralMm,
      double yawRad,
      double pitchRad) {
    this.heaveMm = heaveMm;
    this.forwardMm = forwardMm;
    this.lateralMm = lateralMm;
    double sinYaw = Math.sin(yawRad);
    double cosYaw = Math.cos(yawRad);
    double sinRoll = Math.sin(rollRad);
    double cosRoll = Math.cos(rollRad);
    double sinPitch = Math.sin(pitchRad);
    double cosPitch = Math.cos(pitchRad);
    double normalX = sinYaw * sinRoll;
    double normalY = -cosYaw * sinRoll;
    set(rollAxis, cosYaw, sinYaw, 0);
    // Nose up is a turn about the axle line's opposite.
    set(pitchAxis, sinYaw * cosRoll, -cosYaw * cosRoll, -sinRoll);
    matrix[0] = cosPitch * cosYaw + sinPitch * normalX;
    matrix[1] = -pitchAxis[0];
    matrix[2] = cosPitch * normalX - sinPitch * cosYaw;
    matrix[3] = cosPitch * sinYaw + sinPitch * normalY;
    matrix[4] = -pitchAxis[1];
    matrix[5] = cosPitch * normalY - sinPitch * sinYaw;
    matrix[6] = sinPitch * cosRoll;
    matrix[7] = sinRoll;
    matrix[8] = cosPitch * cosRoll;
  }

  void place(AxlePose pose) {
    place(
        pose.heaveMm(),
        pose.rollRad(),
        pose.forwardMm(),
        pose.lateralMm(),
        pose.yawRad(),
        pose.pitchNoseUpRad());
  }

  /** Works out length and derivatives between a frame point and an axle point, both at ride. */
  void expand(Point3 frame, Point3 axle, double loadedRadiusMm) {
    expand(
        frame.xMm(),
        frame.yMm(),
        frame.zMm() - loadedRadiusMm,
        axle.xMm(),
        axle.yMm(),
        axle.zMm() - loadedRadiusMm);
  }

  /** Both points are given from the axle's middle at ride. */
  void expand(double fx, double fy, double fz, double sx, double sy, double sz) {
    for (int k = 0; k < 3; k++) {
      arm[0][k] = matrix[3 * k] * sx + matrix[3 * k + 1] * sy + matrix[3 * k + 2] * sz;
    }
    cross(upAxis, arm[0], arm[1]);
    cross(pitchAxis, arm[0], arm[2]);
    cross(rollAxis, arm[0], arm[3]);
    set(reach, forwardMm - fx, lateralMm - fy, heaveMm - fz);
    fillHalfSquare();
    divideByLength();
  }

  /** Derivatives of half the squared length. */
  private void fillHalfSquare() {
    double vx = reach[0] + arm[0][0];
    double vy = reach[1] + arm[0][1];
    double vz = reach[2] + arm[0][2];
    lengthMm = Math.sqrt(vx * vx + vy * vy + vz * vz);
    gradient[0] = vx;
    gradient[1] = vy;
    gradient[HEAVE] = vz;
    for (int a = 0; a < 3; a++) {
      int angle = ANGLES[a];
      gradient[angle] = dot(reach, arm[a + 1]) / leverMm;
      put(0, angle, arm[a + 1][0] / leverMm);
      put(1, angle, arm[a + 1][1] / leverMm);
      put(HEAVE, angle, arm[a + 1][2] / leverMm);
    }
    put(0, 0, 1);
    put(1, 1, 1);
    put(HEAVE, HEAVE, 1);
    put(0, 1, 0);
    put(0, HEAVE, 0);
    put(1, HEAVE, 0);
    // The outer rotation of a pair turns the derivative by the inner one: yaw, then roll, then
    // pitch.
    putAngles(2, 2, upAxis, arm[1]);
    putAngles(2, 3, upAxis, arm[2]);
    putAngles(2, ROLL, upAxis, arm[3]);
    putAngles(ROLL, ROLL, rollAxis, arm[3]);
    putAngles(ROLL, 3, rollAxis, arm[2]);
    putAngles(3, 3, pitchAxis, arm[2]);
  }

  private void putAngles(int i, int j, double[] outerAxis, double[] innerDerivative) {
    cross(outerAxis, innerDerivative, second);
    put(i, j, dot(reach, second) / (leverMm * leverMm));
  }

  private void divideByLength() {
    for (int i = 0; i < FREEDOMS; i++) {
      gradient[i] /= lengthMm;
    }
    for (int i = 0; i < FREEDOMS; i++) {
      for (int j = 0; j < FREEDOMS; j++) {
        hessian[i][j] = (hessian[i][j] - gradient[i] * gradient[j]) / lengthMm;
      }
    }
  }

  private void put(int i, int j, double value) {
    hessian[i][j] = value;
    hessian[j][i] = value;
  }

  private static void set(double[] vector, double x, double y, double z) {
    vector[0] = x;
    vector[1] = y;
    vector[2] = z;
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  private static void cross(double[] a, double[] b, double[] into) {
    set(into, a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]);
  }
}
