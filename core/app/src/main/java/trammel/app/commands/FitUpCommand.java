package trammel.app.commands;

import java.nio.file.Path;
import java.util.Optional;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.Command;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.desk.Installation;
import trammel.app.desk.Workbench;
import trammel.app.files.FileSet;
import trammel.app.fitup.FitUpForm;
import trammel.app.json.FitUpJson;
import trammel.app.json.Json;
import trammel.app.text.Cautions;
import trammel.app.text.FitUpText;
import trammel.planning.draft.Draft;
import trammel.planning.fitup.FitUpSheet;
import trammel.planning.quantity.QuantityPrinter;

/** Shows where each bracket goes from the marked datums. */
public final class FitUpCommand implements Command {

  @Override
  public Syntax syntax() {
    return CommonOptions.addWithOutTo(
        Syntax.of(
                "Shows where each bracket goes from the marked datums, the angles to read on the"
                    + " finder as the frame sits now, and what to measure again after tacking. With"
                    + " --out it writes fitup.txt, and fitup.csv to fill in for trammel tacked.")
            .argument("JOB", "The job file, JSON or YAML."));
  }

  @Override
  public ExitCode run(Arguments arguments, Screen screen) {
    CommonOptions options = CommonOptions.of(arguments);
    Workbench bench = new Workbench(Installation.running(), options.units(), screen);
    Draft draft = bench.draft(Path.of(arguments.argument("JOB")));
    FitUpSheet sheet = FitUpSheet.of(draft);
    QuantityPrinter printer = new QuantityPrinter(bench.shown(draft.job()));
    String text =
        JobHeading.text(draft) + new FitUpText(sheet, printer).text() + "\n" + Cautions.text();
    Optional<Path> folder = CommonOptions.outFolder(arguments);
    if (folder.isPresent()) {
      FileSet files = new FileSet();
      files.add("fitup.txt", text).add("fitup.csv", FitUpForm.csv(sheet, printer));
      for (Path file : files.write(folder.get())) {
        screen.err().println("Wrote " + file);
      }
    }
    if (options.json()) {
      screen.out().println(Json.text(FitUpJson.of(draft, sheet)));
    } else {
      screen.out().print(text);
    }
    return Verdicts.exitCode(draft.judge().judge(draft.layout()));
  }
}
