package trammel.plugins.torquearm;

import static trammel.engine.quantity.Amount.angle;
import static trammel.engine.quantity.Amount.length;

import java.util.ArrayList;
import java.util.List;
import trammel.assembly.Assembly;
import trammel.assembly.Held;
import trammel.assembly.Place;
import trammel.assembly.SeamRun;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.bar.BarMaking;
import trammel.brackets.bar.JointSeat;
import trammel.brackets.work.BracketBasis;
import trammel.brackets.work.BracketStock;
import trammel.brackets.work.FootWelds;
import trammel.brackets.work.Seam;
import trammel.brackets.work.SidePair;
import trammel.brackets.work.VehicleParts;
import trammel.brackets.work.WeldedFoot;
import trammel.brackets.work.WorkPlan;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.End;
import trammel.engine.quantity.Phrase;
import trammel.trade.plates.Arc;
import trammel.trade.plates.Edge;
import trammel.trade.plates.HoleRules;
import trammel.trade.plates.Point2;
import trammel.trade.plates.TubeBracket;

/**
 * The arm: two side plates with saddles on the axle tube that taper to the eye, as far apart as the
 * drop link's joint is wide, closed over and under by strips.
 */
final class BoxedArm {
  /** A saddle of 150 degrees: the arm turns on it with all of the axle's torque. */
  static final double WRAP_RAD = Math.toRadians(150);

  private static final String SIDE = "torque arm side";

  private final Bar link;
  private final JointSeat seat;
  private final BracketStock stock;
  private final BracketBasis basis;
  private final BarMaking making;

  BoxedArm(BarMaking making, BracketBasis basis) {
    this.making = making;
    this.basis = basis;
    link = making.bar();
    seat = making.axleSeat();
    stock = making.stock();
  }

  private Point3 centre() {
    Point3 axle = basis.chassis().axleCentre();
    return new Point3(axle.xMm(), link.axle().yMm(), axle.zMm());
  }

  private double tubeRadiusMm() {
    return basis.chassis().axle().tubeRadiusMm();
  }

  private double headingRad() {
    Vector3 way = centre().to(link.axle());
    return Math.atan2(way.z(), way.x());
  }

  /** Plates, strips, welds, the eye's bolt and the foot on the tube. */
  WorkPlan plan() {
    WorkPlan.Builder plan = new WorkPlan.Builder();
    double lengthMm = centre().distanceMm(link.axle());
    SidePair sides = sides();
    plan.add(
        stock.cut(
            SIDE,
            sides.held(),
            this::shape,
            Phrase.of(
                "carry the arm's eye {} from the centre of the axle tube; the drop link"
                    + " there holds all that turns the housing",
                length(lengthMm))));
    Edge saddle =
        Arc.about(new Point2(0, 0), tubeRadiusMm(), headingRad() - WRAP_RAD / 2, WRAP_RAD);
    plan.add(
        Seam.onBench(
            "torque arm to axle tube",
            stock.thicknessMm(),
            basis.chassis().axle().tubeWallMm(),
            sides.bothFaces(SIDE, List.of(VehicleParts.AXLE_TUBE), List.of(saddle)),
            Phrase.of(
                "saddle of {} on the tube, two plates, both faces; tacked on the"
                    + " vehicle, welded with the axle out",
                angle(WRAP_RAD, 0))));
    addStrip(plan, sides, 1, "top");
    addStrip(plan, sides, -1, "bottom");
    plan.add(foot());
    plan.add(making.bolt(End.AXLE, sides, SIDE, basis));
    return plan.build();
  }

  private TubeBracket shape() {
    Vector3 way = centre().to(link.axle());
    return new TubeBracket(
        SIDE,
        stock.thicknessMm(),
        2 * tubeRadiusMm(),
        0,
        WRAP_RAD,
        seat.hole(way.x(), way.z()),
        HoleRules.SHOP);
  }

  private SidePair sides() {
    return new SidePair(
        centre(),
        new Vector3(1, 0, 0),
        new Vector3(0, 0, 1),
        new Vector3(0, link.axle().yMm() < 0 ? -1 : 1, 0),
        seat.joint().widthMm(),
        stock.thicknessMm(),
        Assembly.AXLE,
        "outer",
        "inner");
  }

  /**
   * The line of a side plate's edge, from the corner of its foot to where it runs round the eye.
   *
   * @param side +1 for the upper edge, -1 for the lower
   */
  private List<Point2> edge(int side) {
    double headingRad = headingRad();
    double footMm = tubeRadiusMm() + stock.thicknessMm();
    Point2 corner = Point2.polar(new Point2(0, 0), footMm, headingRad + side * WRAP_RAD / 2);
    Vector3 way = centre().to(link.axle());
    Point2 eye = new Point2(way.x(), way.z());
    double reachMm = corner.distanceMm(eye);
    // The edge touches the nose, so it leaves the line to the eye's centre by this angle.
    double leaveRad = Math.asin(seat.noseMm() / reachMm);
    double alongMm = reachMm * Math.cos(leaveRad);
    double edgeRad = corner.headingRad(eye) + side * leaveRad;
    double clearMm = seat.joint().barrelRadiusMm() + JointSeat.BARREL_AIR_MM;
    double endMm = alongMm - Math.max(0, clearMm);
    if (!(endMm > footMm)) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "the torque arm is too short for its strips: its eye is {} from its"
                  + " foot. Set arm_length larger.",
              length(reachMm)));
    }
    return List.of(corner, Point2.polar(corner, endMm, edgeRad));
  }

  private void addStrip(WorkPlan.Builder plan, SidePair sides, int side, String which) {
    List<Point2> edge = edge(side);
    Point2 start = edge.get(0);
    Point2 end = edge.get(1);
    double lengthMm = start.distanceMm(end);
    Vector3 along =
        new Vector3(end.xMm() - start.xMm(), 0, end.yMm() - start.yMm()).scaled(1 / lengthMm);
    Vector3 inward = new Vector3(along.z(), 0, -along.x()).scaled(side);
    Point3 corner =
        sides
            .middle()
            .plus(new Vector3(start.xMm(), 0, start.yMm()))
            .plus(sides.towards().scaled(-sides.apartMm() / 2));
    String name = "torque arm " + which + " strip";
    plan.add(
        stock.strip(
            name,
            List.of(
                new Held(
                    Assembly.AXLE,
                    Place.lying(corner, along, sides.towards(), inward, stock.thicknessMm()))),
            lengthMm,
            sides.apartMm(),
            Phrase.of(
                "closes the arm's {} between its sides, so that it bends and twists as a box",
                which)));
    List<SeamRun> runs =
        new ArrayList<>(
            sides.innerFaces(
                SIDE, name, List.of(Seam.edge(start.xMm(), start.yMm(), end.xMm(), end.yMm()))));
    plan.add(
        Seam.onBench(
            name + " to sides",
            stock.thicknessMm(),
            stock.thicknessMm(),
            runs,
            Phrase.of(
                "both long edges, from outside; in short runs from end to end so that"
                    + " the arm stays straight")));
  }

  /** Saddles of two plates, seen across the vehicle. */
  private WeldedFoot foot() {
    return new WeldedFoot(
        "torque arm to axle tube",
        List.of(link.name()),
        End.AXLE,
        new FootWelds().arc(4, tubeRadiusMm(), headingRad(), WRAP_RAD).group(),
        centre(),
        new Vector3(1, 0, 0),
        new Vector3(0, 0, 1),
        Seam.legMm(stock.thicknessMm(), basis.chassis().axle().tubeWallMm()));
  }
}
