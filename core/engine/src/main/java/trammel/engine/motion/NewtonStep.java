package trammel.engine.motion;

/**
 * One Newton step towards the pose of given heave and roll. With {@code m} from the frame pivot to
 * the axle's middle and {@code r} the turned arm of the axle pivot, half the squared length of a
 * link is {@code (m.m + r.r)/2 + m.r}, whose derivatives need no division: by an angle {@code i}
 * they are {@code m.r_i}, and {@code r_i} is a vector product of the angle's axis with {@code r}.
 *
 * <p>The code is one long line of plain doubles on purpose: this is what a travel grid, a
 * sensitivity table and a Monte Carlo run spend their time in.
 */
final class NewtonStep {

  private final LinkTable table;
  private final double[] values;
  private final int end;
  private final double perLever;
  private final boolean exact;

  NewtonStep(LinkTable table) {
    this.table = table;
    values = table.values;
    end = table.count * LinkTable.WIDTH;
    perLever = 1 / table.leverMm;
    exact = table.count == Linkage.FEWEST_LINKS;
  }

  /** Moves the position by one step and returns the step's largest component (mm). */
  double advance(FreePosition at, double heaveMm, double sinRoll, double cosRoll) {
    return exact
        ? advanceClosing(at, heaveMm, sinRoll, cosRoll)
        : advanceYielding(at, heaveMm, sinRoll, cosRoll);
  }

  /** Four links: their four lengths are the equations. */
  private double advanceClosing(FreePosition at, double heaveMm, double sinRoll, double cosRoll) {
    double yaw = at.yawMm * perLever;
    double pitch = at.pitchMm * perLever;
    double sinYaw = SmallAngle.sin(yaw);
    double cosYaw = SmallAngle.cos(yaw);
    double sinPitch = SmallAngle.sin(pitch);
    double cosPitch = SmallAngle.cos(pitch);
    double normalX = sinYaw * sinRoll;
    double normalY = -cosYaw * sinRoll;
    double xx = cosPitch * cosYaw + sinPitch * normalX;
    double yx = cosPitch * sinYaw + sinPitch * normalY;
    double zx = sinPitch * cosRoll;
    double xy = -sinYaw * cosRoll;
    double yy = cosYaw * cosRoll;
    double xz = cosPitch * normalX - sinPitch * cosYaw;
    double yz = cosPitch * normalY - sinPitch * sinYaw;
    double zz = cosPitch * cosRoll;
    double x = at.forwardMm;
    double y = at.lateralMm;
    double[] v = values;
    double[] rows = at.rows;
    for (int i = 0, row = 0; row < 20; i += LinkTable.WIDTH, row += 5) {
      double sx = v[i + LinkTable.ARM_X];
      double sy = v[i + LinkTable.ARM_Y];
      double sz = v[i + LinkTable.ARM_Z];
      double rx = xx * sx + xy * sy + xz * sz;
      double ry = yx * sx + yy * sy + yz * sz;
      double rz = zx * sx + sinRoll * sy + zz * sz;
      double mx = x - v[i + LinkTable.FRAME_X];
      double my = y - v[i + LinkTable.FRAME_Y];
      double mz = heaveMm - v[i + LinkTable.FRAME_Z];
      rows[row] = mx + rx;
      rows[row + 1] = my + ry;
      rows[row + 2] = (my * rx - mx * ry) * perLever;
      rows[row + 3] =
          (mx * (xz * sx - xx * sz) + my * (yz * sx - yx * sz) + mz * (zz * sx - zx * sz))
              * perLever;
      rows[row + 4] =
          -(0.5 * (mx * mx + my * my + mz * mz)
              + (mx * rx + my * ry + mz * rz)
              + v[i + LinkTable.OFFSET]);
    }
    return solveFour(at);
  }

  /** Cramer's rule by pairs of columns; the determinant comes with it. */
  private static double solveFour(FreePosition at) {
    double[] m = at.rows;
    double a0 = m[0];
    double b0 = m[1];
    double c0 = m[2];
    double d0 = m[3];
    double e0 = m[4];
    double a1 = m[5];
    double b1 = m[6];
    double c1 = m[7];
    double d1 = m[8];
    double e1 = m[9];
    double a2 = m[10];
    double b2 = m[11];
    double c2 = m[12];
    double d2 = m[13];
    double e2 = m[14];
    double a3 = m[15];
    double b3 = m[16];
    double c3 = m[17];
    double d3 = m[18];
    double e3 = m[19];

    double ab01 = a0 * b1 - a1 * b0;
    double ab02 = a0 * b2 - a2 * b0;
    double ab03 = a0 * b3 - a3 * b0;
    double ab12 = a1 * b2 - a2 * b1;
    double ab13 = a1 * b3 - a3 * b1;
    double ab23 = a2 * b3 - a3 * b2;
    double cd01 = c0 * d1 - c1 * d0;
    double cd02 = c0 * d2 - c2 * d0;
    double cd03 = c0 * d3 - c3 * d0;
    double cd12 = c1 * d2 - c2 * d1;
    double cd13 = c1 * d3 - c3 * d1;
    double cd23 = c2 * d3 - c3 * d2;
    double determinant =
        ab01 * cd23 - ab02 * cd13 + ab03 * cd12 + ab12 * cd03 - ab13 * cd02 + ab23 * cd01;
    at.determinant = determinant;
    double inverse = 1 / determinant;

    double ea =
        (e0 * b1 - e1 * b0) * cd23
            - (e0 * b2 - e2 * b0) * cd13
            + (e0 * b3 - e3 * b0) * cd12
            + (e1 * b2 - e2 * b1) * cd03
            - (e1 * b3 - e3 * b1) * cd02
            + (e2 * b3 - e3 * b2) * cd01;
    double eb =
        (a0 * e1 - a1 * e0) * cd23
            - (a0 * e2 - a2 * e0) * cd13
            + (a0 * e3 - a3 * e0) * cd12
            + (a1 * e2 - a2 * e1) * cd03
            - (a1 * e3 - a3 * e1) * cd02
            + (a2 * e3 - a3 * e2) * cd01;
    double ec =
        ab01 * (e2 * d3 - e3 * d2)
            - ab02 * (e1 * d3 - e3 * d1)
            + ab03 * (e1 * d2 - e2 * d1)
            + ab12 * (e0 * d3 - e3 * d0)
            - ab13 * (e0 * d2 - e2 * d0)
            + ab23 * (e0 * d1 - e1 * d0);
    double ed =
        ab01 * (c2 * e3 - c3 * e2)
            - ab02 * (c1 * e3 - c3 * e1)
            + ab03 * (c1 * e2 - c2 * e1)
            + ab12 * (c0 * e3 - c3 * e0)
            - ab13 * (c0 * e2 - c2 * e0)
            + ab23 * (c0 * e1 - c1 * e0);
    return at.advance(ea * inverse, eb * inverse, ec * inverse, ed * inverse);
  }

  /** More than four links: the gradient of their energy vanishes; exact second derivatives. */
  private double advanceYielding(FreePosition at, double heaveMm, double sinRoll, double cosRoll) {
    double yaw = at.yawMm * perLever;
    double pitch = at.pitchMm * perLever;
    double sinYaw = SmallAngle.sin(yaw);
    double cosYaw = SmallAngle.cos(yaw);
    double sinPitch = SmallAngle.sin(pitch);
    double cosPitch = SmallAngle.cos(pitch);
    double normalX = sinYaw * sinRoll;
    double normalY = -cosYaw * sinRoll;
    double xx = cosPitch * cosYaw + sinPitch * normalX;
    double yx = cosPitch * sinYaw + sinPitch * normalY;
    double zx = sinPitch * cosRoll;
    double xy = -sinYaw * cosRoll;
    double yy = cosYaw * cosRoll;
    double xz = cosPitch * normalX - sinPitch * cosYaw;
    double yz = cosPitch * normalY - sinPitch * sinYaw;
    double zz = cosPitch * cosRoll;
    double x = at.forwardMm;
    double y = at.lateralMm;
    double scale = perLever;
    double g0 = 0;
    double g1 = 0;
    double g2 = 0;
    double g3 = 0;
    double h00 = 0;
    double h10 = 0;
    double h11 = 0;
    double h20 = 0;
    double h21 = 0;
    double h22 = 0;
    double h30 = 0;
    double h31 = 0;
    double h32 = 0;
    double h33 = 0;
    double[] v = values;
    for (int i = 0; i < end; i += LinkTable.WIDTH) {
      double sx = v[i + LinkTable.ARM_X];
      double sy = v[i + LinkTable.ARM_Y];
      double sz = v[i + LinkTable.ARM_Z];
      double rx = xx * sx + xy * sy + xz * sz;
      double ry = yx * sx + yy * sy + yz * sz;
      double rz = zx * sx + sinRoll * sy + zz * sz;
      double px = (xz * sx - xx * sz) * scale;
      double py = (yz * sx - yx * sz) * scale;
      double pz = (zz * sx - zx * sz) * scale;
      double mx = x - v[i + LinkTable.FRAME_X];
      double my = y - v[i + LinkTable.FRAME_Y];
      double mz = heaveMm - v[i + LinkTable.FRAME_Z];
      double vx = mx + rx;
      double vy = my + ry;
      double vz = mz + rz;
      double lengthMm = Math.sqrt(vx * vx + vy * vy + vz * vz);
      double inverse = 1 / lengthMm;
      double weight = v[i + LinkTable.WEIGHT];
      double stretch = weight * (lengthMm - v[i + LinkTable.LENGTH]);
      // Second derivatives: curved * (of half the squared length) + straight * J J'.
      double curved = stretch * inverse;
      double straight = weight - curved;
      double qx = rx * scale;
      double qy = ry * scale;
      double j0 = vx * inverse;
      double j1 = vy * inverse;
      double j2 = (my * qx - mx * qy) * inverse;
      double j3 = (mx * px + my * py + mz * pz) * inverse;
      double s0 = straight * j0;
      double s1 = straight * j1;
      double s2 = straight * j2;
      double s3 = straight * j3;
      g0 -= stretch * j0;
      g1 -= stretch * j1;
      g2 -= stretch * j2;
      g3 -= stretch * j3;
      h00 += curved + s0 * j0;
      h10 += s1 * j0;
      h11 += curved + s1 * j1;
      h20 += s2 * j0 - curved * qy;
      h21 += s2 * j1 + curved * qx;
      h22 += s2 * j2 - curved * scale * (mx * qx + my * qy);
      h30 += s3 * j0 + curved * px;
      h31 += s3 * j1 + curved * py;
      h32 += s3 * j2 + curved * scale * (my * px - mx * py);
      h33 +=
          s3 * j3
              + curved
                  * scale
                  * (sy * scale * (mx * xy + my * yy + mz * sinRoll)
                      - (mx * qx + my * qy + mz * rz * scale));
    }
    // L D L' without square roots.
    double i0 = 1 / h00;
    double l10 = h10 * i0;
    double l20 = h20 * i0;
    double l30 = h30 * i0;
    double d1 = h11 - l10 * h10;
    double i1 = 1 / d1;
    double w21 = h21 - l20 * h10;
    double w31 = h31 - l30 * h10;
    double l21 = w21 * i1;
    double l31 = w31 * i1;
    double d2 = h22 - l20 * h20 - l21 * w21;
    double i2 = 1 / d2;
    double w32 = h32 - l30 * h20 - l31 * w21;
    double l32 = w32 * i2;
    double d3 = h33 - l30 * h30 - l31 * w31 - l32 * w32;
    double y1 = g1 - l10 * g0;
    double y2 = g2 - l20 * g0 - l21 * y1;
    double y3 = g3 - l30 * g0 - l31 * y1 - l32 * y2;
    double z3 = y3 / d3;
    double z2 = y2 * i2 - l32 * z3;
    double z1 = y1 * i1 - l21 * z2 - l31 * z3;
    double z0 = g0 * i0 - l10 * z1 - l20 * z2 - l30 * z3;
    // A pivot that is not positive means no minimum of the energy: say so by a negative product.
    boolean minimum = h00 > 0 && d1 > 0 && d2 > 0 && d3 > 0;
    double product = h00 * d1 * d2 * d3;
    at.determinant = minimum ? product : -Math.abs(product);
    return at.advance(z0, z1, z2, z3);
  }

  LinkTable table() {
    return table;
  }
}
