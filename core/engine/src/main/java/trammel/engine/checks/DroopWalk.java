package trammel.engine.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Driveline;
import trammel.engine.layout.Joint;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;
import trammel.engine.motion.AxlePose;

/**
 * What happens when the axle hangs with both wheels and nothing but its own parts ends the droop:
 * walked down from full droop until a shock is at its full length, a strap is tight or the bars let
 * it go no further, with all that gives out on the way.
 */
public final class DroopWalk {
  /** Steps of the walk, 1/8 in (mm). */
  private static final double STEP_MM = 25.4 / 8;

  /** Nobody builds for a droop that goes on for a foot (mm). */
  private static final double FURTHEST_MM = 12 * 25.4;

  private DroopWalk() {}

  /**
   * Something that happens on the way down.
   *
   * @param what what happens, such as {@code shock-left is at its full length}
   * @param droopMm how far below ride the axle then is (mm)
   */
  public record Event(String what, double droopMm) {}

  /**
   * How the droop ends.
   *
   * @param end what ends it
   * @param before what gives out before that, in order
   */
  public record Found(Event end, List<Event> before) {
    public Found {
      before = List.copyOf(before);
    }
  }

  /**
   * Walks down.
   *
   * @param analysis the layout
   * @param strapMm how far below ride straps are tight (mm); empty without straps
   */
  public static Found of(LayoutAnalysis analysis, OptionalDouble strapMm) {
    double fullMm = analysis.layout().chassis().travel().droopMm();
    List<Event> before = new ArrayList<>();
    for (double droopMm = fullMm; droopMm <= FURTHEST_MM; droopMm += STEP_MM) {
      if (strapMm.isPresent() && droopMm >= strapMm.getAsDouble()) {
        return new Found(new Event("straps are tight", strapMm.getAsDouble()), before);
      }
      Optional<AxlePose> pose = analysis.poseAt(-droopMm, 0);
      if (pose.isEmpty()) {
        return new Found(new Event("the bars let it go no further", droopMm), before);
      }
      for (ShockUnit shock : analysis.layout().shocks()) {
        if (shock.frame().distanceMm(pose.get().move(shock.axle())) >= shock.openMm()) {
          return new Found(new Event(shock.name() + " is at its full length", droopMm), before);
        }
      }
      addGivenOut(before, analysis, pose.get(), droopMm);
    }
    before.add(new Event("full droop with nothing to end it", fullMm));
    return new Found(new Event("nothing", FURTHEST_MM), before);
  }

  private static void addGivenOut(
      List<Event> before, LayoutAnalysis analysis, AxlePose pose, double droopMm) {
    for (Bar bar : analysis.layout().bars()) {
      double[] tilts = new BoltLine(bar).tiltsRad(pose.placement());
      if (isPast(tilts[0], bar.frameJoint()) || isPast(tilts[1], bar.axleJoint())) {
        add(before, "a joint of " + bar.name() + " is past its angle", droopMm);
      }
    }
    for (SpringUnit spring : analysis.layout().springs()) {
      double lengthMm = spring.frame().distanceMm(pose.move(spring.axle()));
      if (spring.air().isPresent() && lengthMm > spring.air().get().size().mostHeightMm()) {
        add(before, spring.name() + " is past the height of its table", droopMm);
      }
    }
    Driveline driveline = analysis.layout().chassis().driveline();
    Point3 pinion = pose.move(driveline.pinionJoint());
    double longerMm =
        pinion.distanceMm(driveline.transmissionJoint())
            - driveline.pinionJoint().distanceMm(driveline.transmissionJoint());
    if (driveline.slipEngagementMm().isPresent()
        && driveline.slipEngagementMm().getAsDouble() < longerMm) {
      add(before, "the slip yoke is off its spline", droopMm);
    }
  }

  private static boolean isPast(double tiltRad, Joint joint) {
    return tiltRad > joint.misalignmentRad() && joint.misalignmentRad() > 0;
  }

  private static void add(List<Event> before, String what, double droopMm) {
    if (before.stream().noneMatch(event -> event.what().equals(what))) {
      before.add(new Event(what, droopMm));
    }
  }
}
