package trammel.engine.checks;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.engine.layout.AntiRollBar;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Layout;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringAtRide;
import trammel.engine.layout.SpringUnit;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.SpringReading;
import trammel.engine.quantity.Gravity;

/**
 * The largest force that each spring, shock, bar and anti-roll bar puts into its mounts: a spring
 * at the end of its travel or under the worst load case; a shock at its full length under the load
 * cases, with the axle hanging, or in a fast stroke at ride, with the spring that stands about it.
 * Under blows the bump stops are met at speed, and shocks are stroked and pulled harder.
 */
public final class MountForces {
  /**
   * Damping of a corner, share of the critical: usual for road vehicles 0.2 to 0.4, from memory.
   */
  private static final double DAMPING = 0.3;

  private final LayoutAnalysis analysis;
  private final double[] shortestN;

  MountForces(LayoutAnalysis analysis) {
    this.analysis = analysis;
    shortestN = new double[analysis.layout().springs().size()];
    Arrays.fill(shortestN, Double.NaN);
  }

  /**
   * The largest force of a spring, shock or bar of a name, or along a link of the {@link
   * AntiRollBar#NAME} (N); empty where the layout has none of it.
   */
  public OptionalDouble greatestN(String name) {
    Layout layout = analysis.layout();
    for (int i = 0; i < layout.springs().size(); i++) {
      if (layout.springs().get(i).name().equals(name)) {
        return OptionalDouble.of(springN(i));
      }
    }
    for (int i = 0; i < layout.shocks().size(); i++) {
      if (layout.shocks().get(i).name().equals(name)) {
        return OptionalDouble.of(shockN(i));
      }
    }
    if (name.equals(AntiRollBar.NAME) && layout.antiRollBar().isPresent()) {
      return OptionalDouble.of(antiRollBarN(layout.antiRollBar().get()));
    }
    List<Bar> bars = layout.bars();
    for (int i = 0; i < bars.size(); i++) {
      if (bars.get(i).name().equals(name)) {
        return OptionalDouble.of(barN(i));
      }
    }
    return OptionalDouble.empty();
  }

  private double antiRollBarN(AntiRollBar bar) {
    BarForces forces = analysis.barForces();
    double most = 0;
    for (int i = 0; i < forces.cases().size(); i++) {
      most = Math.max(most, Math.abs(forces.antiRollBarN(i)));
    }
    for (AxlePose pose : analysis.envelope()) {
      most = Math.max(most, bar.forceN(pose));
    }
    return most;
  }

  private double barN(int bar) {
    BarForces forces = analysis.barForces();
    double most = 0;
    for (int i = 0; i < forces.cases().size(); i++) {
      most = Math.max(most, Math.abs(forces.tensionN(i, bar)));
    }
    return most;
  }

  private double springN(int spring) {
    BarForces forces = analysis.barForces();
    double most = shortestN(spring);
    for (int i = 0; i < forces.cases().size(); i++) {
      most = Math.max(most, forces.springsN(i).get(spring));
    }
    return most;
  }

  /**
   * What a spring pushes with at its shortest (N): over the travel, and under blows where the bump
   * stops are met at speed.
   */
  double shortestN(int spring) {
    if (Double.isNaN(shortestN[spring])) {
      SpringAtRide loaded = analysis.ride().loaded().get(spring);
      double most = 0;
      for (AxlePose pose : analysis.envelope()) {
        most = Math.max(most, forceN(loaded, pose));
      }
      if (analysis.isUnderBlows()) {
        Optional<AxlePose> caught = analysis.poseAt(BumpStopRoom.caughtAtMm(analysis), 0);
        most = Math.max(most, caught.map(pose -> forceN(loaded, pose)).orElse(0.0));
      }
      shortestN[spring] = most;
    }
    return shortestN[spring];
  }

  private static double forceN(SpringAtRide loaded, AxlePose pose) {
    SpringUnit unit = loaded.unit();
    return loaded.forceN(unit.frame().distanceMm(pose.move(unit.axle())));
  }

  /** Index of the spring that stands about a shock; -1 for none. */
  private int springAbout(ShockUnit shock) {
    List<SpringUnit> springs = analysis.layout().springs();
    for (int i = 0; i < springs.size(); i++) {
      if (springs.get(i).frame().equals(shock.frame())
          && springs.get(i).axle().equals(shock.axle())) {
        return i;
      }
    }
    return -1;
  }

  private double shockN(int shock) {
    BarForces forces = analysis.barForces();
    String name = analysis.layout().shocks().get(shock).name();
    int spring = springAbout(analysis.layout().shocks().get(shock));
    double most = Math.max(hangingN(shock), fastN(shock));
    if (spring >= 0) {
      // A stroke is fastest near ride, where the spring carries what it carries standing.
      double ridingN = analysis.ride().loaded().get(spring).loadN();
      most = Math.max(Math.max(most, ridingN + fastN(shock)), springN(spring));
    }
    for (int i = 0; i < forces.cases().size(); i++) {
      for (int k = 0; k < forces.stops().size(); k++) {
        if (forces.stops().get(k).startsWith(name)) {
          most = Math.max(most, forces.stopsN(i).get(k));
        }
      }
    }
    return most;
  }

  /** Pull of an axle that tops out on a shock (N). */
  double hangingN(int shock) {
    double cornerKg = analysis.layout().chassis().masses().rearUnsprungKg() / 2;
    return analysis.settings().shockBlow().topOut() * cornerKg * Gravity.M_PER_S2 / ratio(shock);
  }

  /** Damping of a fast stroke (N): 2 ζ √(k m) v at the wheel, over the shock's motion ratio. */
  double fastN(int shock) {
    return DAMPING
        * 2
        * Math.sqrt(analysis.ride().rates().heaveNPerMm() * cornerTonnes())
        * analysis.settings().shockBlow().strokeMmPerS()
        / ratio(shock);
  }

  /** In tonnes, so that N, mm and s go together. */
  private double cornerTonnes() {
    var masses = analysis.layout().chassis().masses();
    return (masses.rearAxleKg() - masses.rearUnsprungKg()) / 2 / 1000;
  }

  private double ratio(int shock) {
    List<SpringReading> shocks = analysis.ride().shocks();
    return Math.max(0.2, Math.abs(shocks.get(shock).lengthPerMmHeave()));
  }
}
