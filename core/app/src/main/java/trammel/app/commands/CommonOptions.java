package trammel.app.commands;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.files.FileSet;
import trammel.planning.quantity.UnitSystem;

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

  /** The syntax, and {@code --units} and {@code --json}. */
  public static Syntax addTo(Syntax syntax) {
    return syntax
        .option(
            UNITS,
            "us|metric",
            "Print in US shop units or metric; without it, in the units of the job.")
        .flag(JSON, "Print for a machine: JSON, with the unit in every name.");
  }

  /** The syntax, and {@code --units}, {@code --json} and {@code --out}. */
  public static Syntax addWithOutTo(Syntax syntax) {
    return addTo(syntax)
        .option(
            OUT,
            "DIR",
            "Write the files into this folder, which is made if need be; without it, write none.");
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

  /** Whether {@code --out} was given. */
  static boolean asksForFiles(Arguments arguments) {
    return arguments.value(OUT).isPresent();
  }

  /**
   * The folder that {@code --out} names, made if it was not there; empty if no files are wanted.
   *
   * @throws CommandFailure if it cannot be made, or is not a folder
   */
  public static Optional<Path> outFolder(Arguments arguments) {
    Optional<String> word = arguments.value(OUT);
    if (word.isEmpty()) {
      return Optional.empty();
    }
    Path folder = Path.of(word.get());
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      throw CommandFailure.badInput(
          OUT
              + " was given "
              + folder
              + ", which is a file; give a folder, or a name for a new one.");
    }
    try {
      return Optional.of(Files.createDirectories(folder));
    } catch (IOException refused) {
      throw CommandFailure.couldNotWrite(folder, refused);
    }
  }

  /** Writes the files into the folder, all or none, and tells how many. */
  static void write(FileSet files, Path folder, Screen screen) {
    List<Path> written = files.write(folder);
    screen.err().println("Wrote " + written.size() + " files to " + folder);
  }

  /** Writes the files into the folder, all or none, and tells each of them. */
  static void writeAndName(FileSet files, Path folder, Screen screen) {
    for (Path file : files.write(folder)) {
      screen.err().println("Wrote " + file);
    }
  }
}
