package trammel.brackets.barend;

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
import trammel.brackets.bar.RailFace;
import trammel.brackets.rail.Footprint;
import trammel.brackets.rail.RailBoxing;
import trammel.brackets.work.BracketBasis;
import trammel.brackets.work.BracketStock;
import trammel.brackets.work.FootWelds;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.Seam;
import trammel.brackets.work.SidePair;
import trammel.brackets.work.VehicleParts;
import trammel.brackets.work.WeldedFoot;
import trammel.brackets.work.WorkPlan;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.End;
import trammel.engine.layout.Rails;
import trammel.engine.quantity.Phrase;
import trammel.trade.plates.Arc;
import trammel.trade.plates.Edge;
import trammel.trade.plates.HoleRules;
import trammel.trade.plates.LateralBarRailBracket;
import trammel.trade.plates.Point2;
import trammel.trade.plates.RailBracket;
import trammel.trade.plates.SaddleArm;
import trammel.trade.plates.TubeBracket;
import trammel.trade.welding.WeldPosition;

/**
 * The two brackets of a lateral bar. On the frame a pair of plates stands across the rail, foot
 * under it and leg up its inner face; where the rail climbs or tapers by more between them than a
 * weld fills, each is cut for its own station. On the axle two arms with saddles on the tube carry
 * a pair of face plates away from the tube, with a bridge between them.
 */
public final class LateralBarBrackets {
  private static final Vector3 FORWARD = new Vector3(1, 0, 0);
  private static final Vector3 LEFT = new Vector3(0, 1, 0);
  private static final Vector3 UP = new Vector3(0, 0, 1);

  /** Radius cut out about the rail's corner, 1/2 in: common practice, no source. */
  private static final double CORNER_RELIEF_MM = 12.7;

  private static final double LEAST_LEG_WIDTH_MM = 25.4;

  /** Depth of the arms at the face plate, in axle tube diameters: common practice, no source. */
  private static final double ARM_DEPTH = 0.75;

  private final BarMaking making;
  private final BracketBasis basis;
  private final Bar bar;
  private final JointSeat frameSeat;
  private final JointSeat axleSeat;
  private final BracketStock stock;
  private final Chassis chassis;
  private final double faceThicknessMm;

  /**
   * @param making the bar
   * @param basis what they are planned on
   */
  public LateralBarBrackets(BarMaking making, BracketBasis basis) {
    this.making = making;
    this.basis = basis;
    bar = making.bar();
    frameSeat = making.frameSeat();
    axleSeat = making.axleSeat();
    stock = making.stock();
    chassis = basis.chassis();
    faceThicknessMm = basis.innerFaceThicknessMm();
  }

  /** The stretch of rail behind the frame bracket. */
  public Footprint footprint() {
    double xMm = bar.frame().xMm();
    double half = frameSeat.stackMm() / 2;
    return new Footprint(
        bar.frame().yMm() > 0, xMm - half, xMm + half, bar.name() + " frame bracket");
  }

  /**
   * The bracket on the frame.
   *
   * @param boxing what closes the rails, to which the leg is welded
   */
  public WorkPlan frame(RailBoxing boxing) {
    double footMm = footMm();
    double legMm = chassis.rails().depthMm() / 2;
    String name = bar.name() + " frame bracket side";
    SidePair sides = frameSides();
    WorkPlan.Builder plan = new WorkPlan.Builder();
    addFrameSides(plan, name, sides);
    plan.add(
        Seam.onVehicle(
            bar.name() + " frame bracket to rail",
            stock.thicknessMm(),
            faceThicknessMm,
            frameRuns(name, sides, boxing.onto(footprint())),
            WeldPosition.OVERHEAD,
            Phrase.of(
                "foot of {} under the rail and leg of {} up its inner face, two plates,"
                    + " both faces",
                length(footMm),
                length(legMm))));
    plan.add(making.bolt(End.FRAME, sides, name, basis));
    plan.add(frameFoot(footMm, legMm));
    return plan.build();
  }

  private double footMm() {
    return chassis.rails().flangeMm() - RailFace.CORNER_MM;
  }

  /** Two alike, or each by its own station where the rail changes too much between them. */
  private void addFrameSides(WorkPlan.Builder plan, String name, SidePair sides) {
    if (isAlike()) {
      plan.add(frameSide(name, sides.held(), sides));
      return;
    }
    for (int plate = 0; plate < 2; plate++) {
      SidePair own = sides.moved(cornerOff(plate));
      Held held = own.held().get(plate);
      Held alone = new Held(held.carrier(), held.place());
      plan.add(frameSide(sides.ids(name).get(plate), List.of(alone), own));
    }
  }

  /** Foot and leg of both plates, on both faces. */
  private List<SeamRun> frameRuns(String name, SidePair sides, List<String> onto) {
    double legMm = chassis.rails().depthMm() / 2;
    List<Edge> edges =
        List.of(
            Seam.edge(-footMm(), 0, -CORNER_RELIEF_MM, 0),
            Seam.edge(0, CORNER_RELIEF_MM, 0, legMm));
    if (isAlike()) {
      return sides.bothFaces(name, onto, edges);
    }
    List<SeamRun> runs = new ArrayList<>(4);
    for (int plate = 0; plate < 2; plate++) {
      runs.addAll(sides.moved(cornerOff(plate)).facesOf(plate, name, onto, edges));
    }
    return runs;
  }

  /** One of the plates, or both, whose outline lies about the rail's corner where the pair is. */
  private PlateNeed frameSide(String name, List<Held> places, SidePair pair) {
    double inboardMm = Math.abs(pair.middle().yMm()) - Math.abs(bar.frame().yMm());
    double upMm = bar.frame().zMm() - pair.middle().zMm();
    return stock.cut(
        name,
        places,
        () ->
            new LateralBarRailBracket(
                name,
                stock.thicknessMm(),
                footMm(),
                chassis.rails().depthMm() / 2,
                Math.max(2 * stock.thicknessMm(), LEAST_LEG_WIDTH_MM),
                CORNER_RELIEF_MM,
                frameSeat.hole(inboardMm, upMm),
                HoleRules.SHOP),
        Phrase.of(
            "frame joint of {} {} inboard of the rail's inner face and {}{} its underside",
            bar.name(),
            length(inboardMm),
            length(Math.abs(upMm)),
            upMm < 0 ? " below" : " above"));
  }

  /** Whether both plates can be cut alike: the rail's corner hardly moves between them. */
  private boolean isAlike() {
    Vector3 off = cornerOff(0);
    return Math.max(Math.abs(off.y()), Math.abs(off.z())) <= RailFace.WELDED_OVER_MM;
  }

  /** From the rail's corner at the joint's station to that at its front plate, 0, or rear, 1. */
  private Vector3 cornerOff(int plate) {
    Rails rails = chassis.rails();
    double xMm = bar.frame().xMm();
    double way = plate == 0 ? 1 : -1;
    double plateMm = xMm + way * (frameSeat.joint().widthMm() + stock.thicknessMm()) / 2;
    double side = bar.frame().yMm() > 0 ? 1 : -1;
    return new Vector3(
        0,
        side * (rails.innerFaceMm(plateMm) - rails.innerFaceMm(xMm)),
        rails.undersideMm(plateMm) - rails.undersideMm(xMm));
  }

  /** Foot under the rail and leg up its inner face, two plates, seen along the vehicle. */
  private WeldedFoot frameFoot(double footMm, double legMm) {
    Rails rails = chassis.rails();
    double xMm = bar.frame().xMm();
    double side = bar.frame().yMm() > 0 ? 1 : -1;
    return new WeldedFoot(
        bar.name() + " frame bracket to rail",
        List.of(bar.name()),
        End.FRAME,
        new FootWelds()
            .line(4, side * CORNER_RELIEF_MM, 0, side * footMm, 0)
            .line(4, 0, CORNER_RELIEF_MM, 0, legMm)
            .group(),
        new Point3(xMm, side * rails.innerFaceMm(xMm), rails.undersideMm(xMm)),
        new Vector3(0, 1, 0),
        new Vector3(0, 0, 1),
        Seam.legMm(stock.thicknessMm(), faceThicknessMm));
  }

  /** Across the rail, the outlines about its lower inner corner, x inboard. */
  private SidePair frameSides() {
    Rails rails = chassis.rails();
    double xMm = bar.frame().xMm();
    double side = bar.frame().yMm() > 0 ? 1 : -1;
    return new SidePair(
        new Point3(xMm, side * rails.innerFaceMm(xMm), rails.undersideMm(xMm)),
        new Vector3(0, -side, 0),
        UP,
        FORWARD,
        frameSeat.joint().widthMm(),
        stock.thicknessMm(),
        Assembly.FRAME,
        "front",
        "rear");
  }

  /** The bracket on the axle. */
  public WorkPlan axle() {
    double awayMm = Math.abs(bar.axle().xMm() - chassis.axleCentre().xMm());
    double aboveMm = bar.axle().zMm() - chassis.axleCentre().zMm();
    double reachMm = awayMm - axleSeat.stackMm() / 2;
    requireClearOfTube(reachMm);
    double baseMm = RailBracket.baseByRuleMm(axleSeat.reachMm(), axleSeat.noseMm());
    double depthMm = ARM_DEPTH * chassis.axle().tubeDiameterMm();
    WorkPlan.Builder plan = new WorkPlan.Builder();
    SidePair faces = faces();
    addFacePlates(plan, faces, baseMm, depthMm);
    addArms(plan, faces, reachMm, aboveMm - axleSeat.reachMm(), depthMm);
    addBridge(plan, faces, baseMm);
    plan.add(making.bolt(End.AXLE, faces, facePlates(), basis));
    plan.add(axleFoot(baseMm));
    return plan.build();
  }

  /** Saddles of two arms on the side of the axle tube, seen along the vehicle. */
  private WeldedFoot axleFoot(double baseMm) {
    Point3 centre = chassis.axleCentre();
    double radiusMm = chassis.axle().tubeRadiusMm();
    double halfWrapRad = TubeBracket.USUAL_WRAP_RAD / 2;
    double halfMm = radiusMm * Math.sin(halfWrapRad);
    double apartMm = (baseMm - stock.thicknessMm()) / 2;
    double towardsJoint = bar.axle().xMm() > centre.xMm() ? 1 : -1;
    return new WeldedFoot(
        bar.name() + " axle bracket arms to axle tube",
        List.of(bar.name()),
        End.AXLE,
        new FootWelds()
            .line(2, apartMm, -halfMm, apartMm, halfMm)
            .line(2, -apartMm, -halfMm, -apartMm, halfMm)
            .group(),
        new Point3(
            centre.xMm() + towardsJoint * radiusMm * Math.cos(halfWrapRad),
            bar.axle().yMm(),
            centre.zMm()),
        new Vector3(0, 1, 0),
        new Vector3(0, 0, 1),
        Seam.legMm(stock.thicknessMm(), chassis.axle().tubeWallMm()));
  }

  private void requireClearOfTube(double reachMm) {
    double neededMm = chassis.axle().tubeRadiusMm() + stock.thicknessMm();
    if (!(reachMm >= neededMm - 1e-6)) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "the bracket of {} on the axle comes within {} of the tube's centre; it"
                  + " needs {}. Move the bar away from the axle by {}.",
              bar.name(),
              length(reachMm),
              length(neededMm),
              length(neededMm - reachMm)));
    }
  }

  private String facePlates() {
    return bar.name() + " axle bracket face";
  }

  /** Ahead or behind, as the joint lies to the axle. */
  private Vector3 away() {
    return FORWARD.scaled(bar.axle().xMm() > chassis.axleCentre().xMm() ? 1 : -1);
  }

  /** Across the joint, the outlines upside down from their base; the far one first. */
  private SidePair faces() {
    boolean ahead = away().x() > 0;
    return new SidePair(
        bar.axle().plus(UP.scaled(-axleSeat.reachMm())),
        LEFT,
        UP.scaled(-1),
        away(),
        axleSeat.joint().widthMm(),
        stock.thicknessMm(),
        Assembly.AXLE,
        ahead ? "front" : "rear",
        ahead ? "rear" : "front");
  }

  private void addFacePlates(WorkPlan.Builder plan, SidePair faces, double baseMm, double lapMm) {
    String name = facePlates();
    plan.add(
        stock.cut(
            name,
            faces.held(),
            () ->
                new RailBracket(
                    name,
                    stock.thicknessMm(),
                    baseMm,
                    lapMm,
                    axleSeat.hole(0, -axleSeat.reachMm()),
                    HoleRules.SHOP),
            Phrase.of(
                "hold the axle joint of {} fore and aft, {} above the arms to clear its"
                    + " barrel",
                bar.name(),
                length(axleSeat.reachMm()))));
  }

  private void addArms(
      WorkPlan.Builder plan, SidePair faces, double reachMm, double topMm, double depthMm) {
    double tubeMm = chassis.axle().tubeDiameterMm();
    String name = bar.name() + " axle bracket arm";
    SidePair arms = arms();
    plan.add(
        stock.cut(
            name,
            arms.held(),
            () ->
                new SaddleArm(
                    name,
                    stock.thicknessMm(),
                    tubeMm,
                    TubeBracket.USUAL_WRAP_RAD,
                    reachMm,
                    topMm - depthMm,
                    topMm),
            Phrase.of(
                "carry the face plates {} from the centre of the axle tube of {}",
                length(reachMm),
                length(tubeMm))));
    Edge saddle =
        Arc.about(
            new Point2(0, 0),
            tubeMm / 2,
            Math.atan2(topMm - depthMm / 2, reachMm) - TubeBracket.USUAL_WRAP_RAD / 2,
            TubeBracket.USUAL_WRAP_RAD);
    plan.add(
        Seam.onBench(
            name + " to axle tube",
            stock.thicknessMm(),
            chassis.axle().tubeWallMm(),
            arms.bothFaces(name, List.of(VehicleParts.AXLE_TUBE), List.of(saddle)),
            Phrase.of(
                "saddle of {} on the tube, two arms, both faces; welded with the axle out",
                angle(TubeBracket.USUAL_WRAP_RAD, 0))));
    plan.add(
        Seam.onBench(
            name + " to face plate",
            stock.thicknessMm(),
            stock.thicknessMm(),
            arms.bothFaces(
                name,
                List.of(faces.ids(facePlates()).get(1)),
                List.of(Seam.edge(reachMm, topMm - depthMm, reachMm, topMm))),
            Phrase.of("ends of two arms, both faces")));
  }

  /** At both ends of the base, the outlines about the centre of the axle tube. */
  private SidePair arms() {
    double baseMm = RailBracket.baseByRuleMm(axleSeat.reachMm(), axleSeat.noseMm());
    Point3 centre = chassis.axleCentre();
    return new SidePair(
        new Point3(centre.xMm(), bar.axle().yMm(), centre.zMm()),
        away(),
        UP,
        LEFT,
        baseMm - 2 * stock.thicknessMm(),
        stock.thicknessMm(),
        Assembly.AXLE,
        "left",
        "right");
  }

  private void addBridge(WorkPlan.Builder plan, SidePair faces, double baseMm) {
    String name = bar.name() + " axle bracket bridge";
    Point3 corner =
        faces
            .middle()
            .plus(faces.x().scaled(-baseMm / 2))
            .plus(faces.towards().scaled(-faces.apartMm() / 2));
    Place place = Place.lying(corner, faces.x(), faces.towards(), faces.y(), stock.thicknessMm());
    plan.add(
        stock.strip(
            name,
            List.of(new Held(Assembly.AXLE, place)),
            baseMm,
            faces.apartMm(),
            Phrase.of("joins the two face plates under the joint, as wide as the joint")));
    List<SeamRun> runs = new ArrayList<>(4);
    for (double downMm : new double[] {0, stock.thicknessMm()}) {
      runs.addAll(
          faces.innerFaces(
              facePlates(), name, List.of(Seam.edge(-baseMm / 2, downMm, baseMm / 2, downMm))));
    }
    plan.add(
        Seam.onBench(
            name + " to face plates",
            stock.thicknessMm(),
            stock.thicknessMm(),
            runs,
            Phrase.of("both long edges, top and underside")));
  }
}
