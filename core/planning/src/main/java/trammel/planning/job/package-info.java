/**
 * The job file: what was measured, what was chosen and on what terms, read from JSON or YAML to one
 * immutable model in mm, rad, kg, N, Nmm.
 *
 * <p>Measured places and heights are taken as the frame sits on the stands, referenced to level:
 * forward from the axle mark on the rail plumbed to the floor, left from the body's centre plane,
 * up from the level floor.
 */
package trammel.planning.job;
