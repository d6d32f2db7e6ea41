package trammel.app.documents;

import com.openhtmltopdf.extend.FSTextBreaker;
import java.text.BreakIterator;
import java.util.BitSet;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Keeps a number and its unit on one line: {@code 2 7/8 in} that breaks after its 7 reads as
 * another length.
 */
final class Unbroken {
  private static final String BODY = "<body";

  private static final Pattern TEXT = Pattern.compile(">[^<]*[0-9][^<]*");

  private static final Pattern QUANTITY =
      Pattern.compile(
          "(± )?[-+]?[0-9][0-9.,]*(/[0-9]+)?( [0-9]+/[0-9]+)?"
              + " (in|ft|mm|m|deg|lb|kg|N|Nm|lb-ft|lb/in|N/mm|psi|ksi|kPa|MPa|Hz|mph|km/h|rpm|h|%)"
              + "(?![\\w/])");

  private Unbroken() {}

  /** Where a line of the printed document may end: after a word, never within a quantity. */
  static final class LineEnds implements FSTextBreaker {
    private final BreakIterator words = BreakIterator.getLineInstance(Locale.ENGLISH);
    private final BitSet within = new BitSet();

    @Override
    public void setText(String text) {
      words.setText(text);
      within.clear();
      Matcher quantities = QUANTITY.matcher(text);
      while (quantities.find()) {
        within.set(quantities.start() + 1, quantities.end());
      }
    }

    @Override
    public int next() {
      int end = words.next();
      while (end != BreakIterator.DONE && within.get(end)) {
        end = words.next();
      }
      return end;
    }
  }

  /** The document with every quantity in its texts kept together by the browser. */
  static String in(String html) {
    int body = html.indexOf(BODY);
    if (body < 0) {
      return html;
    }
    StringBuilder whole = new StringBuilder(html.length() + html.length() / 8);
    whole.append(html, 0, body);
    Matcher texts = TEXT.matcher(html);
    int from = body;
    for (boolean found = texts.find(body); found; found = texts.find()) {
      whole.append(html, from, texts.start());
      whole.append(QUANTITY.matcher(texts.group()).replaceAll("<span class=\"q\">$0</span>"));
      from = texts.end();
    }
    return whole.append(html, from, html.length()).toString();
  }
}
