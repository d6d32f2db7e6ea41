package trammel.app.commands;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.Command;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.desk.Installation;
import trammel.app.desk.Workbench;
import trammel.app.files.FileSet;
import trammel.app.handout.CutFiles;
import trammel.app.json.EstimateJson;
import trammel.app.json.Json;
import trammel.app.text.Amounts;
import trammel.app.text.Cautions;
import trammel.app.text.PlanText;
import trammel.planning.draft.Draft;
import trammel.planning.estimate.Estimate;

/** Lists the parts, tubes, plates, welds and hours of a job. */
public final class PlanCommand implements Command {

  @Override
  public Syntax syntax() {
    return CommonOptions.addWithOutTo(
        Syntax.of(
                "Lists the parts, tubes, plates, welds and hours of a job, with their reasons. With"
                    + " --out it writes what saw and cutting table need: a DXF and an SVG of every"
                    + " plate and every sheet, templates of coped tubes, and both cut lists.")
            .argument("JOB", "The job file, JSON or YAML."));
  }

  @Override
  public ExitCode run(Arguments arguments, Screen screen) {
    CommonOptions options = CommonOptions.of(arguments);
    Workbench bench = new Workbench(Installation.running(), options.units(), screen);
    Draft draft = bench.draft(Path.of(arguments.argument("JOB")));
    Estimate estimate = bench.estimate(draft);
    Optional<Path> folder = CommonOptions.outFolder(arguments);
    if (folder.isPresent()) {
      FileSet files = new FileSet();
      new CutFiles(estimate).addTo(files);
      List<Path> written = files.write(folder.get());
      screen.err().println("Wrote " + written.size() + " files to " + folder.get());
    }
    if (options.json()) {
      screen.out().println(Json.text(EstimateJson.plan(estimate)));
    } else {
      screen.out().print(JobHeading.text(draft));
      screen.out().println(new PlanText(estimate, new Amounts(bench.shown(draft.job()))).text());
      screen.out().print(Cautions.text());
    }
    return Verdicts.exitCode(draft.judge().judge(draft.layout()));
  }
}
