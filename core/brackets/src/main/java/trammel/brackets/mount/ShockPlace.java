package trammel.brackets.mount;

import static trammel.engine.quantity.Amount.length;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.material.Shock;
import trammel.engine.layout.AxleGuide;
import trammel.engine.layout.Chassis;
import trammel.engine.quantity.Phrase;

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
 * @param stance how it stands
 * @param side side of the axle tube
 * @param distanceMm lower mount from the axle's centre if the job sets it (mm)
 * @param stock what its mounts are made of
 */
public record ShockPlace(
    String what,
    Chassis chassis,
    AxleGuide guide,
    AxleTravel travel,
    List<Shock> shocks,
    double radiusMm,
    ShockStance stance,
    Side side,
    OptionalDouble distanceMm,
    MountStock stock) {
  public ShockPlace {
    Objects.requireNonNull(guide, "guide");
    shocks = List.copyOf(shocks);
    if (shocks.isEmpty()) {
      throw new UnworkableLayoutException(
          Phrase.of("the catalog has no {} to choose from. Add one to the catalog.", what));
    }
  }

  /** A search for its place, to be asked as often as there is something else beside it. */
  public ShockSearch search() {
    return new ShockSearch(this);
  }

  double heightMm() {
    return stance.heightMm();
  }

  double leanRad() {
    return stance.leanRad();
  }

  /** How far the plates of the lower mount lean in over the top of the axle tube (mm). */
  double leaningInMm() {
    return Math.max(0, chassis.axle().tubeRadiusMm() - heightMm()) * Math.tan(leanRad());
  }

  /** Where the outside just keeps its air to the axle tube. */
  double closestMm() {
    return chassis.axle().tubeRadiusMm()
        + radiusMm
        + MountPractice.TUBE_AIR_MM
        + MountPractice.MARGIN_MM;
  }

  double widestEyeMm() {
    double widestMm = 0;
    for (Shock shock : shocks) {
      widestMm = Math.max(widestMm, shock.eyeWidthMm());
    }
    return widestMm;
  }

  /**
   * @throws UnworkableLayoutException if its lower mount would hang too low
   */
  void requireGround() {
    double bracketMm = chassis.axleCentre().zMm() + heightMm() - radiusMm;
    if (bracketMm < MountPractice.GROUND_MM) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "the lower mount of the {} would hang {} above the ground; it needs {}."
                  + " Raise lower_height by {}.",
              what,
              length(bracketMm),
              length(MountPractice.GROUND_MM),
              length(MountPractice.GROUND_MM - bracketMm)));
    }
  }
}
