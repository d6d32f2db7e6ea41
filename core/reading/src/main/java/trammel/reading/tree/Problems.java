package trammel.reading.tree;

import java.util.ArrayList;
import java.util.List;

/** Collects everything that is wrong with a file, so that the user can mend it in one go. */
public final class Problems {
  private final List<Problem> all = new ArrayList<>();

  /** Adds one problem. */
  public void add(Problem problem) {
    all.add(problem);
  }

  /** Adds all problems of another collection. */
  public void addAll(Problems others) {
    all.addAll(others.all);
  }

  /** Adds a problem for which the file is refused. */
  public void error(Location where, String given, String allowed, String remedy) {
    all.add(Problem.error(where, given, allowed, remedy));
  }

  /** Adds a problem that the user should look at. */
  public void warning(Location where, String given, String allowed, String remedy) {
    all.add(Problem.warning(where, given, allowed, remedy));
  }

  /** All problems in the order they were found. */
  public List<Problem> all() {
    return List.copyOf(all);
  }

  /** The problems for which the file is refused. */
  public List<Problem> errors() {
    return of(Problem.Severity.ERROR);
  }

  /** The problems that the user should look at. */
  public List<Problem> warnings() {
    return of(Problem.Severity.WARNING);
  }

  /** True if the file is refused. */
  public boolean hasErrors() {
    for (Problem problem : all) {
      if (problem.severity() == Problem.Severity.ERROR) {
        return true;
      }
    }
    return false;
  }

  /**
   * Does nothing if no error was collected.
   *
   * @throws BadInputException with every problem, in the order of the lines, if there is an error
   */
  public void throwIfErrors() {
    if (hasErrors()) {
      throw new BadInputException(all);
    }
  }

  private List<Problem> of(Problem.Severity severity) {
    List<Problem> some = new ArrayList<>();
    for (Problem problem : all) {
      if (problem.severity() == severity) {
        some.add(problem);
      }
    }
    return List.copyOf(some);
  }
}
