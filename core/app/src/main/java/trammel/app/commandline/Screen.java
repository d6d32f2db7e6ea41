package trammel.app.commandline;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.util.Optional;

/**
 * Where a command prints.
 *
 * @param out takes the result
 * @param err takes remarks and what went wrong
 * @param colour whether the result may carry colours
 * @param watched whether remarks go to a terminal, where a line may be written over
 * @param answers where somebody at a terminal types answers; empty where nobody can be asked
 */
public record Screen(
    PrintWriter out,
    PrintWriter err,
    boolean colour,
    boolean watched,
    Optional<BufferedReader> answers) {
  /** A screen in front of which nobody can be asked. */
  public Screen(PrintWriter out, PrintWriter err, boolean colour, boolean watched) {
    this(out, err, colour, watched, Optional.empty());
  }

  /** Tells something that is to be known besides the result. */
  public void note(String text) {
    err.println("Note: " + text);
  }
}
