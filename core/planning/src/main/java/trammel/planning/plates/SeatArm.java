package trammel.planning.plates;

import java.util.ArrayList;
import java.util.List;

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
    Require.text("arm name", name);
    Require.positiveMm("thickness of " + name, thicknessMm);
    Require.positiveMm("axle tube diameter", tubeDiameterMm);
    Require.positiveMm("seat length of " + name, seatLengthMm);
    Require.positiveMm("edge depth of " + name, edgeDepthMm);
    Require.angleRad(
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
    double half = lengthMm / 2.0;
    double axisRad = TUBE_CENTRE.headingRad(seat.shifted(0.0, -depthMm / 2.0));
    Point2 start = Point2.polar(TUBE_CENTRE, radiusMm, axisRad - wrapRad / 2.0);
    Point2 end = Point2.polar(TUBE_CENTRE, radiusMm, axisRad + wrapRad / 2.0);
    List<Disc> discs = new ArrayList<>();
    discs.add(Disc.corner(seat.shifted(-half, 0.0)));
    discs.add(Disc.corner(seat.shifted(half, 0.0)));
    discs.add(Disc.corner(seat.shifted(-half, -depthMm)));
    discs.add(Disc.corner(seat.shifted(half, -depthMm)));
    discs.add(Disc.corner(start));
    discs.add(Disc.corner(end));
    // A foot one plate thickness high leaves something to weld to where the side meets the tube.
    double footMm = radiusMm + landMm;
    discs.add(Disc.corner(Point2.polar(TUBE_CENTRE, footMm, axisRad - wrapRad / 2.0)));
    discs.add(Disc.corner(Point2.polar(TUBE_CENTRE, footMm, axisRad + wrapRad / 2.0)));
    Loop outer =
        Path.detour(
            Belt.around(discs),
            end,
            start,
            List.of(new Arc(end, start, TUBE_CENTRE, false)),
            "The seat of "
                + name
                + " reaches round the tube's saddle of "
                + Require.degreesText(wrapRad)
                + ".\nMove the seat further from the tube, or make the seat smaller.");
    Require.atLeastMm(
        "distance of the edge of " + name + " from the tube's centre",
        outer.distanceMm(TUBE_CENTRE),
        radiusMm - Loop.JOIN_MM,
        "Move the seat further from the tube, or make the seat smaller.");
    return Outline.solid(outer);
  }
}
