package trammel.plugins.airspring;

import static trammel.engine.quantity.Amount.force;
import static trammel.engine.quantity.Amount.length;
import static trammel.engine.quantity.Amount.pressure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.mount.AxlePath;
import trammel.brackets.mount.AxleTravel;
import trammel.brackets.mount.Beside;
import trammel.brackets.mount.Crossmember;
import trammel.brackets.mount.Legs;
import trammel.brackets.mount.MountPractice;
import trammel.brackets.mount.MountRoom;
import trammel.brackets.mount.MountSearch;
import trammel.brackets.mount.MountStock;
import trammel.brackets.mount.Side;
import trammel.brackets.mount.TightSpot;
import trammel.engine.clearance.Box;
import trammel.engine.clearance.Capsule;
import trammel.engine.clearance.Cylinder;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.AxleGuide;
import trammel.engine.layout.Chassis;
import trammel.engine.quantity.Phrase;
import trammel.engine.springs.AirSpringSize;
import trammel.planning.catalog.AirSpring;

/**
 * Places an upright air spring between a seat on arms from the axle tube and a seat under a bridge
 * between the rails, or under an outrigger outside them.
 *
 * @param chassis the vehicle
 * @param guide the bars, and what else guides the axle, that are there
 * @param travel how the axle moves on them
 * @param side side of the axle tube
 * @param across side of the rails
 * @param rideHeightMm height of the spring at ride if the job sets it (mm)
 * @param stock what the mounts are made of
 * @param clearOfBrackets true where its mounts must be clear of the brackets beside them
 */
record AirSpringPlace(
    Chassis chassis,
    AxleGuide guide,
    AxleTravel travel,
    Side side,
    AirSpringAcross across,
    OptionalDouble rideHeightMm,
    MountStock stock,
    boolean clearOfBrackets) {
  /** Share of the highest pressure that leaves a third for load: common practice, no source. */
  private static final double EASY_SHARE = 0.65;

  /** Places along the tube that are tried are 1/4 in apart (mm). */
  private static final double ALONG_STEP_MM = 25.4 / 4;

  private static final int ROUNDS = 3;

  public AirSpringPlace {
    Objects.requireNonNull(guide, "guide");
  }

  /**
   * The smallest air spring that carries the load with a third of its pressure to spare; if none
   * does, the smallest that carries it at all.
   *
   * @throws UnworkableLayoutException if none does
   */
  public AirSpringFit smallest(List<AirSpring> springs) {
    List<AirSpring> sorted = new ArrayList<>(springs);
    sorted.sort(
        new Comparator<AirSpring>() {
          @Override
          public int compare(AirSpring a, AirSpring b) {
            return Double.compare(a.outsideRadiusMm(), b.outsideRadiusMm());
          }
        });
    if (sorted.isEmpty()) {
      throw new UnworkableLayoutException(
          Phrase.of("the catalog has no air spring to choose from. Add one to the catalog."));
    }
    Optional<AirSpringFit> carries = Optional.empty();
    Optional<UnworkableLayoutException> refusal = Optional.empty();
    for (AirSpring spring : sorted) {
      try {
        AirSpringFit fit = required(find(spring));
        if (fit.highestGaugeMPa() <= EASY_SHARE * spring.highestGaugeMPa()) {
          return fit;
        }
        carries = carries.isPresent() ? carries : Optional.of(fit);
      } catch (UnworkableLayoutException unworkable) {
        refusal = refusal.isPresent() ? refusal : Optional.of(unworkable);
      }
    }
    if (carries.isPresent()) {
      return carries.get();
    }
    throw refusal.get();
  }

  /**
   * An air spring in its place. Whether it may hold the pressure that its load asks for is left to
   * the check of it.
   *
   * @throws UnworkableLayoutException if there is no room, or its table is too short for the travel
   */
  public AirSpringFit find(AirSpring spring) {
    AirSpringSeats seats =
        new AirSpringSeats(chassis.rails(), across, stock.section().heightMm(), stock.plateMm());
    MountRoom room = new MountRoom(chassis, guide, travel);
    double closestMm =
        chassis.axle().tubeRadiusMm()
            + spring.outsideRadiusMm()
            + MountPractice.TUBE_AIR_MM
            + MountPractice.MARGIN_MM;
    List<Double> places = new ArrayList<>();
    for (double leftMm :
        room.placesAlongTube(
            side == Side.AHEAD ? 0 : Math.PI,
            seats.halfArmsMm(spring),
            chassis.axle().outerLimitMm(),
            ALONG_STEP_MM)) {
      if (isOnItsSide(leftMm)) {
        places.add(leftMm);
      }
    }
    Upright upright = new Upright(spring, seats);
    MountSearch<Upright.Seated> search =
        new MountSearch<>("air spring " + spring.key(), side, room);
    Beside beside = new Beside(List.of(), clearOfBrackets, Legs.TUBE);
    return carrying(
        spring, search.find(closestMm, OptionalDouble.empty(), places, upright, beside));
  }

  /** The bridge over upper seats between the rails. */
  static Crossmember bridge(Chassis chassis, Point3 seat, MountStock stock) {
    double upMm = seat.zMm() + stock.plateMm() + stock.section().heightMm() / 2;
    return new Crossmember("air spring bridge", chassis.rails(), stock, seat.xMm(), upMm);
  }

  private boolean isOnItsSide(double leftMm) {
    return across == AirSpringAcross.INBOARD
        ? leftMm < chassis.rails().innerFaceMm(0)
        : leftMm > chassis.rails().outerFaceMm(0);
  }

  private AirSpringFit carrying(AirSpring spring, Upright.Seated seated) {
    List<Double> loadsN = travel.loadsN(seated.frame(), seated.axle());
    return new AirSpringFit(spring, seated.frame(), seated.axle(), loadsN.get(0), loadsN.get(1));
  }

  private AirSpringFit required(AirSpringFit fit) {
    AirSpring spring = fit.spring();
    if (fit.highestGaugeMPa() > spring.highestGaugeMPa()) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "air spring {} needs {} to carry {}, the heavier side, at {}; its"
                  + " highest is {}. Choose a larger air spring.",
              spring.key(),
              pressure(fit.highestGaugeMPa()),
              force(Math.max(fit.leftLoadN(), fit.rightLoadN())),
              length(fit.heightMm()),
              pressure(spring.highestGaugeMPa())));
    }
    return fit;
  }

  /** An upright air spring drawn at a place. */
  private final class Upright implements MountSearch.Drawing<Upright.Seated> {
    /** Seats at ride. */
    record Seated(Point3 frame, Point3 axle) {}

    private final AirSpring spring;
    private final AirSpringSeats seats;

    Upright(AirSpring spring, AirSpringSeats seats) {
      this.spring = spring;
      this.seats = seats;
    }

    @Override
    public Seated at(double forwardMm, double leftMm) {
      AirSpringSize size = spring.size();
      double heightMm = rideHeightMm.orElse((size.leastHeightMm() + size.mostHeightMm()) / 2);
      Seated seated = seated(forwardMm, leftMm, heightMm);
      for (int i = 0; i < ROUNDS && rideHeightMm.isEmpty(); i++) {
        double middleMm = travel.path(seated.axle()).from(seated.frame()).middleMm();
        heightMm += (size.leastHeightMm() + size.mostHeightMm()) / 2 - middleMm;
        seated = seated(forwardMm, leftMm, heightMm);
      }
      requireTable(seated, heightMm);
      return seated;
    }

    private Seated seated(double forwardMm, double leftMm, double heightMm) {
      double upperMm = seats.upperMm(spring, forwardMm, chassis.axleCentre().zMm() + heightMm);
      return new Seated(
          new Point3(forwardMm, leftMm, upperMm),
          new Point3(forwardMm, leftMm, upperMm - heightMm));
    }

    private void requireTable(Seated seated, double heightMm) {
      AirSpringSize size = spring.size();
      AxlePath.Range range = travel.path(seated.axle()).from(seated.frame());
      double shortestMm = range.leastMm();
      double longestMm = range.mostMm();
      double marginMm = AirSpringSize.RATE_HALF_STEP_MM;
      if (shortestMm < size.leastHeightMm()
          || longestMm > size.mostHeightMm()
          || heightMm < size.leastHeightMm() + marginMm
          || heightMm > size.mostHeightMm() - marginMm) {
        throw new UnworkableLayoutException(
            Phrase.of(
                "air spring {} would work from {} to {}{}; its table goes from {} to {}"
                    + " with {} to spare at ride. Choose another ride_height, a longer air"
                    + " spring, or ask for less bump or droop.",
                spring.key(),
                length(shortestMm),
                length(longestMm),
                heightMm > 0
                    ? Phrase.of(" with a ride height of {}", length(heightMm))
                    : Phrase.of(", its seats at ride past each other by {}", length(-heightMm)),
                length(size.leastHeightMm()),
                length(size.mostHeightMm()),
                length(marginMm)));
      }
    }

    @Override
    public Cylinder envelope(Seated drawn) {
      return new Cylinder(drawn.frame(), drawn.axle(), spring.outsideRadiusMm());
    }

    @Override
    public Capsule bracket(Seated drawn) {
      double upMm = chassis.axleCentre().zMm();
      double halfMm = AirSpringSeats.armEdgeMm(AirSpringSeats.diameterMm(spring)) / 2;
      Point3 seat = drawn.axle();
      // A round bar as thick as the arms are wide apart, under the seat to its far edge.
      double radiusMm = seats.halfArmsMm(spring);
      return new Capsule(
          new Point3(0, seat.yMm(), upMm),
          new Point3(
              seat.xMm() + side.forwardMm(Math.max(0, halfMm - radiusMm)),
              seat.yMm(),
              seat.zMm() - stock.plateMm() - radiusMm),
          radiusMm);
    }

    @Override
    public Optional<Capsule> leaning(Seated drawn) {
      return Optional.empty();
    }

    @Override
    public Capsule plates(Seated drawn) {
      return bracket(drawn);
    }

    @Override
    public List<Box> carrier(Seated drawn, Legs legs) {
      if (across != AirSpringAcross.INBOARD) {
        return List.of();
      }
      return bridge(chassis, drawn.frame(), stock).room();
    }

    @Override
    public Optional<TightSpot> atTop(Seated drawn) {
      double toTwinMm = 2 * (drawn.frame().yMm() - spring.outsideRadiusMm());
      if (toTwinMm < MountPractice.MOVING_AIR_MM) {
        return Optional.of(
            new TightSpot("one on the other side", toTwinMm, MountPractice.MOVING_AIR_MM));
      }
      double toGroundMm = drawn.axle().zMm() - stock.plateMm();
      if (toGroundMm < MountPractice.GROUND_MM) {
        return Optional.of(new TightSpot("ground", toGroundMm, MountPractice.GROUND_MM));
      }
      return Optional.empty();
    }
  }
}
