package trammel.plugins.limitingstraps;

import static trammel.engine.quantity.Amount.length;

import java.util.List;
import java.util.Optional;
import trammel.brackets.UnworkableLayoutException;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Chassis;
import trammel.engine.motion.AxlePose;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.Item;
import trammel.planning.extension.Site;

/**
 * The strap of a layout and where it hangs: the shortest stocked one that lets each wheel droop as
 * far as wanted. Its lower tab is made as tall as brings the strap tight just there.
 *
 * @param strap the strap
 * @param place its tabs
 * @param perSide straps on each side
 * @param stretch how much longer one strap by itself gets under load, as a ratio
 */
record StrapFit(Item strap, StrapPlace place, int perSide, double stretch) {
  private static final double INCH_MM = 25.4;
  private static final double STEP_OUT_MM = INCH_MM / 4;
  private static final double FARTHEST_OUT_MM = 2 * INCH_MM;

  /** Tabs are drawn to 1/16 in. */
  private static final double STEP_UP_MM = INCH_MM / 16;

  /**
   * The straps of a layout.
   *
   * @throws UnworkableLayoutException if there is no room for tabs, or no strap is long enough
   */
  static StrapFit of(LayoutAnalysis analysis, Site site) {
    return new Search(analysis, site).found();
  }

  /** Length from eye to eye, drawn tight by hand (mm). */
  double lengthMm() {
    return strap.lengthMm().orElseThrow();
  }

  /** Length under load: straps side by side share it (mm). */
  double stretchedMm() {
    return lengthMm() * (1 + stretch / perSide);
  }

  private record Search(LayoutAnalysis analysis, Site site, Chassis chassis, List<Item> straps) {
    Search(LayoutAnalysis analysis, Site site) {
      this(
          analysis,
          site,
          analysis.layout().chassis(),
          StrapOptions.wanted(site.options(), site.catalog()));
    }

    StrapFit found() {
      refuseNoRoomOnRail();
      StrapNeighbours neighbours = new StrapNeighbours(analysis.layout(), analysis.envelope());
      double plateMm = StrapOptions.plate(site.options(), site.catalog()).form().thicknessMm();
      Tried outside = tried(true, plateMm, neighbours);
      if (outside.fit().isPresent()) {
        return outside.fit().get();
      }
      // A channel is open to the inside, unless the plates of a notch close it over the axle.
      boolean closed = chassis.rails().boxed() || chassis.rails().notchDepthMm() > 0;
      Tried inside =
          closed
              ? tried(false, plateMm, neighbours)
              : new Tried(Optional.empty(), "the channel's open side");
      return inside
          .fit()
          .orElseThrow(
              () ->
                  new UnworkableLayoutException(
                      Phrase.of(
                          "There is no room for limiting straps over the axle tube: outside the"
                              + " rails {} is in the way, between them {}. Mount bars or springs"
                              + " elsewhere, or leave the straps out.",
                          outside.inTheWay(),
                          inside.inTheWay())));
    }

    /** A strap that hangs free, or else the last that was in its way. */
    private record Tried(Optional<StrapFit> fit, String inTheWay) {}

    private Tried tried(boolean outside, double plateMm, StrapNeighbours neighbours) {
      String inTheWay = outside ? "the end of the axle tube" : "the centre housing";
      for (double outMm = 0; outMm <= FARTHEST_OUT_MM; outMm += STEP_OUT_MM) {
        StrapPlace lowest =
            new StrapPlace(chassis, outside, plateMm, outMm, StrapPlace.LOWEST_HOLE_MM);
        if (!lowest.isOnTube()) {
          break;
        }
        StrapFit fit = hung(lowest);
        Optional<String> tight = neighbours.tight(fit.place());
        if (tight.isEmpty()) {
          return new Tried(Optional.of(fit), "");
        }
        inTheWay = tight.get();
      }
      return new Tried(Optional.empty(), inTheWay);
    }

    private void refuseNoRoomOnRail() {
      double roomMm = StrapPlace.highestRailHoleMm(chassis) - StrapPlace.lowestRailHoleMm(chassis);
      if (roomMm < 0) {
        throw new UnworkableLayoutException(
            Phrase.of(
                "The tab of a limiting strap finds no room on the rail over the axle: {}"
                    + " of height are missing above the notch. Ask for less bump, so that the"
                    + " notch is less deep, or leave the straps out.",
                length(-roomMm)));
      }
      double tabMm = StrapPlace.tallestTubeHoleMm(chassis) - StrapPlace.LOWEST_HOLE_MM;
      if (tabMm < 0) {
        throw new UnworkableLayoutException(
            Phrase.of(
                "The rail stands too low over the axle tube for limiting straps: {} of"
                    + " height are missing between their tabs. Raise the frame at ride, or"
                    + " leave the straps out.",
                length(-tabMm)));
      }
    }

    /** The shortest strap that is long enough with the lower tab at its tallest. */
    private StrapFit hung(StrapPlace lowest) {
      StrapPlace tallest = lowest.withTubeHole(StrapPlace.tallestTubeHoleMm(chassis));
      double neededMm = longestMm(tallest);
      for (Item strap : straps) {
        if (strap.lengthMm().orElseThrow() >= neededMm) {
          return new StrapFit(
              strap,
              lowest.withTubeHole(tubeHoleMm(lowest, strap.lengthMm().orElseThrow())),
              site.options().get(StrapOptions.PER_SIDE),
              site.options().get(StrapOptions.STRETCH));
        }
      }
      throw new UnworkableLayoutException(
          Phrase.of(
              "No limiting strap is long enough: {} of droop ask for {} between the"
                  + " eyes, and {}. Ask for less droop, or take a longer one into the"
                  + " catalog.",
              length(chassis.travel().droopMm()),
              length(neededMm),
              straps.isEmpty()
                  ? "the catalog has none (limiting-strap-… with a length)"
                  : "the longest that may be taken is " + straps.get(straps.size() - 1).title()));
    }

    /** As low as lets the wanted droop happen. */
    private double tubeHoleMm(StrapPlace lowest, double lengthMm) {
      double tallestMm = StrapPlace.tallestTubeHoleMm(chassis);
      double heightMm = StrapPlace.LOWEST_HOLE_MM;
      while (heightMm < tallestMm && longestMm(lowest.withTubeHole(heightMm)) > lengthMm) {
        heightMm += STEP_UP_MM;
      }
      return Math.min(heightMm, tallestMm);
    }

    /** The greatest distance of a pair of eyes over the wanted travel of both wheels (mm). */
    private double longestMm(StrapPlace place) {
      Point3 upper = place.upper();
      Point3 lower = place.lower();
      double longestMm = 0;
      for (AxlePose pose : analysis.envelope()) {
        longestMm = Math.max(longestMm, upper.distanceMm(pose.move(lower)));
        longestMm = Math.max(longestMm, upper.mirrored().distanceMm(pose.move(lower.mirrored())));
      }
      return longestMm;
    }
  }
}
