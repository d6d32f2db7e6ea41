/**
 * What a user meets: the launcher of a source checkout and the installed copy, run as processes.
 */
package trammel.bin;
