package trammel.brackets.barend;

import static trammel.engine.quantity.Amount.length;

import java.util.List;
import trammel.assembly.Assembly;
import trammel.brackets.bar.BarMaking;
import trammel.brackets.bar.JointSeat;
import trammel.brackets.mount.Crossmember;
import trammel.brackets.work.BracketBasis;
import trammel.brackets.work.BracketStock;
import trammel.brackets.work.FootWelds;
import trammel.brackets.work.Seam;
import trammel.brackets.work.SidePair;
import trammel.brackets.work.WeldedFoot;
import trammel.brackets.work.WorkPlan;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.End;
import trammel.engine.quantity.Phrase;
import trammel.trade.plates.HoleRules;
import trammel.trade.plates.ShockTab;
import trammel.trade.welding.WeldPosition;

/**
 * A pair of tabs on the upright face of a crossmember, between which a bar's frame joint is bolted.
 * They stand on the face that looks to the joint, which lies at the crossmember's middle height.
 *
 * @param bar the bar
 * @param crossmember what the tabs stand on, ahead of the joint or behind it
 * @param basis what they are planned on
 */
public record CrossmemberTabs(BarMaking bar, Crossmember crossmember, BracketBasis basis) {
  private static final Vector3 FORWARD = new Vector3(1, 0, 0);
  private static final Vector3 LEFT = new Vector3(0, 1, 0);
  private static final Vector3 UP = new Vector3(0, 0, 1);

  /**
   * Where the middle of a crossmember lies that stands as close ahead of a joint as it can (mm).
   */
  public static double closeAheadMm(Point3 joint, JointSeat seat, double crossmemberWidthMm) {
    return joint.xMm() + seat.reachMm() + crossmemberWidthMm / 2;
  }

  private Point3 joint() {
    return bar.bar().frame();
  }

  private JointSeat seat() {
    return bar.frameSeat();
  }

  /** From the crossmember's face to the joint's middle (mm). */
  private double reachMm() {
    return Math.abs(crossmember.forwardMm() - joint().xMm()) - crossmember.widthMm() / 2;
  }

  /** From the face to the joint. */
  private Vector3 away() {
    return FORWARD.scaled(crossmember.forwardMm() > joint().xMm() ? -1 : 1);
  }

  private String name() {
    return bar.bar().name() + " frame tab";
  }

  /** Tabs, seam, the joint's bolt and the foot. */
  public WorkPlan plan() {
    BracketStock plate = bar.stock();
    SidePair sides = sides();
    double halfMm = crossmember.flatMm() / 2;
    return new WorkPlan.Builder()
        .add(
            plate.cut(
                name(),
                sides.held(),
                () ->
                    new ShockTab(
                        name(),
                        plate.thicknessMm(),
                        crossmember.flatMm(),
                        reachMm(),
                        seat().holeMm(),
                        seat().noseMm(),
                        HoleRules.SHOP),
                Phrase.of(
                    "frame joint of {} {} off the face of the {}, clear of its barrel",
                    bar.bar().name(),
                    length(reachMm()),
                    crossmember.name())))
        .add(
            Seam.onVehicle(
                name() + " to crossmember",
                plate.thicknessMm(),
                crossmember.stock().section().wallMm(),
                sides.bothFaces(
                    name(), List.of(crossmember.name()), List.of(Seam.edge(-halfMm, 0, halfMm, 0))),
                WeldPosition.VERTICAL,
                Phrase.of("base of both tabs, both faces")))
        .add(foot(halfMm))
        .add(bar.bolt(End.FRAME, sides, name(), basis))
        .build();
  }

  private Point3 base() {
    return joint().plus(away().scaled(-reachMm()));
  }

  /** Their outlines from the middle of the base on the crossmember's face, x up and y away. */
  private SidePair sides() {
    return new SidePair(
        base(),
        UP,
        away(),
        LEFT.scaled(joint().yMm() < 0 ? -1 : 1),
        seat().joint().widthMm(),
        bar.stock().thicknessMm(),
        Assembly.FRAME,
        "outer",
        "inner");
  }

  /** Bases of two tabs, both faces, seen along the vehicle. */
  private WeldedFoot foot(double halfMm) {
    double thicknessMm = bar.stock().thicknessMm();
    double apartMm = (seat().joint().widthMm() + thicknessMm) / 2;
    return new WeldedFoot(
        name() + " to crossmember",
        List.of(bar.bar().name()),
        End.FRAME,
        new FootWelds()
            .line(2, apartMm, -halfMm, apartMm, halfMm)
            .line(2, -apartMm, -halfMm, -apartMm, halfMm)
            .group(),
        base(),
        LEFT,
        UP,
        Seam.legMm(thicknessMm, crossmember.stock().section().wallMm()));
  }
}
