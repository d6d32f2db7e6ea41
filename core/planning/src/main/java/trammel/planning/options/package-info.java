/** The options that linkages of bars share, and those that mounts of springs and shocks share. */
package trammel.planning.options;
