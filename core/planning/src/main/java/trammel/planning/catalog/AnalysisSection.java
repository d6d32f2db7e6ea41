package trammel.planning.catalog;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.engine.checks.AnalysisSettings;
import trammel.engine.checks.CrossmemberBay;
import trammel.engine.checks.ShockBlow;
import trammel.engine.loads.LoadCase;
import trammel.engine.loads.WheelBlow;
import trammel.engine.springs.BumpStop;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;

/** The section {@code analysis}: what the checks assume beyond the layout. */
final class AnalysisSection extends CatalogSection {
  private static final double INCH_MM = 25.4;
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
  private static final Field<Double> LEFT_BACK =
      Field.number("left_back", "blow rearward on the left wheel, share of its load at rest", 0, 10)
          .withDefault(0.0);
  private static final Field<Double> RIGHT_BACK =
      Field.number("right_back", "the same on the right wheel", 0, 10).withDefault(0.0);
  private static final Field<Double> LEFT_KERB =
      Field.number(
              "left_kerb", "kerb at the left wheel, share of what tips the vehicle over it", 0, 5)
          .withDefault(0.0);
  private static final Field<Double> RIGHT_KERB =
      Field.number("right_kerb", "the same at the right wheel", 0, 5).withDefault(0.0);
  private static final Field<Double> TIMES_A_YEAR =
      Field.number(
              "times_a_year", "how often it comes in a year, for ranking welds by damage", 0, 1e7)
          .withDefault(0.0);
  private static final List<Field<?>> CASE =
      List.of(
          NAME,
          DRIVE,
          BRAKING,
          CORNERING,
          LEFT_BUMP,
          RIGHT_BUMP,
          FRICTION,
          LEFT_BACK,
          RIGHT_BACK,
          LEFT_KERB,
          RIGHT_KERB,
          TIMES_A_YEAR);
  private static final Field<List<FieldValues>> HARD_CASES =
      Field.sections(
              "hard_cases",
              "blows that come a few times in a life, judged by limits of their own",
              CASE)
          .withDefault(List.of());
  private static final Field<List<FieldValues>> LOAD_CASES =
      Field.sections("load_cases", "the loads under which strength is judged", CASE);

  private static final Field<Double> STOP_RATE =
      Field.rateNPerMm("rate", "its rate when it is just met", 0, 2000);
  private static final Field<Double> STOP_AT_AN_INCH =
      Field.forceN("force_at_1_in", "its force when it is squeezed by 1 in (25.4 mm)", 1, 1e5);
  private static final Field<Double> STOP_SPEED =
      Field.speedMPerS("met_at", "upward speed of the wheel when it meets the stop", 0.05, 10);
  private static final Field<FieldValues> BUMP_STOP =
      Field.section(
              "bump_stop",
              "a bump stop, whose force grows by its rate and by the cube of its squeeze",
              List.of(STOP_RATE, STOP_AT_AN_INCH, STOP_SPEED))
          .optional();

  private static final Field<Double> SHOCK_SPEED =
      Field.speedMPerS("shock_speed", "speed of the wheel in a fast stroke of its shock", 0.1, 10);
  private static final Field<Double> TOP_OUT =
      Field.number(
          "top_out",
          "with how many times its weight an axle pulls that tops out on a shock",
          1,
          50);
  private static final Field<FieldValues> SHOCK_BLOW =
      shockBlow("shock_blow", "what a shock puts into its mounts in use");
  private static final Field<FieldValues> HARD_SHOCK_BLOW =
      shockBlow("hard_shock_blow", "the same in a blow that comes a few times in a life");

  private static final Field<Double> BEHIND =
      Field.lengthMm("behind", "next one behind the axle", 6 * INCH_MM, 120 * INCH_MM);
  private static final Field<Double> AHEAD =
      Field.lengthMm("ahead", "next one ahead of it", 6 * INCH_MM, 120 * INCH_MM);
  private static final Field<FieldValues> CROSSMEMBERS =
      Field.section(
              "frame_crossmembers",
              "where the frame's own crossmembers are taken where a job does not measure them",
              List.of(BEHIND, AHEAD))
          .optional();

  private static Field<FieldValues> shockBlow(String key, String help) {
    return Field.section(key, help, List.of(SHOCK_SPEED, TOP_OUT)).optional();
  }

  AnalysisSection() {
    super(
        "analysis",
        "what the checks assume",
        List.of(
            DESIGN_SPEED,
            LOAD_CASES,
            HARD_CASES,
            BUMP_STOP,
            SHOCK_BLOW,
            HARD_SHOCK_BLOW,
            CROSSMEMBERS));
  }

  @Override
  boolean isSingle() {
    return true;
  }

  @Override
  void add(CatalogEntry entry, FieldValues values, CatalogAssembly assembly) {
    assembly.analysis =
        Optional.of(
            new AnalysisSettings(values.get(DESIGN_SPEED), cases(values.get(LOAD_CASES)))
                .withHardCases(cases(values.get(HARD_CASES)))
                .withTimesAYear(timesAYear(values.get(LOAD_CASES)))
                .withBumpStop(bumpStop(values.find(BUMP_STOP)))
                .withShockBlows(
                    blow(values.find(SHOCK_BLOW), AnalysisSettings.USUAL_BLOW),
                    blow(values.find(HARD_SHOCK_BLOW), AnalysisSettings.HARD_BLOW))
                .withBay(bay(values.find(CROSSMEMBERS))));
  }

  private static ShockBlow blow(Optional<FieldValues> given, ShockBlow usual) {
    return given
        .map(one -> new ShockBlow(1000 * one.get(SHOCK_SPEED), one.get(TOP_OUT)))
        .orElse(usual);
  }

  private static CrossmemberBay bay(Optional<FieldValues> given) {
    return given
        .map(one -> new CrossmemberBay(one.get(BEHIND), one.get(AHEAD)))
        .orElse(AnalysisSettings.USUAL_BAY);
  }

  /** A case that is told in one hand comes as often in the other. */
  private static Map<String, Double> timesAYear(List<FieldValues> rows) {
    Map<String, Double> times = new HashMap<>();
    for (FieldValues row : rows) {
      for (LoadCase one : LoadCase.inBothHands(List.of(loadCase(row)))) {
        times.put(one.name(), row.get(TIMES_A_YEAR));
      }
    }
    return times;
  }

  private static BumpStop bumpStop(Optional<FieldValues> given) {
    if (given.isEmpty()) {
      return AnalysisSettings.USUAL_STOP;
    }
    FieldValues stop = given.get();
    double rateNPerMm = stop.get(STOP_RATE);
    double cubicN = Math.max(0, stop.get(STOP_AT_AN_INCH) - rateNPerMm * INCH_MM);
    return new BumpStop(
        rateNPerMm, cubicN / (INCH_MM * INCH_MM * INCH_MM), 1000 * stop.get(STOP_SPEED));
  }

  private static List<LoadCase> cases(List<FieldValues> rows) {
    List<LoadCase> cases = new ArrayList<>();
    rows.forEach(row -> cases.add(loadCase(row)));
    return cases;
  }

  private static LoadCase loadCase(FieldValues row) {
    return new LoadCase(
        row.get(NAME),
        row.get(DRIVE),
        row.get(BRAKING),
        row.get(CORNERING),
        row.get(LEFT_BUMP),
        row.get(RIGHT_BUMP),
        row.get(FRICTION),
        new WheelBlow(row.get(LEFT_BACK), row.get(LEFT_KERB)),
        new WheelBlow(row.get(RIGHT_BACK), row.get(RIGHT_KERB)));
  }
}
