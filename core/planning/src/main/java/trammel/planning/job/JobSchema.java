package trammel.planning.job;

import trammel.reading.fields.FieldDocumentation;
import trammel.reading.fields.FieldSchema;

/** What a job file may hold, generated from its fields. */
public final class JobSchema {
  private JobSchema() {}

  /** JSON Schema (draft 2020-12) of a job file, so that editors complete and check it. */
  public static String jsonSchema() {
    return FieldSchema.of("Trammel job, format " + JobFields.FORMAT, JobFields.all());
  }

  /** The reference of the job file in Markdown: a table for every group. */
  public static String markdown() {
    return "# Job file\n\n"
        + "A job file is YAML (`.yaml`, `.yml`) or JSON (`.json`) with the keys below. Lengths, angles,"
        + " weights and so on are written with their unit: `29 1/2 in`, `5' 3 1/2\"`, `750 mm`,"
        + " `1.5 deg`, `820 lb`, `372 kg`, `180 lb/in`, `65 %`. A number without unit takes the units"
        + " of the job. A measurement may be a list of repeats: `[29 1/2 in, 29 9/16 in]`. An angle"
        + " that was read says against what: `2.5 deg from level` or `2.5 deg from frame`.\n\n"
        + "Everything under `measured` is taken as the frame sits on the stands, on a level floor:"
        + " forward from the axle mark on the rail plumbed to the floor, left from the body's centre"
        + " plane, up from the floor.\n\n"
        + FieldDocumentation.of(JobFields.all());
  }
}
