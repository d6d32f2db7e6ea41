package trammel.engine.motion;

/**
 * A spring or shock at one pose.
 *
 * @param name what the shop calls it
 * @param lengthMm distance between its mounts (mm)
 * @param lengthPerMmHeave change of length (mm per mm heave; negative when bump shortens it)
 * @param lengthMmPerRadRoll change of length (mm per rad roll)
 * @param motionRatioHeave compression per travel of the wheel in heave
 * @param motionRatioRoll compression per vertical travel, in roll, of the wheel on its side
 * @param rateNPerMm rate along its own line (N/mm)
 */
public record SpringReading(
    String name,
    double lengthMm,
    double lengthPerMmHeave,
    double lengthMmPerRadRoll,
    double motionRatioHeave,
    double motionRatioRoll,
    double rateNPerMm) {}
