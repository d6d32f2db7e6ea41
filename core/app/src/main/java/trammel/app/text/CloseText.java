package trammel.app.text;

import java.util.List;
import trammel.app.closing.ActualsFile;
import trammel.planning.estimate.Counts;
import trammel.planning.learning.ClosedJob;
import trammel.planning.learning.LearnedHours;
import trammel.planning.learning.QuoteRecord;
import trammel.trade.labour.OperationLine;

/** What closing a job taught, on a screen. */
public final class CloseText {
  private CloseText() {}

  /**
   * The whole report.
   *
   * @param job the job that was closed
   * @param operations its operations by the catalog, for their titles
   * @param before what was learned before
   * @param after what is learned now
   * @param record how past quotes did
   * @param material what was used other than ordered
   */
  public static String text(
      ClosedJob job,
      List<OperationLine> operations,
      LearnedHours before,
      LearnedHours after,
      QuoteRecord record,
      List<ActualsFile.Difference> material) {
    StringBuilder text = new StringBuilder("CLOSED ").append(job.number()).append('\n');
    job.wholeHours()
        .ifPresent(
            hours ->
                text.append("  ")
                    .append(Amounts.fixed(hours, 1))
                    .append(" h used, ")
                    .append(Amounts.fixed(job.quotedHours(), 1))
                    .append(" h quoted, eight of ten within ")
                    .append(Amounts.fixed(job.quotedEightOfTen(), 1))
                    .append(" h\n"));
    text.append("\nSTANDARD HOURS are multiplied by\n");
    Table table = new Table("lrrl");
    table.row("", "before", "now", "");
    for (OperationLine line : operations) {
      String key = line.operation().key();
      table.row(
          line.operation().title(),
          Amounts.fixed(before.factor(key), 2),
          Amounts.fixed(after.factor(key), 2),
          "from " + Counts.of(after.jobs(key), "job"));
    }
    text.append(table.text("  "));
    text.append("  spread of the hours x ").append(Amounts.fixed(after.scatter(), 2)).append('\n');
    text.append('\n').append(quotes(record));
    return text.append(material(material)).toString();
  }

  private static String quotes(QuoteRecord record) {
    if (record.jobs() == 0) {
      return "QUOTES: no job with all its hours is closed yet\n";
    }
    return "QUOTES: "
        + record.within()
        + " of "
        + Counts.of(record.jobs(), "job")
        + " stayed within the hours that eight of ten were to stay within;\n  that speaks for "
        + Amounts.fixed(100 * record.leastShare(), 0)
        + " % to "
        + Amounts.fixed(100 * record.mostShare(), 0)
        + " % of jobs, nine times in ten\n";
  }

  private static String material(List<ActualsFile.Difference> material) {
    if (material.isEmpty()) {
      return "";
    }
    Table table = new Table("rrll");
    table.row("ordered", "used", "", "");
    for (ActualsFile.Difference difference : material) {
      table.row(
          Amounts.plain(difference.line().quantity().doubleValue()),
          Amounts.plain(difference.used()),
          difference.line().unit(),
          difference.line().title());
    }
    return "\nMATERIAL used other than ordered\n" + table.text("  ");
  }
}
