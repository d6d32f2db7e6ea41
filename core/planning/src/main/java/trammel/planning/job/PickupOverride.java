package trammel.planning.job;

import trammel.reading.quantity.PartialPosition;
import trammel.reading.tree.Location;

/**
 * Distances of a link's ends that the vehicle dictates, in ride axes from level.
 *
 * @param frame of the end on the frame
 * @param axle of the end on the axle
 * @param location where it stands in the file
 */
public record PickupOverride(PartialPosition frame, PartialPosition axle, Location location) {}
