package trammel.planning.extension.kit;

/** Throws when a promise of the contract is not kept. */
final class Promise {
  private Promise() {}

  static void kept(boolean kept, String otherwise) {
    if (!kept) {
      throw new AssertionError(otherwise);
    }
  }
}
