package trammel.app.commandline;

import java.io.PrintWriter;

/**
 * Where a command prints.
 *
 * @param out takes the result
 * @param err takes remarks and what went wrong
 * @param colour whether the result may carry colours
 * @param watched whether remarks go to a terminal, where a line may be written over
 */
public record Screen(PrintWriter out, PrintWriter err, boolean colour, boolean watched) {}
