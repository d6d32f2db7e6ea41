package trammel.planning.figures;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Set;
import trammel.reading.fields.Field;
import trammel.trade.money.HourlyCost;
import trammel.trade.money.Markup;
import trammel.trade.money.Money;
import trammel.trade.money.Rounding;
import trammel.trade.money.SalesTax;

/** Money: exact decimals, never rounded on the way. */
final class MoneyFigures implements FigureGroup {
  private static final Field<BigDecimal> COST = Field.money("cost", "what it costs the shop");

  private static final Field<BigDecimal> MARKUP =
      Field.exactPercent("markup", "added to the cost", 0, 10);
  private static final Field<BigDecimal> MARGIN =
      Field.exactPercent("margin", "kept of the price", 0, 0.9);
  private static final Field<BigDecimal> NO_MARGIN = MARGIN.withDefault(BigDecimal.ZERO);
  private static final Field<Currency> CURRENCY =
      Field.currency("currency", "its cents are what is rounded to")
          .withDefault(Currency.getInstance("USD"));
  private static final Field<BigDecimal> WAGE = Field.money("wage", "wage of an hour");
  private static final Field<BigDecimal> BURDEN =
      Field.exactPercent("burden", "taxes and insurance on the wage", 0, 3);
  private static final Field<Integer> PAID =
      Field.count("paid_hours", "hours paid in a year", 1, 1_000_000).withDefault(2000);
  private static final Field<BigDecimal> BILLABLE =
      Field.exactPercent("billable", "share of them that can be billed", 0.01, 1);
  private static final Field<BigDecimal> OVERHEAD =
      Field.money("overhead", "rent, power, tools of a year");
  private static final Field<BigDecimal> RATE =
      Field.exactPercent("rate", "rate of the sales tax", 0, 1);
  private static final Field<String> AMOUNTS =
      Field.text("amounts", "taxable amounts with commas between them", 2000);
  private static final Field<String> ROUNDING =
      Field.choice("rounding", "where the tax is rounded", List.of("invoice", "item"))
          .withDefault("invoice");

  @Override
  public String title() {
    return "Money";
  }

  @Override
  public List<Figure> figures() {
    return List.of(
        Figure.draft(this, "markup", "Price and margin from a markup")
            .takes(COST, MARKUP, CURRENCY)
            .gives("price", "price", FigureUnit.MONEY)
            .gives("margin", "margin", FigureUnit.PERCENT)
            .by("margin = markup/(1 + markup)", "arithmetic", "cost=100 markup=25"),
        Figure.draft(this, "margin", "Price and markup from a margin")
            .takes(COST, MARGIN, CURRENCY)
            .gives("price", "price", FigureUnit.MONEY)
            .gives("markup", "markup", FigureUnit.PERCENT)
            .by("price = cost/(1 - margin)", "arithmetic", "cost=100 margin=35"),
        Figure.draft(this, "overhead-rate", "Cost and rate of a billable hour")
            .takes(WAGE, BURDEN, PAID, BILLABLE, OVERHEAD, NO_MARGIN)
            .gives("billable_hours", "hours that can be billed", FigureUnit.HOURS)
            .gives("overhead", "overhead for a billable hour", FigureUnit.MONEY)
            .gives("labour", "labour for a billable hour", FigureUnit.MONEY)
            .gives("cost", "cost of a billable hour", FigureUnit.MONEY)
            .gives("rate", "rate at the margin asked for", FigureUnit.MONEY)
            .by(
                "yearly overhead / (paid hours x billable share), and the like",
                "arithmetic",
                "wage=28 burden=22 billable=70 overhead=84000 margin=10"),
        Figure.draft(this, "sales-tax", "Sales tax, rounded as the law says")
            .takes(RATE, AMOUNTS, ROUNDING, CURRENCY)
            .gives("base", "taxable", FigureUnit.MONEY)
            .gives("tax", "tax", FigureUnit.MONEY)
            .gives("total", "together", FigureUnit.MONEY)
            .by(
                "exact product, up to the cent when the third decimal is above 4",
                "R.I. Gen. Laws 44-18.1-25 (Streamlined Sales and Use Tax Agreement, section 324)",
                "rate=7.25 amounts=123.45"));
  }

  @Override
  public void work(String name, FigureInputs given, FigureAnswers answers) {
    switch (name) {
      case "markup" -> {
        Markup markup = new Markup(given.get(MARKUP));
        answers.put("price", price(given, markup)).put("margin", markup.margin().doubleValue());
      }
      case "margin" -> {
        Markup markup = Markup.ofMargin(given.get(MARGIN));
        answers.put("price", price(given, markup)).put("markup", markup.fraction().doubleValue());
      }
      case "overhead-rate" -> overhead(given, answers);
      case "sales-tax" -> tax(given, answers);
      default -> throw FigureGroup.unknown(name);
    }
  }

  private static BigDecimal price(FigureInputs given, Markup markup) {
    Money cost = money(given.get(COST), given.get(CURRENCY));
    return cost.plus(markup.on(cost)).amount();
  }

  /** Amounts are taken as written; finer ones than the currency has are refused. */
  private static Money money(BigDecimal amount, Currency currency) {
    int digits = Math.max(0, currency.getDefaultFractionDigits());
    if (amount.stripTrailingZeros().scale() > digits) {
      throw new IllegalArgumentException(
          "An amount was given as "
              + amount.toPlainString()
              + "; "
              + currency.getCurrencyCode()
              + " has "
              + digits
              + " decimals. Round it, or give another currency.");
    }
    return new Money(amount.setScale(digits, RoundingMode.UNNECESSARY), currency);
  }

  private static void overhead(FigureInputs given, FigureAnswers answers) {
    HourlyCost hour =
        new HourlyCost(
            given.get(WAGE),
            given.get(BURDEN),
            BigDecimal.valueOf(given.get(PAID)),
            given.get(BILLABLE),
            given.get(OVERHEAD));
    answers
        .put("billable_hours", hour.billableHours().doubleValue())
        .put("overhead", cents(hour.overheadPerHour()))
        .put("labour", cents(hour.labourPerHour()))
        .put("cost", cents(hour.costPerHour()))
        .put("rate", cents(hour.ratePerHour(given.get(NO_MARGIN))));
  }

  private static BigDecimal cents(BigDecimal amount) {
    return amount.setScale(2, RoundingMode.HALF_UP);
  }

  private static void tax(FigureInputs given, FigureAnswers answers) {
    Currency currency = given.get(CURRENCY);
    SalesTax.RoundedBy rounding =
        given.get(ROUNDING).equals("item")
            ? SalesTax.RoundedBy.BY_ITEM
            : SalesTax.RoundedBy.BY_INVOICE;
    SalesTax tax = new SalesTax(SalesTax.USUAL_NAME, given.get(RATE), Set.of(), rounding);
    List<Money> amounts = new ArrayList<>();
    Money base = Money.zero(currency);
    for (BigDecimal amount : WrittenLists.amounts(given.get(AMOUNTS))) {
      Money money = money(amount, currency);
      amounts.add(money);
      base = base.plus(money);
    }
    Money due = tax.onAll(amounts, Money.zero(currency), Rounding.USUAL);
    answers
        .put("base", base.amount())
        .put("tax", due.amount())
        .put("total", base.plus(due).amount());
  }
}
