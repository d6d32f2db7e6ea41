package trammel.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.Command;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.commands.CommonOptions;

/** Commands that end in every way in which a command can end, and which of them were created. */
final class SampleCommands implements CommandTable {
  final List<String> created = new ArrayList<>();

  @Override
  public List<Entry> entries() {
    return List.of(
        new Entry("judge", "Ends with the exit code it is told"),
        new Entry("write", "Prints what it was given"),
        new Entry("refuse", "Refuses its input in one of several ways"));
  }

  @Override
  public Command create(String name) {
    created.add(name);
    return switch (name) {
      case "judge" -> new Judge();
      case "write" -> new Write();
      case "refuse" -> new Refuse();
      default -> throw new IllegalArgumentException("There is no command '" + name + "'.");
    };
  }

  static final class Judge implements Command {
    @Override
    public Syntax syntax() {
      return Syntax.of("Ends with the exit code it is told.").argument("CODE", "How to end.");
    }

    @Override
    public ExitCode run(Arguments arguments, Screen screen) {
      screen.out().println("judged");
      return ExitCode.valueOf(arguments.argument("CODE"));
    }
  }

  static final class Write implements Command {
    @Override
    public Syntax syntax() {
      return CommonOptions.addWithOutTo(
          Syntax.of("Prints what it was given, word by word.")
              .arguments("WORD", 0, 9, "What to print."));
    }

    @Override
    public ExitCode run(Arguments arguments, Screen screen) {
      CommonOptions options = CommonOptions.of(arguments);
      screen.out().println("units " + options.units() + ", json " + options.json());
      screen
          .out()
          .println(
              "folder "
                  + CommonOptions.outFolder(arguments, "sample").map(folder -> folder.path()));
      for (String word : arguments.arguments("WORD")) {
        screen.out().println("[" + word + "]");
      }
      return ExitCode.DONE;
    }
  }

  static final class Refuse implements Command {
    @Override
    public Syntax syntax() {
      return Syntax.of("Refuses its input in one of several ways.").argument("HOW", "Which way.");
    }

    @Override
    public ExitCode run(Arguments arguments, Screen screen) throws Exception {
      switch (arguments.argument("HOW")) {
        case "own-type":
          throw new IllegalArgumentException("The track (-3 mm) must be above 0 mm.");
        case "library":
          return ExitCode.values()[Integer.parseInt("three")];
        case "input":
          throw CommandFailure.badInput("The job has no tyre: give measured.tyre.");
        case "no-permission":
          throw CommandFailure.couldNotWrite(
              Path.of("quotes"), new AccessDeniedException("quotes"));
        case "disk":
          throw new UncheckedIOException(new IOException("No space left on device"));
        case "defect":
          throw new IllegalStateException("the third link is missing");
        case "endless":
          return run(arguments, screen);
        default:
          return ExitCode.DONE;
      }
    }
  }
}
