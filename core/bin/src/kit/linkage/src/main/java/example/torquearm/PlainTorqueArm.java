package example.torquearm;

import static trammel.engine.quantity.Amount.length;

import java.util.ArrayList;
import java.util.List;
import trammel.brackets.Drawn;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.bar.BarMakeUp;
import trammel.brackets.bar.BarMaking;
import trammel.brackets.bar.BarPlane;
import trammel.brackets.bar.HoleRow;
import trammel.brackets.bar.LateralBarRoom;
import trammel.brackets.bar.Mounting;
import trammel.brackets.bar.RailSideBars;
import trammel.brackets.barend.AxleBracket;
import trammel.brackets.barend.BarOperations;
import trammel.brackets.barend.CrossmemberTabs;
import trammel.brackets.barend.RailSideWork;
import trammel.brackets.mount.Crossmember;
import trammel.brackets.mount.MountStock;
import trammel.brackets.work.BracketBasis;
import trammel.brackets.work.WorkPlan;
import trammel.engine.clearance.Body;
import trammel.engine.clearance.Capsule;
import trammel.engine.clearance.Carrier;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.AxleGuide;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Duty;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.Catalog;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.Commission;
import trammel.planning.extension.Site;
import trammel.planning.options.BarOptions;
import trammel.planning.options.MountOptions;
import trammel.reading.fields.Field;

/** Two lower bars, a lateral bar, and an arm on the axle that hangs from a crossmember. */
public final class PlainTorqueArm implements AxleLinkage {
  private static final String LINK = "drop-link";
  private static final double RAIL_GAP_MM = 12;
  private static final double WELD_ROOM_MM = 6;
  private static final double LATERAL_BEHIND_MM = 150;
  private static final double LATERAL_RISE_MM = 50;

  private static final Field<Double> LOWER_LENGTH =
      Field.lengthMm("lower_length", "lower bars, joint to joint", 400, 900).withDefault(610.0);
  private static final Field<Double> LOWER_DROP =
      Field.lengthMm("lower_drop", "lower bars below the axle's centre", 60, 150).withDefault(80.0);
  private static final Field<Double> ARM_LENGTH =
      Field.lengthMm("arm_length", "eye of the arm ahead of the axle", 500, 1500)
          .withDefault(900.0);
  private static final Field<Double> LINK_LENGTH =
      Field.lengthMm("link_length", "drop link, joint to joint", 150, 300).withDefault(200.0);

  @Override
  public String id() {
    return "plain-torque-arm";
  }

  @Override
  public String title() {
    return "Plain torque arm";
  }

  @Override
  public String summary() {
    return "Lower bars carry thrust; an arm on a drop link keeps the housing from turning.";
  }

  @Override
  public List<Field<?>> options(Catalog catalog) {
    return List.of(
        LOWER_LENGTH,
        LOWER_DROP,
        ARM_LENGTH,
        LINK_LENGTH,
        tube(catalog),
        BarOptions.frameEnd(catalog),
        BarOptions.axleEnd(catalog),
        BarOptions.bracketPlate(catalog),
        BarOptions.boxingPlate(catalog),
        MountOptions.crossmember(catalog));
  }

  private static Field<String> tube(Catalog catalog) {
    return BarOptions.tube("bar_tube", "tube of all bars", catalog);
  }

  private static BarMakeUp bars(Site site) {
    return BarOptions.makeUp(site, tube(site.catalog()));
  }

  /** Welded barrels at both ends: the drop link is too short for a threaded one. */
  private static BarMakeUp link(BarMakeUp bars) {
    return new BarMakeUp(
        bars.tube(), bars.axleEnd(), bars.axleEnd(), bars.bracket(), HoleRow.SINGLE, false);
  }

  @Override
  public AxleGuide propose(Site site) {
    BarMakeUp made = bars(site);
    double lengthMm = site.options().get(LOWER_LENGTH);
    double upMm = -site.options().get(LOWER_DROP);
    BarPlane plane =
        BarPlane.of(site.chassis(), Mounting.INBOARD, RAIL_GAP_MM, made.halfAcrossMm(), lengthMm);
    List<Bar> bars = new ArrayList<>();
    bars.addAll(
        new RailSideBars(site.chassis(), plane, made)
            .pair("lower", "lower_drop", upMm, lengthMm, 0));
    LateralBarRoom across = new LateralBarRoom(site.chassis(), plane, made, RAIL_GAP_MM);
    Point3 onFrame = across.frame(1, LATERAL_BEHIND_MM, LATERAL_RISE_MM);
    Point3 onAxle = across.axle(onFrame, LATERAL_BEHIND_MM, LATERAL_RISE_MM);
    bars.add(made.bar("lateral-bar", Duty.SIDEWAYS.only(), onFrame, onAxle));
    Point3 eye = eye(site, made, plane);
    Point3 over = eye.plus(new Vector3(0, 0, site.options().get(LINK_LENGTH)));
    bars.add(link(made).bar(LINK, Duty.GUIDES_A_BODY.only(), over, eye));
    return follow(site, AxleGuide.of(bars));
  }

  /** The arm's eye, at the axle's height, its two plates close beside the centre housing. */
  private static Point3 eye(Site site, BarMakeUp made, BarPlane plane) {
    double halfMm = made.axleSeat().stackMm() / 2;
    double acrossMm = site.chassis().axle().innerLimitMm() + WELD_ROOM_MM + halfMm;
    double missingMm = acrossMm + halfMm + WELD_ROOM_MM - (plane.leftMm() - made.halfAcrossMm());
    if (missingMm > 0) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "between the centre housing and the lower bars {} is missing for the arm."
                  + " Choose an axle_end with a narrower sleeve.",
              length(missingMm)));
    }
    Vector3 reach = new Vector3(site.options().get(ARM_LENGTH), acrossMm, 0);
    return site.chassis().axleCentre().plus(reach);
  }

  /** The room that the arm takes moves with the axle; a job may have moved its eye. */
  @Override
  public AxleGuide follow(Site site, AxleGuide moved) {
    Point3 eye = moved.bar(LINK).axle();
    Point3 centre = site.chassis().axleCentre();
    Point3 root = new Point3(centre.xMm(), eye.yMm(), centre.zMm());
    Capsule room = new Capsule(root, eye, site.chassis().axle().tubeRadiusMm());
    return moved.withSolids(List.of(new Body("torque arm", room, Carrier.AXLE)));
  }

  @Override
  public WorkPlan plan(Commission commission) {
    return Drawn.orRefused(() -> work(commission.layout(), commission.site()));
  }

  private static WorkPlan work(Layout layout, Site site) {
    Catalog catalog = site.catalog();
    BracketBasis basis =
        new BracketBasis(
            layout.chassis(),
            catalog.plate(site.options().get(BarOptions.boxingPlate(catalog))),
            catalog.boltSizes());
    BarMakeUp made = bars(site);
    List<BarMaking> lower = layout.lower().stream().map(bar -> BarMaking.along(bar, made)).toList();
    List<BarMaking> across =
        layout.across().stream().map(bar -> BarMaking.across(bar, made)).toList();
    BarMaking link = BarMaking.along(layout.bar(LINK).orElseThrow(), link(made));
    MountStock stock = MountOptions.stock(site.options(), catalog);
    Point3 joint = link.bar().frame();
    Crossmember crossmember =
        new Crossmember(
            "torque arm crossmember",
            basis.rails(),
            stock,
            CrossmemberTabs.closeAheadMm(joint, link.frameSeat(), stock.section().widthMm()),
            joint.zMm());
    WorkPlan.Builder plan = new WorkPlan.Builder();
    plan.add(new RailSideWork(layout, lower, across, Mounting.INBOARD, basis).plan());
    plan.add(link.plan());
    plan.add(BarOperations.each("make-bar", List.of(link), "bar", "hangs the arm: "));
    plan.add(new AxleBracket(link, basis).plan());
    plan.add(new CrossmemberTabs(link, crossmember, basis).plan());
    plan.add(
        BarOperations.fitting(
            "fit-plain-arm", List.of(link), List.of(End.values()), "arm", "both ends of "));
    plan.add(BarOperations.counted(plan.build()));
    crossmember.addTo(plan, Phrase.of("carries the drop link of the arm"));
    return plan.build();
  }
}
