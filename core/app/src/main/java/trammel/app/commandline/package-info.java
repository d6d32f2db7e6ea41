/**
 * What a command is: what it takes, declared as data and read from the words after its name, the
 * help that says so, where it prints and what it tells the shell.
 */
package trammel.app.commandline;
