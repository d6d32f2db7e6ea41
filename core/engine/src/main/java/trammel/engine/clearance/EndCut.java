package trammel.engine.clearance;

/**
 * How much of a link's centre line is left out of a comparison at its two ends.
 *
 * @param frameEndMm length from the frame-fixed end, at least 0
 * @param axleEndMm length from the axle-moved end, at least 0
 */
public record EndCut(double frameEndMm, double axleEndMm) {

  /** The whole body counts. */
  public static final EndCut NONE = new EndCut(0, 0);

  /**
   * @throws IllegalArgumentException if a length is negative or not a number
   */
  public EndCut {
    if (!(frameEndMm >= 0 && axleEndMm >= 0)) {
      throw new IllegalArgumentException(
          "A cut of "
              + frameEndMm
              + " mm at the frame end and "
              + axleEndMm
              + " mm at the axle end was given; neither may be negative. Give 0 to cut nothing.");
    }
  }

  boolean isNone() {
    return frameEndMm == 0 && axleEndMm == 0;
  }

  EndCut and(double moreAtFrameEndMm, double moreAtAxleEndMm) {
    return new EndCut(Math.max(frameEndMm, moreAtFrameEndMm), Math.max(axleEndMm, moreAtAxleEndMm));
  }
}
