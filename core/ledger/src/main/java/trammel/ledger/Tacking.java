package trammel.ledger;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import trammel.engine.quantity.Given;
import trammel.planning.fitup.TackVerdict;

/**
 * What was read after tacking, and what that told the shop to do.
 *
 * @param job the shop's number of the job
 * @param count which entry of the job it is, from 1
 * @param tackedOn the day
 * @param form tells the fit-up form of one plan of the job from that of another
 * @param answer what was to be done by all readings of this form until then
 * @param said the words that went with the answer, one line each
 * @param readings what was read since the entry before of the same form; of the first, everything
 */
public record Tacking(
    String job,
    int count,
    LocalDate tackedOn,
    String form,
    TackVerdict answer,
    List<String> said,
    List<Reading> readings) {
  private static final int MOST_READINGS = 10_000;

  /** What a spreadsheet may leave off a number when it saves one again (mm or rad). */
  private static final double SAME = 1e-6;

  public Tacking {
    Given.text("number of a job", job, "Give the shop's number.");
    Given.count("entry of job " + job, count, 1, 1_000_000, "Count from 1.");
    Given.text("form of job " + job, form, "Give the mark of the fit-up form.");
    said = List.copyOf(said);
    readings = List.copyOf(readings);
    Given.count("readings of job " + job, readings.size(), 0, MOST_READINGS, "Give fewer.");
    Set<String> targets = new HashSet<>();
    for (Reading reading : readings) {
      if (!targets.add(reading.target)) {
        throw new IllegalArgumentException(
            "The target "
                + reading.target
                + " was given twice in one entry; allowed is once. Put its repeats together.");
      }
    }
  }

  /** True if the other says the same, as far as numbers can be told apart. */
  public boolean isSame(Tacking other) {
    if (readings.size() != other.readings.size()) {
      return false;
    }
    for (int i = 0; i < readings.size(); i++) {
      if (!readings.get(i).isSame(other.readings.get(i))) {
        return false;
      }
    }
    return other.equals(new Tacking(job, count, tackedOn, form, answer, said, other.readings));
  }

  /** What is read: millimetres or radians. */
  public enum Kind {
    LENGTH,
    ANGLE;

    /** As it is written in the file. */
    String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * What was read of one target.
   *
   * @param target its name on the fit-up sheet
   * @param kind a length or an angle
   * @param planned what was to be set (mm or rad)
   * @param within how far off it may be (mm or rad)
   * @param values every time it was read (mm or rad); none where a reading was taken back
   */
  public record Reading(
      String target, Kind kind, double planned, double within, List<Double> values) {
    private static final double FARTHEST = 1e5;

    public Reading {
      Given.text("name of a target", target, "Use the name on the fit-up sheet.");
      Given.within("value of target " + target, planned, -FARTHEST, FARTHEST, "", "Check it.");
      Given.positive("tolerance of target " + target, within, 1e3, "", "Give one.");
      values = List.copyOf(values);
      for (double value : values) {
        Given.within("reading of " + target, value, -FARTHEST, FARTHEST, "", "Measure it again.");
      }
    }

    /** True if the other says the same, as far as numbers can be told apart. */
    public boolean isSame(Reading other) {
      boolean same =
          target.equals(other.target)
              && kind == other.kind
              && isSame(planned, other.planned)
              && isSame(within, other.within)
              && values.size() == other.values.size();
      for (int i = 0; same && i < values.size(); i++) {
        same = isSame(values.get(i), other.values.get(i));
      }
      return same;
    }

    private static boolean isSame(double one, double other) {
      return Math.abs(one - other) <= SAME;
    }
  }
}
