package trammel.app.files;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import trammel.planning.job.JobFields;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.DocumentFormat;
import trammel.reading.tree.DocumentReader;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.TextNode;

/**
 * Whose job a file is, read without what else is in it, which may be wrong or unfinished.
 *
 * @param number the job's number; empty if the file has none
 * @param customer the job's customer; empty if the file has none
 */
public record JobLabel(String number, String customer) {
  /** What a document says in its part {@code job}, whatever it says else. */
  public static JobLabel in(ObjectNode document) {
    Optional<ObjectNode> job = document.findObject("job");
    return new JobLabel(text(job, "number"), text(job, "customer"));
  }

  /** What a file says; empty if it is no job file. */
  public static Optional<JobLabel> of(Path file) {
    if (!Files.isRegularFile(file) || DocumentFormat.ofFileName(file.toString()).isEmpty()) {
      return Optional.empty();
    }
    try {
      ObjectNode document = DocumentReader.read(file);
      boolean isJob = text(Optional.of(document), "format").equals(JobFields.FORMAT);
      return isJob ? Optional.of(in(document)) : Optional.empty();
    } catch (BadInputException another) {
      return Optional.empty();
    }
  }

  private static String text(Optional<ObjectNode> of, String key) {
    return of.flatMap(node -> node.find(key))
        .filter(TextNode.class::isInstance)
        .map(node -> ((TextNode) node).text())
        .orElse("");
  }
}
