package trammel.engine.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trammel.engine.checks.SampleLayout.point;
import static trammel.engine.checks.SampleLayout.rad;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.engine.layout.Bar;
import trammel.engine.layout.BarTube;
import trammel.engine.layout.Duty;
import trammel.engine.layout.Joint;
import trammel.engine.layout.Layout;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.LinkReading;

class BarJointChecksTest {
  private static final double RADIUS_MM = 14.5 * SampleLayout.INCH;

  private static Joint joint(double stiffnessNPerMm, double misalignmentRad) {
    return new Joint("bushed end", stiffnessNPerMm, misalignmentRad, 12.7, 50.8, 25.4, 80_000);
  }

  /** A bar that runs straight back to the middle of the axle. */
  private static BoltLine boltsOfAStraightBar() {
    Joint joint = joint(10_000, rad(7));
    return new BoltLine(
        new Bar(
            "bar",
            Duty.DRIVE_AND_BRAKING.only(),
            point(24, 0, 14.5),
            point(0, 0, 14.5),
            joint,
            joint,
            new BarTube(44.45, 3, 379)));
  }

  /** Closed form: both barrels lie alike, so each joint takes half of the axle's roll. */
  @Test
  void eachJointTakesHalfOfTheRoll() {
    AxlePose rolled = new AxlePose(0, rad(6), 0, 0, 0, 0, RADIUS_MM);

    double[] tilts = boltsOfAStraightBar().tiltsRad(rolled.placement());

    assertEquals(3, Math.toDegrees(tilts[0]), 1e-9);
    assertEquals(3, Math.toDegrees(tilts[1]), 1e-9);
  }

  /** A joint turns on its bolt without end: swinging up and down tilts nothing. */
  @Test
  void swingingAboutTheBoltTiltsNothing() {
    AxlePose raised = new AxlePose(90, 0, -7, 0, 0, rad(2), RADIUS_MM);

    double[] tilts = boltsOfAStraightBar().tiltsRad(raised.placement());

    assertEquals(0, tilts[0], 1e-12);
    assertEquals(0, tilts[1], 1e-12);
  }

  /** Closed form: the bar stands as it stood, so the axle's turn is all in the axle's joint. */
  @Test
  void theAxlesJointTakesAllOfItsYaw() {
    AxlePose yawed = new AxlePose(0, 0, 0, 0, rad(2), 0, RADIUS_MM);

    double[] tilts = boltsOfAStraightBar().tiltsRad(yawed.placement());

    assertEquals(0, tilts[0], 1e-12);
    assertEquals(2, Math.toDegrees(tilts[1]), 1e-9);
  }

  @Test
  void theShareIsAgainstWhatTheJointItselfAllows() {
    double withSeven = SampleLayout.value(withJoints(joint(10_000, rad(7))), "joint-misalignment");
    double withFourteen =
        SampleLayout.value(withJoints(joint(10_000, rad(14))), "joint-misalignment");

    assertEquals(2, withSeven / withFourteen, 1e-9);
  }

  /**
   * Springs in series share a stretch as one over their stiffness: the softer of 1 to 2 has 2/3.
   */
  @Test
  void theSofterJointGivesMore() {
    Layout layout = SampleLayout.good();
    List<Bar> bars = new ArrayList<>();
    for (Bar bar : layout.bars()) {
      bars.add(
          new Bar(
              bar.name(),
              bar.duties(),
              bar.frame(),
              bar.axle(),
              joint(20_000, rad(7)),
              joint(10_000, rad(7)),
              bar.tube()));
    }
    Layout uneven = layout.withBars(bars);

    double mostMm = 0;
    LayoutAnalysis analysis = new LayoutAnalysis(uneven, SampleLayout.settings());
    for (AxlePose pose : analysis.envelope()) {
      for (LinkReading reading : uneven.motion().readings(pose)) {
        mostMm = Math.max(mostMm, Math.abs(reading.stretchMm()));
      }
    }

    assertEquals(mostMm * 2 / 3, SampleLayout.value(uneven, "bar-bind"), 1e-9);
  }

  /** Four links leave an axle two freedoms and bind nowhere: heave and roll are free. */
  @Test
  void fourBarsOfWhichTwoSpreadDoNotBind() {
    List<Bar> bars = new ArrayList<>();
    for (Bar bar : SampleLayout.good().bars()) {
      if (bar.name().startsWith("lower")) {
        bars.add(bar);
      } else if (bar.name().startsWith("upper")) {
        double side = Math.signum(bar.axle().yMm());
        bars.add(
            new Bar(
                bar.name(),
                bar.duties(),
                bar.frame(),
                point(0, side * 4, 19),
                bar.frameJoint(),
                bar.axleJoint(),
                bar.tube()));
      }
    }

    Reading.Value bind = SampleLayout.reading(SampleLayout.good().withBars(bars), "bar-bind");

    assertEquals(0, bind.value(), 1e-6);
    assertEquals("the bars move freely", bind.where().toString());
    assertTrue(SampleLayout.value(SampleLayout.good(), "bar-bind") > 0.1);
  }

  private static Layout withJoints(Joint joint) {
    List<Bar> bars = new ArrayList<>();
    for (Bar bar : SampleLayout.good().bars()) {
      bars.add(
          new Bar(bar.name(), bar.duties(), bar.frame(), bar.axle(), joint, joint, bar.tube()));
    }
    return SampleLayout.good().withBars(bars);
  }
}
