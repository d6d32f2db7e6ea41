package trammel.plugins.threelink;

import java.util.List;
import trammel.brackets.bar.BarMaking;
import trammel.brackets.barend.BarOperations;
import trammel.brackets.barend.RailSideWork;
import trammel.brackets.work.BracketBasis;
import trammel.brackets.work.WorkPlan;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Layout;
import trammel.planning.extension.Commission;

/**
 * The work of the four bars: three along the rails, each from a bracket on its rail to one on the
 * axle tube, and the lateral bar across.
 */
final class ThreeLinkWork {
  private final Layout layout;
  private final ThreeLinkOptions options;
  private final BracketBasis basis;

  ThreeLinkWork(Commission commission) {
    layout = commission.layout();
    options = new ThreeLinkOptions(commission.site());
    basis =
        new BracketBasis(
            layout.chassis(), options.boxing(), commission.site().catalog().boltSizes());
  }

  WorkPlan plan() {
    List<BarMaking> along =
        layout.bars().stream()
            .filter(bar -> !bar.isAcross())
            .map(bar -> BarMaking.along(bar, options.bars()))
            .toList();
    List<BarMaking> across =
        layout.bars().stream()
            .filter(Bar::isAcross)
            .map(bar -> BarMaking.across(bar, options.lateral()))
            .toList();
    WorkPlan work = new RailSideWork(layout, along, across, options.mounting(), basis).plan();
    return work.plus(BarOperations.counted(work));
  }
}
