package trammel.trade.tubes;

import trammel.trade.given.Dimension;

/**
 * How far a shank can be screwed in and out of a threaded bore: all distances from the joint's
 * centre to the face that the jam nut bears on.
 *
 * @param shortestMm screwed in as far as bore, thread and jam nut allow
 * @param longestMm screwed out to the least engagement
 */
public record ThreadRange(double shortestMm, double longestMm) {
  /** Least engagement in steel, in thread diameters: common practice, no source. */
  public static final double STEEL_ENGAGEMENT = 1.0;

  /**
   * The range of a joint in a bore.
   *
   * @param joint joint and jam nut
   * @param boreDepthMm full thread in the bore
   * @param engagementMm least engagement
   */
  public static ThreadRange of(ThreadedShank joint, double boreDepthMm, double engagementMm) {
    double diameterMm = joint.thread().diameterMm();
    Dimension.positiveMm("thread depth for " + joint.name(), boreDepthMm);
    Dimension.atLeastMm(
        "least engagement of " + joint.name(),
        engagementMm,
        STEEL_ENGAGEMENT * diameterMm,
        "Keep at least one thread diameter in steel.");
    Dimension.atMostMm(
        "least engagement of " + joint.name(),
        engagementMm,
        boreDepthMm,
        "Use a deeper thread in the tube end.");
    double nutOnThreadMm = joint.neckMm() + joint.jamNutMm();
    double shortestMm = Math.max(nutOnThreadMm, joint.shankMm() - boreDepthMm);
    double longestMm = joint.shankMm() - engagementMm;
    if (!(longestMm > shortestMm)) {
      throw Dimension.refuse(
          "adjustment of " + joint.name(),
          Dimension.lengthText(longestMm - shortestMm),
          "more than 0 mm",
          "Use a joint with a longer thread by "
              + Dimension.lengthText(shortestMm - longestMm)
              + ", a thinner jam nut, or a deeper thread in the tube end.");
    }
    return new ThreadRange(shortestMm, longestMm);
  }

  public double middleMm() {
    return (shortestMm + longestMm) / 2.0;
  }

  /** How far the joint moves either way from the middle. */
  public double halfMm() {
    return (longestMm - shortestMm) / 2.0;
  }
}
