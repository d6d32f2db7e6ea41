package trammel.cutting.outlines;

/** The shortest strip without overlap so far, shared by the threads of a search; mm. */
final class StripRecord {
  private final Nest best;
  private volatile double length;

  StripRecord(Nest first) {
    this.best = first.copy();
    this.length = first.reach();
  }

  double length() {
    return length;
  }

  /** Takes a nest without overlap if it is shorter. */
  synchronized void offer(Nest nest) {
    double reach = nest.reach();
    if (reach < length) {
      best.copyFrom(nest);
      length = reach;
    }
  }

  /** Takes another record if it is shorter; that one must be at rest. */
  void offer(StripRecord other) {
    offer(other.best);
  }

  /** Puts the record into a nest, on a strip just long enough. */
  synchronized void copyTo(Nest nest) {
    nest.copyFrom(best);
    nest.sheetWidth[0] = length;
  }
}
