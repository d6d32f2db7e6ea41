package trammel.app.commands;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import trammel.app.book.PlacedOrders;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.commandline.WaitingLine;
import trammel.app.desk.Workbench;
import trammel.app.files.FileSet;
import trammel.app.files.OutFolder;
import trammel.app.handout.OrderFiles;
import trammel.app.json.Json;
import trammel.app.json.OrderJson;
import trammel.app.ledger.ShopLedger;
import trammel.app.text.Amounts;
import trammel.app.text.OrderText;
import trammel.ledger.Ledger;
import trammel.planning.order.MaterialOrder;
import trammel.planning.order.Ordering;
import trammel.planning.rack.Rack;
import trammel.reading.quantity.QuantityPrinter;

/** Makes one material order a supplier over one or many jobs. */
public final class OrderCommand extends JobCommand {
  private static final String RACK = "--rack";
  private static final String DRY_RUN = "--dry-run";
  private static final String ANYWAY = "--anyway";
  private static final String DATE = "--date";
  private static final String PLACED = "--placed";

  /** How often an order is worked out anew because another command changed the rack meanwhile. */
  private static final int MOST_TRIES = 5;

  @Override
  public Syntax syntax() {
    return CommonOptions.addWithOutTo(
        JobRun.addTo(
                Syntax.of(
                    "Makes one material order a supplier; several jobs are cut and bought together."
                        + " With --out it writes the order as PDF and web page, and a CSV, a JSON"
                        + " and a text a supplier."))
            .flag(
                RACK,
                "Use the stock on the rack of the shop's ledger first: what is used is taken off,"
                    + " useful offcuts are put on. trammel ledger take rack.csv --apply takes a"
                    + " rack in.")
            .flag(DRY_RUN, "Show what would be taken off and put on the rack; leave it as it is.")
            .flag(
                ANYWAY,
                "Take from the rack for a job of which a check says stop; without it nothing is"
                    + " taken for such a job.")
            .flag(
                PLACED,
                "It is placed: keep it in the shop's ledger, so that trammel book received can hold"
                    + " what comes against it.")
            .option(
                DATE,
                "DAY",
                "Day on which the order is placed, such as 2026-12-01; without it, the date of the"
                    + " latest job."));
  }

  @Override
  public ExitCode run(Arguments arguments, Screen screen) {
    CommonOptions options = CommonOptions.of(arguments);
    Optional<LocalDate> date = Days.of(DATE, arguments.value(DATE));
    boolean dryRun = arguments.has(DRY_RUN);
    requireRack(arguments, DRY_RUN);
    requireRack(arguments, ANYWAY);
    refuseRackFile(JobRun.files(arguments));
    Optional<OutFolder> given = CommonOptions.outFolder(arguments, "order");
    Workbench bench = bench(options.units(), screen);
    JobsToOrder jobs = JobsToOrder.of(JobRun.files(arguments), bench, screen);
    QuantityPrinter printer = new Amounts(bench.shown(jobs.first())).printer();
    AtomicReference<String> step = new AtomicReference<>("Planning");
    Ordering ordering = new Ordering(bench.catalog(), printer, step::set);
    LocalDate placed = date.orElse(jobs.latest());
    boolean held = arguments.has(RACK) && !jobs.stopping().isEmpty() && !arguments.has(ANYWAY);
    Optional<OutFolder> out =
        jobs.leftOut() || held
            ? Optional.empty()
            : given.map(folder -> folder.forJobs(jobs.numbers()));
    boolean placing = arguments.has(PLACED) && !jobs.leftOut() && !held;
    if (placing && dryRun) {
      throw CommandFailure.badInput(PLACED + " and " + DRY_RUN + " say two things; give one.");
    }
    Keeping keeping =
        (ledger, order) -> {
          if (placing) {
            PlacedOrders.keep(ledger, jobs.numbers(), order, placed);
            screen
                .err()
                .println(
                    "Kept as placed in "
                        + ledger.file()
                        + ". When goods come: trammel book received ORDER.");
          }
        };
    Papers papers =
        order -> out.isPresent() ? files(jobs, order, placed, bench, printer) : new FileSet();
    MaterialOrder order;
    if (!arguments.has(RACK)) {
      order = watched(screen, step, () -> ordering.order(jobs.ordered()));
      if (placing) {
        ShopLedger shop = bench.shopLedger(jobs.first().header().units());
        MaterialOrder made = order;
        try (Ledger ledger = shop.open(screen::note)) {
          FileSet files = papers.of(made);
          ledger.asOne(
              () -> {
                keeping.keep(ledger, made);
                write(files, out, screen);
                return null;
              });
        }
      } else {
        write(papers.of(order), out, screen);
      }
    } else {
      ShopLedger shop = bench.shopLedger(jobs.first().header().units());
      if (dryRun || jobs.leftOut() || held) {
        order = watched(screen, step, () -> ordering.order(jobs.ordered(), shop.rack()));
        write(papers.of(order), out, screen);
      } else {
        order = takeFromRack(shop, ordering, jobs, papers, keeping, out, screen);
      }
    }
    if (options.json()) {
      screen.out().println(Json.text(OrderJson.of(jobs.numbers(), order, placed, jobs.stops())));
    } else {
      screen.out().print(OrderText.text(jobs.numbers(), order, placed, jobs.stops()));
    }
    if (held) {
      screen.err().println(held(jobs.stopping()));
    }
    if (jobs.leftOut()) {
      screen.err().println("A job was left out, so no file was written and no rack changed.");
      return jobs.worst();
    }
    return Verdicts.exitCode(jobs.checks());
  }

  /** Tells on a terminal how far the plan is while it is made. */
  private static MaterialOrder watched(
      Screen screen, AtomicReference<String> step, Supplier<MaterialOrder> planning) {
    WaitingLine line = WaitingLine.on(screen, step::get);
    try {
      return planning.get();
    } finally {
      line.close();
    }
  }

  private static void requireRack(Arguments arguments, String flag) {
    if (arguments.has(flag) && !arguments.has(RACK)) {
      throw CommandFailure.badInput(flag + " goes with " + RACK + "; give both or neither.");
    }
  }

  /** The rack was a file of its own once, named after the option. */
  private static void refuseRackFile(List<String> files) {
    for (String file : files) {
      if (file.toLowerCase(Locale.ROOT).endsWith(".csv")) {
        throw CommandFailure.badInput(
            file
                + " is no job file. If it is a rack: "
                + RACK
                + " takes from the shop's ledger; take the file in with trammel ledger take "
                + file
                + " --apply, and leave it out here.");
      }
    }
  }

  private static String held(List<String> stopping) {
    return "A check of "
        + String.join(", ", stopping)
        + " says stop, so no file was written and nothing was taken off the rack. Change the"
        + " layout, or order with "
        + ANYWAY
        + ".";
  }

  /** Makes the files of an order; none where none are wanted. */
  private interface Papers {
    FileSet of(MaterialOrder order);
  }

  /** Keeps an order in the ledger; does nothing where it is not placed yet. */
  private interface Keeping {
    void keep(Ledger ledger, MaterialOrder order);
  }

  /**
   * The order is worked out without holding the ledger, which can take long; it counts only if the
   * rack is then as it was, and is worked out anew otherwise.
   */
  private static MaterialOrder takeFromRack(
      ShopLedger shop,
      Ordering ordering,
      JobsToOrder jobs,
      Papers papers,
      Keeping keeping,
      Optional<OutFolder> out,
      Screen screen) {
    try (Ledger ledger = shop.open(screen::note)) {
      for (int i = 0; i < MOST_TRIES; i++) {
        Rack before = ledger.rackStock().rack();
        MaterialOrder order = ordering.order(jobs.ordered(), before);
        FileSet files = papers.of(order);
        boolean taken =
            ledger.asOne(
                () -> {
                  boolean same = ledger.rackStock().rack().equals(before);
                  if (same) {
                    ledger
                        .rackStock()
                        .become(
                            order.rack().rack(),
                            "ordered for " + String.join(", ", jobs.numbers()));
                    keeping.keep(ledger, order);
                    write(files, out, screen);
                  }
                  return same;
                });
        if (taken) {
          screen.err().println("The rack in " + ledger.file() + " is as this order leaves it.");
          return order;
        }
        screen.err().println("The rack was changed meanwhile; the order is worked out anew.");
      }
      throw CommandFailure.badInput(
          "Other commands keep changing the rack in "
              + ledger.file()
              + "; nothing was written. Wait until they are done.");
    }
  }

  private static FileSet files(
      JobsToOrder jobs,
      MaterialOrder order,
      LocalDate placed,
      Workbench bench,
      QuantityPrinter printer) {
    FileSet files = new FileSet();
    new OrderFiles(jobs.numbers(), order, placed, bench.catalog(), printer.system(), jobs.stops())
        .addTo(files);
    return files;
  }

  private static void write(FileSet files, Optional<OutFolder> out, Screen screen) {
    if (out.isPresent()) {
      CommonOptions.write(files, out.get(), screen);
    }
  }
}
