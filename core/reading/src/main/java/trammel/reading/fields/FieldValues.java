package trammel.reading.fields;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.Location;

/** The values that were read for a list of fields, each of its field's type. */
public final class FieldValues {
  /** One value with its field; given is false for a default. */
  private record Entry(Field<?> field, Object value, Location location, boolean given) {}

  private final Location location;
  private final Map<String, Entry> entries;

  /** Keys that stand in the file, whether or not their value could be read. */
  private final List<String> written;

  private FieldValues(Location location, Map<String, Entry> entries, List<String> written) {
    this.location = location;
    this.entries = entries;
    this.written = written;
  }

  /** No values, as if read from nowhere; fields with defaults still give them. */
  public static FieldValues none() {
    return new FieldValues(new Location("defaults", 0, 0, ""), Map.of(), List.of());
  }

  /**
   * A copy in which a field has a value.
   *
   * @throws IllegalArgumentException if the value is out of the field's range
   */
  public <T> FieldValues with(Field<T> field, T value) {
    field.withDefault(value);
    Map<String, Entry> changed = new LinkedHashMap<>(entries);
    changed.put(field.key(), new Entry(field, value, location.inside(field.key()), true));
    List<String> keys = new ArrayList<>(written);
    keys.add(field.key());
    return new FieldValues(location, changed, keys);
  }

  /**
   * The value of a field, or its default.
   *
   * @throws IllegalArgumentException if it has neither
   */
  public <T> T get(Field<T> field) {
    Optional<T> value = find(field);
    if (value.isEmpty()) {
      throw new IllegalArgumentException(
          "The field ("
              + field.key()
              + ") has no value at ("
              + location.path()
              + "). Use find for an optional field.");
    }
    return value.get();
  }

  /** The value of a field, or its default, or empty. */
  public <T> Optional<T> find(Field<T> field) {
    Entry entry = entries.get(field.key());
    if (entry == null) {
      return field.defaultValue();
    }
    if (entry.field().kind() != field.kind()) {
      throw new IllegalArgumentException(
          "The field ("
              + field.key()
              + ") was read as "
              + entry.field().kind()
              + " but is asked for as "
              + field.kind()
              + ".");
    }
    // Read by a field of the same key and kind, so the type is that of the field.
    @SuppressWarnings("unchecked")
    T value = (T) entry.value();
    return Optional.of(value);
  }

  /** True if the value comes from the file and not from a default. */
  public boolean isGiven(Field<?> field) {
    Entry entry = entries.get(field.key());
    return entry != null && entry.given();
  }

  /** True if the key stands in the file, even with a value that was refused. */
  public boolean isWritten(Field<?> field) {
    return written.contains(field.key());
  }

  /** Where the group of fields stands. */
  public Location location() {
    return location;
  }

  /** Where the value of a field stands, or where it would have to stand. */
  public Location locationOf(Field<?> field) {
    Entry entry = entries.get(field.key());
    return entry == null ? location.inside(field.key()) : entry.location();
  }

  /**
   * Every default that was taken here and in the groups below because the file says nothing, as
   * {@code path: value}, in the order of the fields.
   */
  public List<String> defaultsTaken(UnitSystem units) {
    List<String> taken = new ArrayList<>();
    addDefaultsTaken(units, taken);
    return List.copyOf(taken);
  }

  private void addDefaultsTaken(UnitSystem units, List<String> taken) {
    for (Entry entry : entries.values()) {
      Optional<String> text = entry.field().defaultText(units);
      if (!entry.given() && text.isPresent()) {
        taken.add(entry.location().path() + ": " + text.get());
      }
      addDefaultsTakenIn(entry.value(), units, taken);
    }
  }

  private static void addDefaultsTakenIn(Object value, UnitSystem units, List<String> taken) {
    if (value instanceof FieldValues group) {
      group.addDefaultsTaken(units, taken);
    } else if (value instanceof List<?> list) {
      for (Object entry : list) {
        addDefaultsTakenIn(entry, units, taken);
      }
    } else if (value instanceof Map<?, ?> map) {
      for (Object entry : map.values()) {
        addDefaultsTakenIn(entry, units, taken);
      }
    }
  }

  /** Collects the values while a group is being read. */
  static final class Builder {
    private final Location location;
    private final Map<String, Entry> entries = new LinkedHashMap<>();
    private final List<String> written = new ArrayList<>();

    Builder(Location location) {
      this.location = location;
    }

    void written(Field<?> field) {
      written.add(field.key());
    }

    void put(Field<?> field, Object value, Location where, boolean given) {
      entries.put(field.key(), new Entry(field, value, where, given));
    }

    FieldValues build() {
      return new FieldValues(location, entries, List.copyOf(written));
    }
  }
}
