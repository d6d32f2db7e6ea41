package trammel.planning.plates;

/**
 * The inside of a frame rail at one place along it.
 *
 * @param alongMm distance along the rail
 * @param lowerMm height of the lower flange's inner face
 * @param upperMm height of the upper flange's inner face
 */
public record RailStation(double alongMm, double lowerMm, double upperMm) {
  public RailStation {
    Require.finiteMm("place along the rail", alongMm);
    Require.finiteMm("lower flange height", lowerMm);
    Require.finiteMm("upper flange height", upperMm);
    Require.positiveMm("depth between the flanges", upperMm - lowerMm);
  }
}
