package trammel.planning.fabrication;

import trammel.planning.catalog.BoltSize;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.MissingEntryException;

/** Finds the bolt size for a joint. */
final class Bolts {
  /** Sizes given in inches and in mm differ by rounding (mm). */
  private static final double SAME_MM = 0.1;

  private Bolts() {}

  /**
   * Key of the bolt size of a diameter.
   *
   * @throws MissingEntryException if the catalog has none
   */
  static String key(Catalog catalog, double diameterMm) {
    for (BoltSize size : catalog.bolts().values()) {
      if (Math.abs(size.diameterMm() - diameterMm) < SAME_MM) {
        return size.key();
      }
    }
    throw new MissingEntryException(
        "the catalog has no bolt of "
            + diameterMm
            + " mm, which a joint of this layout takes; it has "
            + String.join(", ", catalog.bolts().keySet())
            + ". Add the size to the catalog or choose another joint.");
  }
}
