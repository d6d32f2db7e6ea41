package trammel.app.commands.book;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.ExitCode;
import trammel.ledger.JobBook;
import trammel.ledger.Offer;

/** The first word behind {@code book}: what is to be done, and how many words it takes. */
enum BookWord {
  SHOW(0, 1, false, ShownCourse::show),
  QUOTE(1, 1, true, desk -> new GivenOffer(desk, Offer.Kind.QUOTE).give()),
  CHANGE(1, 1, true, desk -> new GivenOffer(desk, Offer.Kind.CHANGE).give()),
  ACCEPT(1, 2, false, AnsweredOffer::accept),
  DROP(1, 2, false, AnsweredOffer::drop),
  STAGE(2, 2, false, desk -> SaidStage.say(desk, JobBook.StageWord.PROMISED)),
  DONE(2, 2, false, desk -> SaidStage.say(desk, JobBook.StageWord.DONE)),
  PAID(2, 2, false, ReceivedPayment::pay),
  RECEIVED(1, 2, true, ReceivedGoods::receive),
  UNPLACE(1, 1, false, ReceivedGoods::unplace),
  INVOICE(1, 1, true, WrittenInvoice::write),
  AGAIN(2, 2, false, CopiedJob::copy),
  FORGET(1, 1, false, ForgottenCustomer::forget);

  /** What a word does. */
  private interface Work {
    ExitCode run(BookDesk desk);
  }

  private final int least;
  private final int most;
  private final boolean writesPapers;
  private final Work work;

  BookWord(int least, int most, boolean writesPapers, Work work) {
    this.least = least;
    this.most = most;
    this.writesPapers = writesPapers;
    this.work = work;
  }

  /** As it is written. */
  String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * The word that was given; {@code show} where none was.
   *
   * @throws CommandFailure if there is no such word, or what is given with it does not go with it
   */
  static BookWord of(BookDesk desk) {
    BookWord word = desk.words().isEmpty() ? SHOW : named(desk.words().get(0));
    word.requireFitting(desk);
    return word;
  }

  /** The words that were given; a job alone is to be shown. */
  static List<String> whole(List<String> given) {
    boolean isJobAlone = given.size() == 1 && find(given.get(0)).isEmpty();
    return isJobAlone ? List.of(SHOW.word(), given.get(0)) : given;
  }

  private static BookWord named(String given) {
    return find(given)
        .orElseThrow(
            () ->
                CommandFailure.badInput(
                    BookCommand.WHAT + " was given '" + given + "'; give " + all() + "."));
  }

  private static Optional<BookWord> find(String given) {
    return Arrays.stream(values()).filter(one -> one.word().equals(given)).findFirst();
  }

  /** All words, as one reads them out. */
  static String all() {
    String butLast =
        Arrays.stream(values())
            .filter(one -> one != FORGET)
            .map(BookWord::word)
            .collect(Collectors.joining(", "));
    return butLast + " or " + FORGET.word();
  }

  private void requireFitting(BookDesk desk) {
    int given = Math.max(0, desk.words().size() - 1);
    if (given < least || given > most) {
      throw CommandFailure.badInput(
          "book " + word() + " was given " + given + " words behind it; see trammel book --help.");
    }
    if (desk.asksForFiles() && !writesPapers) {
      throw CommandFailure.badInput("book " + word() + " writes no papers; leave --out away.");
    }
  }

  ExitCode run(BookDesk desk) {
    return work.run(desk);
  }
}
