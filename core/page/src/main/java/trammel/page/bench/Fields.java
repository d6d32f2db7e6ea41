package trammel.page.bench;

import java.util.List;
import java.util.Optional;
import trammel.page.folder.Edit;
import trammel.page.folder.Refused;
import trammel.planning.catalog.Catalog;
import trammel.planning.draft.Extensions;
import trammel.planning.job.JobFields;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldReader;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.Location;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.Problem;
import trammel.reading.tree.TextNode;
import trammel.reading.tree.TreeEdit;

/**
 * The fields that a job can hold, those of its plugins among them: a change that no field can hold
 * is refused before anything is written.
 */
public final class Fields {
  private final Extensions extensions;
  private final Catalog catalog;

  /**
   * @param extensions what is installed
   * @param catalog gives the keys that options may choose from
   */
  public Fields(Extensions extensions, Catalog catalog) {
    this.extensions = extensions;
    this.catalog = catalog;
  }

  /**
   * Refuses a change that the field cannot hold by itself. What it says together with others is
   * told by the problems of the job.
   *
   * @throws BadInputException if the value is none for the field
   * @throws Refused if there is no such field
   */
  public void check(ObjectNode root, Edit edit) {
    Field<?> field =
        find(root, edit.path())
            .orElseThrow(() -> new Refused(422, "There is no field '" + edit.path() + "'."));
    if (edit.to().isEmpty()) {
      return;
    }
    Location where = new Location("change", 0, 0, parent(edit.path()));
    ObjectNode alone = ObjectNode.empty(where).with(field.key(), edit.to().get());
    FieldReader.readAll(alone, List.of(field), units(root));
  }

  /** The unit system of bare numbers in a job that need not be finished. */
  public static UnitSystem units(ObjectNode root) {
    Optional<DocumentNode> word = new TreeEdit(new Location("job", 0, 0, "job.units")).find(root);
    return word.isPresent() && word.get() instanceof TextNode text && text.text().equals("metric")
        ? UnitSystem.METRIC
        : UnitSystem.US;
  }

  private static String parent(String path) {
    int dot = path.lastIndexOf('.');
    return dot < 0 ? "" : path.substring(0, dot);
  }

  /** The field at a path; empty if there is none. */
  Optional<Field<?>> find(ObjectNode root, String path) {
    List<Field<?>> fields = JobFields.all();
    List<String> steps = TreeEdit.steps(new Location("change", 0, 0, path));
    Optional<Field<?>> found = Optional.empty();
    int at = 0;
    while (at < steps.size()) {
      found = named(fields, steps.get(at));
      if (found.isEmpty()) {
        return found;
      }
      at++;
      Field<?> field = found.get();
      switch (field.kind()) {
        case SECTION_LIST -> {
          if (at < steps.size() && !steps.get(at++).startsWith("[")) {
            return Optional.empty();
          }
          if (at == steps.size() && steps.get(at - 1).startsWith("[")) {
            return Optional.of(entry(field));
          }
          fields = field.children();
        }
        case SECTION_MAP -> {
          if (at < steps.size()) {
            String name = steps.get(at++);
            if (at == steps.size()) {
              return Optional.of(Field.section(key(name), field.help(), field.children()));
            }
          }
          fields = field.children();
        }
        case OPTIONS -> fields = options(root, field.key());
        case OPTIONS_MAP -> {
          if (at == steps.size()) {
            return found;
          }
          String id = steps.get(at++);
          fields = additionOptions(id);
          if (at == steps.size()) {
            return Optional.of(Field.options(key(id), field.help()));
          }
        }
        default -> fields = field.children();
      }
    }
    return found;
  }

  private static Field<?> entry(Field<?> list) {
    return Field.section(list.key(), list.help(), list.children());
  }

  /** Names that their user chose are none for a field; what is read under them is the same. */
  private static String key(String name) {
    return name.chars().allMatch(c -> c >= 'a' && c <= 'z' || c == '_') ? name : "named";
  }

  private static Optional<Field<?>> named(List<Field<?>> fields, String key) {
    for (Field<?> field : fields) {
      if (field.key().equals(key)) {
        return Optional.of(field);
      }
    }
    return Optional.empty();
  }

  private List<Field<?>> options(ObjectNode root, String key) {
    String chosen = key.equals("spring_options") ? "chosen.spring" : "chosen.linkage";
    Optional<DocumentNode> id = new TreeEdit(new Location("job", 0, 0, chosen)).find(root);
    String name = id.isPresent() && id.get() instanceof TextNode text ? text.text() : "";
    if (key.equals("spring_options")) {
      return extensions.springs().stream()
          .filter(one -> one.id().equals(name))
          .findFirst()
          .map(one -> one.options(catalog))
          .orElse(List.of());
    }
    return extensions.linkages().stream()
        .filter(one -> one.id().equals(name))
        .findFirst()
        .map(one -> one.options(catalog))
        .orElse(List.of());
  }

  private List<Field<?>> additionOptions(String id) {
    return extensions.additions().stream()
        .filter(one -> one.id().equals(id))
        .findFirst()
        .map(one -> one.options(catalog))
        .orElse(List.of());
  }

  /** The problems of a refusal. */
  public static List<Problem> problems(Throwable thrown) {
    return thrown instanceof BadInputException bad ? bad.problems() : List.of();
  }
}
