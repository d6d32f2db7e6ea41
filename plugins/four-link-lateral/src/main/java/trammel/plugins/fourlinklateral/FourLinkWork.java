package trammel.plugins.fourlinklateral;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Layout;
import trammel.planning.extension.Commission;
import trammel.planning.fabrication.LinkageWork;
import trammel.planning.work.WorkPlan;

/** The work of the five bars. */
final class FourLinkWork {
  private final Commission commission;
  private final FourLinkOptions options;

  FourLinkWork(Commission commission) {
    this.commission = commission;
    options = new FourLinkOptions(commission.site());
  }

  WorkPlan plan() {
    Layout layout = commission.layout();
    List<Bar> along = new ArrayList<>(layout.lower());
    along.addAll(layout.upper());
    return new LinkageWork(commission, options.mounting(), options.boxing())
        .along(along, options.bars())
        .lateral(layout.across(), options.lateral())
        .plan();
  }
}
