package trammel.app.commands;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.desk.ShopCatalog;
import trammel.app.desk.Workbench;
import trammel.app.files.JobLabel;
import trammel.app.ledger.ShopLedger;
import trammel.app.prices.ListPriceFile;
import trammel.app.prices.PriceColumn;
import trammel.app.prices.PriceList;
import trammel.app.prices.PriceListReader;
import trammel.app.prices.PriceListText;
import trammel.app.prices.TouchedJob;
import trammel.ledger.Ledger;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;

/** Takes a supplier's price list into the shop's catalog. */
public final class PricesCommand extends JobCommand {
  private static final String LIST = "FILE";
  private static final String WRITE = "--write";
  private static final String AS_WRITTEN = "--as-written";
  private static final String COLUMN = "--column";
  private static final String DATE = "--date";
  private static final String SOURCE = "--source";
  private static final int MOST_FILES = 500;

  @Override
  public Syntax syntax() {
    return CommonOptions.addTo(
        Syntax.of(
                "Takes a supplier's price list, a CSV as any spreadsheet saves it, into the shop's"
                    + " catalog. Shows which heading is read as what, what changes, and what that"
                    + " does to the jobs named behind it; writes only with --write.")
            .arguments(
                LIST,
                1,
                MOST_FILES,
                "The list, and behind it job files or folders of jobs to price anew.")
            .flag(WRITE, "Write the prices into catalog/prices.json and the ledger.")
            .flag(AS_WRITTEN, "Take prices that are far off from those of before, too.")
            .repeatableOption(
                COLUMN,
                "WHAT=HEADING",
                "Read this heading as item, title, price, unit, length, width, size, from or"
                    + " currency.")
            .option(DATE, "DAY", "Day of the prices, such as 2026-12-01; without it, today.")
            .option(SOURCE, "TEXT", "Where they come from; without it, the name of the file.")
            .option(
                ShopFolder.OPTION,
                "DIR",
                "The folder of the jobs; without it, that of the first job."));
  }

  @Override
  public ExitCode run(Arguments arguments, Screen screen) {
    CommonOptions options = CommonOptions.of(arguments);
    List<String> words = arguments.arguments(LIST);
    Path file = Path.of(words.get(0));
    LocalDate day = Days.of(DATE, arguments.value(DATE)).orElse(LocalDate.now());
    String source = arguments.value(SOURCE).orElse(file.getFileName().toString());
    List<Path> jobs = jobs(words.subList(1, words.size()));
    Path folder = folder(arguments, jobs);
    Workbench bench = bench(options.units(), screen);
    QuantityPrinter printer = new QuantityPrinter(options.units().orElse(UnitSystem.US));
    ShopLedger shop = bench.shopIn(folder, printer.system());
    PriceList list =
        new PriceListReader(
                file, bench.catalog(), printer, PriceColumn.told(arguments.values(COLUMN)))
            .read();
    PriceListText text = new PriceListText(list, printer, bench.catalog().currency());
    if (!options.json()) {
      // Before the jobs are priced, which may take long.
      screen.out().print(text.headings() + text.changes());
      screen.out().flush();
    }
    ListPriceFile prices = new ListPriceFile(ShopCatalog.place(folder), bench.catalog());
    String content = prices.text(list, day, source);
    List<TouchedJob> touched = new RepricedJobs(bench, options.units(), screen).at(content, jobs);
    boolean write = arguments.has(WRITE);
    if (write) {
      requireLikely(list, arguments);
      try (Ledger ledger = shop.open(screen::note)) {
        prices.keep(ledger, content, list, day, source);
      }
    }
    options.print(
        screen,
        PriceListText.jobs(touched) + written(prices.path(), write),
        text.json(touched, day.toString(), source, prices.path(), write));
    return ExitCode.DONE;
  }

  private static void requireLikely(PriceList list, Arguments arguments) {
    if (list.hasFar() && !arguments.has(AS_WRITTEN)) {
      throw CommandFailure.badInput(
          "A price is more than twice, or less than half of what it was; nothing was written. Look"
              + " at the lines marked FAR OFF, and give "
              + AS_WRITTEN
              + " if they are right.");
    }
  }

  private static String written(Path prices, boolean write) {
    return write
        ? "\nWritten: " + prices + "; what they were is in the ledger.\n"
        : "\nNothing is written yet: give " + WRITE + " to write " + prices + ".\n";
  }

  private static Path folder(Arguments arguments, List<Path> jobs) {
    return ShopFolder.of(
        arguments, jobs.isEmpty() ? Path.of("") : jobs.get(0).toAbsolutePath().getParent());
  }

  /** The job files, and those in the folders. */
  private static List<Path> jobs(List<String> words) {
    List<Path> jobs = new ArrayList<>();
    for (String word : words) {
      Path path = Path.of(word);
      if (!Files.isDirectory(path)) {
        jobs.add(path);
        continue;
      }
      try (DirectoryStream<Path> files = Files.newDirectoryStream(path)) {
        List<Path> found = new ArrayList<>();
        files.forEach(
            file -> {
              if (JobLabel.of(file).isPresent()) {
                found.add(file);
              }
            });
        found.stream().sorted().forEach(jobs::add);
      } catch (IOException refused) {
        throw CommandFailure.couldNotRead(path, refused);
      }
    }
    return jobs;
  }
}
