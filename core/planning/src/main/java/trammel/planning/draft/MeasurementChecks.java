package trammel.planning.draft;

import static trammel.engine.quantity.Amount.angle;
import static trammel.engine.quantity.Amount.decimalLength;
import static trammel.engine.quantity.Amount.length;
import static trammel.engine.quantity.Amount.mass;

import java.util.List;
import java.util.Optional;
import trammel.engine.checks.Check;
import trammel.engine.checks.Reading;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.PlanCheck;
import trammel.planning.job.Axle;
import trammel.planning.job.Measured;
import trammel.planning.job.RailSteel;
import trammel.planning.job.Rails;
import trammel.planning.job.Weights;

/**
 * Whether the measurements of a job agree with each other, and what its rails are like. Each says
 * in plain words which two readings it holds against each other, so that both can be taken again.
 */
final class MeasurementChecks {
  private static final int PLACES = 2;

  private final Measured measured;

  /**
   * @param measured what was measured, as the frame sits on the stands
   */
  MeasurementChecks(Measured measured) {
    this.measured = measured;
  }

  /** All of them, in the order of a walk round the vehicle. */
  List<Check> all() {
    return List.of(
        rake(),
        weights(),
        unsprung(),
        tyre(),
        tyreAndRail(),
        tube(),
        outerLimit(),
        pinion(),
        shaft(),
        gravity(),
        railSteel(),
        railRust(),
        railHoles());
  }

  private Check check(PlanCheck check, double value, Phrase words, String advice) {
    return new MeasurementCheck(check, new Reading.Value(value, words), advice);
  }

  /** Both as the frame sits on the stands, positive with the rear higher. */
  private Check rake() {
    Rails rails = measured.rails();
    double byHeightsRad =
        Math.atan2(
            rails.undersideAtAxle().meanMm() - rails.undersideAtFrontMounts().meanMm(),
            rails.frontMountsForward().meanMm());
    double readRad = measured.rake().onStands().meanRad();
    return check(
        PlanCheck.RAKE,
        Math.abs(byHeightsRad - readRad),
        Phrase.of(
            "the rail heights say {}, the rake says {}: which?",
            angle(byHeightsRad, PLACES),
            angle(readRad, PLACES)),
        "Measure underside_at_axle, underside_at_front_mounts and front_mounts_forward again, and"
            + " the rake over the same run of the rail.");
  }

  private Check weights() {
    Weights weights = measured.weights();
    double front = uneven(weights.frontLeft().meanKg(), weights.frontRight().meanKg());
    double rear = uneven(weights.rearLeft().meanKg(), weights.rearRight().meanKg());
    boolean isFront = front > rear;
    return check(
        PlanCheck.WEIGHTS,
        Math.max(front, rear),
        Phrase.of(
            "{}{}, right {}: is that so?",
            isFront ? "front left " : "rear left ",
            mass((isFront ? weights.frontLeft() : weights.rearLeft()).meanKg()),
            mass((isFront ? weights.frontRight() : weights.rearRight()).meanKg())),
        "Weigh again with all four scales level, tyres at pressure, the suspension settled and"
            + " nobody leaning on the vehicle.");
  }

  private static double uneven(double leftKg, double rightKg) {
    return Math.abs(leftKg - rightKg) / (leftKg + rightKg);
  }

  private Check unsprung() {
    Weights weights = measured.weights();
    return check(
        PlanCheck.UNSPRUNG,
        weights.unsprungRearKg() / weights.rearKg(),
        Phrase.of(
            "unsprung_rear is {}, the rear scales read {}",
            mass(weights.unsprungRearKg()),
            mass(weights.rearKg())),
        "Weigh the bare axle with its wheels and brakes, or the rear wheels again.");
  }

  private Check tyre() {
    double loadedMm = measured.tyre().loadedRadius().meanMm();
    double freeMm = measured.tyre().diameterMm() / 2;
    return check(
        PlanCheck.TYRE,
        loadedMm / freeMm,
        Phrase.of(
            "the wheel's centre stands {} above the ground, half the tyre's diameter"
                + " is {}: which?",
            length(loadedMm),
            length(freeMm)),
        "Measure loaded_radius again at ride weight and pressure, and read the sidewall again.");
  }

  private Check tyreAndRail() {
    Axle axle = measured.axle();
    double trackMm = axle.flangeToFlange().meanMm() - 2 * measured.tyre().wheelOffsetMm();
    double innerMm = (trackMm - measured.tyre().widthMm()) / 2;
    double railMm = measured.rails().outsideAtAxle().meanMm() / 2;
    return check(
        PlanCheck.TYRE_AND_RAIL,
        innerMm - railMm,
        Phrase.of(
            "the tyres stand {} apart, the rails are {} wide over both",
            length(2 * innerMm),
            length(2 * railMm)),
        "Measure flange_to_flange, wheel_offset, the tyre's width and outside_at_axle again.");
  }

  private Check tube() {
    Axle axle = measured.axle();
    return check(
        PlanCheck.TUBE,
        axle.tubeDiameterMm() / axle.flangeToFlange().meanMm(),
        Phrase.of(
            "tube {}, {} over the wheel flanges",
            length(axle.tubeDiameterMm()),
            length(axle.flangeToFlange().meanMm())),
        "Measure tube_diameter with a calliper (not round it) and flange_to_flange again.");
  }

  private Check outerLimit() {
    Axle axle = measured.axle();
    double flangeMm = axle.flangeToFlange().meanMm() / 2;
    return check(
        PlanCheck.OUTER_LIMIT,
        flangeMm - axle.outerLimit().meanMm(),
        Phrase.of(
            "the outer limit is {} from the middle, the wheel's face {}",
            length(axle.outerLimit().meanMm()),
            length(flangeMm)),
        "Measure outer_limit from the middle of the axle, not from its end, and flange_to_flange"
            + " again.");
  }

  private Check pinion() {
    double aheadMm = measured.axle().pinion().mean().forwardMm();
    return check(
        PlanCheck.PINION,
        aheadMm,
        Phrase.of("the pinion's joint is given {} ahead of the axle's line", length(aheadMm)),
        "Measure axle.pinion from the axle's line forward to the centre of the joint.");
  }

  private Check shaft() {
    double pinionMm = measured.axle().pinion().mean().forwardMm();
    double jointMm = measured.transmission().joint().mean().forwardMm();
    double wheelbaseMm = measured.wheelbase().meanMm();
    return check(
        PlanCheck.SHAFT,
        (jointMm - pinionMm) / wheelbaseMm,
        Phrase.of(
            "from {} to {} ahead of the axle, with a wheelbase of {}",
            length(pinionMm),
            length(jointMm),
            length(wheelbaseMm)),
        "Measure transmission.joint forward from the axle mark, axle.pinion, and the wheelbase"
            + " again.");
  }

  private Check gravity() {
    double heightMm = measured.weights().centreOfGravityHeightMm();
    double radiusMm = measured.tyre().loadedRadius().meanMm();
    return check(
        PlanCheck.GRAVITY,
        heightMm / radiusMm,
        Phrase.of(
            "centre of gravity {} above the ground, wheel's centre {}",
            length(heightMm),
            length(radiusMm)),
        "It commonly lies at the height of the engine's camshaft; measure it by lifting one end.");
  }

  private Check railSteel() {
    Optional<RailSteel> steel = measured.rails().steel();
    if (steel.isEmpty()) {
      return new MeasurementCheck(
          PlanCheck.RAIL_STEEL,
          new Reading.Unknown(
              "whether the rails are heat-treated is not known; look for the frame's label, ask for"
                  + " the vehicle builder's guide or have the hardness tested, and give"
                  + " measured.rails.steel. A heat-treated rail loses its strength where it is cut"
                  + " hot or welded"),
          "");
    }
    boolean treated = steel.get() == RailSteel.HEAT_TREATED;
    return check(
        PlanCheck.RAIL_STEEL,
        treated ? 1 : 0,
        treated ? Phrase.of("it loses its strength where it is cut hot or welded") : Phrase.NONE,
        "Do not cut or weld these rails. The vehicle builder's guide (body builder's or frame repair"
            + " manual) says what may be bolted to the web and where; ask the builder for it.");
  }

  private Check railRust() {
    Optional<Double> depthMm = measured.rails().rustDepthMm();
    if (depthMm.isEmpty()) {
      return new MeasurementCheck(
          PlanCheck.RAIL_RUST,
          new Reading.Unknown(
              "the rust in the rails is not measured; clean them near the work and give the deepest"
                  + " pit as measured.rails.rust_depth, 0 for none"),
          "");
    }
    double wallMm = measured.rails().wallMm();
    return check(
        PlanCheck.RAIL_RUST,
        Math.max(0, 1 - depthMm.get() / wallMm),
        Phrase.of(
            "pits of {} in a wall of {}",
            decimalLength(depthMm.get(), 3),
            decimalLength(wallMm, 3)),
        "Replace the run of rail, or have it repaired to the vehicle builder's guide, before anything"
            + " is welded to it.");
  }

  private Check railHoles() {
    Optional<Double> holeMm = measured.rails().flangeHoleMm();
    if (holeMm.isEmpty()) {
      return new MeasurementCheck(
          PlanCheck.RAIL_HOLES,
          new Reading.Unknown(
              "holes in the rails' flanges are not measured; give the largest near the work as"
                  + " measured.rails.flange_hole, 0 for none"),
          "");
    }
    double flangeMm = measured.rails().flange().meanMm();
    return check(
        PlanCheck.RAIL_HOLES,
        holeMm.get() / flangeMm,
        Phrase.of("{} in a flange of {}", length(holeMm.get()), length(flangeMm)),
        "Keep cuts, welds and brackets away from it, or plate the flange past it as the vehicle"
            + " builder's guide allows.");
  }
}
