package trammel.brackets.barend;

import static trammel.engine.quantity.Amount.angle;
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
import trammel.brackets.bar.HousingRoom;
import trammel.brackets.bar.JointSeat;
import trammel.brackets.bar.UpperSpread;
import trammel.brackets.work.BoltNeed;
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
import trammel.engine.layout.Chassis;
import trammel.engine.layout.End;
import trammel.engine.quantity.Phrase;
import trammel.trade.plates.Arc;
import trammel.trade.plates.Edge;
import trammel.trade.plates.HoleRules;
import trammel.trade.plates.Point2;
import trammel.trade.plates.RailBracket;
import trammel.trade.plates.SaddleArm;
import trammel.trade.plates.TubeBracket;

/**
 * A bridge over the centre housing that carries the axle joints of two upper bars: a deck with two
 * webs, standing on legs with saddles on the axle tube either side of the housing. The housing is
 * usually cast, which takes no bracket by common welding, so nothing is welded to it.
 */
public final class HousingBridge {
  private static final int LEGS_A_SIDE = 2;
  private static final String DECK = "housing bridge deck";
  private static final String WEB = "housing bridge web";
  private static final String LEG = "housing bridge leg";
  private static final Vector3 FORWARD = new Vector3(1, 0, 0);
  private static final Vector3 LEFT = new Vector3(0, 1, 0);
  private static final Vector3 UP = new Vector3(0, 0, 1);

  private final List<Bar> uppers;
  private final HousingRoom room;
  private final JointSeat seat;
  private final BracketStock stock;
  private final Chassis chassis;
  private final String boltKey;

  /**
   * @param bars the two upper bars
   * @param housingHeightMm top of the housing above the axle's centre (mm)
   * @param basis what it is planned on
   */
  public HousingBridge(List<BarMaking> bars, double housingHeightMm, BracketBasis basis) {
    BarMaking first = bars.get(0);
    uppers = bars.stream().map(BarMaking::bar).toList();
    seat = first.axleSeat();
    stock = first.stock();
    chassis = basis.chassis();
    room = new HousingRoom(housingHeightMm, seat);
    boltKey = basis.bolts().of(first.bar().axleJoint().boltDiameterMm()).key();
  }

  /** Its plates, welds, bolts and feet. */
  public WorkPlan plan() {
    double lowestMm = Double.POSITIVE_INFINITY;
    for (Bar upper : uppers) {
      lowestMm = Math.min(lowestMm, upper.axle().zMm() - chassis.axleCentre().zMm());
    }
    room.require(lowestMm);
    WorkPlan.Builder plan = new WorkPlan.Builder();
    for (Bar upper : uppers) {
      addBracket(plan, upper, lowestMm);
    }
    addDeck(plan, lowestMm);
    addWebs(plan, lowestMm);
    addLegs(plan, lowestMm);
    plan.add(legsFoot());
    return plan.build();
  }

  private static double planRad(Bar bar) {
    return Math.abs(bar.axle().to(bar.frame()).planViewRad());
  }

  private double baseMm() {
    return RailBracket.baseByRuleMm(seat.reachMm(), seat.noseMm());
  }

  /** Fore and aft, as wide as the brackets turned in plan (mm). */
  private double deckWidthMm() {
    double widestMm = 0;
    for (Bar upper : uppers) {
      double planRad = planRad(upper);
      double alongMm = baseMm() * Math.cos(planRad) + seat.stackMm() * Math.sin(planRad);
      double offMm = Math.abs(upper.axle().xMm() - chassis.axleCentre().xMm());
      widestMm = Math.max(widestMm, alongMm + 2 * offMm);
    }
    return widestMm;
  }

  /** Distance between the pairs of legs' outer plates across the vehicle (mm). */
  private double deckLengthMm() {
    double overJointsMm = 0;
    for (Bar upper : uppers) {
      overJointsMm =
          Math.max(
              overJointsMm,
              Math.abs(upper.axle().yMm()) + UpperSpread.halfAcrossMm(seat, planRad(upper)));
    }
    double legsMm = chassis.axle().innerLimitMm() + seat.joint().widthMm() + 2 * seat.plateMm();
    if (legsMm > chassis.axle().outerLimitMm()) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "the bridge over the housing needs its legs out to {} from the centre"
                  + " plane; brackets on the axle may reach {}. Choose a narrower joint or"
                  + " another linkage.",
              length(legsMm),
              length(chassis.axle().outerLimitMm())));
    }
    return 2 * Math.max(overJointsMm, legsMm);
  }

  private void addBracket(WorkPlan.Builder plan, Bar bar, double deckRiseMm) {
    double dropMm = bar.axle().zMm() - chassis.axleCentre().zMm() - room.deckTopMm(deckRiseMm);
    double baseMm = RailBracket.baseByRuleMm(dropMm, seat.noseMm());
    String name = bar.name() + " axle bracket side";
    SidePair sides = sides(bar, dropMm);
    plan.add(
        stock.cut(
            name,
            sides.held(),
            () ->
                new RailBracket(
                    name, stock.thicknessMm(), baseMm, 0, seat.hole(0, -dropMm), HoleRules.SHOP),
            Phrase.of(
                "axle joint of {} {} above the bridge's deck, turned {} in plan to face"
                    + " the bar",
                bar.name(),
                length(dropMm),
                angle(planRad(bar)))));
    plan.add(
        Seam.onBench(
            bar.name() + " axle bracket to deck",
            stock.thicknessMm(),
            stock.thicknessMm(),
            sides.bothFaces(name, List.of(DECK), List.of(Seam.edge(-baseMm / 2, 0, baseMm / 2, 0))),
            Phrase.of("two plates, both faces")));
    plan.add(bracketFoot(bar, dropMm));
    plan.add(
        new BoltNeed(
            boltKey,
            seat.stackMm(),
            List.of(sides.bolt(bar.axle(), "", name, BarMaking.jointId(bar, End.AXLE))),
            bar.name() + " axle end",
            Phrase.of(
                "joint of {} between two plates of {}",
                length(seat.joint().widthMm()),
                length(stock.thicknessMm()))));
  }

  /** On the deck, facing the bar; the outlines hang from their base upside down. */
  private SidePair sides(Bar bar, double dropMm) {
    Vector3 heading = heading(bar);
    Vector3 across = new Vector3(-heading.y(), heading.x(), 0);
    return new SidePair(
        bar.axle().plus(UP.scaled(-dropMm)),
        heading,
        UP.scaled(-1),
        bar.axle().yMm() < 0 ? across.scaled(-1) : across,
        seat.joint().widthMm(),
        stock.thicknessMm(),
        Assembly.AXLE,
        "outer",
        "inner");
  }

  private static Vector3 heading(Bar bar) {
    Vector3 along = bar.axle().to(bar.frame());
    return new Vector3(along.x(), along.y(), 0).normalized();
  }

  private WeldedFoot bracketFoot(Bar bar, double dropMm) {
    Vector3 heading = heading(bar);
    double halfMm = RailBracket.baseByRuleMm(dropMm, seat.noseMm()) / 2;
    double apartMm = (seat.joint().widthMm() + stock.thicknessMm()) / 2;
    return new WeldedFoot(
        bar.name() + " axle bracket to deck",
        List.of(bar.name()),
        End.AXLE,
        new FootWelds()
            .line(2, -halfMm, apartMm, halfMm, apartMm)
            .line(2, -halfMm, -apartMm, halfMm, -apartMm)
            .group(),
        new Point3(bar.axle().xMm(), bar.axle().yMm(), bar.axle().zMm() - dropMm),
        heading,
        new Vector3(-heading.y(), heading.x(), 0),
        Seam.legMm(stock.thicknessMm(), stock.thicknessMm()));
  }

  /** Saddles of the four legs on the axle tube, seen from above. */
  private WeldedFoot legsFoot() {
    double radiusMm = chassis.axle().tubeRadiusMm();
    double halfMm = radiusMm * Math.sin(halfWrapRad());
    double innerMm = chassis.axle().innerLimitMm();
    double outerMm = innerMm + seat.joint().widthMm() + seat.plateMm();
    List<String> names = new ArrayList<>(uppers.size());
    for (Bar upper : uppers) {
      names.add(upper.name());
    }
    Point3 centre = chassis.axleCentre();
    return new WeldedFoot(
        "housing bridge legs to axle tube",
        names,
        End.AXLE,
        new FootWelds()
            .line(2, -halfMm, innerMm, halfMm, innerMm)
            .line(2, -halfMm, outerMm, halfMm, outerMm)
            .line(2, -halfMm, -innerMm, halfMm, -innerMm)
            .line(2, -halfMm, -outerMm, halfMm, -outerMm)
            .group(),
        new Point3(centre.xMm(), 0, centre.zMm() + radiusMm * Math.cos(halfWrapRad())),
        new Vector3(1, 0, 0),
        new Vector3(0, 1, 0),
        Seam.legMm(stock.thicknessMm(), chassis.axle().tubeWallMm()));
  }

  private static double halfWrapRad() {
    return TubeBracket.USUAL_WRAP_RAD / 2;
  }

  /** A point by its distances from the axle's centre (mm). */
  private Point3 at(double forwardMm, double leftMm, double upMm) {
    Point3 centre = chassis.axleCentre();
    return new Point3(centre.xMm() + forwardMm, leftMm, centre.zMm() + upMm);
  }

  private void addDeck(WorkPlan.Builder plan, double riseMm) {
    double undersideMm = room.deckTopMm(riseMm) - stock.thicknessMm();
    Place place =
        Place.lying(
            at(deckWidthMm() / 2, -deckLengthMm() / 2, undersideMm),
            LEFT,
            FORWARD.scaled(-1),
            UP,
            stock.thicknessMm());
    plan.add(
        stock.strip(
            DECK,
            List.of(new Held(Assembly.AXLE, place)),
            deckLengthMm(),
            deckWidthMm(),
            Phrase.of(
                "carries both upper brackets {} above the axle's centre and reaches over"
                    + " the legs either side of the housing; the housing itself is usually"
                    + " cast and takes no weld",
                length(room.deckTopMm(riseMm)))));
  }

  /** Between the inner legs, under the front and rear edge of the deck. */
  private void addWebs(WorkPlan.Builder plan, double riseMm) {
    double innerMm = chassis.axle().innerLimitMm();
    double lengthMm = 2 * innerMm;
    double undersideMm = room.deckTopMm(riseMm) - stock.thicknessMm();
    double webMm = room.webMm(riseMm);
    SidePair webs =
        new SidePair(
            at(0, -innerMm, undersideMm - webMm),
            LEFT,
            UP,
            FORWARD,
            deckWidthMm() - 2 * stock.thicknessMm(),
            stock.thicknessMm(),
            Assembly.AXLE,
            "front",
            "rear");
    plan.add(
        stock.strip(
            WEB,
            webs.held(),
            lengthMm,
            webMm,
            Phrase.of(
                "stiffen the deck between the legs; {} of air is left over the housing's"
                    + " top at {}",
                length(HousingRoom.AIR_MM),
                length(room.housingHeightMm()))));
    plan.add(
        Seam.onBench(
            "housing bridge webs to deck",
            stock.thicknessMm(),
            stock.thicknessMm(),
            webs.bothFaces(WEB, List.of(DECK), List.of(Seam.edge(0, webMm, lengthMm, webMm))),
            Phrase.of("front and rear web, both faces")));
    List<SeamRun> ends = new ArrayList<>(4);
    for (int web = 0; web < 2; web++) {
      for (boolean left : new boolean[] {true, false}) {
        double xMm = left ? lengthMm : 0;
        ends.add(
            new SeamRun(
                webs.ids(WEB).get(web),
                Held.id(LEG, left ? "left inner" : "right inner"),
                FlatPath.line(webs.face(2 * web), xMm, 0, xMm, webMm)));
      }
    }
    plan.add(
        Seam.onBench(
            "housing bridge webs to legs",
            stock.thicknessMm(),
            stock.thicknessMm(),
            ends,
            Phrase.of("both ends of both webs")));
  }

  /** The legs of one side: the inner one against the ends of the webs. */
  private SidePair legs(boolean left) {
    double middleMm =
        chassis.axle().innerLimitMm() + stock.thicknessMm() + seat.joint().widthMm() / 2;
    String side = left ? "left " : "right ";
    return new SidePair(
        at(0, left ? middleMm : -middleMm, 0),
        UP,
        FORWARD,
        LEFT.scaled(left ? 1 : -1),
        seat.joint().widthMm(),
        stock.thicknessMm(),
        Assembly.AXLE,
        side + "outer",
        side + "inner");
  }

  private void addLegs(WorkPlan.Builder plan, double riseMm) {
    double reachMm = room.deckTopMm(riseMm) - stock.thicknessMm();
    double widthMm = deckWidthMm();
    double tubeMm = chassis.axle().tubeDiameterMm();
    List<Held> places = new ArrayList<>(2 * LEGS_A_SIDE);
    List<SeamRun> saddles = new ArrayList<>(4 * LEGS_A_SIDE);
    List<SeamRun> ends = new ArrayList<>(4 * LEGS_A_SIDE);
    Edge saddle =
        Arc.about(
            new Point2(0, 0),
            tubeMm / 2,
            -TubeBracket.USUAL_WRAP_RAD / 2,
            TubeBracket.USUAL_WRAP_RAD);
    for (boolean left : new boolean[] {true, false}) {
      SidePair legs = legs(left);
      places.addAll(legs.held());
      saddles.addAll(legs.bothFaces(LEG, List.of(VehicleParts.AXLE_TUBE), List.of(saddle)));
      ends.addAll(
          legs.bothFaces(
              LEG, List.of(DECK), List.of(Seam.edge(reachMm, -widthMm / 2, reachMm, widthMm / 2))));
    }
    plan.add(
        stock.cut(
            LEG,
            places,
            () ->
                new SaddleArm(
                    LEG,
                    stock.thicknessMm(),
                    tubeMm,
                    TubeBracket.USUAL_WRAP_RAD,
                    reachMm,
                    -widthMm / 2,
                    widthMm / 2),
            Phrase.of(
                "stand on the axle tube of {} either side of the housing, the inner pair"
                    + " at {} from the centre plane, and reach {} up to the deck",
                length(tubeMm),
                length(chassis.axle().innerLimitMm()),
                length(reachMm))));
    plan.add(
        Seam.onBench(
            LEG + " to axle tube",
            stock.thicknessMm(),
            chassis.axle().tubeWallMm(),
            saddles,
            Phrase.of(
                "saddle of {} on the tube, four legs, both faces; welded with the axle"
                    + " out, a little at a time on alternate sides so that the tubes stay"
                    + " straight",
                angle(TubeBracket.USUAL_WRAP_RAD, 0))));
    plan.add(
        Seam.onBench(
            LEG + " to deck",
            stock.thicknessMm(),
            stock.thicknessMm(),
            ends,
            Phrase.of("four legs, both faces")));
  }
}
