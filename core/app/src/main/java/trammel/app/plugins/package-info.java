/** Finds the linkages and spring mounts in the plugins folder. */
package trammel.app.plugins;
