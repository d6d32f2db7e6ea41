package trammel.plugins.wattslinkage;

import trammel.assembly.Solid;
import trammel.assembly.Turned;

/**
 * The bush on which the rocker turns, of the size that the catalog has: a shell that is welded into
 * both rocker plates, and in it a bushed sleeve that the pivot bolt clamps. Shell and sleeve are
 * bought long and cut to length.
 */
final class PivotBush {
  /** Key of the catalog's item. */
  static final String ITEM = "pivot-bush";

  /** Outside radius of the shell, 1 in: the size of the catalog's item (mm). */
  static final double SHELL_RADIUS_MM = 25.4;

  /** Bolt through the sleeve, 5/8 in (mm). */
  static final double BOLT_MM = 0.625 * 25.4;

  /** Metal of the rocker plate round the shell, 1/2 in: common practice, no source (mm). */
  static final double RIM_MM = 12.7;

  /** Outside radius of the sleeve, 1/2 in: the size of the catalog's item (mm). */
  private static final double SLEEVE_RADIUS_MM = 12.7;

  /** The shell is shorter than its sleeve at each end, 1/16 in: common practice, no source (mm). */
  private static final double RUNNING_MM = 25.4 / 16;

  private PivotBush() {}

  /** Radius of the rocker plate about the pivot (mm). */
  static double bossMm() {
    return SHELL_RADIUS_MM + RIM_MM;
  }

  /** Its form from z = 0 on, as long as its sleeve is cut. */
  static Solid solid(double sleeveMm) {
    double boltMm = BOLT_MM / 2;
    return Turned.through(
        boltMm,
        0,
        SLEEVE_RADIUS_MM,
        0,
        SLEEVE_RADIUS_MM,
        RUNNING_MM,
        SHELL_RADIUS_MM,
        RUNNING_MM,
        SHELL_RADIUS_MM,
        sleeveMm - RUNNING_MM,
        SLEEVE_RADIUS_MM,
        sleeveMm - RUNNING_MM,
        SLEEVE_RADIUS_MM,
        sleeveMm,
        boltMm,
        sleeveMm);
  }
}
