package trammel.app.commands;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.desk.Workbench;
import trammel.app.json.ArrangeJson;
import trammel.app.json.CheckJson;
import trammel.app.json.LayoutJson;
import trammel.app.json.UncertaintyJson;
import trammel.app.text.Amounts;
import trammel.app.text.Cautions;
import trammel.app.text.CheckText;
import trammel.app.text.LayoutText;
import trammel.app.text.UncertaintyText;
import trammel.engine.checks.CheckResult;
import trammel.engine.checks.LayoutAnalysis;
import trammel.planning.arrange.OptionChanges;
import trammel.planning.draft.Draft;

/** Shows every check of a job, worst first, then its layout. */
public final class CheckCommand extends JobCommand {

  @Override
  public Syntax syntax() {
    return UncertaintyOptions.addTo(
        CommonOptions.addTo(
            JobRun.addTo(Syntax.of("Shows every check of a job, worst first, then its layout."))));
  }

  @Override
  public ExitCode run(Arguments arguments, Screen screen) {
    CommonOptions options = CommonOptions.of(arguments);
    UncertaintyOptions uncertainty = UncertaintyOptions.of(arguments);
    Workbench bench = bench(options.units(), screen);
    return JobRun.run(
        arguments,
        screen,
        bench,
        options.json(),
        (draft, folder) -> result(draft, bench, uncertainty, screen, options.json()));
  }

  private static JobResult result(
      Draft draft, Workbench bench, UncertaintyOptions uncertainty, Screen screen, boolean asJson) {
    List<CheckResult> results = draft.judge().judge(draft.layout());
    OptionChanges.Found options =
        new OptionChanges(
                bench.extensions().extensions(), bench.catalog(), OptionChanges.USUAL_BUDGET)
            .of(draft, results);
    LayoutAnalysis analysis = new LayoutAnalysis(draft.layout(), draft.judge().settings());
    Map<String, Object> json = new LinkedHashMap<>();
    StringBuilder text = new StringBuilder();
    if (asJson) {
      json.put("job", draft.job().header().number());
      json.put("layout", LayoutJson.of(analysis));
      json.put("checks", CheckJson.of(draft, results));
      json.put("option_changes", ArrangeJson.of(options));
      uncertainty
          .study(draft, screen)
          .ifPresent(result -> json.put("uncertainty", UncertaintyJson.of(result)));
      json.put("caution", Cautions.SCREENING);
    } else {
      Amounts amounts = new Amounts(bench.shown(draft.job()));
      text.append(JobHeading.text(draft));
      text.append(new CheckText(draft, amounts).text(results, options)).append('\n');
      text.append(new LayoutText(analysis, amounts).text()).append('\n');
      uncertainty
          .study(draft, screen)
          .ifPresent(result -> text.append(new UncertaintyText(amounts).text(result)).append('\n'));
      text.append(Cautions.text());
    }
    return new JobResult(
        text.toString(), json, Verdicts.exitCode(results), Verdicts.figures(results));
  }
}
