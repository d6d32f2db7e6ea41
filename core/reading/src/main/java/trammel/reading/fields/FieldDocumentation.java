package trammel.reading.fields;

import java.util.List;
import java.util.Optional;
import trammel.reading.quantity.UnitSystem;

/** The reference of a group of fields in Markdown: one table for every group. */
public final class FieldDocumentation {
  private final StringBuilder page = new StringBuilder();

  private FieldDocumentation() {}

  /** Tables for these fields and all groups below them, ranges in US shop units and metric. */
  public static String of(List<Field<?>> fields) {
    FieldDocumentation documentation = new FieldDocumentation();
    documentation.table(fields);
    documentation.groupsBelow("", fields);
    return documentation.page.toString();
  }

  private void groupsBelow(String path, List<Field<?>> fields) {
    for (Field<?> field : fields) {
      if (isGroup(field)) {
        String here = path.isEmpty() ? field.key() : path + "." + field.key();
        page.append("## `").append(here).append("`\n\n");
        page.append(sentence(field)).append("\n\n");
        table(field.children());
        groupsBelow(here + suffix(field.kind()), field.children());
      }
    }
  }

  private void table(List<Field<?>> fields) {
    page.append("| key | what | allowed | default |\n|---|---|---|---|\n");
    for (Field<?> field : fields) {
      page.append("| `").append(field.key()).append("` | ").append(cell(what(field)));
      page.append(" | ").append(cell(allowed(field)));
      page.append(" | ").append(cell(need(field))).append(" |\n");
    }
    page.append('\n');
  }

  private static boolean isGroup(Field<?> field) {
    return switch (field.kind()) {
      case SECTION, SECTION_LIST, SECTION_MAP -> true;
      default -> false;
    };
  }

  private static String suffix(FieldKind kind) {
    return switch (kind) {
      case SECTION_LIST -> "[]";
      case SECTION_MAP -> ".NAME";
      default -> "";
    };
  }

  private static String what(Field<?> field) {
    return field.datum().isPresent()
        ? field.help() + " (" + field.datum().get() + ")"
        : field.help();
  }

  private static String sentence(Field<?> field) {
    String what = what(field);
    String how =
        switch (field.kind()) {
          case SECTION_LIST -> " A list; each entry has these keys:";
          case SECTION_MAP -> " Names of your own; each has these keys:";
          default -> "";
        };
    return Character.toUpperCase(what.charAt(0)) + what.substring(1) + "." + how;
  }

  private static String allowed(Field<?> field) {
    if (isGroup(field)) {
      return "see below";
    }
    String us = field.allowed(UnitSystem.US);
    String metric = field.allowed(UnitSystem.METRIC);
    return us.equals(metric) ? us : us + " (metric: " + metric + ")";
  }

  private static String need(Field<?> field) {
    Optional<String> standard = field.defaultText(UnitSystem.US);
    if (standard.isPresent()) {
      return standard.get();
    }
    return field.isRequired() ? "required" : "may be left out";
  }

  private static String cell(String text) {
    return text.replace("|", "\\|").replace("\n", " ");
  }
}
