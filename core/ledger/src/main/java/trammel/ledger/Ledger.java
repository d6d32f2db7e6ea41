package trammel.ledger;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;

/**
 * The shop's ledger, open: its closed jobs, its rack, what prices were, and the course of its jobs
 * from quote to paid. One SQLite file with a rollback journal, so that it is one file whenever no
 * command is at work; every change is forced to the disk before it counts (synchronous = full).
 * Commands that come at the same time wait for each other.
 *
 * <p>To be used by one thread and closed at the end. Every method throws {@link
 * IllegalArgumentException} with words for the user if the file is in use for too long, damaged or
 * no ledger, and {@link java.io.UncheckedIOException} if the disk or the system refuses.
 */
public final class Ledger implements AutoCloseable {
  private static int open;

  private final Path file;
  private final Sql sql;
  private final ClosedJobs jobs;
  private final RackStock rack;
  private final PriceHistory prices;
  private final JobBook book;
  private final Purchases purchases;
  private final Tackings tackings;

  private Ledger(Path file, Sql sql) {
    this.file = file;
    this.sql = sql;
    Hand hand = new Hand(Moment.NOW);
    jobs = new ClosedJobs(sql, hand);
    rack = new RackStock(sql, hand);
    prices = new PriceHistory(sql, hand);
    book = new JobBook(sql, hand);
    purchases = new Purchases(sql, hand);
    tackings = new Tackings(sql, hand);
  }

  /** Opens a ledger; one that is not there is made. */
  public static Ledger open(Path file) {
    return open(file, Schema.STEPS, true);
  }

  /** Opens a ledger that is there. */
  public static Ledger openExisting(Path file) {
    return open(file, Schema.STEPS, false);
  }

  /** True while this process has any ledger open. */
  static synchronized boolean isOpenHere() {
    return open > 0;
  }

  private static synchronized Sql connect(Path file, boolean make) {
    Sql sql = make ? Sql.openOrMake(file) : Sql.open(file);
    open++;
    return sql;
  }

  private static synchronized void disconnect(Sql sql) {
    sql.close();
    open--;
  }

  static Ledger open(Path file, List<Schema.Step> steps, boolean make) {
    Sql sql = connect(file, make);
    try {
      Schema schema = new Schema(file, sql, steps);
      sql.view(
          () -> {
            schema.requireOurs();
            return null;
          });
      if (!schema.isCurrent()) {
        if (schema.version() > 0) {
          Backup.ofOlderVersion(file, sql, schema.version());
        }
        schema.lift();
      }
      return new Ledger(file, sql);
    } catch (RuntimeException | Error thrown) {
      disconnect(sql);
      throw thrown;
    }
  }

  /** The version of the file's tables. */
  public int version() {
    return (int) sql.number("pragma user_version");
  }

  /** Where it is. */
  public Path file() {
    return file;
  }

  /** Its closed jobs. */
  public ClosedJobs closedJobs() {
    return jobs;
  }

  /** Its stock on hand. */
  public RackStock rackStock() {
    return rack;
  }

  /** What prices were. */
  public PriceHistory prices() {
    return prices;
  }

  /** The course of its jobs from quote to paid. */
  public JobBook book() {
    return book;
  }

  /** Its orders to suppliers, and what came of them. */
  public Purchases purchases() {
    return purchases;
  }

  /** What was read after tacking. */
  public Tackings tackings() {
    return tackings;
  }

  /**
   * Does several things as one: all of them count or none, and no other command comes between.
   *
   * @return what the work yields
   */
  public <T> T asOne(Supplier<T> work) {
    return sql.change(work);
  }

  /** Everything that is wrong with it, in words; empty if nothing is. */
  public List<String> findings() {
    return new LedgerCheck(sql, jobs, rack, this::readBooks).findings();
  }

  private void readBooks() {
    prices.all();
    book.readAll();
    purchases.all();
    tackings.all();
  }

  /**
   * Writes a copy by SQLite's own means, whole and checked before it bears its name.
   *
   * @param copy a file that is not there yet
   * @throws IllegalArgumentException if it is there
   */
  public void backUp(Path copy) {
    Backup.write(sql, copy);
  }

  /**
   * Puts back what a backup holds, in place of everything that is in a ledger, as one change. A
   * ledger that is damaged is moved aside as it is.
   *
   * @param file the ledger; it need not be there
   * @param backup the backup, which is only read
   * @param kept a file that is not there yet, for what the ledger held
   * @throws IllegalArgumentException if the backup is no sound ledger; nothing is then changed
   */
  public static void restore(Path file, Path backup, Path kept) {
    Backup.restore(file, backup, kept);
  }

  boolean isSound() {
    return sql.isSound();
  }

  void exchange(Path from, Path kept) {
    Backup.exchange(sql, from, kept);
  }

  @Override
  public void close() {
    disconnect(sql);
  }
}
