package trammel.planning.fabrication;

import java.util.List;
import java.util.function.Supplier;
import trammel.planning.work.BoltNeed;
import trammel.planning.work.PlateNeed;
import trammel.planning.work.WorkPlan;
import trammel.reading.quantity.QuantityPrinter;
import trammel.trade.plates.HoleRules;
import trammel.trade.plates.Lightening;
import trammel.trade.plates.PlateShape;
import trammel.trade.plates.Point2;
import trammel.trade.plates.RailBracket;

/** The two plates between which a frame joint is bolted, and the web that stiffens long ones. */
final class FrameBracketPlates {
  /** A shorter web is not worth cutting, 1 in: common practice, no source. */
  private static final double LEAST_WEB_MM = 25.4;

  private final RailSeat seat;
  private final BracketStock stock;
  private final QuantityPrinter print;

  FrameBracketPlates(RailSeat seat, BracketStock stock, QuantityPrinter print) {
    this.seat = seat;
    this.stock = stock;
    this.print = print;
  }

  /**
   * Adds plates, web and bolt.
   *
   * @param lapMm how far the plates go on beyond the base along the rail's face
   */
  void addTo(WorkPlan.Builder plan, double lapMm, String boltKey) {
    String name = seat.bar() + " frame bracket side";
    plan.add(
        stock.loaded(
            name,
            2,
            new Supplier<PlateShape>() {
              @Override
              public PlateShape get() {
                return new RailBracket(
                    name,
                    stock.thicknessMm(),
                    seat.baseLengthMm(),
                    lapMm,
                    seat.seat().hole(0, -seat.dropMm()),
                    HoleRules.SHOP);
              }
            },
            lightening(),
            seat.place(print) + "; " + seat.baseReason(print)));
    addWeb(plan);
    plan.add(
        new BoltNeed(
            boltKey,
            seat.seat().stackMm(),
            1,
            seat.bar() + " frame end",
            "joint of "
                + print.length(seat.seat().joint().widthMm())
                + " between two plates of "
                + print.length(stock.thicknessMm())));
  }

  /** Held along its base; the web stands on the middle line. */
  private Lightening lightening() {
    List<Point2> bolts = seat.seat().hole(0, -seat.dropMm()).centres();
    return new Lightening(bolts, new Point2(0, 0), hasWeb() ? stock.thicknessMm() / 2 : 0);
  }

  private double webMm() {
    return seat.dropMm() - seat.seat().reachMm();
  }

  private boolean hasWeb() {
    return webMm() >= LEAST_WEB_MM;
  }

  private void addWeb(WorkPlan.Builder plan) {
    if (!hasWeb()) {
      return;
    }
    double heightMm = webMm();
    String name = seat.bar() + " frame bracket web";
    PlateNeed web =
        stock.strip(
            name,
            1,
            seat.seat().joint().widthMm(),
            heightMm,
            "joins the two sides of the bracket, which reach "
                + print.length(seat.dropMm())
                + " from base to joint; it ends "
                + print.length(seat.seat().reachMm())
                + " short of the joint's centre to clear its barrel"
                + (seat.seat().row().holes() == 1 ? "" : " in the hole nearest the rail"));
    plan.add(web);
    plan.add(
        Seam.onBench(
            name + " to both sides",
            stock.thicknessMm(),
            stock.thicknessMm(),
            heightMm,
            4,
            "both edges of the web, both faces"));
  }
}
