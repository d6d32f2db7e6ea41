package trammel.page.shop;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.reading.fields.FieldKind;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.Location;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.Problem;
import trammel.reading.tree.TreeEdit;

/**
 * The standard catalog with the shop's own over it, as it is written: one tree of sections, entries
 * and keys.
 *
 * @param root the tree
 * @param units units of entries that are not in US units, by their path
 * @param catalog what it comes to; empty if something is wrong
 * @param problems what is wrong
 */
record WholeCatalog(
    ObjectNode root,
    Map<String, UnitSystem> units,
    Optional<Catalog> catalog,
    List<Problem> problems) {
  private static final Location NOWHERE = new Location("catalog", 0, 0, "");

  /**
   * Reads the shop's files over what has been read.
   *
   * @param reader the standard catalog
   * @param own folders of the shop
   */
  static WholeCatalog of(CatalogReader reader, List<Path> own) {
    Optional<Catalog> catalog = Optional.empty();
    List<Problem> problems = List.of();
    try {
      catalog = Optional.of(reader.finish(own));
    } catch (BadInputException wrong) {
      problems = wrong.problems();
    }
    ObjectNode root = ObjectNode.empty(NOWHERE);
    Map<String, UnitSystem> units = new HashMap<>();
    for (CatalogReader.Written entry : reader.written()) {
      boolean single = Cells.section(entry.section()).orElseThrow().kind() == FieldKind.SECTION;
      ObjectNode group =
          root.findObject(entry.section()).orElseGet(() -> ObjectNode.empty(NOWHERE));
      root =
          root.with(
              entry.section(), single ? entry.node() : group.with(entry.name(), entry.node()));
      units.put(path(entry.section(), single ? "" : entry.name()), entry.units());
    }
    return new WholeCatalog(root, Map.copyOf(units), catalog, problems);
  }

  /** The path of an entry. */
  static String path(String section, String name) {
    return name.isEmpty() ? section : section + "." + TreeEdit.step(name);
  }

  /** The units in which an entry is written; US for one that is not there. */
  UnitSystem unitsOf(String entry) {
    return units.getOrDefault(entry, UnitSystem.US);
  }
}
