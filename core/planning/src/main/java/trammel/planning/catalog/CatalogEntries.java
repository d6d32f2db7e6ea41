package trammel.planning.catalog;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import trammel.reading.tree.Location;
import trammel.reading.tree.Problems;

/**
 * The entries of one section over all files. In one folder a name stands once; a later folder may
 * name an entry again and changes the keys that it writes.
 */
final class CatalogEntries {
  private final Map<String, CatalogEntry> byKey = new LinkedHashMap<>();
  private final CatalogSection section;
  private final Problems problems;

  CatalogEntries(CatalogSection section, Problems problems) {
    this.section = section;
    this.problems = problems;
  }

  Iterable<CatalogEntry> all() {
    return byKey.values();
  }

  Optional<CatalogEntry> find(String key) {
    return Optional.ofNullable(byKey.get(key));
  }

  boolean has(String key) {
    return byKey.containsKey(key);
  }

  void put(CatalogEntry entry) {
    CatalogEntry earlier = byKey.get(entry.key());
    if (earlier == null) {
      byKey.put(entry.key(), entry);
    } else if (earlier.folder() == entry.folder()) {
      refuseRepeated(earlier, entry);
    } else if (earlier.units() != entry.units()) {
      problems.error(
          entry.location(),
          "a change in " + entry.units().word() + " units",
          "the units of the entry that it changes, " + earlier.units().word(),
          "Move it to a file that says units: " + earlier.units().word() + ".");
    } else {
      section.checkChange(entry, problems);
      byKey.put(entry.key(), earlier.changedBy(entry, section.rivals()));
    }
  }

  private void refuseRepeated(CatalogEntry earlier, CatalogEntry entry) {
    Location first = earlier.location();
    problems.error(
        entry.location(),
        "'" + entry.key() + "' a second time",
        "each name once; the first stands in " + first.file() + ", line " + first.line(),
        "Take one out or give it a name of its own; to change a standard entry, write it in a"
            + " folder of your own.");
  }
}
