package trammel.engine.motion;

import java.util.OptionalDouble;

/**
 * Where the links run out of travel: heave at zero roll, roll at zero heave. Empty where they last
 * as far as was asked, and always for a linkage that binds instead of closing exactly.
 *
 * @param heaveMinMm lowest heave (mm)
 * @param heaveMaxMm highest heave (mm)
 * @param rollMinRad lowest roll (rad)
 * @param rollMaxRad highest roll (rad)
 */
public record TravelLimits(
    OptionalDouble heaveMinMm,
    OptionalDouble heaveMaxMm,
    OptionalDouble rollMinRad,
    OptionalDouble rollMaxRad) {}
