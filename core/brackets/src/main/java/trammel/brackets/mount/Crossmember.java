package trammel.brackets.mount;

import static trammel.engine.quantity.Amount.angle;
import static trammel.engine.quantity.Amount.length;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import trammel.assembly.Assembly;
import trammel.assembly.FlatPath;
import trammel.assembly.Held;
import trammel.assembly.Place;
import trammel.assembly.Prism;
import trammel.assembly.SeamRun;
import trammel.assembly.Solid;
import trammel.brackets.work.BracketStock;
import trammel.brackets.work.CrossmemberHold;
import trammel.brackets.work.LoadedMember;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.RailClosing;
import trammel.brackets.work.Seam;
import trammel.brackets.work.TubeNeed;
import trammel.brackets.work.VehicleParts;
import trammel.brackets.work.WorkPlan;
import trammel.engine.clearance.Box;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Rails;
import trammel.engine.quantity.Phrase;
import trammel.engine.strength.OpenChannel;
import trammel.engine.strength.RailTie;
import trammel.engine.strength.RectangularTubeSection;
import trammel.trade.plates.Outline;
import trammel.trade.plates.Point2;
import trammel.trade.plates.Straight;
import trammel.trade.steel.RectangularTube;
import trammel.trade.welding.FilletWeld;
import trammel.trade.welding.WeldPlace;
import trammel.trade.welding.WeldPosition;
import trammel.trade.welding.WeldSeam;

/**
 * A tube from rail to rail. Where it lies within the depth of the rails its ends butt against their
 * inner faces; where it lies higher or lower it stands on two legs that lap the inner faces: pieces
 * of the tube under its ends, or plates to which its ends are welded.
 *
 * @param name what the shop calls it
 * @param rails the rails
 * @param stock what it is made of
 * @param forwardMm its middle ahead of the axle, negative behind (mm)
 * @param upMm its middle above ground at ride (mm)
 */
public record Crossmember(
    String name, Rails rails, MountStock stock, double forwardMm, double upMm) {
  private static final Vector3 FORWARD = new Vector3(1, 0, 0);
  private static final Vector3 UP = new Vector3(0, 0, 1);

  /** Longest lap of a leg on the rail, 4 in: common practice, no source. */
  private static final double LONGEST_LAP_MM = 4 * 25.4;

  /**
   * Share of the tube's height that must lie on the rails for its ends to be welded to them without
   * legs: common practice, no source.
   */
  private static final double MET_SHARE = 0.75;

  /** A boxing plate reaches 2 in past what is welded to it: common practice, no source. */
  private static final double LEAD_MM = 2 * 25.4;

  private static final String BOXING = " boxing plate";

  static final double ROUNDING_MM = 0.01;

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
    double widerMm =
        Math.max(rails.innerFaceMm(forwardMm - halfMm), rails.innerFaceMm(forwardMm + halfMm));
    return 2 * (widerMm - besideTubeMm());
  }

  /** What it stands on; empty between the rails. */
  Optional<CrossmemberLegs> legs() {
    if (isBetweenRails()) {
      return Optional.empty();
    }
    return Optional.of(stock.legs() == Legs.PLATE ? new PlateLegs(this) : new TubeLegs(this));
  }

  /** Thickness of what is between its ends and the rails' inner faces (mm). */
  private double besideTubeMm() {
    return legs().map(CrossmemberLegs::besideTubeMm).orElse(0.0);
  }

  private double legWidthMm() {
    return legs().map(CrossmemberLegs::widthMm).orElse(widthMm());
  }

  /** Angle by which its ends are off square, to lie flat on rails that taper in plan (rad). */
  public double endAngleRad() {
    double runMm = rails.frontMountsForwardMm();
    return Math.atan(Math.abs(rails.innerFaceMm(runMm) - rails.innerFaceMm(0)) / runMm);
  }

  /** True where enough of its ends lies on the rails' inner faces for them to butt there. */
  public boolean isBetweenRails() {
    return metMm() >= MET_SHARE * Math.min(heightMm(), rails.depthMm()) - ROUNDING_MM;
  }

  /** Height of its ends that meets the rails (mm). */
  private double metMm() {
    double topMm = Math.min(upMm + heightMm() / 2, rails.topMm(forwardMm));
    double lowMm = Math.max(upMm - heightMm() / 2, rails.undersideMm(forwardMm));
    return Math.max(0, topMm - lowMm);
  }

  /** How far each leg laps the rail (mm). */
  double lapMm() {
    return Math.min(LONGEST_LAP_MM, rails.depthMm());
  }

  /** Length of each leg, its lap on the rail included; 0 without legs (mm). */
  public double legMm() {
    return legs().map(CrossmemberLegs::lengthMm).orElse(0.0);
  }

  /** How far its side nearer to the rails is beyond them (mm), negative where it overlaps them. */
  double beyondMm() {
    double halfMm = heightMm() / 2;
    return above()
        ? upMm - halfMm - rails.topMm(forwardMm)
        : rails.undersideMm(forwardMm) - upMm - halfMm;
  }

  /** Weld round each end, or round the foot of each leg (mm). */
  public double weldPerEndMm() {
    RectangularTube section = stock.section();
    if (!isBetweenRails()) {
      return 2 * lapMm() + legWidthMm();
    }
    boolean whole = metMm() > heightMm() - ROUNDING_MM;
    return whole ? section.outsidePerimeterMm() : 2 * metMm() + widthMm();
  }

  /** Length of the boxing plate behind each end; 0 on boxed rails (mm). */
  public double boxingRunMm() {
    return rails.boxed() ? 0 : legWidthMm() + 2 * LEAD_MM;
  }

  /**
   * Adds tube, legs, boxing, welds and work.
   *
   * @param why what asks for the crossmember
   */
  public void addTo(WorkPlan.Builder plan, Phrase why) {
    Phrase between =
        Phrase.of(
            "{} between the rails' inner faces {}, middle {} above ground at ride",
            length(cutLengthMm()),
            station(),
            length(upMm));
    plan.add(
        new TubeNeed(
            name,
            stock.tube().key(),
            cutLengthMm(),
            tube(),
            List.of(new Held(Assembly.FRAME, tubePlace())),
            endsText(),
            Phrase.of("{}; {}", why, between)));
    legs().ifPresent(legs -> legs.addTo(plan, legsWhy()));
    addBoxing(plan);
    addWelds(plan, why);
    plan.add(
        new OperationNeed(
            "fit-shock-crossmember", 1, "1 " + name, Phrase.of("{}; {}", why, between)));
    int cuts = 1 + legs().map(CrossmemberLegs::pieces).orElse(0);
    plan.add(
        new OperationNeed("saw-tube", cuts, Words.count(cuts, "piece") + " of the " + name, why));
  }

  private Phrase station() {
    return Phrase.of(
        "{}{}",
        length(Math.abs(forwardMm)),
        forwardMm < 0 ? " behind the axle" : " ahead of the axle");
  }

  private Phrase endsText() {
    double angleRad = endAngleRad();
    return Math.toDegrees(angleRad) < 0.5
        ? Phrase.of("both ends square")
        : Phrase.of("both ends {} off square, to the rails' taper", angle(angleRad));
  }

  private Phrase legsWhy() {
    if (metMm() > ROUNDING_MM) {
      return Phrase.of(
          "only {} of the {}'s ends, {} high, lie on the rails; each leg laps the rail's inner face"
              + " by {}",
          length(metMm()),
          name,
          length(heightMm()),
          length(lapMm()));
    }
    double offMm = upMm - (above() ? rails.topMm(forwardMm) : rails.undersideMm(forwardMm));
    return Phrase.of(
        "the {} stands {}{}; each leg laps the rail's inner face by {}",
        name,
        length(Math.abs(offMm)),
        above() ? " above the rails' top" : " below the rails' underside",
        length(lapMm()));
  }

  private void addBoxing(WorkPlan.Builder plan) {
    if (rails.boxed()) {
      return;
    }
    double halfMm = boxingRunMm() / 2;
    Phrase why =
        Phrase.of(
            "the channel opens inward {}; the end of the {} ({} wide) needs a plate"
                + " {} long behind it",
            station(),
            name,
            length(widthMm()),
            length(boxingRunMm()));
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
   * @param acrossShare what each pushes across the vehicle for each 1 N upright
   */
  public void addLoads(
      WorkPlan.Builder plan,
      String left,
      String right,
      double acrossMm,
      double offMm,
      double acrossShare) {
    double flatwise = legs().map(legs -> legs.flatwise(acrossShare)).orElse(0.0);
    double fromRailMm = fromRailMm(acrossMm);
    double far = fromRailMm / spanMm();
    double near = 1 - far;
    addLoads(
        plan,
        Map.of(left, bent(near, fromRailMm, offMm), right, bent(far, fromRailMm, offMm)),
        Map.of(left, onLeg(near, offMm) + flatwise, right, onLeg(far, offMm) + flatwise));
    new CrossmemberEnds(this).addWelds(plan, left, right, fromRailMm, offMm, acrossShare);
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
    double near = 1 - fromRailMm / spanMm();
    addLoads(plan, Map.of(unit, bent(near, fromRailMm, offMm)), Map.of(unit, onLeg(near, offMm)));
    new CrossmemberEnds(this).addWeld(plan, unit, acrossMm >= 0, fromRailMm, offMm);
  }

  /** Between the rails' inner faces (mm). */
  double spanMm() {
    return 2 * rails.innerFaceMm(forwardMm);
  }

  private double fromRailMm(double acrossMm) {
    return Math.max(0, rails.innerFaceMm(forwardMm) - Math.abs(acrossMm));
  }

  /** The tube at a force of 1 N of which a share goes to the rail that is so far from it. */
  private double bent(double share, double fromRailMm, double offMm) {
    return MemberStress.tube(stock.section(), share * fromRailMm, 0, share * offMm, 0);
  }

  private double onLeg(double share, double offMm) {
    return legs().map(legs -> legs.bent(share, offMm)).orElse(0.0);
  }

  private void addLoads(
      WorkPlan.Builder plan, Map<String, Double> onTube, Map<String, Double> onLeg) {
    double yieldMPa = stock.tube().yieldMPa();
    plan.add(hold(onTube.keySet(), yieldMPa));
    plan.add(new LoadedMember(name, onTube, yieldMPa, "bent and twisted between the rails"));
    if (!isBetweenRails()) {
      plan.add(
          new LoadedMember(name + " leg", onLeg, yieldMPa, "bent beside the rail and along it"));
    }
  }

  /** Its section with the wall that counts for strength. */
  RectangularTubeSection design() {
    RectangularTube tube = stock.section();
    return new RectangularTubeSection(tube.heightMm(), tube.widthMm(), tube.wallMm())
        .withDesignWall();
  }

  /** How far a leg leans for a moment at its top (rad/Nmm); 0 without legs. */
  double givePerNmm() {
    return legs()
        .map(legs -> Math.max(0, legs.freeMm()) / (OpenChannel.YOUNG_MPA * legs.secondMomentMm4()))
        .orElse(0.0);
  }

  /** Bent upright as the rails lean, its legs with it. */
  private CrossmemberHold hold(Set<String> carried, double yieldMPa) {
    RailTie tie =
        new RailTie(
            forwardMm,
            2 * endMm(),
            OpenChannel.YOUNG_MPA * design().secondMomentXMm4(),
            givePerNmm());
    double tubeMm3 = design().modulusTopMm3();
    double legMm3 = legs().map(CrossmemberLegs::modulusMm3).orElse(tubeMm3);
    return new CrossmemberHold(name, tie, tubeMm3, legMm3, yieldMPa, carried);
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
    legs().ifPresent(legs -> room.addAll(legs.room()));
    return room;
  }

  /** Its section, width along x and height along y. */
  Outline section() {
    return Prism.tubeSection(widthMm(), heightMm(), stock.section().wallMm());
  }

  /** How much wider apart the inner faces are per length forward, on one side. */
  private double taper() {
    return rails.innerFaceMm(forwardMm + 0.5) - rails.innerFaceMm(forwardMm - 0.5);
  }

  private Solid tube() {
    return new Prism(section(), 2 * endMm(), -taper(), taper());
  }

  /** Distance of its ends from the centre plane (mm). */
  private double endMm() {
    return rails.innerFaceMm(forwardMm) - besideTubeMm();
  }

  /** From the right rail to the left one. */
  private Place tubePlace() {
    return Place.of(new Point3(forwardMm, -endMm(), upMm), FORWARD, new Vector3(0, 0, -1));
  }

  /** Whether it lies in the upper half of the rails or over them. */
  boolean above() {
    return 2 * upMm > rails.topMm(forwardMm) + rails.undersideMm(forwardMm);
  }

  /** Height at which its legs begin on the rails (mm). */
  double footMm() {
    return above() ? rails.topMm(forwardMm) - lapMm() : rails.undersideMm(forwardMm) + lapMm();
  }

  /** The rail's inner face at its middle: x along the rail, y up. */
  Place face(boolean left) {
    double side = left ? 1 : -1;
    return Place.of(
        new Point3(forwardMm, side * rails.innerFaceMm(forwardMm), upMm),
        FORWARD.plus(new Vector3(0, side * taper(), 0)),
        UP);
  }

  /** Ids of what stands behind one of its ends. */
  List<String> behind(boolean left) {
    String rail = VehicleParts.rail(left);
    return rails.boxed() ? List.of(rail) : List.of(backing(left), rail);
  }

  /** Where one of its ends is welded to a rail, without legs. */
  SeamRun railRun(boolean left) {
    double halfMm = widthMm() / 2;
    List<String> onto = behind(left);
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

  /** Id of the boxing plate behind one of its ends. */
  private String backing(boolean left) {
    return Held.id(name + BOXING, left ? "left" : "right");
  }

  static Straight edge(double startXMm, double startYMm, double endXMm, double endYMm) {
    return new Straight(new Point2(startXMm, startYMm), new Point2(endXMm, endYMm));
  }

  /** Of its ends, or of its legs, on the rails. */
  FilletWeld railFillet() {
    double railMm = rails.boxed() ? rails.wallMm() : stock.boxing().form().thicknessMm();
    return FilletWeld.ofLeg(Seam.legMm(railMm, stock.section().wallMm()));
  }

  /** Between tube and legs. */
  FilletWeld legFillet() {
    return FilletWeld.ofLeg(Seam.legMm(stock.section().wallMm(), stock.section().wallMm()));
  }

  private void addWelds(WorkPlan.Builder plan, Phrase why) {
    Optional<CrossmemberLegs> legs = legs();
    plan.add(
        WeldSeam.along(
            legs.isEmpty() ? name + " to rail" : name + " leg to rail",
            railFillet(),
            Stream.of(true, false)
                .flatMap(
                    left ->
                        legs
                            .map(one -> one.onRail(left))
                            .orElseGet(() -> List.of(railRun(left)))
                            .stream())
                .toList(),
            WeldPosition.VERTICAL,
            WeldPlace.VEHICLE,
            legs.isEmpty()
                ? Phrase.of("round each end of the tube")
                : Phrase.of("both edges and the foot of each leg")));
    if (legs.isPresent()) {
      plan.add(
          WeldSeam.along(
              name + " to leg",
              legFillet(),
              List.of(legs.get().onTube(true), legs.get().onTube(false)),
              WeldPosition.HORIZONTAL,
              WeldPlace.VEHICLE,
              Phrase.of("{}; {}", legs.get().roundText(), why)));
    }
  }
}
