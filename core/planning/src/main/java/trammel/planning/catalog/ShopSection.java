package trammel.planning.catalog;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.planning.job.TermFields;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.reading.tree.Problems;
import trammel.trade.labour.LabourPlan;
import trammel.trade.money.Contingency;
import trammel.trade.money.LabourRate;
import trammel.trade.money.PriceTerms;
import trammel.trade.money.Rounding;
import trammel.trade.money.SalesTax;

/** The section {@code shop}: whose catalog it is and the shop's usual terms. */
final class ShopSection extends CatalogSection {
  private static final Field<String> NAME = Field.text("name", "name on the documents", 90);
  private static final Field<String> STOCK =
      Field.choice(
              StandardStock.KEY,
              "by which sizes bolts, joints, tube, plate and springs of the standard catalog are",
              StandardStock.words())
          .withDefault(StandardStock.INCH.word());
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
      Field.money("overhead_rate", "rent, power and tools of an hour");
  private static final String IN_RATE = "in-rate";
  private static final Field<String> OVERHEAD =
      Field.choice(
          "overhead",
          "whether labour_rate has the overhead in it, or it is billed on top",
          List.of(IN_RATE, "on-top"));
  private static final Field<BigDecimal> WAGE_RATE =
      Field.money("wage_rate", "what an hour is paid: wage, taxes and insurance");
  private static final Field<Integer> CONTINGENCY = TermFields.CONTINGENCY.optional();
  private static final Field<String> PACK_RESTS =
      Field.choice(
              "pack_rests",
              "whether a job pays for whole spools and boxes, or for what it uses of them",
              List.of("billed", "kept"))
          .withDefault("billed");
  private static final Field<String> ROUNDING =
      Field.choice("rounding", "where half a coin goes", List.of("half-up", "half-even"))
          .withDefault("half-up");
  private static final Field<BigDecimal> CASH_ROUNDING =
      Field.money("cash_rounding", "the total is a whole number of these, such as 0.05").optional();
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
            STOCK,
            ADDRESS,
            PHONE,
            LICENCE,
            LOGO,
            LABOUR_RATE,
            OVERHEAD_RATE,
            OVERHEAD,
            WAGE_RATE,
            TermFields.MARKUP,
            TermFields.SUPPLIES,
            CONTINGENCY,
            TermFields.FLAT_CONTINGENCY,
            PACK_RESTS,
            ROUNDING,
            CASH_ROUNDING,
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

  /** A rate on the door says nothing until it is known whether it has the overhead in it. */
  @Override
  void checkChange(CatalogEntry later, Problems problems) {
    boolean rate = later.node().find(LABOUR_RATE.key()).isPresent();
    if (rate && later.node().find(OVERHEAD.key()).isEmpty()) {
      problems.error(
          later.location().inside(OVERHEAD.key()),
          "labour_rate alone",
          "labour_rate together with overhead: " + IN_RATE + " or on-top",
          "Does the rate have rent, power and tools in it? Add overhead: "
              + IN_RATE
              + " if it does, or overhead: on-top with the overhead_rate that is billed besides.");
    }
  }

  /** What a later file writes in place of an earlier one's other way to say it. */
  @Override
  Map<String, String> rivals() {
    Map<String, String> rivals = new HashMap<>();
    rivals.put(CONTINGENCY.key(), TermFields.FLAT_CONTINGENCY.key());
    rivals.put(TermFields.FLAT_CONTINGENCY.key(), CONTINGENCY.key());
    for (String key : List.of("parts", "steel", "outside")) {
      rivals.put(key, key + TermFields.MARGIN);
      rivals.put(key + TermFields.MARGIN, key);
    }
    return rivals;
  }

  @Override
  void add(CatalogEntry entry, FieldValues values, CatalogAssembly assembly) {
    TermFields.refuseBoth(values.get(TermFields.MARKUP), assembly.problems);
    TermFields.refuseTwoContingencies(values, CONTINGENCY, assembly.problems);
    PriceTerms terms =
        new PriceTerms(
            assembly.currency,
            new LabourRate(
                values.get(LABOUR_RATE),
                values.get(OVERHEAD_RATE),
                values.get(OVERHEAD).equals(IN_RATE),
                values.get(WAGE_RATE)),
            TermFields.markupsOf(values.get(TermFields.MARKUP)),
            // Whole sticks and sheets are priced, so nothing is cut away that was not paid for.
            BigDecimal.ZERO,
            values.get(TermFields.SUPPLIES),
            TermFields.contingencyOf(values, CONTINGENCY).orElse(new Contingency.None()),
            assembly.shares(),
            Shop.tax(TermFields.taxOf(values.get(TAX)), SalesTax.USUAL_NAME),
            values.get(TermFields.DEPOSIT),
            TermFields.progressOf(values),
            values.get(VALID_DAYS),
            new Rounding(
                values.get(ROUNDING).equals("half-even")
                    ? RoundingMode.HALF_EVEN
                    : RoundingMode.HALF_UP,
                values.find(CASH_ROUNDING)));
    assembly.shop =
        Optional.of(
            new Shop(
                letterhead(values, assembly),
                terms,
                new LabourPlan(values.get(HANDS), values.get(BAYS), values.get(DAY_HOURS)),
                values.get(PRICE_DAYS),
                values.get(HOURS_CORRELATION),
                values.get(PACK_RESTS).equals("billed"),
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
