package trammel.app.book;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.ledger.JobBook;
import trammel.ledger.Ledger;
import trammel.ledger.Offer;
import trammel.ledger.Purchases;
import trammel.ledger.Tacking;
import trammel.ledger.Written;
import trammel.planning.learning.ClosedJob;
import trammel.trade.money.Money;

/**
 * The course of one job as the ledger has it.
 *
 * @param job whose job it is
 * @param offers its quotes and change orders, the first first
 * @param paid payments received
 * @param said what was said of its stages, the first first
 * @param tackings what was read after tacking, the first first
 * @param purchases orders that it has part in
 * @param closed the job as it was closed
 * @param invoice its invoice
 */
public record Course(
    JobBook.Heading job,
    List<Offer.Kept> offers,
    List<JobBook.Paid> paid,
    List<JobBook.Stage> said,
    List<Tacking> tackings,
    List<Purchases.Purchase> purchases,
    Optional<ClosedJob> closed,
    Optional<JobBook.Invoice> invoice) {
  public Course {
    offers = List.copyOf(offers);
    paid = List.copyOf(paid);
    said = List.copyOf(said);
    tackings = List.copyOf(tackings);
    purchases = List.copyOf(purchases);
  }

  /** The course of a job; empty if the ledger has none. */
  public static Optional<Course> of(Ledger ledger, String number) {
    JobBook book = ledger.book();
    return book.job(number)
        .map(
            job ->
                new Course(
                    job,
                    book.offers(number),
                    book.payments(number),
                    book.stages(number),
                    ledger.tackings().of(number).stream().map(Written::what).toList(),
                    ledger.purchases().forJob(number),
                    ledger.closedJobs().of(number),
                    book.invoice(number)));
  }

  /** The offers of one kind. */
  private List<Offer.Kept> offers(Offer.Kind kind) {
    return offers.stream().filter(one -> one.offer().kind() == kind).toList();
  }

  /** How many offers of a kind there are. */
  public int count(Offer.Kind kind) {
    return offers(kind).size();
  }

  /** The latest quote that was not taken back. */
  public Optional<Offer.Kept> latestQuote() {
    return last(
        offers(Offer.Kind.QUOTE).stream().filter(one -> one.droppedOn().isEmpty()).toList());
  }

  /** The quote that was accepted. */
  public Optional<Offer.Kept> accepted() {
    return last(agreed(Offer.Kind.QUOTE));
  }

  /** The change orders that were agreed, the first first. */
  public List<Offer.Kept> changes() {
    return agreed(Offer.Kind.CHANGE);
  }

  private List<Offer.Kept> agreed(Offer.Kind kind) {
    return offers(kind).stream().filter(one -> one.acceptedOn().isPresent()).toList();
  }

  /** A change order that is neither agreed nor taken back. */
  public Optional<Offer.Kept> openChange() {
    return last(offers(Offer.Kind.CHANGE).stream().filter(Offer.Kept::isOpen).toList());
  }

  /** What counts between shop and customer: the latest change that was agreed, else the quote. */
  public Optional<Offer> agreed() {
    return last(changes()).or(this::accepted).map(Offer.Kept::offer);
  }

  private static <T> Optional<T> last(List<T> list) {
    return list.isEmpty() ? Optional.empty() : Optional.of(list.get(list.size() - 1));
  }

  /** What each agreed change order makes more or less, in their order. */
  public List<OfferDifference> changeDifferences() {
    List<OfferDifference> differences = new ArrayList<>();
    Offer before = accepted().map(Offer.Kept::offer).orElse(null);
    for (Offer.Kept change : changes()) {
      differences.add(OfferDifference.of(before, change.offer()));
      before = change.offer();
    }
    return differences;
  }

  /** What was paid, what was given back taken off; empty before anything is priced. */
  public Optional<Money> paidTogether() {
    Optional<Money> none = latestQuote().map(one -> Money.zero(one.offer().tax().currency()));
    Optional<Money> sum =
        paid.isEmpty() ? none : Optional.of(Money.zero(paid.get(0).amount().currency()));
    for (JobBook.Paid one : paid) {
      sum = Optional.of(sum.orElseThrow().plus(one.amount()));
    }
    return sum;
  }

  /** What is left to pay of what was agreed; below 0 is to be given back. */
  public Optional<Money> left() {
    return agreed().map(offer -> offer.total().minus(paidTogether().orElseThrow()));
  }

  /** The payments of the accepted quote, what was changed since with the last of them. */
  public List<Offer.Payment> payments() {
    if (accepted().isEmpty()) {
      return List.of();
    }
    Offer quote = accepted().get().offer();
    List<Offer.Payment> payments = new ArrayList<>(quote.payments());
    for (OfferDifference change : changeDifferences()) {
      if (!change.total().isZero()) {
        payments.add(
            new Offer.Payment(
                "change order " + change.after().name(job.number()) + ", on delivery",
                change.total()));
      }
    }
    return payments;
  }

  /** The first payment that is not wholly paid, with what is missing of it. */
  public Optional<Offer.Payment> next() {
    if (agreed().isEmpty() || left().orElseThrow().amount().signum() <= 0) {
      return Optional.empty();
    }
    Money covered = paidTogether().orElseThrow();
    for (Offer.Payment payment : payments()) {
      if (payment.amount().amount().signum() > 0 && covered.compareTo(payment.amount()) < 0) {
        Money missing = payment.amount().minus(covered);
        Money left = left().orElseThrow();
        return Optional.of(
            new Offer.Payment(payment.at(), missing.compareTo(left) > 0 ? left : missing));
      }
      covered = covered.minus(payment.amount());
    }
    return Optional.empty();
  }

  /**
   * A stage as it stands.
   *
   * @param title what is done by then
   * @param promised the day that counts; empty if none was promised
   * @param moved how often the promise was moved
   * @param done the day on which it was done
   */
  public record StageState(
      String title, Optional<LocalDate> promised, int moved, Optional<LocalDate> done) {
    /** How many days later than promised it was done, or is on this day; 0 or less if in time. */
    public long daysLate(LocalDate today) {
      return promised.map(day -> day.until(done.orElse(today), ChronoUnit.DAYS)).orElse(0L);
    }
  }

  /** The stages in the order in which they were first named. */
  public List<StageState> stages() {
    Map<String, StageState> byTitle = new LinkedHashMap<>();
    for (JobBook.Stage one : said) {
      StageState before =
          byTitle.getOrDefault(
              one.title(), new StageState(one.title(), Optional.empty(), -1, Optional.empty()));
      byTitle.put(
          one.title(),
          one.word() == JobBook.StageWord.PROMISED
              ? new StageState(one.title(), Optional.of(one.day()), before.moved + 1, before.done)
              : new StageState(one.title(), before.promised, before.moved, Optional.of(one.day())));
    }
    return List.copyOf(byTitle.values());
  }

  /** How far the job is, in a word or two. */
  public String state() {
    if (invoice.isPresent()) {
      return left().map(Money::isZero).orElse(false) ? "paid" : "invoiced";
    }
    if (closed.isPresent()) {
      return "closed";
    }
    if (accepted().isPresent()) {
      return openChange().isPresent() ? "change order open" : "ordered";
    }
    return latestQuote().isPresent() ? "quoted" : "taken back";
  }
}
