package trammel.cutting.sheets;

/** The shortest strip found so far, shared by searches side by side. */
final class StripBest {
  private final SheetModel model;
  private final int lowest;
  private Layout layout;
  private volatile int top = Integer.MAX_VALUE;

  /**
   * @param lowest no strip is shorter, in steps
   */
  StripBest(SheetModel model, int lowest) {
    this.model = model;
    this.lowest = lowest;
  }

  /** Keeps a layout that is shorter than the best; null is no layout. */
  synchronized void offer(Layout offered) {
    if (offered != null && offered.top(model) < top) {
      layout = offered.copy();
      top = layout.top(model);
    }
  }

  synchronized Layout layout() {
    return layout;
  }

  /** Length of the best, in steps; the largest integer while there is none. */
  int top() {
    return top;
  }

  int lowest() {
    return lowest;
  }

  boolean isOptimal() {
    return top <= lowest;
  }
}
