package trammel.planning.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import trammel.planning.job.JobFields;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldKind;

/**
 * What is asked of each thing that the suspension must stay clear of: its name, its kind, whether
 * it is more of a box or of a pipe, and the space it takes.
 */
final class ObstacleQuestions {
  /** Where the list stands in the job file. */
  static final String LIST = "measured.obstacles";

  /** Said here alone: in the file the one that is there says it. */
  static final String SHAPE = "shape";

  static final String BOX = "box";
  static final String CYLINDER = "cylinder";

  private static final String NAME = "name";
  private static final Pattern PATH = Pattern.compile("measured\\.obstacles\\[(\\d{1,3})](\\..+)");
  private static final Field<String> SHAPE_FIELD =
      Field.choice(
          SHAPE, "what it is most like: a box, or a cylinder for a pipe", List.of(BOX, CYLINDER));

  private ObstacleQuestions() {}

  /** All questions of one of them, both shapes among them. */
  static List<Question> all(int index) {
    List<Question> questions = new ArrayList<>();
    for (Field<?> field : fields()) {
      if (field.kind() == FieldKind.SECTION) {
        if (field.key().equals(BOX)) {
          questions.add(question(index, "." + SHAPE, SHAPE_FIELD, true));
        }
        for (Field<?> child : field.children()) {
          questions.add(
              question(
                  index,
                  "." + field.key() + "." + child.key(),
                  child.measuredFrom(field.datum().orElseThrow()),
                  true));
        }
      } else if (field.key().equals(NAME)) {
        questions.add(question(index, "." + NAME, field, false));
      } else {
        questions.add(question(index, "." + field.key(), field, true));
      }
    }
    return questions;
  }

  private static List<Field<?>> fields() {
    for (Field<?> part : JobFields.all()) {
      for (Field<?> field : part.children()) {
        if ((part.key() + "." + field.key()).equals(LIST)) {
          return field.children();
        }
      }
    }
    throw new IllegalStateException("The job file has no " + LIST + ".");
  }

  private static Question question(int index, String rest, Field<?> field, boolean needed) {
    String path = LIST + "[" + index + "]" + rest;
    return new Question(path, "what is in the way", Reasons.of(LIST + rest), field, needed);
  }

  /** What is asked of one of which so much is answered; the name alone while nothing is. */
  static List<Question> asked(int index, Answers answers) {
    List<Question> all = all(index);
    if (all.stream().allMatch(question -> answers.of(question).isEmpty())) {
      return all.subList(0, 1);
    }
    String shape = answers.at(path(index, SHAPE)).orElse("");
    List<Question> asked = new ArrayList<>();
    for (Question question : all) {
      String rest = rest(question.path());
      boolean ofShape = rest.startsWith(BOX + ".") || rest.startsWith(CYLINDER + ".");
      if (rest.equals(NAME)) {
        // Begun: what it is called is needed now.
        asked.add(question(index, "." + NAME, question.field(), true));
      } else if (!ofShape || rest.startsWith(shape + ".")) {
        asked.add(question);
      }
    }
    return asked;
  }

  /** True for the one that no line of a file says. */
  static boolean isShape(Question question) {
    return rest(question.path()).equals(SHAPE);
  }

  static String path(int index, String rest) {
    return LIST + "[" + index + "]." + rest;
  }

  /** Which of them a path belongs to. */
  static Optional<Integer> index(String path) {
    Matcher found = PATH.matcher(path);
    return found.matches() ? Optional.of(Integer.valueOf(found.group(1))) : Optional.empty();
  }

  /** What a path says of it, such as {@code box.left}. */
  static String rest(String path) {
    return path.substring(path.indexOf("].") + 2);
  }
}
