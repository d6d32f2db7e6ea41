package trammel.reading.tree;

import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Writes a value as it can stand in a file, so that it is read back as the same value. */
public final class ValueText {
  /** Begins with a letter, digit or sign before a digit, and has no sign that YAML could take. */
  private static final Pattern PLAIN =
      Pattern.compile(
          "(?:[+-]?[\\p{L}\\p{N}]|[.](?=\\d))(?:[\\p{L}\\p{N} ./%+°_()-]*[\\p{L}\\p{N}.%°)])?");

  /** Words that YAML 1.1 takes for something else than a text. */
  private static final Set<String> TAKEN =
      Set.of("true", "false", "yes", "no", "on", "off", "y", "n", "null", "nan");

  /** A line longer than this is hard to read beside others. */
  static final int LONGEST_LINE = 90;

  private final DocumentFormat format;

  ValueText(DocumentFormat format) {
    this.format = format;
  }

  /** A text in double quotes, so that it can be taken for nothing but a text in YAML and JSON. */
  public static String quoted(String text) {
    StringBuilder out = new StringBuilder(text.length() + 2).append('"');
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '"', '\\' -> out.append('\\').append(c);
        case '\t' -> out.append("\\t");
        case '\n' -> out.append("\\n");
        case '\r' -> out.append("\\r");
        default -> appendCharacter(out, c);
      }
    }
    return out.append('"').toString();
  }

  /** Characters that end a line or do not show are written by their number. */
  private static void appendCharacter(StringBuilder out, char c) {
    switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          out.append("\\u").append(HexFormat.of().toHexDigits(c));
      default -> out.append(c);
    }
  }

  /** A value on one line. */
  String inline(DocumentNode node) {
    if (node instanceof TextNode text) {
      return text(text.text());
    }
    if (node instanceof NumberNode number) {
      return number.text();
    }
    if (node instanceof FlagNode flag) {
      return Boolean.toString(flag.value());
    }
    if (node instanceof ListNode list) {
      return "[" + String.join(", ", list.entries().stream().map(this::inline).toList()) + "]";
    }
    if (node instanceof ObjectNode object) {
      return "{" + String.join(", ", object.members().stream().map(this::inline).toList()) + "}";
    }
    return "null";
  }

  private String inline(ObjectNode.Member member) {
    return key(member.key()) + ": " + inline(member.value());
  }

  /** A key as it is written. */
  String key(String key) {
    return text(key);
  }

  private String text(String text) {
    return format == DocumentFormat.YAML && isPlain(text) ? text : quoted(text);
  }

  private static boolean isPlain(String text) {
    if (!PLAIN.matcher(text).matches() || TAKEN.contains(text.toLowerCase(Locale.ROOT))) {
      return false;
    }
    // What a parser would turn into another number, such as 0x1F, is not what was meant.
    DocumentNode read = DocumentReader.readValue(new Location("value", 0, 0, ""), text);
    return read instanceof TextNode
        || read instanceof NumberNode number && number.text().equals(text);
  }

  /**
   * A key with its value as lines of a block of YAML: groups of groups, and what would make too
   * long a line, get lines of their own.
   *
   * @param indent how far the key stands in
   * @param newLine what ends a line
   */
  String block(String key, DocumentNode value, int indent, String newLine) {
    String line = " ".repeat(indent) + key(key) + ": " + inline(value);
    if (!(value instanceof ObjectNode object)
        || object.members().isEmpty()
        || !holdsGroups(object.members()) && line.length() <= LONGEST_LINE) {
      return line;
    }
    StringBuilder lines = new StringBuilder(" ".repeat(indent)).append(key(key)).append(':');
    for (ObjectNode.Member member : object.members()) {
      lines.append(newLine).append(block(member.key(), member.value(), indent + 2, newLine));
    }
    return lines.toString();
  }

  private static boolean holdsGroups(List<ObjectNode.Member> members) {
    return members.stream().anyMatch(member -> member.value() instanceof ObjectNode);
  }
}
