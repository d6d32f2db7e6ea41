package trammel.app.documents;

import java.util.Set;
import java.util.stream.Collectors;
import trammel.app.paper.Lettering;

/**
 * Letters that the font of the paper has not: a sign stands in their place, and under the heading
 * it is said for which, so that nobody takes it for what was written.
 */
final class MissingLetters {
  private static final String UNDER = "</h1>";
  private static final String SIGN = "\u25a1";

  private MissingLetters() {}

  /** A printable document with a sign for each missing letter, and a line that says so. */
  static String toldIn(String html) {
    Set<Integer> missing = Lettering.shared().missing(html);
    if (missing.isEmpty()) {
      return html;
    }
    StringBuilder told = new StringBuilder(html.length() + 200);
    html.codePoints()
        .forEach(
            letter -> {
              if (missing.contains(letter)) {
                told.append(SIGN);
              } else {
                told.appendCodePoint(letter);
              }
            });
    String which =
        missing.stream()
            .map(letter -> String.format("U+%04X", letter))
            .collect(Collectors.joining(", "));
    int under = told.indexOf(UNDER) + UNDER.length();
    told.insert(
        under,
        "<p class=\"small\">"
            + SIGN
            + " stands for letters that the font of this paper has not: "
            + which
            + ". The HTML file shows them.</p>");
    return told.toString();
  }
}
