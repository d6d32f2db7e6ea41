package trammel.page.folder;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.app.files.SafeFile;
import trammel.app.json.Json;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.DocumentReader;
import trammel.reading.tree.ListNode;
import trammel.reading.tree.ObjectNode;

/**
 * The changes that were made to one job or to the shop's tables, kept in a hidden file beside it so
 * that they can be taken back after a restart as well. It is a help and no part of either: without
 * it, or with one that cannot be read, there is nothing to take back.
 */
public final class ChangeBook {
  private static final int MOST = 200;
  private static final String FOLDER = ".trammel-page";

  private final Path file;
  private final List<Change> changes = new ArrayList<>();

  private ChangeBook(Path file) {
    this.file = file;
  }

  /** The book of a job file, or of the shop's catalog by the name of its folder. */
  public static ChangeBook of(Path job) {
    Path file = job.resolveSibling(FOLDER).resolve(job.getFileName() + ".changes.json");
    ChangeBook book = new ChangeBook(file);
    book.read();
    return book;
  }

  /** Notes a change; what its device had taken back cannot be brought again after it. */
  public void add(Change change) {
    changes.removeIf(one -> one.undone() && one.device().equals(change.device()));
    int last = changes.size() - 1;
    Optional<Change> joined = last < 0 ? Optional.empty() : changes.get(last).joined(change);
    if (joined.isPresent()) {
      changes.set(last, joined.get());
    } else {
      changes.add(change);
    }
    while (changes.size() > MOST) {
      changes.remove(0);
    }
    write();
  }

  /** The last change of a device that stands. */
  public Optional<Change> toUndo(String device) {
    for (int i = changes.size() - 1; i >= 0; i--) {
      if (changes.get(i).device().equals(device) && !changes.get(i).undone()) {
        return Optional.of(changes.get(i));
      }
    }
    return Optional.empty();
  }

  /** The change of a device that was taken back last. */
  public Optional<Change> toRedo(String device) {
    for (Change change : changes) {
      if (change.device().equals(device) && change.undone()) {
        return Optional.of(change);
      }
    }
    return Optional.empty();
  }

  /** Notes that a change was taken back, or brought again. */
  public void mark(Change change, boolean undone) {
    changes.set(changes.indexOf(change), change.withUndone(undone));
    write();
  }

  // The file

  private void write() {
    try {
      Files.createDirectories(file.getParent());
    } catch (java.io.IOException refused) {
      throw trammel.app.commandline.CommandFailure.couldNotWrite(file, refused);
    }
    SafeFile.write(
        file, Json.text(Map.of("changes", changes.stream().map(ChangeBook::json).toList())));
  }

  private static Map<String, Object> json(Change change) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("device", change.device());
    json.put("label", change.label());
    json.put("group", change.group());
    json.put("undone", change.undone());
    List<Object> edits = new ArrayList<>();
    for (Edit edit : change.edits()) {
      Map<String, Object> one = new LinkedHashMap<>();
      one.put("path", edit.path());
      edit.from().ifPresent(from -> one.put("from", Plain.of(from)));
      edit.to().ifPresent(to -> one.put("to", Plain.of(to)));
      edits.add(one);
    }
    json.put("edits", edits);
    return json;
  }

  private void read() {
    if (!Files.isRegularFile(file)) {
      return;
    }
    try {
      ObjectNode root = DocumentReader.read(file);
      if (root.find("changes").orElse(null) instanceof ListNode list) {
        for (DocumentNode node : list.entries()) {
          changes.add(change((ObjectNode) node));
        }
      }
    } catch (BadInputException | ClassCastException | Refused notOurs) {
      changes.clear();
    }
  }

  private static Change change(ObjectNode json) {
    List<Edit> edits = new ArrayList<>();
    if (json.find("edits").orElse(null) instanceof ListNode list) {
      for (DocumentNode node : list.entries()) {
        edits.add(Edit.of((ObjectNode) node));
      }
    }
    return new Change(
        Plain.text(json, "device"),
        Plain.text(json, "label"),
        Plain.text(json, "group"),
        edits,
        Plain.flag(json, "undone"));
  }
}
