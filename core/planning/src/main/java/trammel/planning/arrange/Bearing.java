package trammel.planning.arrange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Which fields bear on which check, by the first words of its id: what is turned first when a check
 * is not good. Common practice, no source; everything else is turned after these.
 */
final class Bearing {
  private static final Map<String, List<String>> FIELDS = new LinkedHashMap<>();

  static {
    FIELDS.put("lateral-bar-angle", List.of("lateral_rise"));
    FIELDS.put("lateral-shift", List.of("rail_gap", "lateral_side", "bump", "droop"));
    FIELDS.put("lower-bar-angle", List.of("lower_angle"));
    FIELDS.put("upper-bar-angle", List.of("upper_angle"));
    FIELDS.put("upper-bar-plan-angle", List.of("upper_length", "upper_spread"));
    FIELDS.put(
        "anti-squat",
        List.of(
            "upper_angle", "lower_angle", "arm_length", "arm_rise", "upper_rise", "lower_drop"));
    FIELDS.put("roll-steer", List.of("lower_angle", "upper_angle", "lateral_rise"));
    FIELDS.put(
        "roll", List.of("across", "placement", "ride_frequency", "lean", "lateral_rise", "behind"));
    FIELDS.put(
        "clearance",
        List.of(
            "lateral_behind",
            "placement",
            "across",
            "lower_height",
            "lean",
            "shock_lean",
            "behind",
            "lateral_rise",
            "upper_rise",
            "upper_length",
            "lower_length",
            "rail_gap",
            "bump"));
    FIELDS.put("droop", List.of("droop", "shock", "lower_height", "air_spring", "placement"));
    FIELDS.put("bump", List.of("ride_frequency", "rate", "bump"));
    FIELDS.put("rail", List.of("bump", "notch", "rail_underside_at_axle"));
    FIELDS.put("axle-to-rail", List.of("bump", "rail_underside_at_axle"));
    FIELDS.put("bracket", List.of("bracket_plate", "upper_rise", "lower_drop", "rail_gap"));
    FIELDS.put("joint-rating", List.of("upper_rise", "lower_drop", "upper_length", "lower_length"));
    FIELDS.put("joint-misalignment", List.of("upper_length", "lower_length", "droop", "bump"));
    FIELDS.put("bar-strength", List.of("bar_tube", "lateral_tube", "link_tube", "upper_rise"));
    FIELDS.put("bar-bind", List.of("upper_length", "lower_length", "upper_rise", "lower_drop"));
    FIELDS.put("arm", List.of("arm_length", "lower_drop"));
    FIELDS.put("shock", List.of("shock", "lower_height", "lean", "shock_lean", "droop", "bump"));
    FIELDS.put("spring-lean", List.of("lean", "shock_lean"));
    FIELDS.put("spring", List.of("placement", "lower_height", "behind", "lean", "shock_lean"));
    FIELDS.put("air", List.of("ride_height", "air_spring", "placement", "across"));
    FIELDS.put(
        "axle-tube", List.of("placement", "across", "lean", "shock_lean", "droop", "lower_height"));
    FIELDS.put("ride-frequency", List.of("ride_frequency", "ride_height", "air_spring"));
    FIELDS.put(
        "mount", List.of("crossmember", "bracket_plate", "lower_height", "lean", "shock_lean"));
    FIELDS.put(
        "parts-apart",
        List.of(
            "placement",
            "across",
            "lateral_behind",
            "behind",
            "lower_height",
            "lean",
            "shock_lean",
            "upper_rise",
            "rail_gap"));
    FIELDS.put("can-be-made", List.of("bracket_plate", "upper_rise", "upper_length", "rail_gap"));
  }

  private Bearing() {}

  /** The keys of the fields that bear on a check, the most convenient first. */
  static List<String> on(String check) {
    List<String> keys = new ArrayList<>();
    FIELDS.forEach(
        (id, fields) -> {
          if (check.startsWith(id)) {
            fields.stream().filter(key -> !keys.contains(key)).forEach(keys::add);
          }
        });
    return keys;
  }
}
