package trammel.ledger;

/** A ledger that cannot be read any more; what is to be done about it is in its message. */
public final class DamagedLedgerException extends IllegalArgumentException {
  DamagedLedgerException(String message, Throwable cause) {
    super(message, cause);
  }
}
