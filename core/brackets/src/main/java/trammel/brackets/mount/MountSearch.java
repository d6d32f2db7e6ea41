package trammel.brackets.mount;

import static trammel.engine.quantity.Amount.length;

import java.util.ArrayList;
import java.util.EnumMap;
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
 * there as far outboard as there is room. The places with room on the vehicle it knows when it is
 * asked again with something else beside it. Why there is none is found out when somebody asks.
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

  /** The room before anything was asked of it, for refusals. */
  private final MountRoom untouched;

  private final List<FreePlaces> known = new ArrayList<>();

  /**
   * @param what what is placed, as messages call it
   * @param side side of the axle on which it is
   * @param room the vehicle round it
   */
  public MountSearch(String what, Side side, MountRoom room) {
    this.what = what;
    this.side = side;
    this.room = room;
    untouched = room.copy();
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
    FreePlaces free = free(new Places(closestMm, fixedMm, placesMm), drawing);
    MountRoom others = room.beside(beside.bodies());
    for (int i = 0; free.has(i); i++) {
      FreePlace place = free.get(i);
      if (!place.isKnownInTheWay(beside)
          && tight(others, drawing, place.drawn).isEmpty()
          && (!beside.clearOfBrackets() || place.isClear(others, beside.legs()))) {
        return place.drawn;
      }
    }
    throw new UnworkableLayoutException(() -> refusal(free.places, drawing, beside));
  }

  /** Where a thing may stand: at some distances from the tube, and at each at the same places. */
  private record Places(double firstMm, double lastMm, List<Double> alongMm) {
    Places(double closestMm, OptionalDouble fixedMm, List<Double> alongMm) {
      this(
          fixedMm.orElse(closestMm),
          fixedMm.isPresent() ? fixedMm.getAsDouble() : closestMm + REACH_MM,
          alongMm);
    }

    boolean isSame(Places other) {
      return firstMm == other.firstMm && lastMm == other.lastMm && alongMm.equals(other.alongMm);
    }
  }

  private FreePlaces free(Places places, Drawing<T> drawing) {
    for (FreePlaces one : known) {
      if (one.places.isSame(places)) {
        return one;
      }
    }
    FreePlaces free = new FreePlaces(places, drawing);
    known.add(free);
    return free;
  }

  /** The places with room on the vehicle in their order, looked for as far as was asked. */
  private final class FreePlaces {
    private final Places places;
    private final Drawing<T> drawing;
    private final List<FreePlace> found = new ArrayList<>();
    private double offsetMm;
    private int along;

    FreePlaces(Places places, Drawing<T> drawing) {
      this.places = places;
      this.drawing = drawing;
      offsetMm = places.firstMm();
    }

    /** Whether there are more than a number of them. */
    boolean has(int number) {
      while (found.size() <= number && offsetMm <= places.lastMm()) {
        look();
      }
      return found.size() > number;
    }

    FreePlace get(int number) {
      return found.get(number);
    }

    /** A place where nothing can be drawn is met again by whoever asks again. */
    private void look() {
      if (along < places.alongMm().size()) {
        T drawn = drawing.at(side.forwardMm(offsetMm), places.alongMm().get(along));
        if (drawing.atTop(drawn).isEmpty() && tight(room, drawing, drawn).isEmpty()) {
          found.add(new FreePlace(drawn, drawing));
        }
        along++;
      } else {
        along = 0;
        offsetMm += STEP_MM;
      }
    }
  }

  /** A place with room on the vehicle, and on which legs its mounts are clear of its brackets. */
  private final class FreePlace {
    private final T drawn;
    private final Drawing<T> drawing;
    private final Map<Legs, Boolean> clear = new EnumMap<>(Legs.class);

    FreePlace(T drawn, Drawing<T> drawing) {
      this.drawn = drawn;
      this.drawing = drawing;
    }

    boolean isKnownInTheWay(Beside beside) {
      return beside.clearOfBrackets() && Boolean.FALSE.equals(clear.get(beside.legs()));
    }

    boolean isClear(MountRoom others, Legs legs) {
      List<Box> carrier = drawing.carrier(drawn, legs);
      return clear.computeIfAbsent(legs, one -> isClearOfVehicle(drawing, drawn, carrier))
          && isClearOfOthers(others, drawing, drawn, carrier);
    }
  }

  private boolean isClearOfVehicle(Drawing<T> drawing, T drawn, List<Box> carrier) {
    return drawing.leaning(drawn).map(room::isClearOfAxleBrackets).orElse(true)
        && room.isClearOfBars(drawing.plates(drawn))
        && room.isFreeOnFrame(carrier);
  }

  private static <T> boolean isClearOfOthers(
      MountRoom others, Drawing<T> drawing, T drawn, List<Box> carrier) {
    return others.isClearOfBrackets(drawing.envelope(drawn), drawing.bracket(drawn))
        && others.isFreeOnFrame(carrier);
  }

  private static <T> Optional<TightSpot> tight(MountRoom round, Drawing<T> drawing, T drawn) {
    Optional<TightSpot> tight = round.tight(drawing.envelope(drawn));
    return tight.isPresent() ? tight : round.tightBracket(drawing.bracket(drawn));
  }

  /** What is in the way at each place of a search that found none. */
  private Phrase refusal(Places places, Drawing<T> drawing, Beside beside) {
    MountRoom vehicle = untouched.copy();
    MountRoom others = vehicle.beside(beside.bodies());
    Map<String, Seen> seen = new LinkedHashMap<>();
    for (double offsetMm = places.firstMm(); offsetMm <= places.lastMm(); offsetMm += STEP_MM) {
      for (double leftMm : places.alongMm()) {
        T drawn = drawing.at(side.forwardMm(offsetMm), leftMm);
        TightSpot spot =
            drawing
                .atTop(drawn)
                .or(() -> tight(vehicle, drawing, drawn))
                .or(() -> tight(others, drawing, drawn))
                .orElseGet(() -> new TightSpot("brackets beside its mounts", 0, NEIGHBOUR_MM));
        seen.put(spot.what(), new Seen(spot, offsetMm, leftMm));
      }
    }
    return refusal(seen);
  }

  /** Why no place was found: each thing in the way is looked at where it was last met. */
  private Phrase refusal(Map<String, Seen> seen) {
    if (seen.isEmpty()) {
      return Phrase.of(
          "there is no free place along the axle tube for the bracket of the {} {}"
              + " between the centre housing, the brackets of the bars and the outer"
              + " limit for brackets. Bars on the other side of the rails or narrower"
              + " joints leave more.",
          what,
          side.phrase());
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

  private Phrase noRoom(Seen nearest) {
    TightSpot spot = nearest.spot();
    double foundMm = spot.leastMm().getAsDouble();
    return Phrase.of(
        "there is no room for the {} {}: {} from the axle's centre and {} from"
            + " the centre plane it {} over the travel; it needs {}.",
        what,
        side.phrase(),
        length(nearest.offsetMm()),
        length(nearest.leftMm()),
        foundMm < 0
            ? Phrase.of("overlaps the {} by {}", spot.what(), length(-foundMm))
            : Phrase.of("comes within {} of the {}", length(foundMm), spot.what()),
        length(spot.neededMm()));
  }
}
