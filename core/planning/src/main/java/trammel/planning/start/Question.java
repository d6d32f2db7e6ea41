package trammel.planning.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldKind;
import trammel.reading.fields.FieldReader;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.FlagNode;
import trammel.reading.tree.ListNode;
import trammel.reading.tree.Location;
import trammel.reading.tree.NumberNode;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.TextNode;

/**
 * One thing to measure or to decide for a job.
 *
 * @param path where the answer goes in the job file, such as {@code measured.rails.depth}
 * @param section what it is about, in words
 * @param reason what it is needed for
 * @param field the field with its range, datum and help
 * @param needed false for what may be left out
 */
public record Question(String path, String section, String reason, Field<?> field, boolean needed) {
  /** Between repeats of a measurement. */
  private static final String REPEAT = ";";

  /** Between the three distances of a point. */
  private static final String AXIS = ",";

  private static final List<String> AXES = List.of("forward", "left", "up");

  /** True if it is asked of each thing in the way, once that is begun. */
  public boolean isOfObstacle() {
    return ObstacleQuestions.index(path).isPresent();
  }

  /** What is measured or decided, with the datum. */
  public String what() {
    return field.help() + (field.datum().isPresent() ? ": " + field.datum().get() : "");
  }

  /** How to write the answer, with an example unless any words will do. */
  public String how(UnitSystem units, Optional<String> example) {
    return field.allowed(units)
        + (isPoint() || isSpan() || isNames() ? "; " + withCommas() : "")
        + (takesRepeats() ? "; repeats with semicolons" : "")
        + example.map(one -> ", such as " + one).orElse("");
  }

  private String withCommas() {
    return isPoint()
        ? "three distances with commas"
        : isSpan() ? "both with a comma" : "with commas between them";
  }

  private boolean isPoint() {
    return field.kind() == FieldKind.MEASURED_POINT || field.kind() == FieldKind.POINT;
  }

  private boolean isSpan() {
    return field.kind() == FieldKind.SPAN;
  }

  private boolean isNames() {
    return field.kind() == FieldKind.NAMES;
  }

  /** True for a measurement, which may be taken more than once. */
  public boolean takesRepeats() {
    return switch (field.kind()) {
      case MEASURED_LENGTH, MEASURED_ANGLE, MEASURED_LEVEL_ANGLE, MEASURED_MASS -> true;
      default -> false;
    };
  }

  /** The key under which the answer stands in its group. */
  String key() {
    return path.substring(path.lastIndexOf('.') + 1);
  }

  /**
   * What is wrong with an answer; empty if nothing is.
   *
   * @param units the unit system of bare numbers
   */
  public Optional<String> problem(String answer, UnitSystem units) {
    ObjectNode group = ObjectNode.empty(new Location("answer", 1, 1, "")).with(key(), node(answer));
    try {
      FieldReader.readAll(group, List.of(field), units);
      return Optional.empty();
    } catch (BadInputException refused) {
      return Optional.of(
          "given "
              + refused.problems().get(0).given()
              + "; allowed is "
              + refused.problems().get(0).allowed()
              + ". "
              + refused.problems().get(0).remedy());
    }
  }

  /** The answer as it stands in a document. */
  DocumentNode node(String answer) {
    Location where = new Location("answer", 1, 1, key());
    if (isPoint()) {
      return point(where, answer);
    }
    if (isSpan() || isNames()) {
      return list(where, answer.split(AXIS, -1));
    }
    if (takesRepeats() && answer.contains(REPEAT)) {
      return list(where, answer.split(REPEAT));
    }
    String words = answer.strip();
    boolean flag = words.equals("true") || words.equals("false");
    return flag && field.kind() == FieldKind.FLAG
        ? new FlagNode(where, words.equals("true"))
        : new TextNode(where, words);
  }

  private static ListNode list(Location where, String... parts) {
    List<DocumentNode> entries = new ArrayList<>();
    for (String part : parts) {
      entries.add(new TextNode(where, part.strip()));
    }
    return new ListNode(where, entries);
  }

  private static ObjectNode point(Location where, String answer) {
    String[] parts = answer.split(AXIS, -1);
    ObjectNode point = ObjectNode.empty(where);
    for (int i = 0; i < parts.length; i++) {
      String axis = i < AXES.size() ? AXES.get(i) : "distance " + (i + 1);
      point = point.with(axis, new TextNode(where, parts[i].strip()));
    }
    return point;
  }

  /** The answer that a document holds, written as it would be given; empty if it holds none. */
  Optional<String> answer(ObjectNode root) {
    DocumentNode node = root;
    for (String key : path.split("\\.|(?=\\[)")) {
      Optional<DocumentNode> next = Optional.empty();
      if (node instanceof ListNode list && key.startsWith("[")) {
        int index = Integer.parseInt(key.substring(1, key.length() - 1));
        next = list.entries().stream().skip(index).findFirst();
      } else if (node instanceof ObjectNode object) {
        next = object.find(key);
      }
      if (next.isEmpty()) {
        return Optional.empty();
      }
      node = next.get();
    }
    return text(node);
  }

  /** Words of a document as they would be given in an answer. */
  Optional<String> text(DocumentNode node) {
    if (node instanceof ListNode list && !takesRepeats()) {
      return joined(list.entries(), AXIS + " ");
    }
    return plainText(node);
  }

  private static Optional<String> plainText(DocumentNode node) {
    if (node instanceof TextNode text) {
      return Optional.of(text.text());
    }
    if (node instanceof NumberNode number) {
      return Optional.of(number.text());
    }
    if (node instanceof FlagNode flag) {
      return Optional.of(Boolean.toString(flag.value()));
    }
    if (node instanceof ListNode list) {
      return joined(list.entries(), REPEAT + " ");
    }
    if (node instanceof ObjectNode object) {
      List<DocumentNode> values = new ArrayList<>();
      for (ObjectNode.Member member : object.members()) {
        values.add(member.value());
      }
      return joined(values, AXIS + " ");
    }
    return Optional.empty();
  }

  private static Optional<String> joined(List<DocumentNode> nodes, String between) {
    List<String> texts = new ArrayList<>();
    for (DocumentNode node : nodes) {
      Optional<String> text = plainText(node);
      if (text.isEmpty()) {
        return Optional.empty();
      }
      texts.add(text.get());
    }
    return Optional.of(String.join(between, texts));
  }
}
