package trammel.ledger;

/**
 * Something in the ledger, and when and by whom it was written down.
 *
 * @param at when, UTC, as in {@code 2026-12-01T09:30:00Z}
 * @param who the account or the name given; empty for what was written before ledgers kept it
 * @param what what was written
 */
public record Written<T>(String at, String who, T what) {}
