package trammel.app.commands.book;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import trammel.app.book.Course;
import trammel.app.book.OfferDifference;
import trammel.app.book.Offers;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.ExitCode;
import trammel.app.commands.Verdicts;
import trammel.app.files.FileSet;
import trammel.app.ledger.ShopLedger;
import trammel.app.text.Amounts;
import trammel.app.text.Stops;
import trammel.engine.checks.CheckResult;
import trammel.ledger.JobBook;
import trammel.ledger.Ledger;
import trammel.ledger.Offer;
import trammel.planning.draft.Draft;
import trammel.planning.estimate.Estimate;
import trammel.reading.quantity.UnitSystem;

/** {@code quote} and {@code change}: keeps what a job comes to now, and what is other in it. */
final class GivenOffer {
  private final BookDesk desk;
  private final Offer.Kind kind;

  GivenOffer(BookDesk desk, Offer.Kind kind) {
    this.desk = desk;
    this.kind = kind;
  }

  ExitCode give() {
    // Asked before the job is worked out: a folder that cannot be written is told at once.
    desk.out(kind.word());
    Path job = Path.of(desk.named());
    desk.requireShopOf(job);
    Draft draft = desk.bench().draft(job);
    UnitSystem shown = desk.bench().shown(draft.job());
    Estimate estimate = desk.bench().estimate(draft);
    List<CheckResult> results = draft.judge().judge(draft.layout());
    Stops stops = Verdicts.stops(draft, results, new Amounts(shown));
    ShopLedger kept = desk.bench().shopLedger(draft.job().header().units());
    OfferPaper paper;
    try (Ledger ledger = desk.open(kept)) {
      paper = paper(ledger, estimate, stops);
      keep(ledger, paper, shown);
    }
    Path file = kept.ledgerPlace().file();
    desk.print(paper.text(file), paper.json(file));
    return Verdicts.exitCode(results);
  }

  private OfferPaper paper(Ledger ledger, Estimate estimate, Stops stops) {
    JobBook.Heading heading = Offers.heading(estimate);
    Optional<Course> course = Course.of(ledger, heading.number());
    Optional<Offer> before = before(course, heading.number());
    int count = course.map(one -> one.count(kind)).orElse(0) + 1;
    Offer offer = Offers.of(estimate, kind, count, desk.day(), desk.why());
    requireOther(offer, before, heading.number());
    return new OfferPaper(heading, offer, before, stops);
  }

  /** Papers and ledger, both or none. */
  private void keep(Ledger ledger, OfferPaper paper, UnitSystem shown) {
    FileSet papers =
        desk.asksForFiles() ? paper.papers(desk.bench().catalog().shop(), shown) : new FileSet();
    ledger.asOne(
        () -> {
          ledger.book().give(paper.job(), paper.offer());
          desk.out(kind.word() + " " + paper.offer().count())
              .ifPresent(into -> desk.write(papers, into, List.of(paper.job().number())));
          return null;
        });
  }

  /** The offer that it takes the place of, or is a change to. */
  private Optional<Offer> before(Optional<Course> course, String number) {
    if (kind == Offer.Kind.CHANGE) {
      return Optional.of(changed(course, number));
    }
    if (course.flatMap(Course::accepted).isPresent()) {
      throw CommandFailure.badInput(
          "The quote of job "
              + number
              + " was accepted; what is other from then on is a change order: trammel book change"
              + " JOB.");
    }
    return course.flatMap(Course::latestQuote).map(Offer.Kept::offer);
  }

  private static Offer changed(Optional<Course> course, String number) {
    Offer agreed =
        course
            .flatMap(Course::agreed)
            .orElseThrow(
                () ->
                    CommandFailure.badInput(
                        "No quote of job "
                            + number
                            + " was accepted yet, so there is nothing to change: give a new"
                            + " revision with trammel book quote JOB, or trammel book accept"
                            + " JOB."));
    Optional<Offer.Kept> open = course.flatMap(Course::openChange);
    if (open.isPresent()) {
      throw CommandFailure.badInput(
          "Change order "
              + open.get().offer().name(number)
              + " is open: trammel book accept "
              + number
              + " C"
              + open.get().offer().count()
              + " when it is signed, or drop it, before the next.");
    }
    if (course.flatMap(Course::invoice).isPresent()) {
      throw CommandFailure.badInput(
          "Job " + number + " was invoiced; what comes after is a job of its own.");
    }
    return agreed;
  }

  private static void requireOther(Offer offer, Optional<Offer> before, String number) {
    if (before.isPresent() && OfferDifference.of(before.get(), offer).isNothing()) {
      throw CommandFailure.badInput(
          "Job "
              + number
              + " comes to the same lines and the same price as "
              + before.get().name(number)
              + ", so nothing was kept. Change the job file first.");
    }
  }
}
