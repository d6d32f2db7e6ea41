package trammel.engine.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static trammel.engine.checks.SampleLayout.INCH;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Direction;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Masses;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

/** A vehicle built the other way round reads the same. */
class MirrorTest {
  /** The engine's torque presses the left tyre down: strength knows left from right. */
  private static final Set<String> ONE_SIDED =
      Set.of("bar-strength", "bolt-strength", "joint-rating", "pinion-wind-up");

  @Seeds(25)
  void everyCheckReadsTheSameOnTheMirroredLayout(Draw draw) {
    double lowerLeftUp = draw.between(-1, 1);
    double upperRightOut = draw.between(-1, 1);
    double springLeftForward = draw.between(-1, 1);
    double lateralUp = draw.between(-1, 1);
    Layout layout = moved(SampleLayout.good(), "lower-left", Direction.UP, lowerLeftUp);
    layout = moved(layout, "upper-right", Direction.OUTBOARD, upperRightOut);
    layout = moved(layout, "spring-left", Direction.FORWARD, springLeftForward);
    layout = moved(layout, "lateral-bar", Direction.UP, lateralUp);
    Layout mirrored = mirrored(layout);

    for (Check check : StandardChecks.all()) {
      if (!ONE_SIDED.contains(check.id())
          && SampleLayout.readingOrReason(layout, check.id()) instanceof Reading.Value value) {
        assertEquals(
            value.value(),
            SampleLayout.value(mirrored, check.id()),
            1e-5 * (1 + Math.abs(value.value())),
            check.id());
      }
    }
  }

  private static Layout moved(Layout layout, String name, Direction way, double inches) {
    return new Adjustment.MoveEnds(Set.of(name), End.FRAME, way).apply(layout, inches * INCH);
  }

  private static Layout mirrored(Layout layout) {
    List<Bar> bars = new ArrayList<>();
    for (Bar bar : layout.bars()) {
      bars.add(
          new Bar(
              bar.name(),
              bar.duties(),
              bar.frame().mirrored(),
              bar.axle().mirrored(),
              bar.frameJoint(),
              bar.axleJoint(),
              bar.tube()));
    }
    List<SpringUnit> springs = new ArrayList<>();
    for (SpringUnit spring : layout.springs()) {
      springs.add(
          spring
              .withPoint(End.FRAME, spring.frame().mirrored())
              .withPoint(End.AXLE, spring.axle().mirrored()));
    }
    List<ShockUnit> shocks = new ArrayList<>();
    for (ShockUnit shock : layout.shocks()) {
      shocks.add(
          shock
              .withPoint(End.FRAME, shock.frame().mirrored())
              .withPoint(End.AXLE, shock.axle().mirrored()));
    }
    return new Layout(mirrored(layout.chassis()), bars, springs, shocks);
  }

  private static Chassis mirrored(Chassis chassis) {
    Masses masses = chassis.masses();
    return new Chassis(
        chassis.wheelbaseRightMm(),
        chassis.wheelbaseLeftMm(),
        new Masses(
            masses.frontAxleKg(),
            masses.rearRightKg(),
            masses.rearLeftKg(),
            masses.rearUnsprungKg(),
            masses.centreOfGravityHeightMm()),
        chassis.traction(),
        chassis.tyre(),
        chassis.axle(),
        chassis.rails(),
        chassis.driveline(),
        chassis.obstacles(),
        chassis.travel());
  }
}
