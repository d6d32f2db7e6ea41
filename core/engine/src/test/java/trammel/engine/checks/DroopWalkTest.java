package trammel.engine.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Layout;
import trammel.engine.layout.ShockUnit;

/** Upright shocks on the axle's line: their length grows by the droop, as near as the bars let. */
class DroopWalkTest {
  private static final double EIGHTH_MM = 25.4 / 8;

  private static Layout shocked(double openMm) {
    Layout layout = SampleLayout.good();
    Point3 centre = layout.chassis().axleCentre();
    Point3 axle = new Point3(centre.xMm(), 450, centre.zMm());
    Point3 frame = new Point3(centre.xMm(), 450, centre.zMm() + 400);
    return layout.withShocks(
        List.of(
            new ShockUnit("shock-left", frame, axle, 20, 200, openMm),
            new ShockUnit("shock-right", frame.mirrored(), axle.mirrored(), 20, 200, openMm)));
  }

  private static DroopWalk.Found walk(Layout layout, OptionalDouble strapMm) {
    return DroopWalk.of(new LayoutAnalysis(layout, SampleLayout.settings()), strapMm);
  }

  /** 400 mm at ride and 520 open: 120 mm below ride, less what the axle swings on its bars. */
  @Test
  void aShockEndsTheDroopAtItsFullLength() {
    DroopWalk.Found found = walk(shocked(520), OptionalDouble.empty());
    assertEquals("shock-left is at its full length", found.end().what());
    assertEquals(120, found.end().droopMm(), 2 * EIGHTH_MM);
  }

  @Test
  void aStrapThatIsTightBeforeEndsItThere() {
    DroopWalk.Found found = walk(shocked(520), OptionalDouble.of(100));
    assertEquals("straps are tight", found.end().what());
    assertEquals(100, found.end().droopMm(), 1e-9);
  }

  /** With nothing to hold it the axle falls on, and the walk says so. */
  @Test
  void withoutAnEndWhatGivesOutIsToldInOrder() {
    DroopWalk.Found found = walk(shocked(2000), OptionalDouble.empty());
    assertTrue(!found.before().isEmpty(), "something gives out in a foot of droop");
    double lastMm = 0;
    for (DroopWalk.Event event : found.before().subList(0, found.before().size() - 1)) {
      assertTrue(event.droopMm() >= lastMm, event.what());
      lastMm = event.droopMm();
    }
  }
}
