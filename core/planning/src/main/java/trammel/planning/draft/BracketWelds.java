package trammel.planning.draft;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.work.WeldedFoot;
import trammel.engine.checks.Adjustment;
import trammel.engine.checks.BarForces;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Reading;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Direction;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;
import trammel.engine.strength.Electrode;
import trammel.engine.strength.WeldFlow;
import trammel.engine.strength.WeldLoad;
import trammel.planning.catalog.PlanCheck;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.Commission;
import trammel.planning.extension.Site;

/**
 * Largest stress on the throat of the welds that hold a bracket, over the load cases, as a share of
 * the allowable stress of 70 ksi filler metal. The welds are taken as lines; see {@link
 * trammel.engine.strength.WeldGroup} for the method and {@link Electrode#allowableThroatMPa()} for
 * the allowable stress.
 */
public final class BracketWelds implements CatalogCheck {
  private static final Electrode FILLER = Electrode.E70;

  private final AxleLinkage linkage;
  private final Site site;
  private Planned planned;
  private Stressed stressed;

  /**
   * @param linkage plans the brackets of a layout
   * @param site its options, catalog and units
   */
  public BracketWelds(AxleLinkage linkage, Site site) {
    this.linkage = linkage;
    this.site = site;
  }

  @Override
  public PlanCheck check() {
    return PlanCheck.WELDS;
  }

  /** The brackets of the layout that was asked for last. */
  private record Planned(Layout layout, List<WeldedFoot> feet) {}

  /** What their welds bear. */
  private record Stressed(LayoutAnalysis analysis, List<WeldStress> welds) {}

  /** The weld that is stressed furthest, and when. */
  private record Worst(double share, WeldedFoot foot, String loadCase) {}

  /**
   * What the welds of a bracket bear.
   *
   * @param foot the bracket
   * @param throatMPa stress on their throat under each load case (MPa)
   */
  record WeldStress(WeldedFoot foot, double[] throatMPa) {}

  @Override
  public Reading read(LayoutAnalysis analysis) {
    try {
      Optional<Worst> worst = worst(analysis);
      return worst.isEmpty()
          ? new Reading.NotApplicable("no weld of a bracket is loaded")
          : new Reading.Value(
              worst.get().share, worst.get().foot.name() + ", " + worst.get().loadCase);
    } catch (UnworkableLayoutException impossible) {
      return new Reading.Unknown(impossible.reason());
    }
  }

  private Optional<Worst> worst(LayoutAnalysis analysis) {
    BarForces forces = analysis.barForces();
    Worst worst = null;
    for (WeldStress stress : stresses(analysis)) {
      for (int i = 0; i < stress.throatMPa.length; i++) {
        double share = stress.throatMPa[i] / FILLER.allowableThroatMPa();
        if (share > 0 && (worst == null || share > worst.share)) {
          worst = new Worst(share, stress.foot, forces.cases().get(i).name());
        }
      }
    }
    return Optional.ofNullable(worst);
  }

  /**
   * Stresses in the welds of every bracket. Those of the analysis that was asked for last are kept,
   * and the brackets of its layout: this check, what it tries, {@link WeldRanking} and the same
   * under blows ask for them in turn.
   *
   * @throws UnworkableLayoutException if the brackets cannot be planned
   */
  synchronized List<WeldStress> stresses(LayoutAnalysis analysis) {
    if (stressed == null || stressed.analysis != analysis) {
      stressed = new Stressed(analysis, worked(analysis));
    }
    return stressed.welds;
  }

  private List<WeldStress> worked(LayoutAnalysis analysis) {
    Layout layout = analysis.layout();
    BarForces forces = analysis.barForces();
    List<WeldStress> stresses = new ArrayList<>();
    for (WeldedFoot foot : feet(layout)) {
      WeldFlow flow = new WeldFlow(foot.welds());
      double[] throatMPa = new double[forces.cases().size()];
      for (int i = 0; i < throatMPa.length; i++) {
        throatMPa[i] = throatMPa(foot, flow, layout.bars(), forces, i);
      }
      stresses.add(new WeldStress(foot, throatMPa));
    }
    return List.copyOf(stresses);
  }

  private List<WeldedFoot> feet(Layout layout) {
    if (planned == null || planned.layout != layout) {
      Commission commission = new Commission(layout, site.at(layout.chassis()));
      planned = new Planned(layout, linkage.plan(commission).feet());
    }
    return planned.feet;
  }

  private static double throatMPa(
      WeldedFoot foot, WeldFlow flow, List<Bar> bars, BarForces forces, int loadCase) {
    Vector3 force = new Vector3(0, 0, 0);
    Vector3 moment = new Vector3(0, 0, 0);
    for (int i = 0; i < bars.size(); i++) {
      Bar bar = bars.get(i);
      if (foot.bars().contains(bar.name())) {
        Point3 joint = bar.point(foot.end());
        Point3 other = bar.point(foot.end() == End.FRAME ? End.AXLE : End.FRAME);
        Vector3 pull = joint.to(other).normalized().scaled(forces.tensionN(loadCase, i));
        force = force.plus(pull);
        moment = moment.plus(foot.origin().to(joint).cross(pull));
      }
    }
    return flow.throatStressMPa(load(foot, force, moment), foot.legMm());
  }

  private static WeldLoad load(WeldedFoot foot, Vector3 force, Vector3 moment) {
    Vector3 along = foot.along();
    Vector3 up = foot.up();
    Vector3 off = along.cross(up);
    return new WeldLoad(
        force.dot(along),
        force.dot(up),
        force.dot(off),
        0,
        0,
        0,
        moment.dot(along),
        moment.dot(up),
        moment.dot(off));
  }

  /** Thicker plate takes a larger fillet; a joint nearer its weld bends it less. */
  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    List<Adjustment> adjustments = new ArrayList<>(3);
    adjustments.add(new Adjustment.ThickenBrackets());
    Optional<Worst> worst = worst(analysis);
    if (worst.isPresent()) {
      WeldedFoot foot = worst.get().foot;
      Set<String> alike = alike(foot, analysis.layout());
      adjustments.add(new Adjustment.MoveEnds(alike, foot.end(), Direction.UP));
      adjustments.add(new Adjustment.MoveEnds(alike, foot.end(), Direction.FORWARD));
    }
    return adjustments;
  }

  /** The bars of a foot with their twins on the other side. */
  private static Set<String> alike(WeldedFoot foot, Layout layout) {
    Set<String> names = new HashSet<>();
    for (Bar bar : layout.bars()) {
      if (foot.bars().contains(bar.name())) {
        layout.alike(bar).forEach(one -> names.add(one.name()));
      }
    }
    return names;
  }
}
