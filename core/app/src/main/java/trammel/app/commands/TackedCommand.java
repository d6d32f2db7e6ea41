package trammel.app.commands;

import java.nio.file.Path;
import java.util.List;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.desk.Workbench;
import trammel.app.fitup.KeptTacking;
import trammel.app.fitup.ReadingsFile;
import trammel.app.json.FitUpJson;
import trammel.app.json.Json;
import trammel.app.text.Amounts;
import trammel.app.text.Cautions;
import trammel.app.text.TackedText;
import trammel.ledger.Tacking;
import trammel.planning.draft.Draft;
import trammel.planning.fitup.TackJudge;
import trammel.planning.fitup.TackReading;
import trammel.planning.fitup.TackReport;

/** Judges what was tacked, before it is welded for good. */
public final class TackedCommand extends JobCommand {

  @Override
  public Syntax syntax() {
    return CommonOptions.addTo(
        Syntax.of(
                "Judges what was tacked by the readings taken after tacking: weld, measure again,"
                    + " or re-set which bracket by how much. The shop's ledger beside the job file"
                    + " (ledger.sqlite), where there is one, keeps what is new of the readings and"
                    + " the answer.")
            .argument("JOB", "The job file, JSON or YAML.")
            .argument("READINGS", "The filled form, fitup.csv as trammel fitup --out writes it."));
  }

  @Override
  public ExitCode run(Arguments arguments, Screen screen) {
    CommonOptions options = CommonOptions.of(arguments);
    Workbench bench = bench(options.units(), screen);
    Draft draft = bench.draft(Path.of(arguments.argument("JOB")));
    TackJudge judge = new TackJudge(draft);
    ReadingsFile file =
        new ReadingsFile(
            Path.of(arguments.argument("READINGS")),
            judge.sheet(),
            draft.job().header().units(),
            draft.job().header().number());
    List<TackReading> readings = file.read();
    for (String remark : file.remarks()) {
      screen.err().println("Note: " + remark);
    }
    TackReport report = judge.judge(readings);
    TackedText words = new TackedText(new Amounts(bench.shown(draft.job())));
    keep(
        bench,
        draft,
        KeptTacking.of(
            draft.job().header().number(), judge.sheet(), readings, report, words::words),
        screen);
    if (options.json()) {
      screen.out().println(Json.text(FitUpJson.of(draft, report)));
    } else {
      screen.out().print(JobHeading.text(draft));
      screen.out().println(words.text(report));
      screen.out().print(Cautions.text());
    }
    return Verdicts.exitCode(report.asTacked());
  }

  /** Whatever becomes of the ledger, whoever stands at the vehicle gets the answer. */
  private static void keep(Workbench bench, Draft draft, Tacking tacking, Screen screen) {
    KeptTacking.keep(bench.shopLedger(draft.job().header().units()), tacking)
        .ifPresent(screen::note);
  }
}
