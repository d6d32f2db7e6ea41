/** An anti-roll bar on the rear axle. */
package trammel.plugins.antirollbar;
