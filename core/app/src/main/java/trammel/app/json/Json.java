package trammel.app.json;

import java.io.StringWriter;
import java.math.BigDecimal;
import java.util.Map;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultPrettyPrinter;

/**
 * Writes maps, lists, texts, numbers, flags and nothing as JSON. The generator is driven by hand: a
 * data-binding mapper would cost a short command a third of its time.
 */
public final class Json {
  private Json() {}

  /**
   * The value as JSON text.
   *
   * @throws IllegalStateException if it holds something that is neither of these
   */
  public static String text(Object value) {
    StringWriter text = new StringWriter();
    ObjectWriteContext context =
        new ObjectWriteContext.Base() {
          @Override
          public PrettyPrinter getPrettyPrinter() {
            return new DefaultPrettyPrinter();
          }
        };
    try (JsonGenerator json = new JsonFactory().createGenerator(context, text)) {
      write(json, value);
    }
    return text.toString();
  }

  private static void write(JsonGenerator json, Object value) {
    if (value instanceof Map<?, ?> map) {
      json.writeStartObject();
      for (Map.Entry<?, ?> entry : map.entrySet()) {
        json.writeName((String) entry.getKey());
        write(json, entry.getValue());
      }
      json.writeEndObject();
    } else if (value instanceof Iterable<?> list) {
      json.writeStartArray();
      for (Object entry : list) {
        write(json, entry);
      }
      json.writeEndArray();
    } else {
      writeScalar(json, value);
    }
  }

  private static void writeScalar(JsonGenerator json, Object value) {
    if (value == null) {
      json.writeNull();
    } else if (value instanceof String text) {
      json.writeString(text);
    } else if (value instanceof Double number) {
      json.writeNumber(finite(number));
    } else if (value instanceof BigDecimal number) {
      json.writeNumber(number);
    } else if (value instanceof Integer number) {
      json.writeNumber(number);
    } else if (value instanceof Long number) {
      json.writeNumber(number);
    } else if (value instanceof Boolean flag) {
      json.writeBoolean(flag);
    } else {
      throw new IllegalStateException(
          "A value of "
              + value.getClass().getName()
              + " ("
              + value
              + ") cannot be written as JSON.");
    }
  }

  private static double finite(double number) {
    if (!Double.isFinite(number)) {
      throw new IllegalStateException("The number (" + number + ") cannot be written as JSON.");
    }
    return number;
  }
}
