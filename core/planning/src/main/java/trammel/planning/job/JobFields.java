package trammel.planning.job;

import java.util.List;
import trammel.reading.fields.Field;

/** All fields of a job file, as data. */
public final class JobFields {
  /** What {@code format} must say. */
  public static final String FORMAT = "trammel-job/1";

  private static final Field<String> FORMAT_FIELD =
      Field.choice("format", "what kind of file this is", List.of(FORMAT));

  private static final List<Field<?>> ALL =
      List.of(
          FORMAT_FIELD, HeaderPart.FIELD, MeasuredPart.FIELD, ChosenPart.FIELD, TermsPart.FIELD);

  private JobFields() {}

  /** The fields at the top of a job file; groups hold the others as their children. */
  public static List<Field<?>> all() {
    return ALL;
  }
}
