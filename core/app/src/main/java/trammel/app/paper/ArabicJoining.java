package trammel.app.paper;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.Map;

/**
 * Joins Arabic letters as they are written: each takes the form of its place in the word (Unicode
 * Standard, 9.2, cursive joining). The forms are those of the presentation blocks, in which the
 * isolated, final, initial and medial form of a letter follow each other; which letter they are of
 * is what Unicode's own compatibility mapping says.
 */
public final class ArabicJoining {
  private static final int FIRST_A = 0xfb50;
  private static final int LAST_A = 0xfbff;
  private static final int FIRST_B = 0xfe80;
  private static final int LAST_B = 0xfefc;
  private static final char LAM = '\u0644';

  /** Stretches a join and joins on both sides. */
  private static final char TATWEEL = '\u0640';

  private static final int FINAL = 1;
  private static final int INITIAL = 2;
  private static final int MEDIAL = 3;
  private static final int BOTH_SIDES = 4;

  /** First of the forms of a letter, or of lam with an alef, and how many there are. */
  private record Forms(char first, int count) {}

  private static final Map<String, Forms> FORMS = forms();

  private ArabicJoining() {}

  private static Map<String, Forms> forms() {
    Map<String, Forms> forms = new HashMap<>();
    addForms(forms, FIRST_B, LAST_B);
    addForms(forms, FIRST_A, LAST_A);
    return forms;
  }

  private static void addForms(Map<String, Forms> forms, int first, int last) {
    int form = first;
    while (form <= last) {
      String letters = letters(form);
      int next = form + 1;
      while (next <= last && next < form + BOTH_SIDES && letters(next).equals(letters)) {
        next++;
      }
      // Three letters and more are whole words; two other than lam and alef need no joining.
      boolean joins = letters.length() == 1 || letters.length() == 2 && letters.charAt(0) == LAM;
      if (joins && letters.charAt(0) < FIRST_A) {
        forms.putIfAbsent(letters, new Forms((char) form, next - form));
      }
      form = next;
    }
  }

  private static String letters(int form) {
    return Normalizer.normalize(Character.toString(form), Normalizer.Form.NFKC);
  }

  /** The text in the order in which it is read, its Arabic letters in the forms of their places. */
  public static String joined(String text) {
    StringBuilder joined = new StringBuilder(text.length());
    int at = 0;
    while (at < text.length()) {
      char letter = text.charAt(at);
      int next = next(text, at);
      boolean pair =
          letter == LAM && next == at + 1 && FORMS.containsKey(text.substring(at, at + 2));
      Forms forms = FORMS.get(pair ? text.substring(at, at + 2) : Character.toString(letter));
      if (forms == null || letter == TATWEEL) {
        joined.append(letter);
      } else {
        boolean before = joinsOn(text, previous(text, at));
        boolean after = !pair && forms.count() == BOTH_SIDES && joinsBack(text, next);
        joined.append(form(forms, before, after));
      }
      at += pair ? 2 : 1;
    }
    return joined.toString();
  }

  private static char form(Forms forms, boolean before, boolean after) {
    int form = before ? after ? MEDIAL : FINAL : after ? INITIAL : 0;
    return (char) (forms.first() + Math.min(form, forms.count() - 1));
  }

  /** Whether a letter joins the one after it. */
  private static boolean joinsOn(String text, int at) {
    return at >= 0 && (text.charAt(at) == TATWEEL || count(text, at) == BOTH_SIDES);
  }

  /** Whether a letter joins the one before it. */
  private static boolean joinsBack(String text, int at) {
    return at < text.length() && (text.charAt(at) == TATWEEL || count(text, at) > 1);
  }

  private static int count(String text, int at) {
    Forms forms = FORMS.get(text.substring(at, at + 1));
    return forms == null ? 0 : forms.count();
  }

  /** The next letter, marks over and under this one passed by. */
  private static int next(String text, int at) {
    int next = at + 1;
    while (next < text.length() && isMark(text.charAt(next))) {
      next++;
    }
    return next;
  }

  private static int previous(String text, int at) {
    int previous = at - 1;
    while (previous >= 0 && isMark(text.charAt(previous))) {
      previous--;
    }
    return previous;
  }

  private static boolean isMark(char letter) {
    return Character.getType(letter) == Character.NON_SPACING_MARK;
  }
}
