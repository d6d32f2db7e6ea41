package trammel.trade.hardware;

/** The two families of 60-degree screw threads. */
public enum ThreadForm {
  /** Unified inch threads: stress diameter D - 0.9743 P (SAE J429; ASME B1.1). */
  UNIFIED(0.9743),
  /** ISO metric threads: stress diameter D - 0.9382 P (ISO 898-1, from memory). */
  METRIC(0.9382);

  private final double stressDepthFactor;

  ThreadForm(double stressDepthFactor) {
    this.stressDepthFactor = stressDepthFactor;
  }

  double stressDepthFactor() {
    return stressDepthFactor;
  }
}
