package trammel.app;

import java.util.ArrayList;
import java.util.List;
import trammel.app.commandline.Command;

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
   * A new instance of one command.
   *
   * @throws IllegalArgumentException if no entry has this name
   */
  Command create(String name);

  /** The names of all commands, in order. */
  default List<String> names() {
    List<String> names = new ArrayList<>();
    for (Entry entry : entries()) {
      names.add(entry.name());
    }
    return names;
  }
}
