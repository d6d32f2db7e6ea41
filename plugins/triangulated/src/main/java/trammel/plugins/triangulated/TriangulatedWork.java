package trammel.plugins.triangulated;

import java.util.ArrayList;
import java.util.List;
import trammel.brackets.bar.BarMaking;
import trammel.brackets.bar.Mounting;
import trammel.brackets.barend.AxleBracket;
import trammel.brackets.barend.BarOperations;
import trammel.brackets.barend.FrameBracket;
import trammel.brackets.barend.FrameEnds;
import trammel.brackets.barend.HousingBridge;
import trammel.brackets.barend.Outrigger;
import trammel.brackets.barend.RunningBoards;
import trammel.brackets.rail.RailBoxing;
import trammel.brackets.work.BracketBasis;
import trammel.brackets.work.WorkPlan;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;
import trammel.planning.extension.Commission;

/**
 * The work of the four bars: the lower ones along the rails from a bracket on the rail to one on
 * the axle tube, the upper ones from a bridge over the housing to brackets on the rails' inner
 * faces, turned to the bars.
 */
final class TriangulatedWork {
  private final Layout layout;
  private final Mounting mounting;
  private final double housingHeightMm;
  private final BracketBasis basis;
  private final List<BarMaking> lowers;
  private final List<BarMaking> uppers;

  TriangulatedWork(Commission commission) {
    TriangulatedOptions options = new TriangulatedOptions(commission.site());
    layout = commission.layout();
    mounting = options.mounting();
    housingHeightMm = options.housingHeightMm();
    basis =
        new BracketBasis(
            layout.chassis(), options.boxing(), commission.site().catalog().boltSizes());
    lowers = layout.lower().stream().map(bar -> BarMaking.along(bar, options.bars())).toList();
    uppers = layout.upper().stream().map(bar -> BarMaking.turned(bar, options.bars())).toList();
  }

  WorkPlan plan() {
    WorkPlan.Builder plan = new WorkPlan.Builder();
    addBars(plan);
    addAxleEnds(plan);
    addFrameEnds(plan);
    plan.add(BarOperations.counted(plan.build()));
    return plan.build();
  }

  private List<BarMaking> bars() {
    List<BarMaking> bars = new ArrayList<>(lowers);
    bars.addAll(uppers);
    return bars;
  }

  private void addBars(WorkPlan.Builder plan) {
    bars().forEach(bar -> plan.add(bar.plan()));
    plan.add(BarOperations.each("make-bar", bars(), "bar", "each bar of the linkage: "));
  }

  private void addAxleEnds(WorkPlan.Builder plan) {
    lowers.forEach(bar -> plan.add(new AxleBracket(bar, basis).plan()));
    plan.add(
        BarOperations.fitting(
            "fit-axle-bracket", lowers, List.of(End.AXLE), "bracket", "axle ends of "));
    plan.add(new HousingBridge(uppers, housingHeightMm, basis).plan());
    plan.add(
        BarOperations.fitting(
            "fit-axle-bracket",
            uppers,
            List.of(End.AXLE),
            "bracket",
            "bridge over the housing with the axle ends of "));
  }

  private void addFrameEnds(WorkPlan.Builder plan) {
    FrameEnds ends =
        FrameEnds.apart(
            bars(),
            basis,
            (bar, seat) ->
                uppers.contains(bar)
                    ? Outrigger.turned(bar, seat, basis)
                    : FrameBracket.along(bar, seat, mounting, basis));
    RailBoxing boxing = ends.boxing(mounting, List.of(), basis);
    plan.add(ends.plan(boxing));
    plan.add(BarOperations.fitFrameEnds(lowers, mounting, basis.rails()));
    plan.add(
        BarOperations.fitting(
            "fit-outrigger",
            uppers,
            List.of(End.FRAME),
            "outrigger",
            BarOperations.onRails(
                "upper frame ends turned to their bars on the rails' inner faces", basis.rails())));
    plan.add(boxing.plan());
    if (mounting == Mounting.OUTBOARD) {
      plan.add(new RunningBoards(layout).plan(lowers, ends.outside()));
    }
  }
}
