package trammel.app.cutfile;

import java.util.List;
import java.util.Map;
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
  public static final String BARS = "trammel-cut-bars/1";

  /** Pieces of several sections from bars. */
  public static final String BAR_JOB = "trammel-cut-job/1";

  /** Rectangles from sheets or a strip. */
  public static final String RECTANGLES = "trammel-cut-rectangles/1";

  /** Outlines from sheets or a strip. */
  public static final String OUTLINES = "trammel-cut-outlines/1";

  /** What the key {@code format} may say. */
  public static final List<String> FORMATS = List.of(BARS, BAR_JOB, RECTANGLES, OUTLINES);

  /** Former names of the formats, which are still read. */
  static final Map<String, String> FORMER =
      Map.of(
          "cut1d/1", BARS,
          "cutjob1d/1", BAR_JOB,
          "rect2d/1", RECTANGLES,
          "poly2d/1", OUTLINES);

  /** Copies the list. */
  public CutFile {
    remarks = List.copyOf(remarks);
  }
}
