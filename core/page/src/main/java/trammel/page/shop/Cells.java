package trammel.page.shop;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import trammel.page.folder.Refused;
import trammel.planning.catalog.CatalogFields;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldKind;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.EmptyNode;
import trammel.reading.tree.FlagNode;
import trammel.reading.tree.ListNode;
import trammel.reading.tree.Location;
import trammel.reading.tree.NumberNode;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.TextNode;
import trammel.reading.tree.TreeEdit;

/**
 * Turns what stands in a catalog file into the text of a cell and back, by the kind of its field: a
 * number becomes a number again, words parted by semicolons a list.
 */
final class Cells {
  private static final Location NOWHERE = new Location("change", 0, 0, "");

  private Cells() {}

  /** A section of a catalog file. */
  static Optional<Field<?>> section(String key) {
    return named(CatalogFields.all(), key)
        .filter(
            field -> field.kind() == FieldKind.SECTION || field.kind() == FieldKind.SECTION_MAP);
  }

  private static Optional<Field<?>> named(List<Field<?>> fields, String key) {
    for (Field<?> field : fields) {
      if (field.key().equals(key)) {
        return Optional.of(field);
      }
    }
    return Optional.empty();
  }

  /**
   * The field at a path of a catalog file.
   *
   * @throws Refused if there is none
   */
  static Field<?> field(String path) {
    List<String> steps = TreeEdit.steps(new Location("change", 0, 0, path));
    Optional<Field<?>> at = section(steps.get(0));
    boolean name = at.isPresent() && at.get().kind() == FieldKind.SECTION_MAP;
    for (String step : steps.subList(1, steps.size())) {
      if (at.isPresent() && !name && !step.startsWith("[")) {
        at = named(at.get().children(), step);
      }
      name = false;
    }
    return at.orElseThrow(() -> new Refused(422, "There is no cell '" + path + "'."));
  }

  /** The text of a cell; empty for what is not written. */
  static String text(Optional<DocumentNode> node) {
    return node.map(Cells::text).orElse("");
  }

  private static String text(DocumentNode node) {
    if (node instanceof TextNode text) {
      return text.text();
    }
    if (node instanceof NumberNode number) {
      return number.text();
    }
    if (node instanceof FlagNode flag) {
      return flag.value() ? "yes" : "no";
    }
    return node instanceof ListNode list
        ? String.join("; ", list.entries().stream().map(Cells::text).toList())
        : "";
  }

  /**
   * Lines of cells; none where nothing is given.
   *
   * @throws Refused if it is no list of lists
   */
  static List<List<String>> lines(Optional<DocumentNode> given) {
    List<List<String>> lines = new ArrayList<>();
    for (DocumentNode line : entries(given)) {
      lines.add(entries(Optional.of(line)).stream().map(Cells::text).toList());
    }
    return lines;
  }

  private static List<DocumentNode> entries(Optional<DocumentNode> given) {
    if (given.isEmpty()) {
      return List.of();
    }
    if (given.get() instanceof ListNode list) {
      return list.entries();
    }
    throw new Refused(400, "A table is a list of lines, and a line a list of cells.");
  }

  /**
   * What a cell, or the cells of a new line, are to be written as.
   *
   * @param field the field, or the group of fields of a line
   */
  static Optional<DocumentNode> written(Field<?> field, Optional<DocumentNode> given) {
    if (given.isEmpty() || given.get() instanceof EmptyNode) {
      return Optional.empty();
    }
    DocumentNode node = given.get();
    if (node instanceof ObjectNode group) {
      return Optional.of(group(field, group));
    }
    if (node instanceof ListNode list && !field.children().isEmpty()) {
      List<DocumentNode> lines = new ArrayList<>();
      list.entries().forEach(entry -> written(field, Optional.of(entry)).ifPresent(lines::add));
      return Optional.of(new ListNode(NOWHERE, lines));
    }
    if (!(node instanceof TextNode text)) {
      return given;
    }
    String typed = text.text().strip();
    return typed.isEmpty() ? Optional.empty() : Optional.of(scalar(field.kind(), typed));
  }

  private static DocumentNode group(Field<?> field, ObjectNode group) {
    ObjectNode written = ObjectNode.empty(NOWHERE);
    for (ObjectNode.Member member : group.members()) {
      Optional<Field<?>> inner = named(field.children(), member.key());
      Optional<DocumentNode> value =
          inner.isPresent()
              ? written(inner.get(), Optional.of(member.value()))
              : Optional.of(member.value());
      if (value.isPresent()) {
        written = written.with(member.key(), value.get());
      }
    }
    return written;
  }

  private static DocumentNode scalar(FieldKind kind, String typed) {
    return switch (kind) {
      case MONEY -> number(withoutSigns(typed));
      case NUMBER, COUNT -> number(typed);
      case FLAG -> flag(typed);
      case CHOICES, NAMES ->
          new ListNode(
              NOWHERE,
              Arrays.stream(typed.split("[;,]"))
                  .map(String::strip)
                  .filter(word -> !word.isEmpty())
                  .<DocumentNode>map(word -> new TextNode(NOWHERE, word))
                  .toList());
      default -> new TextNode(NOWHERE, typed);
    };
  }

  /** A spreadsheet shows amounts with a sign of currency and parted thousands. */
  private static String withoutSigns(String typed) {
    String plain = typed.startsWith("$") ? typed.substring(1).strip() : typed;
    return plain.matches("\\d{1,3}(,\\d{3})+(\\.\\d+)?") ? plain.replace(",", "") : plain;
  }

  private static DocumentNode number(String typed) {
    return typed.matches("-?(0|[1-9]\\d*)(\\.\\d+)?")
        ? new NumberNode(NOWHERE, typed)
        : new TextNode(NOWHERE, typed);
  }

  private static DocumentNode flag(String typed) {
    return switch (typed.toLowerCase(Locale.ROOT)) {
      case "yes", "true" -> new FlagNode(NOWHERE, true);
      case "no", "false" -> new FlagNode(NOWHERE, false);
      default -> new TextNode(NOWHERE, typed);
    };
  }
}
