package trammel.planning.catalog;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.planning.fields.Field;
import trammel.planning.fields.FieldValues;
import trammel.planning.job.Tax;
import trammel.planning.labour.LabourPlan;
import trammel.planning.money.CostClass;
import trammel.planning.money.Markup;
import trammel.planning.money.PriceTerms;
import trammel.planning.money.ProgressPayment;

/** The section {@code shop}: whose catalog it is and the shop's usual terms. */
final class ShopSection extends CatalogSection {
  private static final Field<String> NAME = Field.text("name", "name on the documents", 90);
  private static final Field<BigDecimal> LABOUR_RATE =
      Field.money("labour_rate", "price of an hour");
  private static final Field<BigDecimal> OVERHEAD_RATE =
      Field.money("overhead_rate", "overhead of an hour on top; 0 when the rate has it");

  private static final Field<BigDecimal> PARTS = markup("parts", "bought parts");
  private static final Field<BigDecimal> STEEL = markup("steel", "steel");
  private static final Field<BigDecimal> OUTSIDE = markup("outside", "outside work");
  private static final Field<FieldValues> MARKUP =
      Field.section("markup", "markups on cost", List.of(PARTS, STEEL, OUTSIDE));

  private static final Field<BigDecimal> SUPPLIES =
      Field.exactPercent("supplies", "shop supplies in proportion to labour", 0, 1);
  private static final Field<Integer> CONTINGENCY =
      Field.count("contingency", "percentile of the hours that the price covers", 50, 95);

  private static final Field<BigDecimal> TAX_RATE =
      Field.exactPercent("rate", "rate of the tax", 0, 0.5);
  private static final Field<List<String>> TAXABLE =
      Field.choices(
          "taxable", "what is taxable", List.of("parts", "steel", "supplies", "labour", "outside"));
  private static final Field<String> TAX_BY =
      Field.choice("by", "where the tax is rounded", List.of("invoice", "item"));
  private static final Field<FieldValues> TAX =
      Field.section("tax", "tax on a quote", List.of(TAX_RATE, TAXABLE, TAX_BY));

  private static final Field<BigDecimal> DEPOSIT =
      Field.exactPercent("deposit", "deposit in proportion to the price", 0, 1);
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
      Field.count("valid_days", "how many days a quote is good for", 1, 365);
  private static final Field<Integer> HANDS =
      Field.count("hands", "how many work on vehicles", 1, 1000).withDefault(1);
  private static final Field<Integer> BAYS =
      Field.count("bays", "how many vehicles have room", 1, 1000).withDefault(1);
  private static final Field<Double> DAY_HOURS =
      Field.timeHours("day_hours", "hours that one works on vehicles in a day", 0.5, 24)
          .withDefault(8.0);
  private static final Field<Integer> PRICE_DAYS =
      Field.count("price_days", "age in days from which prices are told to be old", 1, 3650)
          .withDefault(90);
  private static final Field<Double> HOURS_CORRELATION =
      Field.percent(
          "hours_correlation", "how much the hours of operations run over together", 0, 1);

  ShopSection() {
    super(
        "shop",
        "the shop and its usual terms",
        List.of(
            NAME,
            LABOUR_RATE,
            OVERHEAD_RATE,
            MARKUP,
            SUPPLIES,
            CONTINGENCY,
            TAX,
            DEPOSIT,
            PROGRESS,
            VALID_DAYS,
            HANDS,
            BAYS,
            DAY_HOURS,
            PRICE_DAYS,
            HOURS_CORRELATION));
  }

  private static Field<BigDecimal> markup(String key, String of) {
    return Field.exactPercent(key, "markup on " + of, 0, 3);
  }

  private static List<ProgressPayment> progress(FieldValues values) {
    List<ProgressPayment> payments = new ArrayList<>();
    for (FieldValues payment : values.find(PROGRESS).orElse(List.of())) {
      payments.add(new ProgressPayment(payment.get(PROGRESS_AT), payment.get(PROGRESS_SHARE)));
    }
    return payments;
  }

  @Override
  boolean isSingle() {
    return true;
  }

  @Override
  void add(CatalogEntry entry, FieldValues values, CatalogAssembly assembly) {
    FieldValues tax = values.get(TAX);
    FieldValues markup = values.get(MARKUP);
    Map<CostClass, Markup> markups = new EnumMap<>(CostClass.class);
    markups.put(CostClass.PARTS, new Markup(markup.get(PARTS)));
    markups.put(CostClass.STEEL, new Markup(markup.get(STEEL)));
    markups.put(CostClass.OUTSIDE, new Markup(markup.get(OUTSIDE)));
    PriceTerms terms =
        new PriceTerms(
            assembly.currency,
            values.get(LABOUR_RATE),
            values.get(OVERHEAD_RATE),
            markups,
            // Whole sticks and sheets are priced, so nothing is cut away that was not paid for.
            BigDecimal.ZERO,
            values.get(SUPPLIES),
            Shop.upTo(values.get(CONTINGENCY)),
            Shop.tax(new Tax(tax.get(TAX_RATE), tax.get(TAXABLE), tax.get(TAX_BY).equals("item"))),
            values.get(DEPOSIT),
            progress(values),
            values.get(VALID_DAYS));
    assembly.shop =
        Optional.of(
            new Shop(
                values.get(NAME),
                terms,
                new LabourPlan(values.get(HANDS), values.get(BAYS), values.get(DAY_HOURS)),
                values.get(PRICE_DAYS),
                values.get(HOURS_CORRELATION)));
  }
}
