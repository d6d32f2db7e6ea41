package trammel.planning.start;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import trammel.planning.job.JobFields;
import trammel.planning.options.BarOptions;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldKind;

/**
 * Everything that is asked once to start a job, from the declarations of the job file's fields, in
 * their order. What is in the way is asked of each thing ({@link Answers#questions()}); other
 * lists, overrides and the shop's terms are left to the file itself.
 */
public final class Questions {
  /** Groups that are written into the file by hand when they are needed. */
  private static final Set<String> LEFT_OUT =
      Set.of(
          "format",
          "terms",
          "measured.obstacles",
          "measured.loads",
          "measured.tolerance",
          "chosen.pickups");

  /** On which side of the rails the bars run: an option of those linkages that have it. */
  public static final String MOUNTING = "chosen.linkage_options.mounting";

  private static final String CHOSEN = "chosen.";
  private static final String LINKAGE_OPTIONS = "chosen.linkage_options";

  /** How many things in the way a measuring sheet has lines for. */
  private static final int OBSTACLES_OF_A_SHEET = 3;

  private Questions() {}

  /** All questions in the order in which they are asked. */
  public static List<Question> all() {
    List<Question> questions = new ArrayList<>();
    for (Field<?> field : JobFields.all()) {
      add(questions, "", field.help(), field, true);
    }
    return List.copyOf(questions);
  }

  private static void add(
      List<Question> questions, String parent, String section, Field<?> field, boolean needed) {
    String path = parent.isEmpty() ? field.key() : parent + "." + field.key();
    if (path.equals(LINKAGE_OPTIONS)) {
      questions.add(
          new Question(
              MOUNTING, section, Reasons.of(MOUNTING), BarOptions.mounting("bars"), false));
      return;
    }
    if (LEFT_OUT.contains(path) || isOptions(field)) {
      return;
    }
    switch (field.kind()) {
      case SECTION -> {
        for (Field<?> child : field.children()) {
          add(questions, path, field.help(), child, needed && field.isRequired());
        }
      }
      case SECTION_LIST, SECTION_MAP -> {
        // Written into the file by hand.
      }
      default ->
          questions.add(
              new Question(path, section, Reasons.of(path), field, needed && field.isRequired()));
    }
  }

  /** Options are for a plugin to read, and are written into the file by hand. */
  private static boolean isOptions(Field<?> field) {
    return field.kind() == FieldKind.OPTIONS || field.kind() == FieldKind.OPTIONS_MAP;
  }

  /** The lines of a measuring sheet: all questions, and some things that may be in the way. */
  public static List<Question> ofSheet() {
    List<Question> obstacles =
        IntStream.range(0, OBSTACLES_OF_A_SHEET)
            .mapToObj(ObstacleQuestions::all)
            .flatMap(List::stream)
            .filter(question -> !ObstacleQuestions.isShape(question))
            .toList();
    return List.copyOf(with(obstacles, all()));
  }

  /** What is asked once with what is asked of things in the way in its place. */
  static List<Question> with(List<Question> obstacles, List<Question> once) {
    List<Question> questions = new ArrayList<>();
    once.stream().filter(question -> !isAfterObstacles(question)).forEach(questions::add);
    questions.addAll(obstacles);
    once.stream().filter(Questions::isAfterObstacles).forEach(questions::add);
    return questions;
  }

  /** What is in the way is asked before what is chosen. */
  static boolean isAfterObstacles(Question question) {
    return question.path().startsWith(CHOSEN);
  }

  /** The question whose answer goes to a path. */
  public static Optional<Question> at(String path) {
    return Optional.ofNullable(byPath().get(path)).or(() -> ofObstacle(path));
  }

  private static Optional<Question> ofObstacle(String path) {
    return ObstacleQuestions.index(path)
        .flatMap(
            index ->
                ObstacleQuestions.all(index).stream()
                    .filter(question -> question.path().equals(path))
                    .findFirst());
  }

  /** Questions by their path. */
  public static Map<String, Question> byPath() {
    Map<String, Question> byPath = new LinkedHashMap<>();
    for (Question question : all()) {
      byPath.put(question.path(), question);
    }
    return byPath;
  }
}
