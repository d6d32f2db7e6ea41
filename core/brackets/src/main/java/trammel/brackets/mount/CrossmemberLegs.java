package trammel.brackets.mount;

import java.util.ArrayList;
import java.util.List;
import trammel.assembly.Assembly;
import trammel.assembly.FlatPath;
import trammel.assembly.Held;
import trammel.assembly.Place;
import trammel.assembly.SeamRun;
import trammel.brackets.work.WorkPlan;
import trammel.engine.clearance.Box;
import trammel.engine.quantity.Phrase;

/** The two legs on which a crossmember stands where it lies over or under the rails. */
abstract sealed class CrossmemberLegs permits TubeLegs, PlateLegs {
  final Crossmember member;

  CrossmemberLegs(Crossmember member) {
    this.member = member;
  }

  /** Thickness of a leg between the tube's end and the rail (mm); 0 where there is nothing. */
  abstract double besideTubeMm();

  /** How far a leg stands in from the rail's inner face (mm). */
  abstract double inwardMm();

  /** Width along the vehicle (mm). */
  abstract double widthMm();

  /** Length with the lap on the rail (mm). */
  abstract double lengthMm();

  /** Pieces to saw off the tube's stock for them. */
  abstract int pieces();

  /** Adds them to the list of parts. */
  abstract void addTo(WorkPlan.Builder plan, Phrase why);

  /**
   * Stress for 1 N upright on the tube (MPa).
   *
   * @param share share of it that this leg carries
   * @param offMm its distance from the tube's middle along the vehicle (mm)
   */
  abstract double bent(double share, double offMm);

  /** Height over which it bends as the tube leans, from the rail to the tube's middle (mm). */
  abstract double freeMm();

  /** Its second moment of area against leaning across the vehicle (mm⁴). */
  abstract double secondMomentMm4();

  /** Its section modulus against leaning across the vehicle (mm³). */
  abstract double modulusMm3();

  /**
   * Stress from what pushes the tube across the vehicle, for 1 N upright (MPa).
   *
   * @param acrossShare what is pushed across for each 1 N upright
   */
  abstract double flatwise(double acrossShare);

  /**
   * Moment at the ends of a leg from what pushes the tube across, for 1 N upright (Nmm): held at
   * the rail and at the tube, both legs share the push.
   */
  final double leant(double acrossShare) {
    return acrossShare * freeMm() / 4;
  }

  abstract Place place(boolean left);

  /** The weld between a leg and the tube. */
  abstract SeamRun onTube(boolean left);

  /** Where that weld runs, in words. */
  abstract String roundText();

  final String name() {
    return member.name() + " leg";
  }

  final String id(boolean left) {
    return Held.id(name(), left ? "left" : "right");
  }

  final List<Held> places() {
    return List.of(
        new Held("left", Assembly.FRAME, place(true)),
        new Held("right", Assembly.FRAME, place(false)));
  }

  /**
   * The weld on a rail: both edges of a leg and its foot; where the tube's end still meets the rail
   * over the leg, its edges too.
   */
  final List<SeamRun> onRail(boolean left) {
    double halfMm = widthMm() / 2;
    double way = member.above() ? 1 : -1;
    double footMm = member.footMm() - member.upMm();
    double legEndMm = footMm + way * Math.min(member.lapMm(), lengthMm());
    double endMm = footMm + way * member.lapMm();
    List<SeamRun> runs = new ArrayList<>();
    runs.add(
        new SeamRun(
            List.of(id(left)),
            member.behind(left),
            new FlatPath(
                member.face(left),
                List.of(
                    Crossmember.edge(-halfMm, legEndMm, -halfMm, footMm),
                    Crossmember.edge(-halfMm, footMm, halfMm, footMm),
                    Crossmember.edge(halfMm, footMm, halfMm, legEndMm)))));
    if (member.lapMm() - lengthMm() > Crossmember.ROUNDING_MM) {
      double tubeMm = member.widthMm() / 2;
      for (double sideMm : new double[] {-tubeMm, tubeMm}) {
        runs.add(
            new SeamRun(
                List.of(member.name()),
                member.behind(left),
                new FlatPath(
                    member.face(left),
                    List.of(Crossmember.edge(sideMm, legEndMm, sideMm, endMm)))));
      }
    }
    return runs;
  }

  /** The room that they take beside the rails. */
  final List<Box> room() {
    double rearMm = member.forwardMm() - widthMm() / 2;
    double frontMm = member.forwardMm() + widthMm() / 2;
    double sideMm = member.rails().innerFaceMm(member.forwardMm());
    double inwardMm = sideMm - inwardMm();
    double lowMm = Math.min(member.footMm(), member.upMm());
    double highMm = Math.max(member.footMm(), member.upMm());
    return List.of(
        Box.between(rearMm, frontMm, inwardMm, sideMm, lowMm, highMm),
        Box.between(rearMm, frontMm, -sideMm, -inwardMm, lowMm, highMm));
  }
}
