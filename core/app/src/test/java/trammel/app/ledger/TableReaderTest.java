package trammel.app.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.app.commandline.CommandFailure;
import trammel.app.rack.RackFile;
import trammel.ledger.Ledger;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.learning.ClosedJob;
import trammel.planning.rack.Rack;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.BadInputException;

class TableReaderTest {
  private static final Catalog CATALOG =
      CatalogReader.read(Path.of("..", "..", "catalogs", "standard"));
  private static final QuantityPrinter PRINTER = new QuantityPrinter(UnitSystem.US);

  @TempDir Path folder;

  private TableChange read(String text, List<ClosedJob> jobs, Rack rack) throws IOException {
    Path file = Files.writeString(folder.resolve("table.csv"), text);
    return new TableReader(CATALOG, PRINTER)
        .read(file, new TableReader.Held(jobs, rack, List.of()));
  }

  /** Written and read back, a table changes nothing; into an empty ledger it brings everything. */
  @Test
  void everyTableComesBackAsItWent() throws IOException {
    for (int seed = 0; seed < 50; seed++) {
      Random random = new Random(seed);
      List<ClosedJob> jobs = OldLists.jobs(random);
      Rack rack = OldLists.rack(CATALOG, random);
      String jobTable = ClosedJobsTable.text(jobs);
      String rackTable = RackFile.text(rack, UnitSystem.US);
      String shop = "seed " + seed;
      assertEquals(List.of(), read(jobTable, jobs, rack).lines(), shop);
      assertEquals(List.of(), read(rackTable, jobs, rack).lines(), shop);
      try (Ledger ledger = Ledger.open(folder.resolve(seed + ".sqlite"))) {
        read(jobTable, List.of(), Rack.EMPTY).carryOut().accept(ledger);
        read(rackTable, List.of(), Rack.EMPTY).carryOut().accept(ledger);
        assertEquals(jobs, ledger.closedJobs().all(), shop);
        assertEquals(rackTable, RackFile.text(ledger.rackStock().rack(), UnitSystem.US), shop);
        assertEquals(List.of(), ledger.findings(), shop);
      }
    }
  }

  private static final String HEAD = String.join(",", ClosedJobsTable.COLUMNS) + "\n";
  private static final String A =
      "A,2026-11-01,100,120,,make-bar,2.7,0.4,3\nA,2026-11-01,100,120,,weld,5,1,\n";
  private static final String B = "B,2026-11-02,80,95,90,make-bar,2.7,0.4,\n";

  private List<ClosedJob> jobs(String lines) throws IOException {
    try (Ledger ledger = Ledger.open(folder.resolve("jobs.sqlite"))) {
      read(HEAD + lines, List.of(), Rack.EMPTY).carryOut().accept(ledger);
      return ledger.closedJobs().all();
    }
  }

  @Test
  void whatWouldChangeIsSaidJobByJob() throws IOException {
    List<ClosedJob> now = jobs(A + B);
    String changed = HEAD + A.replace(",3\n", ",3.5\n") + B.replace("B,", "C,");
    assertEquals(
        List.of(
            "job A: hours of make-bar 3.0 to 3.5",
            "job C, closed 2026-11-02: is added",
            "job B, closed 2026-11-02: is taken out"),
        read(changed, now, Rack.EMPTY).lines());
    try (Ledger ledger = Ledger.openExisting(folder.resolve("jobs.sqlite"))) {
      read(changed, now, Rack.EMPTY).carryOut().accept(ledger);
      assertEquals(
          List.of("A", "C"), ledger.closedJobs().all().stream().map(ClosedJob::number).toList());
      assertEquals(now, ledger.closedJobs().earlier().stream().map(old -> old.job()).toList());
    }
  }

  @Test
  void everyWrongLineOfClosedJobsIsNamed() {
    String told =
        assertThrows(
                BadInputException.class,
                () ->
                    read(
                        HEAD
                            + A.replace("2026-11-01,100,120,,weld", "2026-11-01,101,120,,weld")
                            + B.replace("2026-11-02", "yesterday").replace(",90,", ",lots,"),
                        List.of(),
                        Rack.EMPTY))
            .problems()
            .toString();
    assertTrue(told.contains("than on line 2"), told);
    assertTrue(told.contains("yesterday"), told);
    assertTrue(told.contains("lots"), told);
  }

  @Test
  void whatACountedRackWouldChangeIsSaid() throws IOException {
    String head = "kind,item,name,length,width,quantity\n";
    Rack now =
        new RackFile(
                Files.writeString(
                    folder.resolve("now.csv"),
                    head
                        + "stick,dom-1.50x0.120,R1,31 1/2 in,,\n"
                        + "stick,dom-1.50x0.120,R2,8 ft,,\n"
                        + "bin,jam-nut-0.750-16,,,,12\n"),
                CATALOG,
                UnitSystem.US)
            .read();
    TableChange change =
        read(
            head
                + "stick,dom-1.50x0.120,R2,90 in,,\n"
                + "drop,plate-0.250,D1,24 in,20 in,\n"
                + "bin,jam-nut-0.750-16,,,,9\n",
            List.of(),
            now);
    assertEquals(
        List.of(
            "stick R2, dom-1.50x0.120, 90 in: takes the place of dom-1.50x0.120, 96 in",
            "drop D1, plate-0.250, 24 in x 20 in: goes on",
            "stick R1, dom-1.50x0.120, 31 1/2 in: comes off",
            "bin jam-nut-0.750-16: 12 to 9"),
        change.lines());
  }

  @Test
  void whatHappenedIsNotWrittenAnew() {
    for (String table :
        List.of(MovementsTable.text(List.of()), ClosedJobsTable.earlierText(List.of()))) {
      String told =
          assertThrows(CommandFailure.class, () -> read(table, List.of(), Rack.EMPTY)).getMessage();
      assertTrue(told.contains("what happened"), told);
    }
    assertThrows(CommandFailure.class, () -> read("what,where\n", List.of(), Rack.EMPTY));
  }
}
