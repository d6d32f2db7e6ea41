package trammel.app.start;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import trammel.app.commandline.CommandFailure;
import trammel.app.files.SafeFile;
import trammel.planning.start.Answers;
import trammel.reading.tree.DocumentReader;

/**
 * Keeps a job file from being written over when it holds more than the questions would put back: a
 * finished one, one that was edited by hand, one with answers that a sheet has not.
 */
public final class JobFileGuard {
  private JobFileGuard() {}

  /**
   * What an unfinished file of this name holds; nothing if there is none.
   *
   * @throws CommandFailure if it is a finished job file
   */
  public static Answers earlier(Path file) {
    if (!Files.exists(file)) {
      return new Answers();
    }
    Answers answers = Answers.of(DocumentReader.read(file));
    if (answers.open().isEmpty()) {
      throw CommandFailure.badInput(
          file + " is a finished job file and is not written over. Give another name.");
    }
    return answers;
  }

  /**
   * Before the questions write what they put into an unfinished file.
   *
   * @param earlier what the file holds
   * @return what to tell, if a copy was kept
   * @throws CommandFailure if the file was edited by hand and is not to be replaced
   */
  public static Optional<String> beforeAsking(Path file, Answers earlier, boolean replace) {
    if (!Files.exists(file) || holds(file, earlier.yaml())) {
      return Optional.empty();
    }
    return keep(
        file,
        replace,
        " was changed after trammel start wrote it: the questions keep its answers and nothing"
            + " else of it.");
  }

  /**
   * Before the answers of a sheet take the place of a job file.
   *
   * @param sheet the answers of the sheet
   * @return what to tell, if a copy was kept
   * @throws CommandFailure if the file holds what the sheet has not and is not to be replaced
   */
  public static Optional<String> beforeSheet(Path file, Answers sheet, boolean replace) {
    if (!Files.exists(file) || holds(file, sheet.yaml())) {
      return Optional.empty();
    }
    Answers earlier = Answers.of(DocumentReader.read(file));
    boolean finished = earlier.open().isEmpty();
    if (!finished && holds(file, earlier.yaml()) && earlier.isWithin(sheet)) {
      return Optional.empty();
    }
    return keep(
        file,
        replace,
        finished
            ? " is a finished job file and is not written over."
            : " holds answers that the sheet has not, or was changed by hand.");
  }

  private static Optional<String> keep(Path file, boolean replace, String why) {
    if (!replace) {
      throw CommandFailure.badInput(
          file + why + " Give another name, or --replace to replace it and keep a copy.");
    }
    return Optional.of(
        "Kept the old " + file + " as " + SafeFile.copyAside(file).getFileName() + ".");
  }

  private static boolean holds(Path file, String text) {
    try {
      return Arrays.equals(Files.readAllBytes(file), text.getBytes(StandardCharsets.UTF_8));
    } catch (IOException refused) {
      throw CommandFailure.couldNotRead(file, refused);
    }
  }
}
