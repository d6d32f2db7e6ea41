package trammel.app.commands;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.Command;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.desk.Installation;
import trammel.app.desk.Workbench;
import trammel.app.files.FileLock;
import trammel.app.json.Json;
import trammel.app.json.OrderJson;
import trammel.app.rack.RackFile;
import trammel.app.text.Amounts;
import trammel.app.text.OrderText;
import trammel.engine.checks.CheckResult;
import trammel.planning.draft.Draft;
import trammel.planning.estimate.Estimate;
import trammel.planning.order.MaterialOrder;
import trammel.planning.order.Ordering;

/** Makes one material order a supplier over one or many jobs. */
public final class OrderCommand implements Command {
  private static final int MOST_JOBS = 500;
  private static final String RACK = "--rack";

  @Override
  public Syntax syntax() {
    return CommonOptions.addTo(
        Syntax.of(
                "Makes one material order a supplier; several jobs are cut and bought together."
                    + " With --rack, what is on hand is used first, and the file is written anew:"
                    + " what was taken is gone, useful offcuts are on it.")
            .arguments("JOB", 1, MOST_JOBS, "The job files, JSON or YAML.")
            .option(RACK, "FILE", "Stock on hand, comma-separated values."));
  }

  @Override
  public ExitCode run(Arguments arguments, Screen screen) {
    CommonOptions options = CommonOptions.of(arguments);
    Workbench bench = new Workbench(Installation.running(), options.units(), screen);
    List<Estimate> estimates = new ArrayList<>();
    List<CheckResult> results = new ArrayList<>();
    for (String file : arguments.arguments("JOB")) {
      Draft draft = bench.draft(Path.of(file));
      results.addAll(draft.judge().judge(draft.layout()));
      estimates.add(bench.estimate(draft));
    }
    Amounts amounts = new Amounts(bench.shown(estimates.get(0).draft().job()));
    MaterialOrder order = order(arguments, bench, estimates, amounts);
    if (options.json()) {
      screen.out().println(Json.text(OrderJson.of(estimates, order)));
    } else {
      screen.out().print(OrderText.text(estimates, order));
    }
    return Verdicts.exitCode(results);
  }

  private static MaterialOrder order(
      Arguments arguments, Workbench bench, List<Estimate> estimates, Amounts amounts) {
    Ordering ordering = new Ordering(bench.catalog(), amounts.printer());
    Optional<String> rack = arguments.value(RACK);
    if (rack.isEmpty()) {
      return ordering.order(estimates);
    }
    Path path = Path.of(rack.get());
    try (FileLock lock = FileLock.of(path)) {
      RackFile file = new RackFile(path, bench.catalog(), amounts.printer().system());
      MaterialOrder order = ordering.order(estimates, file.read());
      file.write(order.rack().rack());
      return order;
    }
  }
}
