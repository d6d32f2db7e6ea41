package trammel.planning.job;

import trammel.reading.tree.Location;

/**
 * Work or a part that the plan has and this job does without.
 *
 * @param what key of an operation or of an item without a place on the vehicle
 * @param reason why this job does without
 * @param location where it stands in the file
 */
public record LeftOut(String what, String reason, Location location) {}
