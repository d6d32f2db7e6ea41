package trammel.planning.estimate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.brackets.work.OperationNeed;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.Catalog;
import trammel.planning.learning.LearnedHours;
import trammel.trade.labour.HoursEstimate;
import trammel.trade.labour.LabourFactor;
import trammel.trade.labour.Operation;
import trammel.trade.labour.OperationLine;
import trammel.trade.welding.WeldEstimate;

/** Adds up the hours of a plan: its operations, and the torch time that its welds take. */
final class WorkHours {
  /** Key of the operation whose quantity is the welds' clock hours. */
  static final String TORCH_TIME = "torch-time";

  private final Catalog catalog;
  private final List<LabourFactor> factors;
  private final double correlation;
  private final Optional<LearnedHours> learned;

  WorkHours(
      Catalog catalog,
      List<LabourFactor> factors,
      double correlation,
      Optional<LearnedHours> learned) {
    this.catalog = catalog;
    this.factors = List.copyOf(factors);
    this.correlation = learned.isPresent() ? learned.get().correlation() : correlation;
    this.learned = learned;
  }

  HoursEstimate hours(List<OperationNeed> needs, WeldEstimate welds, List<OperationLine> extras) {
    Map<String, OperationNeed> byKey = new LinkedHashMap<>();
    for (OperationNeed need : needs) {
      OperationNeed before = byKey.get(need.operationKey());
      byKey.put(need.operationKey(), before == null ? need : together(before, need));
    }
    List<OperationLine> lines = new ArrayList<>(byKey.size() + 1);
    for (OperationNeed need : byKey.values()) {
      lines.add(line(need));
    }
    if (welds.clockHours() > 0) {
      lines.add(line(torchTime(welds)));
    }
    lines.addAll(extras);
    return new HoursEstimate(lines, correlation);
  }

  private static OperationNeed torchTime(WeldEstimate welds) {
    return new OperationNeed(
        TORCH_TIME,
        welds.clockHours(),
        welds.lines().size() + " welds",
        Phrase.of("arc time by deposition rate over the operating factor of the process"));
  }

  private OperationLine line(OperationNeed need) {
    Operation standard = catalog.operation(need.operationKey());
    Operation operation = learned.isPresent() ? learned.get().of(standard) : standard;
    List<LabourFactor> applied = new ArrayList<>(factors.size());
    for (LabourFactor factor : factors) {
      if (operation.factorGroups().contains(factor.group())) {
        applied.add(factor);
      }
    }
    return new OperationLine(operation, need.quantity(), need.driver(), applied, need.why());
  }

  private static OperationNeed together(OperationNeed a, OperationNeed b) {
    return new OperationNeed(
        a.operationKey(),
        a.quantity() + b.quantity(),
        Phrase.of("{} + {}", a.driver(), b.driver()),
        a.why().and(b.why()));
  }
}
