package trammel.app.commands;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
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
import trammel.app.text.Amounts;
import trammel.app.text.Cautions;
import trammel.app.text.PlanText;
import trammel.planning.draft.Draft;
import trammel.planning.estimate.Estimate;
import trammel.planning.quantity.QuantityPrinter;

/** Lists the parts, tubes, plates, welds and hours of a job. */
public final class PlanCommand implements Command {

  @Override
  public Syntax syntax() {
    return CommonOptions.addWithOutTo(
        JobRun.addTo(
            Syntax.of(
                "Lists the parts, tubes, plates, welds and hours of a job, with their reasons. With"
                    + " --out it writes what saw and cutting table need: a DXF and an SVG of every"
                    + " plate and every sheet, templates of coped tubes, and both cut lists.")));
  }

  @Override
  public ExitCode run(Arguments arguments, Screen screen) {
    CommonOptions options = CommonOptions.of(arguments);
    Workbench bench = new Workbench(Installation.running(), options.units(), screen);
    return JobRun.run(
        arguments,
        screen,
        bench,
        options.json(),
        CommonOptions.outFolder(arguments),
        (draft, folder) -> result(draft, bench, folder, screen, options.json()));
  }

  private static JobResult result(
      Draft draft, Workbench bench, Optional<Path> folder, Screen screen, boolean asJson) {
    Estimate estimate = bench.estimate(draft);
    if (folder.isPresent()) {
      FileSet files = new FileSet();
      new CutFiles(estimate).addTo(files);
      List<Path> written = files.write(folder.get());
      screen.err().println("Wrote " + written.size() + " files to " + folder.get());
    }
    Amounts amounts = new Amounts(bench.shown(draft.job()));
    String text =
        asJson
            ? ""
            : JobHeading.text(draft)
                + new PlanText(estimate, amounts).text()
                + "\n"
                + Cautions.text();
    return new JobResult(
        text,
        asJson ? EstimateJson.plan(estimate) : Map.of(),
        Verdicts.exitCode(draft.judge().judge(draft.layout())),
        figures(estimate, amounts.printer()));
  }

  private static List<JobFigure> figures(Estimate estimate, QuantityPrinter printer) {
    return List.of(
        JobFigure.sum("hours", "mean_h", estimate.hours().meanHours(), printer::hours),
        JobFigure.sum("weld", "weld_mm", estimate.welds().lengthMm(), printer::length),
        JobFigure.sum(
            "steel added", "steel_kg", estimate.materials().steelMassKg(), printer::mass));
  }
}
