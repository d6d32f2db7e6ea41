package trammel.app.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.app.text.Cautions;
import trammel.app.text.Stops;
import trammel.planning.draft.Draft;
import trammel.planning.fitup.FitUpSheet;
import trammel.planning.fitup.TackReport;
import trammel.planning.fitup.Target;
import trammel.reading.quantity.QuantityKind;

/** The fit-up sheet and the judgement of what was tacked, for machines. */
public final class FitUpJson {
  private FitUpJson() {}

  /** The sheet. */
  public static Map<String, Object> of(Draft draft, FitUpSheet sheet, Stops stops) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("job", draft.job().header().number());
    json.put(StopsJson.FIELD, StopsJson.of(stops));
    List<Object> targets = new ArrayList<>();
    for (Target target : sheet.targets()) {
      boolean angle = target.kind() == QuantityKind.ANGLE;
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("target", target.id());
      row.put("bracket", target.group());
      row.put("what", target.what());
      row.put("set_to", angle ? Math.toDegrees(target.plan()) : target.plan());
      row.put("within", angle ? Math.toDegrees(target.tolerance()) : target.tolerance());
      row.put("unit", angle ? "deg" : "mm");
      targets.add(row);
    }
    json.put("targets", targets);
    List<Object> angles = new ArrayList<>();
    for (FitUpSheet.FinderAngle angle : sheet.angles()) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("what", angle.what());
      row.put("on_stands_deg", Math.toDegrees(angle.onStandsRad()));
      row.put("from_rail_deg", Math.toDegrees(angle.fromFrameRad()));
      row.put("at_ride_deg", Math.toDegrees(angle.atRideRad()));
      angles.add(row);
    }
    json.put("angles", angles);
    List<Object> struts = new ArrayList<>();
    for (FitUpSheet.Strut strut : sheet.struts()) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("in_place_of", strut.name());
      row.put("length_mm", strut.lengthMm());
      struts.add(row);
    }
    json.put("struts", struts);
    return json;
  }

  /** The judgement. */
  public static Map<String, Object> of(Draft draft, TackReport report) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("job", draft.job().header().number());
    json.put("answer", report.verdict().words());
    json.put("reasons", report.reasons());
    List<Object> again = new ArrayList<>();
    for (TackReport.Again reading : report.again()) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("target", reading.id());
      row.put("why", reading.why());
      again.add(row);
    }
    json.put("measure_again", again);
    List<Object> moves = new ArrayList<>();
    for (TackReport.Move move : report.moves()) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("bracket", move.mount().key());
      row.put("off_forward_mm", move.offMm()[0]);
      row.put("off_left_mm", move.offMm()[1]);
      row.put("off_up_mm", move.offMm()[2]);
      moves.add(row);
    }
    json.put("re_set", moves);
    json.put("still_worse_than_planned", report.corrected());
    Map<String, Object> axle = new LinkedHashMap<>();
    axle.put("wheelbase_left_less_right_mm", report.axle().squareMm());
    axle.put("forward_mm", report.axle().forwardMm());
    axle.put("left_mm", report.axle().leftMm());
    axle.put("turn_deg", Math.toDegrees(report.axle().turnRad()));
    json.put("axle", axle);
    json.put("stops", report.stops());
    json.put("caution", Cautions.SCREENING);
    return json;
  }
}
