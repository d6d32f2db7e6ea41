package trammel.plugins.wattslinkage;

import static trammel.engine.quantity.Amount.angle;
import static trammel.engine.quantity.Amount.length;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.assembly.Assembly;
import trammel.assembly.CopePath;
import trammel.assembly.CopedTube;
import trammel.assembly.FlatPath;
import trammel.assembly.Held;
import trammel.assembly.Place;
import trammel.assembly.SeamRun;
import trammel.brackets.Drawn;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.bar.JointSeat;
import trammel.brackets.material.BarMaterial;
import trammel.brackets.work.BoltNeed;
import trammel.brackets.work.Bolting;
import trammel.brackets.work.BracketBasis;
import trammel.brackets.work.BracketStock;
import trammel.brackets.work.FootWelds;
import trammel.brackets.work.Seam;
import trammel.brackets.work.TubeNeed;
import trammel.brackets.work.VehicleParts;
import trammel.brackets.work.WeldedFoot;
import trammel.brackets.work.WorkPlan;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.AxleHousing;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.End;
import trammel.engine.quantity.Phrase;
import trammel.trade.plates.Point2;
import trammel.trade.steel.RoundTube;
import trammel.trade.tubes.BushedEnd;
import trammel.trade.tubes.Cope;

/**
 * What carries the rocker's pivot on the axle: two tubes coped onto the axle tube beside the
 * housing, a plate across their ends ahead of the rocker, two spacers beside the rocker and a strap
 * behind it. Plate and strap hold the pivot bolt in double shear.
 */
final class PivotCarrier {
  static final String ARM = "rocker carrier arm";
  static final String PLATE = "rocker carrier plate";
  static final String SPACER = "rocker spacer";
  static final String STRAP = "rocker strap";

  private static final Vector3 FORWARD = new Vector3(1, 0, 0);
  private static final Vector3 BACK = new Vector3(-1, 0, 0);
  private static final Vector3 LEFT = new Vector3(0, 1, 0);
  private static final Vector3 UP = new Vector3(0, 0, 1);

  /** Straight pieces for each round weld: its length comes out within 0.3 %. */
  private static final int ROUND_PIECES = 24;

  private final Rocker rocker;
  private final RockerForm form;
  private final BracketStock stock;
  private final BarMaterial material;
  private final Chassis chassis;
  private final BracketBasis basis;

  PivotCarrier(
      Rocker rocker,
      RockerForm form,
      BracketStock stock,
      BarMaterial material,
      BracketBasis basis) {
    this.rocker = rocker;
    this.form = form;
    this.stock = stock;
    this.material = material;
    this.chassis = basis.chassis();
    this.basis = basis;
  }

  WorkPlan plan() {
    WorkPlan.Builder plan = new WorkPlan.Builder();
    addArms(plan);
    addPlates(plan);
    addSpacers(plan);
    plan.add(pivotBolt());
    plan.add(
        foot(
            "rocker carrier arms to axle tube", chassis.axleCentre().xMm() - headerMm(), wallMm()));
    plan.add(foot("rocker carrier arms to plate", plateFrontMm(), stock.thicknessMm()));
    return plan.build();
  }

  private RoundTube tube() {
    return new RoundTube(material.tube().outsideDiameterMm(), material.tube().wallMm());
  }

  private double headerMm() {
    return chassis.axle().tubeRadiusMm();
  }

  private double wallMm() {
    return Math.min(material.tube().wallMm(), chassis.axle().tubeWallMm());
  }

  private double plateFrontMm() {
    return rocker.pivot().xMm() + form.gripMm() / 2;
  }

  /** From the axle's centre to the front of the carrier plate (mm). */
  private double reachMm() {
    return chassis.axleCentre().xMm() - plateFrontMm();
  }

  private void addArms(WorkPlan.Builder plan) {
    AxleHousing axle = chassis.axle();
    requireClearOfAxle();
    Cope cope = Drawn.orRefused(() -> BushedEnd.square(axle.tubeDiameterMm()).cope(tube()));
    double lengthMm = reachMm() - cope.nearestMm();
    CopedTube solid =
        Drawn.orRefused(() -> new CopedTube(tube(), lengthMm, Optional.of(cope), Optional.empty()));
    List<Held> places = new ArrayList<>(2);
    List<SeamRun> onAxle = new ArrayList<>(2);
    List<SeamRun> onPlate = new ArrayList<>(2);
    for (boolean left : new boolean[] {true, false}) {
      Held held = new Held(mark(left), Assembly.AXLE, armPlace(left, cope.nearestMm()));
      places.add(held);
      onAxle.add(
          new SeamRun(held.id(ARM), VehicleParts.AXLE_TUBE, new CopePath(held.place(), cope)));
      onPlate.add(round(held.id(ARM), PLATE, held.place().shifted(0, 0, lengthMm)));
    }
    plan.add(
        new TubeNeed(
            ARM,
            material.key(),
            lengthMm,
            solid,
            places,
            Phrase.of(
                "front end coped square to the axle tube of {}; rear end square",
                length(axle.tubeDiameterMm())),
            Phrase.of(
                "{} from the axle's centre to the plate ahead of the rocker, less {} to"
                    + " the tips of the cope; {} from the centre plane, beside the housing",
                length(reachMm()),
                length(cope.nearestMm()),
                length(form.armOutMm(axle)))));
    plan.add(
        Seam.onBench(
            ARM + " to axle tube",
            material.tube().wallMm(),
            axle.tubeWallMm(),
            onAxle,
            Phrase.of("once round each coped arm; welded with the axle out")));
    plan.add(
        Seam.onBench(
            ARM + " to plate",
            material.tube().wallMm(),
            stock.thicknessMm(),
            onPlate,
            Phrase.of("once round the square end of each arm")));
  }

  private void requireClearOfAxle() {
    double axleMm = chassis.axle().housingRadiusMm().orElse(headerMm());
    double neededMm = axleMm + form.aheadMm();
    double foundMm = chassis.axleCentre().xMm() - rocker.pivot().xMm();
    if (!(foundMm >= neededMm - 1e-6)) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "the rocker is {} behind the axle's centre; its plates and the plate and"
                  + " bolt ahead of it need {} to clear the axle. Set rocker_behind to that"
                  + " or more, or leave it out.",
              length(foundMm),
              length(neededMm)));
    }
  }

  private static String mark(boolean left) {
    return left ? "left" : "right";
  }

  private static double side(boolean left) {
    return left ? 1 : -1;
  }

  /** From the tips of the cope rearwards, x along the axle tube. */
  private Place armPlace(boolean left, double tipsMm) {
    Point3 centre = chassis.axleCentre();
    Point3 onAxis =
        new Point3(centre.xMm(), side(left) * form.armOutMm(chassis.axle()), centre.zMm());
    return Place.of(onAxis, LEFT, BACK.cross(LEFT)).shifted(0, 0, tipsMm);
  }

  private SeamRun round(String tube, String plate, Place end) {
    return new SeamRun(tube, plate, FlatPath.circle(end, form.tubeRadiusMm()));
  }

  private double holeMm() {
    return PivotBush.BOLT_MM + JointSeat.BOLT_CLEARANCE_MM;
  }

  private void addPlates(WorkPlan.Builder plan) {
    double outMm = form.armOutMm(chassis.axle());
    double besideMm = form.spacerOutMm();
    double upMm = chassis.axleCentre().zMm() - rocker.pivot().zMm();
    List<Point2> spacers = List.of(new Point2(besideMm, 0), new Point2(-besideMm, 0));
    List<Point2> all = new ArrayList<>(spacers);
    all.add(new Point2(outMm, upMm));
    all.add(new Point2(-outMm, upMm));
    plan.add(
        stock.cut(
            PLATE,
            List.of(lying(form.apartMm() / 2, FORWARD)),
            () -> plate(PLATE, all),
            Phrase.of(
                "joins the two arms ahead of the rocker and holds the front of its pivot"
                    + " bolt, which lies {}{} the axle's centre",
                length(Math.abs(upMm)),
                upMm < 0 ? " above" : " below")));
    plan.add(
        stock.cut(
            STRAP,
            List.of(lying(-form.apartMm() / 2, BACK)),
            () -> plate(STRAP, spacers),
            Phrase.of("holds the rear of the rocker's pivot bolt, so that it is in double shear")));
  }

  private PivotPlate plate(String name, List<Point2> tubes) {
    return new PivotPlate(name, stock.thicknessMm(), tubes, form.landRadiusMm(), holeMm());
  }

  private Held lying(double fromPivotMm, Vector3 towards) {
    return new Held(
        Assembly.AXLE,
        Place.lying(
            rocker.pivot().plus(FORWARD.scaled(fromPivotMm)),
            LEFT,
            UP,
            towards,
            stock.thicknessMm()));
  }

  private void addSpacers(WorkPlan.Builder plan) {
    double lengthMm = form.apartMm();
    List<Held> places = new ArrayList<>(2);
    List<SeamRun> runs = new ArrayList<>(4);
    for (boolean left : new boolean[] {true, false}) {
      Point3 front =
          rocker
              .pivot()
              .plus(FORWARD.scaled(lengthMm / 2))
              .plus(LEFT.scaled(side(left) * form.spacerOutMm()));
      Held held = new Held(mark(left), Assembly.AXLE, Place.along(front, BACK));
      places.add(held);
      runs.add(round(held.id(SPACER), PLATE, held.place()));
      runs.add(round(held.id(SPACER), STRAP, held.place().shifted(0, 0, lengthMm)));
    }
    plan.add(
        new TubeNeed(
            SPACER,
            material.key(),
            lengthMm,
            CopedTube.square(tube(), lengthMm),
            places,
            Phrase.of("both ends square"),
            Phrase.of(
                "hold the strap {} behind the plate, {} to either side of the pivot,"
                    + " where the rocker passes them with {} at {} of swing",
                length(lengthMm),
                length(form.spacerOutMm()),
                length(RockerForm.AIR_MM),
                angle(RockerForm.SWING_RAD, 0))));
    plan.add(
        Seam.onBench(
            SPACER + " to plate and strap",
            material.tube().wallMm(),
            stock.thicknessMm(),
            runs,
            Phrase.of("once round both ends of both spacers")));
  }

  private BoltNeed pivotBolt() {
    requireBolt();
    Point3 head = rocker.pivot().plus(FORWARD.scaled(form.gripMm() / 2));
    return new BoltNeed(
        form.pivotBolt().key(),
        form.gripMm(),
        List.of(
            new Bolting(
                new Held(Assembly.AXLE, Place.along(head, BACK)),
                List.of(PLATE, RockerWork.BUSH, STRAP))),
        "rocker pivot",
        Phrase.of(
            "sleeve of {} between plate and strap of {}",
            length(form.apartMm()),
            length(stock.thicknessMm())));
  }

  private void requireBolt() {
    try {
      form.pivotBolt().choose(form.gripMm());
    } catch (IllegalArgumentException tooShort) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "the rocker's pivot bolt clamps {}, and no stocked length of {} is long"
                  + " enough. Choose an axle_end with a narrower sleeve, or a thinner"
                  + " bracket_plate.",
              length(form.gripMm()),
              form.pivotBolt().title()));
    }
  }

  /** The welds round both arms, seen along the vehicle. */
  private WeldedFoot foot(String name, double forwardMm, double otherMm) {
    double outMm = form.armOutMm(chassis.axle());
    double radiusMm = form.tubeRadiusMm();
    FootWelds welds = new FootWelds();
    for (int i = 0; i < ROUND_PIECES; i++) {
      double fromRad = 2 * Math.PI * i / ROUND_PIECES;
      double toRad = 2 * Math.PI * (i + 1) / ROUND_PIECES;
      for (double middleMm : new double[] {outMm, -outMm}) {
        welds.line(
            1,
            middleMm + radiusMm * Math.cos(fromRad),
            radiusMm * Math.sin(fromRad),
            middleMm + radiusMm * Math.cos(toRad),
            radiusMm * Math.sin(toRad));
      }
    }
    return new WeldedFoot(
        name,
        rocker.links().stream().map(Bar::name).toList(),
        End.AXLE,
        welds.group(),
        new Point3(forwardMm, 0, chassis.axleCentre().zMm()),
        LEFT,
        UP,
        Seam.legMm(material.tube().wallMm(), otherMm));
  }
}
