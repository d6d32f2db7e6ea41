package trammel.brackets.bar;

import static trammel.engine.quantity.Amount.length;

import java.util.List;
import java.util.Optional;
import trammel.assembly.Compound;
import trammel.assembly.CopePath;
import trammel.assembly.CopedTube;
import trammel.assembly.FlatPath;
import trammel.assembly.Held;
import trammel.assembly.Place;
import trammel.assembly.SeamRun;
import trammel.assembly.Solid;
import trammel.assembly.Turned;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.material.EndFitting;
import trammel.brackets.work.BoltNeed;
import trammel.brackets.work.BoughtPiece;
import trammel.brackets.work.BracketBasis;
import trammel.brackets.work.BracketStock;
import trammel.brackets.work.PartNeed;
import trammel.brackets.work.Seam;
import trammel.brackets.work.SidePair;
import trammel.brackets.work.TubeNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.End;
import trammel.engine.quantity.Phrase;
import trammel.trade.steel.RoundTube;
import trammel.trade.tubes.BushedEnd;
import trammel.trade.tubes.Cope;
import trammel.trade.tubes.ThreadedEnd;
import trammel.trade.tubes.TubeCut;
import trammel.trade.tubes.TubeEnd;

/**
 * Builds one bar: its tube sawn to length, its two joints, tube ends, jam nuts and welds.
 *
 * @param bar the bar as laid out
 * @param makeUp what it is made of
 * @param bolts direction of the bolts through its joints
 */
public record BarMaking(Bar bar, BarMakeUp makeUp, Vector3 bolts) {
  /** A jam nut is 1.8 thread diameters over its corners: common practice, no source. */
  private static final double NUT_RADIUS = 0.9;

  /** A bar whose bolts lie straight across the vehicle. */
  public static BarMaking along(Bar bar, BarMakeUp makeUp) {
    return new BarMaking(bar, makeUp, across(new Vector3(1, 0, 0)));
  }

  /** A bar whose bolts lie level and square to it. */
  public static BarMaking turned(Bar bar, BarMakeUp makeUp) {
    return new BarMaking(bar, makeUp, across(heading(bar)));
  }

  /** A bar across the vehicle, whose bolts lie along it. */
  public static BarMaking across(Bar bar, BarMakeUp makeUp) {
    return new BarMaking(bar, makeUp, new Vector3(1, 0, 0));
  }

  private static Vector3 across(Vector3 heading) {
    return new Vector3(-heading.y(), heading.x(), 0);
  }

  /** The way a bar points in plan, from axle to frame. */
  private static Vector3 heading(Bar bar) {
    Vector3 along = bar.axle().to(bar.frame());
    return new Vector3(along.x(), along.y(), 0).normalized();
  }

  /** The way it points in plan, from axle to frame, a unit vector. */
  public Vector3 heading() {
    return heading(bar);
  }

  /** Its frame joint in the bracket there. */
  public JointSeat frameSeat() {
    return new JointSeat(bar.frameJoint(), plateMm(), makeUp.frameHoles());
  }

  /** Its axle joint in the bracket there. */
  public JointSeat axleSeat() {
    return new JointSeat(bar.axleJoint(), plateMm());
  }

  /** What its brackets are cut from. */
  public BracketStock stock() {
    return new BracketStock(makeUp.bracket(), plateMm(), makeUp.lightened());
  }

  /** As the layout has it, which may try another plate than the make-up names. */
  private double plateMm() {
    return bar.bracket().isPresent()
        ? bar.bracket().get().thicknessMm()
        : makeUp.bracket().form().thicknessMm();
  }

  /**
   * The bolt through its joint at one end and through the two plates about it.
   *
   * @param sides where the plates stand
   * @param plates name of the plates
   * @param basis bolts that can be bought, and the printer for the reason
   */
  public BoltNeed bolt(End end, SidePair sides, String plates, BracketBasis basis) {
    JointSeat seat = end == End.FRAME ? frameSeat() : axleSeat();
    return new BoltNeed(
        basis.bolts().of(seat.joint().boltDiameterMm()).key(),
        seat.stackMm(),
        List.of(sides.bolt(bar.point(end), "", plates, jointId(bar, end), !isOutside(end, basis))),
        bar.name() + (end == End.FRAME ? " frame end" : " axle end"),
        Phrase.of(
            "joint of {} between two plates of {}",
            length(seat.joint().widthMm()),
            length(plateMm())));
  }

  /** Outside the rails the rail is on the inner side, and the bolt's head belongs there. */
  private boolean isOutside(End end, BracketBasis basis) {
    Point3 joint = bar.point(end);
    return !bar.isAcross() && Math.abs(joint.yMm()) > basis.rails().outerFaceMm(joint.xMm());
  }

  /** Id of the joint at one end of a bar. */
  public static String jointId(Bar bar, End end) {
    return jointId(bar.name(), end);
  }

  /** Id of the joint at one end of the bar of a name. */
  public static String jointId(String bar, End end) {
    return bar + (end == End.FRAME ? " frame end joint" : " axle end joint");
  }

  /**
   * What to saw off for the bar.
   *
   * @throws UnworkableLayoutException if its joints leave no tube between them
   */
  public TubeCut cut() {
    try {
      return TubeCut.straight(
          bar.name(),
          tube(),
          bar.lengthMm(),
          ShankEnd.of(makeUp.frameEnd()),
          ShankEnd.of(makeUp.axleEnd()));
    } catch (IllegalArgumentException refused) {
      throw new UnworkableLayoutException(
          Phrase.of("{} cannot be made with these joints. {}", bar.name(), refused.getMessage()));
    }
  }

  private RoundTube tube() {
    return new RoundTube(bar.tube().outsideDiameterMm(), bar.tube().wallMm());
  }

  /** Tube, joints and welds of the bar. */
  public WorkPlan plan() {
    TubeCut cut = cut();
    WorkPlan.Builder plan = new WorkPlan.Builder();
    plan.add(
        new TubeNeed(
            bar.name(),
            makeUp.tube().key(),
            cut.lengthMm(),
            new CopedTube(tube(), cut.lengthMm(), cope(cut.start()), cope(cut.end())),
            List.of(
                new Held(bar.name(), end(End.FRAME).shifted(0, 0, cut.start().takeUpMm(tube())))),
            Phrase.of(
                "{}; {}",
                endWords("frame end", makeUp.frameEnd()),
                endWords("axle end", makeUp.axleEnd())),
            Phrase.of(
                "{} from joint to joint, less {} at the frame end and {} at the axle end{}",
                length(bar.lengthMm()),
                length(cut.start().takeUpMm(tube())),
                length(cut.end().takeUpMm(tube())),
                adjustment(cut))));
    addEnd(plan, End.FRAME, makeUp.frameEnd(), cut.start());
    addEnd(plan, End.AXLE, makeUp.axleEnd(), cut.end());
    return plan.build();
  }

  private Optional<Cope> cope(TubeEnd end) {
    return end instanceof BushedEnd bushed ? Optional.of(bushed.cope(tube())) : Optional.empty();
  }

  /**
   * The axes of one end: origin in the joint's centre, z along the bar to its other end, x along
   * the joint's sleeve, which is as near to its bolt as square to the bar allows.
   */
  private Place end(End end) {
    Point3 joint = bar.point(end);
    Vector3 along = joint.to(bar.point(end == End.FRAME ? End.AXLE : End.FRAME)).normalized();
    Vector3 sleeve = bolts.minus(along.scaled(bolts.dot(along))).normalized();
    return Place.of(joint, sleeve, along.cross(sleeve));
  }

  private static Phrase endWords(String where, EndFitting end) {
    return end.threaded()
        ? Phrase.of("{} square for a weld-in tube end", where)
        : Phrase.of(
            "{} coped square to a barrel of {}", where, length(2 * end.joint().barrelRadiusMm()));
  }

  private static Phrase adjustment(TubeCut cut) {
    double shorterMm = cut.start().canShortenMm() + cut.end().canShortenMm();
    return shorterMm > 0 ? Phrase.of("; sets {} either way", length(shorterMm)) : Phrase.NONE;
  }

  private void addEnd(WorkPlan.Builder plan, End end, EndFitting fitting, TubeEnd tubeEnd) {
    String where = end == End.FRAME ? "frame end" : "axle end";
    String at = where + " of " + bar.name();
    String joint = jointId(bar, end);
    Place place = end(end);
    Place tubeStart = place.shifted(0, 0, tubeEnd.takeUpMm(tube()));
    String seam = bar.name() + " " + where + " to tube";
    double thicknessMm = bar.tube().wallMm();
    if (tubeEnd instanceof ThreadedEnd threaded) {
      addThreaded(plan, where, fitting, threaded, place);
      plan.add(
          Seam.onBench(
              seam,
              thicknessMm,
              thicknessMm,
              List.of(
                  new SeamRun(
                      bar.name() + " " + where + " tube end",
                      bar.name(),
                      FlatPath.circle(tubeStart, bar.tube().outsideDiameterMm() / 2))),
              Phrase.of(
                  "once round the weld-in tube end, {} across",
                  length(bar.tube().outsideDiameterMm()))));
      return;
    }
    BoughtPiece barrel = new BoughtPiece(joint, bar.name(), place, barrel(fitting), List.of());
    plan.add(PartNeed.placed(fitting.key(), List.of(barrel), Phrase.text(at)));
    plan.add(
        Seam.onBench(
            seam,
            thicknessMm,
            thicknessMm,
            List.of(
                new SeamRun(
                    bar.name(), joint, new CopePath(tubeStart, cope(tubeEnd).orElseThrow()))),
            Phrase.of("once round the coped tube on its barrel")));
  }

  /** Joint, weld-in tube end and jam nut, the joint at the middle of its thread. */
  private void addThreaded(
      WorkPlan.Builder plan, String where, EndFitting fitting, ThreadedEnd end, Place place) {
    String at = where + " of " + bar.name();
    String joint = bar.name() + " " + where + " joint";
    String tubeEnd = bar.name() + " " + where + " tube end";
    double threadMm = fitting.threadMm() / 2;
    double barrelMm = fitting.joint().barrelRadiusMm();
    Solid shank =
        new Compound(
            List.of(
                new Compound.Member(Place.RIDE, barrel(fitting)),
                new Compound.Member(
                    Place.at(new Point3(0, 0, barrelMm)),
                    Turned.bar(threadMm, fitting.shankMm() - barrelMm))));
    plan.add(
        PartNeed.placed(
            fitting.key(),
            List.of(new BoughtPiece(joint, bar.name(), place, shank, List.of(tubeEnd))),
            Phrase.text(at)));
    double faceMm = end.range().middleMm();
    double outMm = bar.tube().outsideDiameterMm() / 2;
    double boreMm = tube().insideMm() / 2;
    double proudMm = end.proudMm();
    double endMm = proudMm + end.insideMm();
    Solid weldIn =
        boreMm > threadMm
            ? Turned.through(
                threadMm, 0, outMm, 0, outMm, proudMm, boreMm, proudMm, boreMm, endMm, threadMm,
                endMm)
            : Turned.ring(threadMm, Math.max(outMm, 1.1 * threadMm), proudMm);
    plan.add(
        PartNeed.placed(
            fitting.tubeEndKey(),
            List.of(
                new BoughtPiece(
                    tubeEnd, bar.name(), place.shifted(0, 0, faceMm), weldIn, List.of())),
            Phrase.of("takes the shank at the {}", at)));
    double nutMm = end.joint().jamNutMm();
    plan.add(
        PartNeed.placed(
            fitting.jamNutKey(),
            List.of(
                new BoughtPiece(
                    bar.name() + " " + where + " jam nut",
                    bar.name(),
                    place.shifted(0, 0, faceMm - nutMm),
                    Turned.ring(threadMm, NUT_RADIUS * fitting.threadMm(), nutMm),
                    List.of(joint, tubeEnd))),
            Phrase.of("locks the shank at the {}", at)));
  }

  /** The barrel about its sleeve, which lies along x. */
  private static Solid barrel(EndFitting fitting) {
    double widthMm = fitting.joint().widthMm();
    Place across = Place.along(new Point3(-widthMm / 2, 0, 0), new Vector3(1, 0, 0));
    return new Compound(
        List.of(
            new Compound.Member(
                across,
                Turned.ring(
                    fitting.joint().boltDiameterMm() / 2,
                    fitting.joint().barrelRadiusMm(),
                    widthMm))));
  }
}
