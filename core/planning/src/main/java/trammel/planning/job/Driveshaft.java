package trammel.planning.job;

import java.util.Optional;
import trammel.reading.quantity.MeasuredPosition;

/**
 * The driveshaft that is kept.
 *
 * @param tubeDiameterMm outside diameter of the tube, mm
 * @param tubeWallMm wall of the tube, mm
 * @param slipEngagementMm length of spline engaged as measured, mm
 * @param slipRoomMm how far the slip yoke can still move in, mm
 * @param centreJoint centre of the joint behind the centre bearing, of a shaft of two pieces
 */
public record Driveshaft(
    double tubeDiameterMm,
    double tubeWallMm,
    double slipEngagementMm,
    double slipRoomMm,
    Optional<MeasuredPosition> centreJoint) {}
