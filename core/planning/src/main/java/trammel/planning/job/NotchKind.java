package trammel.planning.job;

import java.util.Arrays;
import java.util.List;

/** How the side plates of a notch over the axle stand to the rail. */
public enum NotchKind {
  /** They end with the top of the rail. */
  FLUSH("flush"),
  /** They rise above it, as far as the section asks for. */
  RAISED("raised");

  private final String word;

  NotchKind(String word) {
    this.word = word;
  }

  /** The word in a job file. */
  public String word() {
    return word;
  }

  /** The words to choose from. */
  public static List<String> words() {
    return Arrays.stream(values()).map(NotchKind::word).toList();
  }

  /** The kind of one of the words. */
  static NotchKind ofWord(String word) {
    return Arrays.stream(values()).filter(kind -> kind.word.equals(word)).findFirst().orElseThrow();
  }
}
