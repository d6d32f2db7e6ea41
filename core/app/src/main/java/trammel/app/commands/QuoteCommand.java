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
import trammel.app.files.OutFolder;
import trammel.app.json.EstimateJson;
import trammel.app.json.WhyJson;
import trammel.app.text.Amounts;
import trammel.app.text.Cautions;
import trammel.app.text.CheckText;
import trammel.app.text.LayoutText;
import trammel.app.text.PlanText;
import trammel.app.text.PriceText;
import trammel.app.text.QuoteText;
import trammel.app.text.WhyText;
import trammel.cutting.background.Background;
import trammel.engine.checks.CheckResult;
import trammel.engine.checks.LayoutAnalysis;
import trammel.planning.draft.Draft;
import trammel.planning.estimate.Estimate;
import trammel.planning.estimate.Explanation;
import trammel.planning.estimate.PriceTrail;
import trammel.reading.quantity.QuantityPrinter;
import trammel.trade.money.CostBuildUp;

/** Takes a job from its measurements to its price. */
public final class QuoteCommand extends JobCommand {
  private static final String QUIET = "--quiet";
  private static final String WHY = "--why";

  @Override
  public Syntax syntax() {
    return CommonOptions.addWithOutTo(
            JobRun.addTo(
                Syntax.of(
                    "Takes a job from its measurements to its price: layout, checks, plan, cost"
                        + " build-up. With --out it writes the folder to hand out: the customer's"
                        + " quote, the shop's cost sheet, the material order and the floor packet,"
                        + " as HTML and PDF, and what saw and cutting table need.")))
        .flag(CommonOptions.FULL, "Print layout, checks, plan and cost build-up in full.")
        .flag(QUIET, "With --out: do not tell how far it is.")
        .option(
            WHY,
            "LINE",
            "Only how this figure came about: tax, labour, deposit, or a line by its name.");
  }

  @Override
  public ExitCode run(Arguments arguments, Screen screen) {
    CommonOptions options = CommonOptions.of(arguments);
    Workbench bench = bench(options.units(), screen);
    boolean quiet = arguments.has(QUIET);
    boolean full = arguments.has(CommonOptions.FULL);
    Optional<String> why = arguments.value(WHY);
    if (why.isPresent() && CommonOptions.asksForFiles(arguments)) {
      throw CommandFailure.badInput(
          WHY + " shows one figure and writes no files; give it without --out.");
    }
    return JobRun.run(
        arguments,
        screen,
        bench,
        options.json(),
        CommonOptions.outFolder(arguments, "quote"),
        (draft, folder) ->
            why.isPresent()
                ? why(why.get(), draft, bench)
                : result(draft, bench, folder, screen, new Print(options.json(), full, quiet)));
  }

  /** How the result is printed: for a machine, in full, and without telling how far it is. */
  private record Print(boolean asJson, boolean full, boolean quiet) {}

  private static JobResult why(String asked, Draft draft, Workbench bench) {
    Estimate estimate = bench.estimate(draft);
    PriceTrail trail = new PriceTrail(estimate);
    List<Explanation> found = trail.find(asked);
    if (found.isEmpty()) {
      throw CommandFailure.badInput(
          WHY
              + " was given '"
              + asked
              + "'; this quote has the lines "
              + String.join(", ", trail.names())
              + ". Give one of them, or some words of its title.");
    }
    return new JobResult(
        WhyText.text(found),
        WhyJson.of(draft.job().header().number(), found),
        ExitCode.DONE,
        figures(estimate, new Amounts(bench.shown(draft.job())).printer()));
  }

  private static JobResult result(
      Draft draft, Workbench bench, Optional<OutFolder> folder, Screen screen, Print print) {
    Background<List<CheckResult>> judging =
        Background.start(() -> draft.judge().judge(draft.layout()));
    Estimate estimate = bench.estimate(draft);
    List<CheckResult> results = judging.get();
    if (folder.isPresent()) {
      new QuoteFolder(bench, screen, print.quiet()).write(folder.get(), estimate, results);
    }
    String text = print.asJson() ? "" : text(draft, estimate, results, bench, print.full());
    return new JobResult(
        text,
        print.asJson()
            ? EstimateJson.quote(
                estimate,
                results,
                Verdicts.stops(draft, results, new Amounts(bench.shown(draft.job()))))
            : Map.of(),
        Verdicts.exitCode(results),
        figures(estimate, new Amounts(bench.shown(draft.job())).printer()));
  }

  private static String text(
      Draft draft, Estimate estimate, List<CheckResult> results, Workbench bench, boolean full) {
    Amounts amounts = new Amounts(bench.shown(draft.job()));
    LayoutAnalysis analysis = new LayoutAnalysis(draft.layout(), draft.judge().settings());
    if (!full) {
      return JobHeading.text(draft)
          + new QuoteText(estimate, amounts).text(analysis, results, draft.job().source().file());
    }
    return JobHeading.text(draft)
        + new LayoutText(analysis, amounts).text()
        + "\n"
        + new CheckText(draft, amounts).text(results)
        + "\n"
        + new PlanText(estimate, amounts).text()
        + "\n"
        + new PriceText(estimate, amounts).text()
        + "\n"
        + Cautions.text();
  }

  private static List<JobFigure> figures(Estimate estimate, QuantityPrinter printer) {
    CostBuildUp price = estimate.price();
    return List.of(
        JobFigure.sum("hours", "mean_h", estimate.hours().meanHours(), printer::hours),
        JobFigure.money("before tax", "subtotal", price.subtotal()),
        JobFigure.money("tax", "tax", price.tax()),
        JobFigure.money("TOTAL", "total", price.total()),
        JobFigure.money("deposit", "deposit", price.payments().deposit()));
  }
}
