/**
 * A finished layout: the chassis as it stands at ride height, with the bars, springs and shocks
 * that carry its axle. Vehicle axes at ride (ISO 8855): X forward, Y left, Z up, origin on the
 * ground under the middle of the rear axle.
 */
package trammel.engine.layout;
