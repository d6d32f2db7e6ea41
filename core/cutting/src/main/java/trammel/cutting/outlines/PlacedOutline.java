package trammel.cutting.outlines;

/**
 * A part in its place: its drawing turned about its origin, then moved.
 *
 * @param partId the part as the problem calls it
 * @param turnDeg turn, degrees counter-clockwise
 * @param xMm where the origin of the drawing comes to lie, mm
 * @param yMm where the origin of the drawing comes to lie, mm
 */
public record PlacedOutline(String partId, double turnDeg, double xMm, double yMm) {}
