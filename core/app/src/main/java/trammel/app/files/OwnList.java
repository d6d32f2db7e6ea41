package trammel.app.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What Trammel wrote into a folder, for whoever wants to take it away again. */
public final class OwnList {
  private OwnList() {}

  /**
   * The files in a folder that were written for some of these jobs and no other, with the list of
   * them where nothing else is on it.
   *
   * @throws IOException if the folder cannot be read
   */
  public static List<Path> filesFor(Path folder, Set<String> jobs) throws IOException {
    WrittenList list = WrittenList.of(folder);
    List<Path> files = new ArrayList<>();
    for (String name : list.namesOf(jobs)) {
      Path file = folder.resolve(name);
      if (Files.exists(file)) {
        files.add(file);
      }
    }
    if (!list.isEmpty() && list.namesOf(jobs).size() == list.size()) {
      files.add(folder.resolve(WrittenList.NAME));
    }
    return files;
  }
}
