/**
 * What a command takes, declared as data, read from the words after its name by picocli, and the
 * help that says so.
 */
package trammel.app.commandline;
