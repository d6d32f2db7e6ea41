package trammel.app.drawings;

/** Texts within XML and HTML. */
public final class Markup {
  private Markup() {}

  /** The text with what XML takes for its own written out; control characters become blanks. */
  public static String escaped(String text) {
    StringBuilder escaped = new StringBuilder(text.length() + 16);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> escaped.append("&amp;");
        case '<' -> escaped.append("&lt;");
        case '>' -> escaped.append("&gt;");
        case '"' -> escaped.append("&quot;");
        case '\'' -> escaped.append("&#39;");
        default -> escaped.append(isPrintable(text, i) ? c : ' ');
      }
    }
    return escaped.toString();
  }

  /** Half a surrogate pair, and the two last code units, have no place in XML. */
  private static boolean isPrintable(String text, int index) {
    char c = text.charAt(index);
    if (Character.isHighSurrogate(c)) {
      return index + 1 < text.length() && Character.isLowSurrogate(text.charAt(index + 1));
    }
    if (Character.isLowSurrogate(c)) {
      return index > 0 && Character.isHighSurrogate(text.charAt(index - 1));
    }
    return !Character.isISOControl(c) && c < '\ufffe';
  }
}
