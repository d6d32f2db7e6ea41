package trammel.planning.catalog;

import java.util.List;
import java.util.Map;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.reading.tree.Problems;

/** One section of a catalog file: how its entries are written and what becomes of them. */
abstract class CatalogSection {
  private final String key;
  private final String help;
  private final List<Field<?>> fields;

  CatalogSection(String key, String help, List<Field<?>> fields) {
    this.key = key;
    this.help = help;
    this.fields = List.copyOf(fields);
  }

  final String key() {
    return key;
  }

  final String help() {
    return help;
  }

  /** The fields of one entry. */
  final List<Field<?>> fields() {
    return fields;
  }

  /** True if the section is one entry itself and not entries by name. */
  boolean isSingle() {
    return false;
  }

  /** True if a catalog must have an entry of it. */
  boolean isNeeded() {
    return true;
  }

  /** True if a plugin may bring entries of it. */
  boolean isForPlugins() {
    return false;
  }

  /** True if its entries have prices. */
  boolean isPriced() {
    return false;
  }

  /** Reports what a later file may not change by itself. */
  void checkChange(CatalogEntry later, Problems problems) {}

  /** Keys that a later file writes in place of another key of an earlier one, at any depth. */
  Map<String, String> rivals() {
    return Map.of();
  }

  /**
   * Adds an entry that has been read without a problem.
   *
   * @throws IllegalArgumentException if its values contradict each other
   */
  abstract void add(CatalogEntry entry, FieldValues values, CatalogAssembly assembly);
}
