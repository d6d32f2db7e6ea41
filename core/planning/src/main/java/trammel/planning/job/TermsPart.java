package trammel.planning.job;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import trammel.planning.document.Problems;
import trammel.planning.fields.Field;
import trammel.planning.fields.FieldValues;
import trammel.planning.money.ProgressPayment;

/** The part {@code terms} of a job file; what it leaves out is the shop's usual term. */
final class TermsPart {
  private static final Field<BigDecimal> LABOUR_RATE =
      Field.money("labour_rate", "price of an hour").optional();
  private static final Field<BigDecimal> OVERHEAD_RATE =
      Field.money("overhead_rate", "overhead of an hour").optional();

  private static final Field<BigDecimal> PARTS_MARKUP =
      Field.exactPercent("parts", "markup on bought parts", 0, 3).optional();
  private static final Field<BigDecimal> STEEL_MARKUP =
      Field.exactPercent("steel", "markup on steel", 0, 3).optional();
  private static final Field<BigDecimal> OUTSIDE_MARKUP =
      Field.exactPercent("outside", "markup on outside work", 0, 3).optional();
  private static final Field<FieldValues> MARKUP =
      Field.section(
          "markup", "markups on cost", List.of(PARTS_MARKUP, STEEL_MARKUP, OUTSIDE_MARKUP));

  private static final Field<BigDecimal> SUPPLIES =
      Field.exactPercent("supplies", "shop supplies in proportion to labour", 0, 1).optional();
  private static final Field<Integer> CONTINGENCY =
      Field.count("contingency", "percentile of the hours that the price covers", 50, 95)
          .optional();

  private static final Field<BigDecimal> TAX_RATE =
      Field.exactPercent("rate", "rate of the tax", 0, 0.5);
  private static final Field<List<String>> TAXABLE =
      Field.choices(
          "taxable", "what is taxable", List.of("parts", "steel", "supplies", "labour", "outside"));
  private static final Field<String> TAX_BY =
      Field.choice("by", "where the tax is rounded", List.of("invoice", "item"));
  private static final Field<FieldValues> TAX =
      Field.section("tax", "tax on the quote", List.of(TAX_RATE, TAXABLE, TAX_BY)).optional();

  private static final Field<BigDecimal> DEPOSIT =
      Field.exactPercent("deposit", "deposit in proportion to the price", 0, 1).optional();
  private static final Field<String> PROGRESS_AT =
      Field.text("at", "what the payment is due at, such as bars and brackets tacked", 90);
  private static final Field<BigDecimal> PROGRESS_SHARE =
      Field.exactPercent("share", "its share of the price", 0, 1);
  private static final Field<List<FieldValues>> PROGRESS =
      Field.sections(
              "progress",
              "payments between deposit and balance, in order",
              List.of(PROGRESS_AT, PROGRESS_SHARE))
          .optional();
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
              MARKUP,
              SUPPLIES,
              CONTINGENCY,
              TAX,
              DEPOSIT,
              PROGRESS,
              VALID_DAYS,
              START,
              CURRENCY,
              HOURS,
              LIMITS));

  private TermsPart() {}

  private static Field<Double> factor(String key, String of) {
    return Field.number(key, "factor on the hours for " + of, 0.5, 4).optional();
  }

  static Terms of(FieldValues values) {
    FieldValues markup = values.get(MARKUP);
    FieldValues hours = values.get(HOURS);
    Optional<FieldValues> tax = values.find(TAX);
    return new Terms(
        values.find(LABOUR_RATE),
        values.find(OVERHEAD_RATE),
        markup.find(PARTS_MARKUP),
        markup.find(STEEL_MARKUP),
        markup.find(OUTSIDE_MARKUP),
        values.find(SUPPLIES),
        values.find(CONTINGENCY),
        tax.isPresent() ? Optional.of(tax(tax.get())) : Optional.empty(),
        values.find(DEPOSIT),
        progress(values),
        values.find(VALID_DAYS),
        values.find(START),
        values.find(CURRENCY),
        hours.find(RUST),
        hours.find(ACCESS),
        hours.find(FINISH),
        limits(values.find(LIMITS).orElse(List.of())));
  }

  private static Optional<List<ProgressPayment>> progress(FieldValues values) {
    if (values.find(PROGRESS).isEmpty()) {
      return Optional.empty();
    }
    List<ProgressPayment> payments = new ArrayList<>();
    for (FieldValues payment : values.get(PROGRESS)) {
      payments.add(new ProgressPayment(payment.get(PROGRESS_AT), payment.get(PROGRESS_SHARE)));
    }
    return Optional.of(payments);
  }

  private static Tax tax(FieldValues values) {
    return new Tax(values.get(TAX_RATE), values.get(TAXABLE), values.get(TAX_BY).equals("item"));
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
    BigDecimal sum = values.find(DEPOSIT).orElse(BigDecimal.ZERO);
    for (FieldValues payment : values.find(PROGRESS).orElse(List.of())) {
      sum = sum.add(payment.find(PROGRESS_SHARE).orElse(BigDecimal.ZERO));
    }
    if (sum.compareTo(BigDecimal.ONE) > 0) {
      problems.error(
          values.locationOf(PROGRESS),
          "deposit and payments of "
              + sum.movePointRight(2).stripTrailingZeros().toPlainString()
              + " % together",
          "100 % of the price at most",
          "Make one of them smaller; what is left is the balance.");
    }
  }
}
