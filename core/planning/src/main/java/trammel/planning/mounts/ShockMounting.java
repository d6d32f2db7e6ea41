package trammel.planning.mounts;

import java.util.List;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.ShockUnit;
import trammel.planning.catalog.BoltSize;
import trammel.planning.catalog.Shock;
import trammel.planning.work.BoltNeed;
import trammel.planning.work.OperationNeed;
import trammel.planning.work.PartNeed;
import trammel.planning.work.PlateNeed;
import trammel.planning.work.WorkPlan;
import trammel.reading.quantity.QuantityPrinter;
import trammel.trade.plates.HoleRules;
import trammel.trade.plates.MockUpStrut;
import trammel.trade.plates.PickUpRow;
import trammel.trade.plates.Plate;
import trammel.trade.plates.Point2;
import trammel.trade.plates.ShockTab;
import trammel.trade.plates.TubeBracket;
import trammel.trade.welding.FilletLegs;
import trammel.trade.welding.FilletWeld;
import trammel.trade.welding.WeldPlace;
import trammel.trade.welding.WeldPosition;
import trammel.trade.welding.WeldSeam;

/**
 * The mounts of a pair of shocks: a pair of brackets with saddles on the axle tube for each, a
 * crossmember beyond their upper mounts, and a pair of tabs on its face for each. Brackets and tabs
 * stand square to the shock's lean.
 *
 * @param what what the shop calls such a shock
 * @param chassis the vehicle
 * @param left the left shock
 * @param right the right shock
 * @param shock the shock bought
 * @param radiusMm largest outside radius of shock and spring (mm)
 * @param stock what the mounts are made of
 * @param print for the reasons
 */
public record ShockMounting(
    String what,
    Chassis chassis,
    ShockUnit left,
    ShockUnit right,
    Shock shock,
    double radiusMm,
    MountStock stock,
    QuantityPrinter print) {
  private static final Vector3 UPRIGHT = new Vector3(0, 0, 1);
  private static final int SHOCKS = 2;
  private static final int MOUNTS = 4;

  /** The crossmember: past the upper mounts, away from the axle, with air to the spring. */
  public Crossmember crossmember() {
    Point3 middle = left.frame().midpoint(right.frame());
    double offMm = reachMm() + stock.section().widthMm() / 2;
    double forwardMm = middle.xMm() + (middle.xMm() < 0 ? -offMm : offMm);
    return new Crossmember(
        what + " crossmember", chassis.rails(), stock, forwardMm, middle.zMm(), print);
  }

  /** From the upper mount to the crossmember's face (mm). */
  public double reachMm() {
    double noseMm = HoleRules.SHOP.edgeFactor() * holeMm();
    return Math.max(radiusMm + MountPractice.MOVING_AIR_MM, noseMm);
  }

  private double holeMm() {
    return shock.boltMm() + MountPractice.BOLT_CLEARANCE_MM;
  }

  /** Eye between its two plates: the grip of the bolts (mm). */
  public double gripMm() {
    return shock.eyeWidthMm() + 2 * stock.plateMm();
  }

  /** A bracket on the axle tube, as seen from the left side. */
  public TubeBracket lowerBracket(ShockUnit unit) {
    Point3 centre = chassis.axleCentre();
    Point2 hole = new Point2(unit.axle().xMm() - centre.xMm(), unit.axle().zMm() - centre.zMm());
    return new TubeBracket(
        what + " lower bracket",
        stock.plateMm(),
        chassis.axle().tubeDiameterMm(),
        0,
        TubeBracket.USUAL_WRAP_RAD,
        PickUpRow.single(hole, holeMm()),
        HoleRules.SHOP);
  }

  /** A tab on the crossmember's face. */
  public ShockTab upperTab(ShockUnit unit) {
    Crossmember crossmember = crossmember();
    double faceMm =
        Math.abs(crossmember.forwardMm() - unit.frame().xMm()) - crossmember.widthMm() / 2;
    return new ShockTab(
        what + " upper tab",
        stock.plateMm(),
        crossmember.heightMm(),
        faceMm,
        holeMm(),
        HoleRules.SHOP.edgeFactor() * holeMm(),
        HoleRules.SHOP);
  }

  /** Adds shocks, mounts, bolts, welds and work. */
  public void addTo(WorkPlan.Builder plan) {
    plan.add(new PartNeed(shock.key(), SHOCKS, shockReason()));
    crossmember()
        .addTo(
            plan,
            "carries the upper mounts of both "
                + what
                + "s, "
                + print.length(reachMm())
                + " clear of their middle");
    addLower(plan);
    addUpper(plan);
    addMockUp(plan);
    addBolts(plan);
    plan.add(
        new OperationNeed(
            "fit-shock-mount",
            MOUNTS,
            "4 mounts",
            "lower and upper mount of both " + what + "s, square to a lean of " + lean()));
    plan.add(
        new OperationNeed(
            "drill-plate", 2 * MOUNTS, "8 holes", "bolt holes of the " + what + " mounts"));
    plan.add(
        new OperationNeed(
            "dress-plate", 2 * MOUNTS, "8 plates", "brackets and tabs of the " + what + "s"));
  }

  private String lean() {
    return print.angle(left.axle().to(left.frame()).angleToLineRad(UPRIGHT));
  }

  private String shockReason() {
    return left.name()
        + " and "
        + right.name()
        + ": "
        + print.length(left.lengthMm())
        + " eye to eye at ride, "
        + print.length(shock.closedMm())
        + " closed and "
        + print.length(shock.openMm())
        + " open";
  }

  private void addLower(WorkPlan.Builder plan) {
    Plate leftPlate = lowerBracket(left).plate(stock.bracket().title());
    Plate rightPlate = lowerBracket(right).plate(stock.bracket().title());
    PlatePair.add(
        plan,
        leftPlate,
        rightPlate,
        stock.bracket().key(),
        2,
        "lower mount "
            + Words.fromAxle(left.axle(), chassis.axleCentre(), print)
            + ", "
            + print.length(left.axle().yMm())
            + " from the centre plane; two plates a side");
    double thinnerMm = Math.min(stock.plateMm(), chassis.axle().tubeWallMm());
    plan.add(
        WeldSeam.along(
            what + " lower bracket to axle tube",
            FilletWeld.ofLeg(FilletLegs.smallestMm(thinnerMm)),
            lowerBracket(left).saddleLengthMm(),
            2 * MOUNTS,
            WeldPosition.HORIZONTAL,
            WeldPlace.VEHICLE,
            "saddle of four plates, both faces"));
  }

  private void addUpper(WorkPlan.Builder plan) {
    Plate leftPlate = upperTab(left).plate(stock.bracket().title());
    Plate rightPlate = upperTab(right).plate(stock.bracket().title());
    PlatePair.add(
        plan,
        leftPlate,
        rightPlate,
        stock.bracket().key(),
        2,
        "upper mount "
            + print.length(upperTab(left).holeHeightMm())
            + " off the crossmember's face, so that the "
            + what
            + " of "
            + print.length(2 * radiusMm)
            + " diameter clears it; "
            + print.length(left.frame().yMm())
            + " from the centre plane; two tabs a side");
    double thinnerMm = Math.min(stock.plateMm(), stock.section().wallMm());
    plan.add(
        WeldSeam.along(
            what + " upper tab to crossmember",
            FilletWeld.ofLeg(FilletLegs.smallestMm(thinnerMm)),
            upperTab(left).baseWidthMm(),
            2 * MOUNTS,
            WeldPosition.FLAT,
            WeldPlace.BENCH,
            "base of four tabs, both faces"));
  }

  /** A flat strut in place of each shock for the fit-up, used as it comes off the table. */
  private void addMockUp(WorkPlan.Builder plan) {
    List<PlateNeed> struts =
        PlatePair.of(
            mockUp(left).plate(stock.bracket().title()),
            mockUp(right).plate(stock.bracket().title()),
            stock.bracket().key(),
            1,
            "holds the axle at ride height in place of the "
                + what
                + " while brackets are set, "
                + print.length(left.lengthMm())
                + " from hole to hole; it carries no vehicle, the stands do");
    for (PlateNeed strut : struts) {
      plan.add(strut.asTool());
    }
  }

  /** The strut that stands in for a shock. */
  public MockUpStrut mockUp(ShockUnit unit) {
    return new MockUpStrut(
        what + " mock-up strut",
        stock.plateMm(),
        unit.lengthMm(),
        holeMm(),
        HoleRules.SHOP.edgeFactor() * holeMm(),
        HoleRules.SHOP);
  }

  private void addBolts(WorkPlan.Builder plan) {
    BoltSize bolt = stock.bolt(shock.boltMm());
    plan.add(
        new BoltNeed(
            bolt.key(),
            gripMm(),
            MOUNTS,
            what + " lower and upper mounts",
            "one a mount through an eye of "
                + print.length(shock.eyeWidthMm())
                + " and two plates of "
                + print.length(stock.plateMm())));
  }
}
