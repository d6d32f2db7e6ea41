/**
 * What a command takes, read from the words after its name, and the help that says so. A command
 * line is read at every start, so this is done with plain loops and loads a handful of classes.
 */
package trammel.app.commandline;
