/**
 * Fitting up on the floor: where each bracket goes from the marked datums, and what the readings
 * taken after tacking say about where it went.
 */
package trammel.planning.fitup;
