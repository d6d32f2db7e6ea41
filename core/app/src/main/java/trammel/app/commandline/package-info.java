/**
 * What a command is: what it takes, declared as data and read from the words after its name by
 * picocli, the help that says so, where it prints and what it tells the shell.
 */
package trammel.app.commandline;
