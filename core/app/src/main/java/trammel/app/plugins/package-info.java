/** Finds the linkages, spring mounts and additions in the plugins folder. */
package trammel.app.plugins;
