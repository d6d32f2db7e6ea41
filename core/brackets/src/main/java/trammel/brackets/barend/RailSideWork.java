package trammel.brackets.barend;

import java.util.ArrayList;
import java.util.List;
import trammel.brackets.bar.BarMaking;
import trammel.brackets.bar.Mounting;
import trammel.brackets.rail.RailBoxing;
import trammel.brackets.work.BracketBasis;
import trammel.brackets.work.WorkPlan;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;

/**
 * The work of bars along the rails and of bars across the vehicle, whose brackets share the rails:
 * the bars themselves, brackets on the axle tube, frame ends set apart from each other, and channel
 * rails closed behind all of them.
 *
 * @param layout the finished layout
 * @param along the bars along the rails
 * @param across the bars across the vehicle
 * @param mounting side of the rails on which the bars along them run
 * @param basis what all is planned on
 */
public record RailSideWork(
    Layout layout,
    List<BarMaking> along,
    List<BarMaking> across,
    Mounting mounting,
    BracketBasis basis) {
  public RailSideWork {
    along = List.copyOf(along);
    across = List.copyOf(across);
  }

  /** All of it, what is counted from the plan left out. */
  public WorkPlan plan() {
    WorkPlan.Builder plan = new WorkPlan.Builder();
    addBars(plan);
    addAxleBrackets(plan);
    addFrameEnds(plan);
    return plan.build();
  }

  private void addBars(WorkPlan.Builder plan) {
    List<BarMaking> all = new ArrayList<>(along);
    all.addAll(across);
    all.forEach(bar -> plan.add(bar.plan()));
    plan.add(BarOperations.each("make-bar", all, "bar", "each bar of the linkage: "));
  }

  private void addAxleBrackets(WorkPlan.Builder plan) {
    along.forEach(bar -> plan.add(new AxleBracket(bar, basis).plan()));
    plan.add(
        BarOperations.fitting(
            "fit-axle-bracket", along, List.of(End.AXLE), "bracket", "axle ends of "));
  }

  /** The rails are boxed behind the brackets of both kinds of bars alike. */
  private void addFrameEnds(WorkPlan.Builder plan) {
    FrameEnds ends =
        FrameEnds.apart(
            along, basis, (bar, seat) -> FrameBracket.along(bar, seat, mounting, basis));
    List<LateralBarBrackets> brackets =
        across.stream().map(bar -> new LateralBarBrackets(bar, basis)).toList();
    RailBoxing boxing =
        ends.boxing(mounting, brackets.stream().map(LateralBarBrackets::footprint).toList(), basis);
    plan.add(ends.plan(boxing));
    plan.add(BarOperations.fitFrameEnds(along, mounting, basis.rails()));
    for (LateralBarBrackets bracket : brackets) {
      plan.add(bracket.frame(boxing)).add(bracket.axle());
    }
    plan.add(
        BarOperations.fitting(
            "fit-lateral-bar", across, List.of(End.FRAME, End.AXLE), "bar", "both brackets of "));
    plan.add(boxing.plan());
    if (mounting == Mounting.OUTBOARD) {
      plan.add(new RunningBoards(layout).plan(along, ends.outside()));
    }
  }
}
