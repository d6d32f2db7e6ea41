package trammel.app.commands;

import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.app.commandline.Screen;
import trammel.app.desk.EarlyReading;
import trammel.app.desk.Installation;
import trammel.app.desk.Workbench;
import trammel.app.files.ScratchFolder;
import trammel.app.prices.ListPriceFile;
import trammel.app.prices.TouchedJob;
import trammel.planning.draft.Draft;
import trammel.reading.quantity.UnitSystem;
import trammel.trade.money.Money;

/** Jobs at the prices of now and at those of a list that is not written yet. */
final class RepricedJobs {
  private final Workbench now;
  private final Optional<UnitSystem> units;
  private final Screen screen;

  RepricedJobs(Workbench now, Optional<UnitSystem> units, Screen screen) {
    this.now = now;
    this.units = units;
    this.screen = screen;
  }

  /**
   * What new prices do to the jobs.
   *
   * @param prices what {@code prices.json} is to hold
   */
  List<TouchedJob> at(String prices, List<Path> jobs) {
    if (jobs.isEmpty()) {
      return List.of();
    }
    try (ScratchFolder catalog = new ScratchFolder("prices")) {
      catalog.write(ListPriceFile.NAME, prices);
      return in(catalog.path(), jobs);
    }
  }

  /** The jobs with one more folder of the shop's catalog. */
  private List<TouchedJob> in(Path catalog, List<Path> jobs) {
    // What there is to remark of the jobs, the bench of now has told.
    Screen silent = new Screen(screen.out(), new PrintWriter(Writer.nullWriter()), false, false);
    Workbench then =
        new Workbench(EarlyReading.start(Installation.running()), units, silent, List.of(catalog));
    List<TouchedJob> touched = new ArrayList<>();
    for (Path job : jobs) {
      Draft draft = now.draft(job);
      Money before = now.estimate(draft).price().total();
      Money after = then.estimate(then.draft(job)).price().total();
      touched.add(new TouchedJob(job.toString(), draft.job().header().number(), before, after));
    }
    return touched;
  }
}
