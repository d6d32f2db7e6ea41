package trammel.plugins.wattslinkage;

import java.util.ArrayList;
import java.util.List;
import trammel.brackets.bar.JointSeat;
import trammel.trade.plates.Belt;
import trammel.trade.plates.Disc;
import trammel.trade.plates.Hole;
import trammel.trade.plates.HoleRules;
import trammel.trade.plates.Loop;
import trammel.trade.plates.Outline;
import trammel.trade.plates.PlateShape;
import trammel.trade.plates.Point2;
import trammel.trade.plates.RoundHole;
import trammel.trade.plates.Window;

/**
 * One of the two plates of a rocker: round about the pivot and about the joint of each link, with
 * straight sides between. Axes as seen from ahead of its first face, the pivot at the origin.
 *
 * @param name what the shop calls it
 * @param thicknessMm plate thickness
 * @param joints centres of the links' joints
 * @param seat how the joints sit
 */
record RockerPlate(String name, double thicknessMm, List<Point2> joints, JointSeat seat)
    implements PlateShape {
  private static final Point2 PIVOT = new Point2(0, 0);

  /** Bore for the shell: it is cut with the outline and takes the shell with a close fit. */
  static final double BORE_RADIUS_MM = PivotBush.SHELL_RADIUS_MM + JointSeat.BOLT_CLEARANCE_MM / 2;

  RockerPlate {
    joints = List.copyOf(joints);
  }

  @Override
  public Outline outline() {
    List<Disc> discs = new ArrayList<>(joints.size() + 1);
    List<Hole> holes = new ArrayList<>(joints.size() + 1);
    discs.add(new Disc(PIVOT, PivotBush.bossMm()));
    for (Point2 joint : joints) {
      discs.add(new Disc(joint, seat.noseMm()));
      holes.add(new RoundHole(joint, seat.holeMm()));
    }
    holes.add(new Window(Loop.circle(PIVOT, BORE_RADIUS_MM)));
    return HoleRules.SHOP.check(name, new Outline(Belt.around(discs), holes));
  }
}
