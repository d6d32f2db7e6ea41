package trammel.planning.catalog;

import java.util.List;
import java.util.Optional;
import trammel.engine.checks.AnalysisSettings;
import trammel.planning.fields.Field;
import trammel.planning.fields.FieldValues;

/** The section {@code analysis}: what the checks assume beyond the layout. */
final class AnalysisSection extends CatalogSection {
  private static final double LEAST_M_PER_S = 5;
  private static final double MOST_M_PER_S = 120;

  private static final Field<Double> DESIGN_SPEED =
      Field.speedMPerS(
          "design_speed", "road speed at which the shaft is judged", LEAST_M_PER_S, MOST_M_PER_S);

  AnalysisSection() {
    super("analysis", "what the checks assume", List.of(DESIGN_SPEED));
  }

  @Override
  boolean isSingle() {
    return true;
  }

  @Override
  void add(CatalogEntry entry, FieldValues values, CatalogAssembly assembly) {
    assembly.analysis = Optional.of(new AnalysisSettings(values.get(DESIGN_SPEED)));
  }
}
