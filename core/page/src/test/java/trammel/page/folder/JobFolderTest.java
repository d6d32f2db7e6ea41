package trammel.page.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** No name and no link leads out of the folder of jobs. */
class JobFolderTest {
  @TempDir Path shop;
  private Path jobs;
  private JobFolder folder;

  @BeforeEach
  void fill() throws IOException {
    jobs = Files.createDirectory(shop.resolve("jobs"));
    Files.writeString(shop.resolve("secret.yaml"), "secret: yes\n");
    Files.writeString(jobs.resolve("b.yaml"), "job: {}\n");
    Files.writeString(jobs.resolve("A.json"), "{}");
    Files.writeString(jobs.resolve("notes.txt"), "no job");
    Files.writeString(jobs.resolve(".hidden.yaml"), "x: 1\n");
    Files.createDirectory(jobs.resolve("folder.yaml"));
    Files.createSymbolicLink(jobs.resolve("link.yaml"), shop.resolve("secret.yaml"));
    folder = new JobFolder(jobs);
  }

  @Test
  void jobs_are_the_files_of_the_folder_with_the_right_ending() {
    assertEquals(List.of("A.json", "b.yaml"), folder.names());
    assertEquals("job: {}\n", folder.read("b.yaml").text());
  }

  @Test
  void every_other_name_is_refused_and_tells_nothing() {
    for (String name :
        List.of(
            "../secret.yaml",
            "..\\secret.yaml",
            "/etc/passwd",
            "C:\\x.yaml",
            "link.yaml",
            ".hidden.yaml",
            "notes.txt",
            "folder.yaml",
            "",
            " ",
            "a\0.yaml",
            "none.yaml",
            "x/../b.yaml",
            "a".repeat(130) + ".yaml",
            "con\n.yaml",
            "..",
            "b.yaml/")) {
      Refused refused = assertThrows(Refused.class, () -> folder.read(name), name);
      assertTrue(refused.status() == 404 || refused.status() == 400, name);
      assertTrue(!refused.getMessage().contains("secret: yes"), name);
    }
  }

  @Test
  void a_new_job_takes_no_name_that_is_taken_and_none_outside() throws IOException {
    folder.create("new job.yaml", "job: 1\n");
    assertEquals("job: 1\n", Files.readString(jobs.resolve("new job.yaml")));
    assertThrows(Refused.class, () -> folder.create("b.yaml", "x: 1\n"));
    assertThrows(Refused.class, () -> folder.create("link.yaml", "x: 1\n"));
    assertThrows(Refused.class, () -> folder.create("../out.yaml", "x: 1\n"));
    assertEquals("secret: yes\n", Files.readString(shop.resolve("secret.yaml")));
  }

  @Test
  void a_file_that_another_program_changed_is_not_written_over() throws IOException {
    JobText read = folder.read("b.yaml");
    Files.writeString(jobs.resolve("b.yaml"), "job: {number: 7}\n");
    Refused refused = assertThrows(Refused.class, () -> folder.write(read, "job: {number: 8}\n"));
    assertEquals(409, refused.status());
    assertEquals("job: {number: 7}\n", Files.readString(jobs.resolve("b.yaml")));
  }

  @Test
  void text_that_is_not_utf8_and_a_file_too_large_are_said() throws IOException {
    Files.write(jobs.resolve("l1.yaml"), new byte[] {'a', ':', ' ', (byte) 0xe9, '\n'});
    assertTrue(
        assertThrows(Refused.class, () -> folder.read("l1.yaml")).getMessage().contains("UTF-8"));
    Files.writeString(jobs.resolve("big.yaml"), "#".repeat(1_000_001));
    assertTrue(
        assertThrows(Refused.class, () -> folder.read("big.yaml")).getMessage().contains("large"));
  }
}
