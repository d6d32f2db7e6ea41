package trammel.engine.clearance;

/**
 * The tightest moment of a pair over the travel.
 *
 * @param pair the two bodies
 * @param gap how much room is left, and between which points
 * @param heaveMm heave of the axle at that moment, bump positive
 * @param rollRad its roll, left wheel up positive
 * @param refined whether it was looked for between the poses of the grid too
 */
public record LeastGap(
    ClearancePair pair, Gap gap, double heaveMm, double rollRad, boolean refined) {}
