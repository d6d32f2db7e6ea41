package trammel.page.folder;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import trammel.app.commandline.CommandFailure;
import trammel.app.files.SafeFile;
import trammel.reading.tree.DocumentFormat;

/**
 * The folder of jobs that the page works in. Only files that lie in the folder itself are read and
 * written: no name leads out of it, and no link does.
 */
public final class JobFolder {
  private static final String KIND = "job file";
  private static final int LONGEST_NAME = 120;

  private final Path folder;
  private final Map<String, Object> locks = new ConcurrentHashMap<>();

  /**
   * @param folder the folder, which is there
   * @throws CommandFailure if it cannot be read
   */
  public JobFolder(Path folder) {
    try {
      this.folder = folder.toRealPath();
    } catch (IOException unread) {
      throw CommandFailure.couldNotRead(folder, unread);
    }
  }

  /** Where it is. */
  public Path path() {
    return folder;
  }

  /** Names of the files that can be jobs by their ending, in order. */
  public List<String> names() {
    List<String> names = new ArrayList<>();
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
      for (Path file : files) {
        String name = file.getFileName().toString();
        if (isJobName(name) && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
          names.add(name);
        }
      }
    } catch (IOException unread) {
      throw CommandFailure.couldNotRead(folder, unread);
    }
    names.sort(String.CASE_INSENSITIVE_ORDER);
    return names;
  }

  private static boolean isJobName(String name) {
    return !name.startsWith(".") && DocumentFormat.ofFileName(name).isPresent();
  }

  /**
   * The place of a job file.
   *
   * @throws Refused if the name is that of no job file in this folder
   */
  public Path file(String name) {
    Path file = place(name);
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new Refused(404, "There is no job file '" + name + "' in the folder.");
    }
    return file;
  }

  /** The place of a name, whether or not something is there. */
  private Path place(String name) {
    boolean plain = !name.isBlank() && name.length() <= LONGEST_NAME;
    for (int i = 0; i < name.length(); i++) {
      char c = name.charAt(i);
      plain = plain && c >= ' ' && "/\\:*?\"<>|\u007f".indexOf(c) < 0;
    }
    if (!plain || !isJobName(name)) {
      throw new Refused(
          400,
          "A job file is named by letters, digits, spaces, hyphens and dots, and ends in .yaml.");
    }
    try {
      Path file = folder.resolve(name);
      if (folder.equals(file.getParent())) {
        return file;
      }
    } catch (InvalidPathException none) {
      // Said below.
    }
    throw new Refused(400, "'" + name + "' does not name a file of the folder.");
  }

  /**
   * Reads a job file.
   *
   * @throws Refused if there is none
   */
  public JobText read(String name) {
    return JobText.of(name, TextFile.read(file(name), KIND));
  }

  /**
   * Writes a job file anew, if it still is what was read.
   *
   * @param was what was read
   * @param text what is to stand there
   * @return what stands there now
   * @throws Refused if another program changed it meanwhile; it is then as that left it
   */
  public JobText write(JobText was, String text) {
    Path file = file(was.name());
    if (!TextFile.read(file, KIND).equals(was.text())) {
      throw new Refused(409, was.name() + " was changed by another program at this moment.");
    }
    SafeFile.write(file, text);
    return JobText.of(was.name(), text);
  }

  /**
   * Makes a job file that is not there yet.
   *
   * @throws Refused if it is there, or the name is none for a job file
   */
  public JobText create(String name, String text) {
    Path file = place(name);
    synchronized (lock(name)) {
      if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
        throw new Refused(409, "'" + name + "' is there already. Give another name.");
      }
      SafeFile.write(file, text);
    }
    return JobText.of(name, text);
  }

  /** What whoever changes a job holds, so that changes come one after the other. */
  public Object lock(String name) {
    return locks.computeIfAbsent(name, any -> new Object());
  }
}
