package trammel.app.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import trammel.ledger.JobBook;
import trammel.ledger.Offer;
import trammel.trade.money.Money;

/** Money of a job from quote to paid; all amounts are invented and added up by hand. */
class CourseTest {
  private static final LocalDate DAY = LocalDate.of(2026, 12, 1);

  private static Money dollars(String amount) {
    return Money.of(amount, "USD");
  }

  private static Offer offer(Offer.Kind kind, int count, String tax, Offer.Line... lines) {
    return new Offer(
        kind,
        count,
        DAY,
        "",
        List.of(lines),
        "sales tax",
        dollars(tax),
        dollars("0"),
        10,
        12,
        List.of(
            new Offer.Payment("deposit with the order", dollars("500")),
            new Offer.Payment("balance on delivery", dollars("573.15"))));
  }

  private static Offer.Line line(String key, String quantity, String price) {
    return new Offer.Line(key, key, "parts", quantity, dollars(price));
  }

  private static final Offer QUOTE =
      offer(
          Offer.Kind.QUOTE, 1, "73.15", line("shock", "2 each", "400"), line("work", "6 h", "600"));
  private static final Offer CHANGE =
      offer(
          Offer.Kind.CHANGE,
          1,
          "80.03",
          line("shock", "4 each", "800"),
          line("paint", "1 job", "95.50"));

  private static Course course(List<JobBook.Paid> paid, Offer... changes) {
    List<Offer.Kept> kept = new ArrayList<>();
    kept.add(new Offer.Kept(QUOTE, Optional.of(DAY), Optional.empty()));
    for (Offer change : changes) {
      kept.add(new Offer.Kept(change, Optional.of(DAY), Optional.empty()));
    }
    return new Course(
        new JobBook.Heading("D-1", "x", "y"),
        kept,
        paid,
        List.of(),
        List.of(),
        List.of(),
        Optional.empty(),
        Optional.empty());
  }

  private static JobBook.Paid paid(String amount) {
    return new JobBook.Paid(DAY, dollars(amount), "");
  }

  /** 400 became 800, 600 went, 95.50 came: -104.50 before tax; tax 80.03 - 73.15 = 6.88. */
  @Test
  void aChangeOrderIsWhatIsOtherLineByLine() {
    OfferDifference difference = OfferDifference.of(QUOTE, CHANGE);
    assertEquals(
        List.of("shock", "work", "paint"),
        difference.rows().stream().map(OfferDifference.Row::key).toList());
    assertEquals(dollars("400"), difference.rows().get(0).difference());
    assertEquals(dollars("-600"), difference.rows().get(1).difference());
    assertEquals(dollars("95.50"), difference.rows().get(2).difference());
    assertEquals(dollars("-104.50"), difference.subtotal());
    assertEquals(dollars("-97.62"), difference.total());
  }

  /**
   * Four shocks at the price of two are told; a contingency and a tax that stay the same are not.
   */
  @Test
  void whatStaysTheSameIsNoLineOfADifference() {
    Offer before =
        offer(
            Offer.Kind.QUOTE,
            1,
            "73.15",
            line("shock", "2 each", "400"),
            line("contingency", "8.0 h", "100"),
            line("paint", "1 job", "95.50"));
    Offer after =
        offer(
            Offer.Kind.QUOTE,
            2,
            "73.15",
            line("shock", "4 each", "400"),
            line("contingency", "8.2 h", "100"),
            line("paint", "1 job", "96"));
    assertEquals(
        """
                                    before      now  difference
          shock, 2 each to 4 each  $400.00  $400.00       $0.00
          paint, 1 job              $95.50   $96.00      +$0.50
          TOTAL with tax           $668.65  $669.15      +$0.50
        """,
        CourseText.difference(OfferDifference.of(before, after)));
  }

  /** Of 1,073.15 are 500 the deposit: 450 paid leave 50 of it; 600 paid leave 473.15. */
  @Test
  void paymentsFillTheAgreedOnesInTheirOrder() {
    assertEquals(
        Optional.of(new Offer.Payment("deposit with the order", dollars("50"))),
        course(List.of(paid("450"))).next());
    assertEquals(
        Optional.of(new Offer.Payment("balance on delivery", dollars("473.15"))),
        course(List.of(paid("450"), paid("150"))).next());
    assertEquals(Optional.empty(), course(List.of(paid("1073.15"))).next());
    assertEquals(
        Optional.of(dollars("-26.85")), course(List.of(paid("1200"), paid("-100"))).left());
  }

  /** 1,073.15 less 97.62 is 975.53; after 500 are 475.53 left, and no more is asked for. */
  @Test
  void aChangeThatMakesItCheaperIsNotAskedForTwice() {
    Course course = course(List.of(paid("500")), CHANGE);
    assertEquals(Optional.of(dollars("475.53")), course.left());
    assertEquals(
        Optional.of(new Offer.Payment("balance on delivery", dollars("475.53"))), course.next());
  }

  /** Whatever the lines: their differences, that of the tax and the rounding make the total's. */
  @Test
  void differencesAddUpToTheCoin() {
    for (int seed = 0; seed < 200; seed++) {
      Random random = new Random(seed);
      OfferDifference difference =
          OfferDifference.of(drawn(random, Offer.Kind.QUOTE), drawn(random, Offer.Kind.CHANGE));
      Money sum = difference.tax().plus(difference.rounding());
      for (OfferDifference.Row row : difference.rows()) {
        sum = sum.plus(row.difference());
      }
      assertEquals(difference.total(), sum, "seed " + seed);
    }
  }

  private static Offer drawn(Random random, Offer.Kind kind) {
    List<Offer.Line> lines = new ArrayList<>();
    int count = 1 + random.nextInt(20);
    for (int i = 0; i < count; i++) {
      lines.add(line("k" + random.nextInt(8), "1", cents(random)));
    }
    return offer(kind, 1, cents(random), lines.toArray(Offer.Line[]::new));
  }

  private static String cents(Random random) {
    return BigDecimal.valueOf(random.nextInt(2_000_000) - 200_000, 2).toPlainString();
  }

  @Test
  void aPromiseThatIsMovedCountsAsMoved() {
    Course course =
        new Course(
            new JobBook.Heading("D-1", "x", "y"),
            List.of(),
            List.of(),
            List.of(
                stage(JobBook.StageWord.PROMISED, DAY),
                stage(JobBook.StageWord.PROMISED, DAY.plusDays(3)),
                stage(JobBook.StageWord.DONE, DAY.plusDays(4))),
            List.of(),
            List.of(),
            Optional.empty(),
            Optional.empty());
    Course.StageState state = course.stages().get(0);
    assertEquals(1, state.moved());
    assertEquals(Optional.of(DAY.plusDays(3)), state.promised());
    assertEquals(1, state.daysLate(DAY.plusDays(30)));
  }

  private static JobBook.Stage stage(JobBook.StageWord word, LocalDate day) {
    return new JobBook.Stage("on its wheels", word, day, "");
  }
}
