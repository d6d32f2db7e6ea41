package trammel.app.rack;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import trammel.app.commandline.CommandFailure;
import trammel.app.files.Csv;
import trammel.app.files.CsvReader;
import trammel.app.files.CsvText;
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
 * Reads and writes stock on hand as comma-separated values, one piece or bin a line: {@code kind}
 * (stick, drop or bin), {@code item} (key in the catalog), {@code name} (painted on it), {@code
 * length}, {@code width}, {@code quantity}.
 */
public final class RackFile {
  /** The heading of the table. */
  public static final List<String> COLUMNS =
      List.of("kind", "item", "name", "length", "width", "quantity");

  private static final String STICK = "stick";
  private static final String DROP = "drop";
  private static final String BIN = "bin";

  private final Path file;
  private final Catalog catalog;
  private final UnitSystem units;
  private final Problems problems = new Problems();
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
    return read(CsvReader.rows(file));
  }

  /**
   * What is on the rack by the rows of the file, once these were read.
   *
   * @throws CommandFailure if they have not these columns
   * @throws trammel.reading.tree.BadInputException with every line that is wrong
   */
  public Rack read(List<CsvReader.Row> rows) {
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
      sticks.add(new Rack.Stick(name, key, lengthMm));
    }
  }

  private void addDrop(CsvReader.Row row, int before) {
    String key = key(row, catalog.plates().keySet(), "a plate");
    String name = name(row);
    double lengthMm = length(row, 3);
    double widthMm = length(row, 4);
    if (problems.errors().size() == before) {
      drops.add(new Rack.Drop(name, key, widthMm, lengthMm));
    }
  }

  private void addBin(CsvReader.Row row, int before) {
    String cell = CsvText.meant(row.cell(1));
    boolean bolt = catalog.bolts().containsKey(cell);
    String key = bolt ? cell : key(row, catalog.items().keySet(), "an item or a bolt");
    double lengthMm = bolt ? length(row, 3) : 0;
    BigDecimal quantity = quantity(row);
    if (problems.errors().size() == before) {
      bins.add(new Rack.Bin(key, lengthMm, quantity));
    }
  }

  private String key(CsvReader.Row row, Set<String> known, String what) {
    String key = CsvText.meant(row.cell(1));
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
    return CsvText.meant(row.cell(2));
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
    String text = row.number(5);
    if (text.length() <= 9 && text.matches("\\d+(\\.\\d+)?")) {
      return new BigDecimal(text);
    }
    problems.error(where(row, 5), "'" + text + "'", "a count such as 4", "Count them.");
    return BigDecimal.ZERO;
  }

  private Location where(CsvReader.Row row, int column) {
    return new Location(file.toString(), row.line(), 1, COLUMNS.get(column));
  }

  /** A rack as the text of such a file. */
  public static String text(Rack rack, UnitSystem units) {
    QuantityPrinter printer = new QuantityPrinter(units);
    Csv csv = new Csv().row(COLUMNS.toArray());
    for (Rack.Stick stick : rack.sticks()) {
      csv.row(
          STICK,
          CsvText.safe(stick.barKey()),
          CsvText.safe(stick.name()),
          length(stick.lengthMm(), printer),
          "",
          "");
    }
    for (Rack.Drop drop : rack.drops()) {
      csv.row(
          DROP,
          CsvText.safe(drop.plateKey()),
          CsvText.safe(drop.name()),
          length(drop.lengthMm(), printer),
          length(drop.widthMm(), printer),
          "");
    }
    for (Rack.Bin bin : rack.bins()) {
      csv.row(
          BIN,
          CsvText.safe(bin.key()),
          "",
          bin.lengthMm() > 0 ? length(bin.lengthMm(), printer) : "",
          "",
          bin.quantity().stripTrailingZeros().toPlainString());
    }
    return csv.text();
  }

  /**
   * A length in the shop's units where these tell it in full, with every digit in millimetres
   * otherwise: read again, it is the same.
   */
  public static String length(double lengthMm, QuantityPrinter printer) {
    String shop = printer.length(lengthMm);
    try {
      double readMm = Quantities.parse(shop, QuantityKind.LENGTH, printer.system());
      if (Math.abs(readMm - lengthMm) < ROUNDING_MM) {
        return shop;
      }
    } catch (QuantityFormatException notReadBack) {
      return millimetres(lengthMm);
    }
    return millimetres(lengthMm);
  }

  private static String millimetres(double lengthMm) {
    return new BigDecimal(Double.toString(lengthMm)).stripTrailingZeros().toPlainString() + " mm";
  }

  /** What a length in inches loses as a floating-point number of millimetres. */
  private static final double ROUNDING_MM = 1e-9;

  private static final double MOST_MM = 60 * 304.8;
}
