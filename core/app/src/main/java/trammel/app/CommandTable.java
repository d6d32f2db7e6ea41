package trammel.app;

import java.util.List;
import java.util.concurrent.Callable;

/**
 * The commands by name. Naming and summarizing them loads none of their classes, so that a run pays
 * only for the command it asked for.
 */
interface CommandTable {
  /** One command as the list of commands shows it. */
  record Entry(String name, String summary) {}

  /** All commands, in the order in which a job meets them. */
  List<Entry> entries();

  /**
   * A new instance of one command: a class annotated for picocli.
   *
   * @throws IllegalArgumentException if no entry has this name
   */
  Callable<ExitCode> create(String name);

  /** Whether an entry has this name. */
  default boolean contains(String name) {
    for (Entry entry : entries()) {
      if (entry.name().equals(name)) {
        return true;
      }
    }
    return false;
  }
}
