/** One class for each command, and the options that they share. */
package trammel.app.commands;
