package trammel.planning.job;

import trammel.reading.quantity.Measurement;

/**
 * Slope of the straight run of the rail against level, positive with the rear higher.
 *
 * @param onStands as the frame sits on the stands while it is measured
 * @param atRideRad wanted at ride, rad
 */
public record Rake(Measurement onStands, double atRideRad) {}
