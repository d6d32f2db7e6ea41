package trammel.planning.job;

import java.util.Optional;
import trammel.reading.quantity.Measurement;

/**
 * The frame rails.
 *
 * @param shape channel or box
 * @param outsideAtAxle over both rails at the axle mark
 * @param betweenAtAxle between the rails at the axle mark
 * @param outsideAtFrontMounts over both rails at the front-mount station
 * @param betweenAtFrontMounts between the rails at the front-mount station
 * @param depth height of the section
 * @param flange width of the section
 * @param wallMm thickness of the material, mm
 * @param undersideAtAxle underside of the rail above the level floor at the axle mark
 * @param undersideAtFrontMounts underside of the rail above the level floor at the front mounts
 * @param frontMountsForward front-mount station ahead of the axle mark
 * @param steel what the rails are made of, if it is known
 * @param rustDepthMm how deep rust has eaten into the wall, mm, if it was looked at
 * @param flangeHoleMm largest hole in a flange near the work, mm, if it was looked at
 * @param crossmemberAheadMm the frame's own crossmember next ahead of the axle mark, mm, if it was
 *     measured
 * @param crossmemberBehindMm the next one behind it, mm, if it was measured
 */
public record Rails(
    RailShape shape,
    Measurement outsideAtAxle,
    Measurement betweenAtAxle,
    Measurement outsideAtFrontMounts,
    Measurement betweenAtFrontMounts,
    Measurement depth,
    Measurement flange,
    double wallMm,
    Measurement undersideAtAxle,
    Measurement undersideAtFrontMounts,
    Measurement frontMountsForward,
    Optional<RailSteel> steel,
    Optional<Double> rustDepthMm,
    Optional<Double> flangeHoleMm,
    Optional<Double> crossmemberAheadMm,
    Optional<Double> crossmemberBehindMm) {}
