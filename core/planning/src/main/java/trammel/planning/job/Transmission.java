package trammel.planning.job;

import trammel.reading.quantity.MeasuredAngle;
import trammel.reading.quantity.MeasuredPosition;

/**
 * Where the driveshaft starts.
 *
 * @param joint centre of the front universal joint
 * @param angle elevation of the output axis looking forward: positive with its front end higher,
 *     that is with the tail of the transmission down
 */
public record Transmission(MeasuredPosition joint, MeasuredAngle angle) {}
