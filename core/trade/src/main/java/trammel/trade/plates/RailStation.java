package trammel.trade.plates;

import trammel.trade.given.Dimension;

/**
 * The inside of a frame rail at one place along it.
 *
 * @param alongMm distance along the rail
 * @param lowerMm height of the lower flange's inner face
 * @param upperMm height of the upper flange's inner face
 */
public record RailStation(double alongMm, double lowerMm, double upperMm) {
  public RailStation {
    Dimension.finiteMm("place along the rail", alongMm);
    Dimension.finiteMm("lower flange height", lowerMm);
    Dimension.finiteMm("upper flange height", upperMm);
    Dimension.positiveMm("depth between the flanges", upperMm - lowerMm);
  }
}
