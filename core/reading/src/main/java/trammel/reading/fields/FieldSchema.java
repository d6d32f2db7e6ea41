package trammel.reading.fields;

import java.util.List;
import java.util.Optional;
import trammel.reading.quantity.DecimalText;
import trammel.reading.quantity.UnitSystem;

/** JSON Schema (draft 2020-12) of a group of fields. */
public final class FieldSchema {
  private static final String INDENT = "  ";

  private final StringBuilder json = new StringBuilder();
  private int depth;

  private FieldSchema() {}

  /** The schema of a document whose top level is these fields. */
  public static String of(String title, List<Field<?>> fields) {
    FieldSchema schema = new FieldSchema();
    schema.open('{');
    schema.text("$schema", "https://json-schema.org/draft/2020-12/schema");
    schema.text("title", title);
    schema.group(fields);
    schema.close('}');
    return schema.json.append('\n').toString();
  }

  private void field(Field<?> field) {
    key(field.key());
    open('{');
    text("description", description(field));
    Optional<String> standard = field.defaultText(UnitSystem.US);
    if (standard.isPresent() && field.children().isEmpty()) {
      text("default", standard.get());
    }
    value(field);
    close('}');
  }

  private void value(Field<?> field) {
    switch (field.kind()) {
      case SECTION, POINT, MEASURED_POINT, PARTIAL_POINT -> group(field.children());
      case SECTION_LIST -> groupUnder("array", "items", field.children());
      case SECTION_MAP -> groupUnder("object", "additionalProperties", field.children());
      case OPTIONS -> text("type", "object");
      case OPTIONS_MAP -> {
        text("type", "object");
        raw("additionalProperties", "{\"type\": \"object\"}");
      }
      case FLAG -> text("type", "boolean");
      case CHOICE -> words(field.choices());
      case CHOICES -> wordsInList(field.choices());
      case NAMES -> raw("type", "\"array\"");
      case COUNT -> ranged("integer", field);
      case NUMBER -> ranged("number", field);
      case DATE, CURRENCY -> text("type", "string");
      case SPAN -> pair();
      case MEASURED_LENGTH, MEASURED_MASS, MEASURED_ANGLE, MEASURED_LEVEL_ANGLE ->
          raw("type", "[\"string\", \"number\", \"array\"]");
      default -> raw("type", "[\"string\", \"number\"]");
    }
  }

  private static String description(Field<?> field) {
    StringBuilder words = new StringBuilder(field.help());
    if (field.datum().isPresent()) {
      words.append("; ").append(field.datum().get());
    }
    if (field.children().isEmpty()) {
      words.append("; ").append(field.allowed(UnitSystem.US));
      words.append("; for example ").append(field.example(UnitSystem.US));
    }
    return words.toString();
  }

  private void group(List<Field<?>> fields) {
    text("type", "object");
    raw("additionalProperties", "false");
    required(fields);
    key("properties");
    open('{');
    for (Field<?> field : fields) {
      field(field);
    }
    close('}');
  }

  private void groupUnder(String type, String key, List<Field<?>> fields) {
    text("type", type);
    key(key);
    open('{');
    group(fields);
    close('}');
  }

  private void required(List<Field<?>> fields) {
    StringBuilder keys = new StringBuilder();
    for (Field<?> field : fields) {
      if (field.isRequired()) {
        keys.append(keys.isEmpty() ? "" : ", ").append(quoted(field.key()));
      }
    }
    if (!keys.isEmpty()) {
      raw("required", "[" + keys + "]");
    }
  }

  private void words(List<String> words) {
    raw("enum", quotedList(words));
  }

  private void wordsInList(List<String> words) {
    text("type", "array");
    raw("uniqueItems", "true");
    key("items");
    open('{');
    words(words);
    close('}');
  }

  private void ranged(String type, Field<?> field) {
    text("type", type);
    if (field.min().isPresent()) {
      raw("minimum", number(field.min().getAsDouble()));
    }
    if (field.max().isPresent()) {
      raw("maximum", number(field.max().getAsDouble()));
    }
  }

  private void pair() {
    text("type", "array");
    raw("minItems", "2");
    raw("maxItems", "2");
    raw("items", "{\"type\": [\"string\", \"number\"]}");
  }

  private static String number(double value) {
    return DecimalText.trimmed(value, 6);
  }

  // Writing

  private void text(String key, String value) {
    raw(key, quoted(value));
  }

  private void raw(String key, String value) {
    key(key);
    json.append(value);
  }

  private void key(String key) {
    if (json.charAt(json.length() - 1) != '{') {
      json.append(',');
    }
    newLine();
    json.append(quoted(key)).append(": ");
  }

  private void open(char bracket) {
    json.append(bracket);
    depth++;
  }

  private void close(char bracket) {
    depth--;
    newLine();
    json.append(bracket);
  }

  private void newLine() {
    json.append('\n');
    for (int i = 0; i < depth; i++) {
      json.append(INDENT);
    }
  }

  private static String quotedList(List<String> words) {
    StringBuilder list = new StringBuilder("[");
    for (String word : words) {
      list.append(list.length() == 1 ? "" : ", ").append(quoted(word));
    }
    return list.append(']').toString();
  }

  private static String quoted(String text) {
    StringBuilder quoted = new StringBuilder(text.length() + 2).append('"');
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"' || c == '\\') {
        quoted.append('\\');
      }
      quoted.append(c < ' ' ? ' ' : c);
    }
    return quoted.append('"').toString();
  }
}
