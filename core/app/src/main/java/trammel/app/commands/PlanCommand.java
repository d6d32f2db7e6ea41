package trammel.app.commands;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.desk.Workbench;
import trammel.app.files.FileSet;
import trammel.app.files.OutFolder;
import trammel.app.handout.CutFiles;
import trammel.app.json.AssemblyJson;
import trammel.app.json.EstimateJson;
import trammel.app.json.GltfScene;
import trammel.app.text.Amounts;
import trammel.app.text.Cautions;
import trammel.app.text.LabourPlanText;
import trammel.app.text.PlanText;
import trammel.app.text.Stops;
import trammel.assembly.Assembly;
import trammel.cutting.background.Background;
import trammel.engine.checks.CheckResult;
import trammel.planning.draft.Draft;
import trammel.planning.estimate.Estimate;
import trammel.planning.vehicle.FinishedVehicle;
import trammel.reading.quantity.QuantityPrinter;
import trammel.trade.labour.LabourPlan;

/** Lists the parts, tubes, plates, welds and hours of a job. */
public final class PlanCommand extends JobCommand {

  @Override
  public Syntax syntax() {
    return CommonOptions.addWithOutTo(
        JobRun.addTo(
            Syntax.of(
                "Lists the parts, tubes, plates, welds and hours of a job, with their reasons. With"
                    + " --out it writes what saw and cutting table need: a DXF and an SVG of every"
                    + " plate and every sheet, templates of coped tubes, both cut lists, every"
                    + " plate as a solid to print and try, and the finished job as a scene that any"
                    + " viewer of glTF 2.0 shows (assembly.gltf).")));
  }

  @Override
  public ExitCode run(Arguments arguments, Screen screen) {
    CommonOptions options = CommonOptions.of(arguments);
    Workbench bench = bench(options.units(), screen);
    Map<String, Double> meanHours = new LinkedHashMap<>();
    ExitCode exitCode =
        JobRun.run(
            arguments,
            screen,
            bench,
            options.json(),
            CommonOptions.outFolder(arguments, "plan"),
            (draft, folder) -> result(draft, bench, folder, screen, options.json(), meanHours));
    if (meanHours.size() > 1 && !options.json()) {
      screen.out().println();
      screen
          .out()
          .print(
              new LabourPlanText(bench.catalog().shop().labour())
                  .queue(List.copyOf(meanHours.keySet()), List.copyOf(meanHours.values())));
    }
    return exitCode;
  }

  private static JobResult result(
      Draft draft,
      Workbench bench,
      Optional<OutFolder> folder,
      Screen screen,
      boolean asJson,
      Map<String, Double> meanHours) {
    Background<List<CheckResult>> judging =
        Background.start(() -> draft.judge().verdicts(draft.layout()));
    Estimate estimate = bench.estimate(draft);
    LabourPlan labour = bench.catalog().shop().labour();
    meanHours.put(draft.job().header().number(), estimate.hours().meanHours());
    List<CheckResult> results = judging.get();
    Amounts amounts = new Amounts(bench.shown(draft.job()));
    Stops stops = Verdicts.stops(draft, results, amounts);
    if (folder.isPresent()) {
      FileSet files = new FileSet();
      CutFiles cutFiles = new CutFiles(estimate, stops, bench.shown(draft.job()));
      cutFiles.addTo(files);
      cutFiles.addPrintsTo(files);
      files.add(
          "assembly.gltf",
          GltfScene.text(assembly(draft, bench, estimate), draft.printer()) + "\n");
      CommonOptions.write(files, folder.get(), screen);
    }
    String text =
        asJson
            ? ""
            : JobHeading.text(draft, stops)
                + new PlanText(estimate, amounts).text()
                + "\n"
                + new LabourPlanText(labour).alone(estimate.hours())
                + "\n"
                + Cautions.text();
    return new JobResult(
        text,
        asJson ? json(estimate, labour, stops, assembly(draft, bench, estimate)) : Map.of(),
        Verdicts.exitCode(results),
        figures(estimate, labour, amounts.printer()));
  }

  private static Assembly assembly(Draft draft, Workbench bench, Estimate estimate) {
    return FinishedVehicle.of(draft.layout(), bench.catalog(), estimate.plan());
  }

  private static Map<String, Object> json(
      Estimate estimate, LabourPlan labour, Stops stops, Assembly assembly) {
    Map<String, Object> json = EstimateJson.plan(estimate, stops);
    json.put("assembly", AssemblyJson.of(assembly, estimate.draft().printer()));
    Map<String, Object> days = new LinkedHashMap<>();
    days.put("hands", labour.hands());
    days.put("bays", labour.bays());
    days.put("mean_days", labour.days(estimate.hours().meanHours()));
    days.put("p80_days", labour.days(estimate.hours().p80Hours()));
    json.put("labour_plan", days);
    return json;
  }

  private static List<JobFigure> figures(
      Estimate estimate, LabourPlan labour, QuantityPrinter printer) {
    return List.of(
        JobFigure.sum("hours", "mean_h", estimate.hours().meanHours(), printer::hours),
        JobFigure.alone(
            "days alone",
            "mean_days",
            labour.days(estimate.hours().meanHours()),
            days -> Long.toString((long) Math.ceil(days))),
        JobFigure.sum("weld", "weld_mm", estimate.welds().lengthMm(), printer::length),
        JobFigure.sum(
            "steel added", "steel_kg", estimate.materials().steelMassKg(), printer::mass));
  }
}
