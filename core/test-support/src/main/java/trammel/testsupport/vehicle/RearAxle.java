package trammel.testsupport.vehicle;

import java.util.OptionalDouble;
import trammel.testsupport.Draw;

/**
 * The axle housing, in inches.
 *
 * @param tubeDiameterIn outside diameter of the tube
 * @param tubeWallIn its wall
 * @param flangeToFlangeIn over the wheel-mounting faces, wide enough for the tyres to pass the
 *     rails
 * @param innerLimitIn half-width of the centre section
 * @param outerLimitIn half-distance to the spring pads, inside the backing plates
 * @param housingRadiusIn radius of the centre housing, if it was measured
 * @param pinionForwardIn rear universal joint ahead of the axle's centre
 * @param pinionLeftIn the same to the left
 * @param pinionUpIn the same up: below the centre, as the ring and pinion are offset
 * @param pinionAngleDeg nose up, as it was read, from level
 */
record RearAxle(
    double tubeDiameterIn,
    double tubeWallIn,
    double flangeToFlangeIn,
    double innerLimitIn,
    double outerLimitIn,
    OptionalDouble housingRadiusIn,
    double pinionForwardIn,
    double pinionLeftIn,
    double pinionUpIn,
    double pinionAngleDeg) {
  /** Least room between tyre and rail. */
  static final double TYRE_TO_RAIL_IN = 1.25;

  private static final Range OUTER_LIMIT_INBOARD_IN = Range.of(4, 6);

  static RearAxle draw(Draw draw, VehicleKind kind, RailPair rails, TyreAndWheel tyre) {
    double passesTheRailsIn =
        Math.max(rails.outsideAtAxleIn(), rails.outsideAtFrontIn())
            + 2 * (tyre.widthIn() + TYRE_TO_RAIL_IN + tyre.wheelOffsetIn());
    double flangesIn =
        Range.onTheTape(Math.max(kind.flangeToFlangeIn().draw(draw), passesTheRailsIn + 0.0625));
    return new RearAxle(
        draw.oneOf(2.75, 3.0, 3.0, 3.25, 3.5),
        draw.oneOf(0.1875, 0.25, 0.25, 0.3125),
        flangesIn,
        Range.of(5.5, 8).onTheTape(draw),
        Range.onTheTape(flangesIn / 2 - OUTER_LIMIT_INBOARD_IN.draw(draw)),
        draw.withChance(0.6)
            ? OptionalDouble.of(Range.of(4.75, 6.25).onTheTape(draw))
            : OptionalDouble.empty(),
        Range.of(9.5, 12.5).onTheTape(draw),
        draw.withChance(0.7) ? 0 : Range.of(-1.25, 1.25).onTheTape(draw),
        Range.of(-2, -0.5).onTheTape(draw),
        Range.stepped(Range.of(0, 5).draw(draw), 0.1));
  }
}
