package trammel.plugins.fourlinklateral;

import java.util.ArrayList;
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
 * The work of the five bars: four along the rails, each from a bracket on its rail to one on the
 * axle tube, and the lateral bar across, from a bracket under one rail to one on arms off the tube.
 */
final class FourLinkWork {
  private final Layout layout;
  private final FourLinkOptions options;
  private final BracketBasis basis;

  FourLinkWork(Commission commission) {
    layout = commission.layout();
    options = new FourLinkOptions(commission.site());
    basis =
        new BracketBasis(
            layout.chassis(), options.boxing(), commission.site().catalog().boltSizes());
  }

  WorkPlan plan() {
    List<Bar> links = new ArrayList<>(layout.lower());
    links.addAll(layout.upper());
    WorkPlan work =
        new RailSideWork(
                layout,
                links.stream().map(bar -> BarMaking.along(bar, options.bars())).toList(),
                layout.across().stream()
                    .map(bar -> BarMaking.across(bar, options.lateral()))
                    .toList(),
                options.mounting(),
                basis)
            .plan();
    return work.plus(BarOperations.counted(work));
  }
}
