/**
 * Motion of a rigid axle on links. The body is held still and the axle moves; heave and roll are
 * imposed, and the other four freedoms of the axle (forward, sideways, yaw, pitch) settle where the
 * links store least energy. All points are given as they stand at ride height.
 */
package trammel.engine.motion;
