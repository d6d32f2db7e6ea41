package trammel.trade.hardware;

/**
 * A bolt out of stock for one joint.
 *
 * @param thread its thread
 * @param lengthMm length under the head
 * @param beyondNutMm what stands out beyond the nut
 */
public record BoltChoice(ScrewThread thread, double lengthMm, double beyondNutMm) {
  /** Threads showing beyond the nut. */
  public double threadsShowing() {
    return beyondNutMm / thread.pitchMm();
  }
}
