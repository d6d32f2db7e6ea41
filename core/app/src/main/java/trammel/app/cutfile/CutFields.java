package trammel.app.cutfile;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import trammel.app.commandline.Suggestion;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.EmptyNode;
import trammel.reading.tree.FlagNode;
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
final class CutFields {
  /** Longest number that is still a number and no slip of the hand. */
  private static final int LONGEST_NUMBER = 40;

  private static final int LONGEST_NAME = 120;

  private final Problems problems;

  CutFields(Problems problems) {
    this.problems = problems;
  }

  /** Where the value of a key stands, or would stand. */
  static Location place(ObjectNode group, String key) {
    Optional<DocumentNode> node = group.find(key);
    return node.isPresent() ? node.get().location() : group.location().inside(key);
  }

  /** The value of a key, unless it is left out or has no value. */
  static Optional<DocumentNode> given(ObjectNode group, String key) {
    Optional<DocumentNode> node = group.find(key);
    return node.isPresent() && node.get() instanceof EmptyNode ? Optional.empty() : node;
  }

  /** The value of a key that must be there. */
  private Optional<DocumentNode> required(
      ObjectNode group, String key, String allowed, String example) {
    Optional<DocumentNode> node = given(group, key);
    if (node.isEmpty()) {
      problems.error(
          place(group, key), "nothing", allowed, "Add " + key + ", such as " + example + ".");
    }
    return node;
  }

  /** A number in a range, digit by digit as written. */
  BigDecimal number(ObjectNode group, String key, Rule rule) {
    Optional<DocumentNode> node = required(group, key, rule.allowed(), rule.example());
    return node.isPresent() ? number(node.get(), rule) : BigDecimal.ZERO;
  }

  BigDecimal number(DocumentNode node, Rule rule) {
    Optional<BigDecimal> value =
        node instanceof NumberNode number ? decimal(number.text()) : Optional.empty();
    if (value.isPresent() && rule.holds(value.get())) {
      return value.get();
    }
    String remedy =
        node instanceof TextNode
            ? "Write the number without quotes and without its unit, such as "
                + rule.example()
                + "."
            : "Check the number and the unit of the file; write one such as "
                + rule.example()
                + ".";
    problems.error(node.location(), node.given(), rule.allowed(), remedy);
    return BigDecimal.ZERO;
  }

  private static Optional<BigDecimal> decimal(String text) {
    if (text.length() > LONGEST_NUMBER) {
      return Optional.empty();
    }
    try {
      return Optional.of(new BigDecimal(text));
    } catch (NumberFormatException notDecimal) {
      return Optional.empty();
    }
  }

  /** A whole number in a range. */
  int count(ObjectNode group, String key, Rule rule) {
    return number(group, key, rule).intValue();
  }

  /** A whole number in a range, or null for any number. */
  OptionalInt available(ObjectNode group, Rule rule) {
    Optional<DocumentNode> node = group.find("available");
    if (node.isEmpty()) {
      problems.error(
          place(group, "available"),
          "nothing",
          rule.allowed() + ", or null for any number",
          "Add available, such as null.");
      return OptionalInt.empty();
    }
    return node.get() instanceof EmptyNode
        ? OptionalInt.empty()
        : OptionalInt.of(number(node.get(), rule).intValue());
  }

  /** True or false. */
  boolean flag(ObjectNode group, String key) {
    Optional<DocumentNode> node = required(group, key, "true or false", "false");
    return node.isPresent() && flag(node.get());
  }

  boolean flag(DocumentNode node) {
    if (node instanceof FlagNode flag) {
      return flag.value();
    }
    problems.error(
        node.location(), node.given(), "true or false", "Write true or false, without quotes.");
    return false;
  }

  /** A text that says something. */
  String text(ObjectNode group, String key, String example) {
    String allowed = "a text in quotes, at most " + LONGEST_NAME + " letters long";
    Optional<DocumentNode> node = required(group, key, allowed, example);
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
        node.get().location(), node.get().given(), allowed, "Write one such as " + example + ".");
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

  /** A group of keys that must be there. */
  Optional<ObjectNode> group(ObjectNode outer, String key, String example) {
    String allowed = "a group of keys, such as " + example;
    Optional<DocumentNode> node = required(outer, key, allowed, example);
    if (node.isEmpty()) {
      return Optional.empty();
    }
    if (node.get() instanceof ObjectNode group) {
      return Optional.of(group);
    }
    problems.error(
        node.get().location(), node.get().given(), allowed, "Write it as " + example + ".");
    return Optional.empty();
  }

  /** The entries of a list that must be there and must not be empty. */
  List<DocumentNode> list(ObjectNode outer, String key, int most, String example) {
    String allowed = "a list of 1 to " + most + " entries such as " + example;
    Optional<DocumentNode> node = required(outer, key, allowed, "[" + example + "]");
    if (node.isEmpty()) {
      return List.of();
    }
    if (node.get() instanceof ListNode list
        && !list.entries().isEmpty()
        && list.entries().size() <= most) {
      return list.entries();
    }
    problems.error(
        node.get().location(),
        node.get().given(),
        allowed,
        "Write it as \"" + key + "\": [" + example + ", ...].");
    return List.of();
  }

  /** The groups of a list that must be there and must not be empty. */
  List<ObjectNode> groups(ObjectNode outer, String key, int most, String example) {
    List<ObjectNode> groups = new ArrayList<>();
    for (DocumentNode entry : list(outer, key, most, example)) {
      if (entry instanceof ObjectNode group) {
        groups.add(group);
      } else {
        problems.error(
            entry.location(),
            entry.given(),
            "a group such as " + example,
            "Write the entry as { ... } with its keys.");
      }
    }
    return groups;
  }

  /** Remarks on keys that the group does not know; they are not used. */
  void remarkOnOtherKeys(ObjectNode group, List<String> known) {
    for (ObjectNode.Member member : group.members()) {
      if (!known.contains(member.key())) {
        Optional<String> meant = Suggestion.closest(member.key(), known);
        problems.warning(
            member.keyLocation(),
            "the unknown key '" + member.key() + "', which is not used",
            String.join(", ", known),
            meant.isPresent() ? "Did you mean " + meant.get() + "?" : "Take it out.");
      }
    }
  }

  /**
   * What a number may be.
   *
   * @param least least value
   * @param greatest greatest value
   * @param decimals how many decimals it may have
   * @param example one that is good
   */
  record Rule(BigDecimal least, BigDecimal greatest, int decimals, String example) {
    Rule(String least, String greatest, int decimals, String example) {
      this(new BigDecimal(least), new BigDecimal(greatest), decimals, example);
    }

    boolean holds(BigDecimal value) {
      // A number such as 1e99999 is put aside before its digits are written out.
      return value.precision() - (long) value.scale() < LONGEST_NUMBER
          && value.scale() < 4 * LONGEST_NUMBER
          && value.compareTo(least) >= 0
          && value.compareTo(greatest) <= 0
          && value.stripTrailingZeros().scale() <= decimals;
    }

    String allowed() {
      String range = " from " + least.toPlainString() + " to " + greatest.toPlainString();
      if (decimals == 0) {
        return "a whole number" + range;
      }
      return "a number" + range + " with at most " + decimals + " decimals";
    }
  }
}
