package trammel.ledger;

/**
 * The hand that writes something down: when it does, and whose it is.
 *
 * @param now the clock
 */
record Hand(Moment now) {
  String at() {
    return now.text();
  }

  String who() {
    return Writer.name();
  }
}
