package trammel.app.travel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trammel.app.travel.SampleLayout.BUMP_IN;
import static trammel.app.travel.SampleLayout.DROOP_IN;
import static trammel.app.travel.SampleLayout.INCH;
import static trammel.app.travel.SampleLayout.TRACK_IN;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import trammel.app.json.Json;
import trammel.app.json.TravelJson;
import trammel.app.text.Stops;
import trammel.app.text.TravelText;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Layout;
import trammel.engine.motion.LinkReading;
import trammel.engine.motion.SpringReading;
import trammel.reading.quantity.UnitSystem;

class TravelStudyTest {
  private final Layout layout = SampleLayout.fourBars();
  private final TravelStudy study = TravelStudy.of(layout, UnitSystem.US);

  @Test
  void heaveGoesFromFullDroopToFullBumpThroughRide() {
    List<Station> heave = study.heave();
    assertEquals(-DROOP_IN * INCH, heave.get(0).pose().heaveMm(), 1e-9);
    assertEquals(BUMP_IN * INCH, heave.get(heave.size() - 1).pose().heaveMm(), 1e-9);
    assertEquals(1 + Math.round((DROOP_IN + BUMP_IN) / 0.25), heave.size());
    assertTrue(heave.stream().anyMatch(station -> station.pose().heaveMm() == 0));
  }

  /** The wheel on the outside stands at the end of its travel: track/2 times sine of the roll. */
  @Test
  void rollGoesUntilAWheelIsAtTheEndOfItsTravel() {
    List<Station> roll = study.roll();
    double lastRad = roll.get(roll.size() - 1).pose().rollRad();
    assertEquals(DROOP_IN, TRACK_IN / 2 * Math.sin(lastRad), 1e-9);
    assertEquals(-lastRad, roll.get(0).pose().rollRad(), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({"-3, 3.5, 0.25, 27", "-3.1, 3.4, 1, 9", "-0.1, 0.1, 5, 3", "-2.99, 3.01, 1, 7"})
  void stationsRiseAndHoldBothEndsAndZero(double from, double to, double step, int count) {
    List<Double> values = TravelStudy.between(from, to, step);
    assertEquals(count, values.size(), values.toString());
    assertEquals(from, values.get(0));
    assertEquals(to, values.get(count - 1));
    for (int i = 1; i < count; i++) {
      assertTrue(values.get(i) > values.get(i - 1), values.toString());
    }
  }

  /** Pure heave of a symmetric layout with a level lateral bar strains nothing. */
  @Test
  void inHeaveEveryBarKeepsItsLength() {
    for (Station station : study.heave()) {
      for (Bar bar : layout.bars()) {
        double nowMm = bar.frame().distanceMm(station.pose().move(bar.axle()));
        assertEquals(bar.frame().distanceMm(bar.axle()), nowMm, 1e-6, bar.name());
      }
    }
  }

  /** Hooke's law with two bushings in series. */
  @Test
  void inRollTheForceIsStretchTimesHalfTheStiffnessOfABushing() {
    double largestMm = 0;
    for (int i = 0; i < layout.bars().size(); i++) {
      LinkReading worst = study.worstBindInRoll(i);
      assertEquals(layout.bars().get(i).name(), worst.name());
      assertEquals(worst.stretchMm() * SampleLayout.BUSHING_N_PER_MM / 2, worst.bindForceN(), 1e-6);
      largestMm = Math.max(largestMm, Math.abs(worst.stretchMm()));
    }
    double atEnds = 0;
    for (Station station : study.roll()) {
      atEnds = Math.max(atEnds, Math.abs(station.worstBind().stretchMm()));
    }
    assertEquals(largestMm, atEnds, 1e-12);
    assertTrue(largestMm > 0.1, "bars of unequal slope bind in roll");
  }

  /** Central difference: the motion ratio is the slope of the length curve itself. */
  @Test
  void springLengthsFallByTheMotionRatio() {
    List<Station> heave = study.heave();
    for (int i = 1; i < heave.size() - 1; i++) {
      for (int spring = 0; spring < 2; spring++) {
        SpringReading here = heave.get(i).rates().springs().get(spring);
        double risenMm = heave.get(i + 1).pose().heaveMm() - heave.get(i - 1).pose().heaveMm();
        double shorterMm =
            heave.get(i - 1).rates().springs().get(spring).lengthMm()
                - heave.get(i + 1).rates().springs().get(spring).lengthMm();
        assertEquals(here.motionRatioHeave(), shorterMm / risenMm, 2e-4);
      }
    }
  }

  @Test
  void whatTheBarsKeepTheAxleFromIsSaid() {
    TravelStudy shortUppers = TravelStudy.of(SampleLayout.shortUppers(), UnitSystem.US);
    assertFalse(shortUppers.outOfReach().isEmpty());
    assertTrue(shortUppers.heave().size() < study.heave().size());
    String text = new TravelText(shortUppers, UnitSystem.US).text();
    assertTrue(text.contains("OUT OF REACH  The links run out of travel"), text);
    assertTrue(
        Json.text(TravelJson.of("job 1", shortUppers, Stops.NONE)).contains("run out of travel"));
  }

  @Test
  void theTableNamesEverySpringShockAndBar() {
    String text = new TravelText(study, UnitSystem.US).text();
    for (String name : List.of("spring-left", "shock-right", "lower-left", "lateral-bar")) {
      assertTrue(text.contains(name), name);
    }
    assertTrue(text.contains("3 1/2 in"), text);
    assertTrue(new TravelText(study, UnitSystem.METRIC).text().contains("88.9 mm"));
  }

  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void theSpreadsheetHasOneLineAStationAndTheSameNumberOfCellsInEach(UnitSystem units) {
    String[] lines = new TravelCsv(study, units, "").text().split("\n");
    assertEquals(1 + study.heave().size() + study.roll().size(), lines.length);
    int cells = lines[0].split(",", -1).length;
    for (String line : lines) {
      assertEquals(cells, line.split(",", -1).length, line);
    }
    double inch = units == UnitSystem.US ? INCH : 1;
    Map<String, String> bump = line(lines, study.heave().size());
    Station station = study.heave().get(study.heave().size() - 1);
    String unit = units == UnitSystem.US ? "in" : "mm";
    assertEquals(BUMP_IN * INCH / inch, Double.parseDouble(bump.get("heave_" + unit)), 1e-6);
    assertEquals(
        station.pose().lateralMm() / inch,
        Double.parseDouble(bump.get("lateral_shift_" + unit)),
        1e-6);
    assertEquals(
        station.shockLengthsMm().get(1) / inch,
        Double.parseDouble(bump.get("shock_right_" + unit)),
        1e-6);
    assertEquals(
        Math.toDegrees(station.shaft().pinionElevationRad()),
        Double.parseDouble(bump.get("pinion_deg")),
        1e-6);
  }

  private static Map<String, String> line(String[] lines, int index) {
    String[] heads = lines[0].split(",", -1);
    String[] cells = lines[index].split(",", -1);
    Map<String, String> line = new HashMap<>();
    for (int i = 0; i < heads.length; i++) {
      line.put(heads[i], cells[i]);
    }
    return line;
  }

  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void thePlotIsWellFormedAndItsCurvesStayOnThePaper(UnitSystem units) throws Exception {
    String title = "Half & half <\"pickup\"> 'n trailer \u0007";
    String svg = new TravelPlot(study, units).svg(title, "job 1", "");
    Document document =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    String[] box = document.getDocumentElement().getAttribute("viewBox").split(" ");
    NodeList curves = document.getElementsByTagName("polyline");
    assertEquals(12, curves.getLength());
    for (int i = 0; i < curves.getLength(); i++) {
      for (String point : ((Element) curves.item(i)).getAttribute("points").split(" ")) {
        String[] xy = point.split(",", -1);
        double x = Double.parseDouble(xy[0]);
        double y = Double.parseDouble(xy[1]);
        assertTrue(x > 0 && x < Double.parseDouble(box[2]), point);
        assertTrue(y > 0 && y < Double.parseDouble(box[3]), point);
      }
    }
    NodeList texts = document.getElementsByTagName("text");
    assertEquals(title.replace('\u0007', ' '), texts.item(0).getTextContent());
    boolean unitShown = false;
    for (int i = 0; i < texts.getLength(); i++) {
      String text = texts.item(i).getTextContent();
      unitShown |= text.equals("heave, bump positive (" + (units == UnitSystem.US ? "in)" : "mm)"));
    }
    assertTrue(unitShown, "the axis names its unit");
  }

  /**
   * An upright air spring over the axle's line with 742 lb on it: 17.6 in2 and 110 in3 at 7 in,
   * 18.8 and 82 at 5.5, 16.4 and 137 at 8.6. By the gas law on absolute pressure it carries 1,326.9
   * lb at 1.5 in of bump and 447.7 lb at 1.6 in of droop, so the rate rises in bump.
   */
  @Test
  void anAirSpringStiffensInBumpAndSoftensInDroop() {
    TravelStudy air = TravelStudy.of(SampleLayout.onAirSprings(), UnitSystem.US);
    List<Station> heave = air.heave();
    SpringState droop = heave.get(0).springs().get(0);
    SpringState bump = heave.get(heave.size() - 1).springs().get(0);

    assertEquals(1326.9, bump.loadN() / 4.4482216152605, 1.3);
    assertEquals(70.58, bump.air().orElseThrow().gaugeMPa() * 145.0377, 0.07);
    assertEquals(61.57, bump.air().orElseThrow().restGaugeMPa() * 145.0377, 0.06);
    assertEquals(447.7, droop.loadN() / 4.4482216152605, 0.5);
    double rate = heave.get(0).rates().heaveNPerMm();
    for (Station station : heave) {
      assertTrue(station.rates().heaveNPerMm() >= rate - 1e-9, "rises with bump");
      rate = station.rates().heaveNPerMm();
    }
  }

  @Test
  void pressureAndLoadOfAirSpringsStandInEveryForm() {
    TravelStudy air = TravelStudy.of(SampleLayout.onAirSprings(), UnitSystem.US);
    String csv = new TravelCsv(air, UnitSystem.US, "").text();
    String headings = csv.substring(0, csv.indexOf('\n'));
    assertTrue(
        headings.contains(
            "spring_left_load_lb,spring_left_rate_lb_per_in,spring_left_pressure_psi"),
        headings);
    String text = new TravelText(air, UnitSystem.US).text();
    assertTrue(text.contains("42.2 psi"), text);
    String json = Json.text(TravelJson.of("D-1", air, Stops.NONE));
    assertTrue(json.contains("\"pressure_at_rest_MPa\""), json.substring(0, 2000));
  }
}
