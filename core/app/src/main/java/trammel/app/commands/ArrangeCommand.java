package trammel.app.commands;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.commandline.WaitingLine;
import trammel.app.desk.Workbench;
import trammel.app.files.SafeFile;
import trammel.app.json.ArrangeJson;
import trammel.app.json.Json;
import trammel.app.text.Amounts;
import trammel.app.text.ArrangeText;
import trammel.app.text.Cautions;
import trammel.engine.checks.Verdict;
import trammel.planning.arrange.ArrangedLayout;
import trammel.planning.arrange.Arrangement;
import trammel.planning.arrange.Arranging;
import trammel.planning.arrange.Goal;
import trammel.planning.arrange.Wishes;
import trammel.planning.arrange.WrittenLayout;
import trammel.planning.job.Job;
import trammel.planning.job.JobDocument;
import trammel.planning.job.JobReader;
import trammel.reading.quantity.QuantityPrinter;

/** Searches for layouts of a job that pass every check, the cheapest first. */
public final class ArrangeCommand extends JobCommand {
  private static final String JOB = "JOB";
  private static final String WRITE = "--write";
  private static final String TAKE = "--take";
  private static final String KEEP = "--keep";
  private static final String VARY = "--vary";
  private static final String FOR = "--for";
  private static final String LAYOUTS = "--layouts";
  private static final String EFFORT = "--effort";
  private static final String SECONDS = "--seconds";
  private static final String SEED = "--seed";
  private static final int MOST_SECONDS = 86_400;
  private static final int MOST_LAYOUTS = 8;
  private static final int LEAST_EFFORT = 20;
  private static final int MOST_EFFORT = 1_000_000;

  @Override
  public Syntax syntax() {
    return CommonOptions.addTo(
        Syntax.of(
                "Searches for layouts of a job that pass every check, the cheapest first, and says"
                    + " what each changes and why. Where none passes, it says what excludes what."
                    + " Ctrl-C ends it with the best so far.")
            .argument(JOB, "The job file, JSON or YAML.")
            .option(WRITE, "FILE", "Write the job file with the first layout's changes made.")
            .option(TAKE, "N", "Which layout --write takes; without it, the first.")
            .repeatableOption(
                KEEP,
                "FIELD,...",
                "Fields of the job file that stay as they are, such as chosen.spring.")
            .repeatableOption(
                VARY,
                "FIELD=RANGE",
                "A field and what it may be, such as chosen.ride.bump=3 in..4 in, or words with"
                    + " commas between them.")
            .option(
                FOR,
                "price|hours|margin|ride",
                "What the first layout is best at; without it, price.")
            .option(
                LAYOUTS,
                "N",
                "How many layouts at most, 1 to 8; without it, " + Wishes.USUAL_LAYOUTS + ".")
            .option(
                EFFORT,
                "N",
                "How many layouts may be tried; without it, "
                    + Wishes.USUAL_EFFORT
                    + ". The same effort and seed give the same answer on every machine.")
            .option(SECONDS, "S", "End after so many seconds with the best so far.")
            .option(
                SEED, "N", "A whole number; the same one gives the same answer. Without it, 1."));
  }

  @Override
  public ExitCode run(Arguments arguments, Screen screen) {
    CommonOptions options = CommonOptions.of(arguments);
    Path file = Path.of(arguments.argument(JOB));
    arguments.value(WRITE).ifPresent(written -> requireBeside(file, Path.of(written)));
    Wishes wishes = wishes(arguments);
    Workbench bench = bench(options.units(), screen);
    JobDocument document = bench.load(file);
    Job job = JobReader.read(document);
    bench.tellWarnings(job);
    bench.tellOldPrices(job);
    Optional<Long> seconds = arguments.number(SECONDS, 1, MOST_SECONDS);
    try (SearchWatch watch = SearchWatch.start(seconds)) {
      Arrangement found = search(document, wishes, bench, watch, screen);
      if (options.json()) {
        QuantityPrinter printer = new QuantityPrinter(bench.shown(job));
        screen.out().println(Json.text(ArrangeJson.of(job.header().number(), found, printer)));
      } else {
        Amounts amounts = new Amounts(bench.shown(job));
        screen.out().print(new ArrangeText(amounts).text(found));
        screen.out().println();
        screen.out().print(Cautions.text());
      }
      screen.out().flush();
      if (arguments.value(WRITE).isPresent()) {
        write(arguments, file, found, bench, screen);
      }
      return exitCode(found);
    }
  }

  private static Arrangement search(
      JobDocument document, Wishes wishes, Workbench bench, SearchWatch watch, Screen screen) {
    Arranging arranging =
        new Arranging(
            bench.extensions().extensions(),
            bench.catalog(),
            bench.quoting(JobReader.read(document)));
    WaitingLine line = WaitingLine.on(screen, watch::line);
    try {
      return arranging.arrange(document, wishes, watch);
    } finally {
      line.close();
    }
  }

  private static Wishes wishes(Arguments arguments) {
    Map<String, String> vary = new LinkedHashMap<>();
    for (String given : arguments.values(VARY)) {
      int equals = given.indexOf('=');
      if (equals <= 0 || equals == given.length() - 1) {
        throw CommandFailure.badInput(
            VARY
                + " was given '"
                + given
                + "'; it takes a field and its range, such as chosen.ride.bump=3 in..4 in.");
      }
      vary.put(given.substring(0, equals), given.substring(equals + 1));
    }
    List<String> keep =
        arguments.values(KEEP).stream()
            .flatMap(given -> Arrays.stream(given.split(",")))
            .map(String::strip)
            .filter(field -> !field.isEmpty())
            .toList();
    Wishes usual = Wishes.usual();
    return usual
        .keeping(keep)
        .varying(vary)
        .aimingAt(goal(arguments))
        .giving(
            arguments.number(LAYOUTS, 1, MOST_LAYOUTS).map(Long::intValue).orElse(usual.layouts()))
        .trying(
            arguments
                .number(EFFORT, LEAST_EFFORT, MOST_EFFORT)
                .map(Long::intValue)
                .orElse(usual.effort()))
        .from(arguments.number(SEED, Long.MIN_VALUE, Long.MAX_VALUE).orElse(usual.seed()));
  }

  private static Goal goal(Arguments arguments) {
    Optional<String> word = arguments.value(FOR);
    return word.isEmpty()
        ? Goal.PRICE
        : Goal.ofWord(word.get())
            .orElseThrow(
                () ->
                    CommandFailure.badInput(
                        FOR
                            + " was given '"
                            + word.get()
                            + "'; give one of "
                            + String.join(", ", Goal.words())
                            + "."));
  }

  /**
   * From another folder a job is priced by what lies beside it there, not by this shop's catalog.
   */
  private static void requireBeside(Path job, Path written) {
    Path folder = job.toAbsolutePath().normalize().getParent();
    if (!folder.equals(written.toAbsolutePath().normalize().getParent())) {
      throw CommandFailure.badInput(
          WRITE
              + " was given "
              + written
              + ", in another folder than the job; the shop's catalog is read from the job's folder,"
              + " so the price would be another. Give "
              + job.resolveSibling(written.getFileName())
              + ".");
    }
  }

  /** Writes a layout and reads it back: it must come to the same price. */
  private static void write(
      Arguments arguments, Path job, Arrangement found, Workbench bench, Screen screen) {
    int take = arguments.number(TAKE, 1, MOST_LAYOUTS).map(Long::intValue).orElse(1);
    if (take > found.layouts().size()) {
      throw CommandFailure.badInput(
          found.layouts().isEmpty()
              ? "There is no layout to write."
              : TAKE
                  + " was given "
                  + take
                  + "; there are "
                  + found.layouts().size()
                  + " layouts.");
    }
    ArrangedLayout layout = found.layouts().get(take - 1);
    Path file = Path.of(arguments.value(WRITE).orElseThrow());
    String text = WrittenLayout.text(job.toString(), text(job), layout.changes());
    JobDocument written = JobDocument.of(file.toString(), text);
    Job read = JobReader.read(written);
    if (!bench
        .quoting(read)
        .apply(bench.draft(read, bench.extensions()))
        .price()
        .total()
        .equals(layout.estimate().price().total())) {
      throw CommandFailure.fault(
          "The job file would not come to the price of the layout, so it was not written.");
    }
    if (Files.exists(file)) {
      screen.err().println("Kept what was there as " + SafeFile.copyAside(file) + ".");
    }
    SafeFile.write(file, text);
    screen.err().println("Wrote layout " + take + " to " + file + ". Next: trammel quote " + file);
  }

  private static String text(Path job) {
    try {
      return Files.readString(job);
    } catch (IOException unread) {
      throw CommandFailure.badInput(job + " cannot be read again: " + unread.getMessage());
    }
  }

  private static ExitCode exitCode(Arrangement found) {
    boolean anyWithoutStop =
        found.layouts().stream().anyMatch(layout -> layout.count(Verdict.STOP) == 0);
    return anyWithoutStop ? ExitCode.DONE : ExitCode.CHECK_SAYS_STOP;
  }
}
