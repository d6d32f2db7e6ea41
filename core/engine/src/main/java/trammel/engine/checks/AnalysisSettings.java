package trammel.engine.checks;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import trammel.engine.layout.Joint;
import trammel.engine.loads.LoadCase;
import trammel.engine.quantity.Given;
import trammel.engine.springs.BumpStop;

/**
 * What an analysis assumes beyond the layout itself.
 *
 * @param designSpeedMPerS road speed at which shaft speed is judged (m/s), above 0
 * @param loadCases the loads under which strength is judged; each that has a hand in both hands
 * @param hardCases blows that a vehicle meets a few times in its life, judged by limits of their
 *     own
 * @param bumpStop how stiff bump stops are, and how fast a wheel meets one
 * @param timesAYear how often each load case comes in a year, by its name: an invented use, for
 *     ranking welds, never for a promise of years
 * @param joints the joints that can be had, to try in place of one that is too weak
 * @param shockBlow what a shock puts into its mounts under the usual load cases
 * @param hardShockBlow the same under a hard blow
 * @param bay where the frame's own crossmembers are taken where they are not measured
 */
public record AnalysisSettings(
    double designSpeedMPerS,
    List<LoadCase> loadCases,
    List<LoadCase> hardCases,
    BumpStop bumpStop,
    Map<String, Double> timesAYear,
    List<Joint> joints,
    ShockBlow shockBlow,
    ShockBlow hardShockBlow,
    CrossmemberBay bay) {
  private static final double POUND_N = 4.4482216152605;
  private static final double INCH_MM = 25.4;

  /** 400 lb/in and 250 lb/in3, met at 40 in/s: an invented stop, put your maker's in its place. */
  public static final BumpStop USUAL_STOP =
      new BumpStop(
          400 * POUND_N / INCH_MM, 250 * POUND_N / (INCH_MM * INCH_MM * INCH_MM), 40 * INCH_MM);

  /** A wheel at 2 m/s, from memory; an axle that pulls with three times its weight, no source. */
  public static final ShockBlow USUAL_BLOW = new ShockBlow(2000, 3);

  /** The same stroke, which is a pothole's already, and five times the axle's weight: no source. */
  public static final ShockBlow HARD_BLOW = new ShockBlow(2000, 5);

  /** 40 in ahead and 24 in behind the axle: from memory, of ladder frames. */
  public static final CrossmemberBay USUAL_BAY = new CrossmemberBay(24 * INCH_MM, 40 * INCH_MM);

  public AnalysisSettings {
    Given.positive("design road speed (m/s)", designSpeedMPerS);
    loadCases = LoadCase.inBothHands(loadCases);
    hardCases = LoadCase.inBothHands(hardCases);
    Objects.requireNonNull(bumpStop, "bumpStop");
    timesAYear = Map.copyOf(timesAYear);
    joints = List.copyOf(joints);
  }

  /** Settings without hard cases and without joints to try. */
  public AnalysisSettings(double designSpeedMPerS, List<LoadCase> loadCases) {
    this(
        designSpeedMPerS,
        loadCases,
        List.of(),
        USUAL_STOP,
        Map.of(),
        List.of(),
        USUAL_BLOW,
        HARD_BLOW,
        USUAL_BAY);
  }

  /** These settings with the hard cases and the hard blow in place of the others. */
  AnalysisSettings underBlows() {
    return new AnalysisSettings(
        designSpeedMPerS,
        hardCases,
        hardCases,
        bumpStop,
        timesAYear,
        joints,
        hardShockBlow,
        hardShockBlow,
        bay);
  }

  private AnalysisSettings with(
      double speedMPerS, List<LoadCase> hard, BumpStop stop, Map<String, Double> times) {
    return new AnalysisSettings(
        speedMPerS, loadCases, hard, stop, times, joints, shockBlow, hardShockBlow, bay);
  }

  /** These settings with cases of hard blows. */
  public AnalysisSettings withHardCases(List<LoadCase> cases) {
    return with(designSpeedMPerS, cases, bumpStop, timesAYear);
  }

  /** These settings with how often each load case comes in a year. */
  public AnalysisSettings withTimesAYear(Map<String, Double> times) {
    return with(designSpeedMPerS, hardCases, bumpStop, times);
  }

  /** These settings with another bump stop. */
  public AnalysisSettings withBumpStop(BumpStop stop) {
    return with(designSpeedMPerS, hardCases, stop, timesAYear);
  }

  /** These settings for another road speed (m/s). */
  public AnalysisSettings atSpeed(double speedMPerS) {
    return with(speedMPerS, hardCases, bumpStop, timesAYear);
  }

  /** These settings with joints to try. */
  public AnalysisSettings withJoints(List<Joint> newJoints) {
    return new AnalysisSettings(
        designSpeedMPerS,
        loadCases,
        hardCases,
        bumpStop,
        timesAYear,
        newJoints,
        shockBlow,
        hardShockBlow,
        bay);
  }

  /**
   * These settings with what a shock puts into its mounts.
   *
   * @param usual under the usual load cases
   * @param hard under a hard blow
   */
  public AnalysisSettings withShockBlows(ShockBlow usual, ShockBlow hard) {
    return new AnalysisSettings(
        designSpeedMPerS, loadCases, hardCases, bumpStop, timesAYear, joints, usual, hard, bay);
  }

  /** These settings with the frame's own crossmembers elsewhere where they are not measured. */
  public AnalysisSettings withBay(CrossmemberBay other) {
    return new AnalysisSettings(
        designSpeedMPerS,
        loadCases,
        hardCases,
        bumpStop,
        timesAYear,
        joints,
        shockBlow,
        hardShockBlow,
        other);
  }
}
