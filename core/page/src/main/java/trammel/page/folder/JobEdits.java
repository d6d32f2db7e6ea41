package trammel.page.folder;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.ListNode;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.WrittenDocument;

/**
 * Changes jobs in a folder, field by field: what others changed meanwhile stays, and a field that
 * somebody else changed is asked about instead of overwritten. Everything else in the file stays as
 * it is written.
 */
public final class JobEdits {
  /** More than the largest table has on one screen. */
  private static final int MOST_EDITS = 2000;

  private final JobFolder folder;

  /**
   * @param folder where the jobs are
   */
  public JobEdits(JobFolder folder) {
    this.folder = folder;
  }

  /**
   * What came of a change.
   *
   * @param job the file now
   * @param conflicts fields that were not what whoever changes them saw; nothing was changed then
   */
  public record Outcome(JobText job, List<String> conflicts) {
    public Outcome {
      conflicts = List.copyOf(conflicts);
    }
  }

  /**
   * What a device can take back or bring again, in words.
   *
   * @param undo the last change that stands
   * @param redo the change that was taken back last
   */
  public record Steps(Optional<String> undo, Optional<String> redo) {}

  /** Says of a change whether a field can hold it; throws what is wrong with it. */
  public interface Guard {
    /**
     * Refuses what no field can hold.
     *
     * @param after the job with all changes of the request in it
     * @param edit the change
     */
    void check(ObjectNode after, Edit edit);
  }

  /**
   * The edits of a request.
   *
   * @throws Refused if they are too many, or one is none
   */
  public static List<Edit> edits(ObjectNode json) {
    List<Edit> edits = new ArrayList<>();
    if (json.find("edits").orElse(null) instanceof ListNode list) {
      if (list.entries().size() > MOST_EDITS) {
        throw new Refused(
            422,
            list.entries().size()
                + " cells at once are too many: paste at most "
                + MOST_EDITS
                + " of them.");
      }
      for (DocumentNode node : list.entries()) {
        if (!(node instanceof ObjectNode object)) {
          throw new Refused(400, "An edit is a path with what was there and what is to be there.");
        }
        edits.add(Edit.of(object));
      }
    }
    return edits;
  }

  /**
   * Makes a change and notes it.
   *
   * @param name the job file
   * @param device who makes it
   * @param json its {@code edits}, {@code label} and {@code group}
   * @param guard says whether the fields can hold it
   */
  public Outcome make(String name, String device, ObjectNode json, Guard guard) {
    Change change = Change.of(device, json, edits(json));
    synchronized (folder.lock(name)) {
      Outcome outcome = apply(name, change.edits(), guard);
      if (outcome.conflicts().isEmpty() && !change.edits().isEmpty()) {
        ChangeBook.of(folder.file(name)).add(change);
      }
      return outcome;
    }
  }

  /** Takes the last change of a device back, as far as nobody has changed the same since. */
  public Outcome undo(String name, String device) {
    synchronized (folder.lock(name)) {
      ChangeBook book = ChangeBook.of(folder.file(name));
      Optional<Change> change = book.toUndo(device);
      if (change.isEmpty()) {
        return new Outcome(folder.read(name), List.of());
      }
      Outcome outcome = apply(name, current(name, change.get().back()), (after, edit) -> {});
      book.mark(change.get(), true);
      return outcome;
    }
  }

  /** Makes the change again that a device took back last. */
  public Outcome redo(String name, String device) {
    synchronized (folder.lock(name)) {
      ChangeBook book = ChangeBook.of(folder.file(name));
      Optional<Change> change = book.toRedo(device);
      if (change.isEmpty()) {
        return new Outcome(folder.read(name), List.of());
      }
      Outcome outcome = apply(name, current(name, change.get().edits()), (after, edit) -> {});
      book.mark(change.get(), false);
      return outcome;
    }
  }

  /** What a device can take back or bring again. */
  public Steps steps(String name, String device) {
    ChangeBook book = ChangeBook.of(folder.file(name));
    return new Steps(
        book.toUndo(device).map(Change::label), book.toRedo(device).map(Change::label));
  }

  /** Those edits whose fields nobody has changed since. */
  private List<Edit> current(String name, List<Edit> edits) {
    JobText job = folder.read(name);
    ObjectNode root = WrittenDocument.of(name, TextFile.withoutMark(job.text())).root();
    List<Edit> current = new ArrayList<>();
    for (Edit edit : edits) {
      if (edit.isCurrent(root)) {
        current.add(edit);
        root = edit.in(root);
      }
    }
    return current;
  }

  private Outcome apply(String name, List<Edit> edits, Guard guard) {
    JobText was = folder.read(name);
    WrittenDocument document = WrittenDocument.of(name, TextFile.withoutMark(was.text()));
    List<String> conflicts = new ArrayList<>();
    ObjectNode after = document.root();
    for (Edit edit : edits) {
      after = edit.in(after);
    }
    for (Edit edit : edits) {
      if (Edit.same(edit.now(document.root()), edit.to())) {
        continue;
      }
      if (!edit.isCurrent(document.root())) {
        conflicts.add(edit.path());
        continue;
      }
      guard.check(after, edit);
      document =
          edit.to().isPresent()
              ? document.with(edit.path(), edit.to().get())
              : document.without(edit.path());
    }
    String text = TextFile.mark(was.text()) + document.text();
    if (!conflicts.isEmpty() || text.equals(was.text())) {
      return new Outcome(was, conflicts);
    }
    return new Outcome(folder.write(was, text), List.of());
  }
}
