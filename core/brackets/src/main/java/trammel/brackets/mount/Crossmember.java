package trammel.brackets.mount;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import trammel.assembly.Assembly;
import trammel.assembly.FlatPath;
import trammel.assembly.Held;
import trammel.assembly.Place;
import trammel.assembly.Prism;
import trammel.assembly.SeamRun;
import trammel.assembly.Solid;
import trammel.brackets.work.BracketStock;
import trammel.brackets.work.LoadedMember;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.RailClosing;
import trammel.brackets.work.TubeNeed;
import trammel.brackets.work.VehicleParts;
import trammel.brackets.work.WorkPlan;
import trammel.engine.clearance.Box;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Rails;
import trammel.reading.quantity.QuantityPrinter;
import trammel.trade.plates.Outline;
import trammel.trade.plates.Point2;
import trammel.trade.plates.Straight;
import trammel.trade.steel.RectangularTube;
import trammel.trade.welding.FilletLegs;
import trammel.trade.welding.FilletWeld;
import trammel.trade.welding.WeldPlace;
import trammel.trade.welding.WeldPosition;
import trammel.trade.welding.WeldSeam;

/**
 * A tube from rail to rail. Where it lies within the depth of the rails its ends butt against their
 * inner faces; where it lies higher or lower it stands on two legs that lap the inner faces.
 *
 * @param name what the shop calls it
 * @param rails the rails
 * @param stock what it is made of
 * @param forwardMm its middle ahead of the axle, negative behind (mm)
 * @param upMm its middle above ground at ride (mm)
 * @param print for the reasons
 */
public record Crossmember(
    String name,
    Rails rails,
    MountStock stock,
    double forwardMm,
    double upMm,
    QuantityPrinter print) {
  private static final Vector3 FORWARD = new Vector3(1, 0, 0);
  private static final Vector3 UP = new Vector3(0, 0, 1);

  /** Longest lap of a leg on the rail, 3 in: common practice, no source. */
  private static final double LONGEST_LAP_MM = 3 * 25.4;

  /** A boxing plate reaches 2 in past what is welded to it: common practice, no source. */
  private static final double LEAD_MM = 2 * 25.4;

  private static final String BOXING = " boxing plate";

  private static final double ROUNDING_MM = 0.01;

  /** Height of the tube (mm). */
  public double heightMm() {
    return stock.section().heightMm();
  }

  /** Width of the tube along the vehicle (mm). */
  public double widthMm() {
    return stock.section().widthMm();
  }

  /** Flat of its face along the vehicle's height, between the rolled corners (mm). */
  public double flatMm() {
    return heightMm() - 4 * stock.section().wallMm();
  }

  /** Length to saw: between the rails' inner faces at the wider edge of its station (mm). */
  public double cutLengthMm() {
    double halfMm = widthMm() / 2;
    return 2
        * Math.max(rails.innerFaceMm(forwardMm - halfMm), rails.innerFaceMm(forwardMm + halfMm));
  }

  /** Angle by which its ends are off square, to lie flat on rails that taper in plan (rad). */
  public double endAngleRad() {
    double runMm = rails.frontMountsForwardMm();
    return Math.atan(Math.abs(rails.innerFaceMm(runMm) - rails.innerFaceMm(0)) / runMm);
  }

  /** True where its middle lies within the rails' depth, so that its ends butt against them. */
  public boolean isBetweenRails() {
    return upMm <= rails.topMm(forwardMm) + ROUNDING_MM
        && upMm >= rails.undersideMm(forwardMm) - ROUNDING_MM;
  }

  /** Height of its ends that meets the rails (mm). */
  private double metMm() {
    double topMm = Math.min(upMm + heightMm() / 2, rails.topMm(forwardMm));
    double lowMm = Math.max(upMm - heightMm() / 2, rails.undersideMm(forwardMm));
    return Math.max(0, topMm - lowMm);
  }

  private double lapMm() {
    return Math.min(LONGEST_LAP_MM, rails.depthMm());
  }

  /** Length of each leg, its lap on the rail included; 0 without legs (mm). */
  public double legMm() {
    if (isBetweenRails()) {
      return 0;
    }
    double halfMm = heightMm() / 2;
    double beyondMm =
        upMm > rails.topMm(forwardMm)
            ? upMm - halfMm - rails.topMm(forwardMm)
            : rails.undersideMm(forwardMm) - upMm - halfMm;
    return lapMm() + beyondMm;
  }

  /** Weld round each end, or round the foot of each leg (mm). */
  public double weldPerEndMm() {
    RectangularTube section = stock.section();
    if (!isBetweenRails()) {
      return 2 * lapMm() + widthMm();
    }
    boolean whole = metMm() > heightMm() - ROUNDING_MM;
    return whole ? section.outsidePerimeterMm() : 2 * metMm() + widthMm();
  }

  /** Length of the boxing plate behind each end; 0 on boxed rails (mm). */
  public double boxingRunMm() {
    return rails.boxed() ? 0 : widthMm() + 2 * LEAD_MM;
  }

  /**
   * Adds tube, legs, boxing, welds and work.
   *
   * @param why what asks for the crossmember
   */
  public void addTo(WorkPlan.Builder plan, String why) {
    String between =
        print.length(cutLengthMm())
            + " between the rails' inner faces "
            + station()
            + ", middle "
            + print.length(upMm)
            + " above ground at ride";
    plan.add(
        new TubeNeed(
            name,
            stock.tube().key(),
            cutLengthMm(),
            tube(),
            List.of(new Held(Assembly.FRAME, tubePlace())),
            endsText(),
            why + "; " + between));
    addLegs(plan);
    addBoxing(plan);
    addWelds(plan, why);
    plan.add(new OperationNeed("fit-shock-crossmember", 1, "1 " + name, why + "; " + between));
    int cuts = isBetweenRails() ? 1 : 3;
    plan.add(
        new OperationNeed("saw-tube", cuts, Words.count(cuts, "piece") + " of the " + name, why));
  }

  private String station() {
    return print.length(Math.abs(forwardMm))
        + (forwardMm < 0 ? " behind the axle" : " ahead of the axle");
  }

  private String endsText() {
    double angleRad = endAngleRad();
    return Math.toDegrees(angleRad) < 0.5
        ? "both ends square"
        : "both ends " + print.angle(angleRad) + " off square, to the rails' taper";
  }

  private void addLegs(WorkPlan.Builder plan) {
    if (isBetweenRails()) {
      return;
    }
    boolean above = upMm > rails.topMm(forwardMm);
    plan.add(
        new TubeNeed(
            name + " leg",
            stock.tube().key(),
            legMm(),
            Prism.plate(section(), legMm()),
            List.of(
                new Held("left", Assembly.FRAME, legPlace(true)),
                new Held("right", Assembly.FRAME, legPlace(false))),
            "both ends square",
            "the "
                + name
                + " stands "
                + print.length(
                    Math.abs(
                        upMm - (above ? rails.topMm(forwardMm) : rails.undersideMm(forwardMm))))
                + (above ? " above the rails' top" : " below the rails' underside")
                + "; each leg laps the rail's inner face by "
                + print.length(lapMm())));
  }

  private void addBoxing(WorkPlan.Builder plan) {
    if (rails.boxed()) {
      return;
    }
    double halfMm = boxingRunMm() / 2;
    String why =
        "the channel opens inward "
            + station()
            + "; the end of the "
            + name
            + " ("
            + print.length(widthMm())
            + " wide) needs a plate "
            + print.length(boxingRunMm())
            + " long behind it";
    for (boolean left : new boolean[] {true, false}) {
      plan.add(
          new RailClosing(
              RailClosing.Kind.MOUNT,
              name + BOXING,
              left ? "left" : "right",
              left,
              forwardMm - halfMm,
              forwardMm + halfMm,
              new BracketStock(stock.boxing()),
              name,
              why));
    }
  }

  /**
   * Adds what loads the tube and its legs: an upright force on each side, which the rails hold
   * pinned, for an open rail twists; what turns the tube its two ends hold together.
   *
   * @param left name of the spring, shock or bar on the left
   * @param right name of its twin
   * @param acrossMm distance of each from the centre plane (mm), less than to the rail
   * @param offMm distance of the force from the tube's middle along the vehicle (mm)
   */
  public void addLoads(
      WorkPlan.Builder plan, String left, String right, double acrossMm, double offMm) {
    double fromRailMm = fromRailMm(acrossMm);
    double far = fromRailMm / (2 * rails.innerFaceMm(forwardMm));
    double near = 1 - far;
    addLoads(
        plan,
        Map.of(left, bent(near, fromRailMm, offMm), right, bent(far, fromRailMm, offMm)),
        Map.of(left, onLeg(near, offMm), right, onLeg(far, offMm)));
  }

  /**
   * Adds what one upright force loads.
   *
   * @param unit name of the spring, shock or bar
   * @param acrossMm its distance from the centre plane (mm)
   * @param offMm its distance from the tube's middle along the vehicle (mm)
   */
  public void addLoad(WorkPlan.Builder plan, String unit, double acrossMm, double offMm) {
    double fromRailMm = fromRailMm(acrossMm);
    double near = 1 - fromRailMm / (2 * rails.innerFaceMm(forwardMm));
    addLoads(plan, Map.of(unit, bent(near, fromRailMm, offMm)), Map.of(unit, onLeg(near, offMm)));
  }

  private double fromRailMm(double acrossMm) {
    return Math.max(0, rails.innerFaceMm(forwardMm) - Math.abs(acrossMm));
  }

  /** The tube at a force of 1 N of which a share goes to the rail that is so far from it. */
  private double bent(double share, double fromRailMm, double offMm) {
    return MemberStress.tube(stock.section(), share * fromRailMm, 0, share * offMm, 0);
  }

  private double onLeg(double share, double offMm) {
    return MemberStress.tube(stock.section(), share * heightMm() / 2, share * offMm, 0, share);
  }

  private void addLoads(
      WorkPlan.Builder plan, Map<String, Double> onTube, Map<String, Double> onLeg) {
    double yieldMPa = stock.tube().yieldMPa();
    plan.add(new LoadedMember(name, onTube, yieldMPa, "bent and twisted between the rails"));
    if (!isBetweenRails()) {
      plan.add(
          new LoadedMember(name + " leg", onLeg, yieldMPa, "bent beside the rail and along it"));
    }
  }

  /** The room that it takes, its legs beside the rails included. */
  public List<Box> room() {
    double rearMm = forwardMm - widthMm() / 2;
    double frontMm = forwardMm + widthMm() / 2;
    double sideMm = rails.innerFaceMm(forwardMm);
    List<Box> room = new ArrayList<>();
    room.add(
        Box.between(
            rearMm, frontMm, -sideMm, sideMm, upMm - heightMm() / 2, upMm + heightMm() / 2));
    if (!isBetweenRails()) {
      double footMm =
          above() ? rails.topMm(forwardMm) - lapMm() : rails.undersideMm(forwardMm) + lapMm();
      double inwardMm = sideMm - heightMm();
      double lowMm = Math.min(footMm, upMm);
      double highMm = Math.max(footMm, upMm);
      room.add(Box.between(rearMm, frontMm, inwardMm, sideMm, lowMm, highMm));
      room.add(Box.between(rearMm, frontMm, -sideMm, -inwardMm, lowMm, highMm));
    }
    return room;
  }

  /** Its section, width along x and height along y. */
  private Outline section() {
    return Prism.tubeSection(widthMm(), heightMm(), stock.section().wallMm());
  }

  /** How much wider apart the inner faces are per length forward, on one side. */
  private double taper() {
    return rails.innerFaceMm(forwardMm + 0.5) - rails.innerFaceMm(forwardMm - 0.5);
  }

  private Solid tube() {
    return new Prism(section(), 2 * rails.innerFaceMm(forwardMm), -taper(), taper());
  }

  /** From the right rail to the left one. */
  private Place tubePlace() {
    return Place.of(
        new Point3(forwardMm, -rails.innerFaceMm(forwardMm), upMm), FORWARD, new Vector3(0, 0, -1));
  }

  private boolean above() {
    return upMm > rails.topMm(forwardMm);
  }

  /** A leg under the tube's end where it stands over the rails, over it where it hangs below. */
  private Place legPlace(boolean left) {
    double sideMm = rails.innerFaceMm(forwardMm) - heightMm() / 2;
    double footMm =
        above() ? rails.topMm(forwardMm) - lapMm() : rails.undersideMm(forwardMm) + lapMm();
    return Place.of(
        new Point3(forwardMm, left ? sideMm : -sideMm, footMm),
        FORWARD,
        new Vector3(0, above() ? 1 : -1, 0));
  }

  /** The rail's inner face at its middle: x along the rail, y up. */
  private Place face(boolean left) {
    double side = left ? 1 : -1;
    return Place.of(
        new Point3(forwardMm, side * rails.innerFaceMm(forwardMm), upMm),
        FORWARD.plus(new Vector3(0, side * taper(), 0)),
        UP);
  }

  private SeamRun railRun(boolean left) {
    double halfMm = widthMm() / 2;
    String rail = VehicleParts.rail(left);
    List<String> onto = rails.boxed() ? List.of(rail) : List.of(backing(left), rail);
    if (!isBetweenRails()) {
      double footMm = legPlace(left).origin().zMm() - upMm;
      double lapTopMm = footMm + (above() ? lapMm() : -lapMm());
      return new SeamRun(
          List.of(Held.id(name + " leg", left ? "left" : "right")),
          onto,
          new FlatPath(
              face(left),
              List.of(
                  edge(-halfMm, lapTopMm, -halfMm, footMm),
                  edge(-halfMm, footMm, halfMm, footMm),
                  edge(halfMm, footMm, halfMm, lapTopMm))));
    }
    if (metMm() > heightMm() - ROUNDING_MM) {
      return new SeamRun(List.of(name), onto, FlatPath.round(face(left), section().outer()));
    }
    double topMm = Math.min(heightMm() / 2, rails.topMm(forwardMm) - upMm);
    double lowMm = topMm - metMm();
    boolean over = topMm < heightMm() / 2 - ROUNDING_MM;
    double closedMm = over ? lowMm : topMm;
    double openMm = over ? topMm : lowMm;
    return new SeamRun(
        List.of(name),
        onto,
        new FlatPath(
            face(left),
            List.of(
                edge(-halfMm, openMm, -halfMm, closedMm),
                edge(-halfMm, closedMm, halfMm, closedMm),
                edge(halfMm, closedMm, halfMm, openMm))));
  }

  private SeamRun legRun(boolean left) {
    Place end = legPlace(left).shifted(0, 0, legMm());
    return new SeamRun(
        name,
        Held.id(name + " leg", left ? "left" : "right"),
        FlatPath.round(end, section().outer()));
  }

  /** Id of the boxing plate behind one of its ends. */
  private String backing(boolean left) {
    return Held.id(name + BOXING, left ? "left" : "right");
  }

  private static Straight edge(double startXMm, double startYMm, double endXMm, double endYMm) {
    return new Straight(new Point2(startXMm, startYMm), new Point2(endXMm, endYMm));
  }

  private void addWelds(WorkPlan.Builder plan, String why) {
    double railMm = rails.boxed() ? rails.wallMm() : stock.boxing().form().thicknessMm();
    FilletWeld fillet =
        FilletWeld.ofLeg(FilletLegs.smallestMm(Math.min(railMm, stock.section().wallMm())));
    boolean butts = isBetweenRails();
    plan.add(
        WeldSeam.along(
            butts ? name + " to rail" : name + " leg to rail",
            fillet,
            List.of(railRun(true), railRun(false)),
            WeldPosition.VERTICAL,
            WeldPlace.VEHICLE,
            butts ? "round each end of the tube" : "both edges and the foot of each leg"));
    if (!butts) {
      plan.add(
          WeldSeam.along(
              name + " to leg",
              FilletWeld.ofLeg(FilletLegs.smallestMm(stock.section().wallMm())),
              List.of(legRun(true), legRun(false)),
              WeldPosition.HORIZONTAL,
              WeldPlace.VEHICLE,
              "round the top of each leg; " + why));
    }
  }
}
