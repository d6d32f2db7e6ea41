/**
 * The two extension points: what an axle linkage and a spring mount must be able to do. Plain
 * interfaces; only a plugin and the application know how they are found.
 */
package trammel.planning.extension;
