package trammel.brackets.bar;

import static trammel.engine.quantity.Amount.length;

import trammel.brackets.UnworkableLayoutException;
import trammel.engine.layout.AxleHousing;
import trammel.engine.layout.Chassis;
import trammel.engine.quantity.Phrase;

/**
 * The upright plane, parallel to the centre plane, in which the bars of one side lie: against the
 * rails, between the limits for brackets on the axle, clear of the tyre.
 *
 * @param mounting side of the rails
 * @param leftMm distance from the centre plane (mm)
 */
public record BarPlane(Mounting mounting, double leftMm) {
  /** Air kept between brackets and tyre, 1 in: common practice, no source. */
  public static final double TYRE_AIR_MM = 25.4;

  /**
   * The plane for bars that reach from the axle forward.
   *
   * @param chassis the vehicle
   * @param mounting side of the rails
   * @param railGapMm gap to the rail face at the station where it is closest (mm)
   * @param halfAcrossMm half the room that bar and brackets take (mm)
   * @param frontMm how far forward the foremost frame bracket is (mm)
   * @throws UnworkableLayoutException if there is no room; the message says how much is missing
   */
  public static BarPlane of(
      Chassis chassis, Mounting mounting, double railGapMm, double halfAcrossMm, double frontMm) {
    return mounting == Mounting.INBOARD
        ? inboard(chassis, railGapMm, halfAcrossMm, frontMm)
        : outboard(chassis, railGapMm, halfAcrossMm, frontMm);
  }

  private static BarPlane inboard(Chassis chassis, double gapMm, double halfMm, double frontMm) {
    double faceMm = Math.min(chassis.rails().innerFaceMm(0), chassis.rails().innerFaceMm(frontMm));
    double outsideMm = Math.min(faceMm - gapMm, outermostMm(chassis));
    double insideMm = chassis.axle().innerLimitMm();
    requireRoom(
        outsideMm - insideMm,
        2 * halfMm,
        Phrase.of(
            "inboard, from the centre housing ({} from the centre plane) to the"
                + " rails' inner faces less the gap ({})",
            length(insideMm),
            length(outsideMm)),
        "Choose mounting: outboard, a narrower joint or a smaller rail_gap.");
    return new BarPlane(Mounting.INBOARD, outsideMm - halfMm);
  }

  private static BarPlane outboard(Chassis chassis, double gapMm, double halfMm, double frontMm) {
    double faceMm = Math.max(chassis.rails().outerFaceMm(0), chassis.rails().outerFaceMm(frontMm));
    double insideMm = Math.max(faceMm + gapMm, chassis.axle().innerLimitMm());
    double outsideMm = outermostMm(chassis);
    requireRoom(
        outsideMm - insideMm,
        2 * halfMm,
        Phrase.of(
            "outboard, from the rails' outer faces and the gap ({} from the centre"
                + " plane) to the backing plate or {} off the tyre, whichever comes"
                + " first ({})",
            length(insideMm),
            length(TYRE_AIR_MM),
            length(outsideMm)),
        "Choose mounting: inboard, a narrower joint or a smaller rail_gap.");
    return new BarPlane(Mounting.OUTBOARD, insideMm + halfMm);
  }

  /** How far from the centre plane a bracket on the axle may reach (mm). */
  public static double outermostMm(Chassis chassis) {
    AxleHousing axle = chassis.axle();
    double tyreMm = axle.trackMm() / 2 - chassis.tyre().widthMm() / 2;
    return Math.min(axle.outerLimitMm(), tyreMm - TYRE_AIR_MM);
  }

  private static void requireRoom(double foundMm, double neededMm, Phrase where, String remedy) {
    if (!(foundMm >= neededMm - 1e-6)) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "there is {} for the bars of one side {}; bar and brackets need {}, so"
                  + " {} is missing. {}",
              length(Math.max(0, foundMm)),
              where,
              length(neededMm),
              length(neededMm - foundMm),
              remedy));
    }
  }
}
