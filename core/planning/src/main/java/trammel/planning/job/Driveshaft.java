package trammel.planning.job;

/**
 * The driveshaft that is kept.
 *
 * @param tubeDiameterMm outside diameter of the tube, mm
 * @param tubeWallMm wall of the tube, mm
 * @param slipEngagementMm length of spline engaged as measured, mm
 * @param slipRoomMm how far the slip yoke can still move in, mm
 */
public record Driveshaft(
    double tubeDiameterMm, double tubeWallMm, double slipEngagementMm, double slipRoomMm) {}
