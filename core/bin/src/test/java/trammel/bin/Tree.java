package trammel.bin;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.TokenStreamFactory;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.dataformat.yaml.YAMLFactory;

/** A JSON or YAML document as the outside sees it: maps, lists, texts, numbers and flags. */
record Tree(Object value) {

  static Tree ofJson(String text) {
    return parsed(new JsonFactory(), text);
  }

  static Tree ofYaml(String text) {
    return parsed(new YAMLFactory(), text);
  }

  private static Tree parsed(TokenStreamFactory format, String text) {
    try (JsonParser parser = format.createParser(ObjectReadContext.empty(), text)) {
      parser.nextToken();
      Object value = read(parser);
      if (parser.nextToken() != null) {
        throw new AssertionError("more than one value in: " + text);
      }
      return new Tree(value);
    }
  }

  private static Object read(JsonParser parser) {
    if (parser.currentToken() == JsonToken.START_OBJECT) {
      Map<String, Object> map = new LinkedHashMap<>();
      while (parser.nextToken() != JsonToken.END_OBJECT) {
        String key = parser.currentName();
        parser.nextToken();
        map.put(key, read(parser));
      }
      return map;
    }
    if (parser.currentToken() == JsonToken.START_ARRAY) {
      List<Object> list = new ArrayList<>();
      while (parser.nextToken() != JsonToken.END_ARRAY) {
        list.add(read(parser));
      }
      return list;
    }
    return switch (parser.currentToken()) {
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new BigDecimal(parser.getString());
      case VALUE_TRUE -> true;
      case VALUE_FALSE -> false;
      case VALUE_STRING -> parser.getString();
      default -> throw new AssertionError("not a value: " + parser.currentToken());
    };
  }

  /** The value at keys joined by dots. */
  Tree at(String path) {
    Object found = value;
    for (String key : path.split("\\.")) {
      if (!(found instanceof Map<?, ?> map) || !map.containsKey(key)) {
        throw new AssertionError("there is no " + key + " of " + path + " in " + found);
      }
      found = map.get(key);
    }
    return new Tree(found);
  }

  boolean has(String key) {
    return value instanceof Map<?, ?> map && map.containsKey(key);
  }

  double number() {
    return amount().doubleValue();
  }

  double number(String path) {
    return at(path).number();
  }

  BigDecimal amount() {
    return (BigDecimal) value;
  }

  BigDecimal amount(String path) {
    return at(path).amount();
  }

  String text(String path) {
    return (String) at(path).value;
  }

  List<Tree> list() {
    List<Tree> entries = new ArrayList<>();
    for (Object entry : (List<?>) value) {
      entries.add(new Tree(entry));
    }
    return entries;
  }

  List<Tree> list(String path) {
    return at(path).list();
  }

  /** The one entry of the list at a path whose key holds the text. */
  Tree entry(String path, String key, String text) {
    List<Tree> found = list(path).stream().filter(entry -> text.equals(entry.text(key))).toList();
    if (found.size() != 1) {
      throw new AssertionError(found.size() + " entries of " + path + " have " + key + " " + text);
    }
    return found.get(0);
  }

  /** A copy with another value at keys joined by dots; groups on the way are made. */
  Tree with(String path, Object replacement) {
    return new Tree(with(value, List.of(path.split("\\.")), replacement));
  }

  private static Object with(Object node, List<String> keys, Object replacement) {
    if (keys.isEmpty()) {
      return replacement;
    }
    Map<String, Object> copy = new LinkedHashMap<>();
    if (node instanceof Map<?, ?> map) {
      map.forEach((key, inner) -> copy.put((String) key, inner));
    }
    String key = keys.get(0);
    copy.put(key, with(copy.get(key), keys.subList(1, keys.size()), replacement));
    return copy;
  }
}
