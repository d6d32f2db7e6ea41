package trammel.ledger;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.planning.fitup.TackVerdict;

/**
 * Readings after tacking, written down as they come: each reading once, with who read it and when,
 * and after it what all of them together told the shop to do. An entry that is corrected stays in
 * the file and counts no more.
 */
public final class Tackings {
  private static final String SELECT =
      "select job, count, tacked_on, form, answer, said, id, written_at, written_by from tacking"
          + " where replaced_at is null";

  private final Sql sql;
  private final Hand hand;

  Tackings(Sql sql, Hand hand) {
    this.sql = sql;
    this.hand = hand;
  }

  /** The entries of a job that count, the first first, and when and by whom each was written. */
  public List<Written<Tacking>> of(String job) {
    return sql.view(() -> sql.rows(SELECT + " and job = ? order by count", this::written, job));
  }

  /** The entries of all jobs that count, job by job. */
  public List<Written<Tacking>> all() {
    return sql.view(() -> sql.rows(SELECT + " order by job, count", this::written));
  }

  /** The readings of a job's latest form as they stand, in the order in which they first came. */
  public List<Tacking.Reading> standing(String job) {
    return standing(of(job).stream().map(Written::what).toList());
  }

  /**
   * The readings of the latest form as they stood after some entries of a job.
   *
   * @param entries the entries from the first on
   */
  public static List<Tacking.Reading> standing(List<Tacking> entries) {
    return entries.isEmpty()
        ? List.of()
        : standing(entries, entries.get(entries.size() - 1).form());
  }

  private static List<Tacking.Reading> standing(List<Tacking> entries, String form) {
    Map<String, Tacking.Reading> byTarget = new LinkedHashMap<>();
    for (Tacking entry : sameForm(entries, form)) {
      entry.readings().forEach(reading -> byTarget.put(reading.target(), reading));
    }
    return byTarget.values().stream().filter(one -> !one.values().isEmpty()).toList();
  }

  /** The entries since the plan last became another. */
  private static List<Tacking> sameForm(List<Tacking> entries, String form) {
    int first = entries.size();
    while (first > 0 && entries.get(first - 1).form().equals(form)) {
      first--;
    }
    return entries.subList(first, entries.size());
  }

  /**
   * Writes down what is new in a form against the entries so far; nothing if nothing is.
   *
   * @param now what the whole form says now; its count is not looked at
   * @return the entry, with what was read since the one before
   */
  public Optional<Tacking> write(Tacking now) {
    return sql.change(
        () -> {
          List<Tacking> entries = of(now.job()).stream().map(Written::what).toList();
          List<Tacking.Reading> news = news(standing(entries, now.form()), now.readings());
          if (news.isEmpty() && isToldAlready(entries, now)) {
            return Optional.empty();
          }
          Tacking entry =
              new Tacking(
                  now.job(),
                  (int)
                          sql.number(
                              "select coalesce(max(count), 0) from tacking where job = ?",
                              now.job())
                      + 1,
                  now.tackedOn(),
                  now.form(),
                  now.answer(),
                  now.said(),
                  news);
          add(entry);
          return Optional.of(entry);
        });
  }

  private static boolean isToldAlready(List<Tacking> entries, Tacking now) {
    if (entries.isEmpty()) {
      return false;
    }
    Tacking last = entries.get(entries.size() - 1);
    return last.form().equals(now.form())
        && last.answer() == now.answer()
        && last.said().equals(now.said());
  }

  /** What differs; a target that has no reading any more comes without one. */
  private static List<Tacking.Reading> news(
      List<Tacking.Reading> before, List<Tacking.Reading> after) {
    Map<String, Tacking.Reading> gone = new LinkedHashMap<>();
    before.forEach(reading -> gone.put(reading.target(), reading));
    List<Tacking.Reading> news = new ArrayList<>();
    for (Tacking.Reading reading : after) {
      Tacking.Reading old = gone.remove(reading.target());
      if (old == null || !reading.isSame(old)) {
        news.add(reading);
      }
    }
    for (Tacking.Reading old : gone.values()) {
      news.add(
          new Tacking.Reading(old.target(), old.kind(), old.planned(), old.within(), List.of()));
    }
    return news;
  }

  /**
   * Adds an entry as it is; one of the same job and count counts no more.
   *
   * @param entry the entry, its count given
   */
  public void put(Tacking entry) {
    sql.change(
        () -> {
          takeOut(entry.job(), entry.count());
          add(entry);
          return null;
        });
  }

  /** Takes an entry out of those that count. */
  public void takeOut(String job, int count) {
    sql.run(
        "update tacking set replaced_at = ? where job = ? and count = ? and replaced_at is null",
        hand.at(),
        job,
        count);
  }

  private void add(Tacking entry) {
    sql.run(
        "insert into tacking (job, count, tacked_on, form, answer, said, written_at, written_by)"
            + " values (?, ?, ?, ?, ?, ?, ?, ?)",
        entry.job(),
        entry.count(),
        entry.tackedOn().toString(),
        entry.form(),
        entry.answer().words(),
        String.join("\n", entry.said()),
        hand.at(),
        hand.who());
    long id = sql.number("select last_insert_rowid()");
    int line = 0;
    for (Tacking.Reading reading : entry.readings()) {
      // A reading that was taken back is a line without a value.
      List<Double> values =
          reading.values().isEmpty() ? Arrays.asList((Double) null) : reading.values();
      for (Double value : values) {
        line++;
        sql.run(
            "insert into tack_reading values (?, ?, ?, ?, ?, ?, ?)",
            id,
            line,
            reading.target(),
            reading.kind().word(),
            reading.planned(),
            reading.within(),
            value);
      }
    }
  }

  private Written<Tacking> written(ResultSet row) throws SQLException {
    String said = row.getString(6);
    return new Written<>(
        row.getString(8),
        row.getString(9),
        new Tacking(
            row.getString(1),
            row.getInt(2),
            Sql.day(row, 3),
            row.getString(4),
            answer(row.getString(5)),
            said.isEmpty() ? List.of() : List.of(said.split("\n")),
            readings(row.getLong(7))));
  }

  private static TackVerdict answer(String words) {
    return TackVerdict.named(words)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "The answer after tacking is '"
                        + words
                        + "', which is none. Put a backup in its place."));
  }

  private List<Tacking.Reading> readings(long tacking) {
    Map<String, Tacking.Reading> byTarget = new LinkedHashMap<>();
    List<Tacking.Reading> lines =
        sql.rows(
            "select target, kind, planned, allowed, value from tack_reading where tacking = ? order"
                + " by line",
            row ->
                new Tacking.Reading(
                    row.getString(1),
                    Sql.word(row, 2, Tacking.Kind.class),
                    row.getDouble(3),
                    row.getDouble(4),
                    Sql.optional(row, 5).stream().boxed().toList()),
            tacking);
    for (Tacking.Reading line : lines) {
      byTarget.merge(line.target(), line, Tackings::together);
    }
    return List.copyOf(byTarget.values());
  }

  private static Tacking.Reading together(Tacking.Reading first, Tacking.Reading again) {
    List<Double> values = new ArrayList<>(first.values());
    values.addAll(again.values());
    return new Tacking.Reading(
        first.target(), first.kind(), first.planned(), first.within(), values);
  }
}
