package trammel.planning.start;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.planning.job.JobFields;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.FlagNode;
import trammel.reading.tree.ListNode;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.TextNode;
import trammel.reading.tree.ValueText;

/** The answers so far, and the job file that they make. */
public final class Answers {
  /** Stands at the top of a file whose questions are not all answered. */
  public static final String OPEN = "# Not finished: trammel start goes on with it.";

  private static final String UNITS = "job.units";

  private final Map<String, Question> questions = Questions.byPath();
  private final Map<String, String> given = new LinkedHashMap<>();

  /** No answer yet. */
  public Answers() {
    // Nothing is given.
  }

  /** The answers that a job file holds, finished or not. */
  public static Answers of(ObjectNode root) {
    Answers answers = new Answers();
    for (Question question : answers.questions.values()) {
      question.answer(root).ifPresent(answer -> answers.given.put(question.path(), answer));
    }
    return answers;
  }

  /** Gives an answer, in place of an earlier one. */
  public void give(Question question, String answer) {
    given.put(question.path(), answer);
  }

  /** Takes an answer back. */
  public void take(Question question) {
    given.remove(question.path());
  }

  /** The answer to a question. */
  public Optional<String> of(Question question) {
    return Optional.ofNullable(given.get(question.path()));
  }

  /** True if the other has all of these answers, word for word. */
  public boolean isWithin(Answers other) {
    return other.given.entrySet().containsAll(given.entrySet());
  }

  /** Questions that must be answered and are not. */
  public List<Question> open() {
    List<Question> open = new ArrayList<>();
    for (Question question : questions.values()) {
      if (question.needed() && !given.containsKey(question.path())) {
        open.add(question);
      }
    }
    return open;
  }

  /** The unit system of bare numbers. */
  public UnitSystem units() {
    for (UnitSystem units : UnitSystem.values()) {
      if (units.word().equals(given.get(UNITS))) {
        return units;
      }
    }
    return UnitSystem.US;
  }

  /** The job file, YAML; with a remark at its top while a needed answer is missing. */
  public String yaml() {
    StringBuilder out = new StringBuilder();
    if (!open().isEmpty()) {
      out.append(OPEN).append('\n');
    }
    out.append("format: ").append(JobFields.FORMAT).append('\n');
    List<String> opened = List.of();
    for (Question question : questions.values()) {
      String answer = given.get(question.path());
      if (answer != null) {
        List<String> groups = groups(question.path());
        openGroups(out, opened, groups);
        opened = groups;
        out.append("  ".repeat(groups.size())).append(question.key()).append(": ");
        append(out, question.node(answer));
        out.append('\n');
      }
    }
    return out.toString();
  }

  private static List<String> groups(String path) {
    String[] keys = path.split("\\.");
    return List.of(keys).subList(0, keys.length - 1);
  }

  private static void openGroups(StringBuilder out, List<String> opened, List<String> groups) {
    int same = 0;
    while (same < opened.size()
        && same < groups.size()
        && opened.get(same).equals(groups.get(same))) {
      same++;
    }
    for (int i = same; i < groups.size(); i++) {
      out.append(i == 0 ? "\n" : "").append("  ".repeat(i)).append(groups.get(i)).append(":\n");
    }
  }

  private static void append(StringBuilder out, DocumentNode node) {
    if (node instanceof TextNode text) {
      // In double quotes, so that no answer can be taken for anything but a text.
      out.append(ValueText.quoted(text.text()));
    } else if (node instanceof FlagNode flag) {
      out.append(flag.value());
    } else if (node instanceof ListNode list) {
      out.append('[');
      for (int i = 0; i < list.entries().size(); i++) {
        out.append(i == 0 ? "" : ", ");
        append(out, list.entries().get(i));
      }
      out.append(']');
    } else if (node instanceof ObjectNode object) {
      out.append('{');
      for (int i = 0; i < object.members().size(); i++) {
        out.append(i == 0 ? "" : ", ").append(object.members().get(i).key()).append(": ");
        append(out, object.members().get(i).value());
      }
      out.append('}');
    }
  }
}
