package trammel.trade.plates;

import trammel.trade.given.Dimension;

/**
 * A rib across an axle tube: upright sides, a flat top and a saddle cut to the tube. Axes with the
 * tube's centre at the origin, y up.
 *
 * @param name what the shop calls it
 * @param thicknessMm plate thickness
 * @param tubeDiameterMm outside diameter of the tube
 * @param weldGapMm clearance between saddle and tube, on the radius
 * @param widthMm width of the rib, at most the tube
 * @param topHeightMm height of its top above the tube's centre
 */
public record SaddleRib(
    String name,
    double thicknessMm,
    double tubeDiameterMm,
    double weldGapMm,
    double widthMm,
    double topHeightMm)
    implements PlateShape {
  public SaddleRib {
    Dimension.text("rib name", name);
    Dimension.positiveMm("thickness of " + name, thicknessMm);
    Dimension.positiveMm("axle tube diameter", tubeDiameterMm);
    Dimension.notNegativeMm("weld gap of " + name, weldGapMm);
    Dimension.positiveMm("width of " + name, widthMm);
    Dimension.atMostMm(
        "width of " + name, widthMm, 0.98 * tubeDiameterMm, "Make it narrower than the tube.");
    Dimension.atLeastMm(
        "top of " + name + " above the tube's centre",
        topHeightMm,
        tubeDiameterMm / 2.0 + weldGapMm + thicknessMm,
        "Make the rib higher, so that a plate thickness is left over the tube.");
  }

  @Override
  public Outline outline() {
    Point2 centre = new Point2(0.0, 0.0);
    double radiusMm = tubeDiameterMm / 2.0 + weldGapMm;
    double half = widthMm / 2.0;
    double springMm = Math.sqrt(radiusMm * radiusMm - half * half);
    return Outline.solid(
        Path.from(half, springMm)
            .lineTo(half, topHeightMm)
            .lineTo(-half, topHeightMm)
            .lineTo(-half, springMm)
            .arcTo(new Point2(half, springMm), centre, false)
            .close());
  }
}
