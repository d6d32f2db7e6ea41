package trammel.ledger;

/**
 * Something in the ledger, and when it was written down; who wrote it no ledger knows.
 *
 * @param at when, UTC, as in {@code 2026-12-01T09:30:00Z}
 * @param what what was written
 */
public record Written<T>(String at, T what) {}
