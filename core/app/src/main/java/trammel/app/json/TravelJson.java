package trammel.app.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.app.text.Stops;
import trammel.app.travel.SpringState;
import trammel.app.travel.Station;
import trammel.app.travel.TravelStudy;
import trammel.engine.motion.LinkReading;
import trammel.engine.motion.SpringReading;

/** The curves through heave and roll for machines. */
public final class TravelJson {
  private static final double ZERO = 1e-7;

  private TravelJson() {}

  /** Both sweeps, and what is out of reach. */
  public static Map<String, Object> of(String job, TravelStudy study, Stops stops) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("job", job);
    json.put(StopsJson.FIELD, StopsJson.of(stops));
    json.put("heave", stations(study, study.heave()));
    json.put("roll", stations(study, study.roll()));
    json.put("bind_in_roll", bind(study));
    json.put("out_of_reach", study.outOfReach());
    return json;
  }

  private static List<Object> stations(TravelStudy study, List<Station> stations) {
    List<Object> rows = new ArrayList<>(stations.size());
    for (Station station : stations) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("heave_mm", tidy(station.pose().heaveMm()));
      row.put("roll_deg", tidy(Math.toDegrees(station.pose().rollRad())));
      row.put("forward_mm", tidy(station.pose().forwardMm()));
      row.put("lateral_shift_mm", tidy(station.pose().lateralMm()));
      row.put("roll_steer_deg", tidy(Math.toDegrees(station.pose().yawRad())));
      row.put("pitch_nose_up_deg", tidy(Math.toDegrees(station.pose().pitchNoseUpRad())));
      row.put("pinion_angle_deg", tidy(Math.toDegrees(station.shaft().pinionElevationRad())));
      row.put("front_joint_deg", tidy(Math.toDegrees(station.shaft().frontJointRad())));
      row.put("rear_joint_deg", tidy(Math.toDegrees(station.shaft().rearJointRad())));
      row.put("residual_angle_deg", tidy(Math.toDegrees(station.shaft().residualRad())));
      row.put("shaft_length_mm", tidy(station.shaft().lengthMm()));
      row.put("wheel_rate_N_per_mm", tidy(station.rates().heaveNPerMm()));
      row.put("springs", springs(station));
      row.put("shocks", shocks(study, station));
      row.put("bars", bars(station));
      rows.add(row);
    }
    return rows;
  }

  private static Map<String, Object> springs(Station station) {
    Map<String, Object> springs = new LinkedHashMap<>();
    for (int i = 0; i < station.springs().size(); i++) {
      SpringReading spring = station.rates().springs().get(i);
      SpringState state = station.springs().get(i);
      Map<String, Object> entry = new LinkedHashMap<>();
      entry.put("length_mm", tidy(spring.lengthMm()));
      entry.put("motion_ratio_heave", tidy(spring.motionRatioHeave()));
      entry.put("motion_ratio_roll", tidy(spring.motionRatioRoll()));
      entry.put("load_N", tidy(state.loadN()));
      entry.put("rate_N_per_mm", tidy(state.rateNPerMm()));
      if (state.air().isPresent()) {
        SpringState.Air air = state.air().get();
        entry.put("pressure_MPa", tidy(air.gaugeMPa()));
        entry.put("pressure_at_rest_MPa", tidy(air.restGaugeMPa()));
        entry.put("load_at_rest_N", tidy(air.restLoadN()));
        entry.put("in_table", state.inTable());
      }
      springs.put(spring.name(), entry);
    }
    return springs;
  }

  private static Map<String, Object> shocks(TravelStudy study, Station station) {
    Map<String, Object> shocks = new LinkedHashMap<>();
    for (int i = 0; i < station.shockLengthsMm().size(); i++) {
      Map<String, Object> entry = new LinkedHashMap<>();
      entry.put("length_mm", tidy(station.shockLengthsMm().get(i)));
      shocks.put(study.layout().shocks().get(i).name(), entry);
    }
    return shocks;
  }

  private static Map<String, Object> bars(Station station) {
    Map<String, Object> bars = new LinkedHashMap<>();
    for (LinkReading bar : station.bars()) {
      bars.put(bar.name(), stretch(bar));
    }
    return bars;
  }

  private static Map<String, Object> bind(TravelStudy study) {
    Map<String, Object> bars = new LinkedHashMap<>();
    int count = study.roll().isEmpty() ? 0 : study.roll().get(0).bars().size();
    for (int i = 0; i < count; i++) {
      LinkReading worst = study.worstBindInRoll(i);
      bars.put(worst.name(), stretch(worst));
    }
    return bars;
  }

  /** Anything smaller is the rounding of a zero. */
  private static double tidy(double value) {
    return Math.abs(value) < ZERO ? 0 : value;
  }

  private static Map<String, Object> stretch(LinkReading bar) {
    Map<String, Object> entry = new LinkedHashMap<>();
    entry.put("stretch_mm", tidy(bar.stretchMm()));
    entry.put("force_N", tidy(bar.bindForceN()));
    return entry;
  }
}
