package trammel.planning.estimate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.brackets.work.PartNeed;
import trammel.planning.catalog.Catalog;

/** Puts the needs for one item together on one line. */
final class PartSchedule {
  private final Catalog catalog;

  PartSchedule(Catalog catalog) {
    this.catalog = catalog;
  }

  List<PartLine> lines(List<PartNeed> needs) {
    Map<String, PartLine> byItem = new LinkedHashMap<>();
    for (PartNeed need : needs) {
      PartLine line = new PartLine(catalog.item(need.itemKey()), need.quantity(), need.why());
      PartLine before = byItem.get(need.itemKey());
      byItem.put(need.itemKey(), before == null ? line : together(before, line));
    }
    return new ArrayList<>(byItem.values());
  }

  private static PartLine together(PartLine a, PartLine b) {
    return new PartLine(a.item(), a.quantity() + b.quantity(), a.why().and(b.why()));
  }
}
