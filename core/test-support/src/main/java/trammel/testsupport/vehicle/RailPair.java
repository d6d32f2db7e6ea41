package trammel.testsupport.vehicle;

import trammel.testsupport.Draw;

/**
 * The two rails, at ride, in inches. The width between them is what two flanges leave. From the
 * front mounts to the axle they run straight, so that the two heights say what the rake says.
 *
 * @param channel open channel, or else a box
 * @param outsideAtAxleIn over both, at the axle
 * @param outsideAtFrontIn over both, at the front mounts
 * @param depthIn height of the section
 * @param flangeIn width of the section
 * @param wallIn thickness
 * @param frontMountsForwardIn front mounts ahead of the axle
 */
record RailPair(
    boolean channel,
    double outsideAtAxleIn,
    double outsideAtFrontIn,
    double depthIn,
    double flangeIn,
    double wallIn,
    double frontMountsForwardIn) {
  private static final Range WIDER_IN_FRONT_IN = Range.of(-2, 3);
  private static final Range FRONT_MOUNTS_IN = Range.of(24, 32);

  static RailPair draw(Draw draw, VehicleKind.Frame frame) {
    double outsideIn = frame.outsideIn().onTheTape(draw);
    return new RailPair(
        draw.withChance(frame.channelShare()),
        outsideIn,
        outsideIn + WIDER_IN_FRONT_IN.onTheTape(draw),
        frame.depthIn().onTheTape(draw),
        frame.flangeIn().onTheTape(draw),
        Range.stepped(frame.wallIn().draw(draw), 0.001),
        FRONT_MOUNTS_IN.onTheTape(draw));
  }

  double betweenAtAxleIn() {
    return outsideAtAxleIn - 2 * flangeIn;
  }

  double betweenAtFrontIn() {
    return outsideAtFrontIn - 2 * flangeIn;
  }

  /** Half the lesser width between the rails: what stands between them everywhere fits in this. */
  double roomToEachSideIn() {
    return Math.min(betweenAtAxleIn(), betweenAtFrontIn()) / 2;
  }
}
