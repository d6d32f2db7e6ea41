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
import trammel.brackets.mount.ShockStance;
import trammel.brackets.mount.Side;
import trammel.engine.layout.AxleGuide;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.CoilOverSpring;
import trammel.planning.extension.Site;
import trammel.planning.extension.SpringSet;
import trammel.planning.options.MountOptions;

/** Places the coil-overs and chooses shock and spring. */
final class CoilProposal {
  private static final double ROUNDING_MM = 1e-6;

  private final Site site;
  private final AxleGuide guide;

  CoilProposal(Site site, AxleGuide guide) {
    this.site = site;
    this.guide = guide;
  }

  /** Placed for the narrowest coil; where a wider one is needed, placed again for that. */
  SpringSet springs() {
    AxleTravel travel = new AxleTravel(site.chassis(), guide);
    double radiusMm = narrowestCoilMm();
    while (true) {
      Optional<ShockFit> clear = clear(travel, radiusMm);
      ShockFit shock = clear.isPresent() ? clear.get() : notClear(travel, radiusMm);
      CoilFit coil = coil(travel, shock, radiusMm);
      if (coil.coil().outsideRadiusMm() <= radiusMm + ROUNDING_MM) {
        return new SpringSet(
            List.of(coil.left(shock), coil.right(shock)),
            List.of(shock.left(), shock.right()),
            clear.isPresent());
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
    return new CoilChoice(coils, site.chassis().masses(), travel)
        .on(
            shock,
            site.options().get(CoilOptions.RIDE_FREQUENCY),
            site.options().find(CoilOptions.RATE));
  }

  /**
   * Clear of the brackets beside it: as it usually stands, or else in another stance that the job
   * leaves open.
   */
  private Optional<ShockFit> clear(AxleTravel travel, double radiusMm) {
    for (ShockStance stance : stances()) {
      Map<Side, ShockSearch> searches = new EnumMap<>(Side.class);
      for (Legs legs : MountOptions.legsToTry(site.options())) {
        for (Side side : sides()) {
          ShockSearch search =
              searches.computeIfAbsent(side, one -> place(travel, one, stance, radiusMm).search());
          try {
            return Optional.of(search.find(new Beside(List.of(), true, legs)));
          } catch (UnworkableLayoutException noRoom) {
            continue;
          }
        }
      }
    }
    return Optional.empty();
  }

  /**
   * As it usually stands, on the first side with room, whatever brackets are beside it: the checks
   * tell of them.
   */
  private ShockFit notClear(AxleTravel travel, double radiusMm) {
    List<UnworkableLayoutException> refusals = new ArrayList<>();
    for (Side side : sides()) {
      try {
        return place(travel, side, stances().get(0), radiusMm)
            .search()
            .find(new Beside(List.of(), false, Legs.TUBE));
      } catch (UnworkableLayoutException noRoom) {
        refusals.add(noRoom);
      }
    }
    throw refusals.size() == 1
        ? refusals.get(0)
        : new UnworkableLayoutException(
            Phrase.of(
                "{} On the other side of the axle {}",
                refusals.get(0).reason(),
                refusals.get(1).reason()));
  }

  private List<ShockStance> stances() {
    return MountOptions.stancesToTry(site.options(), CoilOptions.LEAN);
  }

  private List<Side> sides() {
    return site.options()
        .find(CoilOptions.PLACEMENT)
        .map(word -> List.of(Side.ofWord(word)))
        .orElse(List.of(Side.BEHIND, Side.AHEAD));
  }

  private ShockPlace place(AxleTravel travel, Side side, ShockStance stance, double radiusMm) {
    Optional<Double> behind = site.options().find(CoilOptions.BEHIND);
    return new ShockPlace(
        "coil-over",
        site.chassis(),
        guide,
        travel,
        MountOptions.wanted(site.options(), site.catalog(), true),
        radiusMm,
        stance,
        side,
        behind.isPresent() ? OptionalDouble.of(behind.get()) : OptionalDouble.empty(),
        MountOptions.stockUnderSprings(site));
  }

  private double narrowestCoilMm() {
    return site.catalog().coils().values().stream()
        .mapToDouble(CoilOverSpring::outsideRadiusMm)
        .min()
        .orElseThrow(
            () ->
                new UnworkableLayoutException(
                    Phrase.of(
                        "the catalog has no coil spring to choose from. Add one to the catalog.")));
  }
}
