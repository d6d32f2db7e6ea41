package trammel.engine.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.AntiRollBar;
import trammel.engine.layout.AxleMotion;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.CornerLoads;
import trammel.engine.layout.Layout;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringAtRide;
import trammel.engine.layout.SpringUnit;
import trammel.engine.layout.Travel;
import trammel.engine.mechanism.MechanismForces;
import trammel.engine.motion.LinkForces;
import trammel.engine.motion.Load;
import trammel.engine.motion.SpringPoint;

/**
 * What holds an axle up and down under a load: springs push with their load at ride and their rate,
 * or hang slack; a bump stop on each side carries from full bump on, a shock from its full length
 * on, and where there is no shock the end of droop does. Which of them carry is found by trying:
 * what would pull or push the wrong way is left out, what is run into is taken in, until all agree.
 *
 * <p>An anti-roll bar pushes one side up and the other down by how far roll twists it. It joins the
 * two sides, so it is no spring between two points: its force is found from what the axle does with
 * no bar and with a couple of one newton, which is exact since nothing else changes with it.
 *
 * <p>Springs keep the rate that they have at ride; geometry is that of ride.
 */
final class AxleSupports {
  /** A stop that is squeezed flat, and a shock at its end: as good as rigid, no source (N/mm). */
  private static final double HARD_N_PER_MM = 3000;

  /** What is slack keeps this share of a rate, so that the equations stay solvable. */
  private static final double SLACK_SHARE = 1e-6;

  private static final int ROUNDS = 24;
  private static final double ROUNDING_N = 1e-6;

  /**
   * One of what holds the axle.
   *
   * @param name what it is called
   * @param frame its end on the frame (mm)
   * @param axle its end on the axle (mm)
   * @param rateNPerMm its rate where it carries (N/mm)
   * @param atRideN its tension at ride (N): negative for a loaded spring; for a stop what it would
   *     be if it carried already, of the other sign than when it carries
   * @param pulls true for one that carries in tension, false in compression
   */
  private record Support(
      String name, Point3 frame, Point3 axle, double rateNPerMm, double atRideN, boolean pulls) {
    Vector3 way() {
      return axle.to(frame).normalized();
    }

    boolean carries(double tensionN) {
      return pulls ? tensionN > ROUNDING_N : tensionN < -ROUNDING_N;
    }
  }

  /**
   * Forces under one set of loads.
   *
   * @param forces forces of bars and sliders
   * @param springsN what each spring pushes with (N), 0 where it is slack
   * @param stopsN what each stop or shock end carries (N), 0 where it does not
   * @param stops their names
   * @param antiRollBarN force along the links of the anti-roll bar (N), left pushed positive; 0 for
   *     none
   * @param onAxle what springs, stops and the anti-roll bar do to the axle
   */
  record Balance(
      MechanismForces forces,
      List<Double> springsN,
      List<Double> stopsN,
      List<String> stops,
      double antiRollBarN,
      List<Load> onAxle) {
    Balance {
      springsN = List.copyOf(springsN);
      stopsN = List.copyOf(stopsN);
      stops = List.copyOf(stops);
      onAxle = List.copyOf(onAxle);
    }
  }

  private final Layout layout;
  private final AxleMotion motion;
  private final List<Support> supports = new ArrayList<>();
  private final int springs;

  AxleSupports(Layout layout, AxleMotion motion) {
    this.layout = layout;
    this.motion = motion;
    for (SpringAtRide spring : CornerLoads.onSprings(layout, motion)) {
      SpringUnit unit = spring.unit();
      supports.add(
          new Support(
              unit.name(), unit.frame(), unit.axle(), unit.rateNPerMm(), -spring.loadN(), false));
    }
    springs = supports.size();
    addBumpStops();
    for (ShockUnit shock : layout.shocks()) {
      double roomMm = shock.openMm() - shock.lengthMm();
      supports.add(
          new Support(
              shock.name() + " at its full length",
              shock.frame(),
              shock.axle(),
              HARD_N_PER_MM,
              -HARD_N_PER_MM * roomMm,
              true));
    }
    if (layout.shocks().isEmpty()) {
      addDroopEnds();
    }
  }

  /** Over the axle tube under the middle of each rail, as the plan sets them. */
  private void addBumpStops() {
    double bumpMm = layout.chassis().travel().bumpMm();
    for (int side = 1; side >= -1; side -= 2) {
      String name = side > 0 ? "left bump stop" : "right bump stop";
      supports.add(underRail(name, side, bumpMm, HARD_N_PER_MM * bumpMm, false));
    }
  }

  /**
   * Where no shock is drawn, something else ends the droop. Without an end the axle would turn so
   * far that bars which bind a little seem to hold the vehicle's weight.
   */
  private void addDroopEnds() {
    Travel travel = layout.chassis().travel();
    for (int side = 1; side >= -1; side -= 2) {
      String name = side > 0 ? "left end of droop" : "right end of droop";
      double atRideN = -HARD_N_PER_MM * travel.droopMm();
      supports.add(underRail(name, side, travel.bumpMm(), atRideN, true));
    }
  }

  /** One upright over the axle tube, from its top to so far above it. */
  private Support underRail(String name, int side, double aboveMm, double atRideN, boolean pulls) {
    Chassis chassis = layout.chassis();
    double outMm = chassis.rails().outerFaceMm(0) - chassis.rails().flangeMm() / 2;
    double topMm = chassis.axleCentre().zMm() + chassis.axle().tubeRadiusMm();
    return new Support(
        name,
        new Point3(0, side * outMm, topMm + aboveMm),
        new Point3(0, side * outMm, topMm),
        HARD_N_PER_MM,
        atRideN,
        pulls);
  }

  /** The balance under each set of loads on the axle. */
  List<Balance> under(List<List<Load>> loadSets) {
    boolean[] atRide = new boolean[supports.size()];
    List<List<Load>> withPreload = new ArrayList<>(loadSets.size());
    for (int i = 0; i < springs; i++) {
      atRide[i] = true;
    }
    for (List<Load> loads : loadSets) {
      withPreload.add(loaded(loads, atRide));
    }
    List<MechanismForces> onSprings = withBar(atRide, withPreload);
    List<Balance> balances = new ArrayList<>(loadSets.size());
    for (int i = 0; i < loadSets.size(); i++) {
      balances.add(settled(loadSets.get(i), onSprings.get(i), atRide.clone()));
    }
    return balances;
  }

  private Balance settled(List<Load> loads, MechanismForces first, boolean[] carrying) {
    MechanismForces forces = first;
    for (int round = 0; round < ROUNDS; round++) {
      int worst = -1;
      double mostN = 0;
      for (int i = 0; i < carrying.length; i++) {
        double tensionN = tensionN(i, forces.members());
        if (supports.get(i).carries(tensionN) != carrying[i] && Math.abs(tensionN) > mostN) {
          mostN = Math.abs(tensionN);
          worst = i;
        }
      }
      if (worst < 0) {
        break;
      }
      carrying[worst] = !carrying[worst];
      forces = withBar(carrying, List.of(loaded(loads, carrying))).get(0);
    }
    return balance(forces, carrying);
  }

  /** The forces under each set of loads, the anti-roll bar's couple among them. */
  private List<MechanismForces> withBar(boolean[] carrying, List<List<Load>> loadSets) {
    Optional<AntiRollBar> bar = layout.antiRollBar();
    if (bar.isEmpty()) {
      return motion.forcesAtRide(points(carrying), loadSets);
    }
    List<List<Load>> withUnit = new ArrayList<>(loadSets);
    withUnit.add(couple(bar.get(), 1));
    List<MechanismForces> without = motion.forcesAtRide(points(carrying), withUnit);
    double byUnitMm = twistMm(bar.get(), without.get(loadSets.size()).members());
    double rate = bar.get().size().rateNPerMm();
    List<List<Load>> withBar = new ArrayList<>(loadSets.size());
    for (int i = 0; i < loadSets.size(); i++) {
      double forceN = rate * twistMm(bar.get(), without.get(i).members()) / (1 - rate * byUnitMm);
      List<Load> all = new ArrayList<>(loadSets.get(i));
      all.addAll(couple(bar.get(), forceN));
      withBar.add(all);
    }
    return motion.forcesAtRide(points(carrying), withBar);
  }

  /** What the bearings do to the axle when the left link is pushed with a force. */
  private static List<Load> couple(AntiRollBar bar, double forceN) {
    Vector3 down = new Vector3(0, 0, -forceN * bar.bearingShare());
    return List.of(
        Load.force(bar.bearing(), down), Load.force(bar.bearing().mirrored(), down.scaled(-1)));
  }

  /**
   * How much higher the left arm's end stands than the right one's, as the axle stands now (mm).
   */
  private double twistMm(AntiRollBar bar, LinkForces members) {
    return movedMm(bar.armEnd(), members).z() - movedMm(bar.armEnd().mirrored(), members).z();
  }

  private Vector3 movedMm(Point3 onAxle, LinkForces members) {
    Point3 centre = layout.chassis().axleCentre();
    return members.axleShiftMm().plus(members.axleTurnRad().cross(centre.to(onAxle)));
  }

  private Balance balance(MechanismForces forces, boolean[] carrying) {
    List<Double> springsN = new ArrayList<>(springs);
    List<Double> stopsN = new ArrayList<>();
    List<String> stops = new ArrayList<>();
    List<Load> onAxle = new ArrayList<>();
    for (int i = 0; i < carrying.length; i++) {
      double carriedN = carrying[i] ? Math.abs(tensionN(i, forces.members())) : 0;
      (i < springs ? springsN : stopsN).add(carriedN);
      if (carrying[i]) {
        Support support = supports.get(i);
        double tensionN = tensionN(i, forces.members());
        onAxle.add(Load.force(support.axle(), support.way().scaled(tensionN)));
      }
      if (i >= springs) {
        stops.add(supports.get(i).name());
      }
    }
    double barN = 0;
    if (layout.antiRollBar().isPresent()) {
      AntiRollBar bar = layout.antiRollBar().get();
      barN = bar.size().rateNPerMm() * twistMm(bar, forces.members());
      onAxle.addAll(couple(bar, barN));
    }
    return new Balance(forces, springsN, stopsN, stops, barN, onAxle);
  }

  /** What a support would carry where the axle stands now, slack or not (N, tension positive). */
  private double tensionN(int index, LinkForces members) {
    Support support = supports.get(index);
    Vector3 moved = movedMm(support.axle(), members);
    return support.atRideN() - support.rateNPerMm() * moved.dot(support.way());
  }

  private List<SpringPoint> points(boolean[] carrying) {
    List<SpringPoint> points = new ArrayList<>(supports.size());
    for (int i = 0; i < supports.size(); i++) {
      Support support = supports.get(i);
      if (carrying[i] || i < springs) {
        double rate = support.rateNPerMm() * (carrying[i] ? 1 : SLACK_SHARE);
        points.add(new SpringPoint(support.name(), support.frame(), support.axle(), rate));
      }
    }
    return points;
  }

  /** The loads with what those that carry pull with at ride. */
  private List<Load> loaded(List<Load> loads, boolean[] carrying) {
    List<Load> all = new ArrayList<>(loads);
    for (int i = 0; i < supports.size(); i++) {
      Support support = supports.get(i);
      if (carrying[i]) {
        all.add(Load.force(support.axle(), support.way().scaled(support.atRideN())));
      }
    }
    return all;
  }
}
