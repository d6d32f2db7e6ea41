package trammel.app.text;

import java.util.List;
import trammel.engine.checks.CheckResult;
import trammel.engine.checks.CheckResult.Judged;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.RideState;
import trammel.engine.checks.Verdict;
import trammel.engine.layout.Chassis;
import trammel.planning.estimate.Estimate;
import trammel.reading.quantity.QuantityPrinter;
import trammel.trade.money.ClassTotal;
import trammel.trade.money.CostClass;

/**
 * A quote that fits a screen: the layout in a few figures, what is not good and what to change, the
 * price by class with the odds of the hours, and what to do next.
 */
public final class QuoteText {
  /** More is told in full by {@code check}. */
  private static final int MOST_CHECKS = 6;

  private final Estimate estimate;
  private final Amounts amounts;
  private final QuantityPrinter printer;

  /**
   * @param estimate the job
   * @param amounts prints values in the reader's units
   */
  public QuoteText(Estimate estimate, Amounts amounts) {
    this.estimate = estimate;
    this.amounts = amounts;
    printer = amounts.printer();
  }

  /**
   * The quote.
   *
   * @param analysis the layout set in motion
   * @param results its checks
   * @param file the job file, for what to type next
   */
  public String text(LayoutAnalysis analysis, List<CheckResult> results, String file) {
    return "LAYOUT\n"
        + layout(analysis)
        + '\n'
        + checks(results)
        + '\n'
        + "PRICE\n"
        + classes()
        + new PriceText(estimate, amounts).sums()
        + '\n'
        + next(results, file)
        + '\n'
        + Cautions.brief();
  }

  private String layout(LayoutAnalysis analysis) {
    RideState ride = analysis.ride();
    Chassis chassis = analysis.layout().chassis();
    Table table = new Table("lrl");
    table.row(
        "travel",
        printer.length(chassis.travel().bumpMm()) + " up",
        printer.length(chassis.travel().droopMm()) + " down");
    table.row(
        "universal joints",
        printer.angle(ride.shaft().frontJointRad(), 2),
        printer.angle(ride.shaft().rearJointRad(), 2) + " at the pinion, at ride");
    table.row("anti-squat", printer.percent(ride.antiSquatShare()), "");
    table.row(
        "ride frequency",
        Amounts.fixed(ride.rideFrequencyHz(), 2) + " Hz",
        printer.rate(ride.rates().heaveNPerMm()) + " at each wheel");
    table.row(
        "frame notch",
        chassis.rails().notchDepthMm() > 0
            ? printer.length(chassis.rails().notchDepthMm())
            : "none",
        "");
    table.row(
        "added",
        printer.mass(estimate.materials().steelMassKg()),
        "of steel, " + printer.mass(estimate.materials().partsMassKg()) + " of bought parts");
    return table.text("  ");
  }

  private String checks(List<CheckResult> results) {
    int stops = count(results, Verdict.STOP);
    int looks = count(results, Verdict.LOOK_AGAIN);
    StringBuilder text =
        new StringBuilder("CHECKS: ")
            .append(stops)
            .append(" STOP, ")
            .append(looks)
            .append(" look again, ")
            .append(count(results, Verdict.GOOD))
            .append(" good");
    int unjudged = results.size() - stops - looks - count(results, Verdict.GOOD);
    if (unjudged > 0) {
      text.append(", ").append(unjudged).append(" not judged");
    }
    text.append("\n");
    return text.append(new CheckText(estimate.draft(), amounts).notGood(results, MOST_CHECKS))
        .toString();
  }

  private static int count(List<CheckResult> results, Verdict verdict) {
    int count = 0;
    for (CheckResult result : results) {
      count += result instanceof Judged judged && judged.verdict() == verdict ? 1 : 0;
    }
    return count;
  }

  private String classes() {
    Table table = new Table("lrl");
    for (ClassTotal total : estimate.price().classTotals()) {
      table.row(
          total.costClass().title(),
          total.price().text(),
          total.costClass() == CostClass.LABOUR ? odds() : "");
    }
    return table.text("  ");
  }

  private String odds() {
    return "mean "
        + printer.hours(estimate.hours().meanHours())
        + ", half the jobs within "
        + printer.hours(estimate.hours().p50Hours())
        + ", eight of ten within "
        + printer.hours(estimate.hours().p80Hours());
  }

  private String next(List<CheckResult> results, String file) {
    boolean good = count(results, Verdict.STOP) + count(results, Verdict.LOOK_AGAIN) == 0;
    Table table = new Table("ll");
    if (!good) {
      table.row("trammel check " + file, "what to change, in full");
      table.row("trammel arrange " + file, "layouts that pass every check");
    }
    table.row("trammel quote --full " + file, "every part, plate, weld, operation and line");
    table.row("trammel quote --why labour " + file, "how a figure came about");
    table.row("trammel quote --out DIR " + file, "the papers to hand out");
    return "NEXT\n" + table.text("  ");
  }
}
