package trammel.app.ledger;

import java.util.List;
import java.util.function.Consumer;
import trammel.ledger.Ledger;

/**
 * What a table that is read back would change in the ledger.
 *
 * @param table what the table is of, such as closed jobs
 * @param lines one line in words for each thing that would change; none if nothing would
 * @param carryOut makes the change
 */
public record TableChange(String table, List<String> lines, Consumer<Ledger> carryOut) {
  public TableChange {
    lines = List.copyOf(lines);
  }
}
