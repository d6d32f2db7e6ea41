package trammel.app.paper;

import com.openhtmltopdf.bidi.BidiReorderer;
import com.openhtmltopdf.bidi.BidiSplitter;
import com.openhtmltopdf.bidi.BidiTextRun;
import java.text.Bidi;

/**
 * Puts right-to-left names into the order in which they are read, by the Unicode algorithm as Java
 * brings it. {@link ArabicJoining} joins them before.
 */
public final class ReadingOrder implements BidiSplitter, BidiReorderer {
  private static final String OPENING = "([{<";
  private static final String CLOSING = ")]}>";

  private Bidi bidi;
  private Integer[] order;

  @Override
  public void setParagraph(String text, byte direction) {
    int flags =
        switch (direction) {
          case LTR -> Bidi.DIRECTION_LEFT_TO_RIGHT;
          case RTL -> Bidi.DIRECTION_RIGHT_TO_LEFT;
          default -> Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT;
        };
    bidi = new Bidi(text, flags);
    order = inSight(bidi);
  }

  /** The runs in the order in which they stand on the paper, from left to right. */
  private static Integer[] inSight(Bidi bidi) {
    byte[] levels = new byte[bidi.getRunCount()];
    Integer[] runs = new Integer[levels.length];
    for (int i = 0; i < levels.length; i++) {
      levels[i] = (byte) bidi.getRunLevel(i);
      runs[i] = i;
    }
    if (runs.length > 1) {
      Bidi.reorderVisually(levels, 0, runs, 0, runs.length);
    }
    return runs;
  }

  /** A whole text as its letters stand on the paper, from left to right. */
  public static String inSight(String text) {
    ReadingOrder order = new ReadingOrder();
    order.setParagraph(text, NEUTRAL);
    StringBuilder seen = new StringBuilder(text.length());
    for (int i = 0; i < order.countTextRuns(); i++) {
      BidiTextRun run = order.getVisualRun(i);
      String part = text.substring(run.getStart(), run.getStart() + run.getLength());
      seen.append(run.getDirection() == RTL ? order.reorderRTLTextToLTR(part) : part);
    }
    return seen.toString();
  }

  @Override
  public int countTextRuns() {
    return bidi.getRunCount();
  }

  @Override
  public BidiTextRun getVisualRun(int index) {
    int run = order[index];
    int start = bidi.getRunStart(run);
    byte direction = bidi.getRunLevel(run) % 2 == 0 ? LTR : RTL;
    return new BidiTextRun(start, bidi.getRunLimit(run) - start, direction);
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
