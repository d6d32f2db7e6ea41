package trammel.planning.job;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.trade.money.ProgressPayment;

/**
 * The fields that a job's terms and the shop's usual ones have in common, and how they are read.
 */
public final class TermFields {
  /** Markup on bought parts. */
  public static final Field<BigDecimal> PARTS_MARKUP = markup("parts", "bought parts");

  /** Markup on steel. */
  public static final Field<BigDecimal> STEEL_MARKUP = markup("steel", "steel");

  /** Markup on outside work. */
  public static final Field<BigDecimal> OUTSIDE_MARKUP = markup("outside", "outside work");

  /** Shop supplies. */
  public static final Field<BigDecimal> SUPPLIES =
      Field.exactPercent("supplies", "shop supplies in proportion to labour", 0, 1);

  /** Percentile of the hours. */
  public static final Field<Integer> CONTINGENCY =
      Field.count("contingency", "percentile of the hours that the price covers", 50, 95);

  /** Deposit. */
  public static final Field<BigDecimal> DEPOSIT =
      Field.exactPercent("deposit", "deposit in proportion to the price", 0, 1);

  private static final Field<BigDecimal> TAX_RATE =
      Field.exactPercent("rate", "rate of the tax", 0, 0.5);
  private static final Field<List<String>> TAXABLE =
      Field.choices(
          "taxable", "what is taxable", List.of("parts", "steel", "supplies", "labour", "outside"));
  private static final Field<String> TAX_BY =
      Field.choice("by", "where the tax is rounded", List.of("invoice", "item"));

  private static final Field<String> PROGRESS_AT =
      Field.text("at", "what the payment is due at, such as bars and brackets tacked", 90);
  private static final Field<BigDecimal> PROGRESS_SHARE =
      Field.exactPercent("share", "its share of the price", 0, 1);

  /** Payments between deposit and balance; may be left out. */
  public static final Field<List<FieldValues>> PROGRESS =
      Field.sections(
              "progress",
              "payments between deposit and balance, in order",
              List.of(PROGRESS_AT, PROGRESS_SHARE))
          .optional();

  private TermFields() {}

  private static Field<BigDecimal> markup(String key, String of) {
    return Field.exactPercent(key, "markup on " + of, 0, 3);
  }

  /** The section {@code tax} with a description of its own. */
  public static Field<FieldValues> tax(String meaning) {
    return Field.section("tax", meaning, List.of(TAX_RATE, TAXABLE, TAX_BY));
  }

  /** The tax that a section {@code tax} gives. */
  public static Tax taxOf(FieldValues tax) {
    return new Tax(tax.get(TAX_RATE), tax.get(TAXABLE), tax.get(TAX_BY).equals("item"));
  }

  /** The payments that the values give; none when they say nothing of them. */
  public static List<ProgressPayment> progressOf(FieldValues values) {
    List<ProgressPayment> payments = new ArrayList<>();
    for (FieldValues payment : values.find(PROGRESS).orElse(List.of())) {
      payments.add(new ProgressPayment(payment.get(PROGRESS_AT), payment.get(PROGRESS_SHARE)));
    }
    return payments;
  }

  /** Deposit and progress payments together, as far as they are written and can be read. */
  static BigDecimal paidBeforeTheEnd(FieldValues values, Field<BigDecimal> deposit) {
    BigDecimal sum = values.find(deposit).orElse(BigDecimal.ZERO);
    for (FieldValues payment : values.find(PROGRESS).orElse(List.of())) {
      sum = sum.add(payment.find(PROGRESS_SHARE).orElse(BigDecimal.ZERO));
    }
    return sum;
  }
}
