package trammel.page.folder;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import trammel.reading.tree.ObjectNode;

/**
 * One change that somebody made to a job, of one field or of several at once.
 *
 * @param device the device that it was made on
 * @param label what it was, in words
 * @param group what belongs to the same gesture has the same; empty for a change by itself
 * @param edits the fields
 * @param undone whether it was taken back
 */
public record Change(String device, String label, String group, List<Edit> edits, boolean undone) {
  private static final int LONGEST_LABEL = 200;

  public Change {
    edits = List.copyOf(edits);
  }

  /**
   * A change that stands.
   *
   * @param json the request, with {@code label} and {@code group}
   */
  public static Change of(String device, ObjectNode json, List<Edit> edits) {
    return new Change(device, label(json, "label"), label(json, "group"), edits, false);
  }

  /** The edits that take it back, the last first. */
  public List<Edit> back() {
    List<Edit> back = new ArrayList<>(edits.stream().map(Edit::reversed).toList());
    Collections.reverse(back);
    return back;
  }

  private static String label(ObjectNode json, String key) {
    String text = Plain.text(json, key);
    return text.substring(0, Math.min(LONGEST_LABEL, text.length()));
  }

  Change withUndone(boolean now) {
    return new Change(device, label, group, edits, now);
  }

  /** This and a later change of the same gesture as one; empty if they are of other fields. */
  Optional<Change> joined(Change later) {
    boolean same =
        !group.isEmpty()
            && group.equals(later.group)
            && device.equals(later.device)
            && !undone
            && paths().equals(later.paths());
    if (!same) {
      return Optional.empty();
    }
    List<Edit> both =
        edits.stream()
            .map(first -> new Edit(first.path(), first.from(), later.edit(first.path()).to()))
            .toList();
    return Optional.of(new Change(device, later.label, group, both, false));
  }

  private List<String> paths() {
    return edits.stream().map(Edit::path).toList();
  }

  private Edit edit(String path) {
    return edits.stream().filter(one -> one.path().equals(path)).findFirst().orElseThrow();
  }
}
