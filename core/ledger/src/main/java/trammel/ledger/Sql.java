package trammel.ledger;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ThreadLocalRandom;
import java.util.function.Supplier;
import org.sqlite.BusyHandler;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteOpenMode;

/**
 * One connection to one SQLite file, used by one thread. What SQLite refuses is told in the words
 * of the shop: {@link IllegalArgumentException} where the user can do something, {@link
 * UncheckedIOException} where the disk or the system refuses.
 */
final class Sql implements AutoCloseable {
  /** How long a command waits for another one to be done before it gives up (s). */
  static final int LONGEST_WAIT_SECONDS = 30;

  private final Path file;
  private final Connection connection;
  private boolean within;

  private Sql(Path file, Connection connection) {
    this.file = file;
    this.connection = connection;
  }

  /** Opens a file that is there. */
  static Sql open(Path file) {
    return open(file, false);
  }

  /** Opens a file, made if it is not there. */
  static Sql openOrMake(Path file) {
    return open(file, true);
  }

  private static Sql open(Path file, boolean make) {
    NativeLibrary.prepare();
    SQLiteConfig config = new SQLiteConfig();
    // While it opens; from then on the waiting below.
    config.setBusyTimeout(LONGEST_WAIT_SECONDS * 1000);
    config.enforceForeignKeys(true);
    config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
    if (!make) {
      config.resetOpenMode(SQLiteOpenMode.CREATE);
    }
    try {
      Connection connection = config.createConnection("jdbc:sqlite:" + uri(file));
      BusyHandler.setHandler(connection, new Waiting());
      return new Sql(file, connection);
    } catch (SQLException refused) {
      throw told(file, refused);
    }
  }

  /**
   * Waits for another command. SQLite's own way asks the more seldom the longer it has waited, so
   * that of many commands some never have their turn; here all ask equally often.
   */
  private static final class Waiting extends BusyHandler {
    private static final long LONGEST_PAUSE_MS = 12;

    private long sinceNanos;

    @Override
    protected int callback(int before) {
      if (before == 0) {
        sinceNanos = System.nanoTime();
      }
      if (System.nanoTime() - sinceNanos > LONGEST_WAIT_SECONDS * 1_000_000_000L) {
        return 0;
      }
      try {
        Thread.sleep(ThreadLocalRandom.current().nextLong(1, LONGEST_PAUSE_MS));
        return 1;
      } catch (InterruptedException stopped) {
        Thread.currentThread().interrupt();
        return 0;
      }
    }
  }

  /** As a URI any name is taken as it is, whatever signs are in it. */
  static String uri(Path file) {
    return "file:" + file.toAbsolutePath().toUri().getRawPath();
  }

  /** Runs one statement. */
  void run(String statement, Object... values) {
    try (PreparedStatement prepared = prepared(statement, values)) {
      prepared.execute();
    } catch (SQLException refused) {
      throw told(file, refused);
    }
  }

  /** Makes one thing of each row. */
  interface RowReader<T> {
    T read(ResultSet row) throws SQLException;
  }

  /** The rows of a query. */
  <T> List<T> rows(String query, RowReader<T> reader, Object... values) {
    try (PreparedStatement prepared = prepared(query, values);
        ResultSet result = prepared.executeQuery()) {
      List<T> rows = new ArrayList<>();
      while (result.next()) {
        rows.add(reader.read(result));
      }
      return rows;
    } catch (SQLException refused) {
      throw told(file, refused);
    }
  }

  /** The first row of a query; empty if it has none. */
  <T> Optional<T> find(String query, RowReader<T> reader, Object... values) {
    return rows(query, reader, values).stream().findFirst();
  }

  /** A day of a row. */
  static LocalDate day(ResultSet row, int column) throws SQLException {
    return LocalDate.parse(row.getString(column));
  }

  /** A word of a row that is one of several. */
  static <E extends Enum<E>> E word(ResultSet row, int column, Class<E> words) throws SQLException {
    return Enum.valueOf(words, row.getString(column).toUpperCase(Locale.ROOT));
  }

  /** The one number that a query yields. */
  long number(String query, Object... values) {
    return rows(query, row -> row.getLong(1), values).get(0);
  }

  /** A number that may be missing. */
  static OptionalDouble optional(ResultSet row, int column) throws SQLException {
    double value = row.getDouble(column);
    return row.wasNull() ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  private PreparedStatement prepared(String statement, Object... values) throws SQLException {
    PreparedStatement prepared = connection.prepareStatement(statement);
    try {
      for (int i = 0; i < values.length; i++) {
        bind(prepared, i + 1, values[i]);
      }
      return prepared;
    } catch (SQLException refused) {
      prepared.close();
      throw refused;
    }
  }

  private static void bind(PreparedStatement prepared, int place, Object value)
      throws SQLException {
    if (value instanceof OptionalDouble optional) {
      prepared.setObject(place, optional.isPresent() ? optional.getAsDouble() : null);
    } else if (value instanceof BigDecimal decimal) {
      prepared.setString(place, decimal.toPlainString());
    } else {
      prepared.setObject(place, value);
    }
  }

  /**
   * Changes the file as a whole or not at all. The right to write is taken at the start: a reader
   * that turns into a writer is refused at once, whatever the waiting time (SQLite, "Transaction
   * control", on SQLITE_BUSY).
   */
  <T> T change(Supplier<T> work) {
    return within("begin immediate", work);
  }

  /** Reads several things as they stood at one moment. */
  <T> T view(Supplier<T> work) {
    return within("begin", work);
  }

  private <T> T within(String begin, Supplier<T> work) {
    if (within) {
      return work.get();
    }
    plain(begin);
    within = true;
    try {
      T result = work.get();
      plain("commit");
      return result;
    } catch (RuntimeException | Error thrown) {
      rollBack(thrown);
      throw thrown;
    } finally {
      within = false;
    }
  }

  private void rollBack(Throwable thrown) {
    try {
      plain("rollback");
    } catch (RuntimeException rolledBackBySqlite) {
      // After some faults of the disk SQLite has done it already; the first fault is the one told.
      thrown.addSuppressed(rolledBackBySqlite);
    }
  }

  private void plain(String statement) {
    try (Statement plain = connection.createStatement()) {
      plain.execute(statement);
    } catch (SQLException refused) {
      throw told(file, refused);
    }
  }

  @Override
  public void close() {
    try {
      connection.close();
    } catch (SQLException refused) {
      throw told(file, refused);
    }
  }

  /** True if SQLite finds the file itself sound. */
  boolean isSound() {
    try {
      return rows("pragma integrity_check", row -> row.getString(1)).equals(List.of("ok"));
    } catch (DamagedLedgerException damaged) {
      return false;
    }
  }

  private static RuntimeException told(Path file, SQLException refused) {
    int code = refused.getErrorCode() & 0xff;
    if (code == SQLiteErrorCode.SQLITE_BUSY.code || code == SQLiteErrorCode.SQLITE_LOCKED.code) {
      return new IllegalArgumentException(
          file
              + " is in use by another trammel command, which was not done after "
              + LONGEST_WAIT_SECONDS
              + " s; nothing was changed. Wait until it is done.",
          refused);
    }
    if (code == SQLiteErrorCode.SQLITE_NOTADB.code) {
      return new DamagedLedgerException(
          file
              + " is no ledger, or damaged from its first line on; nothing was changed. Move it"
              + " away, or put the latest backup in its place with trammel ledger restore.",
          refused);
    }
    if (code == SQLiteErrorCode.SQLITE_CORRUPT.code) {
      return new DamagedLedgerException(
          file
              + " is damaged; nothing was changed. Put the latest backup in its place with trammel"
              + " ledger restore; the damaged file is kept.",
          refused);
    }
    if (code == SQLiteErrorCode.SQLITE_ERROR.code
        || code == SQLiteErrorCode.SQLITE_MISUSE.code
        || code == SQLiteErrorCode.SQLITE_CONSTRAINT.code
        || code == SQLiteErrorCode.SQLITE_MISMATCH.code) {
      return new IllegalStateException(file + ": " + refused.getMessage(), refused);
    }
    return new UncheckedIOException(
        file + " (" + refused.getMessage() + ")", new IOException(refused.getMessage(), refused));
  }
}
