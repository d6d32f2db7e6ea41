package trammel.ledger;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.planning.fitup.TackVerdict;
import trammel.planning.learning.ClosedJob;
import trammel.planning.learning.ClosedOperation;
import trammel.planning.rack.Rack;
import trammel.trade.money.Money;

/** Invented jobs and racks. */
final class Samples {
  static final Rack RACK =
      new Rack(
          List.of(
              new Rack.Stick("R1", "dom-1.50x0.120", 800.1),
              new Rack.Stick("=long, \"one\"", "dom-1.50x0.120", 2600)),
          List.of(new Rack.Drop("D1", "plate-0.250", 508, 609.6)),
          List.of(
              new Rack.Bin("bolt-0.500-20", 88.9, new BigDecimal("3")),
              new Rack.Bin("jam-nut-0.750-16", 0, new BigDecimal("12.50"))));

  private Samples() {}

  /** A job with the hours of one operation and of the whole. */
  static ClosedJob job(String number) {
    return new ClosedJob(
        number,
        LocalDate.of(2026, 11, 28),
        113.3,
        126.24,
        List.of(
            new ClosedOperation("fit-frame-bracket", 5.1, 0.9, OptionalDouble.of(6.25)),
            new ClosedOperation("make-bar", 2.7, 0.4, OptionalDouble.empty())),
        OptionalDouble.of(140.5));
  }

  /** A job of which only single operations were written down. */
  static ClosedJob jobInParts(String number) {
    ClosedJob job = job(number);
    return new ClosedJob(
        number,
        job.closed(),
        job.quotedHours(),
        job.quotedEightOfTen(),
        job.operations(),
        OptionalDouble.empty());
  }

  /** What a stick of 12 ft costs now; it was 110.50. */
  static PriceHistory.Change price(String now) {
    return new PriceHistory.Change(
        "dom-1.50x0.120",
        3657.6,
        0,
        PriceHistory.Of.ONE,
        1,
        Optional.of(new BigDecimal("110.50")),
        new BigDecimal(now),
        "USD",
        LocalDate.of(2026, 12, 1),
        "list of the steel yard");
  }

  /** One bracket read twice, 1/16 in high, and the angle of the pinion. */
  static Tacking tacking(String job) {
    return new Tacking(
        job,
        1,
        LocalDate.of(2026, 12, 2),
        "1A2B-3C4D",
        TackVerdict.RE_SET,
        List.of("a bracket is out of place", "move the bracket of lower-left 1/16 in down"),
        List.of(
            new Tacking.Reading(
                "lower-left.frame.up", Tacking.Kind.LENGTH, 457.2, 1.5875, List.of(458.8, 458.7)),
            new Tacking.Reading("pinion", Tacking.Kind.ANGLE, 0.035, 0.0087, List.of(0.0361))));
  }

  static final JobBook.Heading HEADING =
      new JobBook.Heading("D-101", "Invented Customer", "pickup (invented)");

  /** An offer of two lines: 693.77 and 12,892.95 before tax of 50.30; 13,637.02 with it. */
  static Offer offer(Offer.Kind kind, int count) {
    return new Offer(
        kind,
        count,
        LocalDate.of(2026, 11, 25),
        "the customer asked",
        List.of(
            new Offer.Line("steel", "tube", "steel", "20 ft", Money.of("693.77", "USD")),
            new Offer.Line("work", "work", "labour", "122.8 h", Money.of("12892.95", "USD"))),
        "sales tax",
        Money.of("50.30", "USD"),
        Money.of("0", "USD"),
        122.8,
        136.8,
        List.of(
            new Offer.Payment("deposit with the order", Money.of("6818.51", "USD")),
            new Offer.Payment("balance on delivery", Money.of("6818.51", "USD"))));
  }
}
