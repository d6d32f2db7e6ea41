package trammel.planning.mounts;

import trammel.engine.geometry.Point3;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Rails;
import trammel.engine.layout.SpringUnit;
import trammel.planning.catalog.AirSpring;
import trammel.planning.catalog.BoltSize;
import trammel.planning.work.BoltNeed;
import trammel.planning.work.OperationNeed;
import trammel.planning.work.PlateNeed;
import trammel.planning.work.WorkPlan;
import trammel.reading.quantity.QuantityPrinter;
import trammel.trade.plates.BoxingPlate;
import trammel.trade.plates.CrossmemberTab;
import trammel.trade.plates.HoleRules;
import trammel.trade.plates.OutriggerGusset;
import trammel.trade.plates.Point2;
import trammel.trade.plates.SeatArm;
import trammel.trade.plates.SpringSeat;
import trammel.trade.plates.TubeBracket;
import trammel.trade.welding.FilletLegs;
import trammel.trade.welding.FilletWeld;
import trammel.trade.welding.WeldPlace;
import trammel.trade.welding.WeldPosition;
import trammel.trade.welding.WeldSeam;

/**
 * The seats of a pair of air springs: below, a round plate on two arms with saddles on the axle
 * tube; above, a round plate under a bridge between the rails, or a plate with two gussets off the
 * outer face of each rail.
 *
 * @param chassis the vehicle
 * @param left the left spring
 * @param right the right spring
 * @param spring the air spring bought
 * @param stock what the seats are made of
 * @param print for the reasons
 */
public record AirSpringMounting(
    Chassis chassis,
    SpringUnit left,
    SpringUnit right,
    AirSpring spring,
    MountStock stock,
    QuantityPrinter print) {
  private static final double INCH_MM = 25.4;

  /** Bolts of an air spring's ends, 3/8 in: common practice, no source. */
  private static final double BOLT_MM = 0.375 * INCH_MM;

  /** End plate of an air spring under the bolt, 1/4 in: common practice, no source. */
  private static final double END_PLATE_MM = INCH_MM / 4;

  /** Room for a washer and a socket between bolt and bridge, 1/2 in. */
  private static final double SOCKET_MM = INCH_MM / 2;

  /** Hole for the air fitting, 3/4 in. */
  private static final double PORT_MM = 0.75 * INCH_MM;

  private static final double ARM_DEPTH_MM = 1.5 * INCH_MM;
  private static final double LONGEST_GUSSET_MM = 4 * INCH_MM;
  private static final double GUSSET_TIP_MM = 0.75 * INCH_MM;
  private static final double GUSSET_CORNER_MM = INCH_MM / 2;
  private static final double BOXING_LEAD_MM = 2 * INCH_MM;
  private static final double BOXING_GAP_MM = INCH_MM / 16;
  private static final int SPRINGS = 2;

  /** True for springs between the rails. */
  public boolean isInboard() {
    return Math.abs(left.frame().yMm()) < chassis.rails().innerFaceMm(left.frame().xMm());
  }

  /** The bridge over the upper seats. */
  public Crossmember bridge() {
    Point3 middle = left.frame().midpoint(right.frame());
    double upMm = middle.zMm() + stock.plateMm() + stock.section().heightMm() / 2;
    return new Crossmember("air spring bridge", chassis.rails(), stock, middle.xMm(), upMm, print);
  }

  /** An arm under a lower seat. */
  public SeatArm arm(SpringUnit unit) {
    Point3 centre = chassis.axleCentre();
    Point2 seat =
        new Point2(
            unit.axle().xMm() - centre.xMm(), unit.axle().zMm() - stock.plateMm() - centre.zMm());
    return new SeatArm(
        "air spring arm",
        stock.plateMm(),
        chassis.axle().tubeDiameterMm(),
        TubeBracket.USUAL_WRAP_RAD,
        seat,
        AirSpringSeats.armEdgeMm(diameterMm()),
        ARM_DEPTH_MM);
  }

  private double diameterMm() {
    return AirSpringSeats.diameterMm(spring);
  }

  private BoltSize bolt() {
    return stock.nearestBolt(BOLT_MM);
  }

  private double holeMm() {
    return bolt().diameterMm() + MountPractice.BOLT_CLEARANCE_MM;
  }

  /** Bolts stand clear of the bridge's tube, whose middle runs over the seat. */
  private double boltCircleMm() {
    return Math.max(diameterMm() / 2, stock.section().widthMm() + 2 * SOCKET_MM);
  }

  private SpringSeat seat(String name, double portMm) {
    return new SpringSeat(
        name,
        stock.plateMm(),
        diameterMm(),
        portMm,
        holeMm(),
        boltCircleMm(),
        2,
        0,
        HoleRules.SHOP);
  }

  /** Adds seats, arms, bridge or outriggers, bolts, welds and work. */
  public void addTo(WorkPlan.Builder plan) {
    addLower(plan);
    if (isInboard()) {
      addBridge(plan);
    } else {
      addOutriggers(plan);
    }
    BoltSize bolt = bolt();
    plan.add(
        new BoltNeed(
            bolt.key(),
            stock.plateMm() + END_PLATE_MM,
            4 * SPRINGS,
            "air spring seats",
            "two a seat through a plate of "
                + print.length(stock.plateMm())
                + " and the spring's end plate; mark the holes off the spring that is delivered"));
    plan.add(
        new OperationNeed(
            "fit-spring-seat", 2 * SPRINGS, "4 seats", "lower and upper seat of both air springs"));
    plan.add(
        new OperationNeed(
            "drill-plate", 4 * SPRINGS, "8 holes", "bolt holes of four seats, two each"));
    plan.add(
        new OperationNeed(
            "fit-air-spring",
            SPRINGS,
            "2 air springs",
            left.name() + " and " + right.name() + ", level at a height of " + height()));
  }

  private String height() {
    return print.length(left.lengthMm());
  }

  private FilletWeld fillet(double otherMm) {
    return FilletWeld.ofLeg(FilletLegs.smallestMm(Math.min(stock.plateMm(), otherMm)));
  }

  private void addLower(WorkPlan.Builder plan) {
    String material = stock.bracket().title();
    String where =
        "lower seat "
            + Words.fromAxle(left.axle(), chassis.axleCentre(), print)
            + ", "
            + print.length(left.axle().yMm())
            + " from the centre plane";
    plan.add(
        new PlateNeed(
            seat("air spring lower seat", 0).plate(material),
            stock.bracket().key(),
            SPRINGS,
            where + "; as wide as the spring, " + print.length(diameterMm())));
    PlatePair.add(
        plan,
        arm(left).plate(material),
        arm(right).plate(material),
        stock.bracket().key(),
        2,
        where
            + "; two arms a side, "
            + print.length(2 * AirSpringSeats.armOffMm(diameterMm()))
            + " apart, carry it clear of the tube");
    plan.add(
        WeldSeam.along(
            "air spring arm to axle tube",
            fillet(chassis.axle().tubeWallMm()),
            arm(left).saddleLengthMm(),
            4 * SPRINGS,
            WeldPosition.HORIZONTAL,
            WeldPlace.VEHICLE,
            "saddle of four arms, both faces"));
    plan.add(
        WeldSeam.along(
            "air spring lower seat to arm",
            fillet(stock.plateMm()),
            AirSpringSeats.armEdgeMm(diameterMm()),
            4 * SPRINGS,
            WeldPosition.FLAT,
            WeldPlace.BENCH,
            "level edge of four arms, both faces"));
    plan.add(
        new OperationNeed(
            "dress-plate", 3 * SPRINGS, "6 plates", "lower seats and arms of the air springs"));
  }

  private void addBridge(WorkPlan.Builder plan) {
    Crossmember bridge = bridge();
    double overAxleMm =
        bridge.upMm()
            - bridge.heightMm() / 2
            - chassis.axleCentre().zMm()
            - chassis.travel().bumpMm();
    bridge.addTo(
        plan,
        "carries the upper seats of both air springs; its underside stays "
            + print.length(overAxleMm)
            + " above the axle's centre at full bump, check the housing against that");
    plan.add(
        new PlateNeed(
            seat("air spring upper seat", PORT_MM).plate(stock.bracket().title()),
            stock.bracket().key(),
            SPRINGS,
            "upper seat "
                + print.length(left.frame().zMm())
                + " above ground at ride, "
                + height()
                + " over the lower one; the middle hole and one through the bridge let the air"
                + " fitting out"));
    plan.add(
        WeldSeam.along(
            "air spring upper seat to bridge",
            fillet(stock.section().wallMm()),
            diameterMm(),
            2 * SPRINGS,
            WeldPosition.FLAT,
            WeldPlace.BENCH,
            "both edges of the tube across each seat"));
    plan.add(
        new OperationNeed("dress-plate", SPRINGS, "2 plates", "upper seats of the air springs"));
    plan.add(
        new OperationNeed(
            "drill-plate", SPRINGS, "2 holes", "through the bridge for each air fitting"));
  }

  private double reachMm(SpringUnit unit) {
    Rails rails = chassis.rails();
    return Math.abs(unit.frame().yMm()) - rails.outerFaceMm(unit.frame().xMm());
  }

  /** The plate over an outboard spring, its base on the rail. */
  public CrossmemberTab outriggerSeat(SpringUnit unit) {
    return new CrossmemberTab(
        "air spring outrigger seat",
        stock.plateMm(),
        diameterMm(),
        reachMm(unit) + diameterMm() / 2,
        diameterMm() / 3,
        holeMm(),
        2,
        diameterMm() / 2,
        1,
        0,
        reachMm(unit),
        HoleRules.SHOP);
  }

  /** A gusset between rail and outrigger seat. */
  public OutriggerGusset outriggerGusset(SpringUnit unit) {
    double railMm =
        Math.min(
            LONGEST_GUSSET_MM,
            chassis.rails().topMm(unit.frame().xMm()) - unit.frame().zMm() - stock.plateMm());
    return new OutriggerGusset(
        "air spring outrigger gusset",
        stock.plateMm(),
        reachMm(unit) + diameterMm() / 4,
        railMm,
        Math.PI / 2,
        GUSSET_TIP_MM,
        GUSSET_CORNER_MM);
  }

  private void addOutriggers(WorkPlan.Builder plan) {
    String material = stock.bracket().title();
    String why =
        "upper seat outboard, "
            + print.length(reachMm(left))
            + " from the rail's outer face and "
            + print.length(left.frame().zMm())
            + " above ground at ride";
    PlatePair.add(
        plan,
        outriggerSeat(left).plate(material),
        outriggerSeat(right).plate(material),
        stock.bracket().key(),
        1,
        why);
    PlatePair.add(
        plan,
        outriggerGusset(left).plate(material),
        outriggerGusset(right).plate(material),
        stock.bracket().key(),
        2,
        why + "; two gussets hold each seat level");
    plan.add(
        WeldSeam.along(
            "air spring outrigger to rail",
            fillet(chassis.rails().wallMm()),
            diameterMm() + outriggerGusset(left).otherLegMm(),
            2 * SPRINGS,
            WeldPosition.VERTICAL,
            WeldPlace.VEHICLE,
            "base of each seat, both faces, and the rail leg of two gussets a side"));
    plan.add(
        WeldSeam.along(
            "air spring outrigger gusset to seat",
            fillet(stock.plateMm()),
            outriggerGusset(left).legMm(),
            2 * SPRINGS,
            WeldPosition.FLAT,
            WeldPlace.BENCH,
            "one face of two gussets a side"));
    plan.add(new OperationNeed("fit-outrigger", SPRINGS, "2 outriggers", why));
    plan.add(
        new OperationNeed(
            "dress-plate", 3 * SPRINGS, "6 plates", "seats and gussets of the outriggers"));
    addOutriggerBoxing(plan);
  }

  private void addOutriggerBoxing(WorkPlan.Builder plan) {
    Rails rails = chassis.rails();
    if (rails.boxed()) {
      return;
    }
    double runMm = diameterMm() + 2 * BOXING_LEAD_MM;
    double thicknessMm = stock.boxing().form().thicknessMm();
    BoxingPlate shape =
        BoxingPlate.even(
            "air spring outrigger boxing plate",
            thicknessMm,
            runMm,
            rails.depthMm() - 2 * rails.wallMm(),
            BOXING_GAP_MM);
    String why =
        "the channel is open behind the outrigger, whose base is "
            + print.length(diameterMm())
            + " long; a plate "
            + print.length(runMm)
            + " long closes it";
    plan.add(
        new PlateNeed(shape.plate(stock.boxing().title()), stock.boxing().key(), SPRINGS, why));
    plan.add(
        WeldSeam.along(
            "air spring outrigger boxing plate to flange",
            FilletWeld.ofLeg(FilletLegs.smallestMm(Math.min(thicknessMm, rails.wallMm()))),
            runMm,
            2 * SPRINGS,
            WeldPosition.HORIZONTAL,
            WeldPlace.VEHICLE,
            "upper and lower edge of both boxing plates"));
    plan.add(new OperationNeed("fit-local-boxing", SPRINGS, "2 plates", why));
    plan.add(new OperationNeed("dress-plate", SPRINGS, "2 boxing plates", why));
  }
}
