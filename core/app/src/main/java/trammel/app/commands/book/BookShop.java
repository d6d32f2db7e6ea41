package trammel.app.commands.book;

import java.nio.file.Path;
import trammel.app.book.Course;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.Screen;
import trammel.app.commands.ShopFolder;
import trammel.app.desk.Workbench;
import trammel.app.ledger.ShopLedger;
import trammel.ledger.Ledger;
import trammel.reading.quantity.UnitSystem;

/**
 * A shop's folder with its ledger.
 *
 * @param folder the folder of the jobs
 * @param kept its ledger
 * @param screen where is told what is remarked as it is opened
 */
record BookShop(Path folder, ShopLedger kept, Screen screen) {
  static BookShop in(Path folder, Workbench bench, Screen screen) {
    return new BookShop(folder, bench.shopIn(folder, UnitSystem.US), screen);
  }

  /** The ledger, made if there is none. */
  Ledger open() {
    return kept.open(screen::note);
  }

  /**
   * The ledger that is there.
   *
   * @throws CommandFailure if there is none
   */
  Ledger openExisting() {
    if (!kept.hasAnything()) {
      throw CommandFailure.badInput(
          "There is no ledger yet ("
              + kept.ledgerPlace().named()
              + "): trammel book quote JOB keeps the first quote in it. If the jobs are in another"
              + " folder, name it with "
              + ShopFolder.OPTION
              + ".");
    }
    return open();
  }

  /**
   * The course of a job.
   *
   * @throws CommandFailure if the ledger has no quote of it
   */
  static Course course(Ledger ledger, String number) {
    return Course.of(ledger, number)
        .orElseThrow(
            () ->
                CommandFailure.badInput(
                    "The ledger has no quote of job "
                        + number
                        + ": trammel book quote JOB keeps one."));
  }
}
