package trammel.brackets.mount;

import java.util.List;
import java.util.Optional;
import trammel.brackets.UnworkableLayoutException;
import trammel.engine.clearance.Box;
import trammel.engine.clearance.Capsule;
import trammel.engine.clearance.Cylinder;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Chassis;

/** Searches the place of one shock. Not for use by several threads at once. */
public final class ShockSearch {
  /** Places along the tube that are tried are 1/4 in apart (mm). */
  private static final double ALONG_STEP_MM = 25.4 / 4;

  private final ShockPlace place;
  private final Chassis chassis;
  private final double halfMm;
  private final List<Double> alongMm;
  private final List<Double> clearOfHousingMm;
  private final MountSearch<ShockFit> search;
  private final Leaning leaning;

  ShockSearch(ShockPlace place) {
    this.place = place;
    chassis = place.chassis();
    halfMm = place.widestEyeMm() / 2 + place.stock().plateMm();
    MountRoom room = new MountRoom(chassis, place.guide(), place.travel());
    alongMm =
        room.placesAlongTube(
            Math.atan2(place.heightMm(), place.side().forwardMm(place.closestMm())),
            halfMm,
            chassis.axle().outerLimitMm(),
            ALONG_STEP_MM);
    clearOfHousingMm =
        alongMm.stream()
            .filter(
                leftMm -> leftMm - halfMm - place.leaningInMm() >= chassis.axle().innerLimitMm())
            .toList();
    search = new MountSearch<>(place.what(), place.side(), room);
    leaning = new Leaning(place, halfMm);
  }

  /**
   * The shock in its place.
   *
   * @param beside what stands beside it
   * @throws UnworkableLayoutException if no shock has the travel or there is no room
   */
  public ShockFit find(Beside beside) {
    place.requireGround();
    List<Double> placesMm = beside.clearOfBrackets() ? clearOfHousingMm : alongMm;
    return search.find(place.closestMm(), place.distanceMm(), placesMm, leaning, beside);
  }

  private record Leaning(ShockPlace place, ShockChoice choice, double halfMm)
      implements MountSearch.Drawing<ShockFit> {
    Leaning(ShockPlace place, double halfMm) {
      this(place, new ShockChoice(place.shocks(), place.leanRad(), place.travel()), halfMm);
    }

    @Override
    public ShockFit at(double forwardMm, double leftMm) {
      double upMm = place.chassis().axleCentre().zMm() + place.heightMm();
      return choice.at(new Point3(forwardMm, leftMm, upMm));
    }

    @Override
    public Cylinder envelope(ShockFit drawn) {
      return drawn.envelope(place.radiusMm());
    }

    /** Leaning with the shock, as its plates do. */
    @Override
    public Capsule bracket(ShockFit drawn) {
      Point3 eye = drawn.axle();
      Point3 top = drawn.frame();
      double upMm = place.chassis().axleCentre().zMm();
      double leanMm = (top.yMm() - eye.yMm()) / (top.zMm() - eye.zMm()) * (upMm - eye.zMm());
      return new Capsule(
          new Point3(0, eye.yMm() + leanMm, upMm), eye, drawn.shock().eyeWidthMm() / 2);
    }

    @Override
    public Optional<Capsule> leaning(ShockFit drawn) {
      return Optional.of(bracket(drawn));
    }

    @Override
    public Capsule plates(ShockFit drawn) {
      double grownMm = place.stock().plateMm() + MountPractice.BOLT_END_MM;
      Capsule eye = bracket(drawn);
      return new Capsule(eye.from(), eye.to(), eye.radiusMm() + grownMm);
    }

    @Override
    public List<Box> carrier(ShockFit drawn, Legs legs) {
      return new ShockMounting(
              place.what(),
              place.chassis(),
              drawn.left(),
              drawn.right(),
              drawn.shock(),
              place.radiusMm(),
              place.stock().on(legs))
          .crossmember()
          .room();
    }

    @Override
    public Optional<TightSpot> atTop(ShockFit drawn) {
      double leftMm = drawn.frame().yMm();
      double toRailMm = place.chassis().rails().innerFaceMm(drawn.frame().xMm()) - leftMm - halfMm;
      if (toRailMm < MountPractice.WELD_ROOM_MM) {
        return Optional.of(
            new TightSpot(
                "inner rail face at its upper mount", toRailMm, MountPractice.WELD_ROOM_MM));
      }
      double toTwinMm = 2 * (leftMm - place.radiusMm());
      if (toTwinMm < MountPractice.MOVING_AIR_MM) {
        return Optional.of(
            new TightSpot("one on the other side", toTwinMm, MountPractice.MOVING_AIR_MM));
      }
      return Optional.empty();
    }
  }
}
