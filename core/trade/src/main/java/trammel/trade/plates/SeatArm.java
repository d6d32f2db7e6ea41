package trammel.trade.plates;

import trammel.trade.given.Dimension;

/**
 * An arm, used in pairs, that saddles onto a round axle tube and carries a spring seat beside it on
 * a level edge. Axes as seen from the side with the tube's centre at the origin.
 *
 * @param name what the shop calls it
 * @param thicknessMm plate thickness
 * @param tubeDiameterMm outside diameter of the axle tube
 * @param saddleWrapRad how much of the tube's round the saddle spans
 * @param seatMiddle middle of the level edge under the seat
 * @param seatLengthMm length of the level edge
 * @param edgeDepthMm depth of the arm under both ends of the level edge
 */
public record SeatArm(
    String name,
    double thicknessMm,
    double tubeDiameterMm,
    double saddleWrapRad,
    Point2 seatMiddle,
    double seatLengthMm,
    double edgeDepthMm)
    implements PlateShape {
  private static final Point2 TUBE_CENTRE = new Point2(0.0, 0.0);

  public SeatArm {
    Dimension.text("arm name", name);
    Dimension.positiveMm("thickness of " + name, thicknessMm);
    Dimension.positiveMm("axle tube diameter", tubeDiameterMm);
    Dimension.positiveMm("seat length of " + name, seatLengthMm);
    Dimension.positiveMm("edge depth of " + name, edgeDepthMm);
    Dimension.angleRad(
        "saddle of " + name,
        saddleWrapRad,
        Math.toRadians(20.0),
        Math.toRadians(170.0),
        "Give 120\u00b0 unless something is in the way.");
    draw(
        name,
        thicknessMm,
        tubeDiameterMm / 2.0,
        saddleWrapRad,
        seatMiddle,
        seatLengthMm,
        edgeDepthMm);
  }

  /** Length of the weld line along one face of the saddle. */
  public double saddleLengthMm() {
    return tubeDiameterMm / 2.0 * saddleWrapRad;
  }

  /** The saddle's edge on the tube. */
  public Arc saddle() {
    double middleRad = Math.atan2(seatMiddle.yMm() - edgeDepthMm / 2.0, Math.abs(seatMiddle.xMm()));
    double axisRad = seatMiddle.xMm() < 0.0 ? Math.PI - middleRad : middleRad;
    return Arc.about(
        TUBE_CENTRE, tubeDiameterMm / 2.0, axisRad - saddleWrapRad / 2.0, saddleWrapRad);
  }

  @Override
  public Outline outline() {
    return draw(
        name,
        thicknessMm,
        tubeDiameterMm / 2.0,
        saddleWrapRad,
        seatMiddle,
        seatLengthMm,
        edgeDepthMm);
  }

  private static Outline draw(
      String name,
      double landMm,
      double radiusMm,
      double wrapRad,
      Point2 seat,
      double lengthMm,
      double depthMm) {
    // Drawn with the seat on the side of x, and turned over if it is on the other.
    double nearMm = Math.abs(seat.xMm()) - lengthMm / 2.0;
    double farMm = Math.abs(seat.xMm()) + lengthMm / 2.0;
    Dimension.atLeastMm(
        "distance of the seat of " + name + " from the tube's centre, at its near end",
        nearMm,
        radiusMm,
        "Move the seat further from the tube, or make the seat smaller.");
    double axisRad = Math.atan2(seat.yMm() - depthMm / 2.0, Math.abs(seat.xMm()));
    double upperRad = axisRad + wrapRad / 2.0;
    double lowerRad = axisRad - wrapRad / 2.0;
    // A foot one plate thickness high leaves something to weld to where the side meets the tube.
    double footMm = radiusMm + landMm;
    Point2 upper = Point2.polar(TUBE_CENTRE, radiusMm, upperRad);
    Loop loop =
        Path.from(upper)
            .lineTo(Point2.polar(TUBE_CENTRE, footMm, upperRad))
            .lineTo(nearMm, seat.yMm())
            .lineTo(farMm, seat.yMm())
            .lineTo(farMm, seat.yMm() - depthMm)
            .lineTo(Point2.polar(TUBE_CENTRE, footMm, lowerRad))
            .lineTo(Point2.polar(TUBE_CENTRE, radiusMm, lowerRad))
            .arcTo(upper, TUBE_CENTRE, true)
            .close();
    Dimension.atLeastMm(
        "distance of the edge of " + name + " from the tube's centre",
        loop.distanceMm(TUBE_CENTRE),
        radiusMm - Loop.JOIN_MM,
        "Move the seat further from the tube, or bring it nearer to the height of the axle.");
    Outline outline = Outline.solid(loop);
    return seat.xMm() < 0.0 ? outline.mirrored() : outline;
  }
}
