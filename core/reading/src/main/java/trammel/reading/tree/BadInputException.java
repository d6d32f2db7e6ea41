package trammel.reading.tree;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A file that cannot be used, with everything that is wrong with it; the message tells the first
 * twenty problems and how many more there are.
 */
public final class BadInputException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** More are not told at once: who mends these mends most of the others with them. */
  private static final int MOST_TOLD = 20;

  private final transient List<Problem> problems;

  /**
   * Carries problems, ordered by file and line.
   *
   * @throws IllegalArgumentException if there are none
   */
  public BadInputException(List<Problem> problems) {
    super(lines(problems));
    this.problems = sorted(problems);
  }

  /** Every problem of the file, in the order of its lines. */
  public List<Problem> problems() {
    return problems;
  }

  private static List<Problem> sorted(List<Problem> problems) {
    List<Problem> sorted = new ArrayList<>(problems);
    sorted.sort(Comparator.comparing(Problem::file).thenComparingInt(Problem::line));
    return List.copyOf(sorted);
  }

  private static String lines(List<Problem> problems) {
    if (problems.isEmpty()) {
      throw new IllegalArgumentException("A bad input must name at least one problem.");
    }
    StringBuilder lines = new StringBuilder();
    for (Problem problem : sorted(problems).subList(0, Math.min(MOST_TOLD, problems.size()))) {
      lines.append(lines.isEmpty() ? "" : System.lineSeparator()).append(problem.text());
    }
    int more = problems.size() - MOST_TOLD;
    if (more > 0) {
      lines
          .append(System.lineSeparator())
          .append("and ")
          .append(more)
          .append(more == 1 ? " more problem" : " more problems")
          .append("; mend these first.");
    }
    return lines.toString();
  }
}
