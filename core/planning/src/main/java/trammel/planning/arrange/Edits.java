package trammel.planning.arrange;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import trammel.planning.job.JobDocument;

/**
 * Changes to a job file, in the order in which they are made; a later one of a field replaces it.
 */
final class Edits {
  static final Edits NONE = new Edits(Map.of());

  /**
   * A change.
   *
   * @param text what is to stand there
   * @param reason what asked for it
   */
  record Edit(String text, String reason) {}

  private final Map<String, Edit> byPath;

  private Edits(Map<String, Edit> byPath) {
    this.byPath = byPath;
  }

  Edits with(String path, String text, String reason) {
    Map<String, Edit> changed = new LinkedHashMap<>(byPath);
    changed.put(path, new Edit(text, reason));
    return new Edits(changed);
  }

  Edits without(String path) {
    Map<String, Edit> changed = new LinkedHashMap<>(byPath);
    changed.remove(path);
    return new Edits(changed);
  }

  Map<String, Edit> byPath() {
    return byPath;
  }

  Optional<String> text(String path) {
    return Optional.ofNullable(byPath.get(path)).map(Edit::text);
  }

  JobDocument in(JobDocument document) {
    JobDocument changed = document;
    for (Map.Entry<String, Edit> one : byPath.entrySet()) {
      changed = changed.withValue(one.getKey(), one.getValue().text());
    }
    return changed;
  }

  /** The same changes have the same key, whatever their reasons. */
  String key() {
    StringBuilder key = new StringBuilder();
    byPath.forEach((path, edit) -> key.append(path).append('=').append(edit.text()).append(';'));
    return key.toString();
  }
}
