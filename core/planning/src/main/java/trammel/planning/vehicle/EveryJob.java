package trammel.planning.vehicle;

import static trammel.engine.quantity.Amount.angle;
import static trammel.engine.quantity.Amount.length;
import static trammel.engine.quantity.Amount.longLength;

import java.util.List;
import trammel.assembly.Assembly;
import trammel.assembly.Place;
import trammel.assembly.SeamRun;
import trammel.assembly.Turned;
import trammel.brackets.work.BoughtPiece;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.PartNeed;
import trammel.brackets.work.VehicleParts;
import trammel.brackets.work.WorkPlan;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Rails;
import trammel.engine.quantity.Phrase;
import trammel.trade.welding.WeldPlace;
import trammel.trade.welding.WeldSeam;

/** The stages and small parts of every job. */
final class EveryJob {
  /** A stop is 2 in across: common practice, no source. */
  private static final double STOP_RADIUS_MM = 25.4;

  private static final double FOOT_MM = 304.8;

  private final Layout layout;
  private final WorkPlan.Builder plan = new WorkPlan.Builder();

  EveryJob(Layout layout) {
    this.layout = layout;
  }

  WorkPlan work(List<WeldSeam> welds) {
    addStages();
    addBench(welds);
    addWelds(welds);
    addBrakes();
    addBumpStops();
    plan.add(
        PartNeed.withoutPlace(
            "alignment-check",
            1,
            Phrase.of("the rear axle is set anew; wheelbase and thrust are read out")));
    plan.add(
        PartNeed.withoutPlace(
            "paint-supplies", 1, Phrase.of("primer, paint and undercoat over every weld")));
    return plan.build();
  }

  private void addStages() {
    stage(
        "design",
        Phrase.of("the layout is drawn up and its parts are found before the vehicle comes"));
    stage("intake", Phrase.of("photos, weights and ride height before any bolt is turned"));
    stage(
        "safe-set-up",
        Phrase.of("stands, battery and electronics off, fuel made safe, fire watch"));
    stage(
        "strip-out",
        Phrase.of("the old springs and their brackets come off before the new can be marked"));
    stage(
        "clean-weld-zones",
        Phrase.of("rails and axle tube are ground to bright steel where they are welded"));
    stage(
        "datum-and-mark",
        Phrase.of("every bracket is marked from the axle mark and the centre line"));
    stage(
        "set-axle",
        Phrase.of(
            "axle square at {} wheelbase, pinion at {} from level",
            length(layout.chassis().wheelbaseMm()),
            angle(layout.chassis().driveline().pinionAngleRad())));
    stage(
        "cycle-travel",
        Phrase.of(
            "both wheels through {} of bump and {} of droop before anything is welded out",
            length(layout.chassis().travel().bumpMm()),
            length(layout.chassis().travel().droopMm())));
    stage(
        "fit-up-readings",
        Phrase.of(
            "every bracket is measured against the floor sheet once it is tacked, before any weld"));
    stage("paint", Phrase.of("bare steel at every weld"));
    stage(
        "driveshaft",
        Phrase.of("shaft out, its length at ride and the slip measured, shaft back in"));
    stage("parking-brake", Phrase.of("the cables follow the axle over its travel"));
    stage("reassemble", Phrase.of("all joints tightened at ride height, not hanging"));
    stage("road-test", Phrase.of("road test, look over, tighten again"));
  }

  private void stage(String key, Phrase why) {
    plan.add(new OperationNeed(key, 1, "1 job", why));
  }

  /** Brackets on the axle tube are welded flat on the bench, so the axle comes out once more. */
  private void addBench(List<WeldSeam> welds) {
    long onAxle = welds.stream().filter(EveryJob::isOnAxleAtBench).count();
    if (onAxle > 0) {
      stage(
          "bench-welding",
          Phrase.of(
              "tacked in place, then out: {} lines of the weld list are welded to the"
                  + " axle tube on the bench",
              onAxle));
      plan.add(
          PartNeed.withoutPlace(
              "gear-oil",
              1,
              Phrase.of("the axle is drained before its tube is welded, and filled again")));
    }
  }

  private static boolean isOnAxleAtBench(WeldSeam weld) {
    return weld.place() == WeldPlace.BENCH
        && weld.runs().stream()
            .anyMatch(
                run ->
                    run instanceof SeamRun seam
                        && (seam.onto().contains(VehicleParts.AXLE_TUBE)
                            || seam.onto().contains(VehicleParts.HOUSING)));
  }

  private void addWelds(List<WeldSeam> welds) {
    double totalMm = 0;
    for (WeldSeam weld : welds) {
      totalMm += weld.totalLengthMm();
    }
    if (totalMm > 0) {
      plan.add(
          new OperationNeed(
              "dress-and-inspect-welds",
              totalMm / FOOT_MM,
              Phrase.of("{} of weld", longLength(totalMm)),
              Phrase.of("{} lines of the weld list", welds.size())));
    }
  }

  private void addBrakes() {
    double bumpMm = layout.chassis().travel().bumpMm();
    double droopMm = layout.chassis().travel().droopMm();
    Phrase why =
        Phrase.of(
            "the axle moves {} up and {} down on new bars; the hose must reach over"
                + " {} without pulling or rubbing",
            length(bumpMm),
            length(droopMm),
            length(bumpMm + droopMm));
    plan.add(PartNeed.withoutPlace("brake-hose", 1, why));
    plan.add(
        PartNeed.withoutPlace(
            "brake-line-kit",
            1,
            Phrase.of("the hard lines run on the axle tube where the new brackets stand")));
    plan.add(new OperationNeed("brake-lines", 1, "1 job", why));
    plan.add(
        PartNeed.withoutPlace(
            "brake-fluid", 1, Phrase.of("the rear lines are opened and the brakes are bled")));
    plan.add(
        PartNeed.withoutPlace(
            "parking-cable-kit", 1, Phrase.of("the cables follow the axle over its travel")));
  }

  private void addBumpStops() {
    Chassis chassis = layout.chassis();
    Rails rails = chassis.rails();
    double openMm =
        rails.undersideMm(0)
            + rails.notchDepthMm()
            - chassis.axleCentre().zMm()
            - chassis.axle().tubeRadiusMm();
    plan.add(
        PartNeed.placed(
            "bump-stop",
            List.of(bumpStop(true, openMm), bumpStop(false, openMm)),
            Phrase.of(
                "one a side: {} between axle tube and rail at ride{}; it is fully"
                    + " squeezed after {} of bump with {} left",
                length(openMm),
                rails.notchDepthMm() > 0 ? ", notch counted" : "",
                length(chassis.travel().bumpMm()),
                length(openMm - chassis.travel().bumpMm()))));
  }

  /**
   * A stop under the rail over the axle tube. It stands a third of the bump travel lower than it is
   * thick when fully squeezed: common practice, no source.
   */
  private BoughtPiece bumpStop(boolean left, double openMm) {
    Chassis chassis = layout.chassis();
    Rails rails = chassis.rails();
    double bumpMm = chassis.travel().bumpMm();
    double heightMm = Math.min(0.9 * openMm, Math.max(openMm - bumpMm, 0) + bumpMm / 3);
    double sideMm = rails.outerFaceMm(0) - rails.flangeMm() / 2;
    Point3 under =
        new Point3(
            chassis.axleCentre().xMm(),
            left ? sideMm : -sideMm,
            rails.undersideMm(0) + rails.notchDepthMm());
    return new BoughtPiece(
        left ? "left bump stop" : "right bump stop",
        Assembly.FRAME,
        Place.along(under, new Vector3(0, 0, -1)),
        Turned.bar(Math.min(STOP_RADIUS_MM, rails.flangeMm() / 2), heightMm),
        List.of(NotchWork.over(rails, left)));
  }
}
