package trammel.app.commands.book;

import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.ExitCode;
import trammel.ledger.JobBook;
import trammel.ledger.Ledger;

/** {@code stage} and {@code done}: what is promised for a day, and what was done. */
final class SaidStage {
  private SaidStage() {}

  static ExitCode say(BookDesk desk, JobBook.StageWord word) {
    NamedJob job = desk.job();
    if (word == JobBook.StageWord.PROMISED && desk.value(BookDesk.DATE).isEmpty()) {
      throw CommandFailure.badInput(
          "book stage needs the day that is promised: " + BookDesk.DATE + " DAY.");
    }
    try (Ledger ledger = job.shop().openExisting()) {
      BookShop.course(ledger, job.number());
      String title = desk.more().orElseThrow();
      ledger.book().say(job.number(), new JobBook.Stage(title, word, desk.day(), desk.why()));
      desk.print(BookShop.course(ledger, job.number()));
      return ExitCode.DONE;
    }
  }
}
