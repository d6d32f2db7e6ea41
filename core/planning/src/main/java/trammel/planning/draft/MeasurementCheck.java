package trammel.planning.draft;

import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Reading;
import trammel.planning.catalog.PlanCheck;

/**
 * A check of the measurements themselves: it reads the same off every layout of the job.
 *
 * @param check which one
 * @param reading what it reads
 * @param advice what to do where it is not good
 */
record MeasurementCheck(PlanCheck check, Reading reading, String advice) implements CatalogCheck {

  @Override
  public Reading read(LayoutAnalysis analysis) {
    return reading;
  }

  @Override
  public boolean isOfMeasurements() {
    return true;
  }
}
