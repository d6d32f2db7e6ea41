package trammel.app.cutfile;

import java.util.List;
import trammel.reading.tree.Problem;

/**
 * A cut file that was read and checked.
 *
 * @param format one of {@link #FORMATS}
 * @param name what the file calls itself
 * @param unit the unit of every size in it
 * @param task what is to be cut
 * @param remarks what is to be looked at in the file, which is used as it is
 */
public record CutFile(
    String format, String name, String unit, CutTask task, List<Problem> remarks) {
  /** Pieces of one section from bars. */
  public static final String BARS = "cut1d/1";

  /** Pieces of several sections from bars. */
  public static final String BAR_JOB = "cutjob1d/1";

  /** Rectangles from sheets or a strip. */
  public static final String RECTANGLES = "rect2d/1";

  /** Outlines from sheets or a strip. */
  public static final String OUTLINES = "poly2d/1";

  /** What the key {@code format} may say. */
  public static final List<String> FORMATS = List.of(BARS, BAR_JOB, RECTANGLES, OUTLINES);

  /** Copies the list. */
  public CutFile {
    remarks = List.copyOf(remarks);
  }
}
