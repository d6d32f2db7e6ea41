package trammel.brackets.barend;

import static trammel.engine.quantity.Amount.length;

import java.util.ArrayList;
import java.util.List;
import trammel.brackets.bar.BarMaking;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.clearance.Body;
import trammel.engine.clearance.Capsule;
import trammel.engine.clearance.Gap;
import trammel.engine.layout.AxleMotion;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Obstacle;
import trammel.engine.layout.ObstacleKind;
import trammel.engine.motion.AxlePose;
import trammel.engine.quantity.Phrase;

/** Running-board supports that bars outside the rails, or their outriggers, come too close to. */
public final class RunningBoards {
  /** Air wanted between a support and anything of the linkage, 1 in: common practice, no source. */
  public static final double AIR_MM = 25.4;

  private final Layout layout;

  public RunningBoards(Layout layout) {
    this.layout = layout;
  }

  /**
   * One support moved for each that is in the way.
   *
   * @param bars the bars outside the rails
   * @param outriggers what carries their frame ends
   */
  public WorkPlan plan(List<BarMaking> bars, List<Body> outriggers) {
    List<Body> bodies = new ArrayList<>(outriggers);
    for (BarMaking bar : bars) {
      bodies.add(body(bar.bar()));
    }
    List<AxlePose> poses = poses();
    WorkPlan.Builder plan = new WorkPlan.Builder();
    for (Obstacle obstacle : layout.chassis().obstacles()) {
      if (obstacle.kind() == ObstacleKind.RUNNING_BOARD_SUPPORT) {
        addIfClose(plan, obstacle, bodies, poses);
      }
    }
    return plan.build();
  }

  private void addIfClose(
      WorkPlan.Builder plan, Obstacle obstacle, List<Body> bodies, List<AxlePose> poses) {
    double leastMm = Double.POSITIVE_INFINITY;
    String nearest = "";
    for (Body body : bodies) {
      for (AxlePose pose : poses) {
        double gapMm = Gap.between(body.at(pose), obstacle.shape()).gapMm();
        if (gapMm < leastMm) {
          leastMm = gapMm;
          nearest = body.name();
        }
      }
    }
    if (leastMm < AIR_MM) {
      plan.add(
          new OperationNeed(
              "move-running-board-support",
              1,
              "1 support",
              Phrase.of(
                  "{}{} over the travel; bars outside the rails want {}",
                  obstacle.name(),
                  leastMm < 0
                      ? " is in the way of " + nearest
                      : Phrase.of(" is {} from {}", length(leastMm), nearest),
                  length(AIR_MM))));
    }
  }

  private static Body body(Bar bar) {
    double radiusMm =
        Math.max(bar.tube().outsideDiameterMm() / 2, bar.frameJoint().barrelRadiusMm());
    return new Body(bar.name(), new Capsule(bar.frame(), bar.axle(), radiusMm), bar.carrier());
  }

  private List<AxlePose> poses() {
    AxleMotion motion = layout.motion();
    List<AxlePose> poses = new ArrayList<>(3);
    double[] heavesMm = {
      0, layout.chassis().travel().bumpMm(), -layout.chassis().travel().droopMm()
    };
    for (double heaveMm : heavesMm) {
      motion.solve(heaveMm, 0).found().ifPresent(poses::add);
    }
    return poses;
  }
}
