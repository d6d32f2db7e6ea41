package trammel.engine.checks;

import java.util.List;
import trammel.engine.layout.Joint;
import trammel.engine.loads.LoadCase;
import trammel.engine.quantity.Given;

/**
 * What an analysis assumes beyond the layout itself.
 *
 * @param designSpeedMPerS road speed at which shaft speed is judged (m/s), above 0
 * @param loadCases the loads under which strength is judged; each that has a hand in both hands
 * @param joints the joints that can be had, to try in place of one that is too weak
 */
public record AnalysisSettings(
    double designSpeedMPerS, List<LoadCase> loadCases, List<Joint> joints) {
  public AnalysisSettings {
    Given.positive("design road speed (m/s)", designSpeedMPerS);
    loadCases = LoadCase.inBothHands(loadCases);
    joints = List.copyOf(joints);
  }

  /** Settings without joints to try. */
  public AnalysisSettings(double designSpeedMPerS, List<LoadCase> loadCases) {
    this(designSpeedMPerS, loadCases, List.of());
  }

  /** These settings for another road speed (m/s). */
  public AnalysisSettings atSpeed(double speedMPerS) {
    return new AnalysisSettings(speedMPerS, loadCases, joints);
  }

  /** These settings with joints to try. */
  public AnalysisSettings withJoints(List<Joint> newJoints) {
    return new AnalysisSettings(designSpeedMPerS, loadCases, newJoints);
  }
}
