package trammel.planning.draft;

/**
 * A field of the job file and the value that makes a change.
 *
 * @param path the field, such as {@code chosen.pickups.lower-left.frame.up}
 * @param value what to write there, with its unit
 */
public record FieldChange(String path, String value) {}
