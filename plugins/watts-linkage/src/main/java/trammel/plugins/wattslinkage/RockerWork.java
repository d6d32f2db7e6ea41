package trammel.plugins.wattslinkage;

import static trammel.engine.quantity.Amount.length;

import java.util.List;
import trammel.assembly.FlatPath;
import trammel.assembly.Place;
import trammel.assembly.SeamRun;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.bar.BarMaking;
import trammel.brackets.work.BoltNeed;
import trammel.brackets.work.BoughtPiece;
import trammel.brackets.work.BracketBasis;
import trammel.brackets.work.PartNeed;
import trammel.brackets.work.Seam;
import trammel.brackets.work.SidePair;
import trammel.brackets.work.WorkPlan;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.End;
import trammel.engine.quantity.Phrase;
import trammel.trade.plates.Point2;

/**
 * The rocker itself: two plates, the bush of its pivot welded into both, and the bolts of the two
 * links' joints between them.
 */
final class RockerWork {
  static final String PLATE = "rocker plate";
  static final String BUSH = "rocker pivot bush";

  private static final Vector3 FORWARD = new Vector3(1, 0, 0);
  private static final Vector3 LEFT = new Vector3(0, 1, 0);
  private static final Vector3 UP = new Vector3(0, 0, 1);

  /** A joint so far out of the rocker's plane or from its size is another one's (mm). */
  private static final double SAME_MM = 0.01;

  private final Rocker rocker;
  private final List<BarMaking> links;
  private final RockerForm form;
  private final BracketBasis basis;

  /**
   * @throws UnworkableLayoutException if the links' joints do not fit between one pair of plates
   */
  RockerWork(Rocker rocker, List<BarMaking> links, RockerForm form, BracketBasis basis) {
    this.rocker = rocker;
    this.links = List.copyOf(links);
    this.form = form;
    this.basis = basis;
    links.forEach(this::requireFits);
  }

  private void requireFits(BarMaking link) {
    Bar bar = link.bar();
    if (Math.abs(bar.axleJoint().widthMm() - form.seat().joint().widthMm()) > SAME_MM
        || Math.abs(bar.axleJoint().boltDiameterMm() - form.seat().joint().boltDiameterMm())
            > SAME_MM) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "the links' joints on the rocker are of two sizes; both sit between the"
                  + " same two plates. Give both links the same axle_end."));
    }
    Vector3 arm = rocker.arm(bar);
    if (Math.abs(arm.x()) > SAME_MM) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "the joint of {} on the rocker lies {}{} the rocker's pivot; the rocker"
                  + " is flat. Give it the pivot's distance behind the axle, {}.",
              bar.name(),
              length(Math.abs(arm.x())),
              arm.x() > 0 ? " ahead of" : " behind",
              length(-rocker.pivot().xMm())));
    }
    if (!(arm.norm() >= form.leastArmMm() - SAME_MM)) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "the joint of {} is {} from the rocker's pivot; its barrel and the"
                  + " pivot's shell need {}. Move the joint away from the pivot.",
              bar.name(),
              length(arm.norm()),
              length(form.leastArmMm())));
    }
  }

  private SidePair plates() {
    return new SidePair(
        rocker.pivot(),
        LEFT,
        UP,
        FORWARD,
        form.seat().joint().widthMm(),
        form.seat().plateMm(),
        Rocker.NAME,
        "front",
        "rear");
  }

  WorkPlan plan() {
    WorkPlan.Builder plan = new WorkPlan.Builder();
    SidePair plates = plates();
    List<Point2> joints =
        links.stream()
            .map(link -> rocker.arm(link.bar()))
            .map(arm -> new Point2(arm.y(), arm.z()))
            .toList();
    plan.add(
        links
            .get(0)
            .stock()
            .cut(
                PLATE,
                plates.held(),
                () -> new RockerPlate(PLATE, form.seat().plateMm(), joints, form.seat()),
                Phrase.of(
                    "two plates with the links' joints between them, {} and {} from the"
                        + " pivot, bored for the shell of its bush",
                    length(rocker.arm(links.get(0).bar()).norm()),
                    length(rocker.arm(links.get(1).bar()).norm()))));
    addBush(plan, plates);
    links.forEach(link -> plan.add(bolt(link, plates)));
    return plan.build();
  }

  private void addBush(WorkPlan.Builder plan, SidePair plates) {
    double sleeveMm = form.apartMm();
    Point3 front = rocker.pivot().plus(FORWARD.scaled(sleeveMm / 2));
    plan.add(
        PartNeed.placed(
            PivotBush.ITEM,
            List.of(
                new BoughtPiece(
                    BUSH,
                    Rocker.NAME,
                    Place.along(front, FORWARD.scaled(-1)),
                    PivotBush.solid(sleeveMm),
                    List.of())),
            Phrase.of(
                "the rocker turns on it; its sleeve cut to {}, {} beyond each rocker"
                    + " plate for the heads of the links' bolts",
                length(sleeveMm),
                length(form.besideMm()))));
    plan.add(
        Seam.onBench(
            "rocker plates to pivot bush",
            form.seat().plateMm(),
            form.seat().plateMm(),
            List.of(round(plates, 1, 0), round(plates, 3, 1)),
            Phrase.of("once round the shell on the outside of each rocker plate")));
  }

  private static SeamRun round(SidePair plates, int face, int plate) {
    return new SeamRun(
        BUSH,
        plates.ids(PLATE).get(plate),
        FlatPath.circle(plates.face(face), PivotBush.SHELL_RADIUS_MM));
  }

  private BoltNeed bolt(BarMaking link, SidePair plates) {
    Bar bar = link.bar();
    return new BoltNeed(
        form.linkBolt().key(),
        form.seat().stackMm(),
        List.of(plates.bolt(bar.axle(), "", PLATE, BarMaking.jointId(bar, End.AXLE))),
        bar.name() + " axle end",
        Phrase.of(
            "joint of {} between two rocker plates of {}",
            length(form.seat().joint().widthMm()),
            length(form.seat().plateMm())));
  }
}
