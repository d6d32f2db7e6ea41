package trammel.app.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.app.commandline.CommandFailure;
import trammel.planning.start.Answers;
import trammel.planning.start.Question;
import trammel.planning.start.Questions;
import trammel.reading.tree.DocumentReader;

/** A filled measuring sheet takes the place of a job file only where nothing of it is lost. */
class JobFileGuardTest {
  private static final Path DEMO = Path.of("..", "..", "catalogs", "demo", "sedan.yaml");

  @TempDir Path folder;
  private Path job;
  private Answers all;

  @BeforeEach
  void prepare() {
    job = folder.resolve("job.yaml");
    all = Answers.of(DocumentReader.read(DEMO));
  }

  /** The first answers to questions of the demo job. */
  private Answers first(int count) {
    Answers some = new Answers();
    int given = 0;
    for (Question question : Questions.all()) {
      if (given < count && all.of(question).isPresent()) {
        some.give(question, all.of(question).get());
        given++;
      }
    }
    return some;
  }

  private void refusesAndLeavesAsItIs(Answers sheet, String why) throws IOException {
    String before = Files.readString(job);
    CommandFailure refused =
        assertThrows(CommandFailure.class, () -> JobFileGuard.beforeSheet(job, sheet, false));
    assertTrue(refused.getMessage().startsWith(job + why), refused.getMessage());
    assertTrue(refused.getMessage().contains("--replace"), refused.getMessage());
    assertEquals(before, Files.readString(job));
    assertFalse(Files.exists(folder.resolve("job.kept-1.yaml")));
  }

  @Test
  void whereNoFileIsThereIsNothingToKeep() {
    assertEquals(Optional.empty(), JobFileGuard.beforeSheet(job, all, false));
  }

  @Test
  void theSameSheetMayBeReadAgain() throws IOException {
    Files.writeString(job, all.yaml());
    assertEquals(Optional.empty(), JobFileGuard.beforeSheet(job, all, false));
  }

  @Test
  void aSheetWithMoreAnswersGoesOnFromAnUnfinishedFile() throws IOException {
    Files.writeString(job, first(5).yaml());
    assertEquals(Optional.empty(), JobFileGuard.beforeSheet(job, first(9), false));
  }

  @Test
  void aSheetWithFewerAnswersIsRefused() throws IOException {
    Files.writeString(job, first(9).yaml());
    refusesAndLeavesAsItIs(first(5), " holds answers that the sheet has not");
  }

  @Test
  void aLineWrittenByHandIsNotLost() throws IOException {
    Files.writeString(job, first(5).yaml() + "# frame rail is bent, measure again\n");
    refusesAndLeavesAsItIs(first(9), " holds answers that the sheet has not, or was changed");
  }

  @Test
  void aFinishedJobFileIsNotWrittenOver() throws IOException {
    Files.writeString(job, Files.readString(DEMO));
    refusesAndLeavesAsItIs(all, " is a finished job file");
  }

  @Test
  void replacingKeepsACopyAndSaysItsName() throws IOException {
    Files.writeString(job, Files.readString(DEMO));
    String told = JobFileGuard.beforeSheet(job, all, true).orElseThrow();
    assertTrue(told.contains("job.kept-1.yaml"), told);
    assertEquals(Files.readString(DEMO), Files.readString(folder.resolve("job.kept-1.yaml")));
  }

  @Test
  void questionsDoNotGoOnFromAFinishedJobFile() throws IOException {
    Files.writeString(job, all.yaml());
    assertThrows(CommandFailure.class, () -> JobFileGuard.earlier(job));
  }
}
