package trammel.app.commands;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.Command;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.desk.Installation;
import trammel.app.desk.Workbench;
import trammel.app.json.CompareJson;
import trammel.app.json.Json;
import trammel.app.text.Amounts;
import trammel.app.text.CompareText;
import trammel.planning.compare.Variant;
import trammel.planning.draft.Draft;
import trammel.planning.extension.UnworkableLayoutException;
import trammel.planning.job.JobDocument;

/** Sets variants of a job side by side and explains the difference. */
public final class CompareCommand implements Command {
  private static final String VARY = "--vary";
  private static final String USUAL = "chosen.linkage_options.mounting=inboard,outboard";
  private static final int MOST_VARIANTS = 64;

  @Override
  public Syntax syntax() {
    return CommonOptions.addTo(
        Syntax.of(
                "Sets variants of a job side by side, with the lines that make the difference."
                    + " Without --vary, inboard against outboard mounting.")
            .argument("JOB", "The job file, JSON or YAML.")
            .repeatableOption(
                VARY,
                "FIELD=A,B",
                "A field of the job file and its values; several fields make every combination."));
  }

  @Override
  public ExitCode run(Arguments arguments, Screen screen) {
    CommonOptions options = CommonOptions.of(arguments);
    Workbench bench = new Workbench(Installation.running(), options.units(), screen);
    JobDocument document = bench.load(Path.of(arguments.argument("JOB")));
    List<String> vary = arguments.values(VARY);
    List<Varied> varied = List.of(new Varied("", document));
    for (String field : vary.isEmpty() ? List.of(USUAL) : vary) {
      varied = each(varied, field);
    }
    List<Variant> variants = new ArrayList<>(varied.size());
    for (Varied one : varied) {
      try {
        Draft draft = bench.draft(one.document());
        variants.add(
            new Variant(one.label(), bench.estimate(draft), draft.judge().judge(draft.layout())));
      } catch (UnworkableLayoutException noRoom) {
        screen.err().println("Left out: " + one.label() + ". " + noRoom.getMessage());
      }
    }
    if (variants.isEmpty()) {
      throw CommandFailure.badInput(
          "None of the variants fits the vehicle; the reasons are above. Vary something else.");
    }
    if (options.json()) {
      screen.out().println(Json.text(CompareJson.of(variants)));
    } else {
      Amounts amounts = new Amounts(bench.shown(variants.get(0).estimate().draft().job()));
      screen.out().print(JobHeading.text(variants.get(0).estimate().draft()));
      screen.out().print(new CompareText(amounts).text(variants));
    }
    return exitCode(variants);
  }

  private record Varied(String label, JobDocument document) {}

  private static List<Varied> each(List<Varied> before, String field) {
    int equals = field.indexOf('=');
    if (equals <= 0 || equals == field.length() - 1) {
      throw CommandFailure.badInput(
          VARY
              + " was given '"
              + field
              + "'; it takes a field and its values, such as "
              + USUAL
              + ".");
    }
    String path = field.substring(0, equals);
    String name = path.substring(path.lastIndexOf('.') + 1);
    List<Varied> after = new ArrayList<>();
    for (Varied one : before) {
      for (String value : field.substring(equals + 1).split(",")) {
        String label = (one.label().isEmpty() ? "" : one.label() + ", ") + name + " " + value;
        after.add(new Varied(label, one.document().withValue(path, value.strip())));
      }
    }
    if (after.size() > MOST_VARIANTS) {
      throw CommandFailure.badInput(
          VARY
              + " asks for "
              + after.size()
              + " variants; at most "
              + MOST_VARIANTS
              + " can be compared at once. Vary fewer fields.");
    }
    return after;
  }

  private static ExitCode exitCode(List<Variant> variants) {
    for (Variant variant : variants) {
      if (Verdicts.exitCode(variant.checks()) != ExitCode.DONE) {
        return ExitCode.CHECK_SAYS_STOP;
      }
    }
    return ExitCode.DONE;
  }
}
