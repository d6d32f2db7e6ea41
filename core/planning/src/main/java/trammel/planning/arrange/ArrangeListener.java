package trammel.planning.arrange;

/** Watches a search and may end it. Called by any of its threads. */
public interface ArrangeListener {
  /** Watches nothing and never ends it. */
  ArrangeListener NONE = progress -> {};

  /** How far the search is. */
  void progress(Progress progress);

  /** Whether the search is to end with the best so far. */
  default boolean isStopped() {
    return false;
  }

  /**
   * How far a search is.
   *
   * @param tried layouts tried so far
   * @param effort layouts that may be tried
   * @param passing kinds of layout found so far that pass every check
   */
  record Progress(int tried, int effort, int passing) {}
}
