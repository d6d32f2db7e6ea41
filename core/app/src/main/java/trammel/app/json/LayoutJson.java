package trammel.app.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.RideState;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.AxleGuide;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Duty;
import trammel.engine.layout.Layout;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.Slider;
import trammel.engine.layout.SpringAtRide;
import trammel.engine.layout.SpringUnit;
import trammel.engine.mechanism.FurtherBody;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.ShaftReading;

/** A layout for machines: points at ride, figures at ride and the travel. */
public final class LayoutJson {
  private LayoutJson() {}

  /** Points in mm in vehicle axes, angles in degrees. */
  public static Map<String, Object> of(LayoutAnalysis analysis) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("axes", "x forward, y left, z up, origin on the ground under the axle's middle, mm");
    json.put("parts", parts(analysis.layout()));
    if (!analysis.layout().guide().isPlain()) {
      json.put("further_bodies", bodies(analysis.layout().guide()));
      json.put("sliders", sliders(analysis.layout().guide()));
    }
    json.put("notch_depth_mm", analysis.layout().chassis().rails().notchDepthMm());
    json.put("notch_rise_mm", analysis.layout().chassis().rails().notchRiseMm());
    json.put("ride", ride(analysis.ride()));
    json.put("travel", travel(analysis));
    return json;
  }

  private static List<Object> parts(Layout layout) {
    List<Object> parts = new ArrayList<>();
    for (Bar bar : layout.bars()) {
      Map<String, Object> part = part(bar.name(), bar.frame(), bar.axle());
      part.put("duties", bar.duties().stream().sorted().map(LayoutJson::word).toList());
      part.put("bodies", List.of(bar.frameEnd().body(), bar.axleEnd().body()));
      parts.add(part);
    }
    for (SpringUnit spring : layout.springs()) {
      parts.add(part(spring.name(), spring.frame(), spring.axle()));
    }
    for (ShockUnit shock : layout.shocks()) {
      parts.add(part(shock.name(), shock.frame(), shock.axle()));
    }
    return parts;
  }

  private static String word(Duty duty) {
    return duty.name().toLowerCase(Locale.ROOT);
  }

  private static List<Object> bodies(AxleGuide guide) {
    List<Object> bodies = new ArrayList<>();
    for (FurtherBody body : guide.bodies()) {
      Map<String, Object> json = new LinkedHashMap<>();
      json.put("name", body.name());
      json.put("on", body.pivot().on());
      json.put("pivot", point(body.pivot().point()));
      bodies.add(json);
    }
    return bodies;
  }

  private static List<Object> sliders(AxleGuide guide) {
    List<Object> sliders = new ArrayList<>();
    for (Slider slider : guide.sliders()) {
      Map<String, Object> json = new LinkedHashMap<>();
      json.put("name", slider.name());
      json.put("body", slider.body());
      json.put("on", slider.on());
      json.put("point", point(slider.point()));
      Vector3 way = slider.direction();
      json.put("direction", List.of(way.x(), way.y(), way.z()));
      sliders.add(json);
    }
    return sliders;
  }

  private static Map<String, Object> part(String name, Point3 frame, Point3 axle) {
    Map<String, Object> part = new LinkedHashMap<>();
    part.put("name", name);
    part.put("frame", point(frame));
    part.put("axle", point(axle));
    part.put("length_mm", frame.distanceMm(axle));
    return part;
  }

  private static List<Double> point(Point3 point) {
    return List.of(point.xMm(), point.yMm(), point.zMm());
  }

  private static Map<String, Object> ride(RideState ride) {
    Map<String, Object> json = new LinkedHashMap<>();
    ride.figures()
        .instantCentreFromMotion()
        .ifPresent(centre -> json.put("instant_centre", point(centre)));
    json.put("anti_squat_percent", 100 * ride.antiSquatShare());
    json.put("anti_lift_braking_percent", 100 * ride.antiLiftShare());
    json.put("roll_centre_height_mm", ride.figures().rollCentreHeightMm());
    json.put("roll_understeer_deg_per_deg", ride.rollUndersteer());
    json.put("pinion_angle_deg", Math.toDegrees(ride.shaft().pinionElevationRad()));
    json.put("front_joint_deg", Math.toDegrees(ride.shaft().frontJointRad()));
    json.put("rear_joint_deg", Math.toDegrees(ride.shaft().rearJointRad()));
    json.put("springs", springs(ride));
    json.put("wheel_rate_N_per_mm", ride.rates().heaveNPerMm());
    json.put("roll_stiffness_Nm_per_deg", ride.rates().rollNmPerDegree());
    json.put("anti_roll_bar_Nmm_per_rad", ride.roll().antiRollBarNmmPerRad());
    json.put("roll_axis_under_sprung_mass_mm", ride.roll().armMm());
    json.put("front_roll_stiffness_Nmm_per_rad", ride.roll().frontNmmPerRad());
    json.put("front_roll_stiffness_measured", ride.roll().frontMeasured());
    ride.roll().rollRadPerG().ifPresent(roll -> json.put("roll_deg_per_g", Math.toDegrees(roll)));
    json.put("rear_load_transfer_percent", 100 * ride.roll().rearTransferShare());
    json.put("ride_frequency_Hz", ride.rideFrequencyHz());
    ride.frontFrequencyHz().ifPresent(hz -> json.put("front_ride_frequency_Hz", hz));
    return json;
  }

  private static List<Object> springs(RideState ride) {
    List<Object> springs = new ArrayList<>();
    for (SpringAtRide spring : ride.loaded()) {
      Map<String, Object> json = new LinkedHashMap<>();
      json.put("name", spring.unit().name());
      json.put("load_N", spring.loadN());
      spring.charge().ifPresent(air -> json.put("pressure_MPa", air.rideGaugeMPa()));
      springs.add(json);
    }
    return springs;
  }

  private static List<Object> travel(LayoutAnalysis analysis) {
    List<Object> rows = new ArrayList<>();
    for (AxlePose pose : analysis.heaveSweep()) {
      ShaftReading shaft = RideState.shaft(analysis.layout().chassis().driveline()).at(pose);
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("heave_mm", pose.heaveMm());
      row.put("lateral_shift_mm", pose.lateralMm());
      row.put("forward_mm", pose.forwardMm());
      row.put("pinion_angle_deg", Math.toDegrees(shaft.pinionElevationRad()));
      row.put("front_joint_deg", Math.toDegrees(shaft.frontJointRad()));
      row.put("rear_joint_deg", Math.toDegrees(shaft.rearJointRad()));
      row.put("shaft_length_mm", shaft.lengthMm());
      rows.add(row);
    }
    return rows;
  }
}
