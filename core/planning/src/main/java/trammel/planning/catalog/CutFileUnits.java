package trammel.planning.catalog;

import java.util.List;
import java.util.stream.Stream;
import trammel.reading.quantity.UnitSystem;

/** In which units a shop's cutting table is given its files. */
public enum CutFileUnits {
  /** Millimetres, whatever the job is in. */
  MILLIMETRES("mm"),
  /** Inches, whatever the job is in. */
  INCHES("inch"),
  /** Inches for a job in US units, millimetres for a metric one. */
  BY_JOB("job");

  private final String word;

  CutFileUnits(String word) {
    this.word = word;
  }

  /** The word in a catalog. */
  public String word() {
    return word;
  }

  static List<String> words() {
    return Stream.of(values()).map(CutFileUnits::word).toList();
  }

  static CutFileUnits ofWord(String word) {
    return Stream.of(values()).filter(one -> one.word.equals(word)).findFirst().orElseThrow();
  }

  /** Whether the files of a job in these units are in inches, and not in millimetres. */
  public boolean areInches(UnitSystem job) {
    return this == INCHES || this == BY_JOB && job == UnitSystem.US;
  }
}
