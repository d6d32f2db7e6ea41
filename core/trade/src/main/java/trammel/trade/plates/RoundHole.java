package trammel.trade.plates;

import trammel.trade.given.Dimension;

/** A drilled or cut round hole. */
public record RoundHole(Point2 centre, double diameterMm) implements Hole {
  public RoundHole {
    Dimension.positiveMm("hole diameter", diameterMm);
  }

  @Override
  public Loop loop() {
    return Loop.circle(centre, diameterMm / 2.0);
  }

  @Override
  public RoundHole placed(Placement placement) {
    return new RoundHole(placement.of(centre), diameterMm);
  }
}
