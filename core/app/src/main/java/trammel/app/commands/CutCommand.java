package trammel.app.commands;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.Command;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.commandline.WaitingLine;
import trammel.app.cutfile.CutFile;
import trammel.app.cutfile.CutFileReader;
import trammel.app.cutfile.CutJson;
import trammel.app.cutfile.CutPlan;
import trammel.app.cutfile.CutStudy;
import trammel.app.json.Json;
import trammel.app.text.CutText;
import trammel.reading.tree.Problem;

/** Cuts a bare list of pieces or parts from bars, sheets or a strip. */
public final class CutCommand implements Command {
  private static final String TIME = "--time";
  private static final String JSON = "--json";
  private static final BigDecimal LEAST_SECONDS = new BigDecimal("0.01");
  private static final BigDecimal MOST_SECONDS = new BigDecimal("3600");

  /** The part of the time that is for the search, however long reading the list took. */
  private static final double LEAST_PART = 0.1;

  private static final int LONGEST_NUMBER = 12;

  @Override
  public Syntax syntax() {
    return Syntax.of(
            "Cuts a bare list from sticks, sheets or a strip at the least price or length. Sizes are"
                + " printed in the unit of the file.")
        .argument(
            "FILE",
            "The list, JSON or YAML in one of the formats "
                + String.join(", ", CutFile.FORMATS)
                + ".")
        .option(
            TIME,
            "SECONDS",
            "Longest time for the whole command; without it an effort that is counted, about what 10 take for sticks,"
                + " 1 for rectangles on sheets, 2 on a strip, and some more for outlines: the same plan on any"
                + " machine.")
        .flag(JSON, "Print for a machine: JSON, with the place of every piece.");
  }

  @Override
  public ExitCode run(Arguments arguments, Screen screen) {
    long startNanos = System.nanoTime();
    Optional<Duration> limit = limit(arguments);
    CutFile file = CutFileReader.read(Path.of(arguments.argument("FILE")));
    limit = limit.map(whole -> forSearch(whole, System.nanoTime() - startNanos));
    for (Problem remark : file.remarks()) {
      screen.err().println("Note: " + remark.text());
    }
    List<CutPlan> plans = search(file, limit, screen);
    if (arguments.has(JSON)) {
      screen.out().println(Json.text(CutJson.of(file, plans)));
    } else {
      screen.out().print(new CutText(file, plans).text());
    }
    return ExitCode.DONE;
  }

  /** The time is for the whole command: a long list takes about as long to print as to read. */
  private static Duration forSearch(Duration whole, long readingNanos) {
    Duration least = Duration.ofNanos((long) (LEAST_PART * whole.toNanos()));
    Duration left = whole.minusNanos(2 * readingNanos);
    return left.compareTo(least) < 0 ? least : left;
  }

  private static List<CutPlan> search(CutFile file, Optional<Duration> limit, Screen screen) {
    WaitingLine line = WaitingLine.on(screen, "Searching for a plan for " + file.name(), limit);
    try {
      return CutStudy.of(file, limit);
    } finally {
      line.close();
    }
  }

  private static Optional<Duration> limit(Arguments arguments) {
    Optional<String> word = arguments.value(TIME);
    if (word.isEmpty()) {
      return Optional.empty();
    }
    Optional<BigDecimal> seconds = decimal(word.get());
    if (seconds.isEmpty()
        || seconds.get().compareTo(LEAST_SECONDS) < 0
        || seconds.get().compareTo(MOST_SECONDS) > 0) {
      throw CommandFailure.badInput(
          TIME
              + " was given '"
              + word.get()
              + "'; give a number of seconds from "
              + LEAST_SECONDS
              + " to "
              + MOST_SECONDS
              + ", such as 2.");
    }
    return Optional.of(Duration.ofMillis((long) (1000 * seconds.get().doubleValue())));
  }

  private static Optional<BigDecimal> decimal(String word) {
    try {
      return word.length() > LONGEST_NUMBER ? Optional.empty() : Optional.of(new BigDecimal(word));
    } catch (NumberFormatException notANumber) {
      return Optional.empty();
    }
  }
}
