package trammel.planning.start;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trammel.planning.job.JobFields;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldKind;

/**
 * Everything that is asked to start a job, from the declarations of the job file's fields, in their
 * order. Lists, overrides and the shop's terms are left to the file itself.
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

  /** What each group of measurements is needed for. */
  private static final Map<String, String> REASONS =
      Map.ofEntries(
          Map.entry("job", "it stands on the quote and on every sheet"),
          Map.entry("measured.wheelbase", "left against right tells whether the axle sits square"),
          Map.entry("measured.rake", "angles read on the stands are turned to the road by it"),
          Map.entry("measured.rails", "brackets sit on the rails, and the axle must clear them"),
          Map.entry("measured.axle", "brackets sit on the axle tube; the pinion sets the shaft"),
          Map.entry("measured.tyre", "it sets the axle's height and what clears the tyre"),
          Map.entry("measured.transmission", "it sets the angles of both universal joints"),
          Map.entry("measured.driveshaft", "the spline must neither bottom nor come apart"),
          Map.entry("measured.weights", "they choose the springs and load the bars"),
          Map.entry("measured.drive", "engine torque limits what loads the bars"),
          Map.entry("measured.brakes", "braking loads the bars"),
          Map.entry("measured", "the tyres' grip limits what loads the bars"),
          Map.entry("chosen", "it decides what is built"),
          Map.entry("chosen.ride", "it decides where the body sits and how far the axle moves"));

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
              new Question(
                  path,
                  section,
                  REASONS.getOrDefault(parent, "it is needed for the layout"),
                  field,
                  needed && field.isRequired()));
    }
  }

  /** Options are for a plugin to read, and are written into the file by hand. */
  private static boolean isOptions(Field<?> field) {
    return field.kind() == FieldKind.OPTIONS || field.kind() == FieldKind.OPTIONS_MAP;
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
