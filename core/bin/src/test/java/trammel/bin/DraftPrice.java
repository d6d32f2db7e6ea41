package trammel.bin;

import trammel.planning.catalog.Catalog;
import trammel.planning.draft.Draft;
import trammel.planning.estimate.Estimate;
import trammel.planning.estimate.Estimating;

/** The estimate of a draft on its job's own terms, as a quote makes it. */
final class DraftPrice {
  private DraftPrice() {}

  static Estimate of(Catalog catalog, Draft draft) {
    return new Estimating(
            catalog,
            catalog.shop().termsFor(draft.job().terms()),
            catalog.shop().hoursCorrelation())
        .estimate(draft, draft.work());
  }
}
