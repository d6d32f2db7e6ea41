package trammel.app.commands.book;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.ExitCode;
import trammel.app.files.SafeFile;
import trammel.planning.job.JobDocument;
import trammel.planning.job.JobReader;
import trammel.reading.tree.Location;
import trammel.reading.tree.TextNode;
import trammel.reading.tree.WrittenDocument;

/** {@code again}: a new job from an old one. */
final class CopiedJob {
  static final String NUMBER = "--number";
  static final String CUSTOMER = "--customer";
  static final String VEHICLE = "--vehicle";

  /** What was said of the old job alone. */
  private static final List<String> LEFT_OUT =
      List.of("job.note", "job.customer_note", "terms.start");

  private CopiedJob() {}

  static ExitCode copy(BookDesk desk) {
    Path old = Path.of(desk.named());
    Path file = Path.of(desk.more().orElseThrow());
    String number = needed(desk, NUMBER);
    String customer = needed(desk, CUSTOMER);
    if (Files.exists(file)) {
      throw CommandFailure.badInput(file + " is there already; give another name.");
    }
    JobDocument document = JobDocument.load(old);
    JobReader.read(document);
    WrittenDocument written = WrittenDocument.of(old.toString(), text(old));
    written = with(written, "job.number", number);
    written = with(written, "job.customer", customer);
    written = with(written, "job.date", desk.day().toString());
    if (desk.value(VEHICLE).isPresent()) {
      written = with(written, "job.vehicle", desk.value(VEHICLE).get());
    }
    for (String gone : LEFT_OUT) {
      if (document.node(gone).isPresent()) {
        written = written.without(gone);
      }
    }
    String text = written.text();
    JobReader.read(JobDocument.of(file.toString(), text));
    SafeFile.write(file, text);
    print(desk, old, file, number);
    return ExitCode.DONE;
  }

  private static void print(BookDesk desk, Path old, Path file, String number) {
    desk.print(
        "Wrote "
            + file
            + ", job "
            + number
            + ", from "
            + old
            + ". Notes and the day of the start were left out. Every measurement is that of the old"
            + " vehicle: measure again what may differ (trammel start --sheet), then trammel check "
            + file
            + ".\n",
        json(number, file, old));
  }

  private static Map<String, Object> json(String number, Path file, Path old) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("job", number);
    json.put("file", file.toString());
    json.put("from", old.toString());
    return json;
  }

  private static String needed(BookDesk desk, String option) {
    return desk.value(option)
        .orElseThrow(
            () -> CommandFailure.badInput("book again needs " + option + " for the new job."));
  }

  private static WrittenDocument with(WrittenDocument written, String path, String text) {
    return written.with(path, new TextNode(new Location(JobDocument.VARY, 0, 0, path), text));
  }

  private static String text(Path job) {
    try {
      return Files.readString(job);
    } catch (IOException unread) {
      throw CommandFailure.couldNotRead(job, unread);
    }
  }
}
