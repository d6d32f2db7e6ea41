package trammel.cutting.validation;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import tools.jackson.databind.JsonNode;
import trammel.cutting.ReferenceFiles;

/**
 * What a plan is held against: the published optimum or best known value where there is one, else
 * the best of a longer search of our own, which is no more than that.
 */
final class Marks {
  /**
   * @param value price, number or length
   * @param how where it comes from
   */
  record Mark(double value, String how) {}

  private final Map<String, Mark> marks = new HashMap<>();

  Marks() {
    JsonNode file = ReferenceFiles.read("validation", "marks");
    for (JsonNode mark : file.get("marks")) {
      marks.put(
          mark.get("name").asString(),
          new Mark(mark.get("value").asDouble(), mark.get("how").asString()));
    }
    for (Path path : ReferenceFiles.in("poly2d")) {
      JsonNode instance = ReferenceFiles.read(path);
      JsonNode best = instance.get("best");
      if (!best.isNull()) {
        marks.put(
            instance.get("name").asString(),
            new Mark(best.get("objective").asDouble(), "best published"));
      }
    }
  }

  /** The mark of an instance, if there is one. */
  OptionalDouble of(String name) {
    Mark mark = marks.get(name);
    return mark == null ? OptionalDouble.empty() : OptionalDouble.of(mark.value());
  }
}
