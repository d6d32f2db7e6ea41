package trammel.app.travel;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trammel.engine.motion.LinkReading;
import trammel.engine.motion.SpringReading;
import trammel.reading.quantity.DecimalText;
import trammel.reading.quantity.QuantityKind;
import trammel.reading.quantity.Unit;
import trammel.reading.quantity.UnitSystem;

/**
 * The curves as comma-separated values: one line a station, the unit in every heading, so that a
 * spreadsheet can go on with them.
 */
public final class TravelCsv {
  private static final int PLACES = 6;

  private final TravelStudy study;
  private final UnitSystem units;
  private final String stops;

  /**
   * @param study the curves
   * @param units the units of the reader
   * @param stops what the checks say stop to, in one line; empty for nothing
   */
  public TravelCsv(TravelStudy study, UnitSystem units, String stops) {
    this.study = study;
    this.units = units;
    this.stops = stops;
  }

  /** The whole file, headings first. */
  public String text() {
    StringBuilder csv = new StringBuilder();
    List<String> headings = headings();
    append(csv, headings);
    for (Station station : study.heave()) {
      append(csv, values("heave", station));
    }
    for (Station station : study.roll()) {
      append(csv, values("roll", station));
    }
    return csv.toString();
  }

  private List<String> headings() {
    String length = "_" + name(QuantityKind.LENGTH);
    String rate = "_" + name(QuantityKind.RATE);
    String force = "_" + name(QuantityKind.FORCE);
    List<String> headings = new ArrayList<>();
    headings.addAll(
        List.of(
            "sweep",
            "heave" + length,
            "roll_deg",
            "forward" + length,
            "lateral_shift" + length,
            "roll_steer_deg",
            "nose_up_deg",
            "pinion_deg",
            "front_joint_deg",
            "rear_joint_deg",
            "residual_deg",
            "shaft" + length,
            "wheel_rate" + rate));
    Station any = study.heave().get(0);
    for (SpringReading spring : any.rates().springs()) {
      headings.add(key(spring.name()) + length);
      headings.add(key(spring.name()) + "_motion_ratio");
    }
    String pressure = "_" + name(QuantityKind.PRESSURE);
    for (SpringState spring : study.heave().get(0).springs()) {
      String key = key(spring.name());
      headings.add(key + "_load" + force);
      headings.add(key + "_rate" + rate);
      if (spring.air().isPresent()) {
        headings.add(key + "_pressure" + pressure);
        headings.add(key + "_pressure_at_rest" + pressure);
        headings.add(key + "_load_at_rest" + force);
      }
    }
    for (int i = 0; i < study.layout().shocks().size(); i++) {
      headings.add(key(study.layout().shocks().get(i).name()) + length);
    }
    for (LinkReading bar : any.bars()) {
      headings.add(key(bar.name()) + "_stretch" + length);
      headings.add(key(bar.name()) + "_force" + force);
    }
    headings.add("stops");
    return headings;
  }

  private List<String> values(String sweep, Station station) {
    List<String> values = new ArrayList<>();
    values.add(sweep);
    values.add(length(station.pose().heaveMm()));
    values.add(degrees(station.pose().rollRad()));
    values.add(length(station.pose().forwardMm()));
    values.add(length(station.pose().lateralMm()));
    values.add(degrees(station.pose().yawRad()));
    values.add(degrees(station.pose().pitchNoseUpRad()));
    values.add(degrees(station.shaft().pinionElevationRad()));
    values.add(degrees(station.shaft().frontJointRad()));
    values.add(degrees(station.shaft().rearJointRad()));
    values.add(degrees(station.shaft().residualRad()));
    values.add(length(station.shaft().lengthMm()));
    values.add(shown(QuantityKind.RATE, station.rates().heaveNPerMm()));
    for (SpringReading spring : station.rates().springs()) {
      values.add(length(spring.lengthMm()));
      values.add(number(spring.motionRatioHeave()));
    }
    for (SpringState spring : station.springs()) {
      values.add(shown(QuantityKind.FORCE, spring.loadN()));
      values.add(shown(QuantityKind.RATE, spring.rateNPerMm()));
      if (spring.air().isPresent()) {
        SpringState.Air air = spring.air().get();
        values.add(shown(QuantityKind.PRESSURE, air.gaugeMPa()));
        values.add(shown(QuantityKind.PRESSURE, air.restGaugeMPa()));
        values.add(shown(QuantityKind.FORCE, air.restLoadN()));
      }
    }
    for (double lengthMm : station.shockLengthsMm()) {
      values.add(length(lengthMm));
    }
    for (LinkReading bar : station.bars()) {
      values.add(length(bar.stretchMm()));
      values.add(shown(QuantityKind.FORCE, bar.bindForceN()));
    }
    values.add(quoted(stops));
    return values;
  }

  /** Words with commas in them; empty for none. */
  private static String quoted(String words) {
    return words.isEmpty() ? "" : '"' + words.replace("\"", "\"\"") + '"';
  }

  private static void append(StringBuilder csv, List<String> cells) {
    for (int i = 0; i < cells.size(); i++) {
      csv.append(i == 0 ? "" : ",").append(cells.get(i));
    }
    csv.append('\n');
  }

  /** A name as a heading: letters, digits and underscores alone need no quotes anywhere. */
  private static String key(String name) {
    StringBuilder key = new StringBuilder();
    for (char c : name.toLowerCase(Locale.ROOT).toCharArray()) {
      boolean plain = c >= 'a' && c <= 'z' || c >= '0' && c <= '9';
      key.append(plain ? c : '_');
    }
    return key.toString();
  }

  private String name(QuantityKind kind) {
    return kind.bareUnit(units).symbol().replace("/", "_per_");
  }

  private String length(double lengthMm) {
    return shown(QuantityKind.LENGTH, lengthMm);
  }

  private String shown(QuantityKind kind, double inside) {
    Unit unit = kind.bareUnit(units);
    return number(unit.fromInside(inside));
  }

  private static String degrees(double angleRad) {
    return number(Math.toDegrees(angleRad));
  }

  private static String number(double value) {
    return DecimalText.trimmed(value, PLACES);
  }
}
