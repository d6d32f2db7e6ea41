package trammel.trade.tubes;

import trammel.trade.given.Dimension;
import trammel.trade.steel.RoundTube;

/**
 * A joint screwed straight into a thick tube, drilled and tapped, set at the middle of its
 * adjustment.
 *
 * @param joint joint and jam nut
 * @param depthMm full thread from the tube's end
 * @param engagementMm least engagement of the joint
 * @param threadPercent height of thread to tap, in percent of the full one
 */
public record TappedEnd(
    ThreadedShank joint, double depthMm, double engagementMm, double threadPercent)
    implements TubeEnd {
  /** The lead of a plug tap, in pitches: common practice, no source. */
  private static final double TAP_LEAD_PITCHES = 4.0;

  /** Least wall outside the thread, in thread diameters: common practice, no source. */
  private static final double LEAST_WALL_FACTOR = 0.15;

  public TappedEnd {
    joint.thread().tapDrillMm(threadPercent);
    ThreadRange.of(joint, depthMm, engagementMm);
  }

  /** A tapped end with one thread diameter of least engagement and 75 % thread. */
  public static TappedEnd of(ThreadedShank joint, double depthMm) {
    double engagementMm = ThreadRange.STEEL_ENGAGEMENT * joint.thread().diameterMm();
    return new TappedEnd(joint, depthMm, engagementMm, 75.0);
  }

  public ThreadRange range() {
    return ThreadRange.of(joint, depthMm, engagementMm);
  }

  public double tapDrillMm() {
    return joint.thread().tapDrillMm(threadPercent);
  }

  /** How deep to drill: the full thread and the lead of the tap. */
  public double drillDepthMm() {
    return depthMm + TAP_LEAD_PITCHES * joint.thread().pitchMm();
  }

  @Override
  public double takeUpMm(RoundTube tube) {
    return range().middleMm();
  }

  @Override
  public double canShortenMm() {
    return range().halfMm();
  }

  @Override
  public double canLengthenMm() {
    return range().halfMm();
  }

  @Override
  public double insideMm() {
    return drillDepthMm();
  }

  @Override
  public void requireFits(RoundTube tube) {
    Dimension.atMostMm(
        "bore of the tube to be tapped " + joint.thread().name(),
        tube.insideMm(),
        tapDrillMm(),
        "Use a thicker wall, a larger thread, or a weld-in threaded end.");
    double diameterMm = joint.thread().diameterMm();
    Dimension.atLeastMm(
        "wall left outside thread " + joint.thread().name(),
        (tube.outsideMm() - diameterMm) / 2.0,
        LEAST_WALL_FACTOR * diameterMm,
        "Use a larger tube or a smaller thread.");
  }
}
