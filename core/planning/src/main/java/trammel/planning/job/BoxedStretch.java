package trammel.planning.job;

import trammel.engine.quantity.Given;

/**
 * The stretch over which both rails are to be closed, whatever mounts ask for by themselves.
 *
 * @param behindMm where it ends, behind the axle (mm), 0 to 3,048
 * @param aheadMm where it ends, ahead of the axle (mm), above 0 and up to 3,048
 */
public record BoxedStretch(double behindMm, double aheadMm) {
  static final double MOST_MM = 120 * 25.4;

  /** Refuses a stretch that does not lie about the axle. */
  public BoxedStretch {
    Given.within("boxing behind the axle (mm)", behindMm, 0, MOST_MM);
    Given.within("boxing ahead of the axle (mm)", aheadMm, Double.MIN_NORMAL, MOST_MM);
  }
}
