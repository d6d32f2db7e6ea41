package trammel.app.commands;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.desk.Workbench;
import trammel.app.files.FileSet;
import trammel.app.files.OutFolder;
import trammel.app.json.Json;
import trammel.app.json.LedgerJson;
import trammel.app.ledger.BookTables;
import trammel.app.ledger.ClosedJobsTable;
import trammel.app.ledger.MovementsTable;
import trammel.app.ledger.PricesTable;
import trammel.app.ledger.ShopLedger;
import trammel.app.ledger.TableChange;
import trammel.app.ledger.TableReader;
import trammel.app.ledger.TackingsTable;
import trammel.app.rack.RackFile;
import trammel.app.text.LedgerText;
import trammel.ledger.DamagedLedgerException;
import trammel.ledger.Ledger;
import trammel.ledger.Tacking;
import trammel.ledger.Written;
import trammel.planning.learning.ClosedJob;
import trammel.planning.rack.Rack;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;

/** Shows, checks, copies and corrects the shop's ledger. */
public final class LedgerCommand extends JobCommand {
  private static final String WHAT = "WHAT";
  private static final String APPLY = "--apply";

  private Arguments arguments;
  private Screen screen;
  private CommonOptions options;
  private UnitSystem units;
  private Workbench bench;
  private ShopLedger shop;

  @Override
  public Syntax syntax() {
    return CommonOptions.addWithOutTo(
        Syntax.of(
                "The shop's ledger, ledger.sqlite in the folder of its jobs: closed jobs, the stock"
                    + " on the rack, readings after tacking, what prices were. Without WHAT it"
                    + " shows what is in it.")
            .arguments(
                WHAT,
                0,
                2,
                "show: what is in it. check: looks for damage. backup FILE: a copy, checked."
                    + " restore FILE: puts a backup in its place and keeps what was there. tables:"
                    + " every table as CSV into the folder of --out. take FILE: says what"
                    + " closed-jobs.csv, rack.csv or tack-readings.csv would change.")
            .option(ShopFolder.OPTION, "DIR", "The folder of the jobs; without it, this one.")
            .flag(APPLY, "With take: carries the changes out."));
  }

  @Override
  public ExitCode run(Arguments arguments, Screen screen) {
    this.arguments = arguments;
    this.screen = screen;
    options = CommonOptions.of(arguments);
    units = options.units().orElse(UnitSystem.US);
    bench = bench(options.units(), screen);
    shop = bench.shopIn(ShopFolder.of(arguments, Path.of("")), units);
    List<String> words = arguments.arguments(WHAT);
    String what = words.isEmpty() ? "show" : words.get(0);
    boolean named = words.size() == 2;
    requireFitting(what, named);
    return switch (what) {
      case "show" -> show();
      case "check" -> check();
      case "backup" -> backUp(Path.of(words.get(1)));
      case "restore" -> restore(Path.of(words.get(1)));
      case "tables" -> tables();
      default -> take(Path.of(words.get(1)));
    };
  }

  private void requireFitting(String what, boolean named) {
    boolean alone = List.of("show", "check", "tables").contains(what);
    if (!alone && !List.of("backup", "restore", "take").contains(what)) {
      throw CommandFailure.badInput(
          WHAT
              + " was given '"
              + what
              + "'; give show, check, backup FILE, restore FILE, tables or take FILE.");
    }
    if (alone == named) {
      throw CommandFailure.badInput(
          "ledger " + what + (named ? " takes no file; leave it out." : " needs a file; name it."));
    }
    if (what.equals("tables") != CommonOptions.asksForFiles(arguments)) {
      throw CommandFailure.badInput("--out DIR and ledger tables go together; give both.");
    }
    if (arguments.has(APPLY) && !what.equals("take")) {
      throw CommandFailure.badInput(APPLY + " goes with ledger take; leave it out.");
    }
  }

  private Ledger open() {
    if (!shop.hasAnything()) {
      throw CommandFailure.badInput(
          "There is no ledger yet ("
              + shop.ledgerPlace().named()
              + "). Close a job, or take a rack in with trammel ledger take rack.csv --apply. If"
              + " the jobs are in another folder, name it with "
              + ShopFolder.OPTION
              + ".");
    }
    return shop.open(screen::note);
  }

  private void print(String text, Map<String, Object> json) {
    options.print(screen, text, json);
  }

  private ExitCode show() {
    try (Ledger ledger = open()) {
      List<ClosedJob> jobs = ledger.closedJobs().all();
      Rack rack = ledger.rackStock().rack();
      int movements = ledger.rackStock().movements().size();
      int prices = ledger.prices().count();
      List<Tacking> tackings = ledger.tackings().all().stream().map(Written::what).toList();
      print(
          LedgerText.contents(
              ledger.file(),
              ledger.version(),
              jobs,
              rack,
              movements,
              prices,
              tackings,
              new QuantityPrinter(units)),
          LedgerJson.contents(
              ledger.file(), ledger.version(), jobs, rack, movements, prices, tackings));
      return ExitCode.DONE;
    }
  }

  private ExitCode check() {
    Path file = shop.ledgerPlace().file();
    List<String> findings;
    try (Ledger ledger = open()) {
      findings = ledger.findings();
    } catch (DamagedLedgerException damaged) {
      findings = List.of(damaged.getMessage());
    }
    print(LedgerText.findings(file, findings), LedgerJson.findings(file, findings));
    return findings.isEmpty() ? ExitCode.DONE : ExitCode.CHECK_SAYS_STOP;
  }

  private ExitCode backUp(Path given) {
    Path copy =
        Files.isDirectory(given)
            ? ShopLedger.free(given, "ledger-" + LocalDate.now(), ".sqlite")
            : given;
    try (Ledger ledger = open()) {
      ledger.backUp(copy);
    }
    print("Backed up and checked: " + copy + "\n", LedgerJson.files(Map.of("backup", copy)));
    return ExitCode.DONE;
  }

  private ExitCode restore(Path backup) {
    if (!Files.isRegularFile(backup)) {
      throw CommandFailure.badInput(backup + " is no file; give a backup of the ledger.");
    }
    Path ledger = shop.ledgerPlace().file();
    Path kept = ShopLedger.free(ledger.getParent(), "ledger-before-restore", ".sqlite");
    Ledger.restore(ledger, backup, kept);
    Map<String, Path> files = new LinkedHashMap<>();
    files.put("restored", ledger);
    String text = "Restored " + ledger + " from " + backup + "\n";
    if (Files.exists(kept)) {
      files.put("kept", kept);
      text += "What it held before is kept: " + kept + "\n";
    }
    print(text, LedgerJson.files(files));
    return ExitCode.DONE;
  }

  private ExitCode tables() {
    OutFolder folder = CommonOptions.outFolder(arguments, "ledger").orElseThrow();
    FileSet files = new FileSet();
    try (Ledger ledger = open()) {
      ledger.asOne(
          () -> {
            files
                .add("closed-jobs.csv", ClosedJobsTable.text(ledger.closedJobs().all()))
                .add(
                    "earlier-closings.csv",
                    ClosedJobsTable.earlierText(ledger.closedJobs().earlier()))
                .add("rack.csv", RackFile.text(ledger.rackStock().rack(), units))
                .add("rack-movements.csv", MovementsTable.text(ledger.rackStock().movements()))
                .add("prices.csv", PricesTable.text(ledger.prices().all()))
                .add("tack-readings.csv", TackingsTable.text(ledger.tackings().all()));
            BookTables.addTo(files, ledger);
            return null;
          });
    }
    CommonOptions.writeAndName(files, folder, screen);
    if (options.json()) {
      screen.out().println(Json.text(LedgerJson.files(Map.of("tables", folder.path()))));
    }
    return ExitCode.DONE;
  }

  private ExitCode take(Path file) {
    TableReader tables = new TableReader(bench.catalog(), new QuantityPrinter(units));
    boolean apply = arguments.has(APPLY);
    // Read once before a ledger is made: a table that is refused leaves none behind.
    TableChange change = tables.read(file, TableReader.Held.NOTHING);
    if (apply || shop.hasAnything()) {
      try (Ledger ledger = shop.open(screen::note)) {
        change =
            ledger.asOne(
                () -> {
                  TableChange found = tables.read(file, TableReader.Held.by(ledger));
                  if (apply) {
                    found.carryOut().accept(ledger);
                  }
                  return found;
                });
      }
    }
    print(LedgerText.change(change, apply), LedgerJson.change(change, apply));
    return ExitCode.DONE;
  }
}
