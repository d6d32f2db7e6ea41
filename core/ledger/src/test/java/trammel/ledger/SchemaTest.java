package trammel.ledger;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.planning.learning.ClosedJob;

class SchemaTest {
  @TempDir Path folder;

  private Path file() {
    return folder.resolve("ledger.sqlite");
  }

  private static List<Schema.Step> andOneMore(String... statements) {
    List<Schema.Step> steps = new ArrayList<>(Schema.STEPS);
    steps.add(Schema.Step.of(statements));
    return steps;
  }

  @Test
  void aNewerLedgerIsRefusedAndNotTouched() throws IOException {
    Ledger.open(file(), andOneMore("create table later (a text) strict"), true).close();
    byte[] before = Files.readAllBytes(file());
    String told =
        assertThrows(IllegalArgumentException.class, () -> Ledger.open(file())).getMessage();
    assertTrue(told.contains("newer Trammel"), told);
    assertArrayEquals(before, Files.readAllBytes(file()));
  }

  @Test
  void aDatabaseOfAnotherProgramIsRefusedAndNotTouched() throws IOException {
    try (Sql other = Sql.openOrMake(file())) {
      other.run("create table theirs (a text)");
    }
    byte[] before = Files.readAllBytes(file());
    String told =
        assertThrows(IllegalArgumentException.class, () -> Ledger.open(file())).getMessage();
    assertTrue(told.contains("another program"), told);
    assertArrayEquals(before, Files.readAllBytes(file()));
  }

  @Test
  void aFileThatIsNoDatabaseIsRefusedAndNotTouched() throws IOException {
    Files.writeString(file(), "number,closed,hours\n".repeat(100));
    String told =
        assertThrows(IllegalArgumentException.class, () -> Ledger.open(file())).getMessage();
    assertTrue(told.contains("is no ledger"), told);
    assertTrue(Files.readString(file()).startsWith("number,closed"));
  }

  @Test
  void anOlderLedgerIsLiftedAndACopyOfItKept() {
    try (Ledger ledger = Ledger.open(file())) {
      ledger.closedJobs().close(Samples.job("A"));
      ledger.rackStock().become(Samples.RACK, "counted");
    }
    int older = Schema.STEPS.size();
    try (Ledger lifted =
        Ledger.open(file(), andOneMore("alter table closing add note text"), true)) {
      assertEquals(older + 1, lifted.version());
      assertEquals(List.of(Samples.job("A")), lifted.closedJobs().all());
      assertEquals(Samples.RACK, lifted.rackStock().rack());
    }
    try (Ledger copy = Ledger.openExisting(folder.resolve("ledger.sqlite.version-" + older))) {
      assertEquals(older, copy.version());
      assertEquals(List.of(Samples.job("A")), copy.closedJobs().all());
    }
  }

  /** A step of which one statement fails leaves the file at its version, with all that is in it. */
  @Test
  void aStepThatFailsHalfwayChangesNothing() {
    try (Ledger ledger = Ledger.open(file())) {
      ledger.closedJobs().close(Samples.job("A"));
    }
    List<Schema.Step> broken =
        andOneMore("alter table closing add note text", "create table closing (a text)");
    assertThrows(IllegalStateException.class, () -> Ledger.open(file(), broken, true));
    try (Ledger ledger = Ledger.openExisting(file())) {
      assertEquals(Schema.STEPS.size(), ledger.version());
      assertEquals(List.of(Samples.job("A")), ledger.closedJobs().all());
    }
    try (Sql sql = Sql.open(file())) {
      assertEquals(
          0, sql.number("select count(*) from pragma_table_info('closing') where name = 'note'"));
    }
  }

  /** What a command leaves that was killed before its first step: an empty file. */
  @Test
  void anEmptyFileBecomesALedger() throws IOException {
    Files.createFile(file());
    try (Ledger ledger = Ledger.open(file())) {
      ledger.closedJobs().close(Samples.job("A"));
    }
    assertFalse(Files.exists(folder.resolve("ledger.sqlite.version-0")));
  }

  /** What is not in the list would not be put back by a restore. */
  @Test
  void everyTableOfTheFileIsInTheListOfTables() {
    Ledger.open(file()).close();
    try (Sql sql = Sql.open(file())) {
      assertEquals(
          Schema.TABLES.stream().sorted().toList(),
          sql.rows(
              "select name from sqlite_schema where type = 'table' and name not like 'sqlite_%'"
                  + " order by name",
              row -> row.getString(1)));
    }
  }

  /** Up to version 3 a ledger did not keep who wrote a payment down. */
  private static final Map<Integer, List<String>> WHO_PAID =
      Map.of(1, List.of(), 2, List.of(), 3, List.of(""), 4, List.of("", "Bench 2"));

  private static List<String> whoWrotePayments(Ledger ledger) {
    return ledger.book().writtenPayments("E-7").stream().map(Written::who).toList();
  }

  /**
   * Files as the releases before made them, with the jobs and the rack of {@link Samples} in them.
   * What the newer tables hold is not there yet.
   */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4})
  void aLedgerOfAnOlderReleaseIsLiftedWithoutADifference(int version) throws IOException {
    try (InputStream old =
        SchemaTest.class.getResourceAsStream("ledger-version-" + version + ".sqlite")) {
      Files.copy(old, file());
    }
    try (Ledger lifted = Ledger.open(file())) {
      assertEquals(Schema.STEPS.size(), lifted.version());
      assertEquals(
          List.of(Samples.job("B").number(), "A"),
          lifted.closedJobs().all().stream().map(ClosedJob::number).toList());
      assertEquals(Samples.jobInParts("A"), lifted.closedJobs().of("A").orElseThrow());
      assertEquals(Samples.job("A"), lifted.closedJobs().earlier().get(0).job());
      assertEquals(Samples.RACK.without("R1"), lifted.rackStock().rack());
      assertEquals(6, lifted.rackStock().movements().size());
      assertEquals(List.of(), lifted.findings());
      assertEquals(version - 1, lifted.prices().count());
      lifted.prices().add(List.of(Samples.price("118.75")));
      assertEquals(version, lifted.prices().count());
      lifted.book().give(Samples.HEADING, Samples.offer(Offer.Kind.QUOTE, 1));
      assertEquals(1, lifted.book().offers("D-101").size());
      assertEquals(WHO_PAID.get(version), whoWrotePayments(lifted));
      assertEquals(version >= 3 ? 1 : 0, lifted.purchases().received("E-7-1").size());
      assertEquals("", lifted.rackStock().movements().get(0).who());
      assertEquals(List.of(), lifted.tackings().all());
      lifted.tackings().write(Samples.tacking("E-7"));
      assertEquals(1, lifted.tackings().of("E-7").size());
    }
    assertTrue(Files.exists(folder.resolve("ledger.sqlite.version-" + version)));
  }
}
