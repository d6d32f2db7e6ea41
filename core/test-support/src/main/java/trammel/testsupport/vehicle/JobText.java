package trammel.testsupport.vehicle;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** Writes a plausible vehicle as a job file: what is measured as the frame sits on the stands. */
public final class JobText {
  private final StringBuilder text = new StringBuilder();

  private JobText() {}

  /**
   * The job file, in YAML.
   *
   * @param vehicle the vehicle
   * @param number the job's number
   * @param linkage id of the linkage
   * @param spring id of the spring
   * @param mounting the linkage's mounting, inboard or outboard
   */
  public static String of(
      PlausibleVehicle vehicle, String number, String linkage, String spring, String mounting) {
    return of(vehicle, number, linkage, spring, Optional.of(mounting));
  }

  /**
   * The job file, in YAML, with every option of linkage and spring left to the vehicle.
   *
   * @param vehicle the vehicle
   * @param number the job's number
   * @param linkage id of the linkage
   * @param spring id of the spring
   */
  public static String of(PlausibleVehicle vehicle, String number, String linkage, String spring) {
    return of(vehicle, number, linkage, spring, Optional.empty());
  }

  private static String of(
      PlausibleVehicle vehicle,
      String number,
      String linkage,
      String spring,
      Optional<String> mounting) {
    JobText job = new JobText();
    job.header(vehicle, number);
    job.line("measured:");
    job.frame(vehicle);
    job.axle(vehicle);
    job.driveline(vehicle);
    job.weights(vehicle);
    job.obstructions(vehicle);
    job.chosen(vehicle, linkage, spring, mounting);
    return job.text.toString();
  }

  private void header(PlausibleVehicle vehicle, String number) {
    line("# A vehicle drawn at random. Vehicle, customer and all figures are invented.");
    line("format: trammel-job/1");
    line("job:");
    line("  number: " + number);
    line("  date: 2026-11-25");
    line("  customer: Example Customer (invented)");
    line("  vehicle: " + vehicle.kind().words() + " (invented)");
    line("  units: us");
  }

  private void frame(PlausibleVehicle vehicle) {
    RailPair rails = vehicle.rails();
    Stands stands = vehicle.stands();
    double forwardIn = rails.frontMountsForwardIn();
    double upIn = vehicle.undersideAtFrontAtRideIn();
    line(
        "  wheelbase: {left: "
            + in(vehicle.wheelbaseLeftIn())
            + ", right: "
            + in(vehicle.wheelbaseRightIn())
            + "}");
    line(
        "  rake: {on_stands: "
            + level(stands.rakeOnStandsDeg())
            + ", at_ride: "
            + level(stands.rakeAtRideDeg())
            + "}");
    line("  rails:");
    line("    shape: " + (rails.channel() ? "channel" : "box"));
    line("    outside_at_axle: " + in(rails.outsideAtAxleIn()));
    line("    between_at_axle: " + in(rails.betweenAtAxleIn()));
    line("    outside_at_front_mounts: " + in(rails.outsideAtFrontIn()));
    line("    between_at_front_mounts: " + in(rails.betweenAtFrontIn()));
    line("    depth: " + in(rails.depthIn()));
    line("    flange: " + in(rails.flangeIn()));
    line("    wall: " + in(rails.wallIn()));
    line("    underside_at_axle: " + in(stands.undersideOnStandsIn()));
    line("    underside_at_front_mounts: " + tape(stands.upIn(forwardIn, upIn)));
    line("    front_mounts_forward: " + tape(stands.forwardIn(forwardIn, upIn)));
  }

  private void axle(PlausibleVehicle vehicle) {
    RearAxle axle = vehicle.axle();
    TyreAndWheel tyre = vehicle.tyre();
    line("  axle:");
    line("    tube_diameter: " + in(axle.tubeDiameterIn()));
    line("    tube_wall: " + in(axle.tubeWallIn()));
    line("    flange_to_flange: " + in(axle.flangeToFlangeIn()));
    line("    inner_limit: " + in(axle.innerLimitIn()));
    line("    outer_limit: " + in(axle.outerLimitIn()));
    if (axle.housingRadiusIn().isPresent()) {
      line("    housing_radius: " + in(axle.housingRadiusIn().getAsDouble()));
    }
    line("    pinion: " + point(axle.pinionForwardIn(), axle.pinionLeftIn(), axle.pinionUpIn()));
    line("    pinion_angle: " + level(axle.pinionAngleDeg()));
    line("  tyre:");
    line("    size: " + tyre.code());
    line("    rim_width: " + in(tyre.rimWidthIn()));
    line("    wheel_offset: " + in(tyre.wheelOffsetIn()));
    line("    loaded_radius: " + in(tyre.loadedRadiusIn()));
  }

  private void driveline(PlausibleVehicle vehicle) {
    DriveTrain drive = vehicle.driveline();
    Stands stands = vehicle.stands();
    line("  transmission:");
    line(
        "    joint: "
            + point(
                stands.forwardIn(drive.jointForwardIn(), drive.jointUpIn()),
                drive.jointLeftIn(),
                stands.upIn(drive.jointForwardIn(), drive.jointUpIn())));
    line("    angle: " + level(stands.readDeg(drive.angleDeg())));
    if (drive.shaftDiameterIn() > 0) {
      line("  driveshaft:");
      line("    tube_diameter: " + in(drive.shaftDiameterIn()));
      line("    tube_wall: " + in(drive.shaftWallIn()));
      line("    slip_engagement: " + in(drive.slipEngagementIn()));
      line("    slip_room: " + in(drive.slipRoomIn()));
    }
    if (drive.torqueLbFt() > 0) {
      line("  drive:");
      line("    engine_torque: " + plain(drive.torqueLbFt()) + " lb-ft");
      line("    first_gear: " + plain(drive.firstGear()));
      line("    final_drive: " + plain(drive.finalDrive()));
    }
    if (drive.tyreGrip() > 0) {
      line("  tyre_grip: " + plain(drive.tyreGrip()));
    }
  }

  private void weights(PlausibleVehicle vehicle) {
    CornerWeights weights = vehicle.weights();
    line("  weights:");
    line("    front_left: " + plain(weights.frontLeftLb()) + " lb");
    line("    front_right: " + plain(weights.frontRightLb()) + " lb");
    line("    rear_left: " + plain(weights.rearLeftLb()) + " lb");
    line("    rear_right: " + plain(weights.rearRightLb()) + " lb");
    line("    unsprung_rear: " + plain(weights.unsprungRearLb()) + " lb");
    line("    centre_of_gravity_height: " + in(weights.centreOfGravityIn()));
    line("    centre_of_gravity_from: estimated");
  }

  private void obstructions(PlausibleVehicle vehicle) {
    if (!vehicle.obstructions().isEmpty()) {
      line("  obstacles:");
    }
    for (Obstruction one : vehicle.obstructions()) {
      line("    - name: " + one.name());
      line("      kind: " + one.kind());
      if (one.isPipe()) {
        pipe(one, vehicle.stands());
      } else {
        box(one, vehicle.stands());
      }
    }
  }

  private void pipe(Obstruction pipe, Stands stands) {
    line("      cylinder:");
    line("        from: " + end(pipe.frontIn(), pipe.leftIn(), pipe.highIn(), stands));
    line("        to: " + end(pipe.backIn(), pipe.rightIn(), pipe.lowIn(), stands));
    line("        diameter: " + in(pipe.diameterIn()));
  }

  private static String end(double forwardIn, double leftIn, double upIn, Stands stands) {
    return point(stands.forwardIn(forwardIn, upIn), leftIn, stands.upIn(forwardIn, upIn));
  }

  /** A box goes with the frame: its middle is turned, its edges stay along the frame's. */
  private void box(Obstruction box, Stands stands) {
    double middleIn = (box.backIn() + box.frontIn()) / 2;
    double heightIn = (box.lowIn() + box.highIn()) / 2;
    double aheadIn = stands.forwardIn(middleIn, heightIn) - middleIn;
    double higherIn = stands.upIn(middleIn, heightIn) - heightIn;
    line(
        "      box: {forward: "
            + span(box.backIn() + aheadIn, box.frontIn() + aheadIn)
            + ", left: "
            + span(box.rightIn(), box.leftIn())
            + ", up: "
            + span(box.lowIn() + higherIn, box.highIn() + higherIn)
            + "}");
  }

  private void chosen(
      PlausibleVehicle vehicle, String linkage, String spring, Optional<String> mounting) {
    line("chosen:");
    line("  linkage: " + linkage);
    line("  spring: " + spring);
    mounting.ifPresent(word -> line("  linkage_options: {mounting: " + word + "}"));
    line("  ride:");
    line("    rail_underside_at_axle: " + in(vehicle.stands().undersideAtRideIn()));
    line("    bump: " + in(vehicle.bumpIn()));
    line("    droop: " + in(vehicle.droopIn()));
    line("terms: {}");
  }

  private void line(String line) {
    text.append(line).append('\n');
  }

  private static String point(double forwardIn, double leftIn, double upIn) {
    return "{forward: " + tape(forwardIn) + ", left: " + tape(leftIn) + ", up: " + tape(upIn) + "}";
  }

  private static String span(double leastIn, double greatestIn) {
    return "[" + tape(leastIn) + ", " + tape(greatestIn) + "]";
  }

  private static String level(double degrees) {
    return plain(Range.stepped(degrees, 0.1)) + " deg from level";
  }

  private static String tape(double inches) {
    return in(Range.onTheTape(inches));
  }

  private static String in(double inches) {
    return plain(inches) + " in";
  }

  /** Without exponent and without the last digits of binary fractions. */
  private static String plain(double number) {
    BigDecimal rounded = BigDecimal.valueOf(number).setScale(4, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
