package trammel.app;

import java.util.List;

/** The commands of Trammel: one line in the list and one in the switch for each. */
final class TrammelCommands implements CommandTable {
  private static final List<Entry> ENTRIES = List.of();

  @Override
  public List<Entry> entries() {
    return ENTRIES;
  }

  @Override
  public Command create(String name) {
    // A switch, not a map of constructors: it loads no class before its branch is taken.
    switch (name) {
      default:
        throw new IllegalArgumentException("There is no command '" + name + "'.");
    }
  }
}
