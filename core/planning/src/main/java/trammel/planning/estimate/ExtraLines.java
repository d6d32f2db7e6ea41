package trammel.planning.estimate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import trammel.engine.quantity.Phrase;
import trammel.planning.job.Extra;
import trammel.planning.job.ExtraKind;
import trammel.planning.job.Terms;
import trammel.trade.labour.Operation;
import trammel.trade.labour.OperationLine;
import trammel.trade.labour.ThreePoint;
import trammel.trade.money.CostClass;
import trammel.trade.money.CostLine;

/**
 * The cost and hours lines of a job's own extras, but for those by an operation of the catalog and
 * those that are bought.
 */
final class ExtraLines {
  private static final String SOURCE = "the job file";

  private ExtraLines() {}

  static List<CostLine> costs(Terms terms, Currency currency) {
    List<CostLine> lines = new ArrayList<>();
    for (Extra extra : terms.extras()) {
      costClass(extra.kind()).ifPresent(costClass -> lines.add(cost(extra, costClass, currency)));
    }
    return lines;
  }

  /** Credits lower what the shop asks for its own work; what is bought is among the materials. */
  private static Optional<CostClass> costClass(ExtraKind kind) {
    return switch (kind) {
      case HOURS, OPERATION, PART, OUTSIDE_WORK -> Optional.empty();
      case CUSTOMERS_PART -> Optional.of(CostClass.PARTS);
      case CREDIT -> Optional.of(CostClass.LABOUR);
    };
  }

  private static CostLine cost(Extra extra, CostClass costClass, Currency currency) {
    BigDecimal price = extra.price().orElse(BigDecimal.ZERO);
    boolean customers = extra.kind() == ExtraKind.CUSTOMERS_PART;
    return new CostLine(
        extra.key(),
        customers ? extra.title() + ", the customer's own" : extra.title(),
        costClass,
        extra.quantity(),
        extra.quantity().toPlainString() + " each",
        extra.kind() == ExtraKind.CREDIT ? price.negate() : price,
        currency,
        customers
            ? Phrase.of("{}; fitted without warranty of the part", extra.why())
            : Phrase.text(extra.why()));
  }

  static List<OperationLine> hours(Terms terms) {
    List<OperationLine> lines = new ArrayList<>();
    for (Extra extra : terms.extras()) {
      if (extra.hours().isPresent()) {
        String title =
            extra.kind() == ExtraKind.CUSTOMERS_PART
                ? "fit the customer's own " + extra.title()
                : extra.title();
        String key = extra.key() + (extra.kind() == ExtraKind.CUSTOMERS_PART ? "-fit" : "");
        Operation operation =
            new Operation(
                key, title, "piece", ThreePoint.exactly(extra.hours().get()), List.of(), SOURCE);
        lines.add(
            new OperationLine(
                operation,
                extra.quantity().doubleValue(),
                Phrase.text(extra.quantity().toPlainString() + " x"),
                List.of(),
                Phrase.text(extra.why())));
      }
    }
    return lines;
  }
}
