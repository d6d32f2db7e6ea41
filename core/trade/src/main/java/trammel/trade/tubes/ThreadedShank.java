package trammel.trade.tubes;

import trammel.trade.given.Dimension;
import trammel.trade.hardware.ScrewThread;

/**
 * A joint on a threaded shank, with its jam nut.
 *
 * @param name as it is ordered
 * @param thread thread of the shank
 * @param shankMm from the joint's centre to the tip of the shank
 * @param threadLengthMm usable thread, from the tip
 * @param jamNutMm height of the jam nut
 */
public record ThreadedShank(
    String name, ScrewThread thread, double shankMm, double threadLengthMm, double jamNutMm) {
  public ThreadedShank {
    Dimension.text("joint name", name);
    Dimension.positiveMm("shank of " + name, shankMm);
    Dimension.positiveMm("thread length of " + name, threadLengthMm);
    Dimension.atMostMm(
        "thread length of " + name,
        threadLengthMm,
        shankMm,
        "Measure the shank from the joint's centre to the tip.");
    Dimension.positiveMm("jam nut of " + name, jamNutMm);
  }

  /** From the joint's centre to where the thread begins. */
  double neckMm() {
    return shankMm - threadLengthMm;
  }
}
