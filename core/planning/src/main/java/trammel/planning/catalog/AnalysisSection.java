package trammel.planning.catalog;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.engine.checks.AnalysisSettings;
import trammel.engine.loads.LoadCase;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;

/** The section {@code analysis}: what the checks assume beyond the layout. */
final class AnalysisSection extends CatalogSection {
  private static final double LEAST_M_PER_S = 5;
  private static final double MOST_M_PER_S = 120;

  private static final Field<Double> DESIGN_SPEED =
      Field.speedMPerS(
          "design_speed", "road speed at which the shaft is judged", LEAST_M_PER_S, MOST_M_PER_S);

  private static final Field<String> NAME = Field.text("name", "what the load case is called", 60);
  private static final Field<Double> DRIVE =
      Field.number("drive", "share of the full drive torque", 0, 10).withDefault(0.0);
  private static final Field<Double> BRAKING =
      Field.number("braking", "deceleration in g", 0, 3).withDefault(0.0);
  private static final Field<Double> CORNERING =
      Field.number("cornering", "sideways acceleration in g, left-hand bend positive", -3, 3)
          .withDefault(0.0);
  private static final Field<Double> LEFT_BUMP =
      Field.number("left_bump", "factor on the load of the left wheel", 0, 10).withDefault(1.0);
  private static final Field<Double> RIGHT_BUMP =
      Field.number("right_bump", "factor on the load of the right wheel", 0, 10).withDefault(1.0);
  private static final Field<Double> FRICTION =
      Field.number("friction", "tyre on road, where the job does not measure it", 0.01, 5);
  private static final Field<List<FieldValues>> LOAD_CASES =
      Field.sections(
          "load_cases",
          "the loads under which strength is judged",
          List.of(NAME, DRIVE, BRAKING, CORNERING, LEFT_BUMP, RIGHT_BUMP, FRICTION));

  AnalysisSection() {
    super("analysis", "what the checks assume", List.of(DESIGN_SPEED, LOAD_CASES));
  }

  @Override
  boolean isSingle() {
    return true;
  }

  @Override
  void add(CatalogEntry entry, FieldValues values, CatalogAssembly assembly) {
    List<LoadCase> loadCases = new ArrayList<>();
    for (FieldValues row : values.get(LOAD_CASES)) {
      loadCases.add(loadCase(row));
    }
    assembly.analysis = Optional.of(new AnalysisSettings(values.get(DESIGN_SPEED), loadCases));
  }

  private static LoadCase loadCase(FieldValues row) {
    return new LoadCase(
        row.get(NAME),
        row.get(DRIVE),
        row.get(BRAKING),
        row.get(CORNERING),
        row.get(LEFT_BUMP),
        row.get(RIGHT_BUMP),
        row.get(FRICTION));
  }
}
