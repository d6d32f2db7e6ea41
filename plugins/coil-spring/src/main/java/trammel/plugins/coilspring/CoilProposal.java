package trammel.plugins.coilspring;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.mount.AxleTravel;
import trammel.brackets.mount.Beside;
import trammel.brackets.mount.Legs;
import trammel.brackets.mount.ShockFit;
import trammel.brackets.mount.ShockPlace;
import trammel.brackets.mount.ShockSearch;
import trammel.brackets.mount.Side;
import trammel.engine.layout.AxleGuide;
import trammel.planning.catalog.CoilOverSpring;
import trammel.planning.extension.Site;
import trammel.planning.extension.SpringSet;
import trammel.planning.options.MountOptions;
import trammel.reading.quantity.QuantityPrinter;

/** Places the coil-overs and chooses shock and spring. */
final class CoilProposal {
  private static final double ROUNDING_MM = 1e-6;

  private final Site site;
  private final AxleGuide guide;
  private final QuantityPrinter print;

  CoilProposal(Site site, AxleGuide guide) {
    this.site = site;
    this.guide = guide;
    print = new QuantityPrinter(site.units());
  }

  /** Placed for the narrowest coil; where a wider one is needed, placed again for that. */
  SpringSet springs() {
    AxleTravel travel = new AxleTravel(site.chassis(), guide);
    double radiusMm = narrowestCoilMm();
    while (true) {
      ShockFit shock = shock(travel, radiusMm);
      CoilFit coil = coil(travel, shock, radiusMm);
      if (coil.coil().outsideRadiusMm() <= radiusMm + ROUNDING_MM) {
        return new SpringSet(
            List.of(coil.left(shock), coil.right(shock)), List.of(shock.left(), shock.right()));
      }
      radiusMm = coil.coil().outsideRadiusMm();
    }
  }

  /** No narrower than the room that it was placed for, where that much is there. */
  private CoilFit coil(AxleTravel travel, ShockFit shock, double radiusMm) {
    List<CoilOverSpring> all = List.copyOf(site.catalog().coils().values());
    List<CoilOverSpring> narrow =
        all.stream().filter(coil -> coil.outsideRadiusMm() <= radiusMm + ROUNDING_MM).toList();
    try {
      return coil(travel, shock, narrow);
    } catch (UnworkableLayoutException noneSoNarrow) {
      return coil(travel, shock, all);
    }
  }

  private CoilFit coil(AxleTravel travel, ShockFit shock, List<CoilOverSpring> coils) {
    return new CoilChoice(coils, site.chassis().masses(), travel, print)
        .on(
            shock,
            site.options().get(CoilOptions.RIDE_FREQUENCY),
            site.options().find(CoilOptions.RATE));
  }

  /** On the first side of the axle with room, clear of the brackets there if either side is. */
  private ShockFit shock(AxleTravel travel, double radiusMm) {
    Optional<String> placement = site.options().find(CoilOptions.PLACEMENT);
    List<Side> sides =
        placement.isPresent()
            ? List.of(Side.ofWord(placement.get()))
            : List.of(Side.BEHIND, Side.AHEAD);
    Map<Side, ShockSearch> searches = new EnumMap<>(Side.class);
    List<UnworkableLayoutException> refusals = new ArrayList<>();
    for (Beside beside : besides()) {
      refusals.clear();
      for (Side side : sides) {
        try {
          return searches
              .computeIfAbsent(side, one -> place(travel, one, radiusMm).search())
              .find(beside);
        } catch (UnworkableLayoutException noRoom) {
          refusals.add(noRoom);
        }
      }
    }
    throw refusals.size() == 1
        ? refusals.get(0)
        : new UnworkableLayoutException(
            refusals.get(0).getMessage()
                + " On the other side of the axle "
                + refusals.get(1).getMessage());
  }

  /** Clear of brackets with one kind of legs or the other; at last not clear of them. */
  private List<Beside> besides() {
    List<Beside> besides = new ArrayList<>();
    for (Legs legs : MountOptions.legsToTry(site.options())) {
      besides.add(new Beside(List.of(), true, legs));
    }
    besides.add(new Beside(List.of(), false, Legs.TUBE));
    return besides;
  }

  private ShockPlace place(AxleTravel travel, Side side, double radiusMm) {
    Optional<Double> behind = site.options().find(CoilOptions.BEHIND);
    return new ShockPlace(
        "coil-over",
        site.chassis(),
        guide,
        travel,
        MountOptions.wanted(site.options(), site.catalog(), true),
        radiusMm,
        site.options().get(CoilOptions.LEAN),
        side,
        behind.isPresent() ? OptionalDouble.of(behind.get()) : OptionalDouble.empty(),
        site.options().get(CoilOptions.LOWER_HEIGHT),
        MountOptions.stock(site),
        print);
  }

  private double narrowestCoilMm() {
    return site.catalog().coils().values().stream()
        .mapToDouble(CoilOverSpring::outsideRadiusMm)
        .min()
        .orElseThrow(
            () ->
                new UnworkableLayoutException(
                    "the catalog has no coil spring to choose from. Add one to the catalog."));
  }
}
