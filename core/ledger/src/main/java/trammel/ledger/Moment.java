package trammel.ledger;

import java.time.Instant;
import java.time.temporal.ChronoUnit;

/** When something is written down: ISO 8601, UTC, to the second. */
interface Moment {
  /** The machine's clock. */
  Moment NOW = () -> Instant.now().truncatedTo(ChronoUnit.SECONDS).toString();

  String text();
}
