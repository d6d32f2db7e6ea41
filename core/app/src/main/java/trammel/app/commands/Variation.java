package trammel.app.commands;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.app.commandline.CommandFailure;
import trammel.planning.catalog.Catalog;
import trammel.planning.draft.Extensions;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.SpringMount;
import trammel.planning.job.Chosen;
import trammel.planning.job.JobDocument;
import trammel.reading.fields.Field;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.TextNode;

/**
 * A job file with some of its fields changed.
 *
 * @param label the changed fields with their values
 * @param document the file as it reads then
 */
record Variation(String label, JobDocument document) {
  static final String EXAMPLE = "chosen.linkage_options.mounting=inboard,outboard";
  private static final String MOUNTING = "mounting";
  private static final int MOST = 64;

  /**
   * Every combination of the fields and values that the user gave.
   *
   * @param given each a field and its values, such as {@code chosen.ride.bump=3 in,4 in}
   * @throws CommandFailure if one is not of that form, or if they make too many
   */
  static List<Variation> of(JobDocument document, List<String> given) {
    List<Variation> variations = List.of(new Variation("", document));
    for (String field : given) {
      int equals = field.indexOf('=');
      if (equals <= 0 || equals == field.length() - 1) {
        throw CommandFailure.badInput(
            "--vary was given '"
                + field
                + "'; it takes a field and its values, such as "
                + EXAMPLE
                + ".");
      }
      variations =
          each(variations, field.substring(0, equals), values(field.substring(equals + 1)));
    }
    return variations;
  }

  /**
   * What is worth comparing when nothing was given: every installed spring, and every mounting that
   * the linkage has, the job's own first.
   */
  static List<Variation> usual(
      JobDocument document, Chosen chosen, Extensions extensions, Catalog catalog) {
    List<Variation> variations = new ArrayList<>();
    variations.add(new Variation(label("spring", chosen.spring(), ""), document));
    for (SpringMount spring : extensions.springs()) {
      if (!spring.id().equals(chosen.spring())) {
        // Options of one spring mean nothing to another.
        JobDocument other =
            document
                .withValue("chosen.spring", spring.id())
                .withValue("chosen.spring_options", "{}");
        variations.add(new Variation(label("spring", spring.id(), ""), other));
      }
    }
    List<String> mountings = mountings(chosen, extensions, catalog);
    return mountings.isEmpty()
        ? variations
        : each(variations, "chosen.linkage_options." + MOUNTING, mountings);
  }

  private static List<String> mountings(Chosen chosen, Extensions extensions, Catalog catalog) {
    for (AxleLinkage linkage : extensions.linkages()) {
      if (linkage.id().equals(chosen.linkage())) {
        for (Field<?> option : linkage.options(catalog)) {
          if (option.key().equals(MOUNTING)) {
            return ownFirst(chosen, option);
          }
        }
      }
    }
    return List.of();
  }

  private static List<String> ownFirst(Chosen chosen, Field<?> option) {
    List<String> words = new ArrayList<>(option.choices());
    Optional<DocumentNode> written = chosen.linkageOptions().find(MOUNTING);
    if (written.isPresent() && written.get() instanceof TextNode own && words.remove(own.text())) {
      words.add(0, own.text());
    }
    return words;
  }

  private static List<Variation> each(List<Variation> before, String path, List<String> values) {
    String name = path.substring(path.lastIndexOf('.') + 1);
    if (before.size() * values.size() > MOST) {
      throw CommandFailure.badInput(
          "--vary asks for "
              + before.size() * values.size()
              + " variants; at most "
              + MOST
              + " can be compared at once. Vary fewer fields.");
    }
    List<Variation> after = new ArrayList<>();
    for (Variation one : before) {
      for (String value : values) {
        after.add(
            new Variation(label(name, value, one.label()), one.document().withValue(path, value)));
      }
    }
    return after;
  }

  private static String label(String name, String value, String before) {
    return (before.isEmpty() ? "" : before + ", ") + name + " " + value;
  }

  /** The values between commas; a comma within brackets or quotes belongs to its value. */
  private static List<String> values(String text) {
    List<String> values = new ArrayList<>();
    int depth = 0;
    boolean quoted = false;
    int from = 0;
    for (int i = 0; i <= text.length(); i++) {
      char c = i == text.length() ? ',' : text.charAt(i);
      boolean opens = c == '[' || c == '{';
      boolean closes = c == ']' || c == '}';
      depth += !quoted && opens ? 1 : !quoted && closes ? -1 : 0;
      quoted = c == '\'' ? !quoted : quoted;
      if (i == text.length() || c == ',' && depth == 0 && !quoted) {
        values.add(text.substring(from, i).strip());
        from = i + 1;
      }
    }
    return values;
  }
}
