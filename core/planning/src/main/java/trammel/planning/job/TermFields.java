package trammel.planning.job;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.reading.tree.Problems;
import trammel.trade.money.Contingency;
import trammel.trade.money.CostClass;
import trammel.trade.money.Markup;
import trammel.trade.money.ProgressPayment;

/**
 * The fields that a job's terms and the shop's usual ones have in common, and how they are read.
 */
public final class TermFields {
  /** What is added to a margin's key to tell it from the markup of the same class. */
  public static final String MARGIN = "_margin";

  private static final List<MarkedClass> MARKED =
      List.of(
          new MarkedClass(CostClass.PARTS, "parts", "bought parts"),
          new MarkedClass(CostClass.STEEL, "steel", "steel"),
          new MarkedClass(CostClass.OUTSIDE, "outside", "outside work"));

  /** A class of cost that carries a markup or a margin, with the two fields of it. */
  private record MarkedClass(
      CostClass costClass, String key, Field<BigDecimal> markup, Field<BigDecimal> margin) {
    MarkedClass(CostClass costClass, String key, String of) {
      this(
          costClass,
          key,
          Field.exactPercent(key, "markup on " + of + ", of its cost", 0, 3).optional(),
          Field.exactPercent(
                  key + MARGIN,
                  "in place of the markup, margin on " + of + ", of its price",
                  0,
                  0.9)
              .optional());
    }
  }

  /** Markups and margins. */
  public static final Field<FieldValues> MARKUP =
      Field.section("markup", "markups on cost, or margins of the price", markupFields());

  /** Shop supplies. */
  public static final Field<BigDecimal> SUPPLIES =
      Field.exactPercent("supplies", "shop supplies in proportion to labour", 0, 1);

  /** Percentile of the hours. */
  public static final Field<Integer> CONTINGENCY =
      Field.count("contingency", "percentile of the hours that the price covers", 50, 95);

  /** Part of labour in place of the percentile. */
  public static final Field<BigDecimal> FLAT_CONTINGENCY =
      Field.exactPercent(
              "contingency_flat",
              "in place of the percentile, a flat part of labour for what takes longer; 0 % for none",
              0,
              1)
          .optional();

  /** Deposit. */
  public static final Field<BigDecimal> DEPOSIT =
      Field.exactPercent("deposit", "deposit in proportion to the price", 0, 1);

  private static final List<String> TAXABLE_WORDS =
      List.of("parts", "steel", "supplies", "labour", "outside", "freight", "fees");
  private static final Field<String> TAX_NAME =
      Field.text("name", "what the tax is called on the shop's papers", 40).optional();
  private static final Field<BigDecimal> TAX_RATE =
      Field.exactPercent("rate", "rate of the tax", 0, 0.5);
  private static final Field<List<String>> TAXABLE =
      Field.choices("taxable", "what is taxable", TAXABLE_WORDS);
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

  private static List<Field<?>> markupFields() {
    List<Field<?>> fields = new ArrayList<>();
    for (MarkedClass marked : MARKED) {
      fields.add(marked.markup());
      fields.add(marked.margin());
    }
    return fields;
  }

  /** The markups that a section {@code markup} gives, by class; a margin is turned into one. */
  public static Map<CostClass, Markup> markupsOf(FieldValues markup) {
    Map<CostClass, Markup> markups = new EnumMap<>(CostClass.class);
    for (MarkedClass marked : MARKED) {
      markup.find(marked.markup()).ifPresent(it -> markups.put(marked.costClass(), new Markup(it)));
      markup
          .find(marked.margin())
          .ifPresent(it -> markups.put(marked.costClass(), Markup.ofMargin(it)));
    }
    return markups;
  }

  /** Reports a class that has both a markup and a margin. */
  public static void refuseBoth(FieldValues markup, Problems problems) {
    for (MarkedClass marked : MARKED) {
      if (markup.isWritten(marked.markup()) && markup.isWritten(marked.margin())) {
        problems.error(
            markup.locationOf(marked.margin()),
            "both " + marked.key() + " and " + marked.key() + MARGIN,
            "a markup on cost or a margin of the price",
            "Take one of the two out.");
      }
    }
  }

  /** The contingency that values give; empty where they say nothing of it. */
  public static Optional<Contingency> contingencyOf(FieldValues values, Field<Integer> percentile) {
    Optional<Contingency> flat =
        values
            .find(FLAT_CONTINGENCY)
            .map(
                part ->
                    part.signum() == 0
                        ? new Contingency.None()
                        : new Contingency.PartOfLabour(part));
    return flat.isPresent()
        ? flat
        : values.find(percentile).map(it -> new Contingency.HoursToChance(it / 100.0));
  }

  /** Reports a contingency that is both a percentile and a flat part of labour. */
  public static void refuseTwoContingencies(
      FieldValues values, Field<Integer> percentile, Problems problems) {
    if (values.isWritten(percentile) && values.isWritten(FLAT_CONTINGENCY)) {
      problems.error(
          values.locationOf(FLAT_CONTINGENCY),
          "both contingency and contingency_flat",
          "a percentile of the hours or a flat part of labour",
          "Take one of the two out.");
    }
  }

  /** The section {@code tax} with a description of its own. */
  public static Field<FieldValues> tax(String meaning) {
    return Field.section("tax", meaning, List.of(TAX_NAME, TAX_RATE, TAXABLE, TAX_BY));
  }

  /** The tax that a section {@code tax} gives. */
  public static Tax taxOf(FieldValues tax) {
    return new Tax(
        tax.find(TAX_NAME), tax.get(TAX_RATE), tax.get(TAXABLE), tax.get(TAX_BY).equals("item"));
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
