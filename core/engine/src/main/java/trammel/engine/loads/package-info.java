/**
 * Load cases and the forces they put on the rear axle. Axes after ISO 8855: X forward, Y left, Z
 * up, origin on the ground under the middle of the axle. Units: mm, N, kg, rad, Nmm.
 */
package trammel.engine.loads;
