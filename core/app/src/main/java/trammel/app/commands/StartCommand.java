package trammel.app.commands;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.Command;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.desk.EarlyReading;
import trammel.app.desk.Installation;
import trammel.app.desk.Workbench;
import trammel.app.documents.MeasuringDocument;
import trammel.app.documents.PaperDocument;
import trammel.app.files.FileSet;
import trammel.app.files.OutFolder;
import trammel.app.files.SafeFile;
import trammel.app.start.Interview;
import trammel.app.start.JobFileGuard;
import trammel.app.start.MeasuringSheet;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.SpringMount;
import trammel.planning.job.JobDocument;
import trammel.planning.job.JobReader;
import trammel.planning.start.Answers;
import trammel.planning.start.Question;
import trammel.planning.start.Questions;
import trammel.reading.quantity.UnitSystem;

/** Starts a job: asks for the measurements, or takes a filled measuring sheet. */
public final class StartCommand implements Command {
  private static final String FROM = "--from";
  private static final String SHEET = "--sheet";
  private static final String LINKAGE = "chosen.linkage";
  private static final String SPRING = "chosen.spring";

  @Override
  public Syntax syntax() {
    return CommonOptions.addWithOutTo(
        Syntax.of(
                "Asks for the measurements step by step and writes a job file. What is answered is"
                    + " kept at once: stop, and the same command goes on later. With --sheet it"
                    + " prints the measuring sheet to fill in by the vehicle, and with --out writes it as"
                    + " PDF, web page and table; --from takes the table back.")
            .optionalArgument("JOB", "The job file to write, with the ending .yaml.")
            .option(FROM, "SHEET", "A filled measuring sheet, comma-separated values.")
            .flag(SHEET, "Print the empty measuring sheet."));
  }

  @Override
  public ExitCode run(Arguments arguments, Screen screen) {
    CommonOptions options = CommonOptions.of(arguments);
    if (arguments.has(SHEET)) {
      return sheet(arguments, options.units().orElse(UnitSystem.US), screen);
    }
    if (CommonOptions.asksForFiles(arguments)) {
      throw CommandFailure.badInput(
          "--out goes with " + SHEET + "; without it, name the job file to write: pickup.yaml.");
    }
    Path file =
        Path.of(
            arguments
                .optionalArgument("JOB")
                .orElseThrow(
                    () ->
                        CommandFailure.badInput(
                            "JOB is not given; name the job file to write, such as"
                                + " pickup.yaml.")));
    if (!file.toString().endsWith(".yaml")) {
      throw CommandFailure.badInput(file + " must end in .yaml. Give it that ending.");
    }
    boolean replace = arguments.has(CommonOptions.REPLACE);
    Answers answers;
    Optional<String> sheet = arguments.value(FROM);
    boolean passed;
    if (sheet.isPresent()) {
      MeasuringSheet.Filled filled = MeasuringSheet.read(Path.of(sheet.get()));
      for (String other : filled.notRead()) {
        screen.err().println("Note: the column '" + other + "' is not read.");
      }
      answers = filled.answers();
      JobFileGuard.beforeSheet(file, answers, replace).ifPresent(screen.err()::println);
      SafeFile.write(file, answers.yaml());
      passed = answers.open().isEmpty();
    } else {
      answers = JobFileGuard.earlier(file);
      JobFileGuard.beforeAsking(file, answers, replace).ifPresent(screen.err()::println);
      passed = interview(file, answers, options, screen);
    }
    return finished(file, answers, passed, screen);
  }

  private static ExitCode sheet(Arguments arguments, UnitSystem units, Screen screen) {
    if (arguments.optionalArgument("JOB").isPresent() || arguments.value(FROM).isPresent()) {
      throw CommandFailure.badInput(
          SHEET + " goes alone or with --out; it is empty and belongs to no job yet.");
    }
    String table = MeasuringSheet.csv(units);
    Optional<OutFolder> folder = CommonOptions.outFolder(arguments, "start");
    if (folder.isEmpty()) {
      screen.out().print(table);
      return ExitCode.DONE;
    }
    Workbench bench =
        new Workbench(EarlyReading.start(Installation.running()), Optional.of(units), screen);
    PaperDocument paper = MeasuringDocument.of(bench.catalog().shop().name(), units);
    FileSet files = new FileSet();
    files.add("measuring-sheet.csv", table);
    files.add("measuring-sheet.html", paper.html());
    files.add("measuring-sheet.pdf", paper.pdf());
    CommonOptions.write(files, folder.get(), screen);
    return ExitCode.DONE;
  }

  private static boolean interview(
      Path file, Answers answers, CommonOptions options, Screen screen) {
    Workbench bench =
        new Workbench(EarlyReading.start(Installation.running()), options.units(), screen);
    BufferedReader in =
        new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
    return new Interview(in, screen.out(), file, answers, new InstalledChoices(bench)).ask();
  }

  /** What the installed linkages and springs say of questions. */
  private record InstalledChoices(Workbench bench) implements Interview.Choices {
    @Override
    public List<String> of(Question question) {
      return switch (question.path()) {
        case LINKAGE -> linkages().stream().map(AxleLinkage::id).toList();
        case SPRING ->
            bench.extensions().extensions().springs().stream().map(SpringMount::id).toList();
        default -> List.of();
      };
    }

    private List<? extends AxleLinkage> linkages() {
      return bench.extensions().extensions().linkages();
    }

    /** The side of the rails is asked where the chosen linkage lets it be chosen. */
    @Override
    public boolean isAsked(Question question, Answers answers) {
      if (!question.path().equals(Questions.MOUNTING)) {
        return true;
      }
      String chosen = answers.of(Questions.byPath().get(LINKAGE)).orElse("");
      return linkages().stream()
          .filter(linkage -> linkage.id().equals(chosen))
          .flatMap(linkage -> linkage.options(bench.catalog()).stream())
          .anyMatch(option -> option.key().equals(question.field().key()));
    }
  }

  private static ExitCode finished(Path file, Answers answers, boolean passed, Screen screen) {
    List<Question> open = answers.open();
    screen.out().println();
    if (!open.isEmpty()) {
      screen.out().println("Kept in " + file + "; still to be answered:");
      for (Question question : open) {
        screen.out().println("  " + question.path() + ": " + question.what());
      }
      screen.out().println("Go on with: trammel start " + file);
      return passed ? ExitCode.BAD_INPUT : ExitCode.DONE;
    }
    JobReader.read(JobDocument.load(file));
    screen.out().println("Wrote " + file + ". Next: trammel check " + file);
    return ExitCode.DONE;
  }
}
