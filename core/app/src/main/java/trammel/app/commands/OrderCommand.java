package trammel.app.commands;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.Command;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.desk.Installation;
import trammel.app.desk.Workbench;
import trammel.app.json.Json;
import trammel.app.json.OrderJson;
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

  @Override
  public Syntax syntax() {
    return CommonOptions.addTo(
        Syntax.of("Makes one material order a supplier; several jobs are cut and bought together.")
            .arguments("JOB", 1, MOST_JOBS, "The job files, JSON or YAML."));
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
    MaterialOrder order = new Ordering(bench.catalog(), amounts.printer()).order(estimates);
    if (options.json()) {
      screen.out().println(Json.text(OrderJson.of(estimates, order)));
    } else {
      screen.out().print(OrderText.text(estimates, order));
    }
    return Verdicts.exitCode(results);
  }
}
