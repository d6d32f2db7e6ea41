package trammel.page.folder;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import trammel.app.commandline.CommandFailure;
import trammel.app.files.FileSet;
import trammel.app.files.SafeFile;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.WrittenDocument;

/**
 * Variants of a job that were put aside to be held against each other: whole copies of its file, in
 * the hidden folder beside it.
 */
public final class Tray {
  private static final String FOLDER = ".trammel-page";
  private static final int MOST = 8;
  private static final Set<String> STAYS = Set.of("format", "job");

  private final Path folder;
  private final String ending;

  /**
   * @param job the job file
   */
  public Tray(Path job) {
    String name = job.getFileName().toString();
    folder = job.resolveSibling(FOLDER).resolve(name + ".tray");
    ending = name.substring(name.lastIndexOf('.'));
  }

  /** The names of what lies in it, in order. */
  public List<String> names() {
    List<String> names = new ArrayList<>();
    if (Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
      try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*" + ending)) {
        for (Path file : files) {
          String name = file.getFileName().toString();
          names.add(name.substring(0, name.length() - ending.length()));
        }
      } catch (IOException unread) {
        throw CommandFailure.couldNotRead(folder, unread);
      }
    }
    names.sort(String.CASE_INSENSITIVE_ORDER);
    return names;
  }

  /**
   * Puts a variant into it.
   *
   * @param name what it is called
   */
  public void keep(String name, JobText job) {
    String safe = FileSet.safeName(name);
    if (names().contains(safe)) {
      throw new Refused(409, "A variant is called '" + safe + "' already. Give another name.");
    }
    if (names().size() >= MOST) {
      throw new Refused(422, "The tray holds " + MOST + " variants: take one out first.");
    }
    try {
      Files.createDirectories(folder);
    } catch (IOException refused) {
      throw CommandFailure.couldNotWrite(folder, refused);
    }
    SafeFile.write(file(safe), job.text());
  }

  /**
   * A variant.
   *
   * @throws Refused if it is not there
   */
  public JobText of(String name) {
    try {
      return JobText.of(name + ending, Files.readString(file(name)));
    } catch (IOException gone) {
      throw new Refused(404, "There is no variant '" + name + "' in the tray.");
    }
  }

  /** Takes a variant out. */
  public void drop(String name) {
    try {
      Files.deleteIfExists(file(name));
    } catch (IOException refused) {
      throw CommandFailure.couldNotWrite(file(name), refused);
    }
  }

  /** Only names that it gave itself lead to a file. */
  private Path file(String name) {
    if (!name.equals(FileSet.safeName(name))) {
      throw new Refused(404, "There is no variant '" + name + "' in the tray.");
    }
    return folder.resolve(name + ending);
  }

  /** The edits that make a job what a variant is; what the job is called stays. */
  public static List<Edit> edits(ObjectNode job, JobText variant) {
    ObjectNode to = WrittenDocument.of(variant.name(), TextFile.withoutMark(variant.text())).root();
    return Differing.between(job, to, STAYS);
  }
}
