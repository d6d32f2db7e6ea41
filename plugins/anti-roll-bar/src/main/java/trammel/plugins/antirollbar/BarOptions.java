package trammel.plugins.antirollbar;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.material.PlateMaterial;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.Item;
import trammel.planning.options.MountOptions;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;

/** The options of an anti-roll bar. */
final class BarOptions {
  private static final String BARS = "anti-roll-bar-";
  private static final String ARMS = "anti-roll-arm-";
  private static final String BEARINGS = "anti-roll-bearing-";
  static final String LINK = "anti-roll-link";
  private static final String USUAL_BAR = "anti-roll-bar-7-8";
  private static final double PSI_MPA = 0.00689475729;

  /** Two bars of the same diameter, one given in mm (mm). */
  private static final double SAME_MM = 0.05;

  /** Heat-treated spring steel: from memory. */
  static final Field<Double> YIELD =
      Field.pressureMPa(
              "yield",
              "what the bar's steel yields at, by its maker",
              30_000 * PSI_MPA,
              300_000 * PSI_MPA)
          .withDefault(150_000 * PSI_MPA);

  private BarOptions() {}

  static List<Field<?>> all(Catalog catalog) {
    List<Field<?>> all = new ArrayList<>();
    if (!stocked(catalog, BARS).isEmpty()) {
      all.add(bar(catalog));
    }
    if (!stocked(catalog, ARMS).isEmpty()) {
      all.add(arm(catalog));
    }
    all.add(YIELD);
    all.add(MountOptions.bracketPlate(catalog));
    return all;
  }

  private static Field<String> bar(Catalog catalog) {
    List<String> keys = keys(stocked(catalog, BARS));
    return Field.choice("bar", "bar by its catalog key; it says the diameter", keys)
        .withDefault(keys.contains(USUAL_BAR) ? USUAL_BAR : keys.get(0));
  }

  private static Field<String> arm(Catalog catalog) {
    return Field.choice(
            "arm",
            "arms by their catalog key; left out, the longest that find room: a longer arm makes the"
                + " bar softer and loads it less",
            keys(stocked(catalog, ARMS)))
        .optional();
  }

  private static List<String> keys(List<Item> items) {
    return items.stream().map(Item::key).toList();
  }

  /** The items of a kind that have a length, the shortest first. */
  private static List<Item> stocked(Catalog catalog, String kind) {
    return catalog.items().values().stream()
        .filter(item -> item.key().startsWith(kind) && item.lengthMm().isPresent())
        .sorted(Comparator.comparingDouble(item -> item.lengthMm().getAsDouble()))
        .toList();
  }

  /**
   * The bar that is asked for.
   *
   * @throws UnworkableLayoutException if the catalog has none
   */
  static Item bar(FieldValues options, Catalog catalog) {
    if (stocked(catalog, BARS).isEmpty()) {
      throw missing("anti-roll bar (" + BARS + "… with its diameter as its length)");
    }
    return catalog.item(options.get(bar(catalog)));
  }

  /** The arms that may be taken: the one that the job names, or all, the longest first. */
  static List<Item> arms(FieldValues options, Catalog catalog) {
    List<Item> stocked = new ArrayList<>(stocked(catalog, ARMS));
    if (stocked.isEmpty()) {
      throw missing("arm of an anti-roll bar (" + ARMS + "… with a length)");
    }
    Optional<String> named = options.find(arm(catalog));
    if (named.isPresent()) {
      return List.of(catalog.item(named.get()));
    }
    java.util.Collections.reverse(stocked);
    return stocked;
  }

  /** The bearing for a bar. */
  static Item bearing(Item bar, Catalog catalog) {
    double diameterMm = bar.lengthMm().orElseThrow();
    return stocked(catalog, BEARINGS).stream()
        .filter(item -> Math.abs(item.lengthMm().getAsDouble() - diameterMm) < SAME_MM)
        .findFirst()
        .orElseThrow(() -> missing("bearing for " + bar.title()));
  }

  private static UnworkableLayoutException missing(String what) {
    return new UnworkableLayoutException(
        Phrase.of("The catalog has no {}. Take one into the catalog, or leave the bar out.", what));
  }

  /** The plate of tabs and brackets. */
  static PlateMaterial plate(FieldValues options, Catalog catalog) {
    return catalog.plate(options.get(MountOptions.bracketPlate(catalog)));
  }
}
