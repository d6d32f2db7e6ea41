package trammel.planning.arrange;

import java.util.List;
import trammel.planning.job.JobDocument;
import trammel.reading.tree.DocumentReader;
import trammel.reading.tree.Location;
import trammel.reading.tree.WrittenDocument;

/** A job file with a layout's changes made, every comment and the order of its keys kept. */
public final class WrittenLayout {
  private WrittenLayout() {}

  /**
   * The text of the changed file.
   *
   * @param fileName the name of the file, which says whether it is YAML or JSON
   * @param text the text of the job file
   * @param changes what to change
   */
  public static String text(String fileName, String text, List<LayoutChange> changes) {
    WrittenDocument written = WrittenDocument.of(fileName, text);
    for (LayoutChange change : changes) {
      Location where = new Location(JobDocument.VARY, 0, 0, change.path());
      written = written.with(change.path(), DocumentReader.readValue(where, change.after()));
    }
    return written.text();
  }
}
