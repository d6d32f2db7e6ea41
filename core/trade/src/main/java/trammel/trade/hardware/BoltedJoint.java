package trammel.trade.hardware;

import trammel.trade.given.Dimension;

/**
 * What a bolt goes through.
 *
 * @param thread the bolt's thread
 * @param gripMm everything clamped but the washers: bracket plates, sleeve, spacers
 * @param washers number of washers, head and nut together
 * @param washerMm thickness of each
 * @param nutMm height of the nut
 */
public record BoltedJoint(
    ScrewThread thread, double gripMm, int washers, double washerMm, double nutMm) {
  /** Threads that must show beyond the nut: common practice, no source. */
  private static final double SHOWING_THREADS = 2.0;

  private static final int MOST_WASHERS = 10;

  public BoltedJoint {
    Dimension.positiveMm("grip", gripMm);
    Dimension.count("number of washers", washers, 0, MOST_WASHERS);
    if (washers > 0) {
      Dimension.positiveMm("washer thickness", washerMm);
    }
    Dimension.positiveMm("nut height", nutMm);
  }

  /** Length under the head that leaves two threads beyond the nut. */
  public double neededLengthMm() {
    return stackMm() + SHOWING_THREADS * thread.pitchMm();
  }

  private double stackMm() {
    return gripMm + washers * washerMm + nutMm;
  }

  /** The bolt to take from stock: never shorter than needed. */
  public BoltChoice choose(StockedLengths stocked) {
    double lengthMm = stocked.atLeastMm(neededLengthMm());
    return new BoltChoice(thread, lengthMm, lengthMm - stackMm());
  }
}
