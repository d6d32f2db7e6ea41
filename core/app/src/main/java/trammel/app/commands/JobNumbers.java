package trammel.app.commands;

import java.util.HashMap;
import java.util.Map;
import trammel.app.commandline.CommandFailure;
import trammel.app.files.JobFolderName;

/** The numbers of the jobs of one run, each of which must be told from all others. */
final class JobNumbers {
  private final Map<String, String> byFolded = new HashMap<>();

  /**
   * Adds a number.
   *
   * @throws CommandFailure if it is that of another job of the run, or so like it that neither
   *     people nor every file system can tell the two apart
   */
  void add(String number) {
    String other = byFolded.putIfAbsent(JobFolderName.folded(number), number);
    if (other == null) {
      return;
    }
    throw CommandFailure.badInput(
        other.equals(number)
            ? "job number "
                + number
                + " was given by an earlier file of this run too. Give every job its own number."
            : "job number "
                + number
                + " and the number "
                + other
                + " of an earlier file of this run differ only in signs, marks or capitals. Give"
                + " them numbers that differ in a letter or a digit, or run them one by one.");
  }
}
