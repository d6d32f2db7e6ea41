package trammel.plugins.antirollbar;

import static trammel.engine.quantity.Amount.length;

import java.util.List;
import java.util.Optional;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.mount.MountPractice;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.layout.Chassis;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.Item;
import trammel.planning.extension.Site;

/** Finds the place of an anti-roll bar: as near to the axle and as high as there is room. */
final class BarSearch {
  private static final double INCH_MM = 25.4;
  private static final double STEP_MM = INCH_MM / 2;
  private static final double FARTHEST_BEHIND_MM = 6 * INCH_MM;
  private static final double FARTHEST_BELOW_MM = 5 * INCH_MM;
  private static final double FARTHEST_OUT_MM = 1.5 * INCH_MM;

  /** A link shorter than this leans too much when an arm swings: common practice, no source. */
  private static final double LEAST_LINK_MM = 3 * INCH_MM;

  private final LayoutAnalysis analysis;
  private final Site site;
  private final Chassis chassis;
  private final BarNeighbours neighbours;
  private final double barMm;
  private final double plateMm;
  private Phrase inTheWay = Phrase.of("the axle tube's end");

  BarSearch(LayoutAnalysis analysis, Site site) {
    this.analysis = analysis;
    this.site = site;
    chassis = analysis.layout().chassis();
    neighbours = new BarNeighbours(analysis);
    barMm = BarOptions.bar(site.options(), site.catalog()).lengthMm().orElseThrow();
    plateMm = BarOptions.plate(site.options(), site.catalog()).form().thicknessMm();
  }

  /**
   * The place.
   *
   * @throws UnworkableLayoutException if there is no room
   */
  BarPlace found() {
    List<Item> arms = BarOptions.arms(site.options(), site.catalog());
    for (boolean outside : sides()) {
      for (double behindMm = nearestMm();
          behindMm <= nearestMm() + FARTHEST_BEHIND_MM;
          behindMm += STEP_MM) {
        for (double belowMm = 0; belowMm <= FARTHEST_BELOW_MM; belowMm += STEP_MM) {
          Optional<BarPlace> place = at(outside, behindMm, belowMm, arms);
          if (place.isPresent()) {
            return place.get();
          }
        }
      }
    }
    throw new UnworkableLayoutException(
        Phrase.of(
            "There is no room for an anti-roll bar behind the axle: {} is in the"
                + " way. Name shorter arms, mount the lateral bar, springs or shocks"
                + " elsewhere, or leave the bar out.",
            inTheWay));
  }

  /** A channel is open to the inside. */
  private List<Boolean> sides() {
    return chassis.rails().boxed() ? List.of(true, false) : List.of(true);
  }

  /** Clear of the axle tube by the plate's nose. */
  private double nearestMm() {
    return chassis.axle().tubeRadiusMm()
        + 2 * (barMm / 2 + BarPlace.SHELL_MM)
        + MountPractice.MOVING_AIR_MM;
  }

  private Optional<BarPlace> at(boolean outside, double behindMm, double belowMm, List<Item> arms) {
    BarPlace first =
        place(outside, behindMm, belowMm, arms.get(0), BarPlace.LEAST_REACH_MM + FARTHEST_OUT_MM);
    if (first.barUpMm() - first.noseMm() < MountPractice.GROUND_MM) {
      return Optional.empty();
    }
    if (isTight(neighbours.bySpan(first))) {
      return Optional.empty();
    }
    Optional<BarPlace> borne =
        borne(place(outside, behindMm, belowMm, arms.get(0), BarPlace.LEAST_REACH_MM));
    if (borne.isEmpty()) {
      return Optional.empty();
    }
    for (Item arm : arms) {
      for (double outMm = 0; outMm <= FARTHEST_OUT_MM; outMm += STEP_MM / 2) {
        BarPlace place = place(outside, behindMm, belowMm, arm, BarPlace.LEAST_REACH_MM + outMm);
        if (place.linkTopUpMm() - place.barUpMm() < LEAST_LINK_MM) {
          inTheWay =
              Phrase.of("the rail's height, which leaves no link of {}", length(LEAST_LINK_MM));
          continue;
        }
        if (!isTight(neighbours.byArms(place))) {
          return Optional.of(place.withBearing(borne.get().bearingMm()));
        }
      }
    }
    return Optional.empty();
  }

  private BarPlace place(
      boolean outside, double behindMm, double belowMm, Item arm, double reachMm) {
    return new BarPlace(
        chassis,
        outside,
        plateMm,
        barMm,
        arm.lengthMm().orElseThrow(),
        behindMm,
        belowMm,
        reachMm,
        1);
  }

  /** The bearing as far out as there is room for it on the axle tube. */
  private Optional<BarPlace> borne(BarPlace place) {
    double halfMm = BarPlace.BEARING_LONG_MM / 2;
    double farthestMm =
        Math.min(
            outerArmMm(place) - BarPlace.ARM_THICK_MM / 2 - halfMm - MountPractice.WELD_ROOM_MM,
            chassis.axle().outerLimitMm() - halfMm);
    for (double atMm = farthestMm;
        atMm >= chassis.axle().innerLimitMm() + halfMm;
        atMm -= STEP_MM / 2) {
      BarPlace borne = place.withBearing(atMm);
      if (!isTight(neighbours.byBearing(borne))) {
        return Optional.of(borne);
      }
    }
    return Optional.empty();
  }

  /** Arms between the rails stand the nearer to the centre plane the farther off the rail. */
  private static double outerArmMm(BarPlace place) {
    return place.armPlaneMm() - (place.outside() ? 0 : FARTHEST_OUT_MM);
  }

  private boolean isTight(Optional<String> by) {
    by.ifPresent(name -> inTheWay = Phrase.of("{}", name));
    return by.isPresent();
  }
}
