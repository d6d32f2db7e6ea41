package trammel.app.commands;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.desk.Setback;
import trammel.app.desk.Workbench;
import trammel.app.files.OutFolder;
import trammel.app.json.Json;
import trammel.app.text.JobTable;
import trammel.planning.draft.Draft;

/**
 * Runs a command over one or many jobs. A file that cannot be used is reported and the others go
 * on; the worst exit code is that of the run. Several jobs end with a table and its totals.
 */
final class JobRun {
  private static final String JOB = "JOB";
  private static final int MOST_JOBS = 500;

  private final Arguments arguments;
  private final Screen screen;
  private final Workbench bench;
  private final boolean json;
  private final Map<String, JobResult> results = new LinkedHashMap<>();
  private final JobNumbers numbers = new JobNumbers();
  private ExitCode worst = ExitCode.DONE;

  /** What a command makes of a job. */
  interface Study {
    /** The result of one job; what it writes goes into the job's own folder, if one is given. */
    JobResult of(Draft draft, Optional<OutFolder> folder);
  }

  private JobRun(Arguments arguments, Screen screen, Workbench bench, boolean json) {
    this.arguments = arguments;
    this.screen = screen;
    this.bench = bench;
    this.json = json;
  }

  /** The syntax, and one job file or many. */
  static Syntax addTo(Syntax syntax) {
    return syntax.arguments(
        JOB, 1, MOST_JOBS, "The job files, JSON or YAML. Several end with a table and totals.");
  }

  /** The job files. */
  static List<String> files(Arguments arguments) {
    return arguments.arguments(JOB);
  }

  /** Runs a command that writes no files. */
  static ExitCode run(
      Arguments arguments, Screen screen, Workbench bench, boolean json, Study study) {
    return run(arguments, screen, bench, json, Optional.empty(), study);
  }

  /**
   * Runs a command that may write files.
   *
   * @param out the folder for them; several jobs get a folder each in it, named by job number
   */
  static ExitCode run(
      Arguments arguments,
      Screen screen,
      Workbench bench,
      boolean json,
      Optional<OutFolder> out,
      Study study) {
    return new JobRun(arguments, screen, bench, json).run(out, study);
  }

  private ExitCode run(Optional<OutFolder> out, Study study) {
    List<String> files = files(arguments);
    if (files.size() == 1) {
      Draft draft = bench.draft(Path.of(files.get(0)));
      String number = draft.job().header().number();
      JobResult only = study.of(draft, out.map(folder -> folder.forJobs(List.of(number))));
      print(only);
      return only.exitCode();
    }
    for (String file : files) {
      study(file, out, study);
    }
    if (json) {
      screen.out().println(Json.text(all()));
    } else if (results.size() > 1) {
      screen.out().print(JobTable.text(heads(), rows(), totals()));
    }
    return worst;
  }

  private void study(String file, Optional<OutFolder> out, Study study) {
    try {
      Draft draft = bench.draft(Path.of(file));
      String number = draft.job().header().number();
      numbers.add(number);
      JobResult result = study.of(draft, out.map(folder -> folder.inside(number)));
      results.put(number, result);
      note(result.exitCode());
      if (!json) {
        print(result);
        screen.out().println();
      }
    } catch (RuntimeException thrown) {
      Setback setback = Setback.of(thrown, List.of(file)).orElseThrow(() -> thrown);
      tell(setback, file, screen);
      note(setback.exitCode());
    }
  }

  /** Tells why a job of several is left out. */
  static void tell(Setback setback, String file, Screen screen) {
    String message = setback.message();
    screen.out().flush();
    screen.err().println(message.startsWith(file) ? message : file + ": " + message);
  }

  private void note(ExitCode exitCode) {
    if (exitCode.code() > worst.code()) {
      worst = exitCode;
    }
  }

  private void print(JobResult result) {
    if (json) {
      screen.out().println(Json.text(result.json()));
    } else {
      screen.out().print(result.text());
    }
  }

  private List<String> heads() {
    List<String> heads = new ArrayList<>();
    heads.add("job");
    for (JobFigure figure : first().figures()) {
      heads.add(figure.title());
    }
    heads.add("comes to");
    return heads;
  }

  private List<List<String>> rows() {
    List<List<String>> rows = new ArrayList<>();
    for (Map.Entry<String, JobResult> entry : results.entrySet()) {
      List<String> row = new ArrayList<>();
      row.add(entry.getKey());
      for (JobFigure figure : entry.getValue().figures()) {
        row.add(figure.print().apply(figure.value()));
      }
      row.add(entry.getValue().exitCode() == ExitCode.DONE ? "done" : "STOP");
      rows.add(row);
    }
    return rows;
  }

  /** Empty if nothing adds up. */
  private List<String> totals() {
    boolean adds = false;
    for (JobFigure figure : first().figures()) {
      adds = adds || figure.adds();
    }
    if (!adds) {
      return List.of();
    }
    List<String> totals = new ArrayList<>();
    totals.add("together");
    for (int i = 0; i < first().figures().size(); i++) {
      JobFigure figure = first().figures().get(i);
      totals.add(figure.adds() ? figure.print().apply(sum(i)) : "");
    }
    totals.add("");
    return totals;
  }

  private BigDecimal sum(int figure) {
    BigDecimal sum = BigDecimal.ZERO;
    for (JobResult result : results.values()) {
      sum = sum.add(result.figures().get(figure).value());
    }
    return sum;
  }

  private JobResult first() {
    return results.values().iterator().next();
  }

  private Map<String, Object> all() {
    List<Object> jobs = new ArrayList<>();
    for (JobResult result : results.values()) {
      jobs.add(result.json());
    }
    Map<String, Object> totals = new LinkedHashMap<>();
    if (!results.isEmpty()) {
      for (int i = 0; i < first().figures().size(); i++) {
        JobFigure figure = first().figures().get(i);
        if (figure.adds()) {
          totals.put(figure.key(), sum(i));
        }
      }
    }
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("jobs", jobs);
    json.put("totals", totals);
    json.put("left_out", files(arguments).size() - results.size());
    return json;
  }
}
