package trammel.app.rack;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trammel.app.commandline.CommandFailure;
import trammel.app.files.Csv;
import trammel.app.files.CsvReader;
import trammel.app.files.SafeFile;
import trammel.planning.catalog.Catalog;
import trammel.planning.rack.Rack;
import trammel.reading.fields.NearestWord;
import trammel.reading.quantity.Quantities;
import trammel.reading.quantity.QuantityFormatException;
import trammel.reading.quantity.QuantityKind;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.Location;
import trammel.reading.tree.Problems;

/**
 * Stock on hand as comma-separated values, one piece or bin a line: {@code kind} (stick, drop or
 * bin), {@code item} (key in the catalog), {@code name} (painted on it), {@code length}, {@code
 * width}, {@code quantity}. Lines that an order does not touch are written back as they were.
 */
public final class RackFile {
  private static final List<String> COLUMNS =
      List.of("kind", "item", "name", "length", "width", "quantity");
  private static final String STICK = "stick";
  private static final String DROP = "drop";
  private static final String BIN = "bin";

  private final Path file;
  private final Catalog catalog;
  private final UnitSystem units;
  private final Problems problems = new Problems();
  private final Map<Record, List<String>> asWritten = new HashMap<>();
  private final List<Rack.Stick> sticks = new ArrayList<>();
  private final List<Rack.Drop> drops = new ArrayList<>();
  private final List<Rack.Bin> bins = new ArrayList<>();

  /**
   * @param file the file
   * @param catalog gives the keys
   * @param units the unit system of bare numbers, and of what is written
   */
  public RackFile(Path file, Catalog catalog, UnitSystem units) {
    this.file = file;
    this.catalog = catalog;
    this.units = units;
  }

  /**
   * What is on the rack.
   *
   * @throws CommandFailure if the file cannot be read or has not these columns
   * @throws trammel.reading.tree.BadInputException with every line that is wrong
   */
  public Rack read() {
    List<CsvReader.Row> rows = CsvReader.rows(file);
    if (rows.isEmpty() || !rows.get(0).cells().equals(COLUMNS)) {
      throw CommandFailure.badInput(
          file + ": the first line must be " + String.join(",", COLUMNS) + ". Put it there.");
    }
    for (CsvReader.Row row : rows.subList(1, rows.size())) {
      add(row);
    }
    problems.throwIfErrors();
    try {
      return new Rack(sticks, drops, bins);
    } catch (IllegalArgumentException refused) {
      throw CommandFailure.badInput(file + ": " + refused.getMessage());
    }
  }

  private void add(CsvReader.Row row) {
    int before = problems.errors().size();
    switch (row.cell(0)) {
      case STICK -> addStick(row, before);
      case DROP -> addDrop(row, before);
      case BIN -> addBin(row, before);
      default ->
          problems.error(
              where(row, 0),
              "'" + row.cell(0) + "'",
              "stick, drop or bin",
              "Say what kind of stock the line is.");
    }
  }

  private void addStick(CsvReader.Row row, int before) {
    String key = key(row, catalog.bars().keySet(), "a section");
    String name = name(row);
    double lengthMm = length(row, 3);
    if (problems.errors().size() == before) {
      Rack.Stick stick = new Rack.Stick(name, key, lengthMm);
      sticks.add(stick);
      asWritten.put(stick, row.cells());
    }
  }

  private void addDrop(CsvReader.Row row, int before) {
    String key = key(row, catalog.plates().keySet(), "a plate");
    String name = name(row);
    double lengthMm = length(row, 3);
    double widthMm = length(row, 4);
    if (problems.errors().size() == before) {
      Rack.Drop drop = new Rack.Drop(name, key, widthMm, lengthMm);
      drops.add(drop);
      asWritten.put(drop, row.cells());
    }
  }

  private void addBin(CsvReader.Row row, int before) {
    boolean bolt = catalog.bolts().containsKey(row.cell(1));
    if (!bolt) {
      key(row, catalog.items().keySet(), "an item or a bolt");
    }
    double lengthMm = bolt ? length(row, 3) : 0;
    BigDecimal quantity = quantity(row);
    if (problems.errors().size() == before) {
      Rack.Bin bin = new Rack.Bin(row.cell(1), lengthMm, quantity);
      bins.add(bin);
      asWritten.put(bin, row.cells());
    }
  }

  private String key(CsvReader.Row row, Set<String> known, String what) {
    String key = row.cell(1);
    if (!known.contains(key)) {
      problems.error(
          where(row, 1),
          "'" + key + "'",
          what + " of the catalog",
          NearestWord.to(key, List.copyOf(known))
              .map(word -> "Did you mean " + word + "?")
              .orElse("Use its key in the catalog."));
    }
    return key;
  }

  private String name(CsvReader.Row row) {
    if (row.cell(2).isEmpty()) {
      problems.error(
          where(row, 2), "nothing", "the name painted on it", "Paint one on and write it down.");
    }
    return row.cell(2);
  }

  private double length(CsvReader.Row row, int column) {
    try {
      double lengthMm = Quantities.parse(row.cell(column), QuantityKind.LENGTH, units);
      if (lengthMm > 0 && lengthMm < MOST_MM) {
        return lengthMm;
      }
      problems.error(
          where(row, column), row.cell(column), "above 0, up to 60 ft", "Measure it again.");
    } catch (QuantityFormatException refused) {
      problems.error(where(row, column), refused.given(), refused.allowed(), refused.remedy());
    }
    return 1;
  }

  private BigDecimal quantity(CsvReader.Row row) {
    String text = row.cell(5);
    if (text.length() <= 9 && text.matches("\\d+(\\.\\d+)?")) {
      return new BigDecimal(text);
    }
    problems.error(where(row, 5), "'" + text + "'", "a count such as 4", "Count them.");
    return BigDecimal.ZERO;
  }

  private Location where(CsvReader.Row row, int column) {
    return new Location(file.toString(), row.line(), 1, COLUMNS.get(column));
  }

  /**
   * Writes the rack in place of the file.
   *
   * @throws CommandFailure if it cannot be written; the file is then as it was
   */
  public void write(Rack rack) {
    QuantityPrinter printer = new QuantityPrinter(units);
    Csv csv = new Csv().row(COLUMNS.toArray());
    for (Rack.Stick stick : rack.sticks()) {
      row(
          csv,
          stick,
          STICK,
          stick.barKey(),
          stick.name(),
          printer.length(stick.lengthMm()),
          "",
          "");
    }
    for (Rack.Drop drop : rack.drops()) {
      row(
          csv,
          drop,
          DROP,
          drop.plateKey(),
          drop.name(),
          printer.length(drop.lengthMm()),
          printer.length(drop.widthMm()),
          "");
    }
    for (Rack.Bin bin : rack.bins()) {
      row(
          csv,
          bin,
          BIN,
          bin.key(),
          "",
          bin.lengthMm() > 0 ? printer.length(bin.lengthMm()) : "",
          "",
          bin.quantity().stripTrailingZeros().toPlainString());
    }
    SafeFile.write(file, csv.text());
  }

  private void row(Csv csv, Record piece, Object... cells) {
    List<String> before = asWritten.get(piece);
    csv.row(before == null ? cells : before.toArray());
  }

  private static final double MOST_MM = 60 * 304.8;
}
