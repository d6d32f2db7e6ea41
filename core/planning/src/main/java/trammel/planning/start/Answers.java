package trammel.planning.start;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
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

  private final List<Question> once = Questions.all();
  private final Map<String, String> given = new LinkedHashMap<>();

  /** No answer yet. */
  public Answers() {
    // Nothing is given.
  }

  /** The answers that a job file holds, finished or not. */
  public static Answers of(ObjectNode root) {
    Answers answers = new Answers();
    answers.takeFrom(root, answers.once);
    int obstacle = 0;
    while (answers.takeFrom(root, ObstacleQuestions.all(obstacle))) {
      obstacle++;
    }
    answers.sayShapes();
    return answers;
  }

  private boolean takeFrom(ObjectNode root, List<Question> questions) {
    boolean any = false;
    for (Question question : questions) {
      Optional<String> answer = question.answer(root);
      answer.ifPresent(words -> given.put(question.path(), words));
      any |= answer.isPresent();
    }
    return any;
  }

  /** A file and a sheet say whether it is a box or a cylinder by which of them is filled in. */
  public void sayShapes() {
    for (String path : List.copyOf(given.keySet())) {
      ObstacleQuestions.index(path)
          .ifPresent(
              index -> {
                String rest = ObstacleQuestions.rest(path);
                String shape = rest.substring(0, Math.max(0, rest.indexOf('.')));
                if (!shape.isEmpty()) {
                  given.putIfAbsent(ObstacleQuestions.path(index, ObstacleQuestions.SHAPE), shape);
                }
              });
    }
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

  Optional<String> at(String path) {
    return Optional.ofNullable(given.get(path));
  }

  /** True if the other has all of these answers, word for word. */
  public boolean isWithin(Answers other) {
    return other.given.entrySet().containsAll(given.entrySet());
  }

  /**
   * What is to be answered, given what is answered so far, in order: of each thing in the way that
   * was begun everything, and whether there is another.
   */
  public List<Question> questions() {
    return Questions.with(ofObstacles(), once);
  }

  private List<Question> ofObstacles() {
    List<Question> questions = new ArrayList<>();
    SortedSet<Integer> begun = obstacles();
    begun.forEach(index -> questions.addAll(ObstacleQuestions.asked(index, this)));
    questions.addAll(ObstacleQuestions.asked(begun.isEmpty() ? 0 : begun.last() + 1, this));
    return questions;
  }

  private SortedSet<Integer> obstacles() {
    SortedSet<Integer> begun = new TreeSet<>();
    given.keySet().forEach(path -> ObstacleQuestions.index(path).ifPresent(begun::add));
    return begun;
  }

  /** Questions that must be answered and are not. */
  public List<Question> open() {
    List<Question> open = new ArrayList<>();
    for (Question question : questions()) {
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
    boolean before = true;
    for (Question question : once) {
      if (before && Questions.isAfterObstacles(question)) {
        before = false;
        opened = appendObstacles(out, opened);
      }
      String answer = given.get(question.path());
      if (answer != null) {
        List<String> groups = groups(question.path());
        openGroups(out, opened, groups);
        opened = groups;
        append(out, groups.size(), question, answer);
      }
    }
    return out.toString();
  }

  /** What is in the way, a list of groups; yields the groups that are open behind it. */
  private List<String> appendObstacles(StringBuilder out, List<String> opened) {
    if (obstacles().isEmpty()) {
      return opened;
    }
    List<String> list = groups(ObstacleQuestions.LIST + ".entry");
    openGroups(out, opened, list);
    for (int index : obstacles()) {
      String start = "- ";
      String group = "";
      for (Question question : ObstacleQuestions.asked(index, this)) {
        String answer = given.get(question.path());
        if (answer == null || ObstacleQuestions.isShape(question)) {
          continue;
        }
        String rest = ObstacleQuestions.rest(question.path());
        boolean within = rest.contains(".");
        if (within && !rest.startsWith(group + ".")) {
          group = rest.substring(0, rest.indexOf('.'));
          out.append("    ").append(start).append(group).append(":\n");
          start = "  ";
        }
        out.append("    ").append(start).append(within ? "  " : "");
        append(out, 0, question, answer);
        start = "  ";
      }
    }
    return list;
  }

  private static void append(StringBuilder out, int depth, Question question, String answer) {
    out.append("  ".repeat(depth)).append(question.key()).append(": ");
    append(out, question.node(answer));
    out.append('\n');
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
