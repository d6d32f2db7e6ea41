package trammel.reading.fields;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.reading.quantity.MeasuredAngle;
import trammel.reading.quantity.MeasuredPosition;
import trammel.reading.quantity.Measurement;
import trammel.reading.quantity.PartialPosition;
import trammel.reading.quantity.Position;
import trammel.reading.quantity.QuantityKind;
import trammel.reading.quantity.Span;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.ObjectNode;

/**
 * One key of a file, as data: what may stand there, its range, its default, what it is for.
 *
 * <p>Made by the factories and refined by copies: {@code Field.lengthMm("bump", "bump travel
 * wanted", 25.4, 254).withDefault(76.2)}. A field is required unless it has a default or is
 * optional. Ranges are inclusive and in the unit that the factory's name says.
 *
 * @param <T> type of the value
 */
public final class Field<T> {
  private final String key;
  private final String help;
  private final ValueType<T> type;
  private final Optional<T> defaultValue;
  private final boolean optional;
  private final Optional<String> datum;
  private final Map<String, String> called;

  Field(String key, String help, ValueType<T> type) {
    this(key, help, type, Optional.empty(), false, Optional.empty(), Map.of());
  }

  private Field(
      String key,
      String help,
      ValueType<T> type,
      Optional<T> defaultValue,
      boolean optional,
      Optional<String> datum,
      Map<String, String> called) {
    this.key = requireNonNull(key, "key");
    this.help = requireNonNull(help, "help");
    this.type = type;
    this.defaultValue = defaultValue;
    this.optional = optional;
    this.datum = datum;
    this.called = Map.copyOf(called);
    if (!isKey(key) || help.isBlank()) {
      throw new IllegalArgumentException(
          "The field ("
              + key
              + ") with help ("
              + help
              + ") needs a key of lower-case letters, digits and _, and a help that is not blank.");
    }
    if (defaultValue.isPresent() && !type.accepts(defaultValue.get())) {
      throw new IllegalArgumentException(
          "The default ("
              + defaultValue.get()
              + ") of field ("
              + key
              + ") is not allowed; allowed: "
              + type.allowed(UnitSystem.US)
              + ".");
    }
    if (!called.isEmpty() && !List.copyOf(type.choices()).containsAll(called.keySet())) {
      throw new IllegalArgumentException(
          "The field ("
              + key
              + ") calls choices by names ("
              + called.keySet()
              + ") that it has not; it has: "
              + type.choices()
              + ".");
    }
  }

  // Factories: quantities

  /** A length, mm. */
  public static Field<Double> lengthMm(String key, String help, double minMm, double maxMm) {
    return quantity(key, help, QuantityKind.LENGTH, minMm, maxMm);
  }

  /** An angle, rad. */
  public static Field<Double> angleRad(String key, String help, double minRad, double maxRad) {
    return quantity(key, help, QuantityKind.ANGLE, minRad, maxRad);
  }

  /** An angle that is always from level, rad; {@code from level} may be written behind it. */
  public static Field<Double> levelAngleRad(String key, String help, double minRad, double maxRad) {
    return new Field<>(
        key, help, new LevelAngleType(new QuantityRange(QuantityKind.ANGLE, minRad, maxRad)));
  }

  /** A weight or mass, kg. */
  public static Field<Double> massKg(String key, String help, double minKg, double maxKg) {
    return quantity(key, help, QuantityKind.MASS, minKg, maxKg);
  }

  /** A force, N. */
  public static Field<Double> forceN(String key, String help, double minN, double maxN) {
    return quantity(key, help, QuantityKind.FORCE, minN, maxN);
  }

  /** A spring rate, N/mm. */
  public static Field<Double> rateNPerMm(
      String key, String help, double minNPerMm, double maxNPerMm) {
    return quantity(key, help, QuantityKind.RATE, minNPerMm, maxNPerMm);
  }

  /** A torque, Nmm. */
  public static Field<Double> torqueNmm(String key, String help, double minNmm, double maxNmm) {
    return quantity(key, help, QuantityKind.TORQUE, minNmm, maxNmm);
  }

  /** A pressure or stress, MPa. */
  public static Field<Double> pressureMPa(String key, String help, double minMPa, double maxMPa) {
    return quantity(key, help, QuantityKind.PRESSURE, minMPa, maxMPa);
  }

  /** A speed, m/s. */
  public static Field<Double> speedMPerS(
      String key, String help, double minMPerS, double maxMPerS) {
    return quantity(key, help, QuantityKind.SPEED, minMPerS, maxMPerS);
  }

  /** A shaft speed, revolutions per minute. */
  public static Field<Double> speedRpm(String key, String help, double minRpm, double maxRpm) {
    return quantity(key, help, QuantityKind.ROTATION, minRpm, maxRpm);
  }

  /** A time, hours. */
  public static Field<Double> timeHours(String key, String help, double minHours, double maxHours) {
    return quantity(key, help, QuantityKind.TIME, minHours, maxHours);
  }

  /** A percentage, as a ratio: {@code 65 %} is 0.65. */
  public static Field<Double> percent(String key, String help, double minRatio, double maxRatio) {
    return quantity(key, help, QuantityKind.PERCENT, minRatio, maxRatio);
  }

  /** A percentage that multiplies money, as an exact decimal ratio: {@code 8.25 %} is 0.0825. */
  public static Field<BigDecimal> exactPercent(
      String key, String help, double minRatio, double maxRatio) {
    return new Field<>(key, help, new ExactPercentType(minRatio, maxRatio));
  }

  // Factories: measurements, each one reading or a list of repeats

  /** A measured length, mm. */
  public static Field<Measurement> measuredLength(
      String key, String help, double minMm, double maxMm) {
    return new Field<>(
        key,
        help,
        new MeasurementType(
            new QuantityType(new QuantityRange(QuantityKind.LENGTH, minMm, maxMm))));
  }

  /** A measured weight, kg. */
  public static Field<Measurement> measuredMass(
      String key, String help, double minKg, double maxKg) {
    return new Field<>(
        key,
        help,
        new MeasurementType(new QuantityType(new QuantityRange(QuantityKind.MASS, minKg, maxKg))));
  }

  /** A measured angle, rad, which must say {@code from level} or {@code from frame}. */
  public static Field<MeasuredAngle> measuredAngle(
      String key, String help, double minRad, double maxRad) {
    return new Field<>(
        key, help, new MeasuredAngleType(new QuantityRange(QuantityKind.ANGLE, minRad, maxRad)));
  }

  /**
   * A measured angle that is always from level, rad; {@code from level} may be written behind it.
   */
  public static Field<Measurement> measuredLevelAngle(
      String key, String help, double minRad, double maxRad) {
    return new Field<>(
        key,
        help,
        new MeasurementType(
            new LevelAngleType(new QuantityRange(QuantityKind.ANGLE, minRad, maxRad))));
  }

  /** A place by three measured distances, mm: {@code {forward: …, left: …, up: …}}. */
  public static Field<MeasuredPosition> measuredPoint(
      String key, String help, double minMm, double maxMm) {
    return new Field<>(
        key, help, new MeasuredPointType(new QuantityRange(QuantityKind.LENGTH, minMm, maxMm)));
  }

  // Factories: places

  /** A place by three distances, mm: {@code {forward: …, left: …, up: …}}. */
  public static Field<Position> point(String key, String help, double minMm, double maxMm) {
    return new Field<>(
        key, help, new PointType(new QuantityRange(QuantityKind.LENGTH, minMm, maxMm)));
  }

  /** Some of the three distances of a place, mm. */
  public static Field<PartialPosition> partialPoint(
      String key, String help, double minMm, double maxMm) {
    return new Field<>(
        key, help, new PartialPointType(new QuantityRange(QuantityKind.LENGTH, minMm, maxMm)));
  }

  /** Two distances along one axis, mm, the smaller first: {@code [12 in, 30 in]}. */
  public static Field<Span> span(String key, String help, double minMm, double maxMm) {
    return new Field<>(
        key, help, new SpanType(new QuantityRange(QuantityKind.LENGTH, minMm, maxMm)));
  }

  // Factories: plain values

  /** A number without unit. */
  public static Field<Double> number(String key, String help, double min, double max) {
    return new Field<>(key, help, new NumberType(min, max));
  }

  /** A whole number. */
  public static Field<Integer> count(String key, String help, int min, int max) {
    return new Field<>(key, help, new CountType(min, max));
  }

  /** One of several words. */
  public static Field<String> choice(String key, String help, List<String> choices) {
    return new Field<>(key, help, new ChoiceType(choices));
  }

  /** A list of words out of several. */
  public static Field<List<String>> choices(String key, String help, List<String> choices) {
    return new Field<>(key, help, new ChoicesType(choices));
  }

  /** A list of names of at most so many characters, each at most once. */
  public static Field<List<String>> names(String key, String help, int maxLength) {
    return new Field<>(key, help, new NamesType(maxLength));
  }

  /** True or false. */
  public static Field<Boolean> flag(String key, String help) {
    return new Field<>(key, help, new FlagType());
  }

  /** A text of one line that is not blank. */
  public static Field<String> text(String key, String help, int maxLength) {
    return new Field<>(key, help, new TextType(maxLength, false));
  }

  /** A text that is not blank and may have several lines. */
  public static Field<String> note(String key, String help, int maxLength) {
    return new Field<>(key, help, new TextType(maxLength, true));
  }

  /** A day, year-month-day. */
  public static Field<LocalDate> date(String key, String help) {
    return new Field<>(key, help, new DateType());
  }

  /** An amount of money, 0 or more, an exact decimal. */
  public static Field<BigDecimal> money(String key, String help) {
    return new Field<>(key, help, new MoneyType());
  }

  /** A currency by its ISO 4217 code. */
  public static Field<Currency> currency(String key, String help) {
    return new Field<>(key, help, new CurrencyType());
  }

  // Factories: groups

  /** A group of fields; it may be left out of the file if none of them is required. */
  public static Field<FieldValues> section(String key, String help, List<Field<?>> fields) {
    return new Field<>(key, help, new SectionType(fields));
  }

  /** A list of groups of the same fields. */
  public static Field<List<FieldValues>> sections(String key, String help, List<Field<?>> fields) {
    return new Field<>(key, help, new SectionListType(fields));
  }

  /**
   * Groups of the same fields, each under a name that the user chooses, in the order of the file.
   */
  public static Field<Map<String, FieldValues>> namedSections(
      String key, String help, List<Field<?>> fields) {
    return new Field<>(key, help, new SectionMapType(fields));
  }

  /** A group of keys kept with its locations, to be read later against fields of its own. */
  public static Field<ObjectNode> options(String key, String help) {
    return new Field<>(key, help, new OptionsType());
  }

  /** Groups of keys, each under a name that something else knows, read later as those above. */
  public static Field<Map<String, ObjectNode>> namedOptions(String key, String help) {
    return new Field<>(key, help, new NamedOptionsType());
  }

  private static Field<Double> quantity(
      String key, String help, QuantityKind kind, double min, double max) {
    return new Field<>(key, help, new QuantityType(new QuantityRange(kind, min, max)));
  }

  // Refinements

  /**
   * A copy that takes this value when the file does not give one.
   *
   * @throws IllegalArgumentException if the value is out of the field's range
   */
  public Field<T> withDefault(T value) {
    return new Field<>(key, help, type, Optional.of(value), false, datum, called);
  }

  /** A copy that may be left out of the file. */
  public Field<T> optional() {
    return new Field<>(key, help, type, Optional.empty(), true, datum, called);
  }

  /** A copy that states the datum from which its value is measured. */
  public Field<T> measuredFrom(String datumText) {
    return new Field<>(key, help, type, defaultValue, optional, Optional.of(datumText), called);
  }

  /**
   * A copy that says what its choices are called on paper, where a key of the file would not do.
   *
   * @param words what a choice is called in a sentence of its own, by choice
   * @throws IllegalArgumentException if one of them is not a choice of this field
   */
  public Field<T> calling(Map<String, String> words) {
    return new Field<>(key, help, type, defaultValue, optional, datum, words);
  }

  // Description

  /** The key in the file. */
  public String key() {
    return key;
  }

  /** What it is, in words. */
  public String help() {
    return help;
  }

  /** What may stand there. */
  public FieldKind kind() {
    return type.kind();
  }

  /** The unit that a bare number takes; empty if it has none. */
  public String unit(UnitSystem units) {
    return type.unit(units);
  }

  /** What may stand there, with its range, in words. */
  public String allowed(UnitSystem units) {
    return type.allowed(units);
  }

  /** Something that may stand there. */
  public String example(UnitSystem units) {
    return defaultValue.isPresent() ? type.print(defaultValue.get(), units) : type.example(units);
  }

  /** The least value, in the unit inside the tool. */
  public OptionalDouble min() {
    return type.least();
  }

  /** The greatest value, in the unit inside the tool. */
  public OptionalDouble max() {
    return type.greatest();
  }

  /** The words to choose from; empty for all but choices. */
  public List<String> choices() {
    return type.choices();
  }

  /** What a choice is called on paper; empty where nothing but its key is known. */
  public Optional<String> called(String choice) {
    return Optional.ofNullable(called.get(choice));
  }

  /** The fields of a group or place; empty for a single value. */
  public List<Field<?>> children() {
    return type.children();
  }

  /** The value that is taken when the file gives none. */
  public Optional<T> defaultValue() {
    return defaultValue;
  }

  /** The default as it could be written in a file. */
  public Optional<String> defaultText(UnitSystem units) {
    return defaultValue.isPresent()
        ? Optional.of(type.print(defaultValue.get(), units))
        : Optional.empty();
  }

  /** The datum from which its value is measured. */
  public Optional<String> datum() {
    return datum;
  }

  /** True if the file must give it. */
  public boolean isRequired() {
    if (optional || defaultValue.isPresent()) {
      return false;
    }
    return !(type instanceof SectionType section) || section.needsWriting();
  }

  /** True if it may be left out and has no default. */
  public boolean isOptional() {
    return optional;
  }

  /** A value of this field as it could be written in a file. */
  public String print(T value, UnitSystem units) {
    return type.print(value, units);
  }

  @Override
  public String toString() {
    return key;
  }

  /** The value of a node, or empty after its problems were reported. */
  Optional<T> read(DocumentNode node, FieldReader reader) {
    return type.read(node, reader);
  }

  private static boolean isKey(String key) {
    for (int i = 0; i < key.length(); i++) {
      char c = key.charAt(i);
      if (!(c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c == '_')) {
        return false;
      }
    }
    return !key.isEmpty();
  }
}
