package trammel.reading.tree;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.TokenStreamFactory;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLParser;

/** Builds the tree of one document from the parser's stream of tokens. */
final class TreeBuilder {
  private final String file;
  private final DocumentFormat format;
  private final String text;
  private final Problems problems = new Problems();

  /** Set if the text is a value from outside a file: all of it stands there. */
  private final Optional<Location> fixedPlace;

  private JsonParser parser;
  private String path = "";

  TreeBuilder(String file, DocumentFormat format, String text) {
    this.file = file;
    this.format = format;
    this.text = text;
    this.fixedPlace = Optional.empty();
  }

  TreeBuilder(Location where, String text) {
    this.file = where.file();
    this.format = DocumentFormat.YAML;
    this.text = text;
    this.fixedPlace = Optional.of(where);
    this.path = where.path();
  }

  DocumentNode document() {
    DocumentNode root = parsed();
    problems.throwIfErrors();
    return root;
  }

  DocumentNode valueFromOutside() {
    if (text.isBlank()) {
      return new EmptyNode(fixedPlace.get());
    }
    return document();
  }

  private DocumentNode parsed() {
    TokenStreamFactory factory = format == DocumentFormat.JSON ? Json.FACTORY : Yaml.FACTORY;
    try (JsonParser opened = factory.createParser(ObjectReadContext.empty(), text)) {
      parser = opened;
      if (parser.nextToken() == null) {
        throw refusedHere(
            "an empty file", "a document with keys", "Check that it is the right file.");
      }
      DocumentNode root = value(0);
      if (parser.nextToken() != null) {
        throw refusedHere(
            "more than one document", "one document in a file", "Split it into one file each.");
      }
      return root;
    } catch (JacksonException e) {
      throw syntaxError(e.getLocation());
    } catch (BadInputException e) {
      throw e;
    } catch (RuntimeException e) {
      // Whatever a parser throws over a text, the text is at fault and not the tool.
      throw syntaxError(parser == null ? null : parser.currentTokenLocation());
    }
  }

  /** Made once, and only if a JSON file is read. */
  private static final class Json {
    static final JsonFactory FACTORY = new JsonFactory();
  }

  /** Made once, and only if a YAML file is read. */
  private static final class Yaml {
    static final YAMLFactory FACTORY = new YAMLFactory();
  }

  private DocumentNode value(int depth) {
    refuseReferences();
    if (depth > DocumentReader.DEEPEST) {
      throw refusedHere(
          "nesting of more than " + DocumentReader.DEEPEST + " levels",
          "at most " + DocumentReader.DEEPEST + " levels",
          "Take out the extra brackets or indents.");
    }
    Location where = here();
    JsonToken token = parser.currentToken();
    return switch (token) {
      case START_OBJECT -> object(where, depth);
      case START_ARRAY -> list(where, depth);
      case VALUE_STRING -> text(where);
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new NumberNode(where, parser.getString());
      case VALUE_TRUE -> new FlagNode(where, true);
      case VALUE_FALSE -> new FlagNode(where, false);
      case VALUE_NULL -> new EmptyNode(where);
      default ->
          throw refusedHere(
              "something that is no plain value (" + token + ")",
              "texts, numbers, lists and keys with values",
              "Write the value out.");
    };
  }

  private TextNode text(Location where) {
    String text = parser.getString();
    reportOutOfPlace(where, PlainText.troubleOfLines(text));
    return new TextNode(where, text);
  }

  private void reportOutOfPlace(Location where, Optional<String> trouble) {
    if (trouble.isPresent()) {
      problems.error(
          where,
          trouble.get(),
          "letters, digits and signs that show",
          "Take it out; it may have come along when the text was copied.");
    }
  }

  private ObjectNode object(Location where, int depth) {
    String outer = path;
    List<ObjectNode.Member> members = new ArrayList<>();
    while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
      refuseReferences();
      String key = parser.currentName();
      path = Location.child(outer, key);
      Location keyPlace = here();
      reportOutOfPlace(keyPlace, PlainText.troubleOfLine(key));
      parser.nextToken();
      DocumentNode value = value(depth + 1);
      Optional<ObjectNode.Member> earlier = withKey(members, key);
      if (earlier.isPresent()) {
        reportRepeated(key, keyPlace, earlier.get().keyLocation());
      } else {
        members.add(new ObjectNode.Member(key, keyPlace, value));
      }
    }
    path = outer;
    return new ObjectNode(where, members);
  }

  private ListNode list(Location where, int depth) {
    String outer = path;
    List<DocumentNode> entries = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      path = Location.entry(outer, entries.size());
      entries.add(value(depth + 1));
    }
    path = outer;
    return new ListNode(where, entries);
  }

  private void refuseReferences() {
    if (!(parser instanceof YAMLParser yaml)) {
      return;
    }
    if (yaml.isCurrentAlias() || yaml.getObjectId() != null) {
      throw refusedHere(
          "a YAML anchor or alias", "values written out in full", "Write the value out in full.");
    }
    if (yaml.getTypeId() != null) {
      throw refusedHere("a YAML tag", "values without tags", "Take out the word after the !.");
    }
  }

  private void reportRepeated(String key, Location second, Location first) {
    problems.error(
        second,
        "the key " + key + " a second time",
        "each key once; it stands first in line " + first.line(),
        "Take out one of the two.");
  }

  private static Optional<ObjectNode.Member> withKey(List<ObjectNode.Member> members, String key) {
    for (ObjectNode.Member member : members) {
      if (member.key().equals(key)) {
        return Optional.of(member);
      }
    }
    return Optional.empty();
  }

  private Location here() {
    return place(parser.currentTokenLocation());
  }

  private Location place(TokenStreamLocation at) {
    if (fixedPlace.isPresent()) {
      Location fixed = fixedPlace.get();
      return new Location(fixed.file(), fixed.line(), fixed.column(), path);
    }
    int line = at == null ? 1 : Math.max(1, at.getLineNr());
    int column = at == null ? 1 : Math.max(1, at.getColumnNr());
    return new Location(file, line, column, path);
  }

  private BadInputException refusedHere(String given, String allowed, String remedy) {
    return DocumentReader.refused(here(), given, allowed, remedy);
  }

  /** Shows the line itself: the words of a parser say little to anyone but its authors. */
  private BadInputException syntaxError(TokenStreamLocation at) {
    int line = at == null ? 1 : Math.max(1, at.getLineNr());
    return DocumentReader.refused(
        place(at),
        "text that is not " + format + " at '" + lineOfText(line).strip() + "'",
        "well-formed " + format,
        format == DocumentFormat.YAML
            ? "Check the indent (spaces, no tabs), the space after each colon, and the quotes on this line"
                + " and its neighbours."
            : "Check the commas, quotes and brackets on this line and the one before.");
  }

  private String lineOfText(int line) {
    int start = 0;
    for (int passed = 1; passed < line; passed++) {
      int end = text.indexOf('\n', start);
      if (end < 0) {
        break;
      }
      start = end + 1;
    }
    int end = text.indexOf('\n', start);
    return end < 0 ? text.substring(start) : text.substring(start, end);
  }
}
