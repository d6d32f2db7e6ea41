package trammel.plugins.fourlinklateral;

import java.util.ArrayList;
import java.util.List;
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
import trammel.brackets.work.WorkPlan;
import trammel.engine.layout.Bar;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;
import trammel.planning.extension.Commission;
import trammel.reading.quantity.QuantityPrinter;

/**
 * The work of the five bars: four along the rails, each from a bracket on its rail to one on the
 * axle tube, and the lateral bar across, from a bracket under one rail to one on arms off the tube.
 */
final class FourLinkWork {
  private final Layout layout;
  private final Mounting mounting;
  private final BracketBasis basis;
  private final List<BarMaking> links = new ArrayList<>();
  private final List<BarMaking> lateral = new ArrayList<>();

  FourLinkWork(Commission commission) {
    FourLinkOptions options = new FourLinkOptions(commission.site());
    layout = commission.layout();
    mounting = options.mounting();
    basis =
        new BracketBasis(
            layout.chassis(),
            options.boxing(),
            commission.site().catalog().boltSizes(),
            new QuantityPrinter(commission.site().units()));
    for (List<Bar> bars : List.of(layout.lower(), layout.upper())) {
      for (Bar bar : bars) {
        links.add(BarMaking.along(bar, options.bars()));
      }
    }
    for (Bar bar : layout.across()) {
      lateral.add(BarMaking.across(bar, options.lateral()));
    }
  }

  WorkPlan plan() {
    WorkPlan.Builder plan = new WorkPlan.Builder();
    addBars(plan);
    addAxleBrackets(plan);
    addFrameEnds(plan);
    plan.add(BarOperations.counted(plan.build()));
    return plan.build();
  }

  private void addBars(WorkPlan.Builder plan) {
    List<BarMaking> all = new ArrayList<>(links);
    all.addAll(lateral);
    all.forEach(bar -> plan.add(bar.plan(basis.print())));
    plan.add(BarOperations.each("make-bar", all, "bar", "each bar of the linkage: "));
  }

  private void addAxleBrackets(WorkPlan.Builder plan) {
    links.forEach(bar -> plan.add(new AxleBracket(bar, basis).plan()));
    plan.add(
        BarOperations.fitting(
            "fit-axle-bracket", links, List.of(End.AXLE), "bracket", "axle ends of "));
  }

  /** The rails are boxed behind the brackets of the links and of the lateral bar alike. */
  private void addFrameEnds(WorkPlan.Builder plan) {
    FrameEnds ends =
        FrameEnds.apart(
            links, basis, (bar, seat) -> FrameBracket.along(bar, seat, mounting, basis));
    List<LateralBarBrackets> across =
        lateral.stream().map(bar -> new LateralBarBrackets(bar, basis)).toList();
    RailBoxing boxing =
        ends.boxing(mounting, across.stream().map(LateralBarBrackets::footprint).toList(), basis);
    plan.add(ends.plan(boxing));
    plan.add(BarOperations.fitFrameEnds(links, mounting, basis.rails()));
    for (LateralBarBrackets brackets : across) {
      plan.add(brackets.frame(boxing)).add(brackets.axle());
    }
    plan.add(
        BarOperations.fitting(
            "fit-lateral-bar", lateral, List.of(End.FRAME, End.AXLE), "bar", "both brackets of "));
    plan.add(boxing.plan());
    if (mounting == Mounting.OUTBOARD) {
      plan.add(new RunningBoards(layout, basis.print()).plan(links, ends.outside()));
    }
  }
}
