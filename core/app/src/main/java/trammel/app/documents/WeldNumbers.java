package trammel.app.documents;

/** What a line of the weld list is called: W1, W2 and so on, the same on every paper. */
final class WeldNumbers {
  private WeldNumbers() {}

  /**
   * The number of a line.
   *
   * @param index its place in the weld list, counted from 0
   */
  static String of(int index) {
    return "W" + (index + 1);
  }
}
