package trammel.planning.fitup;

import java.util.Arrays;
import java.util.Optional;

/** What to do with what is tacked. */
public enum TackVerdict {
  /** Every bracket is where it belongs and no check says stop. */
  WELD("weld"),
  /** The readings do not agree or do not say enough. */
  MEASURE_AGAIN("measure again"),
  /** A bracket is out of place. */
  RE_SET("re-set"),
  /** The brackets are where the plan puts them, and the plan itself has a check that says stop. */
  CHANGE_THE_PLAN("change the plan");

  private final String words;

  TackVerdict(String words) {
    this.words = words;
  }

  /** The one of these words; empty if none is. */
  public static Optional<TackVerdict> named(String words) {
    return Arrays.stream(values()).filter(one -> one.words.equals(words)).findFirst();
  }

  /** In words. */
  public String words() {
    return words;
  }
}
