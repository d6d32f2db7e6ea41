package trammel.ledger;

import java.nio.file.Path;
import java.util.List;

/**
 * The tables of the ledger, in steps: step n lifts a file of version n - 1 to version n. A step
 * that was ever released is never edited; what is new is a new step at the end.
 *
 * <p>Lengths are millimetres, angles radians and hours are hours, as floating point, which keeps
 * every double; counts of bought parts and amounts of money are decimals as text, which keeps every
 * digit; days and moments are ISO 8601 text, moments in UTC.
 */
final class Schema {
  /** Marks the file as a ledger of this project: the letters TrLg. */
  static final int MARK = 0x54724c67;

  /** One step up. */
  record Step(List<String> statements) {
    static Step of(String... statements) {
      return new Step(List.of(statements));
    }
  }

  /** The steps of this release. */
  static final List<Step> STEPS =
      List.of(
          Step.of(
              """
              create table closing (
                id integer primary key autoincrement,
                place integer not null,
                number text not null check (length(number) > 0),
                closed_on text not null,
                quoted_hours real not null check (quoted_hours > 0),
                quoted_eight_of_ten_hours real not null check (quoted_eight_of_ten_hours > 0),
                used_hours real check (used_hours > 0),
                written_at text not null,
                replaced_at text
              ) strict\
              """,
              // Of the closings of one job one counts; the earlier ones stay to be looked up.
              "create unique index closing_that_counts on closing (number)"
                  + " where replaced_at is null",
              """
              create table closing_operation (
                closing integer not null references closing (id),
                line integer not null,
                operation text not null check (length(operation) > 0),
                standard_hours real not null check (standard_hours > 0),
                deviation_hours real not null check (deviation_hours >= 0),
                used_hours real check (used_hours > 0),
                primary key (closing, line),
                unique (closing, operation)
              ) strict, without rowid\
              """,
              """
              create table rack_piece (
                id integer primary key autoincrement,
                kind text not null check (kind in ('stick', 'drop')),
                name text not null unique check (length(name) > 0),
                item text not null check (length(item) > 0),
                length_mm real not null check (length_mm > 0),
                width_mm real not null check (kind = 'stick' and width_mm = 0 or width_mm > 0)
              ) strict\
              """,
              """
              create table rack_bin (
                id integer primary key autoincrement,
                item text not null check (length(item) > 0),
                length_mm real not null check (length_mm >= 0),
                quantity text not null
              ) strict\
              """,
              """
              create table rack_movement (
                id integer primary key autoincrement,
                moved_at text not null,
                reason text not null check (length(reason) > 0),
                kind text not null check (kind in ('stick', 'drop', 'bin')),
                name text not null,
                item text not null,
                length_mm real not null,
                width_mm real not null,
                change text not null
              ) strict\
              """),
          Step.of(
              """
              create table price_change (
                id integer primary key autoincrement,
                written_at text not null,
                item text not null check (length(item) > 0),
                length_mm real not null check (length_mm >= 0),
                width_mm real not null check (width_mm >= 0),
                price_of text not null check (price_of in ('one', 'pack', 'nut', 'washer')),
                from_number integer not null check (from_number >= 1),
                was text,
                price text not null,
                currency text not null check (length(currency) = 3),
                priced_on text not null,
                source text not null check (length(source) > 0)
              ) strict\
              """,
              "create index price_change_of on price_change (item)"),
          Step.of(
              """
              create table book_job (
                id integer primary key autoincrement,
                number text not null unique check (length(number) > 0),
                customer text not null,
                vehicle text not null
              ) strict\
              """,
              """
              create table offer (
                id integer primary key autoincrement,
                job text not null references book_job (number),
                kind text not null check (kind in ('quote', 'change')),
                count integer not null check (count >= 1),
                given_on text not null,
                why text not null,
                currency text not null check (length(currency) = 3),
                tax_name text not null,
                tax text not null,
                rounding text not null,
                mean_hours real not null check (mean_hours > 0),
                eight_of_ten_hours real not null check (eight_of_ten_hours > 0),
                written_at text not null,
                accepted_on text,
                dropped_on text,
                unique (job, kind, count)
              ) strict\
              """,
              """
              create table offer_line (
                offer integer not null references offer (id),
                line integer not null,
                item text not null check (length(item) > 0),
                title text not null,
                class text not null,
                quantity text not null,
                price text not null,
                primary key (offer, line)
              ) strict, without rowid\
              """,
              """
              create table offer_payment (
                offer integer not null references offer (id),
                line integer not null,
                due_at text not null,
                amount text not null,
                primary key (offer, line)
              ) strict, without rowid\
              """,
              """
              create table payment (
                id integer primary key autoincrement,
                job text not null references book_job (number),
                paid_on text not null,
                amount text not null,
                currency text not null check (length(currency) = 3),
                note text not null,
                written_at text not null
              ) strict\
              """,
              """
              create table stage (
                id integer primary key autoincrement,
                job text not null references book_job (number),
                title text not null check (length(title) > 0),
                word text not null check (word in ('promised', 'done')),
                day text not null,
                why text not null,
                written_at text not null
              ) strict\
              """,
              """
              create table invoice (
                number integer primary key autoincrement,
                job text not null unique references book_job (number),
                given_on text not null,
                currency text not null check (length(currency) = 3),
                total text not null,
                paid text not null,
                written_at text not null
              ) strict\
              """,
              """
              create table invoice_line (
                invoice integer not null references invoice (number),
                line integer not null,
                title text not null,
                before_tax text not null,
                amount text not null,
                primary key (invoice, line)
              ) strict, without rowid\
              """,
              """
              create table purchase (
                id integer primary key autoincrement,
                number text not null check (length(number) > 0),
                supplier text not null check (length(supplier) > 0),
                placed_on text not null,
                due_on text not null,
                jobs text not null,
                currency text not null check (length(currency) = 3),
                written_at text not null,
                dropped_at text
              ) strict\
              """,
              "create unique index purchase_that_counts on purchase (number)"
                  + " where dropped_at is null",
              """
              create table purchase_line (
                purchase integer not null references purchase (id),
                line integer not null,
                item text not null check (length(item) > 0),
                title text not null,
                quantity text not null,
                unit text not null,
                amount text not null,
                primary key (purchase, line)
              ) strict, without rowid\
              """,
              """
              create table receipt (
                id integer primary key autoincrement,
                purchase integer not null,
                line integer not null,
                received_on text not null,
                quantity text not null,
                note text not null,
                written_at text not null,
                foreign key (purchase, line) references purchase_line (purchase, line)
              ) strict\
              """),
          // Who wrote each down; what was written before says nobody.
          Step.of(
              "alter table closing add column written_by text not null default ''",
              "alter table rack_movement add column moved_by text not null default ''",
              "alter table price_change add column written_by text not null default ''",
              "alter table offer add column written_by text not null default ''",
              "alter table payment add column written_by text not null default ''",
              "alter table stage add column written_by text not null default ''",
              "alter table invoice add column written_by text not null default ''",
              "alter table purchase add column written_by text not null default ''",
              "alter table receipt add column written_by text not null default ''"),
          Step.of(
              """
              create table tacking (
                id integer primary key autoincrement,
                job text not null check (length(job) > 0),
                count integer not null check (count >= 1),
                tacked_on text not null,
                form text not null check (length(form) > 0),
                answer text not null check (length(answer) > 0),
                said text not null,
                written_at text not null,
                written_by text not null,
                replaced_at text
              ) strict\
              """,
              "create unique index tacking_that_counts on tacking (job, count)"
                  + " where replaced_at is null",
              """
              create table tack_reading (
                tacking integer not null references tacking (id),
                line integer not null,
                target text not null check (length(target) > 0),
                kind text not null check (kind in ('length', 'angle')),
                planned real not null,
                allowed real not null check (allowed > 0),
                value real,
                primary key (tacking, line)
              ) strict, without rowid\
              """));

  /** Every table, those that others refer to first. */
  static final List<String> TABLES =
      List.of(
          "closing",
          "closing_operation",
          "rack_piece",
          "rack_bin",
          "rack_movement",
          "price_change",
          "book_job",
          "offer",
          "offer_line",
          "offer_payment",
          "payment",
          "stage",
          "invoice",
          "invoice_line",
          "purchase",
          "purchase_line",
          "receipt",
          "tacking",
          "tack_reading");

  private final Path file;
  private final Sql sql;
  private final List<Step> steps;

  Schema(Path file, Sql sql, List<Step> steps) {
    this.file = file;
    this.sql = sql;
    this.steps = steps;
  }

  /** The version of the file; 0 while it has no tables. */
  int version() {
    return (int) sql.number("pragma user_version");
  }

  /**
   * Accepts an empty file, and a ledger of this version or an older one.
   *
   * @throws IllegalArgumentException for any other file, and for a newer ledger
   */
  void requireOurs() {
    long mark = sql.number("pragma application_id");
    boolean empty = sql.number("select count(*) from sqlite_schema") == 0;
    if (mark != MARK && !(empty && mark == 0 && version() == 0)) {
      throw new IllegalArgumentException(
          file + " is a database of another program, not a ledger. Move it away.");
    }
    if (version() > steps.size()) {
      throw new IllegalArgumentException(
          file
              + " is a ledger of version "
              + version()
              + ", from a newer Trammel; this one reads up to "
              + steps.size()
              + ". Install the newer Trammel here too.");
    }
  }

  boolean isCurrent() {
    return version() == steps.size();
  }

  /** Lifts the file to the newest version, all steps or none. */
  void lift() {
    sql.change(
        () -> {
          // Asked again with the right to write: another command may have been first.
          for (int version = version(); version < steps.size(); version++) {
            steps.get(version).statements().forEach(sql::run);
            sql.run("pragma user_version = " + (version + 1));
          }
          sql.run("pragma application_id = " + MARK);
          return null;
        });
  }
}
