package trammel.brackets.bar;

import static trammel.engine.quantity.Amount.length;

import java.util.Optional;
import trammel.brackets.UnworkableLayoutException;
import trammel.engine.layout.Joint;
import trammel.engine.quantity.Phrase;
import trammel.trade.plates.PickUpRow;
import trammel.trade.plates.Point2;

/**
 * Pick-up holes one over the other in a bracket, so that a joint can be set higher or lower later.
 * The layout's joint sits in the middle one; of an even number, in the one under the middle as seen
 * from the rail.
 *
 * @param holes how many, 1 to 5
 * @param pitchMm from centre to centre (mm); 0 for a single hole
 */
public record HoleRow(int holes, double pitchMm) {
  /** One hole, no adjustment. */
  public static final HoleRow SINGLE = new HoleRow(1, 0);

  /** Most holes in a row. */
  public static final int MOST = 5;

  /**
   * Least pitch in hole diameters. From hole to hole there is then as much metal as the edge rule
   * of 1.5 diameters leaves from hole to edge, so that the tear-out check of one hole holds for
   * all.
   */
  private static final double PITCH_FACTOR = 2;

  private static final double STEP_MM = 25.4 / 8;
  private static final double ROUNDING_MM = 1e-6;

  public HoleRow {
    if (holes < 1 || holes > MOST) {
      throw new IllegalArgumentException(
          "a row has " + holes + " pick-up holes; it must have 1 to " + MOST + ".");
    }
    if (!(pitchMm >= 0) || holes > 1 && pitchMm == 0) {
      throw new IllegalArgumentException(
          "pick-up holes are " + pitchMm + " mm apart; it must be above 0. Give their pitch.");
    }
  }

  /**
   * A row in the bracket of a joint.
   *
   * @param pitchMm from centre to centre (mm); left out, two hole diameters, up to the next 1/8 in
   * @throws UnworkableLayoutException if the pitch is under two hole diameters
   */
  public static HoleRow of(int holes, Optional<Double> pitchMm, Joint joint) {
    if (holes == 1) {
      return SINGLE;
    }
    double leastMm = PITCH_FACTOR * (joint.boltDiameterMm() + JointSeat.BOLT_CLEARANCE_MM);
    if (pitchMm.isEmpty()) {
      return new HoleRow(holes, STEP_MM * Math.ceil(leastMm / STEP_MM - ROUNDING_MM));
    }
    if (pitchMm.get() < leastMm - ROUNDING_MM) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "hole_pitch is {}; bolts of {} need {}, two hole diameters, so that the"
                  + " metal between the holes holds. Make it that, or leave it out.",
              length(pitchMm.get()),
              length(joint.boltDiameterMm()),
              length(leastMm)));
    }
    return new HoleRow(holes, pitchMm.get());
  }

  /** From the layout's hole to the one nearest the rail (mm). */
  public double nearMm() {
    return holes / 2 * pitchMm;
  }

  /** From the layout's hole to the one farthest from the rail (mm). */
  public double farMm() {
    return (holes - 1) / 2 * pitchMm;
  }

  /** Which hole is the layout's, counted from the rail from 1. */
  public int layoutHole() {
    return holes / 2 + 1;
  }

  /** The holes in a plate's own axes, y up to the rail, about the layout's hole. */
  PickUpRow about(Point2 layoutHole, double holeMm) {
    PickUpRow single = PickUpRow.single(layoutHole, holeMm);
    return holes == 1 ? single : single.row(holes, pitchMm, Math.PI / 2, (holes - 1) / 2);
  }
}
