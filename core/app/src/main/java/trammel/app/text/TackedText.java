package trammel.app.text;

import trammel.engine.checks.CheckResult;
import trammel.engine.checks.CheckResult.Judged;
import trammel.engine.checks.Verdict;
import trammel.planning.fitup.TackReport;
import trammel.reading.quantity.QuantityPrinter;

/** What the readings after tacking say, on a screen: what to do first, then why. */
public final class TackedText {
  private static final String[] POSITIVE = {"forward", "left", "up"};
  private static final String[] NEGATIVE = {"rearward", "right", "down"};

  /** Half of the 1/32 in to which a bracket is set. */
  private static final double LEAST_MM = 25.4 / 64;

  private final Amounts amounts;
  private final QuantityPrinter printer;

  /**
   * @param amounts prints values in the reader's units
   */
  public TackedText(Amounts amounts) {
    this.amounts = amounts;
    printer = amounts.printer();
  }

  /** The whole answer. */
  public String text(TackReport report) {
    StringBuilder text = new StringBuilder();
    text.append(report.verdict().words().toUpperCase(java.util.Locale.ROOT)).append('\n');
    for (String reason : report.reasons()) {
      text.append(Paragraph.wrap(reason, "  ", "    "));
    }
    if (!report.again().isEmpty()) {
      text.append("\nMEASURE AGAIN\n");
      for (TackReport.Again again : report.again()) {
        text.append(Paragraph.wrap(again.id() + ": " + again.why(), "  ", "    "));
      }
    }
    if (!report.moves().isEmpty()) {
      text.append("\nRE-SET\n");
      for (TackReport.Move move : report.moves()) {
        text.append(Paragraph.wrap(words(move), "  ", "    "));
      }
    }
    text.append('\n').append(axle(report.axle())).append('\n').append(checks(report));
    return text.toString();
  }

  /** Which bracket, which way, how much. */
  public String words(TackReport.Move move) {
    StringBuilder ways = new StringBuilder();
    for (int i = 0; i < POSITIVE.length; i++) {
      double back = -move.offMm()[i];
      if (Math.abs(back) >= LEAST_MM) {
        ways.append(ways.length() == 0 ? "" : ", ");
        ways.append(printer.length(Math.abs(back))).append(' ');
        ways.append(back < 0 ? NEGATIVE[i] : POSITIVE[i]);
      }
    }
    return "move the "
        + move.what()
        + " "
        + ways
        + "; it is "
        + printer.length(move.distanceMm())
        + " off";
  }

  private String axle(TackReport.AxleSeat seat) {
    Table table = new Table("lr");
    table.row("wheelbase, left less right", printer.length(seat.squareMm()));
    table.row("ahead of where it belongs", printer.length(seat.forwardMm()));
    table.row("left of where it belongs", printer.length(seat.leftMm()));
    table.row("turned seen from above, anticlockwise", printer.angle(seat.turnRad(), 2));
    return "THE AXLE as it sits; set it by the length of the bars\n" + table.text("  ");
  }

  private String checks(TackReport report) {
    Table table = new Table("lrll");
    int good = 0;
    for (CheckResult result : report.asTacked()) {
      if (result instanceof Judged judged) {
        if (judged.verdict() == Verdict.GOOD) {
          good++;
        } else {
          table.row(
              CheckText.word(judged.verdict()),
              amounts.value(judged.measure(), judged.value()),
              Stops.title(judged),
              amounts.good(judged.measure(), judged.limit()));
        }
      }
    }
    return "CHECKS as tacked, worst first\n"
        + table.text("  ")
        + "  good: the other "
        + good
        + "\n";
  }
}
