package trammel.plugins.torquearm;

import java.util.List;
import trammel.assembly.Assembly;
import trammel.brackets.bar.BarMaking;
import trammel.brackets.bar.JointSeat;
import trammel.brackets.mount.Crossmember;
import trammel.brackets.mount.MountStock;
import trammel.brackets.work.BoltNeed;
import trammel.brackets.work.BracketBasis;
import trammel.brackets.work.BracketStock;
import trammel.brackets.work.FootWelds;
import trammel.brackets.work.Seam;
import trammel.brackets.work.SidePair;
import trammel.brackets.work.WeldedFoot;
import trammel.brackets.work.WorkPlan;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.End;
import trammel.engine.layout.Rails;
import trammel.trade.plates.HoleRules;
import trammel.trade.plates.ShockTab;
import trammel.trade.welding.WeldPosition;

/**
 * What the drop link hangs from: a crossmember from rail to rail ahead of it, and a pair of tabs on
 * its rear face with the link's upper joint between them.
 */
final class LinkHanger {
  private static final String TAB = "drop-link frame tab";
  private static final Vector3 REARWARD = new Vector3(-1, 0, 0);

  private final Bar link;
  private final JointSeat seat;
  private final BracketStock plate;
  private final MountStock stock;
  private final BracketBasis basis;

  LinkHanger(BarMaking making, MountStock stock, BracketBasis basis) {
    link = making.bar();
    seat = making.frameSeat();
    plate = making.stock();
    this.stock = stock;
    this.basis = basis;
  }

  /** From the joint's middle to the crossmember's face (mm). */
  double reachMm() {
    return seat.reachMm();
  }

  Crossmember crossmember() {
    return new Crossmember(
        "torque arm crossmember",
        basis.rails(),
        stock,
        link.frame().xMm() + reachMm() + stock.section().widthMm() / 2,
        link.frame().zMm(),
        basis.print());
  }

  /** Crossmember, tabs, welds, the joint's bolt and the foot. */
  WorkPlan plan() {
    WorkPlan.Builder plan = new WorkPlan.Builder();
    crossmember().addTo(plan, "carries the drop link of the torque arm" + beyondTheTape());
    SidePair sides = sides();
    plan.add(
        plate.cut(
            TAB,
            sides.held(),
            this::shape,
            "upper joint of the drop link "
                + basis.print().length(reachMm())
                + " off the crossmember's rear face, clear of its barrel"));
    double halfMm = crossmember().flatMm() / 2;
    plan.add(
        Seam.onVehicle(
            TAB + " to crossmember",
            plate.thicknessMm(),
            stock.section().wallMm(),
            sides.bothFaces(
                TAB, List.of(crossmember().name()), List.of(Seam.edge(-halfMm, 0, halfMm, 0))),
            WeldPosition.VERTICAL,
            "base of both tabs, both faces"));
    plan.add(foot(halfMm));
    plan.add(
        new BoltNeed(
            basis.bolts().of(link.frameJoint().boltDiameterMm()).key(),
            seat.stackMm(),
            List.of(sides.bolt(link.frame(), "", TAB, BarMaking.jointId(link, End.FRAME))),
            "drop link frame end",
            "joint of "
                + basis.print().length(seat.joint().widthMm())
                + " between two plates of "
                + basis.print().length(plate.thicknessMm())));
    return plan.build();
  }

  /** The rails are known from the axle to where the front mounts were measured. */
  private String beyondTheTape() {
    Rails rails = basis.rails();
    return crossmember().forwardMm() > rails.frontMountsForwardMm()
        ? "; it lies ahead of where the rails were measured ("
            + basis.print().length(rails.frontMountsForwardMm())
            + " ahead of the axle): measure between the rails there before the tube is cut"
        : "";
  }

  private ShockTab shape() {
    return new ShockTab(
        TAB,
        plate.thicknessMm(),
        crossmember().flatMm(),
        reachMm(),
        seat.holeMm(),
        seat.noseMm(),
        HoleRules.SHOP);
  }

  /** Their outlines from the middle of the base on the crossmember's face, x up and y rearward. */
  private SidePair sides() {
    return new SidePair(
        link.frame().plus(REARWARD.scaled(-reachMm())),
        new Vector3(0, 0, 1),
        REARWARD,
        new Vector3(0, link.frame().yMm() < 0 ? -1 : 1, 0),
        seat.joint().widthMm(),
        plate.thicknessMm(),
        Assembly.FRAME,
        "outer",
        "inner");
  }

  /** Bases of two tabs, both faces, seen along the vehicle. */
  private WeldedFoot foot(double halfMm) {
    double apartMm = (seat.joint().widthMm() + plate.thicknessMm()) / 2;
    return new WeldedFoot(
        TAB + " to crossmember",
        List.of(link.name()),
        End.FRAME,
        new FootWelds()
            .line(2, apartMm, -halfMm, apartMm, halfMm)
            .line(2, -apartMm, -halfMm, -apartMm, halfMm)
            .group(),
        link.frame().plus(REARWARD.scaled(-reachMm())),
        new Vector3(0, 1, 0),
        new Vector3(0, 0, 1),
        Seam.legMm(plate.thicknessMm(), stock.section().wallMm()));
  }
}
