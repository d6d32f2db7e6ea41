package trammel.plugins.airspring;

import java.util.Comparator;
import java.util.List;
import trammel.brackets.material.PlateMaterial;
import trammel.brackets.mount.AxleTravel;
import trammel.brackets.mount.MountStock;
import trammel.engine.layout.SpringAtRide;
import trammel.engine.layout.SpringUnit;
import trammel.planning.extension.Site;
import trammel.planning.options.MountOptions;

/**
 * What the mounts of air springs are made of: where the job leaves their plate open and the arms
 * under the seats would be bent too hard at the tube at full bump, of the thinnest plate that they
 * are not.
 */
final class AirStock {
  /**
   * Share of the yield strength that full bump may take, so that the check of mounts is content.
   */
  private static final double SHARE = 1 / 1.5;

  /** Thickest that is taken without being asked for, 1/2 in: common practice, no source (mm). */
  private static final double THICKEST_MM = 12.7;

  private final Site site;
  private final AxleTravel travel;

  AirStock(Site site, AxleTravel travel) {
    this.site = site;
    this.travel = travel;
  }

  /**
   * For springs in their places.
   *
   * @param left the spring on the left; its twin mirrors it
   */
  MountStock under(SpringUnit left) {
    MountStock usual = MountOptions.stock(site);
    if (site.options().isWritten(MountOptions.bracketPlate(site.catalog())) || holds(usual, left)) {
      return usual;
    }
    List<MountStock> thicker =
        site.catalog().plates().values().stream()
            .filter(plate -> plate.form().thicknessMm() > usual.plateMm())
            .filter(plate -> plate.form().thicknessMm() <= THICKEST_MM)
            .sorted(Comparator.comparingDouble((PlateMaterial one) -> one.form().thicknessMm()))
            .map(usual::of)
            .toList();
    return thicker.stream()
        .filter(stock -> holds(stock, left))
        .findFirst()
        .orElse(thicker.isEmpty() ? usual : thicker.get(thicker.size() - 1));
  }

  private boolean holds(MountStock stock, SpringUnit left) {
    double perN = AirSpringSeats.armAtTube(site.chassis(), left.axle(), stock.plateMm());
    return atFullBumpN(left) * perN <= SHARE * stock.bracket().yieldMPa();
  }

  private double atFullBumpN(SpringUnit left) {
    double shortestMm = travel.path(left.axle()).from(left.frame()).leastMm();
    return travel.loadsN(left.frame(), left.axle()).stream()
        .mapToDouble(loadN -> new SpringAtRide(left, loadN).forceN(shortestMm))
        .max()
        .orElse(0);
  }
}
