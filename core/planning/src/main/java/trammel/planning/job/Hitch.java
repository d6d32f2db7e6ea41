package trammel.planning.job;

/**
 * A trailer hitch that is to be used.
 *
 * @param behindMm how far the ball lies behind the rear axle, mm
 * @param tongueKg what the trailer's tongue weighs on it, kg
 * @param trailerKg what the loaded trailer weighs, kg
 */
public record Hitch(double behindMm, double tongueKg, double trailerKg) {}
