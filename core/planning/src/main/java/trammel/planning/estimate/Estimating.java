package trammel.planning.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.brackets.work.WorkPlan;
import trammel.cutting.background.Background;
import trammel.cutting.background.Progress;
import trammel.planning.catalog.Catalog;
import trammel.planning.draft.Draft;
import trammel.planning.job.Terms;
import trammel.planning.learning.LearnedHours;
import trammel.planning.rack.Rack;
import trammel.reading.quantity.QuantityPrinter;
import trammel.trade.labour.HoursEstimate;
import trammel.trade.labour.LabourFactor;
import trammel.trade.money.CostLine;
import trammel.trade.money.PriceTerms;
import trammel.trade.money.Pricing;
import trammel.trade.welding.WeldEstimate;

/** Estimates a job: weights, cutting, welds, hours and price. */
public final class Estimating {
  private final Catalog catalog;
  private final PriceTerms terms;
  private final double correlation;
  private final Optional<LearnedHours> learned;

  /**
   * @param catalog what can be bought and done
   * @param terms the terms of this job
   * @param correlation how much the hours of different operations run over together, 0..1
   */
  public Estimating(Catalog catalog, PriceTerms terms, double correlation) {
    this(catalog, terms, correlation, Optional.empty());
  }

  /**
   * @param catalog what can be bought and done
   * @param terms the terms of this job
   * @param correlation how much the hours of different operations run over together, 0..1
   * @param learned what the shop's closed jobs say of its hours; empty for the catalog's
   */
  public Estimating(
      Catalog catalog, PriceTerms terms, double correlation, Optional<LearnedHours> learned) {
    this.catalog = catalog;
    this.terms = terms;
    this.correlation = correlation;
    this.learned = learned;
  }

  /**
   * The estimate of a job.
   *
   * @param draft the job and its layout
   * @param plan the work that it asks for
   * @throws IllegalArgumentException if the plan asks for something that the catalog does not have
   */
  public Estimate estimate(Draft draft, WorkPlan plan) {
    QuantityPrinter printer = new QuantityPrinter(draft.linkageSite().units());
    WeldEstimate welds = catalog.welding().estimate(plan.welds());
    Terms ofJob = draft.job().terms();
    WorkPlan whole = new WholeWork(catalog, ofJob).of(plan, welds);
    Background<Materials> cutting =
        Background.start(
            () -> Materials.of(whole, catalog, Rack.EMPTY, OwnParts.of(ofJob), Progress.UNSEEN));
    HoursEstimate hours =
        new WorkHours(catalog, factors(ofJob), correlation, learned)
            .hours(whole.operations(), welds, ExtraLines.hours(ofJob));
    Pricing pricing = new Pricing(terms);
    double extraHours = pricing.extraHours(hours);
    Materials materials = cutting.get();
    List<CostLine> bought =
        new CostSheet(catalog, terms.currency(), printer)
            .add(materials)
            .add(ExtraLines.costs(ofJob, terms.currency()))
            .lines();
    return new Estimate(
        draft,
        whole,
        materials,
        welds,
        bought,
        hours,
        pricing.price(bought, hours, extraHours),
        learned.isPresent() ? learned.get().jobs() : 0);
  }

  /**
   * A plan with all that is bought for it: the wire and gas of its welds, the cutting of its
   * plates, and what the shop and the job add.
   *
   * @throws IllegalArgumentException if the plan asks for something that the catalog does not have
   */
  public static WorkPlan toBuy(WorkPlan plan, Terms ofJob, Catalog catalog) {
    return new WholeWork(catalog, ofJob).of(plan, catalog.welding().estimate(plan.welds()));
  }

  private static List<LabourFactor> factors(Terms terms) {
    List<LabourFactor> factors = new ArrayList<>(3);
    add(factors, "rust", "rust on the frame and its bolts", terms.rustFactor());
    add(factors, "access", "access round the work", terms.accessFactor());
    add(factors, "finish", "finish asked for", terms.finishFactor());
    return factors;
  }

  private static void add(
      List<LabourFactor> factors, String group, String title, Optional<Double> multiplier) {
    if (multiplier.isPresent()) {
      factors.add(new LabourFactor(group, title, multiplier.get(), "terms.hours." + group));
    }
  }
}
