package trammel.engine.motion;

import java.util.Objects;
import trammel.engine.geometry.Point3;

/**
 * A spring or shock between a point of the frame and a point of the axle.
 *
 * @param name what the shop calls it
 * @param frame mount on the body at ride (mm)
 * @param axle mount on the axle at ride (mm)
 * @param rateNPerMm rate along its own line (N/mm); 0 for a shock
 */
public record SpringPoint(String name, Point3 frame, Point3 axle, double rateNPerMm) {

  /**
   * @throws IllegalArgumentException if it has no length at ride or its rate is negative or no
   *     number
   */
  public SpringPoint {
    Objects.requireNonNull(name, "name of the spring");
    Objects.requireNonNull(frame, "frame mount of the spring");
    Objects.requireNonNull(axle, "axle mount of the spring");
    if (frame.distanceMm(axle) < Link.SHORTEST_MM) {
      throw new IllegalArgumentException(
          "Spring or shock '"
              + name
              + "' is "
              + frame.distanceMm(axle)
              + " mm long; its mounts must be at least 0.000001 mm apart. Check whether one was"
              + " copied from the other.");
    }
    if (!(rateNPerMm >= 0 && rateNPerMm < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "Spring '"
              + name
              + "' has a rate of "
              + rateNPerMm
              + " N/mm; it must be 0 or more and finite. Give the maker's rate.");
    }
  }

  /** Distance between the mounts at a pose (mm). */
  public double lengthMm(AxlePose pose) {
    return frame.distanceMm(pose.move(axle));
  }

  /**
   * Length and how it changes, at a pose.
   *
   * @param pose solved pose
   * @param rates motion at that pose
   * @param trackMm distance between the wheel centres (mm)
   */
  public SpringReading at(AxlePose pose, MotionRates rates, double trackMm) {
    LengthExpansion length = new LengthExpansion(1);
    length.place(pose);
    length.expand(frame, axle, pose.loadedRadiusMm());
    double[] g = length.gradient;
    double perMmHeave =
        g[LengthExpansion.HEAVE]
            + g[0] * rates.forwardPerMmHeave()
            + g[1] * rates.lateralPerMmHeave()
            + g[2] * rates.yawRadPerMmHeave()
            + g[3] * rates.pitchNoseUpRadPerMmHeave();
    double mmPerRadRoll =
        g[LengthExpansion.ROLL]
            + g[0] * rates.forwardMmPerRadRoll()
            + g[1] * rates.lateralMmPerRadRoll()
            + g[2] * rates.yawRadPerRadRoll()
            + g[3] * rates.pitchNoseUpRadPerRadRoll();
    double wheelMmPerRadRoll = axle.yMm() >= 0 ? trackMm / 2 : -trackMm / 2;
    return new SpringReading(
        name,
        length.lengthMm,
        perMmHeave,
        mmPerRadRoll,
        0 - perMmHeave,
        0 - mmPerRadRoll / wheelMmPerRadRoll,
        rateNPerMm);
  }
}
