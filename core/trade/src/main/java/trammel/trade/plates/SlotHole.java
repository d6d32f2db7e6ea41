package trammel.trade.plates;

import java.util.List;
import trammel.trade.given.Dimension;

/**
 * A slot with round ends.
 *
 * @param centre middle of the slot
 * @param widthMm width across, which is also the diameter of the round ends
 * @param travelMm distance between the centres of the two round ends
 * @param angleRad direction of the slot, anticlockwise from x
 */
public record SlotHole(Point2 centre, double widthMm, double travelMm, double angleRad)
    implements Hole {
  public SlotHole {
    Dimension.positiveMm("slot width", widthMm);
    Dimension.positiveMm("slot travel", travelMm);
    Dimension.angleRad(
        "slot direction", angleRad, -2.0 * Math.PI, 2.0 * Math.PI, "Give it within one turn.");
  }

  @Override
  public Loop loop() {
    Point2 start = Point2.polar(centre, travelMm / 2.0, angleRad + Math.PI);
    Point2 end = Point2.polar(centre, travelMm / 2.0, angleRad);
    return Belt.around(List.of(new Disc(start, widthMm / 2.0), new Disc(end, widthMm / 2.0)));
  }

  @Override
  public SlotHole placed(Placement placement) {
    double turnedRad = placement.mirrored() ? Math.PI - angleRad : angleRad;
    return new SlotHole(
        placement.of(centre),
        widthMm,
        travelMm,
        Math.IEEEremainder(turnedRad + placement.angleRad(), 2.0 * Math.PI));
  }
}
