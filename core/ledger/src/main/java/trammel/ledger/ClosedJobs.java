package trammel.ledger;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.planning.learning.ClosedJob;
import trammel.planning.learning.ClosedOperation;

/**
 * The closed jobs of the ledger. Of a job that is closed again the last closing counts; the earlier
 * ones stay in the file and can be looked up.
 */
public final class ClosedJobs {
  private static final String COLUMNS =
      "select c.id, c.number, c.closed_on, c.quoted_hours, c.quoted_eight_of_ten_hours,"
          + " c.used_hours, o.operation, o.standard_hours, o.deviation_hours, o.used_hours,"
          + " c.replaced_at from closing c join closing_operation o on o.closing = c.id ";
  private static final String ORDER = " order by c.place, c.id, o.line";

  private final Sql sql;
  private final Hand hand;

  ClosedJobs(Sql sql, Hand hand) {
    this.sql = sql;
    this.hand = hand;
  }

  /**
   * A closing that counts no more.
   *
   * @param job what was written down
   * @param replacedAt when another took its place, or it was taken out; UTC
   */
  public record Earlier(ClosedJob job, String replacedAt) {}

  /** The closings that count, in the order in which the jobs were closed. */
  public List<ClosedJob> all() {
    return jobs("where c.replaced_at is null" + ORDER).stream().map(Earlier::job).toList();
  }

  /** The closings that count no more, in the order in which they were closed. */
  public List<Earlier> earlier() {
    return jobs("where c.replaced_at is not null" + ORDER);
  }

  /** How many jobs are closed. */
  public int count() {
    return (int) sql.number("select count(*) from closing where replaced_at is null");
  }

  /** Tells what the shop's hours are learned from in one state from another state of it. */
  public String state() {
    return String.join(
        "\n",
        sql.rows(
            "select id || ' ' || written_at || ' ' || coalesce(replaced_at, '') || ' ' || number"
                + " from closing order by id",
            row -> row.getString(1)));
  }

  /** The closing of a job that counts. */
  public Optional<ClosedJob> of(String number) {
    return jobs("where c.replaced_at is null and c.number = ?" + ORDER, number).stream()
        .map(Earlier::job)
        .findFirst();
  }

  /** Adds a job as the last one closed; if it was closed before, this closing counts from now. */
  public void close(ClosedJob job) {
    sql.change(
        () -> {
          replace(job.number());
          insert(job, sql.number("select coalesce(max(place), 0) + 1 from closing"));
          return null;
        });
  }

  /** Puts another closing in the place of the one that counts, in the same place in the order. */
  public void correct(ClosedJob job) {
    sql.change(
        () -> {
          List<Long> place =
              sql.rows(
                  "select place from closing where number = ? and replaced_at is null",
                  row -> row.getLong(1),
                  job.number());
          if (place.isEmpty()) {
            throw new IllegalArgumentException(
                "Job " + job.number() + " is not closed, so there is nothing to correct.");
          }
          replace(job.number());
          insert(job, place.get(0));
          return null;
        });
  }

  /** Takes a job out of those that count. */
  public void takeOut(String number) {
    sql.change(
        () -> {
          replace(number);
          return null;
        });
  }

  private void replace(String number) {
    sql.run(
        "update closing set replaced_at = ? where number = ? and replaced_at is null",
        hand.at(),
        number);
  }

  private void insert(ClosedJob job, long place) {
    sql.run(
        "insert into closing (place, number, closed_on, quoted_hours, quoted_eight_of_ten_hours,"
            + " used_hours, written_at, written_by) values (?, ?, ?, ?, ?, ?, ?, ?)",
        place,
        job.number(),
        job.closed().toString(),
        job.quotedHours(),
        job.quotedEightOfTen(),
        job.usedHours(),
        hand.at(),
        hand.who());
    long closing = sql.number("select last_insert_rowid()");
    for (int i = 0; i < job.operations().size(); i++) {
      ClosedOperation operation = job.operations().get(i);
      sql.run(
          "insert into closing_operation values (?, ?, ?, ?, ?, ?)",
          closing,
          i + 1,
          operation.key(),
          operation.standardHours(),
          operation.deviationHours(),
          operation.usedHours());
    }
  }

  private record Line(
      long closing,
      String number,
      LocalDate closedOn,
      double quotedHours,
      double quotedEightOfTen,
      OptionalDouble usedHours,
      ClosedOperation operation,
      String replacedAt) {
    static Line of(ResultSet row) throws SQLException {
      return new Line(
          row.getLong(1),
          row.getString(2),
          Sql.day(row, 3),
          row.getDouble(4),
          row.getDouble(5),
          Sql.optional(row, 6),
          new ClosedOperation(
              row.getString(7), row.getDouble(8), row.getDouble(9), Sql.optional(row, 10)),
          row.getString(11));
    }
  }

  private List<Earlier> jobs(String where, Object... values) {
    Map<Long, List<Line>> byClosing = new LinkedHashMap<>();
    for (Line line : sql.rows(COLUMNS + where, Line::of, values)) {
      byClosing.computeIfAbsent(line.closing, closing -> new ArrayList<>()).add(line);
    }
    return byClosing.values().stream().map(ClosedJobs::job).toList();
  }

  private static Earlier job(List<Line> lines) {
    Line first = lines.get(0);
    ClosedJob job =
        new ClosedJob(
            first.number,
            first.closedOn,
            first.quotedHours,
            first.quotedEightOfTen,
            lines.stream().map(Line::operation).toList(),
            first.usedHours);
    return new Earlier(job, first.replacedAt == null ? "" : first.replacedAt);
  }
}
