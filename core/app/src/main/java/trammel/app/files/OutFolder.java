package trammel.app.files;

import java.io.IOException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import trammel.app.commandline.CommandFailure;

/**
 * The folder that {@code --out} names, with what it is written for. A file in it that is not byte
 * for byte what Trammel wrote there last for the same jobs is never replaced unless that is asked
 * for, and then a copy of it is kept. Links are followed first: what is behind them is written, and
 * nothing else is touched.
 */
public final class OutFolder {
  private final Path given;
  private final Path real;
  private final WrittenList.Purpose purpose;
  private final boolean replace;

  private OutFolder(Path given, WrittenList.Purpose purpose, boolean replace) {
    this.given = given;
    this.real = real(given);
    this.purpose = purpose;
    this.replace = replace;
  }

  /**
   * A folder that need not be there yet.
   *
   * @param word what {@code --out} was given
   * @param command the command that writes
   * @param replace whether files that Trammel does not know may be replaced, a copy kept of each
   * @throws CommandFailure if it is a file, leads nowhere, or cannot be written
   */
  public static OutFolder of(String word, String command, boolean replace) {
    Path given;
    try {
      given = Path.of(word);
    } catch (InvalidPathException noPath) {
      throw CommandFailure.badInput(
          "--out was given a name that this system cannot have; give another: "
              + noPath.getReason()
              + ".");
    }
    return new OutFolder(given, new WrittenList.Purpose(command, List.of()), replace);
  }

  /**
   * The same folder for these jobs.
   *
   * @throws CommandFailure if the folder is another job's, or one of its files was changed
   */
  public OutFolder forJobs(List<String> jobs) {
    OutFolder folder =
        new OutFolder(given, new WrittenList.Purpose(purpose.command(), jobs), replace);
    folder.refuseToLose();
    return folder;
  }

  /**
   * The folder of one job within this one.
   *
   * @throws CommandFailure if it is another job's, or one of its files was changed
   */
  public OutFolder inside(String job) {
    return new OutFolder(given.resolve(JobFolderName.of(job)), purpose, replace)
        .forJobs(List.of(job));
  }

  /** As it was given. */
  public Path path() {
    return given;
  }

  /** Told before the work begins; asked again with all files when they are written. */
  private void refuseToLose() {
    if (!replace && Files.exists(real)) {
      try {
        new FolderWriter(real, given, purpose, false).refuseToLose();
      } catch (IOException refused) {
        throw CommandFailure.couldNotRead(given, refused);
      }
    }
  }

  /**
   * Writes the files, all of them or none.
   *
   * @return what was written, and what is to be told of it
   * @throws CommandFailure if a file would be lost, or cannot be written
   */
  public Written write(FileSet files) {
    return new FolderWriter(real, given, purpose, replace).write(files);
  }

  /**
   * What was written.
   *
   * @param files the files
   * @param remarks copies that were kept, and files that were left though they are out of date
   */
  public record Written(List<Path> files, List<String> remarks) {
    public Written {
      files = List.copyOf(files);
      remarks = List.copyOf(remarks);
    }
  }

  // Links

  /** Where a folder really is; its last parts need not be there yet. */
  private static Path real(Path given) {
    Path whole = given.toAbsolutePath().normalize();
    Path there = whole;
    while (!Files.exists(there, LinkOption.NOFOLLOW_LINKS) && there.getParent() != null) {
      there = there.getParent();
    }
    Path found = followed(given, there);
    if (!Files.isDirectory(found)) {
      throw CommandFailure.badInput(
          "--out was given "
              + given
              + (there.equals(whole) && found.equals(there)
                  ? ", which is a file"
                  : ", but " + told(there, found) + " is a file")
              + "; give a folder, or a name for a new one.");
    }
    if (!Files.isWritable(found)) {
      throw CommandFailure.couldNotWrite(
          given, new java.nio.file.AccessDeniedException(found.toString()));
    }
    return found.resolve(there.relativize(whole));
  }

  private static String told(Path there, Path found) {
    return found.equals(there) ? there.toString() : found + " (behind the link " + there + ")";
  }

  private static Path followed(Path given, Path there) {
    try {
      return there.toRealPath();
    } catch (FileSystemLoopException loop) {
      throw leadsNowhere(given, there, "which leads back to itself");
    } catch (NoSuchFileException nowhere) {
      throw leadsNowhere(given, there, "and there is nothing");
    } catch (IOException refused) {
      if (Files.isSymbolicLink(there)) {
        throw leadsNowhere(given, there, "which leads back to itself or cannot be followed");
      }
      throw CommandFailure.couldNotRead(given, refused);
    }
  }

  private static CommandFailure leadsNowhere(Path given, Path link, String why) {
    return CommandFailure.badInput(
        "--out was given "
            + given
            + ", but "
            + link
            + " is a link to "
            + target(link).orElse("another place")
            + ", "
            + why
            + ". Mend the link or take it away, or give another folder.");
  }

  private static Optional<String> target(Path link) {
    try {
      return Optional.of(Files.readSymbolicLink(link).toString());
    } catch (IOException | UnsupportedOperationException unread) {
      return Optional.empty();
    }
  }
}
