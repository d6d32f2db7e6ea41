package trammel.page.folder;

import java.util.List;
import java.util.Optional;

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
  public Change {
    edits = List.copyOf(edits);
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
