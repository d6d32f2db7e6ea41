package trammel.planning.job;

import trammel.planning.document.Location;
import trammel.planning.quantity.PartialPosition;

/**
 * Distances of a link's ends that the vehicle dictates, in ride axes from level.
 *
 * @param frame of the end on the frame
 * @param axle of the end on the axle
 * @param location where it stands in the file
 */
public record PickupOverride(PartialPosition frame, PartialPosition axle, Location location) {}
