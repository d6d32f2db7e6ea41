package trammel.app.json;

import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Writes maps, lists, texts and numbers as JSON. */
public final class Json {
  private static final JsonMapper MAPPER =
      JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

  private Json() {}

  /** The value as JSON text. */
  public static String text(Object value) {
    return MAPPER.writeValueAsString(value);
  }
}
