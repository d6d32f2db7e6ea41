package trammel.brackets.mount;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.assembly.SeamRun;
import trammel.brackets.work.LoadedMember;
import trammel.brackets.work.WorkPlan;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.strength.OpenChannel;
import trammel.trade.welding.FilletWeld;

/**
 * What springs, shocks and bars put on the welds at the two ends of a crossmember: on its tube or
 * its legs at the rail, and on the tube where it stands on legs.
 */
final class CrossmemberEnds {
  private static final Vector3 UP = new Vector3(0, 0, 1);

  private final Crossmember member;

  CrossmemberEnds(Crossmember member) {
    this.member = member;
  }

  /**
   * Adds the welds of both ends under a pair.
   *
   * @param left name of the spring, shock or bar on the left
   * @param right name of its twin
   * @param fromRailMm distance of each from its rail (mm)
   * @param offMm distance of the force from the tube's middle along the vehicle (mm)
   * @param acrossShare what each pushes across the vehicle for each 1 N upright
   */
  void addWelds(
      WorkPlan.Builder plan,
      String left,
      String right,
      double fromRailMm,
      double offMm,
      double acrossShare) {
    Push near = push(fromRailMm, offMm, acrossShare);
    Push far = push(member.spanMm() - fromRailMm, offMm, acrossShare);
    addWelds(plan, true, Map.of(left, near, right, far));
    addWelds(plan, false, Map.of(left, far, right, near));
  }

  /**
   * Adds the welds of the end that bears most of one force.
   *
   * @param unit name of the spring, shock or bar
   * @param left true if it is on the left
   * @param fromRailMm its distance from the rail there (mm)
   * @param offMm distance of the force from the tube's middle along the vehicle (mm)
   */
  void addWeld(WorkPlan.Builder plan, String unit, boolean left, double fromRailMm, double offMm) {
    addWelds(plan, left, Map.of(unit, push(fromRailMm, offMm, 0)));
  }

  /**
   * What 1 N upright on the tube puts on one of its ends.
   *
   * @param uprightN the end's share of it
   * @param bentNmm moment in the upright plane across the vehicle
   * @param turnedNmm moment about the tube
   */
  private record Push(double uprightN, double bentNmm, double turnedNmm) {}

  /**
   * A beam held at both ends, pushed so far from this one: handbooks of beams. Legs that lean take
   * their part of the moment away; rails are taken not to turn.
   */
  private Push push(double fromEndMm, double offMm, double acrossShare) {
    double share = 1 - fromEndMm / member.spanMm();
    double bend = OpenChannel.YOUNG_MPA * member.design().secondMomentXMm4() / member.spanMm();
    double heldMm = fromEndMm * share * share / (1 + 2 * bend * member.givePerNmm());
    double leantMm = member.legs().map(legs -> legs.leant(acrossShare)).orElse(0.0);
    return new Push(share, heldMm + leantMm, share * offMm);
  }

  private void addWelds(WorkPlan.Builder plan, boolean left, Map<String, Push> pushes) {
    String side = left ? ", left" : ", right";
    Optional<CrossmemberLegs> legs = member.legs();
    plan.add(
        loaded(
            "weld of " + member.name() + (legs.isPresent() ? " leg to rail" : " to rail") + side,
            legs.map(one -> one.onRail(left)).orElseGet(() -> List.of(member.railRun(left))),
            member.railFillet(),
            left,
            pushes));
    legs.ifPresent(
        one ->
            plan.add(
                loaded(
                    "weld of " + member.name() + " to leg" + side,
                    List.of(one.onTube(left)),
                    member.legFillet(),
                    left,
                    pushes)));
  }

  private LoadedMember loaded(
      String name, List<SeamRun> runs, FilletWeld fillet, boolean left, Map<String, Push> pushes) {
    MountWeld weld = new MountWeld(name, runs, fillet);
    // Pushed up in its middle, the tube would turn its ends down outside.
    double side = left ? -1 : 1;
    Point3 end = end(left);
    pushes.forEach(
        (unit, push) ->
            weld.under(
                unit,
                UP.scaled(push.uprightN),
                end,
                new Vector3(side * push.bentNmm, push.turnedNmm, 0)));
    return weld.member("carried by one end of the tube, taken as held");
  }

  /** Where the tube hands its load over: in the middle of a leg, or at the rail's face. */
  private Point3 end(boolean left) {
    double inMm = member.legs().map(legs -> legs.inwardMm() / 2).orElse(0.0);
    double acrossMm = member.spanMm() / 2 - inMm;
    return new Point3(member.forwardMm(), left ? acrossMm : -acrossMm, member.upMm());
  }
}
