package trammel.planning.vehicle;

import java.util.Optional;
import trammel.engine.layout.Layout;
import trammel.planning.extension.Site;
import trammel.trade.plates.NotchPlate;

/**
 * The notch as it is cut into each rail, before its strip is welded in. It is an arc whose middle
 * is over the axle mark; all lengths in mm.
 *
 * @param clearDepthMm from the rail's underside up to the strip: what the axle tube sees
 * @param cutDepthMm from the rail's underside up to the cut: deeper by the strip
 * @param lengthMm along the rail's underside, one half ahead of the axle mark and one behind
 * @param radiusMm of the cut
 * @param keptMm what the cut leaves of the rail's depth
 * @param stripMm thickness of the strip that lines it
 * @param riseMm how far the side plates rise above the rail's top, 0 for not
 */
public record NotchCut(
    double clearDepthMm,
    double cutDepthMm,
    double lengthMm,
    double radiusMm,
    double keptMm,
    double stripMm,
    double riseMm) {

  /**
   * The cut of a layout, with the figures of its cost sheet; empty where no notch is asked for.
   *
   * @param site catalog and units
   */
  public static Optional<NotchCut> of(Layout layout, Site site) {
    double clearMm = layout.chassis().rails().notchDepthMm();
    if (clearMm <= 0) {
      return Optional.empty();
    }
    NotchWork work = new NotchWork(layout, site.catalog());
    NotchPlate shape = work.shape();
    return Optional.of(
        new NotchCut(
            clearMm,
            shape.depthMm(),
            shape.openingMm(),
            shape.cutRadiusMm(),
            layout.chassis().rails().depthMm() - shape.depthMm(),
            shape.thicknessMm(),
            layout.chassis().rails().notchRiseMm()));
  }

  /** How far the cut reaches ahead of the axle mark, and as far behind it (mm). */
  public double reachMm() {
    return lengthMm / 2;
  }
}
