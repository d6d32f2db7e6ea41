package trammel.planning.draft;

import static trammel.engine.quantity.Amount.length;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.brackets.rail.Footprint;
import trammel.brackets.rail.RailClosings;
import trammel.brackets.work.CrossmemberHold;
import trammel.brackets.work.WeldedFoot;
import trammel.brackets.work.WorkPlan;
import trammel.engine.checks.CrossmemberBay;
import trammel.engine.checks.Detail;
import trammel.engine.checks.FrameLoads;
import trammel.engine.checks.Measure;
import trammel.engine.checks.NotchedRail;
import trammel.engine.checks.Reading;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.End;
import trammel.engine.layout.Rails;
import trammel.engine.quantity.Amount;
import trammel.engine.quantity.Phrase;
import trammel.engine.strength.ClosedBox;
import trammel.engine.strength.OpenChannel;
import trammel.engine.strength.PublishedSteel;
import trammel.engine.strength.RailTie;
import trammel.engine.strength.TwistedRails;
import trammel.engine.strength.TwistedRails.Borne;
import trammel.engine.strength.TwistedRails.Push;
import trammel.engine.strength.TwistedRails.Span;
import trammel.engine.strength.TwistedRails.Stretch;
import trammel.engine.strength.TwistedRails.Torque;
import trammel.engine.strength.TwistedSection;
import trammel.planning.job.RailSteel;

/**
 * The rails of a layout with all that twists and holds them, for {@link RailTwist}: stretches that
 * plates close, stations of mounts, and new crossmembers. The torque is that of a force about the
 * rail's shear centre.
 */
final class RailsWithMounts {
  /** Mild steel; what is not known is taken as such (MPa). */
  private static final double MILD_MPA = PublishedSteel.A36.grade().yieldMPa();

  /** High-strength low-alloy steel of grade 50, ASTM A572: 50 ksi, from memory (MPa). */
  private static final double HIGH_STRENGTH_MPA = 50 * 6.894757293168;

  /** A foot lies on a rail where it is as near to its face as this (mm). */
  private static final double ON_FACE_MM = 3;

  private final Rails rails;
  private final trammel.planning.job.Rails measured;
  private final CrossmemberBay bay;
  private final WorkPlan plan;
  private final TwistedSection section;
  private final TwistedRails model;
  private final Map<String, Boolean> onRail = new HashMap<>();

  /**
   * @param rails the rails of the layout
   * @param measured the same as they were measured: their steel, and the frame's crossmembers
   * @param bay where the frame's own crossmembers stand
   * @param plan what is welded to the rails
   * @param loads what comes at once, each time
   */
  RailsWithMounts(
      Rails rails,
      trammel.planning.job.Rails measured,
      CrossmemberBay bay,
      WorkPlan plan,
      List<FrameLoads.AtOnce> loads) {
    this.rails = rails;
    this.measured = measured;
    this.bay = bay;
    this.plan = plan;
    section = section(rails);
    List<Stretch> stretches = closed();
    for (FrameLoads.AtOnce atOnce : loads) {
      for (FrameLoads.Force force : atOnce.forces()) {
        if (isOnRail(force)) {
          stretches.add(Stretch.at(force.at().yMm() > 0, force.at().xMm()));
        }
      }
    }
    List<RailTie> ties = plan.holds().stream().map(CrossmemberHold::tie).toList();
    model =
        new TwistedRails(
            section, rails.flangeMm(), -bay.behindMm(), bay.aheadMm(), stretches, ties);
  }

  /**
   * The weakest place under what comes at once.
   *
   * @param atOnce what comes
   * @param borne what rails and crossmembers bear of it
   * @param torques on the rails, one for each unit
   * @param units what puts them in
   * @param factor the safety factor there, infinite where nothing is twisted
   * @param span index of the open piece of rail; -1 where a crossmember is weakest
   * @param hold index of the crossmember; -1 where a rail is weakest
   */
  record Worst(
      FrameLoads.AtOnce atOnce,
      Borne borne,
      List<Torque> torques,
      List<String> units,
      double factor,
      int span,
      int hold) {}

  /** Where plates close an open rail: behind brackets and mounts, and over a plated notch. */
  private List<Stretch> closed() {
    List<Stretch> stretches = new ArrayList<>();
    if (rails.boxed()) {
      return stretches;
    }
    for (Footprint one : RailClosings.stretches(plan.closings(), rails)) {
      stretches.add(new Stretch(one.left(), one.rearMm(), one.frontMm()));
    }
    if (rails.cutDepthMm() > 0 && rails.notchSidePlateMm() > 0) {
      double endMm = NotchedRail.notch(rails).endMm();
      stretches.add(new Stretch(true, -endMm, endMm));
      stretches.add(new Stretch(false, -endMm, endMm));
    }
    return stretches;
  }

  private boolean isOnRail(FrameLoads.Force force) {
    String side = force.at().yMm() > 0 ? "left " : "right ";
    return onRail.computeIfAbsent(side + force.unit(), key -> isMounted(force));
  }

  private boolean isMounted(FrameLoads.Force force) {
    boolean left = force.at().yMm() > 0;
    return force.unit().equals(FrameLoads.BUMP_STOP)
        || plan.railMounts().stream()
            .anyMatch(mount -> mount.unit().equals(force.unit()) && mount.left() == left)
        || plan.feet().stream()
            .anyMatch(foot -> foot.bars().contains(force.unit()) && isOnRail(foot));
  }

  private boolean isOnRail(WeldedFoot foot) {
    double xMm = foot.origin().xMm();
    double acrossMm = Math.abs(foot.origin().yMm());
    return foot.end() == End.FRAME
        && (Math.abs(acrossMm - rails.innerFaceMm(xMm)) < ON_FACE_MM
            || Math.abs(acrossMm - rails.outerFaceMm(xMm)) < ON_FACE_MM);
  }

  /** Torque about the shear centre of the rail, its inner side up positive. */
  private Torque torque(FrameLoads.Force force) {
    Point3 at = force.at();
    double side = at.yMm() > 0 ? 1 : -1;
    double outMm = rails.outerFaceMm(at.xMm()) + section.shearCentreOutMm();
    double midMm = rails.undersideMm(at.xMm()) + rails.depthMm() / 2;
    Vector3 arm = new Point3(at.xMm(), side * outMm, midMm).to(at);
    return new Torque(side > 0, at.xMm(), -side * arm.cross(force.forceN()).x());
  }

  /** The weakest place under what comes at once. */
  Worst worst(FrameLoads.AtOnce atOnce) {
    List<Torque> torques = new ArrayList<>();
    List<String> units = new ArrayList<>();
    List<Push> pushes = new ArrayList<>();
    for (FrameLoads.Force force : atOnce.forces()) {
      if (isOnRail(force)) {
        torques.add(torque(force));
        units.add(force.unit());
      }
      for (int i = 0; i < plan.holds().size(); i++) {
        CrossmemberHold hold = plan.holds().get(i);
        if (hold.carried().contains(force.unit())) {
          double fromLeftMm = hold.tie().spanMm() / 2 - force.at().yMm();
          pushes.add(new Push(i, fromLeftMm, force.forceN().z()));
        }
      }
    }
    Borne borne = model.under(torques, pushes);
    double least = Double.POSITIVE_INFINITY;
    int span = -1;
    int hold = -1;
    for (int i = 0; i < borne.spanMPa().length; i++) {
      if (yieldMPa() / borne.spanMPa()[i] < least) {
        least = yieldMPa() / borne.spanMPa()[i];
        span = i;
      }
    }
    for (int i = 0; i < plan.holds().size(); i++) {
      double factor = plan.holds().get(i).yieldMPa() / holdMPa(borne, i);
      if (factor < least) {
        least = factor;
        span = -1;
        hold = i;
      }
    }
    return new Worst(atOnce, borne, torques, units, least, span, hold);
  }

  private double holdMPa(Borne borne, int index) {
    CrossmemberHold hold = plan.holds().get(index);
    return Math.max(
        borne.tieMostNmm()[index] / hold.tubeModulusMm3(),
        borne.tieEndNmm()[index] / hold.legModulusMm3());
  }

  Reading told(Worst worst) {
    return worst.hold() < 0 ? toldOfRail(worst) : toldOfHold(worst);
  }

  private Reading toldOfRail(Worst worst) {
    Span span = model.spans().get(worst.span());
    List<Detail> details = new ArrayList<>();
    int most = -1;
    double mostNmm = 0;
    for (int i = 0; i < worst.torques().size(); i++) {
      Torque torque = worst.torques().get(i);
      if (torque.left() == span.left() && Math.abs(torque.torqueNmm()) > mostNmm) {
        most = i;
        mostNmm = Math.abs(torque.torqueNmm());
      }
    }
    if (most >= 0) {
      String unit = worst.units().get(most);
      details.add(new Detail("twist that " + unit + " puts in", Measure.TORQUE, mostNmm));
    }
    Borne borne = worst.borne();
    double alongNmm = borne.spanNmm()[worst.span()];
    details.add(new Detail("twist along the rail there", Measure.TORQUE, alongNmm));
    details.add(new Detail("stress", Measure.STRESS, borne.spanMPa()[worst.span()]));
    details.add(new Detail("its steel is taken to yield at", Measure.STRESS, yieldMPa()));
    addHow(details, borne);
    Phrase where =
        Phrase.of(
            "{}{}{} the axle, {}",
            span.left() ? "left" : "right",
            rails.boxed() ? " rail from " : " rail, open from ",
            stretch(span.rearMm(), span.frontMm()),
            worst.atOnce().name());
    return new Reading.Value(worst.factor(), where, details);
  }

  /** Such as {@code 3 in behind to 6 in ahead of}, the side once where it is the same. */
  private Phrase stretch(double rearMm, double frontMm) {
    Amount rear = length(Math.abs(rearMm));
    Amount front = length(Math.abs(frontMm));
    if (rearMm >= 0) {
      return Phrase.of("{} to {} ahead of", rear, front);
    }
    return frontMm <= 0
        ? Phrase.of("{} to {} behind", front, rear)
        : Phrase.of("{} behind to {} ahead of", rear, front);
  }

  private Reading toldOfHold(Worst worst) {
    CrossmemberHold hold = plan.holds().get(worst.hold());
    Borne borne = worst.borne();
    List<Detail> details = new ArrayList<>();
    double endNmm = borne.tieEndNmm()[worst.hold()];
    details.add(new Detail("moment at its end", Measure.TORQUE, endNmm));
    details.add(new Detail("stress", Measure.STRESS, holdMPa(borne, worst.hold())));
    details.add(new Detail("its steel yields at", Measure.STRESS, hold.yieldMPa()));
    addHow(details, borne);
    return new Reading.Value(
        worst.factor(),
        hold.name() + ", bent by the rails that it holds, " + worst.atOnce().name(),
        details);
  }

  private void addHow(List<Detail> details, Borne borne) {
    details.add(new Detail("rails lean by", Measure.ANGLE, borne.turnRad()));
    details.add(
        new Detail(
            "frame's crossmember behind the axle" + taken(measured.crossmemberBehindMm()),
            Measure.LENGTH,
            bay.behindMm()));
    details.add(
        new Detail(
            "frame's crossmember ahead of the axle" + taken(measured.crossmemberAheadMm()),
            Measure.LENGTH,
            bay.aheadMm()));
  }

  private String taken(Optional<Double> given) {
    return given.isPresent() ? "" : ", not measured, taken";
  }

  private double yieldMPa() {
    return measured.steel().equals(Optional.of(RailSteel.HIGH_STRENGTH))
        ? HIGH_STRENGTH_MPA
        : MILD_MPA;
  }

  static TwistedSection section(Rails rails) {
    double wallMm = rails.wallMm();
    return rails.boxed()
        ? new ClosedBox(rails.depthMm() - wallMm, rails.flangeMm() - wallMm, wallMm)
        : new OpenChannel(rails.depthMm() - wallMm, rails.flangeMm() - wallMm / 2, wallMm, wallMm);
  }
}
