package trammel.app.travel;

import java.util.ArrayList;
import java.util.List;
import trammel.app.drawings.Chart;
import trammel.app.drawings.ChartSheet;
import trammel.app.drawings.Curve;
import trammel.app.drawings.PaperSize;
import trammel.app.drawings.PartWords;
import trammel.app.drawings.Pen;
import trammel.engine.motion.SpringReading;
import trammel.reading.quantity.QuantityKind;
import trammel.reading.quantity.Unit;
import trammel.reading.quantity.UnitSystem;

/** The curves on a page of paper. */
public final class TravelPlot {
  private static final List<Pen> PENS = List.of(Pen.ACCENT, Pen.DASHED, Pen.DOTTED);

  /** Spans below these are drawn flat (mm, degrees, N/mm, N). */
  private static final double LEAST_SPAN_MM = 2;

  private static final double LEAST_SPAN_DEG = 0.5;
  private static final double LEAST_SPAN_N_PER_MM = 1;
  private static final double LEAST_SPAN_N = 100;

  private final TravelStudy study;
  private final PartWords words;
  private final PaperSize paper;
  private final Unit length;
  private final Unit rate;
  private final Unit force;
  private final String across;

  /**
   * @param study the curves
   * @param units the units of the reader
   */
  public TravelPlot(TravelStudy study, UnitSystem units) {
    this.study = study;
    words = new PartWords(study.layout());
    paper = PaperSize.of(units);
    length = QuantityKind.LENGTH.bareUnit(units);
    rate = QuantityKind.RATE.bareUnit(units);
    force = QuantityKind.FORCE.bareUnit(units);
    across = "heave, bump positive (" + length.symbol() + ")";
  }

  /** What is drawn against what: reads one value off a station. */
  private interface Value {
    double of(Station station);
  }

  /**
   * The page as an SVG file.
   *
   * @param title heading of the page
   * @param subtitle line below it
   * @param stops what the checks say stop to, in one line before the subtitle; empty for nothing
   */
  public String svg(String title, String subtitle, String stops) {
    return sheet(title, subtitle, stops).svg();
  }

  /**
   * The page as a drawing.
   *
   * @param title heading of the page
   * @param subtitle line below it
   * @param stops what the checks say stop to, in one line before the subtitle; empty for nothing
   */
  public ChartSheet sheet(String title, String subtitle, String stops) {
    List<Chart> charts = new ArrayList<>();
    charts.add(pinion());
    charts.add(joints());
    charts.add(shift());
    charts.add(struts());
    charts.add(wheelRate());
    charts.add(bind());
    charts.add(rollSteer());
    charts.add(springsInRoll());
    return new ChartSheet(
        title,
        stops.isEmpty() ? subtitle : stops + ". " + subtitle,
        charts,
        "Both wheels together in heave; about ride height in roll, left wheel up positive."
            + " Screening figures for comparison, not certification.",
        paper);
  }

  private Chart pinion() {
    Value pinion = station -> Math.toDegrees(station.shaft().pinionElevationRad());
    return chart(
        "Pinion angle, nose up positive",
        "deg",
        LEAST_SPAN_DEG,
        List.of(heave("pinion", pinion, 0)));
  }

  private Chart joints() {
    Value front = station -> Math.toDegrees(station.shaft().frontJointRad());
    Value rear = station -> Math.toDegrees(station.shaft().rearJointRad());
    return chart(
        "Working angles of the universal joints",
        "deg",
        LEAST_SPAN_DEG,
        List.of(heave("front joint", front, 0), heave("rear joint", rear, 1)));
  }

  private Chart shift() {
    Value shift = station -> length.fromInside(station.pose().lateralMm());
    Value forward = station -> length.fromInside(station.pose().forwardMm());
    return chart(
        "Shift of the axle, left and forward positive",
        length.symbol(),
        length.fromInside(LEAST_SPAN_MM),
        List.of(heave("sideways", shift, 0), heave("forward", forward, 1)));
  }

  /** Shocks where there are any, springs where there are none. */
  private Chart struts() {
    List<Curve> curves = new ArrayList<>();
    int shocks = study.layout().shocks().size();
    for (int i = 0; i < shocks && i < PENS.size(); i++) {
      int index = i;
      Value lengthOf = station -> length.fromInside(station.shockLengthsMm().get(index));
      curves.add(heave(words.in(study.layout().shocks().get(i).name()), lengthOf, i));
    }
    if (shocks == 0) {
      for (int i = 0; i < study.layout().springs().size() && i < PENS.size(); i++) {
        int index = i;
        Value lengthOf =
            station -> length.fromInside(station.rates().springs().get(index).lengthMm());
        curves.add(heave(words.in(study.layout().springs().get(i).name()), lengthOf, i));
      }
    }
    return chart(
        shocks == 0 ? "Spring length" : "Shock length",
        length.symbol(),
        length.fromInside(LEAST_SPAN_MM),
        curves);
  }

  private Chart wheelRate() {
    Value wheel = station -> rate.fromInside(station.rates().heaveNPerMm());
    return chart(
        "Rate at each wheel, springs at their rate at that height",
        rate.symbol(),
        rate.fromInside(LEAST_SPAN_N_PER_MM),
        List.of(heave("wheel rate", wheel, 0)));
  }

  private Chart bind() {
    Value bound = station -> force.fromInside(Math.abs(station.worstBind().bindForceN()));
    return rollChart(
        "Bind: force in the bar that binds most",
        force.symbol(),
        force.fromInside(LEAST_SPAN_N),
        List.of(roll("bind", bound, 0)));
  }

  private Chart rollSteer() {
    Value steer = station -> Math.toDegrees(station.pose().yawRad());
    return rollChart(
        "Roll steer, left wheel back positive",
        "deg",
        LEAST_SPAN_DEG,
        List.of(roll("heading of the axle", steer, 0)));
  }

  private Chart springsInRoll() {
    List<Curve> curves = new ArrayList<>();
    List<SpringReading> springs = study.heave().get(0).rates().springs();
    for (int i = 0; i < springs.size() && i < PENS.size(); i++) {
      int index = i;
      Value lengthOf =
          station -> length.fromInside(station.rates().springs().get(index).lengthMm());
      curves.add(roll(words.in(springs.get(i).name()), lengthOf, i));
    }
    return rollChart(
        "Spring lengths in roll", length.symbol(), length.fromInside(LEAST_SPAN_MM), curves);
  }

  private Chart chart(String title, String unit, double leastSpan, List<Curve> curves) {
    return new Chart(title, across, unit, leastSpan, curves);
  }

  private static Chart rollChart(String title, String unit, double leastSpan, List<Curve> curves) {
    return new Chart(title, "roll, left wheel up positive (deg)", unit, leastSpan, curves);
  }

  private Curve heave(String label, Value value, int pen) {
    double[] xs = new double[study.heave().size()];
    double[] ys = new double[xs.length];
    for (int i = 0; i < xs.length; i++) {
      Station station = study.heave().get(i);
      xs[i] = length.fromInside(station.pose().heaveMm());
      ys[i] = value.of(station);
    }
    return new Curve(label, xs, ys, PENS.get(pen));
  }

  private Curve roll(String label, Value value, int pen) {
    double[] xs = new double[study.roll().size()];
    double[] ys = new double[xs.length];
    for (int i = 0; i < xs.length; i++) {
      Station station = study.roll().get(i);
      xs[i] = Math.toDegrees(station.pose().rollRad());
      ys[i] = value.of(station);
    }
    return new Curve(label, xs, ys, PENS.get(pen));
  }
}
