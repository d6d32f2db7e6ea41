package trammel.planning.rack;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import trammel.planning.catalog.BoltSize;
import trammel.planning.catalog.BoughtAs;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.Item;
import trammel.planning.document.DocumentReader;
import trammel.planning.document.Location;
import trammel.planning.document.ObjectNode;
import trammel.planning.document.Problems;
import trammel.planning.fields.Field;
import trammel.planning.fields.FieldReader;
import trammel.planning.fields.FieldValues;
import trammel.planning.quantity.Tolerances;
import trammel.planning.quantity.UnitSystem;

/** Reads a rack file, JSON or YAML, against the catalog. Everything wrong is reported at once. */
public final class RackReader {
  /** What {@code format} must say. */
  public static final String FORMAT = "trammel-rack/1";

  private static final double SAME_BOLT_MM = 0.01;
  private static final int MOST = 100_000;

  static final Field<String> FORMAT_FIELD =
      Field.choice("format", "what kind of file this is", List.of(FORMAT));
  static final Field<String> UNITS =
      Field.choice("units", "what bare numbers in this file mean", List.of("us", "metric"))
          .withDefault("us");
  static final Field<String> NOTE =
      Field.text("note", "anything to say about the stock; it is kept", 400).optional();
  static final Field<Integer> NEXT =
      Field.count("next", "number of the next piece that is put back", 1, 1_000_000_000)
          .withDefault(1);
  private static final Field<String> BAR = Field.text("bar", "key of the section", 60);
  private static final Field<String> PLATE = Field.text("plate", "key of the plate", 60);
  private static final Field<String> BOLT = Field.text("bolt", "key of the bolt size", 60);
  private static final Field<Double> WIDTH = Field.lengthMm("width", "width", 1, 20_000);
  private static final Field<Double> LENGTH = Field.lengthMm("length", "length", 1, 20_000);
  private static final Field<Integer> COUNT =
      Field.count("count", "how many there are", 1, MOST).withDefault(1);
  private static final Field<BigDecimal> QUANTITY =
      Field.money("quantity", "how much there is, in the unit of the catalog");
  static final Field<Map<String, FieldValues>> STICKS =
      Field.namedSections("sticks", "lengths of tube, by name", List.of(BAR, LENGTH, COUNT))
          .optional();
  static final Field<Map<String, FieldValues>> SHEETS =
      Field.namedSections(
              "sheets", "sheets and drops, by name", List.of(PLATE, WIDTH, LENGTH, COUNT))
          .optional();
  static final Field<Map<String, FieldValues>> ITEMS =
      Field.namedSections("items", "bought items, by their key in the catalog", List.of(QUANTITY))
          .optional();
  static final Field<List<FieldValues>> BOLTS =
      Field.sections(
              "bolts", "bolts, each with a lock nut and two washers", List.of(BOLT, LENGTH, COUNT))
          .optional();

  private final Catalog catalog;
  private final Problems problems = new Problems();

  private RackReader(Catalog catalog) {
    this.catalog = catalog;
  }

  /**
   * Reads a rack file.
   *
   * @throws trammel.planning.document.BadInputException with everything that is wrong with it
   */
  public static Rack read(Path file, Catalog catalog) {
    return new RackReader(catalog).rack(DocumentReader.read(file));
  }

  /**
   * Reads a text that has the name of a rack file.
   *
   * @throws trammel.planning.document.BadInputException with everything that is wrong with it
   */
  public static Rack read(String fileName, String text, Catalog catalog) {
    return new RackReader(catalog).rack(DocumentReader.read(fileName, text));
  }

  private Rack rack(ObjectNode root) {
    UnitSystem units = units(root);
    FieldValues values =
        new FieldReader(units, Tolerances.USUAL, problems)
            .read(root, List.of(FORMAT_FIELD, UNITS, NOTE, NEXT, STICKS, SHEETS, ITEMS, BOLTS));
    problems.throwIfErrors();
    Map<String, Rack.Stick> sticks = sticks(values.find(STICKS).orElse(Map.of()));
    Map<String, Rack.Sheet> sheets = sheets(values.find(SHEETS).orElse(Map.of()), sticks.keySet());
    Map<String, BigDecimal> items = items(values.find(ITEMS).orElse(Map.of()));
    List<Rack.Bolts> bolts = bolts(values.find(BOLTS).orElse(List.of()));
    problems.throwIfErrors();
    return new Rack(units, values.find(NOTE), values.get(NEXT), sticks, sheets, items, bolts);
  }

  /** The units come first: they decide how everything else is read. Faults are reported later. */
  private static UnitSystem units(ObjectNode root) {
    FieldReader ahead = new FieldReader(UnitSystem.US, Tolerances.USUAL, new Problems());
    Optional<String> word = ahead.read(root, List.of(UNITS)).find(UNITS);
    return word.isPresent() ? UnitSystem.ofWord(word.get()) : UnitSystem.US;
  }

  private Map<String, Rack.Stick> sticks(Map<String, FieldValues> written) {
    Map<String, Rack.Stick> sticks = new LinkedHashMap<>();
    for (Map.Entry<String, FieldValues> entry : written.entrySet()) {
      FieldValues stick = entry.getValue();
      String key = stick.get(BAR);
      if (known(key, catalog.bars().keySet(), "bars", stick.locationOf(BAR))) {
        sticks.put(entry.getKey(), new Rack.Stick(key, stick.get(LENGTH), stick.get(COUNT)));
      }
    }
    return sticks;
  }

  private Map<String, Rack.Sheet> sheets(Map<String, FieldValues> written, Set<String> taken) {
    Map<String, Rack.Sheet> sheets = new LinkedHashMap<>();
    for (Map.Entry<String, FieldValues> entry : written.entrySet()) {
      FieldValues sheet = entry.getValue();
      String key = sheet.get(PLATE);
      if (taken.contains(entry.getKey())) {
        problems.error(
            sheet.location(),
            "'" + entry.getKey() + "' for a sheet and for a length",
            "each name once on the rack",
            "Give one of the two another name.");
      }
      if (known(key, catalog.plates().keySet(), "plates", sheet.locationOf(PLATE))) {
        sheets.put(
            entry.getKey(),
            new Rack.Sheet(key, sheet.get(WIDTH), sheet.get(LENGTH), sheet.get(COUNT)));
      }
    }
    return sheets;
  }

  private Map<String, BigDecimal> items(Map<String, FieldValues> written) {
    Map<String, BigDecimal> items = new LinkedHashMap<>();
    for (Map.Entry<String, FieldValues> entry : written.entrySet()) {
      FieldValues item = entry.getValue();
      String key = entry.getKey();
      if (!known(key, catalog.items().keySet(), "items", item.location())) {
        continue;
      }
      Item bought = catalog.item(key);
      if (bought.bought() == BoughtAs.OUTSIDE_WORK) {
        problems.error(
            item.location(),
            "'" + key + "', which is outside work",
            "things that can lie on a rack",
            "Take it out.");
      } else if (item.get(QUANTITY).signum() > 0) {
        items.put(key, item.get(QUANTITY));
      }
    }
    return items;
  }

  private List<Rack.Bolts> bolts(List<FieldValues> written) {
    List<Rack.Bolts> bolts = new ArrayList<>();
    for (FieldValues some : written) {
      String key = some.get(BOLT);
      if (known(key, catalog.bolts().keySet(), "bolts", some.locationOf(BOLT))
          && stocked(catalog.bolt(key), some)) {
        bolts.add(new Rack.Bolts(key, some.get(LENGTH), some.get(COUNT)));
      }
    }
    return bolts;
  }

  private boolean stocked(BoltSize size, FieldValues some) {
    for (BoltSize.Stocked stocked : size.lengths()) {
      if (Math.abs(stocked.lengthMm() - some.get(LENGTH)) < SAME_BOLT_MM) {
        return true;
      }
    }
    problems.error(
        some.locationOf(LENGTH),
        "a length that " + size.title() + " is not sold in",
        "one of the lengths of '" + size.key() + "' in the catalog",
        "Measure from under the head, or add the length to the catalog.");
    return false;
  }

  private boolean known(String key, Set<String> keys, String section, Location where) {
    if (keys.contains(key)) {
      return true;
    }
    problems.error(
        where,
        "'" + key + "'",
        "a key of " + section + " in the catalog: " + String.join(", ", keys),
        "Write one of these, or add it to the catalog.");
    return false;
  }
}
