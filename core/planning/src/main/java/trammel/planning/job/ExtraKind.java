package trammel.planning.job;

import java.util.Arrays;
import java.util.List;

/** What a line of a job's own is. */
public enum ExtraKind {
  /** Work by so many hours. */
  HOURS("hours"),
  /** Work by an operation of the catalog. */
  OPERATION("operation"),
  /** A part that the shop buys. */
  PART("part"),
  /** Work that is done outside the shop. */
  OUTSIDE_WORK("outside-work"),
  /** Money taken off the price. */
  CREDIT("credit"),
  /** A part that the customer brings; it costs nothing and is fitted without warranty. */
  CUSTOMERS_PART("customers-part");

  private final String word;

  ExtraKind(String word) {
    this.word = word;
  }

  /** How files write it. */
  public String word() {
    return word;
  }

  static List<String> words() {
    return Arrays.stream(values()).map(ExtraKind::word).toList();
  }

  static ExtraKind ofWord(String word) {
    return Arrays.stream(values())
        .filter(kind -> kind.word.equals(word))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no kind of extra '" + word + "'"));
  }
}
