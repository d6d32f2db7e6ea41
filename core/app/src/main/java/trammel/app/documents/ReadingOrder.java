package trammel.app.documents;

import com.openhtmltopdf.bidi.BidiReorderer;
import com.openhtmltopdf.bidi.BidiSplitter;
import com.openhtmltopdf.bidi.BidiTextRun;
import java.text.Bidi;

/**
 * Puts right-to-left names into the order in which they are read, by the Unicode algorithm as Java
 * brings it. Arabic letters keep their stand-alone forms.
 */
final class ReadingOrder implements BidiSplitter, BidiReorderer {
  private static final String OPENING = "([{<";
  private static final String CLOSING = ")]}>";

  private Bidi bidi;

  @Override
  public void setParagraph(String text, byte direction) {
    int flags =
        switch (direction) {
          case LTR -> Bidi.DIRECTION_LEFT_TO_RIGHT;
          case RTL -> Bidi.DIRECTION_RIGHT_TO_LEFT;
          default -> Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT;
        };
    bidi = new Bidi(text, flags);
  }

  @Override
  public int countTextRuns() {
    return bidi.getRunCount();
  }

  @Override
  public BidiTextRun getVisualRun(int index) {
    int start = bidi.getRunStart(index);
    byte direction = bidi.getRunLevel(index) % 2 == 0 ? LTR : RTL;
    return new BidiTextRun(start, bidi.getRunLimit(index) - start, direction);
  }

  @Override
  public byte getBaseDirection(String text) {
    return new Bidi(text, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT).baseIsLeftToRight() ? LTR : RTL;
  }

  @Override
  public String reorderRTLTextToLTR(String text) {
    StringBuilder visual = new StringBuilder(text).reverse();
    for (int i = 0; i < visual.length(); i++) {
      int opening = OPENING.indexOf(visual.charAt(i));
      int closing = CLOSING.indexOf(visual.charAt(i));
      if (opening >= 0) {
        visual.setCharAt(i, CLOSING.charAt(opening));
      } else if (closing >= 0) {
        visual.setCharAt(i, OPENING.charAt(closing));
      }
    }
    return visual.toString();
  }

  @Override
  public String shapeText(String text) {
    return text;
  }

  @Override
  public String deshapeText(String text) {
    return text;
  }

  @Override
  public boolean isLiveImplementation() {
    return true;
  }
}
