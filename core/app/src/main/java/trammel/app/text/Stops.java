package trammel.app.text;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import trammel.engine.checks.CheckResult;
import trammel.engine.checks.CheckResult.Judged;
import trammel.engine.checks.Verdict;
import trammel.planning.catalog.PlanCheck;

/**
 * What the checks of one or more jobs say stop to, in the words that stand on a screen, on every
 * paper and in every file of theirs.
 *
 * @param all every stop, the worst of each job first
 */
public record Stops(List<Stop> all) {
  /** Nothing says stop. */
  public static final Stops NONE = new Stops(List.of());

  /** What stands over them. */
  public static final String HEADLINE =
      "STOP: to be solved before work begins. The checks of this layout say:";

  /** Copies the list. */
  public Stops {
    all = List.copyOf(all);
  }

  /**
   * One check that says stop.
   *
   * @param job number of the job
   * @param check id of the check
   * @param words the number, what it is and where, then its limit
   */
  public record Stop(String job, String check, String words) {}

  /**
   * The stops of a job.
   *
   * @param job its number
   * @param results its checks
   * @param amounts prints values in the reader's units
   */
  public static Stops of(String job, List<CheckResult> results, Amounts amounts) {
    List<Stop> found = new ArrayList<>();
    for (CheckResult result : results) {
      if (result instanceof Judged judged && judged.verdict() == Verdict.STOP) {
        String words = finding(judged, " ", amounts) + "; " + limit(judged, amounts);
        found.add(new Stop(job, judged.id(), words));
      }
    }
    return new Stops(found);
  }

  /** The number that a check found, what it is of, and where. */
  static String finding(Judged judged, String gap, Amounts amounts) {
    return amounts.value(judged.measure(), judged.value())
        + gap
        + title(judged)
        + (judged.where().isBlank() ? "" : " (" + judged.where().in(amounts.printer()) + ")");
  }

  /** The title of a check as it is said after its value. */
  static String title(Judged judged) {
    return PlanCheck.named(judged.id())
        .map(check -> check.titleAfter(judged.value()))
        .orElse(judged.title());
  }

  /** What is good and what says stop. */
  static String limit(Judged judged, Amounts amounts) {
    return "good "
        + amounts.good(judged.measure(), judged.limit())
        + ", "
        + amounts.stop(judged.measure(), judged.limit());
  }

  /** These, then those of another job. */
  public Stops plus(Stops other) {
    List<Stop> both = new ArrayList<>(all);
    both.addAll(other.all);
    return new Stops(both);
  }

  /** Whether nothing says stop. */
  public boolean isEmpty() {
    return all.isEmpty();
  }

  /** One sentence a stop, with the job's number where there are several jobs. */
  public List<String> sentences() {
    Set<String> jobs = new LinkedHashSet<>();
    for (Stop stop : all) {
      jobs.add(stop.job());
    }
    List<String> sentences = new ArrayList<>(all.size());
    for (Stop stop : all) {
      sentences.add(jobs.size() > 1 ? "job " + stop.job() + ": " + stop.words() : stop.words());
    }
    return sentences;
  }

  /** The stops as a block for a screen, a blank line after it; empty if there are none. */
  public String text() {
    if (all.isEmpty()) {
      return "";
    }
    StringBuilder text = new StringBuilder(HEADLINE).append('\n');
    for (String sentence : sentences()) {
      text.append(Paragraph.wrap(sentence, "  STOP  ", "        "));
    }
    return text.append('\n').toString();
  }

  /** All of it in one line, for the heading of a drawing or a cell of a table; may be empty. */
  public String line() {
    return all.isEmpty() ? "" : "STOP: " + String.join("; ", sentences());
  }

  /** A title with the word before it if something says stop. */
  public String before(String title) {
    return all.isEmpty() ? title : "STOP. " + title;
  }
}
