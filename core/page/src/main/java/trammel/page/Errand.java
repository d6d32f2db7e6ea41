package trammel.page;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.app.commandline.Command;
import trammel.app.commandline.Screen;
import trammel.page.folder.Plain;
import trammel.reading.tree.DocumentReader;

/** A command that the page has run, as from a command line. */
final class Errand {
  private Errand() {}

  /**
   * Runs a command.
   *
   * @param command the command, prepared
   * @param given its words, without {@code --json}
   * @param said the name under which the answer has what the command says
   * @return that, and {@code remarks}
   * @throws Exception what the command throws
   */
  static Map<String, Object> run(Command command, List<String> given, String said)
      throws Exception {
    List<String> words = new ArrayList<>(given);
    words.add("--json");
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    command.run(
        command.syntax().read(words),
        new Screen(new PrintWriter(out, true), new PrintWriter(err, true), false, false));
    Map<String, Object> answer = new LinkedHashMap<>();
    answer.put(said, Plain.of(DocumentReader.read("answer.json", out.toString())));
    answer.put("remarks", err.toString().lines().toList());
    return answer;
  }
}
