package trammel.engine.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Direction;
import trammel.engine.layout.End;
import trammel.engine.layout.Joint;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.Placement;

/** Largest tilt of a bar's joint from its bolt over the travel, as a share of what it allows. */
record JointMisalignment(String id, String title) implements Check {
  /** A joint that allows nothing is held against this much, so that the share stays a number. */
  private static final double LEAST_ALLOWED_RAD = Math.toRadians(0.1);

  @Override
  public Measure measure() {
    return Measure.SHARE;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    List<BoltLine> bolts = new ArrayList<>(analysis.layout().bars().size());
    for (Bar bar : analysis.layout().bars()) {
      bolts.add(new BoltLine(bar));
    }
    double most = -1;
    Bar tightest = null;
    boolean atFrame = false;
    AxlePose when = null;
    for (AxlePose pose : analysis.envelope()) {
      Placement placement = pose.placement();
      for (int i = 0; i < bolts.size(); i++) {
        Bar bar = analysis.layout().bars().get(i);
        double[] tilts = bolts.get(i).tiltsRad(placement);
        double frame = share(tilts[0], bar.frameJoint());
        double axle = share(tilts[1], bar.axleJoint());
        if (Math.max(frame, axle) > most) {
          most = Math.max(frame, axle);
          tightest = bar;
          atFrame = frame >= axle;
          when = pose;
        }
      }
    }
    if (tightest == null) {
      return new Reading.NotApplicable("the bars let the axle reach no pose");
    }
    String end = atFrame ? " at the frame, " : " at the axle, ";
    return new Reading.Value(most, tightest.name() + end + analysis.describe(when));
  }

  private static double share(double tiltRad, Joint joint) {
    return tiltRad / Math.max(joint.misalignmentRad(), LEAST_ALLOWED_RAD);
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    List<Adjustment> adjustments = new ArrayList<>();
    Set<String> lateral = Names.of(analysis.layout().across());
    if (!lateral.isEmpty()) {
      adjustments.add(new Adjustment.MoveEnds(lateral, End.FRAME, Direction.OUTBOARD));
    }
    adjustments.add(new Adjustment.ChangeDroop());
    adjustments.add(new Adjustment.ChangeBump());
    return adjustments;
  }
}
