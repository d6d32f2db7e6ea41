package trammel.brackets.mount;

import static trammel.engine.quantity.Amount.angle;
import static trammel.engine.quantity.Amount.length;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import trammel.assembly.Assembly;
import trammel.assembly.FlatPath;
import trammel.assembly.Held;
import trammel.assembly.Place;
import trammel.assembly.SeamRun;
import trammel.brackets.material.BoltSize;
import trammel.brackets.material.Shock;
import trammel.brackets.work.BoltNeed;
import trammel.brackets.work.Bolting;
import trammel.brackets.work.BoughtPiece;
import trammel.brackets.work.LoadedMember;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.PartNeed;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.Seam;
import trammel.brackets.work.SidePair;
import trammel.brackets.work.VehicleParts;
import trammel.brackets.work.WorkPlan;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.ShockUnit;
import trammel.engine.quantity.Phrase;
import trammel.trade.plates.HoleRules;
import trammel.trade.plates.MockUpStrut;
import trammel.trade.plates.PickUpRow;
import trammel.trade.plates.Plate;
import trammel.trade.plates.Point2;
import trammel.trade.plates.ShockTab;
import trammel.trade.plates.TubeBracket;
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
 */
public record ShockMounting(
    String what,
    Chassis chassis,
    ShockUnit left,
    ShockUnit right,
    Shock shock,
    double radiusMm,
    MountStock stock) {
  private static final Vector3 FORWARD = new Vector3(1, 0, 0);
  private static final Vector3 UPRIGHT = new Vector3(0, 0, 1);
  private static final int SHOCKS = 2;
  private static final int MOUNTS = 4;

  /** The crossmember: past the upper mounts, away from the axle, with air to the spring. */
  public Crossmember crossmember() {
    Point3 middle = left.frame().midpoint(right.frame());
    double offMm = reachMm() + stock.section().widthMm() / 2;
    double forwardMm = middle.xMm() + (middle.xMm() < 0 ? -offMm : offMm);
    return new Crossmember(what + " crossmember", chassis.rails(), stock, forwardMm, middle.zMm());
  }

  /** The same with the crossmember on other legs. */
  public ShockMounting on(Legs legs) {
    return new ShockMounting(what, chassis, left, right, shock, radiusMm, stock.on(legs));
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

  /**
   * A plate of a lower mount. The plates lean with the shock while the tube lies level, so that the
   * outer one meets the tube lower than the inner one and has its hole higher above it.
   */
  public TubeBracket lowerBracket(ShockUnit unit, boolean outer) {
    return new TubeBracket(
        lowerName(outer),
        stock.plateMm(),
        chassis.axle().tubeDiameterMm(),
        0,
        TubeBracket.USUAL_WRAP_RAD,
        PickUpRow.single(lowerHole(unit, outer), holeMm()),
        HoleRules.SHOP);
  }

  private String lowerName(boolean outer) {
    return what + " lower bracket " + (outer ? "outer" : "inner");
  }

  /** Its hole from where the tube's middle meets its own plane. */
  private Point2 lowerHole(ShockUnit unit, boolean outer) {
    Point3 centre = chassis.axleCentre();
    double upMm = (unit.axle().zMm() - centre.zMm()) / upright(unit).z();
    return new Point2(unit.axle().xMm() - centre.xMm(), upMm + offMm(outer) * leanRise(unit));
  }

  /** From the middle of the eye to the middle of a plate, outwards positive (mm). */
  private double offMm(boolean outer) {
    return (outer ? 1 : -1) * (shock.eyeWidthMm() + stock.plateMm()) / 2;
  }

  /** Rise of the bolt across the vehicle, outwards, per length along the leaning plates' normal. */
  private static double leanRise(ShockUnit unit) {
    return across(unit).z() / upright(unit).z();
  }

  /** A tab on the crossmember's face. */
  public ShockTab upperTab(ShockUnit unit) {
    Crossmember crossmember = crossmember();
    double faceMm =
        Math.abs(crossmember.forwardMm() - unit.frame().xMm()) - crossmember.widthMm() / 2;
    return new ShockTab(
        what + " upper tab",
        stock.plateMm(),
        crossmember.flatMm(),
        faceMm,
        holeMm(),
        HoleRules.SHOP.edgeFactor() * holeMm(),
        HoleRules.SHOP);
  }

  /** Adds shocks, mounts, bolts, welds and work. */
  public void addTo(WorkPlan.Builder plan) {
    plan.add(PartNeed.placed(shock.key(), List.of(piece(left), piece(right)), shockReason()));
    crossmember()
        .addTo(
            plan,
            Phrase.of(
                "carries the upper mounts of both {}s, {} clear of their middle",
                what,
                length(reachMm())));
    addLower(plan);
    addUpper(plan);
    addMockUp(plan);
    addBolts(plan);
    addLoads(plan);
    plan.add(
        new OperationNeed(
            "fit-shock-mount",
            MOUNTS,
            "4 mounts",
            Phrase.of("lower and upper mount of both {}s, square to a lean of {}", what, lean())));
    plan.add(
        new OperationNeed(
            "drill-plate", 2 * MOUNTS, "8 holes", Phrase.of("bolt holes of the {} mounts", what)));
    plan.add(
        new OperationNeed(
            "dress-plate",
            2 * MOUNTS,
            "8 plates",
            Phrase.of("brackets and tabs of the {}s", what)));
  }

  /** What the shocks load: the crossmember, its tabs and the brackets on the axle. */
  private void addLoads(WorkPlan.Builder plan) {
    Crossmember crossmember = crossmember();
    double tabMm = upperTab(left).holeHeightMm();
    crossmember.addLoads(
        plan,
        left.name(),
        right.name(),
        Math.abs(left.frame().yMm()),
        tabMm + crossmember.widthMm() / 2,
        Math.abs(left.frame().yMm() - left.axle().yMm())
            / Math.abs(left.frame().zMm() - left.axle().zMm()));
    double yieldMPa = stock.bracket().yieldMPa();
    double perTab = tabMm / 2;
    double rootMm = Math.sin(TubeBracket.USUAL_WRAP_RAD / 2) * chassis.axle().tubeDiameterMm();
    for (ShockUnit unit : List.of(left, right)) {
      plan.add(
          new LoadedMember(
              upperName(unit),
              Map.of(
                  unit.name(),
                  MemberStress.plate(perTab, stock.plateMm(), upperTab(unit).baseWidthMm())),
              yieldMPa,
              "two tabs bent at the crossmember's face"));
      Point2 hole = lowerHole(unit, true);
      double leverMm =
          Math.hypot(hole.xMm(), hole.yMm())
              - chassis.axle().tubeRadiusMm() * Math.cos(TubeBracket.USUAL_WRAP_RAD / 2);
      plan.add(
          new LoadedMember(
              lowerId(unit, true),
              Map.of(unit.name(), MemberStress.plate(leverMm / 2, stock.plateMm(), rootMm)),
              yieldMPa,
              "two plates bent at the axle tube"));
      addLoadedWelds(plan, unit);
    }
  }

  private void addLoadedWelds(WorkPlan.Builder plan, ShockUnit unit) {
    Vector3 push = unit.axle().to(unit.frame()).normalized();
    plan.add(
        new MountWeld(
                "weld of " + PlatePair.name(what + " lower bracket", isLeft(unit)),
                saddleRuns(unit),
                saddleFillet())
            .under(unit.name(), push, unit.axle())
            .member("two saddles on the axle tube"));
    plan.add(
        new MountWeld("weld of " + upperName(unit), baseRuns(unit), baseFillet())
            .under(unit.name(), push, unit.frame())
            .member("two tabs on the crossmember's face"));
  }

  private Phrase lean() {
    return Phrase.of("{}", angle(left.axle().to(left.frame()).angleToLineRad(UPRIGHT)));
  }

  private Phrase shockReason() {
    return Phrase.of(
        "{} and {}: {} eye to eye at ride, {} closed and {} open",
        left.name(),
        right.name(),
        length(left.lengthMm()),
        length(shock.closedMm()),
        length(shock.openMm()));
  }

  private void addLower(WorkPlan.Builder plan) {
    for (boolean outer : new boolean[] {true, false}) {
      PlatePair.add(
          plan,
          lowerBracket(left, outer).plate(stock.bracket().title()),
          lowerBracket(right, outer).plate(stock.bracket().title()),
          stock.bracket().key(),
          List.of(new Held(Assembly.AXLE, lowerPlace(left, outer))),
          List.of(new Held(Assembly.AXLE, lowerPlace(right, outer))),
          Phrase.of(
              "lower mount {}, {} from the centre plane; two plates a side, which lean"
                  + " with it",
              Words.fromAxle(left.axle(), chassis.axleCentre()),
              length(left.axle().yMm())));
    }
    plan.add(
        WeldSeam.along(
            what + " lower bracket to axle tube",
            saddleFillet(),
            Stream.of(left, right).flatMap(unit -> saddleRuns(unit).stream()).toList(),
            WeldPosition.HORIZONTAL,
            WeldPlace.VEHICLE,
            Phrase.of("saddle of four plates, both faces")));
  }

  private void addUpper(WorkPlan.Builder plan) {
    Plate leftPlate = upperTab(left).plate(stock.bracket().title());
    Plate rightPlate = upperTab(right).plate(stock.bracket().title());
    PlatePair.add(
        plan,
        leftPlate,
        rightPlate,
        stock.bracket().key(),
        upperSides(left).held(),
        upperSides(right).held(),
        Phrase.of(
            "upper mount {} off the crossmember's face, so that the {} of {}"
                + " diameter clears it; {} from the centre plane; two tabs a side",
            length(upperTab(left).holeHeightMm()),
            what,
            length(2 * radiusMm),
            length(left.frame().yMm())));
    plan.add(
        WeldSeam.along(
            what + " upper tab to crossmember",
            baseFillet(),
            Stream.of(left, right).flatMap(unit -> baseRuns(unit).stream()).toList(),
            WeldPosition.FLAT,
            WeldPlace.BENCH,
            Phrase.of("round the base of each of four tabs")));
  }

  /** A flat strut in place of each shock for the fit-up, used as it comes off the table. */
  private void addMockUp(WorkPlan.Builder plan) {
    List<PlateNeed> struts =
        PlatePair.of(
            mockUp(left).plate(stock.bracket().title()),
            mockUp(right).plate(stock.bracket().title()),
            stock.bracket().key(),
            List.of(new Held(Assembly.FRAME, mockUpPlace(left))),
            List.of(new Held(Assembly.FRAME, mockUpPlace(right))),
            Phrase.of(
                "holds the axle at ride height in place of the {} while brackets are"
                    + " set, {} from hole to hole; it carries no vehicle, the stands do",
                what,
                length(left.lengthMm())));
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
    BoltSize bolt = stock.bolts().of(shock.boltMm());
    plan.add(
        new BoltNeed(
            bolt.key(),
            gripMm(),
            boltings(),
            what + " lower and upper mounts",
            Phrase.of(
                "one a mount through an eye of {} and two plates of {}",
                length(shock.eyeWidthMm()),
                length(stock.plateMm()))));
  }

  /** Across the shock and the vehicle: the bolts and the plates' faces, square to its lean. */
  private static Vector3 across(ShockUnit unit) {
    Vector3 leftward = unit.axle().to(unit.frame()).cross(FORWARD).normalized();
    return unit.axle().yMm() < 0 ? leftward.scaled(-1) : leftward;
  }

  /** Up along the plates, which lean as the shock does. */
  private static Vector3 upright(ShockUnit unit) {
    Vector3 up = FORWARD.cross(across(unit));
    return up.z() < 0 ? up.scaled(-1) : up;
  }

  private static boolean isLeft(ShockUnit unit) {
    return unit.axle().yMm() > 0;
  }

  /** A plate of a lower mount, its outline about where the tube's middle meets its plane. */
  private Place lowerPlace(ShockUnit unit, boolean outer) {
    Point2 hole = lowerHole(unit, outer);
    double innerMm = offMm(outer) - stock.plateMm() / 2;
    Point3 origin =
        unit.axle()
            .plus(across(unit).scaled(innerMm))
            .plus(FORWARD.scaled(-hole.xMm()))
            .plus(upright(unit).scaled(-hole.yMm()));
    return Place.lying(origin, FORWARD, upright(unit), across(unit), stock.plateMm());
  }

  private SidePair sides(Point3 origin, Vector3 x, Vector3 y, ShockUnit unit, String carrier) {
    return new SidePair(
        origin, x, y, across(unit), shock.eyeWidthMm(), stock.plateMm(), carrier, "outer", "inner");
  }

  /** The tabs of an upper mount, their outlines from the middle of the base. */
  private SidePair upperSides(ShockUnit unit) {
    double towards = crossmember().forwardMm() < unit.frame().xMm() ? 1 : -1;
    Vector3 away = FORWARD.scaled(towards);
    Point3 base = unit.frame().plus(away.scaled(-upperTab(unit).holeHeightMm()));
    return new SidePair(
        base,
        upright(unit),
        away,
        across(unit),
        shock.eyeWidthMm(),
        stock.plateMm(),
        Assembly.FRAME,
        "outer",
        "inner");
  }

  private String lowerId(ShockUnit unit, boolean outer) {
    return PlatePair.name(lowerName(outer), isLeft(unit));
  }

  private String upperName(ShockUnit unit) {
    return PlatePair.name(what + " upper tab", isLeft(unit));
  }

  private FilletWeld saddleFillet() {
    return FilletWeld.ofLeg(Seam.legMm(stock.plateMm(), chassis.axle().tubeWallMm()));
  }

  private FilletWeld baseFillet() {
    return FilletWeld.ofLeg(Seam.legMm(stock.plateMm(), stock.section().wallMm()));
  }

  private List<SeamRun> saddleRuns(ShockUnit unit) {
    List<SeamRun> runs = new ArrayList<>(MOUNTS);
    for (boolean outer : new boolean[] {true, false}) {
      Point2 hole = lowerHole(unit, outer);
      FlatPath face =
          FlatPath.arc(
              lowerPlace(unit, outer),
              chassis.axle().tubeRadiusMm(),
              Math.atan2(hole.yMm(), hole.xMm()),
              TubeBracket.USUAL_WRAP_RAD);
      String id = lowerId(unit, outer);
      runs.add(new SeamRun(id, VehicleParts.AXLE_TUBE, face));
      runs.add(new SeamRun(id, VehicleParts.AXLE_TUBE, face.shifted(stock.plateMm())));
    }
    return runs;
  }

  private List<SeamRun> baseRuns(ShockUnit unit) {
    return upperSides(unit)
        .roundBases(upperName(unit), crossmember().name(), upperTab(unit).baseWidthMm());
  }

  private List<Bolting> boltings() {
    List<Bolting> boltings = new ArrayList<>(MOUNTS);
    for (ShockUnit unit : List.of(left, right)) {
      String side = isLeft(unit) ? "left" : "right";
      Point3 head = unit.axle().plus(across(unit).scaled(gripMm() / 2));
      boltings.add(
          new Bolting(
              new Held(side + " lower", Assembly.AXLE, Place.along(head, across(unit).scaled(-1))),
              List.of(lowerId(unit, true), unit.name(), lowerId(unit, false))));
      boltings.add(
          upperSides(unit).bolt(unit.frame(), side + " upper", upperName(unit), unit.name()));
    }
    return boltings;
  }

  /** Along the shock, in its place. */
  private Place mockUpPlace(ShockUnit unit) {
    Vector3 along = unit.axle().to(unit.frame()).normalized();
    return Place.of(unit.axle(), along, across(unit).cross(along))
        .shifted(0, 0, -stock.plateMm() / 2);
  }

  private BoughtPiece piece(ShockUnit unit) {
    return new BoughtPiece(
        unit.name(),
        unit.name(),
        ShockForm.place(unit, across(unit)),
        ShockForm.solid(unit, shock),
        List.of());
  }
}
