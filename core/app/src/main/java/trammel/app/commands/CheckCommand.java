package trammel.app.commands;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.Command;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.desk.Installation;
import trammel.app.desk.Workbench;
import trammel.app.json.CheckJson;
import trammel.app.json.Json;
import trammel.app.json.LayoutJson;
import trammel.app.json.UncertaintyJson;
import trammel.app.text.Amounts;
import trammel.app.text.Cautions;
import trammel.app.text.CheckText;
import trammel.app.text.LayoutText;
import trammel.app.text.UncertaintyText;
import trammel.engine.checks.CheckResult;
import trammel.engine.checks.LayoutAnalysis;
import trammel.planning.draft.Draft;

/** Shows a job's layout and every check, worst first. */
public final class CheckCommand implements Command {

  @Override
  public Syntax syntax() {
    return UncertaintyOptions.addTo(
        CommonOptions.addTo(
            Syntax.of("Shows the layout of a job and every check, worst first.")
                .argument("JOB", "The job file, JSON or YAML.")));
  }

  @Override
  public ExitCode run(Arguments arguments, Screen screen) {
    CommonOptions options = CommonOptions.of(arguments);
    UncertaintyOptions uncertainty = UncertaintyOptions.of(arguments);
    Workbench bench = new Workbench(Installation.running(), options.units(), screen);
    Draft draft = bench.draft(Path.of(arguments.argument("JOB")));
    List<CheckResult> results = draft.judge().judge(draft.layout());
    LayoutAnalysis analysis = new LayoutAnalysis(draft.layout(), bench.catalog().analysis());
    if (options.json()) {
      Map<String, Object> json = new LinkedHashMap<>();
      json.put("job", draft.job().header().number());
      json.put("layout", LayoutJson.of(analysis));
      json.put("checks", CheckJson.of(draft, results));
      uncertainty
          .study(draft)
          .ifPresent(result -> json.put("uncertainty", UncertaintyJson.of(result)));
      json.put("caution", Cautions.SCREENING);
      screen.out().println(Json.text(json));
    } else {
      Amounts amounts = new Amounts(bench.shown(draft.job()));
      screen.out().print(JobHeading.text(draft));
      screen.out().println(new LayoutText(analysis, amounts).text());
      screen.out().println(new CheckText(draft, amounts).text(results));
      uncertainty
          .study(draft)
          .ifPresent(result -> screen.out().println(new UncertaintyText(amounts).text(result)));
      screen.out().print(Cautions.text());
    }
    return Verdicts.exitCode(results);
  }
}
