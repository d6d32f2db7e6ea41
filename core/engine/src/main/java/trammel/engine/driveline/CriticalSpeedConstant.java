package trammel.engine.driveline;

/**
 * Published constants C of the critical speed of a steel tube shaft, N = C √(D² + d²)/L². They
 * differ by 2 %; the choice here is {@link #JOINT_SELECTION_GRAPH}, the one met most often in the
 * trade, and the share of it that may be used covers the difference many times.
 */
public enum CriticalSpeedConstant {
  /** 4.8e6 in inches. Source: SAE joint selection graph, as a joint supplier prints it. */
  JOINT_SELECTION_GRAPH(4.8e6 * 25.4),

  /** 1.21e8 in millimetres. Source: the same supplier, metric form. */
  JOINT_SELECTION_GRAPH_METRIC(1.21e8),

  /** 4.705e6 in inches. Source: driveline handbook, from memory. */
  HANDBOOK(4.705e6 * 25.4);

  private final double valueRpmMm;

  CriticalSpeedConstant(double valueRpmMm) {
    this.valueRpmMm = valueRpmMm;
  }

  /**
   * The constant.
   *
   * @return C, rev/min times mm
   */
  public double valueRpmMm() {
    return valueRpmMm;
  }
}
