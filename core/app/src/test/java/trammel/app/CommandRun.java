package trammel.app;

import java.io.PrintWriter;
import java.io.StringWriter;

/**
 * One run of a command in this process.
 *
 * @param exitCode what the process would end with
 * @param out what it printed
 * @param err what it had to remark
 */
public record CommandRun(int exitCode, String out, String err) {

  /** Runs Trammel with these words. */
  public static CommandRun of(String... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int exitCode = Main.run(new PrintWriter(out), new PrintWriter(err), words);
    return new CommandRun(exitCode, out.toString(), err.toString());
  }
}
