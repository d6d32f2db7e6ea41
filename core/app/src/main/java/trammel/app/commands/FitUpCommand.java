package trammel.app.commands;

import java.util.List;
import java.util.Optional;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.desk.Workbench;
import trammel.app.files.FileSet;
import trammel.app.files.OutFolder;
import trammel.app.fitup.FitUpForm;
import trammel.app.json.FitUpJson;
import trammel.app.text.Amounts;
import trammel.app.text.Cautions;
import trammel.app.text.FitUpText;
import trammel.app.text.Stops;
import trammel.engine.checks.CheckResult;
import trammel.planning.draft.Draft;
import trammel.planning.fitup.FitUpSheet;
import trammel.reading.quantity.QuantityPrinter;

/** Shows where each bracket goes from the marked datums. */
public final class FitUpCommand extends JobCommand {

  @Override
  public Syntax syntax() {
    return CommonOptions.addWithOutTo(
        JobRun.addTo(
            Syntax.of(
                "Shows where each bracket goes from the marked datums, the angles to read on the"
                    + " finder as the frame sits now, and what to measure again after tacking. With"
                    + " --out it writes fitup.txt, and fitup.csv to fill in for trammel tacked.")));
  }

  @Override
  public ExitCode run(Arguments arguments, Screen screen) {
    CommonOptions options = CommonOptions.of(arguments);
    Workbench bench = bench(options.units(), screen);
    return JobRun.run(
        arguments,
        screen,
        bench,
        options.json(),
        CommonOptions.outFolder(arguments, "fitup"),
        (draft, folder) -> result(draft, bench, folder, screen));
  }

  private static JobResult result(
      Draft draft, Workbench bench, Optional<OutFolder> folder, Screen screen) {
    FitUpSheet sheet = FitUpSheet.of(draft);
    QuantityPrinter printer = new QuantityPrinter(bench.shown(draft.job()));
    List<CheckResult> results = draft.judge().verdicts(draft.layout());
    Stops stops = Verdicts.stops(draft, results, new Amounts(bench.shown(draft.job())));
    String text =
        JobHeading.text(draft, stops)
            + new FitUpText(sheet, printer).text()
            + "\n"
            + Cautions.text();
    if (folder.isPresent()) {
      FileSet files = new FileSet();
      files
          .add("fitup.txt", text)
          .add("fitup.csv", FitUpForm.csv(draft.job().header().number(), sheet, printer));
      CommonOptions.writeAndName(files, folder.get(), screen);
    }
    return new JobResult(
        text,
        FitUpJson.of(draft, sheet, stops),
        Verdicts.exitCode(results),
        Verdicts.figures(results));
  }
}
