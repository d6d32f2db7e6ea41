package trammel.planning.draft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Layout;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;
import trammel.engine.uncertainty.Figure;
import trammel.engine.uncertainty.FigureOrigin;
import trammel.planning.extension.kit.SampleVehicle;
import trammel.planning.job.JobReader;
import trammel.planning.job.Measured;
import trammel.reading.quantity.Measurement;
import trammel.reading.quantity.QuantityKind;
import trammel.reading.quantity.UnitSystem;

class JobUncertaintyTest {
  private static final double INCH_MM = 25.4;
  private static final Measured PICKUP =
      JobReader.read(Path.of("../../catalogs/demo/pickup.yaml")).measured();

  private static Layout layout() {
    List<Bar> bars = SampleVehicle.bars(SampleVehicle.pickup());
    List<SpringUnit> springs = SampleVehicle.springs(SampleVehicle.pickup());
    SpringUnit first = springs.get(0);
    ShockUnit inside = new ShockUnit("shock-left", first.frame(), first.axle(), 30, 200, 500);
    return new Layout(SampleVehicle.pickup(), bars, springs, List.of(inside));
  }

  private static List<Figure> figures() {
    return JobUncertainty.figures(PICKUP, layout(), UnitSystem.US);
  }

  private static Figure figure(String name) {
    for (Figure figure : figures()) {
      if (figure.name().equals(name)) {
        return figure;
      }
    }
    throw new AssertionError("there is no figure " + name);
  }

  /** Half a tolerance; a mean of four like readings is twice as sure (root of four). */
  @Test
  void repeatsMakeAFigureSurer() {
    Measurement once = new Measurement(QuantityKind.LENGTH, List.of(100.0), 2);
    Measurement four = new Measurement(QuantityKind.LENGTH, List.of(100.0, 100.0, 100.0, 100.0), 2);

    assertEquals(1, JobUncertainty.standardDeviation(once), 1e-12);
    assertEquals(0.5, JobUncertainty.standardDeviation(four), 1e-12);
  }

  /**
   * By hand: 99 and 101 deviate by the root of 2, their mean by 1: more than a tape of 0.2 says.
   */
  @Test
  void readingsThatDisagreeCountMoreThanTheInstrument() {
    Measurement apart = new Measurement(QuantityKind.LENGTH, List.of(99.0, 101.0), 0.2);

    assertEquals(1, JobUncertainty.standardDeviation(apart), 1e-12);
  }

  @Test
  void aFigureTellsItsFieldItsInstrumentAndItsReadings() {
    Figure left = figure("measured.wheelbase.left");
    Figure right = figure("measured.wheelbase.right");

    assertEquals(FigureOrigin.MEASURED, left.origin());
    assertTrue(left.how().contains("1/16 in") && left.how().contains("once"), left.how());
    assertTrue(right.how().contains("2 times"), right.how());
    assertEquals(INCH_MM / 32, left.standardDeviation(), 1e-12);
    assertEquals(INCH_MM / 32 / Math.sqrt(2), right.standardDeviation(), 1e-12);
  }

  @Test
  void everyFigureHasItsNameAndCanBeOffByTwoDeviations() {
    Layout layout = layout();
    Set<String> names = new HashSet<>();
    for (Figure figure : figures()) {
      assertTrue(names.add(figure.name()), figure.name());
      for (int sign = -2; sign <= 2; sign += 4) {
        Layout off = figure.effect().apply(layout, sign * figure.standardDeviation());
        assertTrue(!off.equals(layout), figure.name() + " changes nothing");
      }
    }
  }

  /** A shock inside its spring hangs on the spring's bolts: tacked once, both move. */
  @Test
  void aCoilAndItsShockShareTheirMounts() {
    SpringUnit spring = layout().springs().get(0);
    Figure mount = figure("frame mount of " + spring.name() + " and shock-left, height");

    Layout off = mount.effect().apply(layout(), 3);

    assertEquals(spring.frame().zMm() + 3, off.springs().get(0).frame().zMm(), 1e-9);
    assertEquals(spring.frame().zMm() + 3, off.shocks().get(0).frame().zMm(), 1e-9);
  }

  /**
   * By hand: the floor under a mark read 1 mm too low puts all that is measured from the floor 1 mm
   * too high over it.
   */
  @Test
  void theAxleMarkSetsDownAllThatIsMeasuredFromTheFloor() {
    Layout off = figure("measured.rails.underside_at_axle").effect().apply(layout(), 1);

    assertEquals(
        layout().chassis().driveline().transmissionJoint().zMm() - 1,
        off.chassis().driveline().transmissionJoint().zMm(),
        1e-9);
    assertEquals(
        layout().chassis().rails().undersideAtFrontMm() - 1,
        off.chassis().rails().undersideAtFrontMm(),
        1e-9);
    assertEquals(
        layout().chassis().rails().undersideAtAxleMm(),
        off.chassis().rails().undersideAtAxleMm(),
        1e-9);
  }
}
