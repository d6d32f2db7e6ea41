package trammel.brackets.mount;

import static trammel.engine.quantity.Amount.length;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.brackets.UnworkableLayoutException;
import trammel.engine.clearance.Box;
import trammel.engine.clearance.Capsule;
import trammel.engine.clearance.Cylinder;
import trammel.engine.quantity.Phrase;

/**
 * Looks for the place of a spring or shock: as close to the axle tube as its clearance allows, and
 * there as far outboard as there is room. What it found of a place on the vehicle it knows when it
 * is asked again with something else beside it.
 *
 * @param <T> what is placed
 */
public final class MountSearch<T> {
  /** 1/2 in between distances from the tube that are tried (mm). */
  private static final double STEP_MM = 25.4 / 2;

  /** A bracket that reaches further from the tube than 8 in past the closest place bends it. */
  private static final double REACH_MM = 8 * 25.4;

  private static final double NEIGHBOUR_MM = MountPractice.WELD_ROOM_MM;

  /** What is placed, drawn at a place. */
  public interface Drawing<T> {
    /** The thing with its lower mount at a place on the left. */
    T at(double forwardMm, double leftMm);

    /** The room that it takes. */
    Cylinder envelope(T drawn);

    /** The room that its bracket on the axle takes. */
    Capsule bracket(T drawn);

    /**
     * The leaning bracket that could reach those of the bars on the axle; empty where its place
     * along the tube keeps it clear of them.
     */
    Optional<Capsule> leaning(T drawn);

    /** The room that the plates of its bracket take with their bolt. */
    Capsule plates(T drawn);

    /** What is too close at its upper mount, if anything. */
    Optional<TightSpot> atTop(T drawn);

    /** The room of what carries its upper mount from rail to rail; empty where nothing does. */
    List<Box> carrier(T drawn, Legs legs);
  }

  private final String what;
  private final Side side;
  private final MountRoom room;

  /** By the distances ahead of the axle and from the centre plane. */
  private final Map<Double, Map<Double, Drawn<T>>> known = new HashMap<>();

  /**
   * @param what what is placed, as messages call it
   * @param side side of the axle on which it is
   * @param room the vehicle round it
   */
  public MountSearch(String what, Side side, MountRoom room) {
    this.what = what;
    this.side = side;
    this.room = room;
  }

  /**
   * The first place with room.
   *
   * @param closestMm least distance from the axle's centre
   * @param fixedMm the distance if the job sets it
   * @param placesMm places along the tube in the order of preference
   * @param drawing the same one in every search
   * @param beside what stands beside it
   * @throws UnworkableLayoutException if there is none
   */
  public T find(
      double closestMm,
      OptionalDouble fixedMm,
      List<Double> placesMm,
      Drawing<T> drawing,
      Beside beside) {
    MountRoom others = room.beside(beside.bodies());
    Map<String, Seen> seen = new LinkedHashMap<>();
    double firstMm = fixedMm.orElse(closestMm);
    double lastMm = fixedMm.isPresent() ? firstMm : firstMm + REACH_MM;
    for (double offsetMm = firstMm; offsetMm <= lastMm; offsetMm += STEP_MM) {
      for (double leftMm : placesMm) {
        Drawn<T> drawn = drawn(drawing, side.forwardMm(offsetMm), leftMm);
        Optional<TightSpot> tight =
            drawn.tight().isPresent() ? drawn.tight() : tight(others, drawing, drawn.drawn());
        if (tight.isPresent()) {
          seen.put(tight.get().what(), new Seen(tight.get(), offsetMm, leftMm));
        } else if (!beside.clearOfBrackets()
            || isClear(others, drawing, drawn.drawn(), beside.legs())) {
          return drawn.drawn();
        } else {
          TightSpot brackets = new TightSpot("brackets beside its mounts", 0, NEIGHBOUR_MM);
          seen.put(brackets.what(), new Seen(brackets, offsetMm, leftMm));
        }
      }
    }
    throw refusal(seen);
  }

  /** Drawn at a place, and what of the vehicle is too close to it there. */
  private record Drawn<T>(T drawn, Optional<TightSpot> tight) {}

  private Drawn<T> drawn(Drawing<T> drawing, double forwardMm, double leftMm) {
    Map<Double, Drawn<T>> beside = known.computeIfAbsent(forwardMm, mm -> new HashMap<>());
    Drawn<T> before = beside.get(leftMm);
    if (before != null) {
      return before;
    }
    T thing = drawing.at(forwardMm, leftMm);
    Optional<TightSpot> tight = drawing.atTop(thing);
    Drawn<T> drawn = new Drawn<>(thing, tight.isPresent() ? tight : tight(room, drawing, thing));
    beside.put(leftMm, drawn);
    return drawn;
  }

  private boolean isClear(MountRoom others, Drawing<T> drawing, T drawn, Legs legs) {
    List<Box> carrier = drawing.carrier(drawn, legs);
    return others.isClearOfBrackets(drawing.envelope(drawn), drawing.bracket(drawn))
        && drawing.leaning(drawn).map(room::isClearOfAxleBrackets).orElse(true)
        && room.isClearOfBars(drawing.plates(drawn))
        && room.isFreeOnFrame(carrier)
        && others.isFreeOnFrame(carrier);
  }

  private Optional<TightSpot> tight(MountRoom round, Drawing<T> drawing, T drawn) {
    Optional<TightSpot> tight = round.tight(drawing.envelope(drawn));
    return tight.isPresent() ? tight : round.tightBracket(drawing.bracket(drawn));
  }

  /** Why no place was found: each thing in the way is looked at where it was last met. */
  private UnworkableLayoutException refusal(Map<String, Seen> seen) {
    if (seen.isEmpty()) {
      return new UnworkableLayoutException(
          Phrase.of(
              "there is no free place along the axle tube for the bracket of the {} {}"
                  + " between the centre housing, the brackets of the bars and the outer"
                  + " limit for brackets. Bars on the other side of the rails or narrower"
                  + " joints leave more.",
              what,
              side.phrase()));
    }
    Seen nearest = null;
    double leastLackMm = Double.POSITIVE_INFINITY;
    for (Seen candidate : seen.values()) {
      double lackMm = candidate.spot().neededMm() - candidate.spot().leastMm().getAsDouble();
      if (lackMm < leastLackMm) {
        leastLackMm = lackMm;
        nearest = candidate;
      }
    }
    return noRoom(nearest);
  }

  private record Seen(TightSpot spot, double offsetMm, double leftMm) {}

  private UnworkableLayoutException noRoom(Seen nearest) {
    TightSpot spot = nearest.spot();
    double foundMm = spot.leastMm().getAsDouble();
    return new UnworkableLayoutException(
        Phrase.of(
            "there is no room for the {} {}: {} from the axle's centre and {} from"
                + " the centre plane it {} over the travel; it needs {}.",
            what,
            side.phrase(),
            length(nearest.offsetMm()),
            length(nearest.leftMm()),
            foundMm < 0
                ? Phrase.of("overlaps the {} by {}", spot.what(), length(-foundMm))
                : Phrase.of("comes within {} of the {}", length(foundMm), spot.what()),
            length(spot.neededMm())));
  }
}
