package trammel.plugins.wattslinkage;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import trammel.brackets.bar.BarMaking;
import trammel.brackets.bar.Mounting;
import trammel.brackets.barend.AxleBracket;
import trammel.brackets.barend.BarOperations;
import trammel.brackets.barend.FrameBracket;
import trammel.brackets.barend.FrameEnds;
import trammel.brackets.barend.LateralBarBrackets;
import trammel.brackets.barend.RunningBoards;
import trammel.brackets.rail.RailBoxing;
import trammel.brackets.work.BracketBasis;
import trammel.brackets.work.FittedEnd;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;
import trammel.engine.quantity.Phrase;
import trammel.planning.extension.Commission;

/**
 * The work of the four bars along the rails, each from a bracket on its rail to one on the axle
 * tube, and of the rocker with what carries it on the axle and its two links to brackets under the
 * rails.
 */
final class WattsWork {
  private final WattsOptions options;
  private final Layout layout;
  private final Mounting mounting;
  private final BracketBasis basis;
  private final Rocker rocker;
  private final List<BarMaking> bars;
  private final List<BarMaking> links;

  WattsWork(Commission commission) {
    options = new WattsOptions(commission.site());
    layout = commission.layout();
    mounting = options.mounting();
    basis =
        new BracketBasis(
            layout.chassis(), options.boxing(), commission.site().catalog().boltSizes());
    rocker =
        Rocker.of(layout)
            .orElseThrow(
                () -> new IllegalArgumentException("the layout has no rocker with two links"));
    bars =
        Stream.concat(layout.lower().stream(), layout.upper().stream())
            .map(bar -> BarMaking.along(bar, options.bars()))
            .toList();
    links = rocker.links().stream().map(link -> BarMaking.across(link, options.links())).toList();
  }

  WorkPlan plan() {
    WorkPlan.Builder plan = new WorkPlan.Builder();
    addBars(plan);
    bars.forEach(bar -> plan.add(new AxleBracket(bar, basis).plan()));
    plan.add(
        BarOperations.fitting(
            "fit-axle-bracket", bars, List.of(End.AXLE), "bracket", "axle ends of "));
    addFrameEnds(plan);
    addRocker(plan);
    plan.add(BarOperations.counted(plan.build()));
    return plan.build();
  }

  private void addBars(WorkPlan.Builder plan) {
    List<BarMaking> all = new ArrayList<>(bars);
    all.addAll(links);
    all.forEach(bar -> plan.add(bar.plan()));
    plan.add(BarOperations.each("make-bar", all, "bar", "each bar of the linkage: "));
  }

  /** The rails are boxed behind the brackets of the bars and of the rocker's links alike. */
  private void addFrameEnds(WorkPlan.Builder plan) {
    FrameEnds ends =
        FrameEnds.apart(bars, basis, (bar, seat) -> FrameBracket.along(bar, seat, mounting, basis));
    List<LateralBarBrackets> across =
        links.stream().map(link -> new LateralBarBrackets(link, basis)).toList();
    RailBoxing boxing =
        ends.boxing(mounting, across.stream().map(LateralBarBrackets::footprint).toList(), basis);
    plan.add(ends.plan(boxing));
    plan.add(BarOperations.fitFrameEnds(bars, mounting, basis.rails()));
    across.forEach(brackets -> plan.add(brackets.frame(boxing)));
    plan.add(
        BarOperations.fitting(
            "fit-frame-bracket",
            links,
            List.of(End.FRAME),
            "bracket",
            BarOperations.onRails("frame ends of the rocker's links", basis.rails())));
    plan.add(boxing.plan());
    if (mounting == Mounting.OUTBOARD) {
      plan.add(new RunningBoards(layout).plan(bars, ends.outside()));
    }
  }

  private void addRocker(WorkPlan.Builder plan) {
    RockerForm form =
        RockerForm.of(
            links.get(0).axleSeat(),
            basis.bolts(),
            options.carrierTube().tube().outsideDiameterMm() / 2);
    plan.add(new RockerWork(rocker, links, form, basis).plan());
    plan.add(
        new PivotCarrier(rocker, form, links.get(0).stock(), options.carrierTube(), basis).plan());
    plan.add(
        new OperationNeed(
            "fit-rocker",
            1,
            Phrase.of("1 rocker"),
            Phrase.of(
                "rocker with its carrier behind the axle, pivot and both links set: {}," + " {}",
                links.get(0).bar().name(),
                links.get(1).bar().name()),
            links.stream().map(link -> new FittedEnd(link.bar().name(), End.AXLE)).toList()));
  }
}
