package trammel.planning.job;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What the frame rails are made of. */
public enum RailSteel {
  /** Mild steel. */
  MILD("mild"),
  /** High-strength low-alloy steel as rolled. */
  HIGH_STRENGTH("high-strength"),
  /** Quenched and tempered: it loses its strength where it is cut hot or welded. */
  HEAT_TREATED("heat-treated");

  private final String word;

  RailSteel(String word) {
    this.word = word;
  }

  /** The word in a job file; {@code not-known} stands for none of them. */
  public String word() {
    return word;
  }

  static List<String> words() {
    return List.of(MILD.word, HIGH_STRENGTH.word, HEAT_TREATED.word, "not-known");
  }

  static Optional<RailSteel> ofWord(String word) {
    return Arrays.stream(values()).filter(steel -> steel.word.equals(word)).findFirst();
  }
}
