package trammel.planning.mounts;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.engine.clearance.Cylinder;
import trammel.planning.extension.UnworkableLayoutException;
import trammel.planning.quantity.QuantityPrinter;

/**
 * Looks for the place of a spring or shock: as close to the axle tube as its clearance allows, and
 * there as far outboard as there is room.
 *
 * @param <T> what is placed
 */
final class MountSearch<T> {
  /** 1/4 in between distances from the tube that are tried (mm). */
  private static final double STEP_MM = 25.4 / 4;

  /** A bracket that reaches further from the tube than 8 in past the closest place bends it. */
  private static final double REACH_MM = 8 * 25.4;

  /** What is placed, drawn at a place. */
  interface Drawing<T> {
    /** The thing with its lower mount at a place on the left. */
    T at(double forwardMm, double leftMm);

    /** The room that it takes. */
    Cylinder envelope(T drawn);

    /** What is too close at its upper mount, if anything. */
    Optional<TightSpot> atTop(T drawn);
  }

  private final String what;
  private final Side side;
  private final MountRoom room;
  private final QuantityPrinter print;

  MountSearch(String what, Side side, MountRoom room, QuantityPrinter print) {
    this.what = what;
    this.side = side;
    this.room = room;
    this.print = print;
  }

  /**
   * The first place with room.
   *
   * @param closestMm least distance from the axle's centre
   * @param fixedMm the distance if the job sets it
   * @param placesMm places along the tube in the order of preference
   * @throws UnworkableLayoutException if there is none
   */
  T find(double closestMm, OptionalDouble fixedMm, List<Double> placesMm, Drawing<T> drawing) {
    if (placesMm.isEmpty()) {
      throw new UnworkableLayoutException(
          "there is no free place along the axle tube for the bracket of the "
              + what
              + " between the centre housing, the brackets of the bars and the outer limit for"
              + " brackets. Move the bars to the other side of the rails, or choose narrower"
              + " joints.");
    }
    double firstMm = fixedMm.isPresent() ? fixedMm.getAsDouble() : closestMm;
    double lastMm = fixedMm.isPresent() ? firstMm : firstMm + REACH_MM;
    Nearest nearest = new Nearest();
    for (double offsetMm = firstMm; offsetMm <= lastMm; offsetMm += STEP_MM) {
      for (double leftMm : placesMm) {
        T drawn = drawing.at(side.forwardMm(offsetMm), leftMm);
        Optional<TightSpot> tight = drawing.atTop(drawn);
        if (tight.isEmpty()) {
          tight = room.tight(drawing.envelope(drawn));
        }
        if (tight.isEmpty()) {
          return drawn;
        }
        nearest.take(tight.get(), offsetMm, leftMm);
      }
    }
    throw noRoom(nearest);
  }

  private UnworkableLayoutException noRoom(Nearest nearest) {
    TightSpot spot = nearest.spot;
    return new UnworkableLayoutException(
        "there is no room for the "
            + what
            + ": at the best place found, "
            + print.length(nearest.offsetMm)
            + " "
            + side.phrase()
            + " and "
            + print.length(nearest.leftMm)
            + " from the centre plane, it comes within "
            + print.length(Math.max(0, spot.foundMm()))
            + " of the "
            + spot.what()
            + (spot.foundMm() < 0 ? " and overlaps it by " + print.length(-spot.foundMm()) : "")
            + " over the travel; it needs "
            + print.length(spot.neededMm())
            + ". Put it "
            + side.other().phrase()
            + ", move the "
            + spot.what()
            + ", or choose a smaller one.");
  }

  /** The place that lacks least. */
  private static final class Nearest {
    private TightSpot spot = new TightSpot("", 0, Double.POSITIVE_INFINITY);
    private double offsetMm;
    private double leftMm;

    void take(TightSpot other, double atOffsetMm, double atLeftMm) {
      if (other.lackMm() < spot.lackMm()) {
        spot = other;
        offsetMm = atOffsetMm;
        leftMm = atLeftMm;
      }
    }
  }
}
