package trammel.reading.tree;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A file that cannot be used, with everything that is wrong with it. */
public final class BadInputException extends RuntimeException {
  private static final long serialVersionUID = 1L;

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
    for (Problem problem : sorted(problems)) {
      lines.append(lines.isEmpty() ? "" : System.lineSeparator()).append(problem.text());
    }
    return lines.toString();
  }
}
