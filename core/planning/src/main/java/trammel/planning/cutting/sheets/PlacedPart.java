package trammel.planning.cutting.sheets;

/**
 * A part in its place.
 *
 * @param partId the part as the problem calls it
 * @param xMm its left edge, from the left edge of the sheet, mm
 * @param yMm its lower edge, from the lower edge of the sheet, mm
 * @param widthMm side along x as it lies, mm
 * @param heightMm side along y as it lies, mm
 * @param turned true when it lies a quarter turn round
 */
public record PlacedPart(
    String partId, double xMm, double yMm, double widthMm, double heightMm, boolean turned) {}
