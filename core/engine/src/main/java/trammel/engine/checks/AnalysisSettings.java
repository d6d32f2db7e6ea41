package trammel.engine.checks;

import java.util.List;
import trammel.engine.loads.LoadCase;
import trammel.engine.quantity.Given;

/**
 * What an analysis assumes beyond the layout itself.
 *
 * @param designSpeedMPerS road speed at which shaft speed is judged (m/s), above 0
 * @param loadCases the loads under which strength is judged
 */
public record AnalysisSettings(double designSpeedMPerS, List<LoadCase> loadCases) {
  public AnalysisSettings {
    Given.positive("design road speed (m/s)", designSpeedMPerS);
    loadCases = List.copyOf(loadCases);
  }
}
