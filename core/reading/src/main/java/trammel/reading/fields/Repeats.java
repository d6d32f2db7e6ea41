package trammel.reading.fields;

import java.util.List;
import java.util.Optional;
import trammel.reading.quantity.Measurement;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.ListNode;

/** One reading or a list of them. */
final class Repeats {
  private static final int MOST = 20;

  private Repeats() {}

  /** The nodes of the readings; empty after a list that is empty or too long was reported. */
  static Optional<List<DocumentNode>> of(DocumentNode node, ValueType<?> type, FieldReader reader) {
    if (!(node instanceof ListNode list)) {
      return Optional.of(List.of(node));
    }
    if (list.entries().isEmpty() || list.entries().size() > MOST) {
      type.refuse(node, reader, "Write one reading, or a list of 2 to " + MOST + " repeats.");
      return Optional.empty();
    }
    return Optional.of(list.entries());
  }

  static void warnOfSpread(DocumentNode node, Measurement measured, FieldReader reader) {
    if (!measured.needsMeasuringAgain()) {
      return;
    }
    QuantityPrinter printer = new QuantityPrinter(reader.units());
    String spread = printer.print(measured.spread(), measured.kind());
    String tolerance = printer.print(measured.tolerance(), measured.kind());
    reader
        .problems()
        .warning(
            node.location(),
            measured.count() + " readings that differ by " + spread,
            "a spread of at most the instrument's tolerance, " + tolerance,
            "Measure again and strike out the reading that is wrong; their mean is used meanwhile.");
  }
}
