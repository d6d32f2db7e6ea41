package trammel.planning.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldReader;
import trammel.reading.quantity.Quantities;
import trammel.reading.quantity.QuantityKind;
import trammel.reading.quantity.Unit;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.FlagNode;
import trammel.reading.tree.Location;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.TextNode;

/** One formula of the tool, by name: what goes in, how it is worked out, what comes out. */
public final class Figure {
  /** A printed default must be this close to be what is taken. */
  private static final double EXACT = 1e-9;

  private final FigureGroup group;
  private final String name;
  private final String title;
  private final List<Field<?>> inputs;
  private final List<FigureOutput> outputs;
  private final String formula;
  private final String source;
  private final String example;

  private Figure(Draft draft, String formula, String source, String example) {
    group = draft.group;
    name = draft.name;
    title = draft.title;
    inputs = List.copyOf(draft.inputs);
    outputs = List.copyOf(draft.outputs);
    this.formula = formula;
    this.source = source;
    this.example = example;
  }

  /** Starts a figure of a group. */
  static Draft draft(FigureGroup group, String name, String title) {
    return new Draft(group, name, title);
  }

  /** A figure that is being put together. */
  static final class Draft {
    private final FigureGroup group;
    private final String name;
    private final String title;
    private final List<Field<?>> inputs = new ArrayList<>();
    private final List<FigureOutput> outputs = new ArrayList<>();

    private Draft(FigureGroup group, String name, String title) {
      this.group = group;
      this.name = name;
      this.title = title;
    }

    Draft takes(Field<?>... fields) {
      inputs.addAll(List.of(fields));
      return this;
    }

    Draft gives(String key, String what, FigureUnit unit) {
      outputs.add(new FigureOutput(key, what, unit));
      return this;
    }

    /**
     * @param formula how it is worked out, in symbols or in words
     * @param source where that comes from
     * @param example words that can stand behind the name
     */
    Figure by(String formula, String source, String example) {
      return new Figure(this, formula, source, example);
    }
  }

  /** Its name on the command line. */
  public String name() {
    return name;
  }

  /** What it works out, in words. */
  public String title() {
    return title;
  }

  /** The subject it belongs to. */
  public String subject() {
    return group.title();
  }

  /** What goes in. */
  public List<Field<?>> inputs() {
    return inputs;
  }

  /** What may come out. */
  public List<FigureOutput> outputs() {
    return outputs;
  }

  /** How it is worked out. */
  public String formula() {
    return formula;
  }

  /** Where the formula comes from. */
  public String source() {
    return source;
  }

  /** Words that can stand behind its name: {@code outside=1.75 wall=0.120}. */
  public String example() {
    return example;
  }

  /** Whether nothing has to be put in. */
  public boolean needsNothing() {
    for (Field<?> input : inputs) {
      if (input.isRequired()) {
        return false;
      }
    }
    return true;
  }

  /**
   * The value that an input takes when it is left out, as it could be written. Where the usual
   * fraction would hide a small value, it is written as a decimal.
   */
  public static Optional<String> standard(Field<?> input, UnitSystem units) {
    Optional<String> usual = input.defaultText(units);
    if (usual.isEmpty() || !(input.defaultValue().get() instanceof Number value)) {
      return usual;
    }
    Optional<QuantityKind> kind = kind(input);
    if (kind.isEmpty()) {
      return usual;
    }
    double inside = value.doubleValue();
    double read = Quantities.parse(usual.get(), kind.get(), units);
    if (Math.abs(read - inside) <= EXACT * Math.abs(inside)) {
      return usual;
    }
    Unit unit = kind.get().bareUnit(units);
    return Optional.of(FigureAnswer.Quantity.digits(unit.fromInside(inside)) + " " + unit.symbol());
  }

  private static Optional<QuantityKind> kind(Field<?> input) {
    return switch (input.kind()) {
      case LENGTH, ANGLE, MASS, FORCE, RATE, TORQUE, PRESSURE, SPEED, ROTATION, TIME, PERCENT ->
          Optional.of(QuantityKind.valueOf(input.kind().name()));
      default -> Optional.empty();
    };
  }

  FigureOutput output(String key) {
    for (FigureOutput output : outputs) {
      if (output.key().equals(key)) {
        return output;
      }
    }
    throw new IllegalStateException("The figure (" + name + ") declares no result (" + key + ").");
  }

  /**
   * Works it out.
   *
   * @param words the inputs as they were written, by key
   * @param units what a bare number takes
   * @throws trammel.reading.tree.BadInputException if an input is missing, unknown or out of its
   *     range
   * @throws IllegalArgumentException if the inputs do not go together
   */
  public List<FigureAnswer> answers(Map<String, String> words, UnitSystem units) {
    Location where = new Location("figure " + name, 0, 0, "");
    List<ObjectNode.Member> members = new ArrayList<>();
    for (Map.Entry<String, String> word : words.entrySet()) {
      Location place = where.inside(word.getKey());
      members.add(new ObjectNode.Member(word.getKey(), place, node(place, word.getValue())));
    }
    FigureInputs given =
        new FigureInputs(FieldReader.readAll(new ObjectNode(where, members), inputs, units), units);
    FigureAnswers answers = new FigureAnswers(this);
    try {
      group.work(name, given, answers);
    } catch (IllegalArgumentException refusal) {
      throw new IllegalArgumentException(ShownUnits.of(refusal.getMessage(), units), refusal);
    }
    return answers.all();
  }

  private static DocumentNode node(Location place, String word) {
    boolean flag = word.equals("true") || word.equals("false");
    return flag ? new FlagNode(place, Boolean.parseBoolean(word)) : new TextNode(place, word);
  }

  @Override
  public String toString() {
    return name;
  }
}
