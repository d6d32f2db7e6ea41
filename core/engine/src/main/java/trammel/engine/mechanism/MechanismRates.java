package trammel.engine.mechanism;

import java.util.List;
import trammel.engine.geometry.Vector3;
import trammel.engine.motion.MotionRates;

/**
 * How a mechanism moves on from ride when heave or roll change.
 *
 * @param axle the axle's free coordinates
 * @param turns the further bodies, in the order of the mechanism
 * @param slides the slides, in the order of the mechanism
 * @param strainHeaveNPerMm what strained links and bushes add against heave, whole axle (N/mm)
 * @param strainRollNmmPerRad what they add against roll (Nmm/rad)
 */
public record MechanismRates(
    MotionRates axle,
    List<Turning> turns,
    List<Sliding> slides,
    double strainHeaveNPerMm,
    double strainRollNmmPerRad) {
  public MechanismRates {
    turns = List.copyOf(turns);
    slides = List.copyOf(slides);
  }

  /**
   * How a further body turns; a body on a pin turns about X only, which stands for its pin.
   *
   * @param body name of the body
   * @param radPerMmHeave rotation vector per heave (rad/mm)
   * @param radPerRadRoll rotation vector per roll (rad/rad)
   */
  public record Turning(String body, Vector3 radPerMmHeave, Vector3 radPerRadRoll) {}

  /**
   * How a slide travels.
   *
   * @param slide name of the slide
   * @param mmPerMmHeave travel per heave
   * @param mmPerRadRoll travel per roll (mm/rad)
   */
  public record Sliding(String slide, double mmPerMmHeave, double mmPerRadRoll) {}
}
