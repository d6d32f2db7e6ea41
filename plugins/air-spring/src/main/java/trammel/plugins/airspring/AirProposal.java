package trammel.plugins.airspring;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.material.Shock;
import trammel.brackets.mount.AxleTravel;
import trammel.brackets.mount.Beside;
import trammel.brackets.mount.Legs;
import trammel.brackets.mount.MountStock;
import trammel.brackets.mount.ShockFit;
import trammel.brackets.mount.ShockPlace;
import trammel.brackets.mount.ShockSearch;
import trammel.brackets.mount.ShockStance;
import trammel.brackets.mount.Side;
import trammel.engine.clearance.Body;
import trammel.engine.clearance.Carrier;
import trammel.engine.layout.AxleGuide;
import trammel.engine.quantity.Phrase;
import trammel.planning.extension.Site;
import trammel.planning.extension.SpringSet;
import trammel.planning.options.MountOptions;

/** Places the air springs and their shocks. */
final class AirProposal {
  private final Site site;
  private final AxleGuide guide;
  private final MountStock stock;
  private final AxleTravel travel;
  private final List<Stance> stances;
  private final Map<AirSpringAcross, Map<Side, AirFound>> clearSprings =
      new EnumMap<>(AirSpringAcross.class);
  private final Map<AirSpringAcross, Map<Side, AirFound>> anySprings =
      new EnumMap<>(AirSpringAcross.class);

  private AirProposal(Site site, AxleGuide guide, AxleTravel travel, MountStock stock) {
    this.site = site;
    this.guide = guide;
    this.stock = stock;
    this.travel = travel;
    stances =
        MountOptions.stancesToTry(site.options(), AirOptions.SHOCK_LEAN).stream()
            .map(Stance::new)
            .toList();
  }

  /**
   * Springs and shocks in their places, which are looked for again where thicker plate is asked.
   */
  static SpringSet of(Site site, AxleGuide guide) {
    AxleTravel travel = new AxleTravel(site.chassis(), guide);
    MountStock usual = MountOptions.stock(site);
    SpringSet set = new AirProposal(site, guide, travel, usual).springs();
    MountStock needed = new AirStock(site, travel).under(set.springs().get(0));
    return needed.plateMm() > usual.plateMm()
        ? new AirProposal(site, guide, travel, needed).springs()
        : set;
  }

  /**
   * The first place where there is room, of those that the options leave open: clear of the
   * brackets beside it if there is such a place, the shocks in their usual stance or else in
   * another; next best the springs clear and the shocks not.
   */
  private SpringSet springs() {
    for (Stance stance : stances) {
      for (Legs legs : MountOptions.legsToTry(site.options())) {
        try {
          return springs(new Wish(true, true, legs, stance));
        } catch (UnworkableLayoutException noneIsClear) {
          continue;
        }
      }
    }
    try {
      return springs(new Wish(true, false, Legs.TUBE, stances.get(0)));
    } catch (UnworkableLayoutException noSpringIsClear) {
      return springs(new Wish(false, false, Legs.TUBE, stances.get(0)));
    }
  }

  /** What is asked of a place: which mounts are clear of brackets, and how the shocks stand. */
  private record Wish(boolean springsClear, boolean shocksClear, Legs legs, Stance stance) {}

  private SpringSet springs(Wish wish) {
    List<Supplier<Phrase>> refusals = new ArrayList<>();
    for (AirSpringAcross across : acrossToTry()) {
      for (Side side : sidesToTry()) {
        try {
          return springs(across, side, wish);
        } catch (UnworkableLayoutException noRoom) {
          refusals.add(
              () -> Phrase.of("{}, {}: {}", side.phrase(), across.phrase(), noRoom.reason()));
        }
      }
    }
    throw new UnworkableLayoutException(
        () -> Phrase.joined(" ", refusals.stream().map(Supplier::get).toList()));
  }

  private List<AirSpringAcross> acrossToTry() {
    Optional<String> across = site.options().find(AirOptions.ACROSS);
    return across.isPresent()
        ? List.of(AirSpringAcross.ofWord(across.get()))
        : List.of(AirSpringAcross.OUTBOARD, AirSpringAcross.INBOARD);
  }

  private List<Side> sidesToTry() {
    Optional<String> placement = site.options().find(AirOptions.PLACEMENT);
    return placement.isPresent()
        ? List.of(Side.ofWord(placement.get()))
        : List.of(Side.BEHIND, Side.AHEAD);
  }

  private SpringSet springs(AirSpringAcross across, Side side, Wish wish) {
    AirSpringFit spring = spring(across, side, wish.springsClear());
    List<Body> beside = new ArrayList<>(List.of(spring.body()));
    if (wish.shocksClear()) {
      beside.addAll(spring.mounts(site.chassis(), stock));
      if (across == AirSpringAcross.INBOARD) {
        AirSpringPlace.bridge(site.chassis(), spring.frame(), stock).room().stream()
            .map(box -> new Body("bridge of the springs", box, Carrier.FRAME))
            .forEach(beside::add);
      }
    }
    ShockFit shock =
        shock(wish.stance(), side, new Beside(beside, wish.shocksClear(), wish.legs()));
    return new SpringSet(
        List.of(spring.left(), spring.right()),
        List.of(shock.left(), shock.right()),
        wish.springsClear() && wish.shocksClear());
  }

  private static UnworkableLayoutException neither(
      UnworkableLayoutException first, UnworkableLayoutException second) {
    return new UnworkableLayoutException(
        () -> Phrase.of("{} On the other side of the axle {}", first.reason(), second.reason()));
  }

  /** An air spring where it was looked for, or why there is none. */
  private record AirFound(
      Optional<AirSpringFit> fit, Optional<UnworkableLayoutException> refusal) {}

  /** However the shocks stand, the springs are looked for once. */
  private AirSpringFit spring(AirSpringAcross across, Side side, boolean clear) {
    AirFound found =
        (clear ? clearSprings : anySprings)
            .computeIfAbsent(across, one -> new EnumMap<>(Side.class))
            .computeIfAbsent(side, one -> found(across, side, clear));
    return found.fit().orElseThrow(() -> found.refusal().get());
  }

  private AirFound found(AirSpringAcross across, Side side, boolean clear) {
    try {
      return new AirFound(Optional.of(looked(across, side, clear)), Optional.empty());
    } catch (UnworkableLayoutException noRoom) {
      return new AirFound(Optional.empty(), Optional.of(noRoom));
    }
  }

  private AirSpringFit looked(AirSpringAcross across, Side side, boolean clear) {
    Optional<Double> height = site.options().find(AirOptions.RIDE_HEIGHT);
    AirSpringPlace place =
        new AirSpringPlace(
            site.chassis(),
            guide,
            travel,
            side,
            across,
            height.isPresent() ? OptionalDouble.of(height.get()) : OptionalDouble.empty(),
            stock,
            clear);
    Optional<String> key = site.options().find(AirOptions.airSpring(site.catalog()));
    return key.isPresent()
        ? place.find(site.catalog().airSpring(key.get()))
        : place.smallest(List.copyOf(site.catalog().airSprings().values()));
  }

  /** On the other side of the axle from the air springs if there is room, else beside them. */
  private static ShockFit shock(Stance stance, Side springSide, Beside beside) {
    try {
      return stance.on(springSide.other()).find(beside);
    } catch (UnworkableLayoutException noRoom) {
      try {
        return stance.on(springSide).find(beside);
      } catch (UnworkableLayoutException noRoomThereEither) {
        throw neither(noRoom, noRoomThereEither);
      }
    }
  }

  /** How the shocks stand, with the search for them on each side of the axle tube. */
  private final class Stance {
    private final ShockStance stance;
    private final Map<Side, ShockSearch> searches = new EnumMap<>(Side.class);

    Stance(ShockStance stance) {
      this.stance = stance;
    }

    ShockSearch on(Side side) {
      return searches.computeIfAbsent(side, one -> place(one, stance).search());
    }
  }

  private ShockPlace place(Side side, ShockStance stance) {
    List<Shock> shocks = MountOptions.wanted(site.options(), site.catalog(), false);
    double radiusMm = 0;
    for (Shock shock : shocks) {
      radiusMm = Math.max(radiusMm, shock.bodyRadiusMm());
    }
    return new ShockPlace(
        "shock",
        site.chassis(),
        guide,
        travel,
        shocks,
        radiusMm,
        stance,
        side,
        OptionalDouble.empty(),
        stock);
  }
}
