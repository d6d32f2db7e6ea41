package trammel.page.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.reading.tree.DocumentReader;
import trammel.reading.tree.ObjectNode;

/** Two hands at one job: nothing is lost, nothing is overwritten, each takes back its own. */
class JobEditsTest {
  private static final String JOB =
      """
      # Measured twice.
      measured:
        rails: {depth: 6 in, wall: 0.15 in} # calliper
        tyre_grip: 0.9
      """;
  private static final String OFFICE = "office";
  private static final String FLOOR = "floor";
  private static final JobEdits.Guard ANY = (before, edit) -> {};

  @TempDir Path jobs;
  private JobEdits edits;

  @BeforeEach
  void write() throws IOException {
    Files.writeString(jobs.resolve("job.yaml"), JOB);
    edits = new JobEdits(new JobFolder(jobs));
  }

  private static ObjectNode change(String path, String from, String to, String group) {
    return DocumentReader.read(
        "change.json",
        "{\"label\": \"set %s\", \"group\": \"%s\", \"edits\": [{\"path\": \"%s\", \"from\": %s, \"to\": %s}]}"
            .formatted(path, group, path, quoted(from), quoted(to)));
  }

  private static String quoted(String text) {
    return text == null ? "null" : "\"" + text + "\"";
  }

  private JobEdits.Outcome set(String device, String path, String from, String to) {
    return edits.make("job.yaml", device, change(path, from, to, ""), ANY);
  }

  private String file() throws IOException {
    return Files.readString(jobs.resolve("job.yaml"));
  }

  @Test
  void a_change_is_in_the_file_and_all_else_of_it_stays() throws IOException {
    set(OFFICE, "measured.rails.depth", "6 in", "6 1/8 in");
    assertEquals(JOB.replace("depth: 6 in", "depth: 6 1/8 in"), file());
  }

  @Test
  void changes_of_different_fields_on_two_devices_both_stand() throws IOException {
    set(OFFICE, "measured.rails.depth", "6 in", "6 1/8 in");
    set(FLOOR, "measured.rails.wall", "0.15 in", "0.18 in");
    assertEquals(
        JOB.replace("depth: 6 in", "depth: 6 1/8 in").replace("0.15 in", "0.18 in"), file());
  }

  @Test
  void the_same_field_changed_elsewhere_is_asked_about_and_not_overwritten() throws IOException {
    set(OFFICE, "measured.rails.depth", "6 in", "6 1/8 in");
    JobEdits.Outcome second = set(FLOOR, "measured.rails.depth", "6 in", "5 7/8 in");
    assertEquals(List.of("measured.rails.depth"), second.conflicts());
    assertEquals(JOB.replace("depth: 6 in", "depth: 6 1/8 in"), file());
    assertEquals(Optional.empty(), edits.steps("job.yaml", FLOOR).undo(), "nothing was changed");
  }

  @Test
  void what_another_program_wrote_meanwhile_stays() throws IOException {
    Files.writeString(jobs.resolve("job.yaml"), JOB.replace("0.9", "0.8") + "# by hand\n");
    set(OFFICE, "measured.rails.depth", "6 in", "6 1/8 in");
    assertEquals(
        JOB.replace("0.9", "0.8").replace("depth: 6 in", "depth: 6 1/8 in") + "# by hand\n",
        file());
    assertEquals(1, set(OFFICE, "measured.tyre_grip", "0.9", "1.0").conflicts().size());
  }

  @Test
  void each_device_takes_back_its_own_changes_after_a_restart_as_well() throws IOException {
    set(OFFICE, "measured.rails.depth", "6 in", "6 1/8 in");
    set(FLOOR, "measured.rails.wall", "0.15 in", "0.18 in");
    edits = new JobEdits(new JobFolder(jobs));
    edits.undo("job.yaml", OFFICE);
    assertEquals(JOB.replace("0.15 in", "0.18 in"), file());
    assertEquals(Optional.of("set measured.rails.depth"), edits.steps("job.yaml", OFFICE).redo());
    assertEquals(Optional.empty(), edits.steps("job.yaml", FLOOR).redo());
    edits.redo("job.yaml", OFFICE);
    edits.undo("job.yaml", FLOOR);
    assertEquals(JOB.replace("depth: 6 in", "depth: 6 1/8 in"), file());
  }

  @Test
  void an_undo_leaves_what_somebody_else_has_set_since() throws IOException {
    set(OFFICE, "measured.rails.depth", "6 in", "6 1/8 in");
    set(FLOOR, "measured.rails.depth", "6 1/8 in", "7 in");
    edits.undo("job.yaml", OFFICE);
    assertEquals(JOB.replace("depth: 6 in", "depth: 7 in"), file());
  }

  @Test
  void steps_of_one_gesture_are_taken_back_as_one() throws IOException {
    edits.make("job.yaml", OFFICE, change("measured.tyre_grip", "0.9", "0.95", "drag 1"), ANY);
    edits.make("job.yaml", OFFICE, change("measured.tyre_grip", "0.95", "1.0", "drag 1"), ANY);
    edits.make("job.yaml", OFFICE, change("measured.tyre_grip", "1.0", "1.1", "drag 2"), ANY);
    edits.undo("job.yaml", OFFICE);
    assertEquals(JOB.replace("0.9", "1.0"), file());
    edits.undo("job.yaml", OFFICE);
    assertEquals(JOB, file());
    edits.undo("job.yaml", OFFICE);
    assertEquals(JOB, file(), "there is nothing more to take back");
  }

  @Test
  void a_new_field_taken_back_leaves_the_file_as_it_was() throws IOException {
    set(OFFICE, "chosen.pickups.upper-left.frame.up", null, "18 1/2 in");
    set(OFFICE, "chosen.pickups.upper-left.frame.forward", null, "17 in");
    edits.undo("job.yaml", OFFICE);
    edits.undo("job.yaml", OFFICE);
    assertEquals("# Measured twice.", file().lines().findFirst().orElseThrow());
    assertEquals(JOB, file().replace("chosen:\n", "").replace("chosen: {}\n", ""));
  }

  @Test
  void what_the_field_cannot_hold_is_refused_before_anything_is_written() throws IOException {
    JobEdits.Guard refusing =
        (before, edit) -> {
          throw new Refused(422, "no");
        };
    assertThrows(
        Refused.class,
        () ->
            edits.make(
                "job.yaml", OFFICE, change("measured.rails.depth", "6 in", "x", ""), refusing));
    assertEquals(JOB, file());
  }

  @Test
  void a_book_of_changes_that_was_spoilt_is_no_harm() throws IOException {
    set(OFFICE, "measured.rails.depth", "6 in", "6 1/8 in");
    Path book = jobs.resolve(".trammel-page").resolve("job.yaml.changes.json");
    Files.writeString(book, "{\"changes\": [1, 2");
    assertEquals(Optional.empty(), edits.steps("job.yaml", OFFICE).undo());
    set(OFFICE, "measured.rails.depth", "6 1/8 in", "6 in");
    edits.undo("job.yaml", OFFICE);
    assertEquals(JOB.replace("depth: 6 in", "depth: 6 1/8 in"), file());
  }
}
