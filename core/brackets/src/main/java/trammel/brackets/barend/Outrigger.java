package trammel.brackets.barend;

import static trammel.engine.quantity.Amount.length;

import java.util.ArrayList;
import java.util.List;
import trammel.assembly.Assembly;
import trammel.assembly.FlatPath;
import trammel.assembly.Held;
import trammel.assembly.Place;
import trammel.assembly.SeamRun;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.bar.BarMaking;
import trammel.brackets.rail.Footprint;
import trammel.brackets.rail.RailBoxing;
import trammel.brackets.work.BracketBasis;
import trammel.brackets.work.BracketStock;
import trammel.brackets.work.FootWelds;
import trammel.brackets.work.Seam;
import trammel.brackets.work.VehicleParts;
import trammel.brackets.work.WeldedFoot;
import trammel.brackets.work.WorkPlan;
import trammel.engine.clearance.Body;
import trammel.engine.clearance.Box;
import trammel.engine.clearance.Carrier;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.End;
import trammel.engine.layout.Rails;
import trammel.engine.quantity.Phrase;
import trammel.trade.plates.Lightening;
import trammel.trade.plates.OutriggerGusset;
import trammel.trade.plates.Point2;
import trammel.trade.plates.Straight;
import trammel.trade.welding.WeldPosition;

/**
 * A shelf on a rail's face, stayed by a pair of gussets, with the bracket plates of a frame joint
 * on it. It reaches outboard from the outer face for bars outside the rails, or inboard from the
 * inner face for bars that meet the rail at an angle.
 */
public final class Outrigger implements FrameBracket {
  /** Radius cut out of a gusset's corner, 1/2 in where the legs are long enough. */
  private static final double CORNER_RADIUS_MM = 12.7;

  private static final Vector3 FORWARD = new Vector3(1, 0, 0);

  private final RailSeat seat;
  private final BracketStock stock;
  private final Rails rails;
  private final boolean outer;
  private final Vector3 heading;
  private final double planRad;
  private final double faceThicknessMm;
  private final String boltKey;

  private Outrigger(
      BarMaking bar, RailSeat seat, boolean outer, Vector3 heading, BracketBasis basis) {
    this.seat = seat;
    stock = bar.stock();
    rails = basis.rails();
    this.outer = outer;
    this.heading = heading;
    planRad = Math.abs(heading.planViewRad());
    faceThicknessMm = outer ? rails.wallMm() : basis.innerFaceThicknessMm();
    boltKey = basis.bolts().of(bar.bar().frameJoint().boltDiameterMm()).key();
  }

  /** On the rail's outer face, for a bar that runs along it outside. */
  public static Outrigger outside(BarMaking bar, RailSeat seat, BracketBasis basis) {
    return new Outrigger(bar, seat, true, FORWARD, basis);
  }

  /** On the rail's inner face, turned to a bar that meets it at an angle. */
  public static Outrigger turned(BarMaking bar, RailSeat seat, BracketBasis basis) {
    return new Outrigger(bar, seat, false, bar.heading(), basis);
  }

  /** True on the rail's outer face. */
  public boolean isOutside() {
    return outer;
  }

  /** Length of the shelf along the rail: the turned bracket's shadow on it (mm). */
  public double lengthMm() {
    return seat.baseLengthMm() * Math.cos(planRad) + seat.seat().stackMm() * Math.sin(planRad);
  }

  /** How far the shelf reaches from the rail's face (mm). */
  public double reachMm() {
    double halfMm =
        (seat.baseLengthMm() * Math.sin(planRad) + seat.seat().stackMm() * Math.cos(planRad)) / 2;
    double xMm = seat.joint().xMm();
    double acrossMm = Math.abs(seat.joint().yMm());
    double centreMm = outer ? acrossMm - rails.outerFaceMm(xMm) : rails.innerFaceMm(xMm) - acrossMm;
    if (!(centreMm >= halfMm - 1e-6)) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "the bracket of {} on its outrigger is {} from the rail's {} at its"
                  + " middle; it needs {}. Move its pick-up point {} by {}.",
              seat.bar(),
              length(centreMm),
              face(),
              length(halfMm),
              outer ? "outboard" : "inboard",
              length(halfMm - centreMm)));
    }
    return centreMm + halfMm;
  }

  private String face() {
    return outer ? "outer face" : "inner face";
  }

  @Override
  public Footprint footprint() {
    double half = lengthMm() / 2;
    double xMm = seat.joint().xMm();
    return new Footprint(seat.left(), xMm - half, xMm + half, seat.bar() + " outrigger");
  }

  /** The room that shelf, gussets and bracket take together, as it stands under the vehicle. */
  public Body body() {
    return new Body("outrigger of " + seat.bar(), box(), Carrier.FRAME);
  }

  private Box box() {
    double xMm = seat.joint().xMm();
    double faceMm = outer ? rails.outerFaceMm(xMm) : rails.innerFaceMm(xMm);
    double tipMm = outer ? faceMm + reachMm() : faceMm - reachMm();
    double side = seat.left() ? 1 : -1;
    double half = lengthMm() / 2;
    double noseMm = seat.seat().noseMm() + seat.seat().row().farMm();
    double jointMm = seat.joint().zMm() + (seat.hangs() ? -noseMm : noseMm);
    double gussetMm = seat.baseUpMm() + (seat.hangs() ? gussetMm() : -gussetMm());
    return Box.between(
        xMm - half,
        xMm + half,
        Math.min(side * faceMm, side * tipMm),
        Math.max(side * faceMm, side * tipMm),
        Math.min(jointMm, gussetMm),
        Math.max(jointMm, gussetMm));
  }

  /** Leg of the gussets on the rail (mm). */
  private double gussetMm() {
    return Math.min(seat.faceMm() - stock.thicknessMm(), reachMm());
  }

  @Override
  public WorkPlan plan(RailBoxing boxing) {
    String backing = outer ? VehicleParts.rail(seat.left()) : boxing.behind(footprint());
    WorkPlan.Builder plan = new WorkPlan.Builder();
    FrameBracketPlates plates = new FrameBracketPlates(seat, stock, heading, outer);
    plates.addTo(plan, 0, boltKey);
    double halfMm = seat.baseLengthMm() / 2;
    plan.add(
        Seam.onBench(
            seat.bar() + " bracket sides to outrigger shelf",
            stock.thicknessMm(),
            stock.thicknessMm(),
            plates
                .sides()
                .bothFaces(
                    plates.name(), List.of(shelf()), List.of(Seam.edge(-halfMm, 0, halfMm, 0))),
            Phrase.of("both sides of the bracket, both faces")));
    plan.add(sidesFoot());
    addShelf(plan, backing);
    addGussets(plan, backing);
    plan.add(railFoot());
    return plan.build();
  }

  private String shelf() {
    return seat.bar() + " outrigger shelf";
  }

  /** Away from the rail's face. */
  private Vector3 away() {
    return outer ? seat.outward() : seat.outward().scaled(-1);
  }

  /** The rail's face at a station, at the height of the bracket's base (mm). */
  private Point3 onFace(double forwardMm) {
    double faceMm = outer ? rails.outerFaceMm(forwardMm) : rails.innerFaceMm(forwardMm);
    return new Point3(forwardMm, seat.left() ? faceMm : -faceMm, seat.baseUpMm());
  }

  /** How far the shelf's tip is from the rail's face at a station, which the taper changes (mm). */
  private double reachMm(double forwardMm) {
    double xMm = seat.joint().xMm();
    double tipMm = onFace(xMm).plus(away().scaled(reachMm())).yMm();
    return Math.abs(tipMm - onFace(forwardMm).yMm());
  }

  private WeldedFoot sidesFoot() {
    double halfMm = seat.baseLengthMm() / 2;
    double apartMm = (seat.seat().joint().widthMm() + stock.thicknessMm()) / 2;
    return new WeldedFoot(
        seat.bar() + " bracket sides to outrigger shelf",
        List.of(seat.bar()),
        End.FRAME,
        new FootWelds()
            .line(2, -halfMm, apartMm, halfMm, apartMm)
            .line(2, -halfMm, -apartMm, halfMm, -apartMm)
            .group(),
        new Point3(seat.joint().xMm(), seat.joint().yMm(), seat.baseUpMm()),
        heading,
        new Vector3(-heading.y(), heading.x(), 0),
        Seam.legMm(stock.thicknessMm(), stock.thicknessMm()));
  }

  /** The shelf's edge and the gussets' legs, on the rail's face. */
  private WeldedFoot railFoot() {
    double xMm = seat.joint().xMm();
    double faceMm = outer ? rails.outerFaceMm(xMm) : rails.innerFaceMm(xMm);
    double halfMm = lengthMm() / 2;
    double gussetsMm = halfMm - stock.thicknessMm() / 2;
    double awayFromJoint = seat.hangs() ? 1 : -1;
    double fromMm = awayFromJoint * cornerRadiusMm();
    double toMm = awayFromJoint * gussetMm();
    return new WeldedFoot(
        seat.bar() + " outrigger to rail",
        List.of(seat.bar()),
        End.FRAME,
        new FootWelds()
            .line(2, -halfMm, 0, halfMm, 0)
            .line(2, -gussetsMm, fromMm, -gussetsMm, toMm)
            .line(2, gussetsMm, fromMm, gussetsMm, toMm)
            .group(),
        new Point3(xMm, seat.left() ? faceMm : -faceMm, seat.baseUpMm()),
        new Vector3(1, 0, 0),
        new Vector3(0, 0, 1),
        Seam.legMm(stock.thicknessMm(), faceThicknessMm));
  }

  private double cornerRadiusMm() {
    return Math.min(CORNER_RADIUS_MM, Math.min(gussetMm(), reachMm()) / 3);
  }

  /** A shelf whose tip runs straight fore and aft and whose other edge follows the rail. */
  private void addShelf(WorkPlan.Builder plan, String backing) {
    double xMm = seat.joint().xMm();
    double halfMm = lengthMm() / 2;
    Point3 rearTip = new Point3(xMm - halfMm, onFace(xMm).yMm(), seat.baseUpMm());
    Place place =
        Place.lying(
            rearTip.plus(away().scaled(reachMm())),
            FORWARD,
            away().scaled(-1),
            seat.towardsRail(),
            stock.thicknessMm());
    plan.add(
        stock.strip(
            shelf(),
            List.of(new Held(Assembly.FRAME, place)),
            lengthMm(),
            reachMm(xMm - halfMm),
            reachMm(xMm + halfMm),
            Phrase.of(
                "carries the {}; reaches {} from the rail's {}",
                seat.place(),
                length(reachMm()),
                face())));
    List<SeamRun> runs = new ArrayList<>(2);
    for (double upMm : new double[] {0, stock.thicknessMm()}) {
      Vector3 up = seat.towardsRail().scaled(upMm);
      runs.add(
          new SeamRun(
              shelf(),
              backing,
              FlatPath.between(onFace(xMm - halfMm).plus(up), onFace(xMm + halfMm).plus(up))));
    }
    plan.add(
        Seam.onVehicle(
            shelf() + " to rail",
            stock.thicknessMm(),
            faceThicknessMm,
            runs,
            WeldPosition.HORIZONTAL,
            Phrase.of("the shelf's edge on the rail's {}, top and underside", face())));
  }

  private void addGussets(WorkPlan.Builder plan, String backing) {
    double xMm = seat.joint().xMm();
    double offMm = (lengthMm() - stock.thicknessMm()) / 2;
    double reachMm = Math.min(reachMm(xMm - offMm), reachMm(xMm + offMm));
    double upMm = gussetMm();
    double radiusMm = cornerRadiusMm();
    String name = seat.bar() + " outrigger gusset";
    plan.add(
        stock.loaded(
            name,
            List.of(
                new Held("front", Assembly.FRAME, gusset(xMm + offMm)),
                new Held("rear", Assembly.FRAME, gusset(xMm - offMm))),
            () ->
                new OutriggerGusset(
                    name,
                    stock.thicknessMm(),
                    reachMm,
                    upMm,
                    Math.PI / 2,
                    stock.thicknessMm(),
                    radiusMm),
            // The shelf loads it towards its tip; the rail holds it at the corner.
            new Lightening(
                List.of(new Point2(reachMm, stock.thicknessMm() / 2)),
                new Point2(0, stock.thicknessMm() / 2),
                0),
            Phrase.of(
                "stays the shelf: {} along it and {} on the rail's {}",
                length(reachMm),
                length(upMm),
                face())));
    plan.add(
        Seam.onVehicle(
            name + " to rail",
            stock.thicknessMm(),
            faceThicknessMm,
            gussetRuns(name, backing, Seam.edge(0, radiusMm, 0, upMm)),
            WeldPosition.VERTICAL,
            Phrase.of("two gussets, both faces, less the cut-out corner")));
    plan.add(
        Seam.onBench(
            name + " to shelf",
            stock.thicknessMm(),
            stock.thicknessMm(),
            gussetRuns(name, shelf(), Seam.edge(radiusMm, 0, reachMm, 0)),
            Phrase.of("two gussets, both faces, less the cut-out corner")));
  }

  /** A gusset square to the rail with its middle at a station: one leg on the shelf's far side. */
  private Place gusset(double forwardMm) {
    Point3 corner =
        onFace(forwardMm)
            .plus(seat.towardsRail().scaled(stock.thicknessMm()))
            .plus(FORWARD.scaled(-stock.thicknessMm() / 2));
    return Place.lying(corner, away(), seat.towardsRail(), FORWARD, stock.thicknessMm());
  }

  private List<SeamRun> gussetRuns(String name, String onto, Straight edge) {
    double xMm = seat.joint().xMm();
    double offMm = (lengthMm() - stock.thicknessMm()) / 2;
    List<SeamRun> runs = new ArrayList<>(4);
    runs.addAll(gussetRuns(Held.id(name, "front"), onto, gusset(xMm + offMm), edge));
    runs.addAll(gussetRuns(Held.id(name, "rear"), onto, gusset(xMm - offMm), edge));
    return runs;
  }

  private List<SeamRun> gussetRuns(String id, String onto, Place place, Straight edge) {
    FlatPath near = new FlatPath(place, List.of(edge));
    return List.of(
        new SeamRun(id, onto, near), new SeamRun(id, onto, near.shifted(stock.thicknessMm())));
  }
}
