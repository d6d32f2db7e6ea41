package trammel.app.forms;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import trammel.app.files.Csv;
import trammel.app.files.CsvReader;
import trammel.app.fitup.FitUpForm;
import trammel.app.fitup.ReadingsFile;
import trammel.app.ledger.ClosedJobsTable;
import trammel.app.ledger.TableReader;
import trammel.app.ledger.TackingsTable;
import trammel.app.prices.PriceList;
import trammel.app.prices.PriceListReader;
import trammel.app.prices.PriceListText;
import trammel.app.rack.RackFile;
import trammel.ledger.Tacking;
import trammel.ledger.Written;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.fitup.FitUpSheet;
import trammel.planning.fitup.TackReading;
import trammel.planning.fitup.TackVerdict;
import trammel.planning.fitup.Target;
import trammel.planning.learning.ClosedJob;
import trammel.planning.learning.ClosedOperation;
import trammel.planning.rack.Rack;
import trammel.reading.quantity.QuantityKind;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;

/**
 * Tables of a shop as LibreOffice Calc saves them, which are kept among the resources (what they
 * are made of and how stands there in README.md): each says the same in whatever way it was saved.
 * All that is in them is invented.
 */
class SpreadsheetFilesTest {
  private static final Path KEPT =
      Path.of("src", "test", "resources", "trammel", "app", "forms", "spreadsheets");
  private static final String SOURCE = "source";
  private static final Catalog CATALOG =
      CatalogReader.read(Path.of("..", "..", "catalogs", "standard"));
  private static final QuantityPrinter PRINTER = new QuantityPrinter(UnitSystem.US);

  @TempDir Path folder;

  /**
   * A way of saving.
   *
   * <p>The filter is the start of what Calc calls its token: what stands between the cells, what
   * about a text, and the character set (76 is UTF-8, 65535 UTF-16, 12 ISO 8859-1, 1 code page
   * 1252).
   */
  private enum Saved {
    COMMA_UTF8("44,34,76", "en-US"),
    SEMICOLON_UTF8("59,34,76", "de-DE"),
    TAB_UTF8("9,34,76", "en-US"),
    COMMA_UTF16("44,34,65535", "en-US"),
    TAB_UTF16("9,34,65535", "de-DE"),
    COMMA_LATIN1("44,34,12", "en-US"),
    SEMICOLON_WINDOWS("59,34,1", "de-DE");

    private final String filter;

    /** The system's language, by which decimals have a point or a comma. */
    private final String language;

    Saved(String filter, String language) {
      this.filter = filter;
      this.language = language;
    }

    String folder() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  // What the tables say

  private static final String PRICE_LIST =
      """
      Prices of the steel yard (invented),,,
      ,,,
      Article,Description,Net USD,Length
      dom-1.50x0.120,"round tube 1 ½ in,
      for links, ""Größe 38\""",1118.75,12 ft
      dom-1.50x0.120,round tube 1 ½ in,164.5,20 ft
      bump-stop,"bump stop,
      with stud",19.75,
      """;

  private static final List<String> PRICES = List.of("$1,118.75", "$164.50", "$19.75");

  private static final Rack RACK =
      new Rack(
          List.of(
              new Rack.Stick("R1 über der Säge", "dom-1.50x0.120", 31.5 * 25.4),
              new Rack.Stick("R2", "dom-1.50x0.120", 8 * 304.8)),
          List.of(new Rack.Drop("D1, \"bent\"", "plate-0.250", 24 * 25.4, 20 * 25.4)),
          List.of(
              new Rack.Bin("bolt-0.500-20", 3.5 * 25.4, new BigDecimal("3")),
              new Rack.Bin("jam-nut-0.750-16", 0, new BigDecimal("12.5"))));

  private static final FitUpSheet SHEET =
      new FitUpSheet(
          List.of(
              target("lower-left.frame.forward", QuantityKind.LENGTH, 24.0625 * 25.4, 1.5875),
              target("lower-left.frame.left", QuantityKind.LENGTH, -17.25 * 25.4, 1.5875),
              target("pinion.angle", QuantityKind.ANGLE, Math.toRadians(2.9), 0.01)),
          List.of(),
          List.of());

  /** As typed into the columns of readings: shop fractions, decimals and a negative length. */
  private static final Map<String, List<String>> TYPED =
      Map.of(
          "lower-left.frame.forward", List.of("24 1/16 in", "24.25"),
          "lower-left.frame.left", List.of("-17.5", ""),
          "pinion.angle", List.of("3.1", "3"));

  private static final List<TackReading> READ =
      List.of(
          new TackReading("lower-left.frame.forward", List.of(24.0625 * 25.4, 24.25 * 25.4)),
          new TackReading("lower-left.frame.left", List.of(-17.5 * 25.4)),
          new TackReading("pinion.angle", List.of(Math.toRadians(3.1), Math.toRadians(3))));

  private static final ClosedJob JOB =
      new ClosedJob(
          "D-90 äöü",
          LocalDate.of(2026, 10, 5),
          100.25,
          112.5,
          List.of(
              new ClosedOperation("make-bar", 2.7, 0.4, OptionalDouble.of(3.125)),
              new ClosedOperation("weld", 5.5, 1.25, OptionalDouble.empty())),
          OptionalDouble.of(130.75));

  private static final Tacking TACKED =
      new Tacking(
          "D-90 äöü",
          1,
          LocalDate.of(2026, 12, 2),
          "abcd-efgh",
          TackVerdict.RE_SET,
          List.of("out of place, left", "move it \"down\""),
          List.of(
              new Tacking.Reading(
                  "lower-left.frame.left",
                  Tacking.Kind.LENGTH,
                  -438.1543219876543,
                  1.5875,
                  List.of(-437.75, -437.5)),
              new Tacking.Reading(
                  "pinion.angle", Tacking.Kind.ANGLE, Math.toRadians(2.9), 0.01, List.of())));

  private static Target target(String id, QuantityKind kind, double plan, double within) {
    return new Target(id, "bracket of a bar", "ahead, behind is minus", kind, plan, within, 0.003);
  }

  private static Map<String, String> tables() {
    Map<String, String> tables = new LinkedHashMap<>();
    tables.put("price-list.csv", PRICE_LIST);
    tables.put("rack.csv", RackFile.text(RACK, UnitSystem.US));
    tables.put("fitup.csv", filledForm());
    tables.put("closed-jobs.csv", ClosedJobsTable.text(List.of(JOB)));
    tables.put(
        "tack-readings.csv",
        TackingsTable.text(List.of(new Written<>("2026-12-02T09:30:00Z", "Bench 2", TACKED))));
    return tables;
  }

  private static String filledForm() {
    Csv csv = new Csv();
    for (CsvReader.Row row : CsvReader.rows(FitUpForm.csv("D-101", SHEET, PRINTER))) {
      List<Object> cells = new ArrayList<>(row.cells());
      List<String> typed = TYPED.getOrDefault(row.cell(0), List.of());
      for (int i = 0; i < typed.size(); i++) {
        boolean number = typed.get(i).matches("-?[\\d.]+");
        cells.set(5 + i, number ? new BigDecimal(typed.get(i)) : typed.get(i));
      }
      csv.row(cells.toArray());
    }
    return csv.text();
  }

  // What is read

  private static void check(Path tables, String how) {
    assertEquals(PRICES, prices(tables.resolve("price-list.csv")), how);
    assertRack(new RackFile(tables.resolve("rack.csv"), CATALOG, UnitSystem.US).read(), how);
    ReadingsFile form =
        new ReadingsFile(tables.resolve("fitup.csv"), SHEET, UnitSystem.US, "D-101");
    List<TackReading> read = form.read();
    assertEquals(List.of(), form.remarks(), how);
    assertEquals(READ.size(), read.size(), how);
    for (int i = 0; i < READ.size(); i++) {
      assertEquals(READ.get(i).id(), read.get(i).id(), how);
      assertArrayEquals(values(READ.get(i)), values(read.get(i)), 1e-9, how);
    }
    TableReader reader = new TableReader(CATALOG, PRINTER);
    TableReader.Held held = new TableReader.Held(List.of(JOB), Rack.EMPTY, List.of(TACKED));
    for (String table : List.of("closed-jobs.csv", "tack-readings.csv")) {
      assertEquals(List.of(), reader.read(tables.resolve(table), held).lines(), how);
    }
  }

  private static double[] values(TackReading reading) {
    return reading.values().stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** What each price of the catalog becomes, in the order of the list. */
  private static List<String> prices(Path file) {
    PriceList list = new PriceListReader(file, CATALOG, PRINTER, Map.of()).read();
    String text = new PriceListText(list, PRINTER, Currency.getInstance("USD")).changes();
    return Pattern.compile(" to (\\$[0-9.,]*[0-9])")
        .matcher(text)
        .results()
        .map(found -> found.group(1))
        .toList();
  }

  private static void assertRack(Rack read, String how) {
    assertEquals(RackFile.text(RACK, UnitSystem.US), RackFile.text(read, UnitSystem.US), how);
  }

  @Test
  void whatTheyAreMadeOfIsWhatTheToolWrites() throws IOException {
    for (Map.Entry<String, String> table : tables().entrySet()) {
      Path kept = KEPT.resolve(SOURCE).resolve(table.getKey());
      assertEquals(table.getValue(), Files.readString(kept), table.getKey());
    }
    check(KEPT.resolve(SOURCE), SOURCE);
  }

  @ParameterizedTest
  @EnumSource(Saved.class)
  void aTableSaysTheSameInWhateverWayItWasSaved(Saved saved) {
    check(KEPT.resolve(saved.folder()), saved.folder());
  }

  /** Calc on Linux ends lines with LF and writes UTF-8 without a mark; others do not. */
  @ParameterizedTest
  @EnumSource(Saved.class)
  void otherLineEndsAndAMarkChangeNothing(Saved saved) throws IOException {
    boolean wide = saved.filter.endsWith("65535");
    for (boolean marked : new boolean[] {false, true}) {
      for (String table : tables().keySet()) {
        byte[] bytes = Files.readAllBytes(KEPT.resolve(saved.folder()).resolve(table));
        ByteArrayOutputStream other = new ByteArrayOutputStream();
        if (marked && saved.filter.endsWith("76")) {
          other.write("\ufeff".getBytes(StandardCharsets.UTF_8));
        }
        for (int i = wide && !marked ? 2 : 0; i < bytes.length; i++) {
          boolean end = bytes[i] == '\n' && (!wide || i % 2 == 0 && bytes[i + 1] == 0);
          if (end) {
            other.write(wide ? new byte[] {'\r', 0} : new byte[] {'\r'});
          }
          other.write(bytes[i]);
        }
        Files.write(folder.resolve(table), other.toByteArray());
      }
      check(folder, saved.folder() + (marked ? ", with a mark" : ", without"));
    }
  }

  /**
   * Makes all of them anew by the program itself. With {@code -Dtrammel.docs.write=true} they take
   * the place of those that are kept.
   */
  @Test
  @Tag("long")
  void whatLibreOfficeSavesNowSaysTheSame() throws Exception {
    assumeTrue(isInstalled("soffice"), "skipped: there is no LibreOffice on this machine");
    boolean write = Boolean.getBoolean("trammel.docs.write");
    Path source = Files.createDirectories(write ? KEPT.resolve(SOURCE) : folder.resolve(SOURCE));
    for (Map.Entry<String, String> table : tables().entrySet()) {
      Files.writeString(source.resolve(table.getKey()), table.getValue());
    }
    for (Saved saved : Saved.values()) {
      Path out = (write ? KEPT : folder).resolve(saved.folder());
      convert(source, saved, out);
      check(out, saved.folder() + ", made now");
    }
  }

  private void convert(Path source, Saved saved, Path out) throws Exception {
    Path profile = folder.resolve("profile-" + saved.language);
    Files.createDirectories(profile.resolve("user"));
    Files.writeString(
        profile.resolve("user/registrymodifications.xcu"),
        """
        <?xml version="1.0" encoding="UTF-8"?>
        <oor:items xmlns:oor="http://openoffice.org/2001/registry"
            xmlns:xs="http://www.w3.org/2001/XMLSchema"
            xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
        <item oor:path="/org.openoffice.Setup/L10N"><prop oor:name="ooSetupSystemLocale"
            oor:op="fuse"><value>%s</value></prop></item>
        </oor:items>
        """
            .formatted(saved.language));
    List<String> command =
        new ArrayList<>(
            List.of(
                "soffice",
                "--headless",
                "-env:UserInstallation=" + profile.toUri(),
                "--infilter=CSV:44,34,76,1,,1033,false,true",
                "--convert-to",
                "csv:Text - txt - csv (StarCalc):" + saved.filter + ",1,,0,false,true,false",
                "--outdir",
                out.toString()));
    tables().keySet().forEach(table -> command.add(source.resolve(table).toString()));
    Process convert = new ProcessBuilder(command).redirectErrorStream(true).start();
    String told = new String(convert.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, convert.waitFor(), told);
    assertTrue(Files.exists(out.resolve("rack.csv")), told);
  }

  private static boolean isInstalled(String program) {
    return Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
        .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
  }
}
