package trammel.engine.checks;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Direction;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.LinkReading;

/**
 * How far any bushing is pulled or pressed out of round over the travel, because more bars hold the
 * axle than its motion leaves free. What a bar is stretched is shared by its two joints, the softer
 * one giving more.
 */
record BarBind(String id, String title) implements Check {
  /** A joint that gives less than this gives nothing (mm). */
  private static final double NOTHING_MM = 0.01;

  @Override
  public Measure measure() {
    return Measure.LENGTH;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    List<Bar> bars = analysis.layout().bars();
    List<AxlePose> poses = analysis.envelope();
    double mostMm = 0;
    String where = "the bars move freely";
    for (int pose = 0; pose < poses.size(); pose++) {
      List<LinkReading> readings = analysis.linkReadings(pose);
      for (int i = 0; i < bars.size(); i++) {
        double giveMm = giveMm(bars.get(i), readings.get(i).bindForceN());
        if (giveMm > mostMm && giveMm > NOTHING_MM) {
          mostMm = giveMm;
          where =
              where(bars.get(i), readings.get(i).bindForceN(), analysis.describe(poses.get(pose)));
        }
      }
    }
    return new Reading.Value(mostMm, where);
  }

  private static double giveMm(Bar bar, double forceN) {
    double softerNPerMm =
        Math.min(bar.frameJoint().radialStiffnessNPerMm(), bar.axleJoint().radialStiffnessNPerMm());
    return Math.abs(forceN) / softerNPerMm;
  }

  private static String where(Bar bar, double forceN, String pose) {
    return bar.name() + (forceN > 0 ? " pulled, " : " pressed, ") + pose;
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    List<Adjustment> adjustments = new ArrayList<>();
    Layout layout = analysis.layout();
    for (List<Bar> pair : List.of(layout.upper(), layout.lower())) {
      adjustments.add(new Adjustment.MoveEnds(Names.of(pair), End.FRAME, Direction.FORWARD));
    }
    adjustments.add(new Adjustment.ChangeBump());
    adjustments.add(new Adjustment.ChangeDroop());
    return adjustments;
  }
}
