package trammel.app.commands;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.desk.Alternatives;
import trammel.app.desk.Workbench;
import trammel.app.json.CompareJson;
import trammel.app.text.Amounts;
import trammel.app.text.CompareText;
import trammel.planning.compare.Variant;
import trammel.planning.draft.Draft;
import trammel.planning.job.Job;
import trammel.trade.money.Money;

/** Sets variants of a job side by side and explains the difference. */
public final class CompareCommand extends JobCommand {
  private static final String VARY = "--vary";

  @Override
  public Syntax syntax() {
    return CommonOptions.addTo(
        JobRun.addTo(
                Syntax.of(
                    "Sets variants of a job side by side, with the lines that make the difference."
                        + " Without --vary, every installed spring by every mounting of the"
                        + " linkage."))
            .flag(
                CommonOptions.FULL, "Print every line that makes the difference, with its reason.")
            .repeatableOption(
                VARY,
                "FIELD=A,B",
                "A field of the job file and its values; several fields make every combination."));
  }

  @Override
  public ExitCode run(Arguments arguments, Screen screen) {
    CommonOptions options = CommonOptions.of(arguments);
    Workbench bench = bench(options.units(), screen);
    List<String> vary = arguments.values(VARY);
    boolean full = arguments.has(CommonOptions.FULL);
    return JobRun.run(
        arguments,
        screen,
        bench,
        options.json(),
        (draft, folder) -> result(draft, vary, bench, screen, options.json(), full));
  }

  private static JobResult result(
      Draft own, List<String> vary, Workbench bench, Screen screen, boolean asJson, boolean full) {
    List<Variant> variants = variants(own.job(), vary, bench, screen);
    Amounts amounts = new Amounts(bench.shown(own.job()));
    String text =
        asJson
            ? ""
            : JobHeading.text(variants.get(0).estimate().draft())
                + (full
                    ? new CompareText(amounts).text(variants)
                    : new CompareText(amounts).brief(variants));
    return new JobResult(
        text,
        asJson ? CompareJson.of(variants, amounts) : Map.of(),
        exitCode(variants),
        figures(variants));
  }

  private static List<Variant> variants(
      Job job, List<String> vary, Workbench bench, Screen screen) {
    List<Variation> variations =
        vary.isEmpty()
            ? Variation.usual(
                job.source(), job.chosen(), bench.extensions().extensions(), bench.catalog())
            : Variation.of(job.source(), vary);
    List<Variant> variants = new ArrayList<>(variations.size());
    Alternatives alternatives = new Alternatives(bench, job.chosen());
    boolean faulty = false;
    for (Variation one : variations) {
      Alternatives.Way way = alternatives.of(one.document());
      if (way.estimate().isPresent()) {
        variants.add(new Variant(one.label(), way.estimate().get(), way.checks()));
      } else {
        screen.err().println("Left out: " + one.label() + ". " + way.reason());
        faulty |= way.faulty();
      }
    }
    if (variants.isEmpty() && faulty) {
      throw CommandFailure.fault(
          "None of the variants can be worked out; the reasons are above. Vary something else.");
    }
    if (variants.isEmpty()) {
      throw CommandFailure.badInput(
          "None of the variants fits the vehicle; the reasons are above. Vary something else.");
    }
    return variants;
  }

  private static List<JobFigure> figures(List<Variant> variants) {
    Money least = variants.get(0).estimate().price().total();
    Money most = least;
    for (Variant variant : variants) {
      Money total = variant.estimate().price().total();
      least = total.compareTo(least) < 0 ? total : least;
      most = total.compareTo(most) > 0 ? total : most;
    }
    return List.of(
        JobFigure.count("variants", "variants", variants.size()),
        JobFigure.money("cheapest", "least_total", least),
        JobFigure.money("dearest", "most_total", most));
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
