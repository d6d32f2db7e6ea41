package trammel.app.commands;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.Command;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.desk.Installation;
import trammel.app.desk.Workbench;
import trammel.app.files.SafeFile;
import trammel.app.json.Json;
import trammel.app.json.TravelJson;
import trammel.app.text.TravelText;
import trammel.app.travel.TravelCsv;
import trammel.app.travel.TravelPlot;
import trammel.app.travel.TravelStudy;
import trammel.planning.draft.Draft;
import trammel.planning.job.JobHeader;
import trammel.planning.quantity.UnitSystem;

/** Shows the curves of a job through heave and roll. */
public final class TravelCommand implements Command {
  private static final String CSV = "--csv";

  @Override
  public Syntax syntax() {
    return CommonOptions.addWithOutTo(
        Syntax.of(
                "Moves the axle of a job through heave and roll: pinion and joint angles, shift,"
                    + " springs, shocks, rates, roll steer and bind. With --out it writes"
                    + " travel.csv and travel.svg.")
            .argument("JOB", "The job file, JSON or YAML.")
            .flag(CSV, "Print the curves for a spreadsheet: comma-separated values."));
  }

  @Override
  public ExitCode run(Arguments arguments, Screen screen) {
    CommonOptions options = CommonOptions.of(arguments);
    boolean csv = arguments.has(CSV);
    if (csv && options.json()) {
      throw CommandFailure.badInput("--csv and --json are both given; give one of them.");
    }
    Workbench bench = new Workbench(Installation.running(), options.units(), screen);
    Draft draft = bench.draft(Path.of(arguments.argument("JOB")));
    UnitSystem units = bench.shown(draft.job());
    TravelStudy study = TravelStudy.of(draft.layout(), units);
    Optional<Path> folder = CommonOptions.outFolder(arguments);
    if (folder.isPresent()) {
      write(folder.get().resolve("travel.csv"), new TravelCsv(study, units).text(), screen);
      write(folder.get().resolve("travel.svg"), plot(draft, study, units), screen);
    }
    if (csv) {
      screen.out().print(new TravelCsv(study, units).text());
    } else if (options.json()) {
      Map<String, Object> json = new LinkedHashMap<>();
      json.put("job", draft.job().header().number());
      json.putAll(TravelJson.of(study));
      screen.out().println(Json.text(json));
    } else {
      screen.out().print(JobHeading.text(draft));
      screen.out().print(new TravelText(study, units).text());
    }
    return ExitCode.DONE;
  }

  private static String plot(Draft draft, TravelStudy study, UnitSystem units) {
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
                + draft.spring().title());
  }

  private static void write(Path file, String text, Screen screen) {
    SafeFile.write(file, text);
    screen.err().println("Wrote " + file);
  }
}
