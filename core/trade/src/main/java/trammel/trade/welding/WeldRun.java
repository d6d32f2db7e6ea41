package trammel.trade.welding;

/** One weld of a line of the weld list, as long as the path that it runs along. */
public interface WeldRun {
  /** Length of the weld, mm; 0 for a plug or slot. */
  double lengthMm();

  /** A weld by itself, on no vehicle: for a bench figure. */
  static WeldRun ofLength(double lengthMm) {
    return new BenchRun(lengthMm);
  }
}
