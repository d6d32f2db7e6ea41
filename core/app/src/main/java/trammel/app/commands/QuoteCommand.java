package trammel.app.commands;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.Command;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.desk.Installation;
import trammel.app.desk.Workbench;
import trammel.app.json.EstimateJson;
import trammel.app.json.Json;
import trammel.app.text.Amounts;
import trammel.app.text.Cautions;
import trammel.app.text.CheckText;
import trammel.app.text.LayoutText;
import trammel.app.text.PlanText;
import trammel.app.text.PriceText;
import trammel.engine.checks.CheckResult;
import trammel.engine.checks.LayoutAnalysis;
import trammel.planning.background.Background;
import trammel.planning.draft.Draft;
import trammel.planning.estimate.Estimate;

/** Takes a job from its measurements to its price. */
public final class QuoteCommand implements Command {
  private static final String QUIET = "--quiet";

  @Override
  public Syntax syntax() {
    return CommonOptions.addWithOutTo(
            Syntax.of(
                    "Takes a job from its measurements to its price: layout, checks, plan, cost"
                        + " build-up. With --out it writes the folder to hand out: the customer's"
                        + " quote, the cost sheet, the material order, the floor packet, cut lists,"
                        + " drawings, templates at true scale and the files for the cutting table.")
                .argument("JOB", "The job file, JSON or YAML."))
        .flag(QUIET, "With --out: do not tell how far it is.");
  }

  @Override
  public ExitCode run(Arguments arguments, Screen screen) {
    CommonOptions options = CommonOptions.of(arguments);
    Workbench bench = new Workbench(Installation.running(), options.units(), screen);
    Draft draft = bench.draft(Path.of(arguments.argument("JOB")));
    Background<List<CheckResult>> judging =
        Background.start(
            new Callable<List<CheckResult>>() {
              @Override
              public List<CheckResult> call() {
                return draft.judge().judge(draft.layout());
              }
            });
    Estimate estimate = bench.estimate(draft);
    List<CheckResult> results = judging.get();
    Optional<String> folder = arguments.value("--out");
    if (folder.isPresent()) {
      new QuoteFolder(bench, screen, arguments.has(QUIET))
          .write(Path.of(folder.get()), estimate, results);
    }
    if (options.json()) {
      screen.out().println(Json.text(EstimateJson.quote(estimate, results)));
    } else {
      Amounts amounts = new Amounts(bench.shown(draft.job()));
      LayoutAnalysis analysis = new LayoutAnalysis(draft.layout(), bench.catalog().analysis());
      screen.out().print(JobHeading.text(draft));
      screen.out().println(new LayoutText(analysis, amounts).text());
      screen.out().println(new CheckText(draft, amounts).text(results));
      screen.out().println(new PlanText(estimate, amounts).text());
      screen.out().println(new PriceText(estimate, amounts).text());
      screen.out().print(Cautions.text());
    }
    return Verdicts.exitCode(results);
  }
}
