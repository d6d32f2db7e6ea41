package trammel.reading.fields;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.reading.quantity.Tolerances;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.EmptyNode;
import trammel.reading.tree.Location;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.Problems;

/**
 * Reads groups of keys against fields and collects everything that is wrong: missing and unknown
 * keys, wrong kinds, values out of range.
 */
public final class FieldReader {
  private final UnitSystem units;
  private final Tolerances tolerances;
  private final Problems problems;

  /**
   * A reader for one file.
   *
   * @param units the units that bare numbers take and that messages are printed in
   * @param tolerances the instruments that measured values were read with
   * @param problems collects what is wrong
   */
  public FieldReader(UnitSystem units, Tolerances tolerances, Problems problems) {
    this.units = units;
    this.tolerances = tolerances;
    this.problems = problems;
  }

  /**
   * Reads one group on its own, with the usual tolerances.
   *
   * @throws trammel.reading.tree.BadInputException with all problems, if there is an error
   */
  public static FieldValues readAll(ObjectNode object, List<Field<?>> fields, UnitSystem units) {
    Problems problems = new Problems();
    FieldValues values = new FieldReader(units, Tolerances.USUAL, problems).read(object, fields);
    problems.throwIfErrors();
    return values;
  }

  /**
   * The values of one group. If problems were reported, some may be missing: ask with {@link
   * FieldValues#find} until {@link Problems#throwIfErrors} has passed.
   */
  public FieldValues read(ObjectNode object, List<Field<?>> fields) {
    FieldValues.Builder values = new FieldValues.Builder(object.location());
    List<String> meant = reportUnknownKeys(object, fields);
    for (Field<?> field : fields) {
      readField(object, field, values, meant);
    }
    return values.build();
  }

  UnitSystem units() {
    return units;
  }

  Tolerances tolerances() {
    return tolerances;
  }

  Problems problems() {
    return problems;
  }

  FieldReader reportingTo(Problems other) {
    return new FieldReader(units, tolerances, other);
  }

  private <T> void readField(
      ObjectNode object, Field<T> field, FieldValues.Builder values, List<String> meant) {
    Optional<DocumentNode> node = object.find(field.key());
    boolean absent = node.isEmpty() || node.get() instanceof EmptyNode;
    if (!absent) {
      values.written(field);
      Optional<T> value = field.read(node.get(), this);
      if (value.isPresent()) {
        values.put(field, value.get(), node.get().location(), true);
      }
      return;
    }
    Location where =
        node.isPresent() ? node.get().location() : object.location().inside(field.key());
    if (field.isRequired()) {
      if (!meant.contains(field.key())) {
        reportMissing(field, where);
      }
    } else if (field.defaultValue().isPresent()) {
      values.put(field, field.defaultValue().get(), where, false);
    } else if (field.kind() == FieldKind.SECTION && !field.isOptional()) {
      values.put(field, read(ObjectNode.empty(where), field.children()), where, false);
    }
  }

  private void reportMissing(Field<?> field, Location where) {
    String from = field.datum().isPresent() ? ", " + field.datum().get() : "";
    problems.error(
        where,
        "nothing",
        field.allowed(units),
        "Add "
            + field.key()
            + " ("
            + field.help()
            + from
            + "), such as "
            + field.example(units)
            + ".");
  }

  /** Reports unknown keys; returns the known keys that were probably meant by them. */
  private List<String> reportUnknownKeys(ObjectNode object, List<Field<?>> fields) {
    List<String> known = keys(fields);
    boolean allKnown = true;
    for (ObjectNode.Member member : object.members()) {
      allKnown = allKnown && known.contains(member.key());
    }
    // Most groups are right, and a cold start reads hundreds of them.
    return allKnown ? List.of() : unknownKeys(object, known);
  }

  private List<String> unknownKeys(ObjectNode object, List<String> known) {
    List<String> free = new ArrayList<>(known);
    for (ObjectNode.Member member : object.members()) {
      free.remove(member.key());
    }
    List<String> meant = new ArrayList<>();
    for (ObjectNode.Member member : object.members()) {
      if (!known.contains(member.key())) {
        Optional<String> near = NearestWord.to(member.key(), free);
        if (near.isPresent()) {
          meant.add(near.get());
        }
        reportUnknown(member, near, known);
      }
    }
    return meant;
  }

  private void reportUnknown(ObjectNode.Member member, Optional<String> near, List<String> known) {
    problems.error(
        member.keyLocation(),
        "the unknown key '" + member.key() + "'",
        WordList.and(known),
        near.isPresent()
            ? "Did you mean " + near.get() + "?"
            : "Take it out, or move it to where it belongs.");
  }

  private static List<String> keys(List<Field<?>> fields) {
    List<String> keys = new ArrayList<>(fields.size());
    for (Field<?> field : fields) {
      if (keys.contains(field.key())) {
        throw new IllegalArgumentException(
            "The key (" + field.key() + ") stands for two fields; each key may stand for one.");
      }
      keys.add(field.key());
    }
    return keys;
  }
}
