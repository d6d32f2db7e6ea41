package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.planning.start.Answers;
import trammel.planning.start.Question;
import trammel.reading.tree.DocumentReader;

/** A job begun by answering, with the linkages of an installed copy. */
class StartIT {
  private static final String SIDE = "side of the frame rails on which the bars run";

  @TempDir static Path folder;
  private static InstalledCopy copy;

  @BeforeAll
  static void unpack() throws IOException {
    copy = InstalledCopy.unpackedInto(folder.resolve("copy"));
  }

  private static Launch.Ended type(String typed, Path job) {
    InputStream before = System.in;
    System.setIn(new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)));
    try {
      return copy.run("start", job.toString());
    } finally {
      System.setIn(before);
    }
  }

  private static String answers(String vehicle) {
    Answers demo = Answers.of(DocumentReader.read(copy.demoJob(vehicle)));
    StringBuilder typed = new StringBuilder();
    for (Question question : demo.questions()) {
      typed.append(demo.of(question).orElse("")).append('\n');
    }
    return typed.toString();
  }

  /** The demonstration pickup typed in is asked everything that its clearances are judged by. */
  @Test
  void aJobThatIsTypedHasItsMountingAndWhatIsInTheWay() throws Exception {
    Path job = folder.resolve("pickup.yaml");
    Launch.Ended ended = type(answers("pickup"), job);
    assertEquals(0, ended.exitCode(), ended.out() + ended.err());
    assertTrue(ended.out().contains(SIDE), ended.out());
    Tree tree = Tree.ofYaml(Files.readString(job));
    assertEquals("inboard", tree.text("chosen.linkage_options.mounting"));
    assertEquals(5, tree.list("measured.obstacles").size());
    assertEquals("running-board support left", tree.list("measured.obstacles").get(0).text("name"));
    assertTrue(copy.run("check", job.toString()).exitCode() <= 1);
  }
}
