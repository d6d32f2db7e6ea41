package trammel.planning.start;

import java.util.Map;

/** Why each thing is asked: what of the job comes out wrong or not at all without it. */
final class Reasons {
  private static final Map<String, String> BY_PATH =
      Map.ofEntries(
          Map.entry("job.number", "quote, orders, floor sheets and the ledger go by it"),
          Map.entry("job.date", "the quote is good from it, and dates of delivery count from it"),
          Map.entry("job.customer", "it stands on the quote and the invoice"),
          Map.entry("job.vehicle", "it tells this job from another in the shop, on every sheet"),
          Map.entry("job.units", "a number typed without a unit is read in them"),
          Map.entry("job.note", "the floor is told what the figures do not say"),
          Map.entry("job.customer_note", "the customer is told what the figures do not say"),
          Map.entry("measured.wheelbase", "left against right tells whether the axle sits square"),
          Map.entry(
              "measured.rake.on_stands",
              "angles and heights read on the stands are turned to the road by it"),
          Map.entry(
              "measured.rake.at_ride", "the body's attitude on the road sets all angles there"),
          Map.entry(
              "measured.rails.shape",
              "a channel is boxed where a bracket or a notch comes; a box is not"),
          Map.entry(
              "measured.rails.outside_at_axle",
              "tyres and bars outside the rails must clear it in bump"),
          Map.entry(
              "measured.rails.between_at_axle", "springs, bars and the axle's ends fit between"),
          Map.entry(
              "measured.rails.outside_at_front_mounts",
              "outriggers of the bars start from it, and the rails' taper comes of it"),
          Map.entry(
              "measured.rails.between_at_front_mounts",
              "crossmember and inboard brackets are cut to it"),
          Map.entry("measured.rails.depth", "brackets and notch plates are cut to it"),
          Map.entry("measured.rails.flange", "strength of the rail and of its notch comes of it"),
          Map.entry("measured.rails.wall", "weld size and the rail's strength come of it"),
          Map.entry(
              "measured.rails.steel",
              "some frames lose strength by welding, and the check says so"),
          Map.entry("measured.rails.rust_depth", "only sound metal carries: it is taken off"),
          Map.entry("measured.rails.flange_hole", "a hole weakens the rail where it bends most"),
          Map.entry(
              "measured.rails.crossmember_ahead",
              "between crossmembers an open rail twists where something hangs on its side"),
          Map.entry("measured.rails.crossmember_behind", "the same behind the axle"),
          Map.entry(
              "measured.rails.underside_at_axle", "it says how high the frame sits on the stands"),
          Map.entry(
              "measured.rails.underside_at_front_mounts",
              "the bars' front brackets hang from there"),
          Map.entry("measured.rails.front_mounts_forward", "the bars can be about as long as this"),
          Map.entry("measured.axle.tube_diameter", "brackets are cut to sit on it"),
          Map.entry("measured.axle.tube_wall", "its bending strength and the weld size come of it"),
          Map.entry("measured.axle.flange_to_flange", "wheels and tyres stand where it ends"),
          Map.entry("measured.axle.inner_limit", "no bracket fits on the centre section"),
          Map.entry("measured.axle.outer_limit", "no bracket fits on the brakes"),
          Map.entry("measured.axle.housing_radius", "bars and crossmember must clear it in bump"),
          Map.entry("measured.axle.pinion", "the driveshaft ends there"),
          Map.entry("measured.axle.pinion_angle", "it sets the angle of the rear joint"),
          Map.entry("measured.axle.rating", "the load at the rear is held against it"),
          Map.entry("measured.tyre.size", "its diameter and width must clear body and bars"),
          Map.entry("measured.tyre.diameter", "where no size is known, it must clear the body"),
          Map.entry("measured.tyre.width", "where no size is known, it must clear bars and body"),
          Map.entry("measured.tyre.rim_width", "the tyre stands as wide as its rim makes it"),
          Map.entry("measured.tyre.wheel_offset", "it says how far in or out the tyre stands"),
          Map.entry("measured.tyre.loaded_radius", "it says how high the axle sits at ride"),
          Map.entry("measured.tyre.load_index", "the load of the wheel is held against it"),
          Map.entry("measured.tyre.passenger_on_truck", "such a tyre carries a tenth less there"),
          Map.entry("measured.transmission.joint", "the driveshaft begins there"),
          Map.entry("measured.transmission.angle", "it sets the angle of the front joint"),
          Map.entry(
              "measured.driveshaft.tube_diameter", "its critical speed and its room come of it"),
          Map.entry("measured.driveshaft.tube_wall", "its critical speed comes of it"),
          Map.entry(
              "measured.driveshaft.slip_engagement", "the spline must not come apart in droop"),
          Map.entry("measured.driveshaft.slip_room", "the yoke must not bottom in bump"),
          Map.entry(
              "measured.driveshaft.centre_joint", "of a shaft of two pieces only the rear swings"),
          Map.entry(
              "measured.weights.front_left",
              "braking and the vehicle's balance come of the front weights"),
          Map.entry(
              "measured.weights.front_right",
              "braking and the vehicle's balance come of the front weights"),
          Map.entry("measured.weights.rear_left", "it chooses the left spring"),
          Map.entry("measured.weights.rear_right", "it chooses the right spring"),
          Map.entry("measured.weights.unsprung_rear", "the springs do not carry it"),
          Map.entry(
              "measured.weights.centre_of_gravity_height",
              "how much weight goes rearward under power comes of it"),
          Map.entry("measured.weights.centre_of_gravity_from", "an estimate is given more doubt"),
          Map.entry(
              "measured.weights.front_roll_stiffness",
              "the rear's share of the roll is held against it"),
          Map.entry(
              "measured.weights.front_wheel_rate", "the rear must ride quicker than the front"),
          Map.entry("measured.drive.engine_torque", "it may be less than the tyres could hold"),
          Map.entry("measured.drive.first_gear", "the axle's torque comes of it"),
          Map.entry("measured.drive.stall_ratio", "a torque converter adds to the torque"),
          Map.entry("measured.drive.low_range", "low range multiplies the axle's torque"),
          Map.entry("measured.drive.final_drive", "the axle's torque comes of it"),
          Map.entry("measured.tyre_grip", "no more can load the bars than the tyres hold"),
          Map.entry("measured.brakes.front_share", "the rest of the braking loads the bars"),
          Map.entry("measured.hitch.behind", "a tongue behind the axle loads it by a lever"),
          Map.entry("measured.hitch.tongue", "springs and axle carry it too"),
          Map.entry("measured.hitch.trailer", "pulling and braking it loads the bars"),
          Map.entry(ObstacleQuestions.LIST + ".name", "the checks name by it what would be hit"),
          Map.entry(
              ObstacleQuestions.LIST + ".kind",
              "each kind has its own clearance, and some can be moved"),
          Map.entry(
              ObstacleQuestions.LIST + ".shape", "its space is measured one way or the other"),
          Map.entry(ObstacleQuestions.LIST + ".box", "axle, wheels and bars must stay out of it"),
          Map.entry(
              ObstacleQuestions.LIST + ".cylinder", "axle, wheels and bars must stay out of it"),
          Map.entry("chosen.linkage", "it decides what holds the axle, and most of the work"),
          Map.entry(Questions.MOUNTING, "brackets, outriggers and hours come of it"),
          Map.entry("chosen.spring", "it decides what carries the body"),
          Map.entry(
              "chosen.ride.rail_underside_at_axle", "it decides where the body sits on the road"),
          Map.entry("chosen.ride.bump", "notch, shocks and room over the tyres come of it"),
          Map.entry("chosen.ride.droop", "shocks and the driveshaft's joints come of it"),
          Map.entry("chosen.pinion_angle", "left out, it is set to what the joints want"),
          Map.entry("chosen.transmission_angle", "both joints' angles come of it"),
          Map.entry("chosen.shaft_longer", "where a new shaft is made anyway, its room changes"),
          Map.entry("chosen.shaft_tube", "a stouter tube turns faster before it whirls"),
          Map.entry("chosen.wheelbase", "the axle can be moved while everything is off"),
          Map.entry("chosen.moved_away", "what is moved first is in nobody's way, but takes hours"),
          Map.entry("chosen.notch", "it decides how the rail is cut over the axle"),
          Map.entry(
              "chosen.boxing", "an open rail gives way to what twists it, a closed one does not"),
          Map.entry("chosen.top_speed", "the driveshaft must not whirl up to it"));

  private Reasons() {}

  /**
   * Why what goes to a path is asked; of a group that has one reason, that.
   *
   * @throws IllegalStateException if nobody has said why
   */
  static String of(String path) {
    for (String at = path; !at.isEmpty(); at = at.substring(0, Math.max(0, at.lastIndexOf('.')))) {
      String reason = BY_PATH.get(at);
      if (reason != null) {
        return reason;
      }
    }
    throw new IllegalStateException("Nobody has said why " + path + " is asked.");
  }
}
