package trammel.planning.rack;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.planning.given.Given;
import trammel.planning.quantity.UnitSystem;

/**
 * Stock on hand that is paid for.
 *
 * @param units the units in which its file is written
 * @param note anything that the shop says about it
 * @param next number of the next piece that is put on it, 1 or more: no number is used again
 * @param sticks lengths of tube by the name painted on them
 * @param sheets sheets and drops of plate by name
 * @param items bought items by their key, in the unit of the catalog
 * @param bolts bolts with a nut and two washers each
 */
public record Rack(
    UnitSystem units,
    Optional<String> note,
    int next,
    Map<String, Stick> sticks,
    Map<String, Sheet> sheets,
    Map<String, BigDecimal> items,
    List<Bolts> bolts) {
  private static final int MOST = 100_000;
  private static final long MOST_OF_AN_ITEM = 1_000_000;

  public Rack {
    Given.present(units, "Units of the rack", "Give us or metric.");
    Given.count(next, 1, 1_000_000_000, "Number of the next piece on the rack", "Start with 1.");
    sticks = Collections.unmodifiableMap(new LinkedHashMap<>(sticks));
    sheets = Collections.unmodifiableMap(new LinkedHashMap<>(sheets));
    items = Collections.unmodifiableMap(new LinkedHashMap<>(items));
    for (Map.Entry<String, BigDecimal> item : items.entrySet()) {
      Given.decimal(
          item.getValue(), 0, MOST_OF_AN_ITEM, "Stock of '" + item.getKey() + "'", "Count it.");
    }
    bolts = List.copyOf(bolts);
  }

  /** A rack with nothing on it. */
  public static Rack empty(UnitSystem units) {
    return new Rack(units, Optional.empty(), 1, Map.of(), Map.of(), Map.of(), List.of());
  }

  /**
   * Alike lengths of one section.
   *
   * @param barKey the section's key in the catalog
   * @param lengthMm length of each (mm), above 0
   * @param count how many
   */
  public record Stick(String barKey, double lengthMm, int count) {
    public Stick {
      Given.text(barKey, "Section of a length on the rack", "Give its key in the catalog.");
      Given.positive(lengthMm, 20_000, "Length on the rack in mm", "Measure it.");
      Given.count(
          count, 1, MOST, "How many of a length", "Take it off the rack when none is left.");
    }
  }

  /**
   * Alike sheets of one plate.
   *
   * @param plateKey the plate's key in the catalog
   * @param widthMm width (mm), above 0
   * @param lengthMm length (mm), above 0
   * @param count how many
   */
  public record Sheet(String plateKey, double widthMm, double lengthMm, int count) {
    public Sheet {
      Given.text(plateKey, "Plate of a sheet on the rack", "Give its key in the catalog.");
      Given.positive(widthMm, 20_000, "Width of a sheet on the rack in mm", "Measure it.");
      Given.positive(lengthMm, 20_000, "Length of a sheet on the rack in mm", "Measure it.");
      Given.count(count, 1, MOST, "How many of a sheet", "Take it off the rack when none is left.");
    }
  }

  /**
   * Bolts of one size and length, each with a lock nut and two washers.
   *
   * @param boltKey the size's key in the catalog
   * @param lengthMm length under the head (mm), above 0
   * @param count how many
   */
  public record Bolts(String boltKey, double lengthMm, int count) {
    public Bolts {
      Given.text(boltKey, "Size of bolts on the rack", "Give its key in the catalog.");
      Given.positive(
          lengthMm, 1000, "Length of bolts on the rack in mm", "Measure under the head.");
      Given.count(count, 1, MOST, "How many bolts", "Take them off the rack when none is left.");
    }
  }
}
