package trammel.planning.estimate;

/** Joins the reasons of lines that are put together. */
final class Words {
  private Words() {}

  /** Both texts, once each. */
  static String both(String a, String b) {
    return a.contains(b) ? a : a + "; " + b;
  }
}
