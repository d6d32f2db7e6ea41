package trammel.app.commands.book;

import java.util.Optional;
import trammel.app.book.Course;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.ExitCode;
import trammel.ledger.Ledger;
import trammel.ledger.Offer;

/** {@code accept} and {@code drop}: what became of a quote or a change order. */
final class AnsweredOffer {
  private AnsweredOffer() {}

  static ExitCode accept(BookDesk desk) {
    return mark(desk, true);
  }

  static ExitCode drop(BookDesk desk) {
    return mark(desk, false);
  }

  private static ExitCode mark(BookDesk desk, boolean agreed) {
    NamedJob job = desk.job();
    String number = job.number();
    Optional<Integer> change = desk.more().map(AnsweredOffer::changeCount);
    try (Ledger ledger = job.shop().openExisting()) {
      Course course = BookShop.course(ledger, number);
      Offer offer = open(change.isPresent() ? change(course, change.get()) : quote(course), number);
      if (agreed) {
        ledger.book().accept(number, offer.kind(), offer.count(), desk.day());
      } else {
        ledger.book().drop(number, offer.kind(), offer.count(), desk.day());
      }
      desk.print(BookShop.course(ledger, number));
      return ExitCode.DONE;
    }
  }

  private static int changeCount(String word) {
    if (!word.matches("[Cc]\\d{1,4}")) {
      throw CommandFailure.badInput(
          "A change order was given as '" + word + "'; give it as C1, C2 and so on.");
    }
    return Integer.parseInt(word.substring(1));
  }

  private static Offer.Kept change(Course course, int count) {
    return course.offers().stream()
        .filter(one -> one.offer().kind() == Offer.Kind.CHANGE)
        .filter(one -> one.offer().count() == count)
        .findFirst()
        .orElseThrow(
            () ->
                CommandFailure.badInput(
                    "Job " + course.job().number() + " has no change order C" + count + "."));
  }

  private static Offer.Kept quote(Course course) {
    return course
        .latestQuote()
        .orElseThrow(
            () ->
                CommandFailure.badInput(
                    "Job " + course.job().number() + " has no quote that was not taken back."));
  }

  private static Offer open(Offer.Kept kept, String number) {
    if (!kept.isOpen()) {
      throw CommandFailure.badInput(
          kept.offer().name(number)
              + kept.acceptedOn()
                  .map(day -> " was agreed on " + day)
                  .orElseGet(() -> " was taken back on " + kept.droppedOn().orElseThrow())
              + "; that stays.");
    }
    return kept.offer();
  }
}
