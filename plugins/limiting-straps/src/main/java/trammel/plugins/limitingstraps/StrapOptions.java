package trammel.plugins.limitingstraps;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import trammel.brackets.material.PlateMaterial;
import trammel.brackets.mount.MountPractice;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.Item;
import trammel.planning.options.MountOptions;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;

/** The options of limiting straps. */
final class StrapOptions {
  private static final String STRAPS = "limiting-strap-";
  private static final double INCH_MM = 25.4;

  static final Field<Integer> PER_SIDE =
      Field.count(
              "per_side",
              "straps on each side, one on each face of its tabs; two share the load and stretch half"
                  + " as much",
              1,
              2)
          .withDefault(1);

  static final Field<Double> RESERVE =
      Field.lengthMm(
              "reserve",
              "shock travel that is to be left when the straps are tight and stretched",
              0,
              3 * INCH_MM)
          .withDefault(MountPractice.SHOCK_RESERVE_MM);

  /** Nylon webbing gives under load; about a tenth: from memory. */
  static final Field<Double> STRETCH =
      Field.percent("stretch", "how much longer one strap by itself gets under load", 0, 0.25)
          .withDefault(0.10);

  private StrapOptions() {}

  static List<Field<?>> all(Catalog catalog) {
    List<Field<?>> all = new ArrayList<>(List.of(PER_SIDE, RESERVE, STRETCH));
    if (!stocked(catalog).isEmpty()) {
      all.add(strap(catalog));
    }
    all.add(MountOptions.bracketPlate(catalog));
    return all;
  }

  private static Field<String> strap(Catalog catalog) {
    return Field.choice(
            "strap",
            "strap by its catalog key; left out, the shortest that lets the axle droop as far as"
                + " wanted",
            stocked(catalog).stream().map(Item::key).toList())
        .optional();
  }

  /** The straps of the catalog, the shortest first. */
  private static List<Item> stocked(Catalog catalog) {
    return catalog.items().values().stream()
        .filter(item -> item.key().startsWith(STRAPS) && item.lengthMm().isPresent())
        .sorted(Comparator.comparingDouble(item -> item.lengthMm().getAsDouble()))
        .toList();
  }

  /** The straps that may be taken: the one that the job names, or all, the shortest first. */
  static List<Item> wanted(FieldValues options, Catalog catalog) {
    List<Item> stocked = stocked(catalog);
    if (stocked.isEmpty()) {
      return stocked;
    }
    Optional<String> named = options.find(strap(catalog));
    return named.isPresent() ? List.of(catalog.item(named.get())) : stocked;
  }

  /** The plate of the tabs. */
  static PlateMaterial plate(FieldValues options, Catalog catalog) {
    return catalog.plate(options.get(MountOptions.bracketPlate(catalog)));
  }
}
