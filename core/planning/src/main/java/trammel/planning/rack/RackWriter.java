package trammel.planning.rack;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.planning.quantity.UnitSystem;

/**
 * Writes a rack as it is read. Lengths are cut down, never up, to a thousandth of an inch or a
 * hundredth of a millimetre, so that no piece is longer on paper than on the rack.
 */
public final class RackWriter {
  private static final double INCH_MM = 25.4;

  /** What a length that was read from a rounded decimal may lose in the conversion. */
  private static final double NOISE = 1e-6;

  private static final String HEAD =
      "# Stock on hand. order --rack rewrites this file: comments are lost, the note is kept.\n";

  private RackWriter() {}

  /** The rack as maps, lists, texts and numbers, for a JSON file. */
  public static Map<String, Object> tree(Rack rack) {
    Map<String, Object> tree = new LinkedHashMap<>();
    tree.put(RackReader.FORMAT_FIELD.key(), RackReader.FORMAT);
    tree.put(RackReader.UNITS.key(), rack.units().word());
    rack.note().ifPresent(note -> tree.put(RackReader.NOTE.key(), note));
    tree.put(RackReader.NEXT.key(), rack.next());
    put(tree, RackReader.STICKS.key(), sticks(rack));
    put(tree, RackReader.SHEETS.key(), sheets(rack));
    put(tree, RackReader.ITEMS.key(), items(rack));
    List<Object> bolts = bolts(rack);
    if (!bolts.isEmpty()) {
      tree.put(RackReader.BOLTS.key(), bolts);
    }
    return tree;
  }

  private static void put(Map<String, Object> tree, String key, Map<String, Object> entries) {
    if (!entries.isEmpty()) {
      tree.put(key, entries);
    }
  }

  private static Map<String, Object> sticks(Rack rack) {
    Map<String, Object> sticks = new LinkedHashMap<>();
    for (Map.Entry<String, Rack.Stick> entry : rack.sticks().entrySet()) {
      Map<String, Object> stick = new LinkedHashMap<>();
      stick.put("bar", entry.getValue().barKey());
      stick.put("length", length(entry.getValue().lengthMm(), rack.units()));
      stick.put("count", entry.getValue().count());
      sticks.put(entry.getKey(), stick);
    }
    return sticks;
  }

  private static Map<String, Object> sheets(Rack rack) {
    Map<String, Object> sheets = new LinkedHashMap<>();
    for (Map.Entry<String, Rack.Sheet> entry : rack.sheets().entrySet()) {
      Map<String, Object> sheet = new LinkedHashMap<>();
      sheet.put("plate", entry.getValue().plateKey());
      sheet.put("width", length(entry.getValue().widthMm(), rack.units()));
      sheet.put("length", length(entry.getValue().lengthMm(), rack.units()));
      sheet.put("count", entry.getValue().count());
      sheets.put(entry.getKey(), sheet);
    }
    return sheets;
  }

  private static Map<String, Object> items(Rack rack) {
    Map<String, Object> items = new LinkedHashMap<>();
    for (Map.Entry<String, BigDecimal> entry : rack.items().entrySet()) {
      items.put(entry.getKey(), Map.of("quantity", plain(entry.getValue())));
    }
    return items;
  }

  private static List<Object> bolts(Rack rack) {
    List<Object> bolts = new ArrayList<>();
    for (Rack.Bolts some : rack.bolts()) {
      Map<String, Object> entry = new LinkedHashMap<>();
      entry.put("bolt", some.boltKey());
      entry.put("length", length(some.lengthMm(), rack.units()));
      entry.put("count", some.count());
      bolts.add(entry);
    }
    return bolts;
  }

  /** The rack as YAML. */
  public static String yaml(Rack rack) {
    StringBuilder text = new StringBuilder(HEAD);
    for (Map.Entry<String, Object> entry : tree(rack).entrySet()) {
      text.append(entry.getKey()).append(':');
      if (entry.getValue() instanceof Map<?, ?> named) {
        text.append('\n');
        for (Map.Entry<?, ?> one : named.entrySet()) {
          text.append("  ").append(quoted((String) one.getKey())).append(": ");
          text.append(flow((Map<?, ?>) one.getValue())).append('\n');
        }
      } else if (entry.getValue() instanceof List<?> list) {
        text.append('\n');
        for (Object one : list) {
          text.append("  - ").append(flow((Map<?, ?>) one)).append('\n');
        }
      } else {
        text.append(' ').append(scalar(entry.getValue())).append('\n');
      }
    }
    return text.toString();
  }

  private static String flow(Map<?, ?> map) {
    StringBuilder text = new StringBuilder("{");
    for (Map.Entry<?, ?> entry : map.entrySet()) {
      text.append(text.length() == 1 ? "" : ", ");
      text.append(entry.getKey()).append(": ").append(scalar(entry.getValue()));
    }
    return text.append('}').toString();
  }

  private static String scalar(Object value) {
    return value instanceof String word ? quoted(word) : value.toString();
  }

  /** A text in double quotes with the escapes of YAML 1.2, section 5.7. */
  private static String quoted(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '"' -> quoted.append("\\\"");
        case '\\' -> quoted.append("\\\\");
        case '\n' -> quoted.append("\\n");
        case '\r' -> quoted.append("\\r");
        case '\t' -> quoted.append("\\t");
        default -> quoted.append(c);
      }
    }
    return quoted.append('"').toString();
  }

  private static BigDecimal plain(BigDecimal value) {
    BigDecimal stripped = value.stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }

  private static String length(double lengthMm, UnitSystem units) {
    boolean us = units == UnitSystem.US;
    BigDecimal shown =
        BigDecimal.valueOf((us ? lengthMm / INCH_MM : lengthMm) + NOISE)
            .setScale(us ? 3 : 2, RoundingMode.FLOOR);
    return plain(shown).toPlainString() + (us ? " in" : " mm");
  }
}
