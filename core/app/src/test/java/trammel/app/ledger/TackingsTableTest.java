package trammel.app.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.ledger.Ledger;
import trammel.ledger.Tacking;
import trammel.ledger.Written;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.fitup.TackVerdict;
import trammel.planning.rack.Rack;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.BadInputException;

/** Readings after tacking as a table that goes out and comes back. All of them are invented. */
class TackingsTableTest {
  private static final Catalog CATALOG =
      CatalogReader.read(Path.of("..", "..", "catalogs", "standard"));

  @TempDir Path folder;

  private TableChange read(String text, List<Tacking> now) throws IOException {
    Path file = Files.writeString(folder.resolve("tack-readings.csv"), text);
    return new TableReader(CATALOG, new QuantityPrinter(UnitSystem.US))
        .read(file, new TableReader.Held(List.of(), Rack.EMPTY, now));
  }

  private static String table(List<Tacking> tackings) {
    return TackingsTable.text(
        tackings.stream()
            .map(one -> new Written<>("2026-12-02T09:00:00Z", "=Bench 2", one))
            .toList());
  }

  private static List<Tacking> drawn(Random random) {
    List<Tacking> tackings = new ArrayList<>();
    for (String job : List.of("-7", "D-101", "=B \"1\", north")) {
      for (int count = 1; count <= random.nextInt(4); count++) {
        tackings.add(
            new Tacking(
                job,
                count,
                LocalDate.of(2026, 12, 1 + random.nextInt(28)),
                "form-" + random.nextInt(2),
                TackVerdict.values()[random.nextInt(4)],
                random.nextBoolean() ? List.of() : List.of("- first", "second, \"third\""),
                readings(random)));
      }
    }
    return tackings;
  }

  private static List<Tacking.Reading> readings(Random random) {
    List<Tacking.Reading> readings = new ArrayList<>();
    for (int i = 0; i < random.nextInt(5); i++) {
      boolean angle = random.nextBoolean();
      double scale = angle ? 0.3 : 900;
      List<Double> values = new ArrayList<>();
      for (int again = random.nextInt(3); again > 0; again--) {
        values.add(scale * random.nextGaussian());
      }
      readings.add(
          new Tacking.Reading(
              "target " + i,
              angle ? Tacking.Kind.ANGLE : Tacking.Kind.LENGTH,
              scale * random.nextGaussian(),
              scale * (0.01 + random.nextDouble()),
              values));
    }
    return readings;
  }

  /** Written and read back it changes nothing; into an empty ledger it brings everything. */
  @Test
  void theTableComesBackAsItWent() throws IOException {
    for (int seed = 0; seed < 60; seed++) {
      List<Tacking> tackings = drawn(new Random(seed));
      assertEquals(List.of(), read(table(tackings), tackings).lines(), "seed " + seed);
      try (Ledger ledger = Ledger.open(folder.resolve(seed + ".sqlite"))) {
        read(table(tackings), List.of()).carryOut().accept(ledger);
        List<Tacking> kept = ledger.tackings().all().stream().map(Written::what).toList();
        assertEquals(List.of(), read(table(tackings), kept).lines(), "seed " + seed);
        assertEquals(tackings.size(), kept.size());
        assertEquals(List.of(), ledger.findings());
      }
    }
  }

  private static final Tacking READ =
      new Tacking(
          "D-101",
          1,
          LocalDate.of(2026, 12, 2),
          "form-1",
          TackVerdict.RE_SET,
          List.of("out of place"),
          List.of(
              new Tacking.Reading(
                  "lower-left.up",
                  Tacking.Kind.LENGTH,
                  457.2,
                  1.5875,
                  List.of(459.123456789, 459.2)),
              new Tacking.Reading(
                  "pinion", Tacking.Kind.ANGLE, Math.toRadians(2), 0.01, List.of())));

  /** A spreadsheet writes numbers with fewer figures and with commas: that is no change. */
  @Test
  void aSpreadsheetMayLeaveOffFiguresAndWriteCommas() throws IOException {
    String saved = table(List.of(READ)).replace(',', ';').replace("459.123456789", "459,12345679");
    assertTrue(saved.contains("459,12345679"), saved);
    assertEquals(List.of(), read(saved, List.of(READ)).lines());
  }

  @Test
  void whatWouldChangeIsSaidTargetByTarget() throws IOException {
    String corrected = table(List.of(READ)).replace(",459.2,", ",457.3,").replace("-02,", "-03,");
    assertEquals(
        List.of(
            "job D-101, entry 1: day 2026-12-02 to 2026-12-03; lower-left.up 459.1235 mm and 459.2"
                + " mm (for 457.2 mm within 1.5875 mm) to 459.1235 mm and 457.3 mm (for 457.2 mm"
                + " within 1.5875 mm)"),
        read(corrected, List.of(READ)).lines());
    assertEquals(
        List.of("job D-101, entry 1, of 2026-12-02: is taken out"),
        read(table(List.of()), List.of(READ)).lines());
  }

  @Test
  void everyLineThatIsWrongIsNamed() throws IOException {
    String wrong =
        table(List.of(READ))
            .replace(",mm,", ",ell,")
            .replace("2026-12-02,form", "yesterday,form")
            .replace("re-set", "leave it");
    String told = assertThrows(BadInputException.class, () -> read(wrong, List.of())).getMessage();
    for (String part : List.of("'ell'", "'yesterday'", "'leave it'", "line 2", "mm or deg")) {
      assertTrue(told.contains(part), part + " in " + told);
    }
  }
}
