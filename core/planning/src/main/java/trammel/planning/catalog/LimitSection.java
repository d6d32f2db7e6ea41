package trammel.planning.catalog;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.engine.checks.Check;
import trammel.engine.checks.Limit;
import trammel.engine.checks.Measure;
import trammel.engine.checks.StandardChecks;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.reading.tree.Location;

/** The section {@code limits}: the limit of every standard check. */
final class LimitSection extends CatalogSection {
  private static final int LONGEST = 80;

  private static final Field<String> MEASURE =
      Field.choice("measure", "what kind of quantity it bounds", measureWords());
  private static final Field<String> GOOD =
      Field.text("good", "the range that is good, such as at most 2 deg", LONGEST);
  private static final Field<String> STOP =
      Field.text("stop", "the range outside which it says stop; any for none", LONGEST);

  private final List<Check> checks = StandardChecks.all();

  LimitSection() {
    super("limits", "limits by the id of the check", List.of(MEASURE, GOOD, STOP, Purchase.SOURCE));
  }

  private static List<String> measureWords() {
    List<String> words = new ArrayList<>();
    for (Measure measure : Measure.values()) {
      words.add(word(measure));
    }
    return words;
  }

  private static String word(Measure measure) {
    return switch (measure) {
      case LENGTH -> "length";
      case ANGLE -> "angle";
      case FREQUENCY -> "frequency";
      case ANGULAR_ACCELERATION -> "acceleration";
      case SHARE -> "share";
      case FACTOR -> "factor";
      case COUNT -> "count";
      case PRESSURE -> "pressure";
      case STRESS -> "stress";
      case FORCE -> "force";
      case TORQUE -> "torque";
      case RATE -> "rate";
      case MASS -> "mass";
      case SPEED -> "speed";
      case ROTATION -> "rotation";
      case ENERGY -> "energy";
    };
  }

  @Override
  void add(CatalogEntry entry, FieldValues values, CatalogAssembly assembly) {
    Optional<Measure> read = measure(entry, assembly);
    if (read.isEmpty()) {
      return;
    }
    Measure measure = read.get();
    if (!values.get(MEASURE).equals(word(measure))) {
      assembly.problems.error(
          values.locationOf(MEASURE),
          "'" + values.get(MEASURE) + "'",
          word(measure) + ", which is what check " + entry.key() + " reads",
          "Write measure: " + word(measure) + " and check the two ranges.");
      return;
    }
    LimitText text = new LimitText(measure, entry.units());
    Optional<LimitText.Range> good = range(text, GOOD, values, assembly);
    Optional<LimitText.Range> stop = range(text, STOP, values, assembly);
    if (good.isPresent() && stop.isPresent()) {
      assembly.limits.put(
          entry.key(),
          new Limit(
              good.get().min(),
              good.get().max(),
              stop.get().min(),
              stop.get().max(),
              values.get(Purchase.SOURCE)));
    }
  }

  /** What the check of an entry reads. */
  private Optional<Measure> measure(CatalogEntry entry, CatalogAssembly assembly) {
    Optional<PlanCheck> bracket = PlanCheck.named(entry.key());
    if (bracket.isPresent()) {
      return Optional.of(bracket.get().measure());
    }
    StringBuilder ids = new StringBuilder();
    for (Check check : checks) {
      if (check.id().equals(entry.key())) {
        return Optional.of(check.measure());
      }
      ids.append(ids.isEmpty() ? "" : ", ").append(check.id());
    }
    for (PlanCheck check : PlanCheck.values()) {
      ids.append(", ").append(check.id());
    }
    assembly.problems.error(
        entry.location(),
        "a limit for '" + entry.key() + "'",
        "the id of a standard check: " + ids,
        "Name one of these; the limit of a plugin's check comes with the plugin.");
    return Optional.empty();
  }

  private static Optional<LimitText.Range> range(
      LimitText text, Field<String> field, FieldValues values, CatalogAssembly assembly) {
    String written = values.get(field);
    try {
      return Optional.of(text.range(written));
    } catch (IllegalArgumentException refused) {
      assembly.problems.error(
          values.locationOf(field),
          "'" + written + "'",
          "a range: at most, at least, two amounts with to between them, or any",
          refused.getMessage());
      return Optional.empty();
    }
  }

  /** Reports the standard checks that have no limit. */
  void requireAll(CatalogEntries written, Location where, CatalogAssembly assembly) {
    for (Check check : checks) {
      if (!written.has(check.id())) {
        assembly.problems.error(
            where.inside(key()).inside(check.id()),
            "nothing",
            "a limit for every standard check",
            "Add the limit of " + check.id() + " (" + check.title() + ").");
      }
    }
  }
}
