package trammel.plugins.triangulated;

import trammel.engine.layout.Layout;
import trammel.planning.extension.Commission;
import trammel.planning.fabrication.LinkageWork;
import trammel.planning.work.WorkPlan;

/** The work of the four bars. */
final class TriangulatedWork {
  private final Commission commission;
  private final TriangulatedOptions options;

  TriangulatedWork(Commission commission) {
    this.commission = commission;
    options = new TriangulatedOptions(commission.site());
  }

  WorkPlan plan() {
    Layout layout = commission.layout();
    return new LinkageWork(commission, options.mounting(), options.boxing())
        .along(layout.lower(), options.bars())
        .spread(layout.upper(), options.bars(), options.housingHeightMm())
        .plan();
  }
}
