package trammel.planning.fabrication;

import java.util.List;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.End;
import trammel.engine.layout.Rails;
import trammel.planning.extension.UnworkableLayoutException;
import trammel.planning.work.WeldedFoot;
import trammel.planning.work.WorkPlan;
import trammel.reading.quantity.QuantityPrinter;
import trammel.trade.welding.WeldPosition;

/**
 * A frame bracket against the inner face of a rail. Its outer side stands off the face by the gap
 * that the layout leaves there; strips close the gap along both upright edges and the far end, and
 * carry the weld. A bridge joins the two sides at the base.
 */
final class InboardFrameBracket {
  /** A gap of less than this is welded over without strips, 1/16 in: common practice. */
  private static final double WELDED_OVER_MM = 25.4 / 16;

  /** Usual lap on the rail, at least 2 in and half the drop: common practice, no source. */
  private static final double USUAL_LAP_MM = 2 * 25.4;

  private final RailSeat seat;
  private final BracketStock stock;
  private final Rails rails;
  private final double faceThicknessMm;
  private final QuantityPrinter print;

  /**
   * @param faceThicknessMm thickness of what it is welded to: boxing plate or wall of a boxed rail
   */
  InboardFrameBracket(
      RailSeat seat,
      BracketStock stock,
      Rails rails,
      double faceThicknessMm,
      QuantityPrinter print) {
    this.seat = seat;
    this.stock = stock;
    this.rails = rails;
    this.faceThicknessMm = faceThicknessMm;
    this.print = print;
  }

  Footprint footprint() {
    double half = seat.baseLengthMm() / 2;
    double xMm = seat.joint().xMm();
    return new Footprint(seat.left(), xMm - half, xMm + half, seat.bar() + " frame bracket");
  }

  /** Gap between the bracket's outer side and the rail's inner face (mm). */
  double standOffMm() {
    double outsideMm = Math.abs(seat.joint().yMm()) + seat.seat().stackMm() / 2;
    double gapMm = rails.innerFaceMm(seat.joint().xMm()) - outsideMm;
    if (!(gapMm >= -1e-6)) {
      throw new UnworkableLayoutException(
          "the frame bracket of "
              + seat.bar()
              + " would reach "
              + print.length(-gapMm)
              + " into the rail. Move its pick-up point inboard by that and the bolt head's room.");
    }
    return gapMm;
  }

  private double lapMm() {
    return Math.min(seat.faceMm(), Math.max(USUAL_LAP_MM, seat.dropMm() / 2));
  }

  WorkPlan plan(String boltKey) {
    WorkPlan.Builder plan = new WorkPlan.Builder();
    new FrameBracketPlates(seat, stock, print).addTo(plan, lapMm(), boltKey);
    addBridge(plan);
    addStandOff(plan);
    return plan.build();
  }

  private void addBridge(WorkPlan.Builder plan) {
    String name = seat.bar() + " frame bracket bridge";
    plan.add(
        stock.strip(
            name,
            1,
            seat.baseLengthMm(),
            seat.seat().joint().widthMm(),
            "joins the two sides of the bracket at its base, as wide as the joint"));
    plan.add(
        Seam.onBench(
            name + " to both sides",
            stock.thicknessMm(),
            stock.thicknessMm(),
            seat.baseLengthMm(),
            2,
            "both long edges of the bridge"));
  }

  private void addStandOff(WorkPlan.Builder plan) {
    double gapMm = standOffMm();
    double lapMm = lapMm();
    String why =
        "two upright edges of "
            + print.length(lapMm)
            + " and the far edge of "
            + print.length(seat.baseLengthMm())
            + " hold the bracket of "
            + seat.bar()
            + " to the rail's inner face";
    double lineMm = 2 * lapMm + seat.baseLengthMm();
    if (gapMm > WELDED_OVER_MM) {
      String reason =
          "closes the gap of "
              + print.length(gapMm)
              + " between bracket and rail's inner face at "
              + print.length(seat.joint().xMm())
              + " ahead of the axle";
      plan.add(stock.strip(seat.bar() + " stand-off upright", 2, lapMm, gapMm, reason));
      plan.add(stock.strip(seat.bar() + " stand-off cap", 1, seat.baseLengthMm(), gapMm, reason));
      plan.add(
          Seam.onBench(
              seat.bar() + " stand-off to bracket side",
              stock.thicknessMm(),
              stock.thicknessMm(),
              lineMm,
              1,
              why));
    }
    plan.add(
        Seam.onVehicle(
            seat.bar() + " frame bracket to rail",
            stock.thicknessMm(),
            faceThicknessMm,
            lineMm,
            1,
            WeldPosition.VERTICAL,
            why));
    plan.add(foot(lapMm));
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
