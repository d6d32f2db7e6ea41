package trammel.app.commands;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.desk.Workbench;
import trammel.app.files.FileSet;
import trammel.app.files.OutFolder;
import trammel.app.json.TravelJson;
import trammel.app.text.Amounts;
import trammel.app.text.Stops;
import trammel.app.text.TravelText;
import trammel.app.travel.TravelCsv;
import trammel.app.travel.TravelPlot;
import trammel.app.travel.TravelStudy;
import trammel.engine.checks.CheckResult;
import trammel.engine.layout.Travel;
import trammel.planning.draft.Draft;
import trammel.planning.job.JobHeader;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;

/** Shows the curves of a job through heave and roll. */
public final class TravelCommand extends JobCommand {
  private static final String CSV = "--csv";

  @Override
  public Syntax syntax() {
    return CommonOptions.addWithOutTo(
        JobRun.addTo(
                Syntax.of(
                    "Moves the axle of a job through heave and roll: pinion and joint angles, shift,"
                        + " springs, shocks, rates, roll steer and bind. With --out it writes"
                        + " travel.csv and travel.svg."))
            .flag(CSV, "Print the curves for a spreadsheet: comma-separated values."));
  }

  @Override
  public ExitCode run(Arguments arguments, Screen screen) {
    CommonOptions options = CommonOptions.of(arguments);
    boolean csv = arguments.has(CSV);
    if (csv && options.json()) {
      throw CommandFailure.badInput("--csv and --json are both given; give one of them.");
    }
    if (csv && JobRun.files(arguments).size() > 1) {
      throw CommandFailure.badInput(
          "--csv prints one table; give one job with it, or --out for several.");
    }
    Workbench bench = bench(options.units(), screen);
    return JobRun.run(
        arguments,
        screen,
        bench,
        options.json(),
        CommonOptions.outFolder(arguments, "travel"),
        (draft, folder) -> result(draft, bench.shown(draft.job()), folder, screen, csv));
  }

  private static JobResult result(
      Draft draft, UnitSystem units, Optional<OutFolder> folder, Screen screen, boolean csv) {
    TravelStudy study = TravelStudy.of(draft.layout(), units);
    List<CheckResult> results = draft.judge().verdicts(draft.layout());
    Stops stops = Verdicts.stops(draft, results, new Amounts(units));
    if (folder.isPresent()) {
      FileSet files = new FileSet();
      files.add("travel.csv", new TravelCsv(study, units, stops.line()).text());
      files.add("travel.svg", plot(draft, study, units, stops));
      CommonOptions.writeAndName(files, folder.get(), screen);
    }
    Map<String, Object> json = TravelJson.of(draft.job().header().number(), study, stops);
    String text =
        csv
            ? new TravelCsv(study, units, stops.line()).text()
            : JobHeading.text(draft, stops) + new TravelText(study, units).text();
    return new JobResult(text, json, Verdicts.exitCode(results), figures(draft, units));
  }

  private static List<JobFigure> figures(Draft draft, UnitSystem units) {
    QuantityPrinter printer = new QuantityPrinter(units);
    Travel travel = draft.layout().chassis().travel();
    return List.of(
        JobFigure.alone("bump", "bump_mm", travel.bumpMm(), printer::length),
        JobFigure.alone("droop", "droop_mm", travel.droopMm(), printer::length));
  }

  private static String plot(Draft draft, TravelStudy study, UnitSystem units, Stops stops) {
    JobHeader header = draft.job().header();
    return new TravelPlot(study, units)
        .svg(
            "Through the travel: " + header.vehicle(),
            "Job "
                + header.number()
                + ", "
                + header.date()
                + "; "
                + draft.linkage().title()
                + "; "
                + draft.spring().title(),
            stops.line());
  }
}
