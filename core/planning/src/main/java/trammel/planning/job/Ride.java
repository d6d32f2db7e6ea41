package trammel.planning.job;

/**
 * Where the body is to sit and how far the axle is to move.
 *
 * @param railUndersideAtAxleMm underside of the rail above the ground at the axle, at ride, mm
 * @param bumpMm travel wanted upward from ride, mm
 * @param droopMm travel wanted downward from ride, mm
 */
public record Ride(double railUndersideAtAxleMm, double bumpMm, double droopMm) {}
