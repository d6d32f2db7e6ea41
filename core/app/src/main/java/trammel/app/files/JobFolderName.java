package trammel.app.files;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Set;

/**
 * The name of a job's folder. A number of plain letters, digits, hyphens, dots and underscores is
 * its own name. Any other loses the rest and gets a few signs of its SHA-256 sum behind it, so that
 * two numbers that differ only in what was lost are told apart.
 */
public final class JobFolderName {
  private static final int LONGEST = 48;
  private static final int SUM_SIGNS = 6;

  /** Device names of one system, with any ending. Source: Microsoft, Naming Files, Paths. */
  private static final Set<String> RESERVED =
      Set.of(
          "con", "prn", "aux", "nul", "com0", "com1", "com2", "com3", "com4", "com5", "com6",
          "com7", "com8", "com9", "lpt0", "lpt1", "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7",
          "lpt8", "lpt9");

  private JobFolderName() {}

  /** The name of the folder for a job's number. */
  public static String of(String number) {
    String composed = Normalizer.normalize(number, Normalizer.Form.NFC);
    String plain = plain(composed);
    if (plain.equals(composed) && !isReserved(plain)) {
      return plain;
    }
    String sum = WrittenList.sum(composed.getBytes(StandardCharsets.UTF_8)).substring(0, SUM_SIGNS);
    return (plain.isEmpty() || isReserved(plain) ? "job" + dash(plain) : plain) + "-" + sum;
  }

  private static String dash(String text) {
    return text.isEmpty() ? "" : "-" + text;
  }

  private static boolean isReserved(String name) {
    int dot = name.indexOf('.');
    return RESERVED.contains((dot < 0 ? name : name.substring(0, dot)).toLowerCase(Locale.ROOT));
  }

  private static String plain(String number) {
    String apart = Normalizer.normalize(number, Normalizer.Form.NFKD);
    StringBuilder plain = new StringBuilder();
    for (int i = 0; i < apart.length() && plain.length() < LONGEST; i++) {
      char c = apart.charAt(i);
      boolean inside = plain.length() > 0;
      if (c < 128 && Character.isLetterOrDigit(c) || inside && (c == '-' || c == '_' || c == '.')) {
        plain.append(c);
      } else if (inside && !isMark(c) && plain.charAt(plain.length() - 1) != '-') {
        plain.append('-');
      }
    }
    while (plain.length() > 0 && "-_.".indexOf(plain.charAt(plain.length() - 1)) >= 0) {
      plain.setLength(plain.length() - 1);
    }
    return plain.toString();
  }

  private static boolean isMark(int c) {
    int type = Character.getType(c);
    return type == Character.NON_SPACING_MARK
        || type == Character.COMBINING_SPACING_MARK
        || type == Character.ENCLOSING_MARK
        || type == Character.FORMAT;
  }

  /**
   * What is left of a number by which people and file systems tell jobs apart: letters and digits
   * of any script, small, without marks. Two jobs of one run whose numbers come to the same are
   * taken for a slip.
   */
  public static String folded(String number) {
    String apart = Normalizer.normalize(number, Normalizer.Form.NFKD);
    // Up and down again: a sharp s is two letters only in capitals.
    String small = apart.toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
    StringBuilder folded = new StringBuilder();
    small
        .codePoints()
        .filter(c -> !isMark(c))
        .forEach(
            c -> {
              if (Character.isLetterOrDigit(c)) {
                folded.appendCodePoint(c);
              } else if (folded.length() > 0 && folded.charAt(folded.length() - 1) != '-') {
                folded.append('-');
              }
            });
    while (folded.length() > 0 && folded.charAt(folded.length() - 1) == '-') {
      folded.setLength(folded.length() - 1);
    }
    return folded.toString();
  }
}
