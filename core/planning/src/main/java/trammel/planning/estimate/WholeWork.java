package trammel.planning.estimate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.PartNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.ShopExtra;
import trammel.planning.job.Extra;
import trammel.planning.job.ExtraKind;
import trammel.planning.job.LeftOut;
import trammel.planning.job.Terms;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.Problems;
import trammel.trade.welding.WeldEstimate;

/**
 * All the work of a job: what its plan asks for with the wire and gas of its welds and the cutting
 * of its plates, what the shop bills by its own rules, what the job adds, less what it leaves out.
 */
final class WholeWork {
  private final Catalog catalog;
  private final Terms terms;
  private final Set<String> leftOut = new HashSet<>();

  /**
   * @throws BadInputException if the job leaves out, or adds, what the catalog does not have
   */
  WholeWork(Catalog catalog, Terms terms) {
    this.catalog = catalog;
    this.terms = terms;
    Problems problems = new Problems();
    for (LeftOut one : terms.leftOut()) {
      if (isKnown(one.what())) {
        leftOut.add(one.what());
      } else {
        problems.error(
            one.location(),
            "'" + one.what() + "'",
            "an operation, an item or a rule of the catalog",
            "Take the word from 'trammel plan --json', or from the catalog.");
      }
    }
    for (Extra extra : terms.extras()) {
      extra
          .operation()
          .filter(key -> !catalog.operations().containsKey(key))
          .ifPresent(
              key ->
                  problems.error(
                      extra.location(),
                      "'" + key + "'",
                      "an operation of the catalog: "
                          + String.join(", ", catalog.operations().keySet()),
                      "Name one of these, or write the line by hours."));
    }
    problems.throwIfErrors();
  }

  private boolean isKnown(String key) {
    return catalog.operations().containsKey(key)
        || catalog.items().containsKey(key)
        || catalog.extras().containsKey(key);
  }

  /** The whole of a plan. */
  WorkPlan of(WorkPlan plan, WeldEstimate welds) {
    WorkPlan made = CutPlates.addedTo(plan.plus(WeldingSupplies.of(welds, catalog)), catalog);
    WorkPlan.Builder added = new WorkPlan.Builder().add(made);
    addShopExtras(made, added);
    for (Extra extra : terms.extras()) {
      if (extra.kind() == ExtraKind.OPERATION) {
        addOperation(
            added,
            extra.operation().get(),
            extra.quantity().doubleValue(),
            Phrase.text(extra.why()));
      }
    }
    return without(added.build());
  }

  private void addShopExtras(WorkPlan plan, WorkPlan.Builder added) {
    for (ShopExtra rule : catalog.extras().values()) {
      double times = rule.quantity().doubleValue() * count(plan, rule.per());
      if (leftOut.contains(rule.key()) || times == 0) {
        continue;
      }
      Phrase why =
          rule.per().equals(ShopExtra.EVERY_JOB)
              ? Phrase.of("{}: the shop's rule, on every job", rule.title())
              : Phrase.of(
                  "{}: the shop's rule, for each of '{}'",
                  rule.title(),
                  catalog.operation(rule.per()).title());
      rule.item().ifPresent(item -> added.add(PartNeed.withoutPlace(item, times, why)));
      rule.operation().ifPresent(operation -> addOperation(added, operation, times, why));
    }
  }

  private static double count(WorkPlan plan, String per) {
    if (per.equals(ShopExtra.EVERY_JOB)) {
      return 1;
    }
    return plan.operations().stream()
        .filter(need -> need.operationKey().equals(per))
        .mapToDouble(OperationNeed::quantity)
        .sum();
  }

  private void addOperation(WorkPlan.Builder plan, String key, double quantity, Phrase why) {
    String count = BigDecimal.valueOf(quantity).stripTrailingZeros().toPlainString();
    plan.add(
        new OperationNeed(key, quantity, count + " x " + catalog.operation(key).driverUnit(), why));
  }

  /** Parts that stand somewhere on the vehicle stay: the layout needs them. */
  private WorkPlan without(WorkPlan plan) {
    if (leftOut.isEmpty()) {
      return plan;
    }
    List<PartNeed> parts = new ArrayList<>(plan.parts());
    parts.removeIf(part -> part.pieces().isEmpty() && leftOut.contains(part.itemKey()));
    List<OperationNeed> operations = new ArrayList<>(plan.operations());
    operations.removeIf(operation -> leftOut.contains(operation.operationKey()));
    return plan.withParts(parts).withOperations(operations);
  }
}
