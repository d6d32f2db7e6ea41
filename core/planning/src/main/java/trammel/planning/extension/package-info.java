/**
 * The three extension points: what an axle linkage, a spring mount and an addition to both must be
 * able to do. Plain interfaces; only a plugin and the application know how they are found.
 */
package trammel.planning.extension;
