package trammel.brackets.barend;

import static trammel.engine.quantity.Amount.length;

import java.util.List;
import trammel.assembly.Assembly;
import trammel.assembly.FlatPath;
import trammel.assembly.Held;
import trammel.assembly.Place;
import trammel.assembly.SeamRun;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.bar.BarMaking;
import trammel.brackets.bar.RailFace;
import trammel.brackets.rail.Footprint;
import trammel.brackets.rail.RailBoxing;
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
import trammel.engine.layout.Rails;
import trammel.engine.quantity.Phrase;
import trammel.trade.welding.WeldPosition;

/**
 * A frame bracket against the inner face of a rail. Its outer side stands off the face by the gap
 * that the layout leaves there; strips close the gap along both upright edges and the far end, and
 * carry the weld. A bridge joins the two sides at the base.
 */
public final class InboardFrameBracket implements FrameBracket {
  /** A strip narrower than this is ground to fit (mm). */
  private static final double LEAST_STRIP_MM = 1;

  /** Usual lap on the rail, at least 2 in and half the drop: common practice, no source. */
  private static final double USUAL_LAP_MM = 2 * 25.4;

  private static final Vector3 FORWARD = new Vector3(1, 0, 0);

  private final RailSeat seat;
  private final BracketStock stock;
  private final Rails rails;
  private final double faceThicknessMm;
  private final String boltKey;

  /**
   * @param bar the bar that it holds
   * @param seat where it takes hold of the rail
   * @param basis what it is planned on
   */
  public InboardFrameBracket(BarMaking bar, RailSeat seat, BracketBasis basis) {
    this.seat = seat;
    stock = bar.stock();
    rails = basis.rails();
    faceThicknessMm = basis.innerFaceThicknessMm();
    boltKey = basis.bolts().of(bar.bar().frameJoint().boltDiameterMm()).key();
  }

  @Override
  public Footprint footprint() {
    double half = seat.baseLengthMm() / 2;
    double xMm = seat.joint().xMm();
    return new Footprint(seat.left(), xMm - half, xMm + half, seat.bar() + " frame bracket");
  }

  /** Gap between the bracket's outer side and the rail's inner face at the joint's station (mm). */
  public double standOffMm() {
    return gapMm(seat.joint().xMm());
  }

  /** The rail tapers, so the gap is not the same at both ends of the base (mm). */
  private double gapMm(double forwardMm) {
    double outsideMm = Math.abs(seat.joint().yMm()) + seat.seat().stackMm() / 2;
    double gapMm = rails.innerFaceMm(forwardMm) - outsideMm;
    if (!(gapMm >= -RailFace.WELDED_OVER_MM)) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "the frame bracket of {} would reach {} into the rail. Move its pick-up"
                  + " point inboard by that and the bolt head's room.",
              seat.bar(),
              length(-gapMm)));
    }
    return gapMm;
  }

  private double lapMm() {
    return Math.min(seat.faceMm(), Math.max(USUAL_LAP_MM, seat.dropMm() / 2));
  }

  @Override
  public WorkPlan plan(RailBoxing boxing) {
    WorkPlan.Builder plan = new WorkPlan.Builder();
    FrameBracketPlates plates = new FrameBracketPlates(seat, stock, FORWARD, false);
    plates.addTo(plan, lapMm(), boltKey);
    addBridge(plan, plates);
    addStandOff(plan, plates, boxing.onto(footprint()));
    return plan.build();
  }

  private void addBridge(WorkPlan.Builder plan, FrameBracketPlates plates) {
    String name = seat.bar() + " frame bracket bridge";
    SidePair sides = plates.sides();
    double baseMm = seat.baseLengthMm();
    double widthMm = sides.apartMm();
    Point3 corner =
        sides
            .middle()
            .plus(sides.x().scaled(-baseMm / 2))
            .plus(sides.towards().scaled(-widthMm / 2));
    Place place = Place.lying(corner, sides.x(), sides.towards(), sides.y(), stock.thicknessMm());
    plan.add(
        stock.strip(
            name,
            List.of(new Held(Assembly.FRAME, place)),
            baseMm,
            widthMm,
            Phrase.of("joins the two sides of the bracket at its base, as wide as the joint")));
    double upMm = stock.thicknessMm();
    plan.add(
        Seam.onBench(
            name + " to both sides",
            stock.thicknessMm(),
            stock.thicknessMm(),
            sides.innerFaces(
                plates.name(), name, List.of(Seam.edge(-baseMm / 2, upMm, baseMm / 2, upMm))),
            Phrase.of("both long edges of the bridge")));
  }

  private void addStandOff(WorkPlan.Builder plan, FrameBracketPlates plates, List<String> onto) {
    double lapMm = lapMm();
    double halfMm = seat.baseLengthMm() / 2;
    double rearGapMm = gapMm(seat.joint().xMm() - halfMm);
    double frontGapMm = gapMm(seat.joint().xMm() + halfMm);
    Phrase why =
        Phrase.of(
            "two upright edges of {} and the far edge of {} hold the bracket of {}"
                + " to the rail's inner face",
            length(lapMm),
            length(seat.baseLengthMm()),
            seat.bar());
    String outer = plates.sides().ids(plates.name()).get(0);
    List<String> onRail = List.of(outer);
    if (Math.max(rearGapMm, frontGapMm) > RailFace.WELDED_OVER_MM) {
      onRail =
          addStrips(
              plan,
              plates.sides(),
              Math.max(rearGapMm, LEAST_STRIP_MM),
              Math.max(frontGapMm, LEAST_STRIP_MM));
      plan.add(
          Seam.onBench(
              seat.bar() + " stand-off to bracket side",
              stock.thicknessMm(),
              stock.thicknessMm(),
              List.of(new SeamRun(onRail, List.of(outer), edges(plates.sides().face(1), lapMm))),
              why));
    }
    plan.add(
        Seam.onVehicle(
            seat.bar() + " frame bracket to rail",
            stock.thicknessMm(),
            faceThicknessMm,
            List.of(new SeamRun(onRail, onto, edges(railFace(), lapMm))),
            WeldPosition.VERTICAL,
            why));
    plan.add(foot(lapMm));
  }

  /** Up one edge, along the far one and down the other, in a plane along the rail. */
  private FlatPath edges(Place plane, double lapMm) {
    double halfMm = seat.baseLengthMm() / 2;
    return new FlatPath(
        plane,
        List.of(
            Seam.edge(-halfMm, 0, -halfMm, lapMm),
            Seam.edge(-halfMm, lapMm, halfMm, lapMm),
            Seam.edge(halfMm, lapMm, halfMm, 0)));
  }

  /** The rail's inner face, which the taper turns a little; its origin at the bracket's base. */
  private Place railFace() {
    double xMm = seat.joint().xMm();
    double perMm = rails.innerFaceMm(xMm + 0.5) - rails.innerFaceMm(xMm - 0.5);
    Vector3 along = FORWARD.plus(seat.outward().scaled(perMm));
    double side = seat.left() ? 1 : -1;
    return Place.of(
        new Point3(xMm, side * rails.innerFaceMm(xMm), seat.baseUpMm()), along, seat.towardsRail());
  }

  /** Two uprights and a cap between the outer side and the rail; the uprights stop at the cap. */
  private List<String> addStrips(
      WorkPlan.Builder plan, SidePair sides, double rearGapMm, double frontGapMm) {
    Phrase reason =
        Phrase.of(
            "closes the gap of {} between bracket and rail's inner face at {} ahead"
                + " of the axle{}",
            length(standOffMm()),
            length(seat.joint().xMm()),
            Phrase.whereAlike(
                length(rearGapMm),
                length(frontGapMm),
                Phrase.NONE,
                Phrase.of(
                    "; the rail tapers, so it is {} at the rear of the bracket and {} at its"
                        + " front",
                    length(rearGapMm),
                    length(frontGapMm))));
    double halfMm = seat.baseLengthMm() / 2;
    double uprightMm = lapMm() - stock.thicknessMm();
    Point3 base = sides.middle().plus(sides.towards().scaled(seat.seat().stackMm() / 2));
    String upright = seat.bar() + " stand-off upright";
    String cap = seat.bar() + " stand-off cap";
    Place rear =
        Place.lying(
            base.plus(FORWARD.scaled(-halfMm)),
            sides.y(),
            sides.towards(),
            FORWARD,
            stock.thicknessMm());
    Place front =
        Place.lying(
            base.plus(FORWARD.scaled(halfMm)),
            sides.y(),
            sides.towards(),
            FORWARD.scaled(-1),
            stock.thicknessMm());
    plan.add(
        stock.strip(
            upright + ", rear",
            List.of(new Held(Assembly.FRAME, rear)),
            uprightMm,
            rearGapMm,
            reason));
    plan.add(
        stock.strip(
            upright + ", front",
            List.of(new Held(Assembly.FRAME, front)),
            uprightMm,
            frontGapMm,
            reason));
    Place top =
        Place.lying(
            base.plus(FORWARD.scaled(-halfMm)).plus(sides.y().scaled(lapMm())),
            FORWARD,
            sides.towards(),
            sides.y().scaled(-1),
            stock.thicknessMm());
    plan.add(
        stock.strip(
            cap,
            List.of(new Held(Assembly.FRAME, top)),
            seat.baseLengthMm(),
            rearGapMm,
            frontGapMm,
            reason));
    return List.of(upright + ", rear", cap, upright + ", front");
  }

  /** Two uprights and the far edge, on the rail's inner face. */
  private WeldedFoot foot(double lapMm) {
    double halfMm = seat.baseLengthMm() / 2;
    double farMm = seat.hangs() ? lapMm : -lapMm;
    double faceMm = rails.innerFaceMm(seat.joint().xMm());
    return new WeldedFoot(
        seat.bar() + " frame bracket to rail",
        List.of(seat.bar()),
        End.FRAME,
        new FootWelds()
            .line(1, -halfMm, 0, -halfMm, farMm)
            .line(1, halfMm, 0, halfMm, farMm)
            .line(1, -halfMm, farMm, halfMm, farMm)
            .group(),
        new Point3(seat.joint().xMm(), seat.left() ? faceMm : -faceMm, seat.baseUpMm()),
        new Vector3(1, 0, 0),
        new Vector3(0, 0, 1),
        Seam.legMm(stock.thicknessMm(), faceThicknessMm));
  }
}
