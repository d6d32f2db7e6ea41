package trammel.trade.plates;

import trammel.trade.given.Dimension;

/** A round of metal to be kept; radius 0 is a sharp corner. */
public record Disc(Point2 centre, double radiusMm) {
  public Disc {
    Dimension.notNegativeMm("radius", radiusMm);
  }

  public static Disc corner(Point2 point) {
    return new Disc(point, 0.0);
  }
}
