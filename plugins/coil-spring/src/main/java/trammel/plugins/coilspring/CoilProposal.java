package trammel.plugins.coilspring;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.mount.AxleTravel;
import trammel.brackets.mount.ShockFit;
import trammel.brackets.mount.ShockPlace;
import trammel.brackets.mount.Side;
import trammel.engine.layout.AxleGuide;
import trammel.planning.catalog.CoilOverSpring;
import trammel.planning.extension.Site;
import trammel.planning.extension.SpringSet;
import trammel.planning.options.MountOptions;
import trammel.reading.quantity.QuantityPrinter;

/** Places the coil-overs and chooses shock and spring. */
final class CoilProposal {
  private final Site site;
  private final AxleGuide guide;
  private final QuantityPrinter print;

  CoilProposal(Site site, AxleGuide guide) {
    this.site = site;
    this.guide = guide;
    print = new QuantityPrinter(site.units());
  }

  SpringSet springs() {
    AxleTravel travel = new AxleTravel(site.chassis(), guide);
    ShockFit shock = shock(travel);
    CoilFit coil =
        new CoilChoice(
                List.copyOf(site.catalog().coils().values()),
                site.chassis().masses(),
                travel,
                print)
            .on(
                shock,
                site.options().get(CoilOptions.RIDE_FREQUENCY),
                site.options().find(CoilOptions.RATE));
    return new SpringSet(
        List.of(coil.left(shock), coil.right(shock)), List.of(shock.left(), shock.right()));
  }

  private ShockFit shock(AxleTravel travel) {
    Optional<String> placement = site.options().find(CoilOptions.PLACEMENT);
    if (placement.isPresent()) {
      return place(travel, Side.ofWord(placement.get())).find(List.of());
    }
    try {
      return place(travel, Side.BEHIND).find(List.of());
    } catch (UnworkableLayoutException noRoomBehind) {
      try {
        return place(travel, Side.AHEAD).find(List.of());
      } catch (UnworkableLayoutException noRoomAhead) {
        throw new UnworkableLayoutException(
            noRoomBehind.getMessage()
                + " On the other side of the axle "
                + noRoomAhead.getMessage());
      }
    }
  }

  private ShockPlace place(AxleTravel travel, Side side) {
    Optional<Double> behind = site.options().find(CoilOptions.BEHIND);
    return new ShockPlace(
        "coil-over",
        site.chassis(),
        guide,
        travel,
        MountOptions.wanted(site.options(), site.catalog(), true),
        widestCoilMm(),
        site.options().get(CoilOptions.LEAN),
        side,
        behind.isPresent() ? OptionalDouble.of(behind.get()) : OptionalDouble.empty(),
        site.options().get(CoilOptions.LOWER_HEIGHT),
        MountOptions.stock(site.options(), site.catalog()).plateMm(),
        print);
  }

  private double widestCoilMm() {
    double widestMm = 0;
    for (CoilOverSpring coil : site.catalog().coils().values()) {
      widestMm = Math.max(widestMm, coil.outsideRadiusMm());
    }
    return widestMm;
  }
}
