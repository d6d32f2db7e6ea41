package trammel.app.motionfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.app.commandline.Suggestion;
import trammel.reading.quantity.DecimalText;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.EmptyNode;
import trammel.reading.tree.ListNode;
import trammel.reading.tree.Location;
import trammel.reading.tree.NumberNode;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.Problems;
import trammel.reading.tree.TextNode;

/**
 * Reads single fields of a group and reports what is wrong with them. What was refused reads as
 * zero, blank or nothing, so nothing may be made of the values before the problems are known.
 */
final class FieldChecks {
  /** Longest number that is still a number and no slip of the hand. */
  private static final int LONGEST_NUMBER = 40;

  private static final int LONGEST_NAME = 60;

  private final Problems problems;

  FieldChecks(Problems problems) {
    this.problems = problems;
  }

  Problems problems() {
    return problems;
  }

  /** The value of a key that must be there. */
  Optional<DocumentNode> required(ObjectNode group, String key, String allowed, String example) {
    Optional<DocumentNode> node = given(group, key);
    if (node.isEmpty()) {
      problems.error(
          placeOf(group, key), "nothing", allowed, "Add " + key + ", such as " + example + ".");
    }
    return node;
  }

  /** The value of a key, unless it is left out or has no value. */
  static Optional<DocumentNode> given(ObjectNode group, String key) {
    Optional<DocumentNode> node = group.find(key);
    return node.isPresent() && node.get() instanceof EmptyNode ? Optional.empty() : node;
  }

  private static Location placeOf(ObjectNode group, String key) {
    Optional<DocumentNode> node = group.find(key);
    return node.isPresent() ? node.get().location() : group.location().inside(key);
  }

  /** A number from {@code least} to {@code greatest}. */
  double number(ObjectNode group, String key, NumberRule rule) {
    Optional<DocumentNode> node = required(group, key, rule.allowed(), rule.example());
    return node.isPresent() ? number(node.get(), rule) : 0;
  }

  double number(DocumentNode node, NumberRule rule) {
    double value = node instanceof NumberNode number ? decimal(number.text()) : Double.NaN;
    if (rule.holds(value)) {
      return value;
    }
    String remedy =
        node instanceof TextNode
            ? "Write the number without quotes and without its unit, such as "
                + rule.example()
                + "."
            : "Check the measurement and its unit; write a number in this range, such as "
                + rule.example()
                + ".";
    problems.error(node.location(), node.given(), rule.allowed(), remedy);
    return 0;
  }

  /** The value of a plain decimal number; not a number for anything else. */
  private static double decimal(String text) {
    for (int i = 0; i < text.length(); i++) {
      if ("0123456789.+-eE".indexOf(text.charAt(i)) < 0) {
        return Double.NaN;
      }
    }
    if (text.isEmpty() || text.length() > LONGEST_NUMBER) {
      return Double.NaN;
    }
    try {
      return Double.parseDouble(text);
    } catch (NumberFormatException notANumber) {
      return Double.NaN;
    }
  }

  /** A name that says something. */
  String name(ObjectNode group) {
    String allowed = "a name of its own, in quotes, at most " + LONGEST_NAME + " letters long";
    Optional<DocumentNode> node = required(group, "name", allowed, "\"lower_left\"");
    if (node.isEmpty()) {
      return "";
    }
    if (node.get() instanceof TextNode text
        && !text.text().isBlank()
        && text.isOneLine()
        && text.text().length() <= LONGEST_NAME) {
      return text.text();
    }
    problems.error(
        node.get().location(), node.get().given(), allowed, "Name it, such as \"lower_left\".");
    return "";
  }

  /** One of some words. */
  String word(ObjectNode group, String key, List<String> words) {
    String allowed = String.join(" or ", words);
    Optional<DocumentNode> node = required(group, key, allowed, "\"" + words.get(0) + "\"");
    if (node.isEmpty()) {
      return "";
    }
    if (node.get() instanceof TextNode text && words.contains(text.text())) {
      return text.text();
    }
    problems.error(
        node.get().location(), node.get().given(), allowed, "Write one of these words in quotes.");
    return "";
  }

  /** The x, y and z of a point or direction. */
  double[] triple(ObjectNode group, String key, NumberRule rule, String example) {
    String allowed = "three numbers [forward, left, up] in one list, each " + rule.allowed();
    Optional<DocumentNode> node = required(group, key, allowed, example);
    double[] values = new double[3];
    if (node.isEmpty()) {
      return values;
    }
    if (node.get() instanceof ListNode list && list.entries().size() == 3) {
      for (int i = 0; i < 3; i++) {
        values[i] = number(list.entries().get(i), rule);
      }
      return values;
    }
    problems.error(
        node.get().location(), node.get().given(), allowed, "Write it as " + example + ".");
    return values;
  }

  /** A group of keys that must be there. */
  Optional<ObjectNode> group(ObjectNode outer, String key, String allowed) {
    Optional<DocumentNode> node = given(outer, key);
    if (node.isPresent() && node.get() instanceof ObjectNode group) {
      return Optional.of(group);
    }
    problems.error(
        placeOf(outer, key),
        node.isPresent() ? node.get().given() : "nothing",
        allowed,
        "Write it as \"" + key + "\": { ... } with these keys.");
    return Optional.empty();
  }

  /** The groups of a list; none if the list is left out. */
  List<ObjectNode> groups(ObjectNode outer, String key, String allowed) {
    Optional<DocumentNode> node = given(outer, key);
    if (node.isEmpty()) {
      return List.of();
    }
    List<ObjectNode> groups = new ArrayList<>();
    if (!(node.get() instanceof ListNode list)) {
      problems.error(
          node.get().location(),
          node.get().given(),
          allowed,
          "Write it as \"" + key + "\": [ {...}, {...} ].");
      return groups;
    }
    for (DocumentNode entry : list.entries()) {
      if (entry instanceof ObjectNode group) {
        groups.add(group);
      } else {
        problems.error(
            entry.location(), entry.given(), allowed, "Write the entry as { ... } with its keys.");
      }
    }
    return groups;
  }

  /** Refuses keys that the group does not know. */
  void onlyKeys(ObjectNode group, List<String> known) {
    for (ObjectNode.Member member : group.members()) {
      if (!known.contains(member.key())) {
        problems.error(
            member.keyLocation(),
            "the unknown key '" + member.key() + "'",
            String.join(", ", known),
            remedy(member.key(), known));
      }
    }
  }

  /** Remarks on keys that the group does not know; they are kept as they are. */
  void remarkOnOtherKeys(ObjectNode group, List<String> known) {
    for (ObjectNode.Member member : group.members()) {
      if (!known.contains(member.key())) {
        problems.warning(
            member.keyLocation(),
            "the unknown key '" + member.key() + "', which is passed on and not used",
            String.join(", ", known),
            remedy(member.key(), known));
      }
    }
  }

  private static String remedy(String key, List<String> known) {
    Optional<String> meant = Suggestion.closest(key, known);
    return meant.isPresent() ? "Did you mean " + meant.get() + "?" : "Take it out.";
  }

  /**
   * What a number may be.
   *
   * @param least least value
   * @param greatest greatest value
   * @param unit its unit; blank if it has none
   */
  record NumberRule(double least, double greatest, String unit) {
    boolean holds(double value) {
      return value >= least && value <= greatest;
    }

    String allowed() {
      return "a number"
          + (unit.isEmpty() ? "" : " of " + unit)
          + " from "
          + DecimalText.trimmed(least, 3)
          + " to "
          + DecimalText.trimmed(greatest, 3);
    }

    String example() {
      double middle = least <= 0 && greatest >= 1 ? 0.5 : Math.min(greatest, Math.max(least, 500));
      return DecimalText.trimmed(middle, 3);
    }
  }
}
