package trammel.app.commands;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.files.FileSet;
import trammel.app.files.OutFolder;
import trammel.app.json.Json;
import trammel.reading.quantity.UnitSystem;

/**
 * The options that many commands share.
 *
 * @param units the units to print in; empty where the job's own are to be used
 * @param json whether the result is to be printed for a machine
 */
public record CommonOptions(Optional<UnitSystem> units, boolean json) {
  private static final String UNITS = "--units";
  private static final String JSON = "--json";
  private static final String OUT = "--out";
  static final String FULL = "--full";
  static final String REPLACE = "--replace";

  /** The syntax, and {@code --units} and {@code --json}. */
  public static Syntax addTo(Syntax syntax) {
    return syntax
        .option(
            UNITS,
            "us|metric",
            "Print in US shop units or metric; without it, in the units of the job.")
        .flag(JSON, "Print for a machine: JSON, with the unit in every name.");
  }

  /** The syntax, and {@code --units}, {@code --json}, {@code --out} and {@code --replace}. */
  public static Syntax addWithOutTo(Syntax syntax) {
    return addTo(syntax)
        .option(
            OUT,
            "DIR",
            "Write the files into this folder, which is made if need be; without it, write none.")
        .flag(
            REPLACE,
            "Replace files that were changed, or that are not trammel's for this job, and keep a"
                + " copy of each (NAME.kept-1).");
  }

  /** What was given of {@code --units} and {@code --json}. */
  public static CommonOptions of(Arguments arguments) {
    return new CommonOptions(units(arguments), arguments.has(JSON));
  }

  private static Optional<UnitSystem> units(Arguments arguments) {
    Optional<String> word = arguments.value(UNITS);
    if (word.isEmpty()) {
      return Optional.empty();
    }
    for (UnitSystem system : UnitSystem.values()) {
      if (system.word().equals(word.get())) {
        return Optional.of(system);
      }
    }
    throw CommandFailure.badInput(UNITS + " was given '" + word.get() + "'; give us or metric.");
  }

  /** Prints a result for people or for a machine, as it was asked for. */
  public void print(Screen screen, String text, Map<String, Object> forMachines) {
    if (json) {
      screen.out().println(Json.text(forMachines));
    } else {
      screen.out().print(text);
    }
  }

  /** Whether {@code --out} was given. */
  public static boolean asksForFiles(Arguments arguments) {
    return arguments.value(OUT).isPresent();
  }

  /**
   * The folder that {@code --out} names; empty if no files are wanted.
   *
   * @param command the command that writes into it
   * @throws CommandFailure if it is a file, leads nowhere or cannot be written
   */
  public static Optional<OutFolder> outFolder(Arguments arguments, String command) {
    Optional<String> word = arguments.value(OUT);
    boolean replace = arguments.has(REPLACE);
    if (word.isEmpty() && replace) {
      throw CommandFailure.badInput(REPLACE + " goes with " + OUT + "; give both or neither.");
    }
    return word.map(folder -> OutFolder.of(folder, command, replace));
  }

  /** Writes the files into the folder, all or none, and tells how many. */
  static void write(FileSet files, OutFolder folder, Screen screen) {
    OutFolder.Written written = folder.write(files);
    tellRemarks(written, screen);
    screen.err().println("Wrote " + written.files().size() + " files to " + folder.path());
  }

  /** Writes the files into the folder, all or none, and tells each of them. */
  public static void writeAndName(FileSet files, OutFolder folder, Screen screen) {
    OutFolder.Written written = folder.write(files);
    tellRemarks(written, screen);
    for (Path file : written.files()) {
      screen.err().println("Wrote " + file);
    }
  }

  /** Tells which copies were kept. */
  static void tellRemarks(OutFolder.Written written, Screen screen) {
    for (String remark : written.remarks()) {
      screen.err().println(remark + ".");
    }
  }
}
