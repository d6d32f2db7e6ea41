package trammel.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import trammel.app.commands.CommonOptions;
import trammel.app.commands.FilingOptions;

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
  public Callable<ExitCode> create(String name) {
    created.add(name);
    return switch (name) {
      case "judge" -> new Judge();
      case "write" -> new Write();
      case "refuse" -> new Refuse();
      default -> throw new IllegalArgumentException("There is no command '" + name + "'.");
    };
  }

  @Command
  static final class Judge implements Callable<ExitCode> {
    @Mixin private CommonOptions common;

    @Parameters(index = "0", paramLabel = "CODE", description = "How to end.")
    private ExitCode exitCode;

    @Override
    public ExitCode call() {
      common.out().println("judged");
      return exitCode;
    }
  }

  @Command(description = "Prints what it was given, word by word.")
  static final class Write implements Callable<ExitCode> {
    @Mixin private FilingOptions options;

    @Parameters(arity = "0..*", paramLabel = "WORD", description = "What to print.")
    private List<String> words = List.of();

    @Override
    public ExitCode call() {
      options.out().println("units " + options.units() + ", json " + options.json());
      options.out().println("folder " + options.folder());
      for (String word : words) {
        options.out().println("[" + word + "]");
      }
      return ExitCode.DONE;
    }
  }

  @Command
  static final class Refuse implements Callable<ExitCode> {
    @Parameters(index = "0", paramLabel = "HOW", description = "In which way.")
    private String how;

    @Override
    public ExitCode call() throws Exception {
      switch (how) {
        case "own-type":
          throw new IllegalArgumentException("The track (-3 mm) must be above 0 mm.");
        case "library":
          Integer.parseInt("three");
          return ExitCode.DONE;
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
          return callAgain();
        default:
          return ExitCode.DONE;
      }
    }

    private ExitCode callAgain() throws Exception {
      return how.isEmpty() ? ExitCode.DONE : call();
    }
  }
}
