package trammel.planning.mounts;

import trammel.planning.catalog.BarMaterial;
import trammel.planning.catalog.BoltSize;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.PlateMaterial;
import trammel.reading.fields.FieldValues;
import trammel.trade.steel.RectangularTube;

/**
 * What mounts are made of.
 *
 * @param bracket plate of brackets, tabs, arms and seats
 * @param tube section of crossmembers
 * @param boxing plate that closes a channel rail
 * @param catalog for bolts
 */
public record MountStock(
    PlateMaterial bracket, BarMaterial tube, PlateMaterial boxing, Catalog catalog) {
  private static final double SAME_BOLT_MM = 0.1;

  public MountStock {
    if (!(tube.form() instanceof RectangularTube)) {
      throw new IllegalArgumentException(
          "section '"
              + tube.key()
              + "' is no square or rectangular tube; a crossmember with tabs needs one. Choose"
              + " another section.");
    }
  }

  /** What a job's options choose. */
  public static MountStock of(FieldValues options, Catalog catalog) {
    return new MountStock(
        catalog.plate(options.get(MountOptions.bracketPlate(catalog))),
        catalog.bar(options.get(MountOptions.crossmember(catalog))),
        catalog.plate(options.get(MountOptions.boxingPlate(catalog))),
        catalog);
  }

  /** The crossmember's section. */
  RectangularTube section() {
    return (RectangularTube) tube.form();
  }

  /** Thickness of the bracket plate (mm). */
  public double plateMm() {
    return bracket.form().thicknessMm();
  }

  /**
   * The bolt size of a diameter.
   *
   * @throws IllegalArgumentException if the catalog has none
   */
  BoltSize bolt(double diameterMm) {
    StringBuilder sizes = new StringBuilder();
    for (BoltSize size : catalog.bolts().values()) {
      if (Math.abs(size.diameterMm() - diameterMm) < SAME_BOLT_MM) {
        return size;
      }
      sizes.append(sizes.length() == 0 ? "" : ", ").append(size.title());
    }
    throw new IllegalArgumentException(
        "a mount needs bolts of "
            + diameterMm
            + " mm diameter; the catalog has "
            + sizes
            + ". Add the size to the catalog or choose another shock.");
  }

  /** The bolt size nearest to a diameter, for a joint that can be drilled to suit. */
  BoltSize nearestBolt(double diameterMm) {
    BoltSize nearest = null;
    for (BoltSize size : catalog.bolts().values()) {
      if (nearest == null
          || Math.abs(size.diameterMm() - diameterMm)
              < Math.abs(nearest.diameterMm() - diameterMm)) {
        nearest = size;
      }
    }
    if (nearest == null) {
      throw new IllegalArgumentException(
          "the catalog has no bolts; mounts need some. Add them to the catalog.");
    }
    return nearest;
  }
}
