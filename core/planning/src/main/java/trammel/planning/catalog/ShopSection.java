package trammel.planning.catalog;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.planning.job.TermFields;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.trade.labour.LabourPlan;
import trammel.trade.money.CostClass;
import trammel.trade.money.Markup;
import trammel.trade.money.PriceTerms;

/** The section {@code shop}: whose catalog it is and the shop's usual terms. */
final class ShopSection extends CatalogSection {
  private static final Field<String> NAME = Field.text("name", "name on the documents", 90);
  private static final Field<String> ADDRESS =
      Field.text("address", "address on the papers that leave the shop", 120).optional();
  private static final Field<String> PHONE =
      Field.text("phone", "phone number on the papers that leave the shop", 60).optional();
  private static final Field<String> LICENCE =
      Field.text("licence", "licence or registration that a quote must name, with its number", 120)
          .optional();
  private static final Field<String> LOGO =
      Field.text(
              "logo",
              "file with the shop's mark, PNG or JPEG, beside the catalog file that names it",
              200)
          .optional();
  private static final Field<Integer> START_DAYS =
      Field.count("start_days", "working days from the deposit until the work can begin", 0, 1000)
          .optional();
  private static final Field<String> WARRANTY =
      Field.note("warranty", "what the shop answers for and how long, printed on a quote", 600)
          .optional();
  private static final Field<String> CHANGE_RULE =
      Field.note(
              "change_rule",
              "how changes to the work are ordered, printed on a quote; left out, in writing with"
                  + " price and days before they are done",
              600)
          .optional();
  private static final Field<BigDecimal> LABOUR_RATE =
      Field.money("labour_rate", "price of an hour");
  private static final Field<BigDecimal> OVERHEAD_RATE =
      Field.money("overhead_rate", "overhead of an hour on top; 0 when the rate has it");

  private static final Field<FieldValues> MARKUP =
      Field.section(
          "markup",
          "markups on cost",
          List.of(TermFields.PARTS_MARKUP, TermFields.STEEL_MARKUP, TermFields.OUTSIDE_MARKUP));
  private static final Field<FieldValues> TAX = TermFields.tax("tax on a quote");
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
            ADDRESS,
            PHONE,
            LICENCE,
            LOGO,
            LABOUR_RATE,
            OVERHEAD_RATE,
            MARKUP,
            TermFields.SUPPLIES,
            TermFields.CONTINGENCY,
            TAX,
            TermFields.DEPOSIT,
            TermFields.PROGRESS,
            VALID_DAYS,
            START_DAYS,
            WARRANTY,
            CHANGE_RULE,
            HANDS,
            BAYS,
            DAY_HOURS,
            PRICE_DAYS,
            HOURS_CORRELATION));
  }

  @Override
  boolean isSingle() {
    return true;
  }

  @Override
  void add(CatalogEntry entry, FieldValues values, CatalogAssembly assembly) {
    FieldValues markup = values.get(MARKUP);
    Map<CostClass, Markup> markups = new EnumMap<>(CostClass.class);
    markups.put(CostClass.PARTS, new Markup(markup.get(TermFields.PARTS_MARKUP)));
    markups.put(CostClass.STEEL, new Markup(markup.get(TermFields.STEEL_MARKUP)));
    markups.put(CostClass.OUTSIDE, new Markup(markup.get(TermFields.OUTSIDE_MARKUP)));
    PriceTerms terms =
        new PriceTerms(
            assembly.currency,
            values.get(LABOUR_RATE),
            values.get(OVERHEAD_RATE),
            markups,
            // Whole sticks and sheets are priced, so nothing is cut away that was not paid for.
            BigDecimal.ZERO,
            values.get(TermFields.SUPPLIES),
            Shop.upTo(values.get(TermFields.CONTINGENCY)),
            Shop.tax(TermFields.taxOf(values.get(TAX))),
            values.get(TermFields.DEPOSIT),
            TermFields.progressOf(values),
            values.get(VALID_DAYS));
    assembly.shop =
        Optional.of(
            new Shop(
                letterhead(values, assembly),
                terms,
                new LabourPlan(values.get(HANDS), values.get(BAYS), values.get(DAY_HOURS)),
                values.get(PRICE_DAYS),
                values.get(HOURS_CORRELATION),
                new Promises(
                    values.find(START_DAYS), values.find(WARRANTY), values.find(CHANGE_RULE))));
  }

  private static Letterhead letterhead(FieldValues values, CatalogAssembly assembly) {
    return new Letterhead(
        values.get(NAME),
        values.find(ADDRESS),
        values.find(PHONE),
        values.find(LICENCE),
        values
            .find(LOGO)
            .flatMap(name -> LogoFile.of(name, values.locationOf(LOGO), assembly.problems)));
  }
}
