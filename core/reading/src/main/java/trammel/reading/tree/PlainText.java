package trammel.reading.tree;

import java.util.Optional;

/**
 * Tells which characters have no place in a text: they do not show, start lines of their own, or
 * turn the direction of writing, so that what is printed would not be what was typed. They are the
 * control characters C0 and C1 of ISO/IEC 6429, the line and paragraph separator, the embeddings,
 * overrides and isolates of the Unicode bidirectional algorithm (UAX #9, table 4), and halves of a
 * surrogate pair. Marks that a script needs, such as joiners, have a place.
 */
public final class PlainText {
  private PlainText() {}

  /** The first character that has no place in a text of one line, in words; empty if none. */
  public static Optional<String> troubleOfLine(String text) {
    return trouble(text, false);
  }

  /** The first character that has no place in a text of several lines, in words; empty if none. */
  public static Optional<String> troubleOfLines(String text) {
    return trouble(text, true);
  }

  private static Optional<String> trouble(String text, boolean severalLines) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean usual = c >= ' ' && c < '\u007f' || severalLines && c == '\n';
      if (!usual && isOutOfPlace(text, i)) {
        return Optional.of(words(c));
      }
    }
    return Optional.empty();
  }

  private static boolean isOutOfPlace(String text, int at) {
    char c = text.charAt(at);
    if (Character.isHighSurrogate(c)) {
      return at + 1 == text.length() || !Character.isLowSurrogate(text.charAt(at + 1));
    }
    if (Character.isLowSurrogate(c)) {
      return at == 0 || !Character.isHighSurrogate(text.charAt(at - 1));
    }
    return !shows(c);
  }

  /** False for characters that no message may print as they are. */
  static boolean shows(char c) {
    return !(Character.isISOControl(c)
        || c == '\u2028'
        || c == '\u2029'
        || c >= '\u202a' && c <= '\u202e'
        || c >= '\u2066' && c <= '\u2069');
  }

  private static String words(char c) {
    return switch (c) {
      case '\n', '\r' -> "a line break";
      case '\t' -> "a tab";
      default -> "the character " + code(c) + ", which does not show";
    };
  }

  private static String code(char c) {
    String digits = Integer.toHexString(c).toUpperCase(java.util.Locale.ROOT);
    return "U+" + "0".repeat(4 - digits.length()) + digits;
  }
}
