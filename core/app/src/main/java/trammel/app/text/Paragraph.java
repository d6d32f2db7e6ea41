package trammel.app.text;

/** Breaks running text into lines that fit a screen. */
final class Paragraph {
  private static final int WIDTH = 100;

  private Paragraph() {}

  /**
   * @param first what the first line begins with
   * @param rest what every further line begins with
   */
  static String wrap(String text, String first, String rest) {
    StringBuilder wrapped = new StringBuilder();
    StringBuilder line = new StringBuilder(first);
    boolean empty = true;
    for (String word : text.split(" ")) {
      if (!empty && line.length() + 1 + word.length() > WIDTH) {
        wrapped.append(line).append('\n');
        line = new StringBuilder(rest);
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    return wrapped.append(line).append('\n').toString();
  }
}
