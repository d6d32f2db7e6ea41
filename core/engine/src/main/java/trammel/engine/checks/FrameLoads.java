package trammel.engine.checks;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.AntiRollBar;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Rails;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringAtRide;
import trammel.engine.layout.SpringUnit;
import trammel.engine.motion.BodyPose;

/**
 * What springs, shocks, bars and bump stops push and pull on the frame with, at one time: under
 * each load case, with the springs at their shortest, and with the shocks stroked hard either way.
 */
public final class FrameLoads {
  /** Name of what a bump stop loads. */
  public static final String BUMP_STOP = "bump stop";

  private FrameLoads() {}

  /**
   * A force on the frame.
   *
   * @param unit the spring, shock or bar that it comes from, {@link AntiRollBar#NAME} or {@link
   *     #BUMP_STOP}
   * @param at where (mm)
   * @param forceN on the frame (N)
   */
  public record Force(String unit, Point3 at, Vector3 forceN) {}

  /**
   * Forces that come together.
   *
   * @param name when
   * @param forces what pushes and pulls then
   */
  public record AtOnce(String name, List<Force> forces) {
    public AtOnce {
      forces = List.copyOf(forces);
    }
  }

  /** All of them, the load cases first. */
  public static List<AtOnce> of(LayoutAnalysis analysis) {
    BarForces forces = analysis.barForces();
    List<AtOnce> all = new ArrayList<>(forces.cases().size() + 3);
    for (int i = 0; i < forces.cases().size(); i++) {
      all.add(new AtOnce(forces.cases().get(i).name(), under(analysis, i)));
    }
    MountForces mounts = analysis.mountForces();
    all.add(shortest(analysis, mounts));
    all.add(new AtOnce("a fast stroke of the shocks", stroked(analysis, mounts, 1)));
    all.add(new AtOnce("an axle that hangs on the shocks", stroked(analysis, mounts, -1)));
    return all;
  }

  private static List<Force> under(LayoutAnalysis analysis, int loadCase) {
    Layout layout = analysis.layout();
    BarForces forces = analysis.barForces();
    List<Force> all = new ArrayList<>();
    for (int k = 0; k < layout.bars().size(); k++) {
      Bar bar = layout.bars().get(k);
      if (bar.frameEnd().body().equals(BodyPose.FRAME)) {
        Vector3 pull = bar.frame().to(bar.axle()).normalized();
        all.add(new Force(bar.name(), bar.frame(), pull.scaled(forces.tensionN(loadCase, k))));
      }
    }
    for (int k = 0; k < layout.springs().size(); k++) {
      all.add(pushed(layout.springs().get(k), forces.springsN(loadCase).get(k)));
    }
    for (int k = 0; k < forces.stops().size(); k++) {
      addStop(all, layout, forces.stops().get(k), forces.stopsN(loadCase).get(k));
    }
    if (layout.antiRollBar().isPresent()) {
      Point3 top = layout.antiRollBar().get().linkTop();
      Vector3 up = new Vector3(0, 0, forces.antiRollBarN(loadCase));
      all.add(new Force(AntiRollBar.NAME, top, up));
      all.add(new Force(AntiRollBar.NAME, top.mirrored(), up.scaled(-1)));
    }
    return all;
  }

  /** A bump stop pushes its rail up; a shock at its full length pulls its mount to the axle. */
  private static void addStop(List<Force> all, Layout layout, String name, double carriedN) {
    if (carriedN == 0) {
      return;
    }
    if (name.endsWith(BUMP_STOP)) {
      all.add(stop(layout.chassis(), name.startsWith("left"), carriedN));
      return;
    }
    for (ShockUnit shock : layout.shocks()) {
      if (name.startsWith(shock.name())) {
        all.add(pushed(shock, -carriedN));
      }
    }
  }

  private static Force stop(Chassis chassis, boolean left, double forceN) {
    Rails rails = chassis.rails();
    double outMm = rails.outerFaceMm(0) - rails.flangeMm() / 2;
    Point3 at = new Point3(0, left ? outMm : -outMm, rails.undersideMm(0));
    return new Force(BUMP_STOP, at, new Vector3(0, 0, forceN));
  }

  private static Force pushed(SpringUnit spring, double pushN) {
    Vector3 way = spring.axle().to(spring.frame()).normalized();
    return new Force(spring.name(), spring.frame(), way.scaled(pushN));
  }

  private static Force pushed(ShockUnit shock, double pushN) {
    Vector3 way = shock.axle().to(shock.frame()).normalized();
    return new Force(shock.name(), shock.frame(), way.scaled(pushN));
  }

  /** Under blows the bump stops are met at speed, and the springs go as far as that takes them. */
  private static AtOnce shortest(LayoutAnalysis analysis, MountForces mounts) {
    Layout layout = analysis.layout();
    List<Force> all = new ArrayList<>();
    for (int k = 0; k < layout.springs().size(); k++) {
      all.add(pushed(layout.springs().get(k), mounts.shortestN(k)));
    }
    if (!analysis.isUnderBlows()) {
      return new AtOnce("springs at their shortest", all);
    }
    double stopN = BumpStopRoom.forceN(analysis);
    all.add(stop(layout.chassis(), true, stopN));
    all.add(stop(layout.chassis(), false, stopN));
    return new AtOnce("bump stops met at speed", all);
  }

  private static List<Force> stroked(LayoutAnalysis analysis, MountForces mounts, int way) {
    Layout layout = analysis.layout();
    List<Force> all = new ArrayList<>();
    for (int k = 0; k < layout.shocks().size(); k++) {
      double forceN = way > 0 ? mounts.fastN(k) : -mounts.hangingN(k);
      all.add(pushed(layout.shocks().get(k), forceN));
    }
    if (way > 0) {
      for (SpringAtRide spring : analysis.ride().loaded()) {
        all.add(pushed(spring.unit(), spring.loadN()));
      }
    }
    return all;
  }
}
