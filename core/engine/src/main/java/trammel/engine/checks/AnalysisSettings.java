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
 * @param hardCases blows that a vehicle meets a few times in its life, judged by limits of their
 *     own
 * @param joints the joints that can be had, to try in place of one that is too weak
 */
public record AnalysisSettings(
    double designSpeedMPerS,
    List<LoadCase> loadCases,
    List<LoadCase> hardCases,
    List<Joint> joints) {
  public AnalysisSettings {
    Given.positive("design road speed (m/s)", designSpeedMPerS);
    loadCases = LoadCase.inBothHands(loadCases);
    hardCases = LoadCase.inBothHands(hardCases);
    joints = List.copyOf(joints);
  }

  /** Settings without hard cases and without joints to try. */
  public AnalysisSettings(double designSpeedMPerS, List<LoadCase> loadCases) {
    this(designSpeedMPerS, loadCases, List.of(), List.of());
  }

  /** These settings with the hard cases in place of the others. */
  AnalysisSettings underBlows() {
    return new AnalysisSettings(designSpeedMPerS, hardCases, hardCases, joints);
  }

  /** These settings with cases of hard blows. */
  public AnalysisSettings withHardCases(List<LoadCase> cases) {
    return new AnalysisSettings(designSpeedMPerS, loadCases, cases, joints);
  }

  /** These settings for another road speed (m/s). */
  public AnalysisSettings atSpeed(double speedMPerS) {
    return new AnalysisSettings(speedMPerS, loadCases, hardCases, joints);
  }

  /** These settings with joints to try. */
  public AnalysisSettings withJoints(List<Joint> newJoints) {
    return new AnalysisSettings(designSpeedMPerS, loadCases, hardCases, newJoints);
  }
}
