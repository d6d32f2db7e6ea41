package trammel.trade.plates;

import trammel.trade.given.Dimension;

/**
 * A flat part to be cut.
 *
 * @param name what the shop calls it; also the text marked on drawings
 * @param outline its cut edge
 * @param thicknessMm plate thickness
 * @param material what to cut it from, in words
 */
public record Plate(String name, Outline outline, double thicknessMm, String material) {
  /** Mass of steel: 7850 kg/m3, the usual figure for structural steel (0.2836 lb/in3). */
  public static final double STEEL_KG_PER_MM3 = 7.85e-6;

  public Plate {
    Dimension.text("plate name", name);
    Dimension.positiveMm("thickness of " + name, thicknessMm);
    Dimension.text("material of " + name, material);
  }

  public double weightKg() {
    return outline.areaMm2() * thicknessMm * STEEL_KG_PER_MM3;
  }

  /** The same plate under another name. */
  public Plate named(String otherName) {
    return new Plate(otherName, outline, thicknessMm, material);
  }

  /** The other hand of the plate under another name. */
  public Plate mirrored(String otherName) {
    return new Plate(otherName, outline.mirrored(), thicknessMm, material);
  }
}
