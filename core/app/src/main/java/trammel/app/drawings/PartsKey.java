package trammel.app.drawings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.assembly.PartKind;
import trammel.assembly.PlacedPart;
import trammel.engine.layout.Layout;
import trammel.planning.fitup.Bracket;

/**
 * What a sheet numbers: bars, springs and shocks by the numbers that every list of the job has,
 * then brackets and the rest of what is added. The two of a pair share a number; bolts have none.
 */
final class PartsKey {
  private final List<Item> items = new ArrayList<>();

  /**
   * One number.
   *
   * @param number as it stands in the balloon
   * @param name what it is called
   * @param parts ids of the placed parts that it counts
   */
  record Item(String number, String name, List<String> parts) {}

  PartsKey(Layout layout, VehicleScene scene) {
    PartNumbers numbers = new PartNumbers(layout);
    Map<String, List<String>> byName = new LinkedHashMap<>();
    numbers.names().forEach(name -> byName.put(name, new ArrayList<>()));
    for (PlacedPart part : scene.assembly().parts()) {
      if (part.kind().added() && part.kind() != PartKind.BOLT) {
        String name =
            byName.containsKey(part.carrier()) ? part.carrier() : Bracket.groupName(part.name());
        byName.computeIfAbsent(name, unknown -> new ArrayList<>()).add(part.id());
      }
    }
    PartWords words = new PartWords(layout);
    byName.forEach(
        (name, parts) ->
            items.add(new Item(Integer.toString(items.size() + 1), words.in(name), parts)));
  }

  List<Item> items() {
    return items;
  }
}
