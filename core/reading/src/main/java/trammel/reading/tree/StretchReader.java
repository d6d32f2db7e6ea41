package trammel.reading.tree;

import java.util.ArrayList;
import java.util.List;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.TokenStreamFactory;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.dataformat.yaml.YAMLFactory;

/** Finds where each value of a text is written. The text has been read before, so it is sound. */
final class StretchReader {
  private final DocumentFormat format;
  private final String text;
  private JsonParser parser;

  StretchReader(DocumentFormat format, String text) {
    this.format = format;
    this.text = text;
  }

  Stretch document() {
    TokenStreamFactory factory =
        format == DocumentFormat.JSON ? new JsonFactory() : new YAMLFactory();
    try (JsonParser opened = factory.createParser(ObjectReadContext.empty(), text)) {
      parser = opened;
      parser.nextToken();
      return value();
    }
  }

  private Stretch value() {
    int start = start();
    JsonToken token = parser.currentToken();
    if (token == JsonToken.START_OBJECT) {
      return group(start);
    }
    if (token == JsonToken.START_ARRAY) {
      return list(start);
    }
    if (format == DocumentFormat.JSON) {
      // Its parser reads no further than it must; asking for the text takes it to the end.
      parser.getString();
    }
    int end = trimmed(start, end());
    Stretch.Form form = end == start ? Stretch.Form.NOTHING : Stretch.Form.SCALAR;
    return new Stretch(start, end, form, List.of(), List.of());
  }

  private Stretch group(int start) {
    List<Stretch.Member> members = new ArrayList<>();
    while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
      String key = parser.currentName();
      int keyStart = start();
      int keyEnd = colon(key, keyStart);
      parser.nextToken();
      members.add(new Stretch.Member(key, keyStart, keyEnd, value()));
    }
    Stretch last = members.isEmpty() ? null : members.get(members.size() - 1).value();
    return whole(start, last, members, List.of());
  }

  private Stretch list(int start) {
    List<Stretch> entries = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      entries.add(value());
    }
    Stretch last = entries.isEmpty() ? null : entries.get(entries.size() - 1);
    return whole(start, last, List.of(), entries);
  }

  private Stretch whole(
      int start, Stretch last, List<Stretch.Member> members, List<Stretch> entries) {
    boolean bracketed = start < text.length() && "{[".indexOf(text.charAt(start)) >= 0;
    if (bracketed) {
      return new Stretch(start, end(), Stretch.Form.BRACKETED, members, entries);
    }
    int end = last == null ? start : last.end();
    return new Stretch(start, end, Stretch.Form.BLOCK, members, entries);
  }

  /** Where the colon after a key stands; the key's own text may hold colons. */
  private int colon(String key, int keyStart) {
    char first = text.charAt(keyStart);
    if (first != '"' && first != '\'') {
      return text.indexOf(':', keyStart + key.length());
    }
    int at = keyStart + 1;
    while (text.charAt(at) != first || first == '\'' && text.charAt(at + 1) == first) {
      at += text.charAt(at) == '\\' && first == '"' || text.charAt(at) == first ? 2 : 1;
    }
    return text.indexOf(':', at);
  }

  /** A text over several lines ends where its last sign is. */
  private int trimmed(int start, int end) {
    int last = end;
    while (last > start && Character.isWhitespace(text.charAt(last - 1))) {
      last--;
    }
    return last;
  }

  private int start() {
    return place(parser.currentTokenLocation());
  }

  private int end() {
    return place(parser.currentLocation());
  }

  /** YAML's parser counts a sign beyond the first 65,536 as one, a Java text as two. */
  private int place(TokenStreamLocation at) {
    int offset = (int) at.getCharOffset();
    return format == DocumentFormat.JSON ? offset : text.offsetByCodePoints(0, offset);
  }
}
