package trammel.planning.job;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.tree.Problems;
import trammel.trade.money.ProgressPayment;

/** The part {@code terms} of a job file; what it leaves out is the shop's usual term. */
final class TermsPart {
  private static final Field<BigDecimal> LABOUR_RATE =
      Field.money("labour_rate", "price of an hour").optional();
  private static final Field<BigDecimal> OVERHEAD_RATE =
      Field.money("overhead_rate", "overhead of an hour").optional();

  private static final Field<BigDecimal> SUPPLIES = TermFields.SUPPLIES.optional();
  private static final Field<Integer> CONTINGENCY = TermFields.CONTINGENCY.optional();
  private static final Field<FieldValues> TAX = TermFields.tax("tax on the quote").optional();
  private static final Field<BigDecimal> DEPOSIT = TermFields.DEPOSIT.optional();
  private static final Field<Integer> VALID_DAYS =
      Field.count("valid_days", "how many days the quote is good for", 1, 365).optional();
  private static final Field<LocalDate> START =
      Field.date("start", "day on which the work is to start; orders are held against it")
          .optional();
  private static final Field<Currency> CURRENCY =
      Field.currency("currency", "currency of all money").optional();

  private static final Field<Double> RUST = factor("rust", "rust");
  private static final Field<Double> ACCESS = factor("access", "access");
  private static final Field<Double> FINISH = factor("finish", "finish");
  private static final Field<FieldValues> HOURS =
      Field.section("hours", "factors on the hours", List.of(RUST, ACCESS, FINISH));

  private static final Field<String> CHECK = Field.text("check", "id of the check", 60);
  private static final Field<String> GOOD =
      Field.text("good", "limit of good for this job", 80).optional();
  private static final Field<String> STOP =
      Field.text("stop", "limit of stop for this job", 80).optional();
  private static final Field<String> REASON = Field.text("reason", "why this job may differ", 300);
  private static final Field<List<FieldValues>> LIMITS =
      Field.sections(
              "limits", "limits of checks that this job moves", List.of(CHECK, GOOD, STOP, REASON))
          .optional();

  static final Field<FieldValues> FIELD =
      Field.section(
          "terms",
          "what this job does differently from the shop's usual terms",
          List.of(
              LABOUR_RATE,
              OVERHEAD_RATE,
              TermFields.MARKUP,
              SUPPLIES,
              CONTINGENCY,
              TermFields.FLAT_CONTINGENCY,
              TAX,
              DEPOSIT,
              TermFields.PROGRESS,
              VALID_DAYS,
              START,
              CURRENCY,
              HOURS,
              LIMITS,
              ExtrasPart.FIELD,
              ExtrasPart.LEFT_OUT));

  private TermsPart() {}

  private static Field<Double> factor(String key, String of) {
    return Field.number(key, "factor on the hours for " + of, 0.5, 4).optional();
  }

  static Terms of(FieldValues values) {
    FieldValues hours = values.get(HOURS);
    Optional<FieldValues> tax = values.find(TAX);
    return new Terms(
        values.find(LABOUR_RATE),
        values.find(OVERHEAD_RATE),
        TermFields.markupsOf(values.get(TermFields.MARKUP)),
        values.find(SUPPLIES),
        TermFields.contingencyOf(values, CONTINGENCY),
        tax.isPresent() ? Optional.of(TermFields.taxOf(tax.get())) : Optional.empty(),
        values.find(DEPOSIT),
        progress(values),
        values.find(VALID_DAYS),
        values.find(START),
        values.find(CURRENCY),
        hours.find(RUST),
        hours.find(ACCESS),
        hours.find(FINISH),
        limits(values.find(LIMITS).orElse(List.of())),
        ExtrasPart.of(values),
        ExtrasPart.leftOut(values));
  }

  private static Optional<List<ProgressPayment>> progress(FieldValues values) {
    return values.find(TermFields.PROGRESS).isEmpty()
        ? Optional.empty()
        : Optional.of(TermFields.progressOf(values));
  }

  private static List<LimitOverride> limits(List<FieldValues> all) {
    List<LimitOverride> limits = new ArrayList<>(all.size());
    for (FieldValues values : all) {
      limits.add(
          new LimitOverride(
              values.get(CHECK),
              values.find(GOOD),
              values.find(STOP),
              values.get(REASON),
              values.location()));
    }
    return limits;
  }

  static void check(FieldValues values, Problems problems) {
    checkPayments(values, problems);
    values.find(TermFields.MARKUP).ifPresent(it -> TermFields.refuseBoth(it, problems));
    TermFields.refuseTwoContingencies(values, CONTINGENCY, problems);
    ExtrasPart.check(values, problems);
    for (FieldValues limit : values.find(LIMITS).orElse(List.of())) {
      if (!limit.isWritten(GOOD) && !limit.isWritten(STOP)) {
        problems.error(
            limit.locationOf(GOOD),
            "neither good nor stop",
            "at least one of good and stop",
            "Add the limit that this job moves, such as good: 3 deg.");
      }
    }
  }

  private static void checkPayments(FieldValues values, Problems problems) {
    BigDecimal sum = TermFields.paidBeforeTheEnd(values, DEPOSIT);
    if (sum.compareTo(BigDecimal.ONE) > 0) {
      problems.error(
          values.locationOf(TermFields.PROGRESS),
          "deposit and payments of " + QuantityPrinter.percent(sum) + " together",
          "100 % of the price at most",
          "Make one of them smaller; what is left is the balance.");
    }
  }
}
