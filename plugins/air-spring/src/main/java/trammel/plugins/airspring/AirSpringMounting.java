package trammel.plugins.airspring;

import static trammel.engine.quantity.Amount.length;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import trammel.assembly.Assembly;
import trammel.assembly.FlatPath;
import trammel.assembly.Held;
import trammel.assembly.Place;
import trammel.assembly.SeamRun;
import trammel.assembly.Solid;
import trammel.assembly.Turned;
import trammel.brackets.material.BoltSize;
import trammel.brackets.mount.Crossmember;
import trammel.brackets.mount.MemberStress;
import trammel.brackets.mount.MountPractice;
import trammel.brackets.mount.MountStock;
import trammel.brackets.mount.MountWeld;
import trammel.brackets.mount.PlatePair;
import trammel.brackets.mount.Words;
import trammel.brackets.work.BoltNeed;
import trammel.brackets.work.Bolting;
import trammel.brackets.work.BoughtPiece;
import trammel.brackets.work.BracketStock;
import trammel.brackets.work.LoadedMember;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.RailClosing;
import trammel.brackets.work.RailMount;
import trammel.brackets.work.Seam;
import trammel.brackets.work.SidePair;
import trammel.brackets.work.VehicleParts;
import trammel.brackets.work.WorkPlan;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Rails;
import trammel.engine.layout.SpringUnit;
import trammel.engine.quantity.Amount;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.AirSpring;
import trammel.trade.plates.CrossmemberTab;
import trammel.trade.plates.Edge;
import trammel.trade.plates.HoleRules;
import trammel.trade.plates.OutriggerGusset;
import trammel.trade.plates.Point2;
import trammel.trade.plates.SeatArm;
import trammel.trade.plates.SpringSeat;
import trammel.trade.plates.Straight;
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
 */
record AirSpringMounting(
    Chassis chassis, SpringUnit left, SpringUnit right, AirSpring spring, MountStock stock) {
  private static final Vector3 FORWARD = new Vector3(1, 0, 0);
  private static final Vector3 UP = new Vector3(0, 0, 1);
  private static final double INCH_MM = 25.4;
  private static final String LOWER_SEAT = "air spring lower seat";
  private static final String UPPER_SEAT = "air spring upper seat";
  private static final String OUTRIGGER_SEAT = "air spring outrigger seat";
  private static final String GUSSET = "air spring outrigger gusset";
  private static final String BOXING = "air spring outrigger boxing plate";

  /** Radius of a spring's end plates as a share of its own: common practice, no source. */
  private static final double END_SHARE = 0.8;

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
  private static final String KNEE = "air spring outrigger knee";

  /** A knee's legs, tip and corner, and what it stays over the rail's edge: no source. */
  private static final double LONGEST_KNEE_MM = 2 * INCH_MM;

  private static final double DEEPEST_KNEE_MM = 3 * INCH_MM;
  private static final double LEAST_KNEE_MM = 1.25 * INCH_MM;
  private static final double KNEE_TIP_MM = INCH_MM / 2;
  private static final double KNEE_CORNER_MM = 0.375 * INCH_MM;
  private static final double KNEE_OVER_EDGE_MM = INCH_MM / 2;
  private static final double BOXING_LEAD_MM = 2 * INCH_MM;
  private static final int SPRINGS = 2;

  /** True for springs between the rails. */
  public boolean isInboard() {
    return Math.abs(left.frame().yMm()) < chassis.rails().innerFaceMm(left.frame().xMm());
  }

  /** The bridge over the upper seats. */
  public Crossmember bridge() {
    return AirSpringPlace.bridge(chassis, left.frame().midpoint(right.frame()), stock);
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
    return stock.bolts().nearest(BOLT_MM);
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
    addLoads(plan);
    BoltSize bolt = bolt();
    plan.add(
        new BoltNeed(
            bolt.key(),
            stock.plateMm() + END_PLATE_MM,
            boltings(),
            "air spring seats",
            Phrase.of(
                "two a seat through a plate of {} and the spring's end plate; mark the"
                    + " holes off the spring that is delivered",
                length(stock.plateMm()))));
    plan.add(
        new OperationNeed(
            "fit-spring-seat",
            2 * SPRINGS,
            "4 seats",
            Phrase.of("lower and upper seat of both air springs")));
    plan.add(
        new OperationNeed(
            "drill-plate",
            4 * SPRINGS,
            "8 holes",
            Phrase.of("bolt holes of four seats, two each")));
    plan.add(
        new OperationNeed(
            "fit-air-spring",
            SPRINGS,
            "2 air springs",
            Phrase.of("{} and {}, level at a height of {}", left.name(), right.name(), height())));
  }

  /** What the springs load: the arms on the axle, and the bridge or the outriggers' gussets. */
  private void addLoads(WorkPlan.Builder plan) {
    double yieldMPa = stock.bracket().yieldMPa();
    for (SpringUnit unit : units()) {
      double atTube = AirSpringSeats.armAtTube(chassis, unit.axle(), stock.plateMm());
      // Where the seat begins the arms are least deep, with the seat welded on them as far as it
      // lies between them; the load is half the seat further on.
      double atSeat =
          MemberStress.pairUnderPlate(
              AirSpringSeats.armEdgeMm(diameterMm()) / 2,
              stock.plateMm(),
              ARM_DEPTH_MM,
              2 * AirSpringSeats.armOffMm(diameterMm()));
      plan.add(
          new LoadedMember(
              PlatePair.name("air spring arm", isLeft(unit)),
              Map.of(unit.name(), Math.max(atTube, atSeat)),
              yieldMPa,
              "two arms bent between seat and axle tube"));
      Vector3 push = unit.axle().to(unit.frame()).normalized();
      plan.add(
          new MountWeld(
                  "weld of " + PlatePair.name("air spring arm", isLeft(unit)),
                  armRuns(unit, VehicleParts.AXLE_TUBE, true),
                  carrying(chassis.axle().tubeWallMm()))
              .under(unit.name(), push, unit.axle())
              .member("saddles of two arms on the axle tube"));
      if (!isInboard()) {
        plan.add(new RailMount("air spring outrigger", unit.name(), isLeft(unit)));
        plan.add(
            new LoadedMember(
                PlatePair.name(GUSSET, isLeft(unit)),
                Map.of(
                    unit.name(),
                    MemberStress.pairUnderPlate(
                        reachMm(unit),
                        stock.plateMm(),
                        outriggerGusset(unit).otherLegMm(),
                        diameterMm())),
                yieldMPa,
                "two gussets and the seat bent at the rail's outer face"));
        plan.add(
            new MountWeld(
                    "weld of " + PlatePair.name("air spring outrigger", isLeft(unit)),
                    outriggerRuns(unit),
                    carrying(chassis.rails().wallMm()))
                .under(unit.name(), push, unit.frame())
                .member("seat and two gussets on the rail's outer face"));
      }
    }
    if (isInboard()) {
      bridge().addLoads(plan, left.name(), right.name(), Math.abs(left.frame().yMm()), 0, 0);
    }
  }

  private Amount height() {
    return length(left.lengthMm());
  }

  /** What carries the spring is welded as far as the thinner edge takes. */
  private FilletWeld carrying(double otherMm) {
    return FilletWeld.ofLeg(Seam.legMm(stock.plateMm(), otherMm));
  }

  private FilletWeld fillet(double otherMm) {
    return FilletWeld.ofLeg(FilletLegs.smallestMm(Math.min(stock.plateMm(), otherMm)));
  }

  private void addLower(WorkPlan.Builder plan) {
    String material = stock.bracket().title();
    Phrase where =
        Phrase.of(
            "lower seat {}, {} from the centre plane",
            Words.fromAxle(left.axle(), chassis.axleCentre()),
            length(left.axle().yMm()));
    plan.add(
        new PlateNeed(
            seat(LOWER_SEAT, 0).plate(material),
            stock.bracket().key(),
            List.of(lowerSeat(left), lowerSeat(right)),
            Phrase.of("{}; as wide as the spring, {}", where, length(diameterMm()))));
    PlatePair.add(
        plan,
        arm(left).plate(material),
        arm(right).plate(material),
        stock.bracket().key(),
        armSides(left).held(),
        armSides(right).held(),
        Phrase.of(
            "{}; two arms a side, {} apart, carry it clear of the tube",
            where,
            length(2 * AirSpringSeats.armOffMm(diameterMm()))));
    plan.add(
        WeldSeam.along(
            "air spring arm to axle tube",
            carrying(chassis.axle().tubeWallMm()),
            both(unit -> armRuns(unit, VehicleParts.AXLE_TUBE, true)),
            WeldPosition.HORIZONTAL,
            WeldPlace.VEHICLE,
            Phrase.of("saddle of four arms, both faces")));
    plan.add(
        WeldSeam.along(
            "air spring lower seat to arm",
            fillet(stock.plateMm()),
            both(unit -> armRuns(unit, Held.id(LOWER_SEAT, side(unit)), false)),
            WeldPosition.FLAT,
            WeldPlace.BENCH,
            Phrase.of("level edge of four arms, both faces")));
    plan.add(
        new OperationNeed(
            "dress-plate",
            3 * SPRINGS,
            "6 plates",
            Phrase.of("lower seats and arms of the air springs")));
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
        Phrase.of(
            "carries the upper seats of both air springs; its underside stays {}"
                + " above the axle's centre at full bump, check the housing against that",
            length(overAxleMm)));
    plan.add(
        new PlateNeed(
            seat(UPPER_SEAT, PORT_MM).plate(stock.bracket().title()),
            stock.bracket().key(),
            List.of(upperSeat(left), upperSeat(right)),
            Phrase.of(
                "upper seat {} above ground at ride, {} over the lower one; the middle"
                    + " hole and one through the bridge let the air fitting out",
                length(left.frame().zMm()),
                height())));
    plan.add(
        WeldSeam.along(
            "air spring upper seat to bridge",
            fillet(stock.section().wallMm()),
            bridgeRuns(bridge),
            WeldPosition.FLAT,
            WeldPlace.BENCH,
            Phrase.of("both edges of the tube across each seat")));
    plan.add(
        new OperationNeed(
            "dress-plate", SPRINGS, "2 plates", Phrase.of("upper seats of the air springs")));
    plan.add(
        new OperationNeed(
            "drill-plate",
            SPRINGS,
            "2 holes",
            Phrase.of("through the bridge for each air fitting")));
  }

  private double reachMm(SpringUnit unit) {
    return face(unit).offMm(unit.frame());
  }

  /** The plate over an outboard spring, its base on the rail. */
  public CrossmemberTab outriggerSeat(SpringUnit unit) {
    return new CrossmemberTab(
        OUTRIGGER_SEAT,
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
    Rails rails = chassis.rails();
    double rearMm = unit.frame().xMm() - diameterMm() / 2;
    double frontMm = unit.frame().xMm() + diameterMm() / 2;
    double topMm = Math.min(rails.topMm(rearMm), rails.topMm(frontMm));
    double railMm = Math.min(LONGEST_GUSSET_MM, topMm - unit.frame().zMm() - stock.plateMm());
    return new OutriggerGusset(
        GUSSET,
        stock.plateMm(),
        reachMm(unit) + diameterMm() / 4,
        railMm,
        Math.PI / 2,
        GUSSET_TIP_MM,
        GUSSET_CORNER_MM);
  }

  /**
   * The knee under an outboard seat, which takes its moment down the rail; empty where the spring
   * leaves no room for one. Its corner is as the gussets'.
   */
  public Optional<OutriggerGusset> knee(SpringUnit unit) {
    double outMm =
        Math.min(
            LONGEST_KNEE_MM,
            reachMm(unit) - spring.outsideRadiusMm() - MountPractice.MOVING_AIR_MM);
    double downMm =
        Math.min(
            DEEPEST_KNEE_MM,
            unit.frame().zMm()
                - chassis.rails().undersideMm(unit.frame().xMm())
                - KNEE_OVER_EDGE_MM);
    return Math.min(outMm, downMm) < LEAST_KNEE_MM
        ? Optional.empty()
        : Optional.of(
            new OutriggerGusset(
                KNEE, stock.plateMm(), outMm, downMm, Math.PI / 2, KNEE_TIP_MM, KNEE_CORNER_MM));
  }

  /** Both seats have one, or none has. */
  private boolean hasKnees() {
    return knee(left).isPresent() && knee(right).isPresent();
  }

  private void addKnees(WorkPlan.Builder plan) {
    OutriggerGusset onLeft = knee(left).orElseThrow();
    OutriggerGusset onRight = knee(right).orElseThrow();
    String material = stock.bracket().title();
    PlatePair.add(
        plan,
        onLeft.plate(material),
        onRight.plate(material),
        stock.bracket().key(),
        List.of(new Held(Assembly.FRAME, kneePlace(left))),
        List.of(new Held(Assembly.FRAME, kneePlace(right))),
        Phrase.of(
            "under the middle of each outrigger seat, {} down the rail: the spring bends the seat"
                + " away from the rail",
            length(onLeft.otherLegMm())));
    plan.add(
        WeldSeam.along(
            "air spring outrigger knee to seat",
            fillet(stock.plateMm()),
            both(unit -> kneeRuns(unit, PlatePair.name(OUTRIGGER_SEAT, isLeft(unit)), true)),
            WeldPosition.FLAT,
            WeldPlace.BENCH,
            Phrase.of("both faces of a knee a side")));
    plan.add(
        new OperationNeed(
            "dress-plate", SPRINGS, "2 plates", Phrase.of("knees of the outriggers")));
  }

  /** Its outline from the corner under the seat, out along the seat and down the rail. */
  private Place kneePlace(SpringUnit unit) {
    Vector3 along = face(unit).along();
    return Place.lying(
        onRail(unit).plus(along.scaled(-stock.plateMm() / 2)),
        face(unit).outward(),
        UP.scaled(-1),
        along,
        stock.plateMm());
  }

  /** Both faces of a knee, along the seat or down the rail. */
  private List<SeamRun> kneeRuns(SpringUnit unit, String onto, boolean alongSeat) {
    OutriggerGusset knee = knee(unit).orElseThrow();
    double cornerMm = knee.cornerRadiusMm();
    Edge edge =
        alongSeat
            ? Seam.edge(cornerMm, 0, knee.legMm(), 0)
            : Seam.edge(0, cornerMm, 0, knee.otherLegMm());
    List<SeamRun> runs = new ArrayList<>(2);
    for (double offMm : new double[] {-stock.plateMm() / 2, stock.plateMm() / 2}) {
      Point3 corner = onRail(unit).plus(face(unit).along().scaled(offMm));
      Place plane = Place.of(corner, face(unit).outward(), UP.scaled(-1));
      runs.add(
          new SeamRun(
              PlatePair.name(KNEE, isLeft(unit)), onto, new FlatPath(plane, List.of(edge))));
    }
    return runs;
  }

  private void addOutriggers(WorkPlan.Builder plan) {
    String material = stock.bracket().title();
    Phrase why =
        Phrase.of(
            "upper seat outboard, {} from the rail's outer face and {} above ground at ride",
            length(reachMm(left)),
            length(left.frame().zMm()));
    PlatePair.add(
        plan,
        outriggerSeat(left).plate(material),
        outriggerSeat(right).plate(material),
        stock.bracket().key(),
        List.of(upperSeatPlace(left)),
        List.of(upperSeatPlace(right)),
        why);
    PlatePair.add(
        plan,
        outriggerGusset(left).plate(material),
        outriggerGusset(right).plate(material),
        stock.bracket().key(),
        gussetSides(left).held(),
        gussetSides(right).held(),
        Phrase.of("{}; two gussets hold each seat level", why));
    plan.add(
        WeldSeam.along(
            "air spring outrigger to rail",
            carrying(chassis.rails().wallMm()),
            both(this::outriggerRuns),
            WeldPosition.VERTICAL,
            WeldPlace.VEHICLE,
            Phrase.of(
                "base of each seat and the rail leg of two gussets{} a side, both faces",
                hasKnees() ? " and a knee" : "")));
    plan.add(
        WeldSeam.along(
            "air spring outrigger gusset to seat",
            fillet(stock.plateMm()),
            gussetRuns(),
            WeldPosition.FLAT,
            WeldPlace.BENCH,
            Phrase.of("one face of two gussets a side")));
    plan.add(new OperationNeed("fit-outrigger", SPRINGS, "2 outriggers", why));
    plan.add(
        new OperationNeed(
            "dress-plate",
            3 * SPRINGS,
            "6 plates",
            Phrase.of("seats and gussets of the outriggers")));
    if (hasKnees()) {
      addKnees(plan);
    }
    addOutriggerBoxing(plan);
  }

  private void addOutriggerBoxing(WorkPlan.Builder plan) {
    Rails rails = chassis.rails();
    if (rails.boxed()) {
      return;
    }
    double runMm = diameterMm() + 2 * BOXING_LEAD_MM;
    Phrase why =
        Phrase.of(
            "the channel is open behind the outrigger, whose base is {} long; a"
                + " plate {} long closes it",
            length(diameterMm()),
            length(runMm));
    for (SpringUnit unit : units()) {
      double xMm = unit.frame().xMm();
      plan.add(
          new RailClosing(
              RailClosing.Kind.MOUNT,
              BOXING,
              side(unit),
              isLeft(unit),
              xMm - runMm / 2,
              xMm + runMm / 2,
              new BracketStock(stock.boxing()),
              "air spring outrigger",
              why));
    }
  }

  private static boolean isLeft(SpringUnit unit) {
    return unit.frame().yMm() > 0;
  }

  private static String side(SpringUnit unit) {
    return isLeft(unit) ? "left" : "right";
  }

  private static Vector3 outward(SpringUnit unit) {
    return new Vector3(0, isLeft(unit) ? 1 : -1, 0);
  }

  /** The springs' own mounts. */
  private List<SpringUnit> units() {
    return List.of(left, right);
  }

  /** Under the spring, its bolts fore and aft of the arms. */
  private Held lowerSeat(SpringUnit unit) {
    return new Held(
        side(unit), Assembly.AXLE, Place.at(unit.axle().plus(UP.scaled(-stock.plateMm()))));
  }

  /** On the spring, under the bridge. */
  private Held upperSeat(SpringUnit unit) {
    return new Held(side(unit), Assembly.FRAME, Place.at(unit.frame()));
  }

  /** The two arms of a seat, their outlines about the centre of the axle tube. */
  private SidePair armSides(SpringUnit unit) {
    Point3 centre = chassis.axleCentre();
    return new SidePair(
        new Point3(centre.xMm(), unit.axle().yMm(), centre.zMm()),
        FORWARD,
        UP,
        outward(unit),
        2 * AirSpringSeats.armOffMm(diameterMm()) - stock.plateMm(),
        stock.plateMm(),
        Assembly.AXLE,
        "outer",
        "inner");
  }

  private List<SeamRun> both(Function<SpringUnit, List<SeamRun>> runs) {
    return units().stream().flatMap(unit -> runs.apply(unit).stream()).toList();
  }

  /** Both faces of a seat's arms, along the saddle on the tube or along the level edge. */
  private List<SeamRun> armRuns(SpringUnit unit, String onto, boolean saddle) {
    SeatArm arm = arm(unit);
    Point2 seat = arm.seatMiddle();
    double halfMm = arm.seatLengthMm() / 2;
    Edge edge =
        saddle ? arm.saddle() : new Straight(seat.shifted(-halfMm, 0), seat.shifted(halfMm, 0));
    String name = PlatePair.name(arm.name(), isLeft(unit));
    return armSides(unit).bothFaces(name, List.of(onto), List.of(edge));
  }

  /** Length of the seat under each edge of the bridge's tube (mm). */
  private double bridgeChordMm(Crossmember bridge) {
    double radiusMm = diameterMm() / 2;
    double offMm = bridge.widthMm() / 2;
    return 2 * Math.sqrt(Math.max(0, radiusMm * radiusMm - offMm * offMm));
  }

  /** Both lower edges of the bridge's tube across each seat. */
  private List<SeamRun> bridgeRuns(Crossmember bridge) {
    List<SeamRun> runs = new ArrayList<>(2 * SPRINGS);
    Vector3 halfAcross = new Vector3(0, bridgeChordMm(bridge) / 2, 0);
    for (SpringUnit unit : units()) {
      Point3 top = unit.frame().plus(UP.scaled(stock.plateMm()));
      for (double offMm : new double[] {bridge.widthMm() / 2, -bridge.widthMm() / 2}) {
        Point3 middle = top.plus(FORWARD.scaled(offMm));
        runs.add(
            new SeamRun(
                Held.id(UPPER_SEAT, side(unit)),
                bridge.name(),
                FlatPath.between(middle.plus(halfAcross.scaled(-1)), middle.plus(halfAcross))));
      }
    }
    return runs;
  }

  /** On the rail's outer face, its outline from the base outboard. */
  private Held upperSeatPlace(SpringUnit unit) {
    return new Held(
        Assembly.FRAME,
        Place.lying(
            onRail(unit),
            face(unit).along().scaled(isLeft(unit) ? 1 : -1),
            face(unit).outward(),
            UP,
            stock.plateMm()));
  }

  private OuterFace face(SpringUnit unit) {
    return new OuterFace(chassis.rails(), isLeft(unit));
  }

  private Point3 onRail(SpringUnit unit) {
    return face(unit).foot(unit.frame());
  }

  /** Two gussets on the seat's ends, their outlines from the corner at the rail. */
  private SidePair gussetSides(SpringUnit unit) {
    return new SidePair(
        onRail(unit).plus(UP.scaled(stock.plateMm())),
        face(unit).outward(),
        UP,
        face(unit).along(),
        diameterMm() - 2 * stock.plateMm(),
        stock.plateMm(),
        Assembly.FRAME,
        "front",
        "rear");
  }

  /** One face of each seat and one leg of a gusset, both faces, as one run; the knee's besides. */
  private List<SeamRun> outriggerRuns(SpringUnit unit) {
    List<SeamRun> runs = new ArrayList<>(2);
    double halfMm = diameterMm() / 2;
    OutriggerGusset gusset = outriggerGusset(unit);
    Place face = Place.of(onRail(unit), face(unit).along(), UP);
    double plateMm = stock.plateMm();
    for (int i = 0; i < 2; i++) {
      double upMm = i * plateMm;
      double innerMm = i == 0 ? halfMm - plateMm : plateMm - halfMm;
      double outerMm = i == 0 ? halfMm : -halfMm;
      double fromMm = plateMm + gusset.cornerRadiusMm();
      double toMm = plateMm + gusset.otherLegMm();
      runs.add(
          new SeamRun(
              List.of(
                  PlatePair.name(OUTRIGGER_SEAT, isLeft(unit)),
                  gussetSides(unit).ids(PlatePair.name(GUSSET, isLeft(unit))).get(i)),
              List.of(VehicleParts.rail(isLeft(unit))),
              new FlatPath(
                  face,
                  List.of(
                      new Straight(new Point2(-halfMm, upMm), new Point2(halfMm, upMm)),
                      Seam.edge(innerMm, fromMm, innerMm, toMm),
                      Seam.edge(outerMm, fromMm, outerMm, toMm)))));
    }
    if (hasKnees()) {
      runs.addAll(kneeRuns(unit, VehicleParts.rail(isLeft(unit)), false));
    }
    return runs;
  }

  private List<SeamRun> gussetRuns() {
    List<SeamRun> runs = new ArrayList<>(2 * SPRINGS);
    for (SpringUnit unit : units()) {
      OutriggerGusset gusset = outriggerGusset(unit);
      // The corner is cut out about the seat's own weld.
      Edge leg =
          new Straight(new Point2(gusset.cornerRadiusMm(), 0), new Point2(gusset.legMm(), 0));
      SidePair gussets = gussetSides(unit);
      String name = PlatePair.name(GUSSET, isLeft(unit));
      for (int i = 0; i < 2; i++) {
        runs.add(
            new SeamRun(
                gussets.ids(name).get(i),
                PlatePair.name(OUTRIGGER_SEAT, isLeft(unit)),
                new FlatPath(gussets.face(2 * i), List.of(leg))));
      }
    }
    return runs;
  }

  private String upperSeatId(SpringUnit unit) {
    return isInboard()
        ? Held.id(UPPER_SEAT, side(unit))
        : PlatePair.name(OUTRIGGER_SEAT, isLeft(unit));
  }

  /** Two a seat, their heads on the far side of the seat from the spring. */
  private List<Bolting> boltings() {
    List<Bolting> boltings = new ArrayList<>(4 * SPRINGS);
    double upperMm = isInboard() ? boltCircleMm() / 2 : diameterMm() / 4;
    for (SpringUnit unit : units()) {
      Vector3 acrossUpper = isInboard() ? FORWARD : face(unit).along();
      for (boolean front : new boolean[] {true, false}) {
        double way = front ? 1 : -1;
        String end = side(unit) + (front ? " front" : " rear");
        Point3 low =
            unit.axle()
                .plus(UP.scaled(-stock.plateMm()))
                .plus(FORWARD.scaled(way * boltCircleMm() / 2));
        boltings.add(
            new Bolting(
                new Held("lower " + end, Assembly.AXLE, Place.along(low, UP)),
                List.of(Held.id(LOWER_SEAT, side(unit)), unit.name())));
        Point3 high =
            unit.frame().plus(UP.scaled(stock.plateMm())).plus(acrossUpper.scaled(way * upperMm));
        boltings.add(
            new Bolting(
                new Held("upper " + end, Assembly.FRAME, Place.along(high, UP.scaled(-1))),
                List.of(upperSeatId(unit), unit.name())));
      }
    }
    return boltings;
  }

  /** The springs themselves, each from seat to seat at ride. */
  public List<BoughtPiece> springs() {
    return units().stream()
        .map(
            unit ->
                new BoughtPiece(
                    unit.name(),
                    unit.name(),
                    Place.at(unit.axle()),
                    bellows(unit),
                    List.of(Held.id(LOWER_SEAT, side(unit)), upperSeatId(unit))))
        .toList();
  }

  /** End plates a little narrower than the widest place half way up. */
  private Solid bellows(SpringUnit unit) {
    double lengthMm = unit.lengthMm();
    double outsideMm = spring.outsideRadiusMm();
    double endMm = END_SHARE * outsideMm;
    return Turned.through(
        0,
        0,
        endMm,
        0,
        endMm,
        END_PLATE_MM,
        outsideMm,
        lengthMm / 3,
        outsideMm,
        2 * lengthMm / 3,
        endMm,
        lengthMm - END_PLATE_MM,
        endMm,
        lengthMm,
        0,
        lengthMm);
  }
}
