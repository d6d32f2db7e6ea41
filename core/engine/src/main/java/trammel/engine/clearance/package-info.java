/**
 * Room between the axle, what moves with it and the frame: shapes, the signed gap between two of
 * them, the least gap over the whole travel, and the notch a rail needs. Lengths in mm, vehicle
 * axes.
 */
package trammel.engine.clearance;
