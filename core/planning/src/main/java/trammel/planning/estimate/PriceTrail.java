package trammel.planning.estimate;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import trammel.engine.quantity.ReaderUnits;
import trammel.planning.estimate.Explanation.Step;
import trammel.reading.quantity.QuantityPrinter;
import trammel.trade.labour.HoursEstimate;
import trammel.trade.labour.LabourFactor;
import trammel.trade.labour.OperationLine;
import trammel.trade.labour.ThreePoint;
import trammel.trade.money.ClassTotal;
import trammel.trade.money.Contingency;
import trammel.trade.money.CostBuildUp;
import trammel.trade.money.CostClass;
import trammel.trade.money.Markup;
import trammel.trade.money.Money;
import trammel.trade.money.Payments;
import trammel.trade.money.PriceLine;
import trammel.trade.money.PriceTerms;
import trammel.trade.money.ProgressPayment;
import trammel.trade.money.SalesTax;

/** Follows every figure of a price back to the lines that it comes from. */
public final class PriceTrail {
  private final CostBuildUp price;
  private final PriceTerms terms;
  private final HoursEstimate hours;
  private final ReaderUnits units;

  /** How the quantity of a line came about, by its key. */
  private final Function<String, List<Step>> beforeThat;

  private final Map<String, Explanation> byName = new LinkedHashMap<>();

  /** The trail of an estimated job. */
  public PriceTrail(Estimate estimate) {
    this(
        estimate.price(),
        estimate.hours(),
        estimate.draft().printer(),
        new SupplyTrail(estimate)::of);
  }

  /**
   * @param price the price
   * @param hours the hours that its labour comes from
   * @param units the units of the reader
   */
  public PriceTrail(CostBuildUp price, HoursEstimate hours, ReaderUnits units) {
    this(price, hours, units, key -> List.of());
  }

  private PriceTrail(
      CostBuildUp price,
      HoursEstimate hours,
      ReaderUnits units,
      Function<String, List<Step>> beforeThat) {
    this.price = price;
    this.beforeThat = beforeThat;
    this.terms = price.terms();
    this.hours = hours;
    this.units = units;
    totals();
    for (ClassTotal total : price.classTotals()) {
      add(classTotal(total));
    }
    for (PriceLine line : price.lines()) {
      if (!line.line().key().equals(name(line.line().costClass()))) {
        add(line(line));
      }
    }
  }

  /** Every name that can be asked for: totals, classes, then lines. */
  public List<String> names() {
    return List.copyOf(byName.keySet());
  }

  /**
   * The figures that are meant: the one of that name or title, else all whose name and title have
   * every word in them. Empty if there is none.
   */
  public List<Explanation> find(String asked) {
    String wanted = asked.strip().toLowerCase(Locale.ROOT);
    List<Explanation> found = new ArrayList<>();
    for (Explanation one : byName.values()) {
      if (one.name().toLowerCase(Locale.ROOT).equals(wanted)
          || one.title().toLowerCase(Locale.ROOT).equals(wanted)) {
        return List.of(one);
      }
      if (!wanted.isEmpty() && hasAllWords(one, wanted)) {
        found.add(one);
      }
    }
    return found;
  }

  private static boolean hasAllWords(Explanation one, String wanted) {
    String text = (one.name() + " " + one.title()).toLowerCase(Locale.ROOT);
    int from = 0;
    while (from < wanted.length()) {
      int end = wanted.indexOf(' ', from);
      end = end < 0 ? wanted.length() : end;
      if (!text.contains(wanted.substring(from, end))) {
        return false;
      }
      from = end + 1;
    }
    return true;
  }

  private void add(Explanation explanation) {
    String name = explanation.name();
    for (int i = 2; byName.containsKey(name); i++) {
      name = explanation.name() + "-" + i;
    }
    byName.put(
        name,
        new Explanation(name, explanation.title(), explanation.amount(), explanation.steps()));
  }

  // Totals

  private void totals() {
    List<Step> total = new ArrayList<>();
    total.add(step("subtotal", price.subtotal()));
    total.add(step(terms.tax().name(), price.tax()));
    if (!price.cashRounding().isZero()) {
      total.add(
          step(
              "rounded to " + terms.rounding().cashStep().get().toPlainString(),
              price.cashRounding()));
    }
    add(new Explanation("total", "price with tax", price.total(), total));
    List<Step> subtotal = new ArrayList<>();
    for (ClassTotal one : price.classTotals()) {
      subtotal.add(step(one.costClass().title(), one.price()));
    }
    add(new Explanation("subtotal", "price before tax", price.subtotal(), subtotal));
    add(new Explanation("tax", terms.tax().name(), price.tax(), tax()));
    payments();
  }

  private void payments() {
    Payments payments = price.payments();
    add(new Explanation("deposit", "deposit with the order", payments.deposit(), payment(0)));
    List<Step> left = new ArrayList<>();
    left.add(step("total", price.total()));
    left.add(step("less the deposit", payments.deposit()));
    for (int i = 0; i < terms.progress().size(); i++) {
      ProgressPayment one = terms.progress().get(i);
      Money amount = payments.progress().get(i);
      String share = QuantityPrinter.percent(one.fraction());
      add(
          new Explanation(
              "payment-" + (i + 1), "payment when: " + one.when(), amount, payment(i + 1)));
      left.add(step("less " + share + " of the total, due when: " + one.when(), amount));
    }
    add(new Explanation("balance", "balance on delivery", payments.balance(), left));
  }

  /**
   * How a payment came about.
   *
   * @param index which of them: 0 the deposit, then the progress payments
   */
  private List<Step> payment(int index) {
    BigDecimal share = share(index);
    BigDecimal reached = BigDecimal.ZERO;
    Money before = Money.zero(terms.currency());
    for (int i = 0; i < index; i++) {
      reached = reached.add(share(i));
      before = before.plus(paid(i));
    }
    List<Step> steps = new ArrayList<>();
    steps.add(step("total", price.total()));
    if (reached.add(share).compareTo(BigDecimal.ONE) >= 0) {
      steps.add(
          new Step(
              "its share, with which the whole price is reached: it takes the rest",
              QuantityPrinter.percent(share)));
      for (int i = 0; i < index; i++) {
        steps.add(step("less " + title(i), paid(i)));
      }
      return steps;
    }
    BigDecimal raw = price.total().amount().multiply(share);
    steps.add(new Step("times its share", QuantityPrinter.percent(share)));
    steps.add(new Step("unrounded", raw.stripTrailingZeros().toPlainString()));
    steps.add(new Step("rounded " + terms.rounding().word() + " to the cent", ""));
    if (paid(index).compareTo(price.total().minus(before)) == 0) {
      steps.add(step("no more than what is left to pay", paid(index)));
    }
    return steps;
  }

  private BigDecimal share(int index) {
    return index == 0 ? terms.depositFraction() : terms.progress().get(index - 1).fraction();
  }

  private Money paid(int index) {
    Payments payments = price.payments();
    return index == 0 ? payments.deposit() : payments.progress().get(index - 1);
  }

  private String title(int index) {
    return index == 0
        ? "the deposit"
        : "payment-" + index + ", due when: " + terms.progress().get(index - 1).when();
  }

  private List<Step> tax() {
    SalesTax tax = terms.tax();
    List<Step> steps = new ArrayList<>();
    for (ClassTotal one : price.classTotals()) {
      if (tax.isDueOn(one.costClass())) {
        steps.add(step("taxable: " + one.costClass().title(), one.price()));
      } else {
        steps.add(new Step("not taxable: " + one.costClass().title(), "0"));
      }
    }
    steps.add(step("taxable together", price.taxable()));
    steps.add(new Step("times the rate", QuantityPrinter.percent(tax.rate())));
    if (tax.rounding() == SalesTax.RoundedBy.BY_INVOICE) {
      BigDecimal raw = price.taxable().amount().multiply(tax.rate());
      steps.add(new Step("unrounded", raw.stripTrailingZeros().toPlainString()));
      steps.add(
          new Step("rounded " + terms.rounding().word() + " to the cent, once on the invoice", ""));
    } else {
      steps.add(
          new Step(
              "rounded " + terms.rounding().word() + " to the cent on every line, then added", ""));
    }
    return steps;
  }

  // Classes and lines

  private Explanation classTotal(ClassTotal total) {
    if (total.lines().size() == 1) {
      PriceLine only = total.lines().get(0);
      return new Explanation(
          name(total.costClass()), only.line().title(), total.price(), line(only).steps());
    }
    List<Step> steps = new ArrayList<>();
    for (PriceLine line : total.lines()) {
      steps.add(step(line.line().title() + ": " + line.how(), line.price()));
    }
    if (!total.cost().equals(total.price())) {
      steps.add(step("what they cost the shop", total.cost()));
    }
    return new Explanation(
        name(total.costClass()), "all lines of this class", total.price(), steps);
  }

  private static String name(CostClass costClass) {
    return switch (costClass) {
      case SUPPLIES -> "supplies";
      case OUTSIDE -> "outside";
      case FREIGHT -> "freight";
      default -> costClass.title();
    };
  }

  private Explanation line(PriceLine line) {
    List<Step> steps = new ArrayList<>(beforeThat.apply(line.line().key()));
    for (OperationLine operation : hours.lines()) {
      if (line.line().costClass() == CostClass.LABOUR
          && operation.operation().key().equals(line.line().key())) {
        steps.addAll(labour(operation));
      }
    }
    if (line.line().costClass() == CostClass.CONTINGENCY) {
      steps.addAll(contingency());
    }
    steps.add(new Step("quantity", line.line().quantityText()));
    steps.add(new Step("times the price of one", line.line().unitCost().toPlainString()));
    steps.add(step("together, rounded " + terms.rounding().word() + " to the cent", line.amount()));
    if (!line.waste().isZero()) {
      steps.add(
          step("waste, " + QuantityPrinter.percent(terms.steelWaste()) + " of cost", line.waste()));
    }
    if (!line.markup().isZero()) {
      steps.add(step(markup(terms.markup(line.line().costClass())), line.markup()));
    }
    if (line.line().costClass() == CostClass.LABOUR && line.line().unitCost().signum() > 0) {
      steps.add(
          step(
              "of which it costs the shop, at "
                  + terms.rate().costPerHour().toPlainString()
                  + " an hour",
              line.cost()));
    }
    steps.add(new Step(line.taxable() ? "taxable" : "not taxable", ""));
    steps.add(new Step("why: " + line.line().why().in(units), ""));
    return new Explanation(line.line().key(), line.line().title(), line.price(), steps);
  }

  private static String markup(Markup markup) {
    return markup.statedMargin().isPresent()
        ? "markup, to a margin of "
            + QuantityPrinter.percent(markup.statedMargin().get())
            + " of the price"
        : "markup, " + QuantityPrinter.percent(markup.fraction()) + " of cost";
  }

  private List<Step> labour(OperationLine line) {
    List<Step> steps = new ArrayList<>();
    ThreePoint one = line.operation().hoursPerUnit();
    steps.add(
        new Step(
            "hours a " + line.operation().driverUnit() + ", low / likely / high",
            hours(one.low()) + " / " + hours(one.likely()) + " / " + hours(one.high())));
    steps.add(new Step("times " + line.driverText().in(units), hours(line.quantity())));
    for (LabourFactor factor : line.factors()) {
      steps.add(
          new Step(
              "times " + factor.title() + " (" + factor.why() + ")", hours(factor.multiplier())));
    }
    ThreePoint all = line.hours();
    steps.add(
        new Step(
            "together, low / likely / high",
            hours(all.low()) + " / " + hours(all.likely()) + " / " + hours(all.high()) + " h"));
    steps.add(new Step("mean, (low + 4 likely + high) / 6", hours(all.mean()) + " h"));
    steps.add(new Step("source of the hours: " + line.operation().sourceNote(), ""));
    return steps;
  }

  private List<Step> contingency() {
    List<Step> steps = new ArrayList<>();
    if (terms.contingency() instanceof Contingency.HoursToChance target) {
      double atChance = hours.quantileHours(target.chance());
      steps.add(
          new Step(
              "hours not exceeded on " + Math.round(100 * target.chance()) + " of 100 such jobs",
              hours(atChance) + " h"));
      steps.add(new Step("less the mean hours", hours(hours.meanHours()) + " h"));
      steps.add(
          new Step(
              "spread with the hours of operations correlated by",
              QuantityPrinter.percent(BigDecimal.valueOf(hours.correlation()))));
    }
    return steps;
  }

  private static String hours(double hours) {
    BigDecimal shown = BigDecimal.valueOf(hours).setScale(3, RoundingMode.HALF_UP);
    BigDecimal stripped = shown.stripTrailingZeros();
    return (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
  }

  private static Step step(String text, Money amount) {
    return new Step(text, amount.text());
  }
}
