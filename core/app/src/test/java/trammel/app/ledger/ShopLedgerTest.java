package trammel.app.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.app.commandline.CommandFailure;
import trammel.app.rack.RackFile;
import trammel.ledger.Ledger;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.learning.ClosedJob;
import trammel.planning.learning.ClosedOperation;
import trammel.planning.rack.Rack;
import trammel.reading.quantity.UnitSystem;

class ShopLedgerTest {
  private static final int OLD_SHOPS = 200;
  private static final Catalog CATALOG =
      CatalogReader.read(Path.of("..", "..", "catalogs", "standard"));

  @TempDir Path folder;
  private final List<String> told = new ArrayList<>();
  private ClosedJob first;
  private ClosedJob second;

  @BeforeEach
  void twoJobs() {
    first = job("D-101", OptionalDouble.of(140.5));
    second = job("D-102", OptionalDouble.empty());
  }

  private static ClosedJob job(String number, OptionalDouble whole) {
    return new ClosedJob(
        number,
        java.time.LocalDate.of(2026, 11, 28),
        113.3,
        126.24,
        List.of(
            new ClosedOperation("fit-frame-bracket", 5.1, 0.9, OptionalDouble.of(6.25)),
            new ClosedOperation("make-bar", 2.7, 0.4, OptionalDouble.empty())),
        whole);
  }

  private ShopLedger shop() {
    return shop(folder);
  }

  private static ShopLedger shop(Path folder) {
    return new ShopLedger(folder, file -> new RackFile(file, CATALOG, UnitSystem.US).read());
  }

  private List<ClosedJob> taken(Path folder) {
    try (Ledger ledger = shop(folder).open(told::add)) {
      assertEquals(List.of(), ledger.findings());
      return ledger.closedJobs().all();
    }
  }

  private Path write(String... lines) throws IOException {
    return Files.writeString(folder.resolve("history.csv"), String.join("", lines));
  }

  // Lists of before

  @Test
  void twoHundredOldShopsAreTakenOverWithoutADifference() throws IOException {
    for (int seed = 0; seed < OLD_SHOPS; seed++) {
      String shop = "seed " + seed;
      Random random = new Random(seed);
      Path old = Files.createDirectory(folder.resolve(Integer.toString(seed)));
      List<ClosedJob> jobs = OldLists.jobs(random);
      StringBuilder lines = new StringBuilder();
      jobs.forEach(job -> lines.append(OldLists.line(job)));
      Files.writeString(old.resolve("history.csv"), lines.toString());
      Rack rack = OldLists.rack(CATALOG, random);
      Files.writeString(old.resolve("rack.csv"), OldLists.rack(rack, UnitSystem.US));
      assertEquals(jobs, shop(old).closedJobs(), shop);
      assertEquals(rack, shop(old).rack(), shop);
      assertFalse(Files.exists(old.resolve("ledger.sqlite")), shop + ": looking makes no ledger");
      try (Ledger ledger = shop(old).open(told::add)) {
        assertEquals(jobs, ledger.closedJobs().all(), shop);
        assertEquals(rack, ledger.rackStock().rack(), shop);
        assertEquals(List.of(), ledger.findings(), shop);
      }
      assertEquals(lines.toString(), Files.readString(old.resolve("history-taken-over.csv")), shop);
      assertTrue(
          rack.isEmpty() || Files.exists(old.resolve("rack-taken-over.csv")),
          shop + ": the old rack is kept");
      assertEquals(jobs, shop(old).closedJobs(), shop);
      assertEquals(rack, shop(old).rack(), shop);
    }
  }

  @Test
  void whatWasTakenOverIsToldAndDoneOnce() throws IOException {
    write(OldLists.line(first), OldLists.line(second));
    assertEquals(List.of(first, second), taken(folder));
    assertTrue(told.get(0).startsWith("2 closed jobs of history.csv taken over"), told.get(0));
    told.clear();
    assertEquals(List.of(first, second), taken(folder));
    assertEquals(List.of(), told);
  }

  /** The hours of the whole job are missing: "-", which was kept from spreadsheets as "'-". */
  @Test
  void aJobClosedByPartsIsReadAndNotTakenForTorn() throws IOException {
    write(OldLists.line(second));
    assertTrue(Files.readString(folder.resolve("history.csv")).contains(",'-,"));
    assertEquals(List.of(second), taken(folder));
  }

  @Test
  void aLastLineChangedByHandCounts() throws IOException {
    write(OldLists.line(first), OldLists.line(second).replace("6.25", "7.5"));
    List<ClosedJob> jobs = taken(folder);
    assertEquals(
        OptionalDouble.of(7.5), jobs.get(1).operations().get(0).usedHours(), jobs.toString());
    assertTrue(told.get(0).contains("line 2 was changed by hand"), told.get(0));
  }

  /** Cut anywhere, the last line is left out and the rest taken; the old file keeps the piece. */
  @Test
  void aTornLastLineIsToldAndKeptInTheOldFile() throws IOException {
    String whole = OldLists.line(first);
    String torn = OldLists.line(job("D-103", OptionalDouble.of(99)));
    for (int cut = 1; cut < torn.length() - 12; cut += 7) {
      Path shop = Files.createDirectory(folder.resolve("cut " + cut));
      String text = whole + torn.substring(0, cut);
      Files.writeString(shop.resolve("history.csv"), text);
      told.clear();
      assertEquals(List.of(first), taken(shop), "cut at " + cut);
      assertTrue(told.get(0).contains("line 2 was torn"), told.get(0));
      assertEquals(text, Files.readString(shop.resolve("history-taken-over.csv")));
    }
  }

  @Test
  void aDamagedLineStopsTheTakingOverAndNothingChanges() throws IOException {
    Path old = write("D-99,rubbish\n", OldLists.line(first));
    CommandFailure refused = assertThrows(CommandFailure.class, () -> shop().open(told::add));
    assertTrue(refused.getMessage().contains("line 1 is damaged"), refused.getMessage());
    assertTrue(Files.exists(old));
    assertFalse(Files.exists(folder.resolve("ledger.sqlite")));
  }

  /** Killed between the change and the renaming, the next command adds nothing twice. */
  @Test
  void aListThatIsTakenOverAlreadyAddsNothing() throws IOException {
    write(OldLists.line(first));
    taken(folder);
    Files.move(folder.resolve("history-taken-over.csv"), folder.resolve("history.csv"));
    assertEquals(List.of(first), taken(folder));
    assertTrue(told.get(1).startsWith("0 closed jobs"), told.toString());
  }

  @Test
  void aRackThatIsKeptInTheLedgerIsNotTakenFromAFileAgain() throws IOException {
    Rack rack =
        new Rack(List.of(new Rack.Stick("R1", "dom-1.50x0.120", 800.1)), List.of(), List.of());
    Files.writeString(folder.resolve("rack.csv"), OldLists.rack(rack, UnitSystem.US));
    taken(folder);
    Files.writeString(folder.resolve("rack.csv"), OldLists.rack(Rack.EMPTY, UnitSystem.US));
    taken(folder);
    assertEquals(rack, shop().rack());
    assertTrue(Files.exists(folder.resolve("rack.csv")));
  }

  // Links

  /** Two folders of jobs share one list by a link: they share one ledger, beside that list. */
  @Test
  void anOldListThatIsALinkLeadsToOneLedger() throws IOException {
    Path books = Files.createDirectory(folder.resolve("books"));
    Files.writeString(books.resolve("history.csv"), OldLists.line(first));
    Path north = Files.createDirectory(folder.resolve("north"));
    Path south = Files.createDirectory(folder.resolve("south"));
    for (Path jobs : List.of(north, south)) {
      Files.createSymbolicLink(jobs.resolve("history.csv"), Path.of("..", "books", "history.csv"));
    }
    try (Ledger ledger = shop(north).open(told::add)) {
      ledger.closedJobs().close(second);
    }
    assertEquals(List.of(first, second), shop(south).closedJobs());
    assertEquals(List.of(first, second), taken(south));
    assertTrue(Files.isSymbolicLink(north.resolve("ledger.sqlite")));
    assertTrue(Files.isRegularFile(books.resolve("ledger.sqlite")));
    assertTrue(Files.exists(books.resolve("history-taken-over.csv")));
  }

  @Test
  void anOldListThatLeadsNowhereIsSaid() throws IOException {
    Files.createSymbolicLink(folder.resolve("history.csv"), folder.resolve("gone.csv"));
    String refused = assertThrows(CommandFailure.class, this::shop).getMessage();
    assertTrue(refused.contains("gone.csv"), refused);
  }
}
