package trammel.planning.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.rail.Footprint;
import trammel.brackets.rail.RailClosings;
import trammel.brackets.work.CrossmemberHold;
import trammel.brackets.work.RailMount;
import trammel.brackets.work.WeldedFoot;
import trammel.brackets.work.WorkPlan;
import trammel.engine.checks.CrossmemberBay;
import trammel.engine.checks.Detail;
import trammel.engine.checks.FrameLoads;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Limit;
import trammel.engine.checks.Measure;
import trammel.engine.checks.NotchedRail;
import trammel.engine.checks.Reading;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.End;
import trammel.engine.layout.Rails;
import trammel.engine.strength.ClosedBox;
import trammel.engine.strength.OpenChannel;
import trammel.engine.strength.RailTie;
import trammel.engine.strength.TwistedRails;
import trammel.engine.strength.TwistedRails.Borne;
import trammel.engine.strength.TwistedRails.Push;
import trammel.engine.strength.TwistedRails.Span;
import trammel.engine.strength.TwistedRails.Stretch;
import trammel.engine.strength.TwistedRails.Torque;
import trammel.engine.strength.TwistedSection;
import trammel.planning.catalog.PlanCheck;
import trammel.planning.job.RailSteel;
import trammel.reading.quantity.QuantityPrinter;

/**
 * Least safety factor on yield of the rails where mounts, outriggers and brackets on their sides
 * twist them, warping counted, and of the new crossmembers that hold them against it; see {@link
 * TwistedRails} for the method. The torque is that of the force about the rail's shear centre.
 */
final class RailTwist implements CatalogCheck {
  /** Mild steel, ASTM A36: 36 ksi, from memory; what is not known is taken as such (MPa). */
  private static final double MILD_MPA = 36 * 6.894757293168;

  /** High-strength low-alloy steel of grade 50, ASTM A572: 50 ksi, from memory (MPa). */
  private static final double HIGH_STRENGTH_MPA = 50 * 6.894757293168;

  /** A foot lies on a rail where it is as near to its face as this (mm). */
  private static final double ON_FACE_MM = 3;

  private final JobWork planning;
  private final trammel.planning.job.Rails measured;
  private final QuantityPrinter print;

  RailTwist(JobWork planning, trammel.planning.job.Rails measured, QuantityPrinter print) {
    this.planning = planning;
    this.measured = measured;
    this.print = print;
  }

  @Override
  public PlanCheck check() {
    return PlanCheck.RAIL_TWIST;
  }

  /**
   * The weakest place.
   *
   * @param factor its safety factor
   * @param where it in words
   * @param details the figures behind it
   */
  private record Weakest(double factor, String where, List<Detail> details) {}

  @Override
  public Reading read(LayoutAnalysis analysis) {
    WorkPlan plan;
    try {
      plan = planning.of(analysis.built());
    } catch (UnworkableLayoutException cannot) {
      return new Reading.NotApplicable("what cannot be made twists nothing");
    }
    List<FrameLoads.AtOnce> loads = FrameLoads.of(analysis);
    Rails rails = analysis.layout().chassis().rails();
    CrossmemberBay bay = bay(analysis.settings().bay());
    Twisted twisted = new Twisted(rails, bay, plan, loads);
    Optional<Weakest> weakest = Optional.empty();
    for (FrameLoads.AtOnce atOnce : loads) {
      Optional<Weakest> here = twisted.weakest(atOnce);
      if (here.isPresent() && (weakest.isEmpty() || here.get().factor() < weakest.get().factor())) {
        weakest = here;
      }
    }
    return weakest.isEmpty()
        ? new Reading.NotApplicable("nothing on the rails' sides twists them")
        : new Reading.Value(weakest.get().factor(), weakest.get().where(), weakest.get().details());
  }

  private CrossmemberBay bay(CrossmemberBay usual) {
    return new CrossmemberBay(
        measured.crossmemberBehindMm().orElse(usual.behindMm()),
        measured.crossmemberAheadMm().orElse(usual.aheadMm()));
  }

  /** A stop that rested on where crossmembers are taken to be would rest on nothing. */
  @Override
  public Limit limit(Limit general, LayoutAnalysis analysis) {
    boolean isMeasured =
        measured.crossmemberAheadMm().isPresent() && measured.crossmemberBehindMm().isPresent();
    return isMeasured
        ? general
        : new Limit(
            general.goodMin(),
            general.goodMax(),
            Double.NEGATIVE_INFINITY,
            general.stopMax(),
            general.source());
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

  /** The rails of a layout with all that is on them. */
  private final class Twisted {
    private final Rails rails;
    private final CrossmemberBay bay;
    private final WorkPlan plan;
    private final TwistedSection section;
    private final TwistedRails model;

    Twisted(Rails rails, CrossmemberBay bay, WorkPlan plan, List<FrameLoads.AtOnce> loads) {
      this.rails = rails;
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

    /** Where plates close an open rail: behind brackets and mounts, and over a plated notch. */
    private List<Stretch> closed() {
      List<Stretch> stretches = new ArrayList<>();
      if (rails.boxed()) {
        return stretches;
      }
      for (Footprint one : RailClosings.stretches(plan.closings())) {
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
      boolean left = force.at().yMm() > 0;
      if (force.unit().equals(FrameLoads.BUMP_STOP)) {
        return true;
      }
      for (RailMount mount : plan.railMounts()) {
        if (mount.unit().equals(force.unit()) && mount.left() == left) {
          return true;
        }
      }
      return plan.feet().stream()
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

    /** The weakest place under what comes at once; empty where nothing twists the rails. */
    Optional<Weakest> weakest(FrameLoads.AtOnce atOnce) {
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
      Optional<Weakest> rail = weakestSpan(borne, atOnce.name(), torques, units);
      Optional<Weakest> hold = weakestHold(borne, atOnce.name());
      if (rail.isEmpty() || hold.isPresent() && hold.get().factor() < rail.get().factor()) {
        return hold;
      }
      return rail;
    }

    private Optional<Weakest> weakestSpan(
        Borne borne, String when, List<Torque> torques, List<String> units) {
      int worst = -1;
      for (int i = 0; i < borne.spanMPa().length; i++) {
        if (borne.spanMPa()[i] > 0 && (worst < 0 || borne.spanMPa()[i] > borne.spanMPa()[worst])) {
          worst = i;
        }
      }
      if (worst < 0) {
        return Optional.empty();
      }
      Span span = model.spans().get(worst);
      int most = -1;
      for (int i = 0; i < torques.size(); i++) {
        boolean isHere = torques.get(i).left() == span.left();
        if (isHere
            && (most < 0
                || Math.abs(torques.get(i).torqueNmm())
                    > Math.abs(torques.get(most).torqueNmm()))) {
          most = i;
        }
      }
      double stressMPa = borne.spanMPa()[worst];
      List<Detail> details = new ArrayList<>();
      if (most >= 0) {
        double torqueNmm = Math.abs(torques.get(most).torqueNmm());
        details.add(
            new Detail("twist that " + units.get(most) + " puts in", Measure.TORQUE, torqueNmm));
      }
      details.add(new Detail("twist along the rail there", Measure.TORQUE, borne.spanNmm()[worst]));
      details.add(new Detail("stress", Measure.STRESS, stressMPa));
      details.add(new Detail("its steel is taken to yield at", Measure.STRESS, yieldMPa()));
      addHow(details, borne);
      String rail = (span.left() ? "left" : "right") + " rail, open from ";
      String where = rail + station(span.rearMm()) + " to " + station(span.frontMm()) + ", " + when;
      return Optional.of(new Weakest(yieldMPa() / stressMPa, where, details));
    }

    private String station(double forwardMm) {
      return print.length(Math.abs(forwardMm))
          + (forwardMm < 0 ? " behind" : " ahead of")
          + " the axle";
    }

    private Optional<Weakest> weakestHold(Borne borne, String when) {
      Optional<Weakest> weakest = Optional.empty();
      for (int i = 0; i < plan.holds().size(); i++) {
        CrossmemberHold hold = plan.holds().get(i);
        double stressMPa =
            Math.max(
                borne.tieMostNmm()[i] / hold.tubeModulusMm3(),
                borne.tieEndNmm()[i] / hold.legModulusMm3());
        double factor = hold.yieldMPa() / stressMPa;
        if (stressMPa > 0 && (weakest.isEmpty() || factor < weakest.get().factor())) {
          List<Detail> details = new ArrayList<>();
          details.add(new Detail("moment at its end", Measure.TORQUE, borne.tieEndNmm()[i]));
          details.add(new Detail("stress", Measure.STRESS, stressMPa));
          details.add(new Detail("its steel yields at", Measure.STRESS, hold.yieldMPa()));
          addHow(details, borne);
          String where = hold.name() + ", bent by the rails that it holds, " + when;
          weakest = Optional.of(new Weakest(factor, where, details));
        }
      }
      return weakest;
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
  }

  @Override
  public String advice() {
    return "Box the rail from that mount to the next crossmember, put a crossmember across there, or"
        + " set what twists it nearer to the rail or inboard of it; measure how far the frame's own"
        + " crossmembers stand from the axle (measured.rails: crossmember_ahead,"
        + " crossmember_behind).";
  }
}
