package trammel.brackets.mount;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.material.Shock;
import trammel.engine.clearance.Body;
import trammel.engine.clearance.Box;
import trammel.engine.clearance.Capsule;
import trammel.engine.clearance.Cylinder;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.AxleGuide;
import trammel.engine.layout.Chassis;
import trammel.reading.quantity.QuantityPrinter;

/**
 * Places a leaning shock, with or without a spring on it, between a bracket on the axle tube and a
 * crossmember between the rails.
 *
 * @param what the word for it in messages
 * @param chassis the vehicle
 * @param guide the bars, and what else guides the axle, that are there
 * @param travel how the axle moves on them
 * @param shocks shocks to choose from
 * @param radiusMm largest outside radius of shock and spring (mm)
 * @param leanRad lean inward from upright
 * @param side side of the axle tube
 * @param distanceMm lower mount from the axle's centre if the job sets it (mm)
 * @param heightMm lower mount above the axle's centre, negative below (mm)
 * @param stock what its mounts are made of
 * @param clearOfBrackets true where its mounts must be clear of the brackets beside them
 * @param print for messages
 */
public record ShockPlace(
    String what,
    Chassis chassis,
    AxleGuide guide,
    AxleTravel travel,
    List<Shock> shocks,
    double radiusMm,
    double leanRad,
    Side side,
    OptionalDouble distanceMm,
    double heightMm,
    MountStock stock,
    boolean clearOfBrackets,
    QuantityPrinter print) {
  /** Places along the tube that are tried are 1/4 in apart (mm). */
  private static final double ALONG_STEP_MM = 25.4 / 4;

  public ShockPlace {
    Objects.requireNonNull(guide, "guide");
    shocks = List.copyOf(shocks);
    if (shocks.isEmpty()) {
      throw new UnworkableLayoutException(
          "the catalog has no " + what + " to choose from. Add one to the catalog.");
    }
  }

  /**
   * The shock in its place.
   *
   * @param others springs that stand there already, with what carries them on the axle
   * @throws UnworkableLayoutException if no shock has the travel or there is no room
   */
  public ShockFit find(List<Body> others) {
    requireGround();
    MountRoom room = new MountRoom(chassis, guide, travel);
    others.forEach(room::add);
    double halfMm = widestEyeMm() / 2 + stock.plateMm();
    List<Double> places =
        room.placesAlongTube(
            Math.atan2(heightMm, side.forwardMm(closestMm())),
            halfMm,
            chassis.axle().outerLimitMm(),
            ALONG_STEP_MM);
    if (clearOfBrackets) {
      places.removeIf(leftMm -> leftMm - halfMm - leaningInMm() < chassis.axle().innerLimitMm());
    }
    ShockChoice choice = new ShockChoice(shocks, leanRad, travel, print);
    MountSearch<ShockFit> search = new MountSearch<>(what, side, room, clearOfBrackets, print);
    Optional<ShockFit> found =
        search.find(closestMm(), distanceMm, places, new Leaning(choice, halfMm));
    if (found.isEmpty()) {
      throw search.refusal();
    }
    return found.get();
  }

  /** How far the plates of the lower mount lean in over the top of the axle tube (mm). */
  private double leaningInMm() {
    return Math.max(0, chassis.axle().tubeRadiusMm() - heightMm) * Math.tan(leanRad);
  }

  /** Where the outside just keeps its air to the axle tube. */
  private double closestMm() {
    return chassis.axle().tubeRadiusMm()
        + radiusMm
        + MountPractice.TUBE_AIR_MM
        + MountPractice.MARGIN_MM;
  }

  private double widestEyeMm() {
    double widestMm = 0;
    for (Shock shock : shocks) {
      widestMm = Math.max(widestMm, shock.eyeWidthMm());
    }
    return widestMm;
  }

  private void requireGround() {
    double bracketMm = chassis.axleCentre().zMm() + heightMm - radiusMm;
    if (bracketMm < MountPractice.GROUND_MM) {
      throw new UnworkableLayoutException(
          "the lower mount of the "
              + what
              + " would hang "
              + print.length(bracketMm)
              + " above the ground; it needs "
              + print.length(MountPractice.GROUND_MM)
              + ". Raise lower_height by "
              + print.length(MountPractice.GROUND_MM - bracketMm)
              + ".");
    }
  }

  private final class Leaning implements MountSearch.Drawing<ShockFit> {
    private final ShockChoice choice;
    private final double halfMm;

    Leaning(ShockChoice choice, double halfMm) {
      this.choice = choice;
      this.halfMm = halfMm;
    }

    @Override
    public ShockFit at(double forwardMm, double leftMm) {
      return choice.at(new Point3(forwardMm, leftMm, chassis.axleCentre().zMm() + heightMm));
    }

    @Override
    public Cylinder envelope(ShockFit drawn) {
      return drawn.envelope(radiusMm);
    }

    @Override
    public Capsule bracket(ShockFit drawn) {
      double upMm = chassis.axleCentre().zMm();
      return new Capsule(
          new Point3(0, drawn.axle().yMm(), upMm), drawn.axle(), drawn.shock().eyeWidthMm() / 2);
    }

    @Override
    public List<Box> carrier(ShockFit drawn) {
      return new ShockMounting(
              what, chassis, drawn.left(), drawn.right(), drawn.shock(), radiusMm, stock, print)
          .crossmember()
          .room();
    }

    @Override
    public Optional<TightSpot> atTop(ShockFit drawn) {
      double leftMm = drawn.frame().yMm();
      double toRailMm = chassis.rails().innerFaceMm(drawn.frame().xMm()) - leftMm - halfMm;
      if (toRailMm < MountPractice.WELD_ROOM_MM) {
        return Optional.of(
            new TightSpot(
                "inner rail face at its upper mount", toRailMm, MountPractice.WELD_ROOM_MM));
      }
      double toTwinMm = 2 * (leftMm - radiusMm);
      if (toTwinMm < MountPractice.MOVING_AIR_MM) {
        return Optional.of(
            new TightSpot("one on the other side", toTwinMm, MountPractice.MOVING_AIR_MM));
      }
      return Optional.empty();
    }
  }
}
