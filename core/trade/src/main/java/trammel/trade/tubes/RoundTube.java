package trammel.trade.tubes;

import trammel.trade.given.Dimension;
import trammel.trade.plates.Plate;

/** A round tube by outside diameter and wall. */
public record RoundTube(double outsideDiameterMm, double wallMm) {
  public RoundTube {
    Dimension.positiveMm("tube outside diameter", outsideDiameterMm);
    Dimension.positiveMm("tube wall", wallMm);
    Dimension.atMostMm(
        "tube wall",
        wallMm,
        outsideDiameterMm / 2.0,
        "A wall is at most half the diameter; give the wall, not the bore.");
  }

  public double boreMm() {
    return outsideDiameterMm - 2.0 * wallMm;
  }

  public double areaMm2() {
    return Math.PI * (outsideDiameterMm - wallMm) * wallMm;
  }

  /** Mass of a length of this tube in steel of 7850 kg/m3. */
  public double weightKg(double lengthMm) {
    return areaMm2() * lengthMm * Plate.STEEL_KG_PER_MM3;
  }
}
