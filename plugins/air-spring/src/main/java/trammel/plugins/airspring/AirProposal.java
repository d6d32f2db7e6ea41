package trammel.plugins.airspring;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.material.Shock;
import trammel.brackets.mount.AxleTravel;
import trammel.brackets.mount.Beside;
import trammel.brackets.mount.Legs;
import trammel.brackets.mount.MountStock;
import trammel.brackets.mount.ShockFit;
import trammel.brackets.mount.ShockPlace;
import trammel.brackets.mount.ShockSearch;
import trammel.brackets.mount.Side;
import trammel.engine.clearance.Body;
import trammel.engine.clearance.Carrier;
import trammel.engine.layout.AxleGuide;
import trammel.planning.extension.Site;
import trammel.planning.extension.SpringSet;
import trammel.planning.options.MountOptions;
import trammel.reading.quantity.QuantityPrinter;

/** Places the air springs and their shocks. */
final class AirProposal {
  private final Site site;
  private final AxleGuide guide;
  private final MountStock stock;
  private final AxleTravel travel;
  private final QuantityPrinter print;
  private final Map<Side, ShockSearch> searches = new EnumMap<>(Side.class);

  AirProposal(Site site, AxleGuide guide) {
    this.site = site;
    this.guide = guide;
    stock = MountOptions.stock(site);
    travel = new AxleTravel(site.chassis(), guide);
    print = new QuantityPrinter(site.units());
  }

  /**
   * The first place where there is room, of those that the options leave open: clear of the
   * brackets beside it if there is such a place.
   */
  SpringSet springs() {
    for (Legs legs : MountOptions.legsToTry(site.options())) {
      try {
        return springs(true, legs);
      } catch (UnworkableLayoutException noneIsClear) {
        continue;
      }
    }
    return springs(false, Legs.TUBE);
  }

  private SpringSet springs(boolean clear, Legs legs) {
    StringBuilder refusals = new StringBuilder();
    for (AirSpringAcross across : acrossToTry()) {
      for (Side side : sidesToTry()) {
        try {
          return springs(across, side, clear, legs);
        } catch (UnworkableLayoutException noRoom) {
          refusals.append(refusals.length() == 0 ? "" : " ");
          refusals.append(side.phrase()).append(", ").append(across.phrase());
          refusals.append(": ").append(noRoom.getMessage());
        }
      }
    }
    throw new UnworkableLayoutException(refusals.toString());
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

  private SpringSet springs(AirSpringAcross across, Side side, boolean clear, Legs legs) {
    AirSpringFit spring = spring(across, side, clear);
    List<Body> beside = new ArrayList<>(List.of(spring.body()));
    if (clear) {
      beside.addAll(spring.mounts(site.chassis(), stock));
      if (across == AirSpringAcross.INBOARD) {
        AirSpringPlace.bridge(site.chassis(), spring.frame(), stock, print).room().stream()
            .map(box -> new Body("bridge of the springs", box, Carrier.FRAME))
            .forEach(beside::add);
      }
    }
    ShockFit shock = shock(side, new Beside(beside, clear, legs));
    return new SpringSet(
        List.of(spring.left(), spring.right()), List.of(shock.left(), shock.right()));
  }

  private static UnworkableLayoutException neither(
      UnworkableLayoutException first, UnworkableLayoutException second) {
    return new UnworkableLayoutException(
        first.getMessage() + " On the other side of the axle " + second.getMessage());
  }

  private AirSpringFit spring(AirSpringAcross across, Side side, boolean clear) {
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
            clear,
            print);
    Optional<String> key = site.options().find(AirOptions.airSpring(site.catalog()));
    return key.isPresent()
        ? place.find(site.catalog().airSpring(key.get()))
        : place.smallest(List.copyOf(site.catalog().airSprings().values()));
  }

  /** On the other side of the axle from the air springs if there is room, else beside them. */
  private ShockFit shock(Side springSide, Beside beside) {
    try {
      return search(springSide.other()).find(beside);
    } catch (UnworkableLayoutException noRoom) {
      try {
        return search(springSide).find(beside);
      } catch (UnworkableLayoutException noRoomThereEither) {
        throw neither(noRoom, noRoomThereEither);
      }
    }
  }

  private ShockSearch search(Side side) {
    return searches.computeIfAbsent(side, one -> place(one).search());
  }

  private ShockPlace place(Side side) {
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
        site.options().get(AirOptions.SHOCK_LEAN),
        side,
        OptionalDouble.empty(),
        site.options().get(AirOptions.LOWER_HEIGHT),
        stock,
        print);
  }
}
