package trammel.brackets.barend;

import static trammel.engine.quantity.Amount.length;

import java.util.ArrayList;
import java.util.List;
import trammel.assembly.Assembly;
import trammel.assembly.Held;
import trammel.assembly.Place;
import trammel.assembly.SeamRun;
import trammel.brackets.bar.BarMaking;
import trammel.brackets.work.BoltNeed;
import trammel.brackets.work.BracketStock;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.Seam;
import trammel.brackets.work.SidePair;
import trammel.brackets.work.WorkPlan;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.End;
import trammel.engine.quantity.Phrase;
import trammel.trade.plates.HoleRules;
import trammel.trade.plates.Lightening;
import trammel.trade.plates.Point2;
import trammel.trade.plates.RailBracket;

/** The two plates between which a frame joint is bolted, and the web that stiffens long ones. */
final class FrameBracketPlates {
  /** A shorter web is not worth cutting, 1 in: common practice, no source. */
  private static final double LEAST_WEB_MM = 25.4;

  private final RailSeat seat;
  private final BracketStock stock;
  private final SidePair sides;
  private final boolean outside;

  /**
   * @param heading the way the bracket faces in plan, a unit vector
   * @param outside true for a bracket outside the rail: its bolt's head belongs on the inner side
   */
  FrameBracketPlates(RailSeat seat, BracketStock stock, Vector3 heading, boolean outside) {
    this.seat = seat;
    this.stock = stock;
    Vector3 across = new Vector3(-heading.y(), heading.x(), 0);
    sides =
        new SidePair(
            seat.base(),
            heading,
            seat.towardsRail(),
            seat.left() ? across : across.scaled(-1),
            seat.seat().joint().widthMm(),
            stock.thicknessMm(),
            Assembly.FRAME,
            "outer",
            "inner");
    this.outside = outside;
  }

  /**
   * Adds plates, web and bolt.
   *
   * @param lapMm how far the plates go on beyond the base along the rail's face
   */
  void addTo(WorkPlan.Builder plan, double lapMm, String boltKey) {
    String name = name();
    plan.add(
        stock.loaded(
            name,
            sides.held(),
            () ->
                new RailBracket(
                    name,
                    stock.thicknessMm(),
                    seat.baseLengthMm(),
                    lapMm,
                    seat.seat().hole(0, -seat.dropMm()),
                    HoleRules.SHOP),
            lightening(),
            Phrase.of("{}; {}", seat.place(), seat.baseReason())));
    addWeb(plan);
    plan.add(
        new BoltNeed(
            boltKey,
            seat.seat().stackMm(),
            List.of(
                sides.bolt(
                    seat.joint(), "", name, BarMaking.jointId(seat.bar(), End.FRAME), !outside)),
            seat.bar() + " frame end",
            Phrase.of(
                "joint of {} between two plates of {}",
                length(seat.seat().joint().widthMm()),
                length(stock.thicknessMm()))));
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
            List.of(new Held(Assembly.FRAME, webPlace(heightMm))),
            seat.seat().joint().widthMm(),
            heightMm,
            Phrase.of(
                "joins the two sides of the bracket, which reach {} from base to joint;"
                    + " it ends {} short of the joint's centre to clear its barrel{}",
                length(seat.dropMm()),
                length(seat.seat().reachMm()),
                seat.seat().row().holes() == 1 ? "" : " in the hole nearest the rail"));
    plan.add(web);
    plan.add(
        Seam.onBench(
            name + " to both sides",
            stock.thicknessMm(),
            stock.thicknessMm(),
            webRuns(name, heightMm),
            Phrase.of("both edges of the web, both faces")));
  }

  /** Square to both sides on their middle line, from the base down to the joint. */
  private Place webPlace(double heightMm) {
    double widthMm = sides.apartMm();
    Point3 corner =
        sides
            .middle()
            .plus(sides.towards().scaled(-widthMm / 2))
            .plus(sides.y().scaled(-heightMm))
            .plus(sides.x().scaled(-stock.thicknessMm() / 2));
    return Place.lying(corner, sides.towards(), sides.y(), sides.x(), stock.thicknessMm());
  }

  private List<SeamRun> webRuns(String web, double heightMm) {
    double halfMm = stock.thicknessMm() / 2;
    List<SeamRun> runs = new ArrayList<>(4);
    for (double xMm : new double[] {-halfMm, halfMm}) {
      runs.addAll(sides.innerFaces(name(), web, List.of(Seam.edge(xMm, -heightMm, xMm, 0))));
    }
    return runs;
  }

  /** The two sides. */
  SidePair sides() {
    return sides;
  }

  /** Their name in the lists. */
  String name() {
    return seat.bar() + " frame bracket side";
  }
}
