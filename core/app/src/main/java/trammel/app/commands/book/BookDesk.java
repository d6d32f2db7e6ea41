package trammel.app.commands.book;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.app.book.Course;
import trammel.app.book.CourseJson;
import trammel.app.book.CourseText;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.Screen;
import trammel.app.commands.CommonOptions;
import trammel.app.commands.Days;
import trammel.app.commands.ShopFolder;
import trammel.app.desk.Workbench;
import trammel.app.files.FileSet;
import trammel.app.files.JobLabel;
import trammel.app.files.OutFolder;
import trammel.app.ledger.ShopLedger;
import trammel.ledger.Ledger;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentFormat;
import trammel.reading.tree.DocumentReader;

/** What every word of {@code book} works with: what was given, the bench and the screen. */
final class BookDesk {
  static final String DATE = "--date";
  static final String WHY = "--why";

  private static final Path HERE = Path.of("");

  private final Arguments arguments;
  private final List<String> words;
  private final Screen screen;
  private final Workbench bench;
  private final CommonOptions options;
  private final LocalDate day;

  BookDesk(
      Arguments arguments,
      List<String> words,
      Screen screen,
      Workbench bench,
      CommonOptions options) {
    this.arguments = arguments;
    this.words = words;
    this.screen = screen;
    this.bench = bench;
    this.options = options;
    day = Days.of(DATE, arguments.value(DATE)).orElse(LocalDate.now());
  }

  // What was given

  /** The words, the first of which says what is to be done. */
  List<String> words() {
    return words;
  }

  /** What the first word is said of: a job, an order, a customer. */
  String named() {
    return words.get(1);
  }

  /** The word behind that; empty where it was left out. */
  Optional<String> more() {
    return words.size() > 2 ? Optional.of(words.get(2)) : Optional.empty();
  }

  /** The day on which it was, or is to be. */
  LocalDate day() {
    return day;
  }

  /** Why, or for what; empty where it was not said. */
  String why() {
    return arguments.value(WHY).orElse("");
  }

  Optional<String> value(String option) {
    return arguments.value(option);
  }

  boolean has(String flag) {
    return arguments.has(flag);
  }

  UnitSystem units() {
    return options.units().orElse(UnitSystem.US);
  }

  Workbench bench() {
    return bench;
  }

  // Which shop, which job

  /** The shop that {@code --shop} names, or that of this folder. */
  BookShop shop() {
    return shop(HERE);
  }

  private BookShop shop(Path otherwise) {
    return BookShop.in(ShopFolder.of(arguments, otherwise), bench, screen);
  }

  /**
   * The job that is named, its file read where it is one.
   *
   * @throws CommandFailure if it is a file without a number
   */
  NamedJob job() {
    Path file = Path.of(named());
    boolean isFile =
        Files.isRegularFile(file) && DocumentFormat.ofFileName(file.toString()).isPresent();
    if (!isFile) {
      return new NamedJob(named(), shop());
    }
    BookShop shop = shop(Optional.ofNullable(file.getParent()).orElse(HERE));
    String number = JobLabel.in(DocumentReader.read(file)).number();
    if (number.isEmpty()) {
      throw CommandFailure.badInput(file + " has no job.number; give a job file.");
    }
    return new NamedJob(number, shop);
  }

  /**
   * Sees to it that a job that is kept with its prices and hours lies in the shop that was named.
   *
   * @throws CommandFailure if {@code --shop} names another folder than that of the job file
   */
  void requireShopOf(Path job) {
    Path own = job.toAbsolutePath().normalize().getParent();
    if (arguments.value(ShopFolder.OPTION).isEmpty() || !Files.isDirectory(own)) {
      return;
    }
    Path given = ShopFolder.of(arguments, own);
    try {
      if (!Files.isSameFile(own, given)) {
        throw CommandFailure.badInput(
            "book "
                + words.get(0)
                + " works with the catalog and the ledger beside the job file, in "
                + own
                + "; "
                + ShopFolder.OPTION
                + " was given "
                + given
                + ". Leave it out, or move the job file there.");
      }
    } catch (IOException refused) {
      throw CommandFailure.couldNotRead(given, refused);
    }
  }

  /** A ledger, made if there is none. */
  Ledger open(ShopLedger kept) {
    return kept.open(screen::note);
  }

  // What is told and written

  boolean asksForFiles() {
    return CommonOptions.asksForFiles(arguments);
  }

  /** The folder of the papers; each paper is of its own, so that a later one takes none away. */
  Optional<OutFolder> out(String paper) {
    return CommonOptions.outFolder(arguments, "book " + paper);
  }

  /** Writes papers of jobs and names each of them. */
  void write(FileSet papers, OutFolder into, List<String> jobs) {
    CommonOptions.writeAndName(papers, into.forJobs(jobs), screen);
  }

  /** Prints the one or the other, as it was asked for. */
  void print(String text, Map<String, Object> json) {
    options.print(screen, text, json);
  }

  /** Prints the course of a job as it is now. */
  void print(Course course) {
    print(CourseText.course(course, LocalDate.now()), CourseJson.course(course));
  }
}
