package trammel.app.documents;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import trammel.app.drawings.LayoutView;
import trammel.app.drawings.PartWords;
import trammel.app.drawings.Viewpoint;
import trammel.app.text.Amounts;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.TubeNeed;
import trammel.engine.checks.CheckResult;
import trammel.engine.checks.CheckResult.Judged;
import trammel.engine.checks.Verdict;
import trammel.engine.layout.Travel;
import trammel.planning.catalog.BoughtAs;
import trammel.planning.catalog.Promises;
import trammel.planning.estimate.Counts;
import trammel.planning.estimate.Estimate;
import trammel.planning.estimate.PartLine;
import trammel.planning.estimate.PlateCut;
import trammel.planning.estimate.SectionCut;
import trammel.planning.job.Extra;
import trammel.planning.order.MaterialOrder;
import trammel.planning.order.SupplierOrder;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.trade.money.ClassTotal;
import trammel.trade.money.CostBuildUp;
import trammel.trade.money.CostClass;
import trammel.trade.money.Money;
import trammel.trade.money.Payments;
import trammel.trade.money.ProgressPayment;

/** The quote as the customer gets it. */
public final class QuoteDocument {
  /** An empty box to tick (U+2610). */
  private static final String BOX = "\u2610";

  private static final String USUAL_CHANGE_RULE =
      "Changes to the work are ordered in writing: what changes, its price and its days, signed by"
          + " both before it is done.";

  private final JobPaper paper;
  private final List<QuoteOption> options;
  private final MaterialOrder order;

  /**
   * @param paper the job
   * @param options other ways to do it
   * @param order what is bought for it, with the days until it is there
   */
  public QuoteDocument(JobPaper paper, List<QuoteOption> options, MaterialOrder order) {
    this.paper = paper;
    this.options = List.copyOf(options);
    this.order = order;
  }

  /** The document. */
  public PaperDocument document() {
    CostBuildUp price = paper.estimate().price();
    DocumentModel model = paper.customerModel("Quote");
    model.put("total", price.total().text());
    model.put("validUntil", price.terms().validUntil(paper.header().date()).toString());
    model.put("scope", DocumentModel.texts(scope()));
    List<String> extras = extras();
    model.put("hasExtras", !extras.isEmpty());
    model.put("extras", DocumentModel.texts(extras));
    PermanentChanges changes = new PermanentChanges(paper);
    model.put("changes", DocumentModel.texts(changes.made()));
    model.put("stays", DocumentModel.texts(changes.left()));
    model.put(
        "view",
        new LayoutView(
            paper.draft().layout(),
            paper.scene(),
            Viewpoint.SIDE,
            paper.printer(),
            Map.of(),
            paper.stops().line()),
        "Side view of the finished vehicle");
    model.put("key", key());
    model.put("parts", bought(BoughtAs.PART));
    model.put("outside", bought(BoughtAs.OUTSIDE_WORK));
    model.put("prices", prices(price));
    model.put("options", options());
    model.put("excluded", DocumentModel.texts(excluded()));
    model.put("terms", DocumentModel.texts(terms(price)));
    return paper.document("quote", model);
  }

  private List<String> scope() {
    Travel travel = paper.draft().layout().chassis().travel();
    List<String> scope = new ArrayList<>();
    scope.add(
        "Rear axle on "
            + small(paper.draft().linkage().title())
            + ", with "
            + small(paper.draft().spring().title())
            + ".");
    scope.add(
        "Set at a ride height of "
            + length(paper.draft().layout().chassis().rails().undersideMm(0))
            + " from the ground to the frame's underside at the axle, with "
            + length(travel.bumpMm())
            + " of travel up and "
            + length(travel.droopMm())
            + " down.");
    scope.add(made());
    scope.add(
        "Welded with "
            + weldLength()
            + " of weld in all; every bracket tacked, measured and judged before it is welded.");
    return scope;
  }

  /** What the customer asked for beside the plan, by name; parts and outside work among it. */
  private List<String> extras() {
    List<String> extras = new ArrayList<>();
    for (Extra extra : paper.draft().job().terms().extras()) {
      String count =
          extra.quantity().compareTo(BigDecimal.ONE) == 0
              ? ""
              : Amounts.plain(extra.quantity().doubleValue()) + " x ";
      String title = count + capital(extra.title());
      extras.add(
          switch (extra.kind()) {
            case HOURS, OPERATION, PART -> title + ".";
            case OUTSIDE_WORK -> title + ", done outside the shop.";
            case CREDIT -> title + ": credited.";
            case CUSTOMERS_PART ->
                title + ": the customer's own, fitted without warranty of the part.";
          });
    }
    return extras;
  }

  private String made() {
    int plates = 0;
    for (PlateCut cut : paper.estimate().materials().plates()) {
      for (PlateNeed need : cut.needs()) {
        plates += need.quantity();
      }
    }
    int tubes = 0;
    for (SectionCut cut : paper.estimate().materials().sections()) {
      for (TubeNeed need : cut.needs()) {
        tubes += need.quantity();
      }
    }
    return "Made for this vehicle: "
        + Counts.of(tubes, "tube")
        + " and "
        + Counts.of(plates, "plate part")
        + ", "
        + paper.printer().mass(paper.estimate().materials().steelMassKg())
        + " of new steel.";
  }

  private String weldLength() {
    double lengthMm = paper.estimate().welds().lengthMm();
    return paper.printer().system() == UnitSystem.US
        ? Math.round(lengthMm / 304.8) + " ft"
        : Amounts.fixed(lengthMm / 1000, 1) + " m";
  }

  private static String capital(String title) {
    return Character.toUpperCase(title.charAt(0)) + title.substring(1);
  }

  private static String small(String title) {
    return title.isEmpty() ? title : Character.toLowerCase(title.charAt(0)) + title.substring(1);
  }

  private String length(double lengthMm) {
    return paper.printer().length(lengthMm);
  }

  /** What the numbers in the drawing are, in words. */
  private String key() {
    PartWords words = paper.words();
    return paper.numbers().names().stream()
        .map(name -> paper.numbers().of(name) + " " + words.in(name))
        .collect(Collectors.joining(", "));
  }

  private Grid bought(BoughtAs as) {
    Grid grid = new Grid("rll", new int[] {10, 12, 78});
    for (PartLine part : paper.estimate().materials().parts()) {
      if (part.item().bought() == as) {
        grid.row(Amounts.plain(part.quantity()), part.item().unit(), part.item().title());
      }
    }
    return grid;
  }

  /** Overhead and contingency belong to the shop's work; the customer pays one sum for it. */
  private Grid prices(CostBuildUp price) {
    Grid grid = new Grid("lr", new int[] {70, 30});
    grid.row("Steel", price(price, CostClass.STEEL).text());
    grid.row("Parts", price(price, CostClass.PARTS).text());
    grid.row("Work done outside the shop", price(price, CostClass.OUTSIDE).text());
    addIfAny(grid, "Freight and suppliers' charges", price(price, CostClass.FREIGHT));
    Money shop =
        price(price, CostClass.LABOUR)
            .plus(price(price, CostClass.OVERHEAD))
            .plus(price(price, CostClass.CONTINGENCY))
            .plus(price(price, CostClass.SUPPLIES));
    grid.row("Shop work and supplies", shop.text());
    addIfAny(grid, "Fees", price(price, CostClass.FEES));
    grid.total("Subtotal", price.subtotal().text());
    grid.row(
        capital(price.terms().tax().name())
            + ", "
            + QuantityPrinter.percent(price.terms().tax().rate())
            + " on "
            + price.taxable().text(),
        price.tax().text());
    addIfAny(grid, "Rounding", price.cashRounding());
    grid.total("Total", price.total().text());
    addPayments(grid, price);
    return grid;
  }

  private static void addIfAny(Grid grid, String title, Money amount) {
    if (!amount.isZero()) {
      grid.row(title, amount.text());
    }
  }

  private static void addPayments(Grid grid, CostBuildUp price) {
    Payments payments = price.payments();
    if (!payments.deposit().isZero()) {
      grid.row(
          "Deposit with the order, " + QuantityPrinter.percent(price.terms().depositFraction()),
          payments.deposit().text());
    }
    for (int i = 0; i < payments.progress().size(); i++) {
      ProgressPayment payment = price.terms().progress().get(i);
      grid.row(
          "When: " + payment.when() + ", " + QuantityPrinter.percent(payment.fraction()),
          payments.progress().get(i).text());
    }
    if (!payments.balance().isZero()) {
      grid.row("Balance on delivery", payments.balance().text());
    }
  }

  private static Money price(CostBuildUp price, CostClass costClass) {
    ClassTotal total = price.total(costClass);
    return total.price();
  }

  private Grid options() {
    Grid grid =
        new Grid(
            "llrrl",
            new int[] {6, 36, 18, 17, 23},
            "tick",
            "way to do it",
            "price with tax",
            "difference",
            "what the checks say");
    if (options.isEmpty()) {
      return grid;
    }
    Money quoted = paper.estimate().price().total();
    grid.total(BOX, "as quoted", quoted.text(), "", verdict(paper.results()));
    for (QuoteOption option : options) {
      Estimate estimate = option.estimate();
      Money total = estimate.price().total();
      Money more = total.minus(quoted);
      String sign = more.amount().signum() > 0 ? "+" : "";
      grid.row(BOX, option.label(), total.text(), sign + more.text(), verdict(option.results()));
    }
    return grid;
  }

  private static String verdict(List<CheckResult> results) {
    int stops = 0;
    int looks = 0;
    for (CheckResult result : results) {
      if (result instanceof Judged judged) {
        stops += judged.verdict() == Verdict.STOP ? 1 : 0;
        looks += judged.verdict() == Verdict.LOOK_AGAIN ? 1 : 0;
      }
    }
    if (stops > 0) {
      return stops + " to solve first";
    }
    return looks == 0 ? "all good" : looks + " to look at again";
  }

  private static List<String> excluded() {
    return List.of(
        "Anything found rusted, cracked or bent once the vehicle is apart; it is quoted before it"
            + " is done.",
        "Bodywork, trim, upholstery and paint beyond what is named above.",
        "Brakes, wheels, tyres, engine and transmission beyond what is named above.",
        "Inspection, registration and approval of the changed vehicle, and what they cost.",
        "Moving the vehicle to the shop and from it.");
  }

  private List<String> terms(CostBuildUp price) {
    Payments payments = price.payments();
    List<String> terms = new ArrayList<>();
    terms.add(
        "Good until "
            + price.terms().validUntil(paper.header().date())
            + " ("
            + price.terms().validDays()
            + " days).");
    if (!payments.deposit().isZero()) {
      terms.add(
          "Deposit of "
              + payments.deposit().text()
              + " with the order; steel and parts are ordered then.");
    }
    if (!payments.balance().isZero()) {
      terms.add("Balance of " + payments.balance().text() + " on delivery.");
    }
    terms.add(leadTime());
    Promises promises = paper.house().promises();
    terms.add(promises.changeRule().map(rule -> "Changes: " + rule).orElse(USUAL_CHANGE_RULE));
    promises.warranty().ifPresent(warranty -> terms.add("Warranty: " + warranty));
    terms.add(
        "The figures behind this quote are screening estimates for planning and comparison. They do"
            + " not approve a design, a weld or a vehicle.");
    return terms;
  }

  /** When the work begins and how long it takes: eight of ten such jobs are done by then. */
  private String leadTime() {
    Optional<LocalDate> start = paper.draft().job().terms().start();
    double hours = paper.estimate().hours().p80Hours();
    String takes =
        " and takes about "
            + Counts.of((int) Math.ceil(paper.house().labour().days(hours)), "working day")
            + ".";
    if (start.isPresent()) {
      return "Lead time: the work begins on " + start.get() + takes;
    }
    int delivered = order.suppliers().stream().mapToInt(SupplierOrder::leadDays).max().orElse(0);
    int free = paper.house().promises().startDays().orElse(0);
    return "Lead time: the work begins within "
        + Counts.of(Math.max(delivered, free), "working day")
        + " of the deposit, when steel and parts are there,"
        + takes;
  }
}
