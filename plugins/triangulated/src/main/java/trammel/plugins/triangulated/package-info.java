/** A four-link whose upper bars run at an angle and hold the axle sideways. */
package trammel.plugins.triangulated;
