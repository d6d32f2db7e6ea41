package trammel.engine.checks;

import trammel.engine.Require;

/**
 * What an analysis assumes beyond the layout itself.
 *
 * @param designSpeedMPerS road speed at which shaft speed is judged (m/s), above 0
 */
public record AnalysisSettings(double designSpeedMPerS) {
  public AnalysisSettings {
    Require.positive("design road speed (m/s)", designSpeedMPerS);
  }
}
