package trammel.planning.figures;

import java.util.List;
import java.util.Optional;
import trammel.reading.fields.Field;
import trammel.trade.labour.CrawfordCurve;
import trammel.trade.labour.LearningCurve;
import trammel.trade.labour.RuleOfSixSum;
import trammel.trade.labour.ThreePoint;
import trammel.trade.labour.WrightCurve;

/** Hours. */
final class LabourFigures implements FigureGroup {
  private static final double MOST_HOURS = 100_000;

  private static final Field<Double> LOW =
      Field.timeHours("low", "when all goes well", 0, MOST_HOURS);
  private static final Field<Double> LIKELY = Field.timeHours("likely", "as a rule", 0, MOST_HOURS);
  private static final Field<Double> HIGH =
      Field.timeHours("high", "when much goes wrong", 0, MOST_HOURS);
  private static final Field<Double> CHANCE =
      Field.percent("chance", "chance that the hours are enough", 0.001, 0.999).withDefault(0.8);
  private static final Field<String> TASKS =
      Field.text("tasks", "low,likely,high hours of each, a + between tasks", 2000);
  private static final Field<Double> WITHIN =
      Field.timeHours("within", "hours whose chance is wanted", 0, MOST_HOURS).optional();
  private static final Field<String> MODEL =
      Field.choice(
          "model",
          "wright: the average falls; crawford: the unit falls",
          List.of("wright", "crawford"));
  private static final Field<Double> FIRST =
      Field.timeHours("first", "hours of the first one", 0.001, 1_000_000);
  private static final Field<Double> SLOPE =
      Field.percent("slope", "hours left after each doubling", 0.5, 1);
  private static final Field<Integer> UNIT = Field.count("unit", "which one", 1, 100_000);

  @Override
  public String title() {
    return "Hours";
  }

  @Override
  public List<Figure> figures() {
    return List.of(
        Figure.draft(this, "pert", "Three-point estimate of one task")
            .takes(LOW, LIKELY, HIGH, CHANCE)
            .gives("mean", "mean", FigureUnit.HOURS)
            .gives("sixth", "spread by the rule of six, (b - a)/6", FigureUnit.HOURS)
            .gives("spread", "true spread of the beta curve", FigureUnit.HOURS)
            .gives("p50", "enough in half of all cases", FigureUnit.HOURS)
            .gives("quantile", "enough with the chance asked for", FigureUnit.HOURS)
            .by(
                "(a + 4 m + b)/6; root of ((mean - a)(b - mean)/7); beta curve",
                "three-point estimating, textbook",
                "low=4 likely=6 high=14"),
        Figure.draft(this, "pert-sum", "Three-point estimate of several tasks")
            .takes(TASKS, CHANCE, WITHIN)
            .gives("mean", "mean", FigureUnit.HOURS)
            .gives("spread", "spread, tasks independent", FigureUnit.HOURS)
            .gives("spread_together", "spread, all running over together", FigureUnit.HOURS)
            .gives("quantile", "enough with the chance asked for", FigureUnit.HOURS)
            .gives("chance", "chance of the hours asked about", FigureUnit.PERCENT)
            .by(
                "means and squares of (b - a)/6 add up; normal curve",
                "course text on project scheduling, critical chain example",
                "tasks=6,7,14+2,3,4+5,5.5,9+4,6,8"),
        Figure.draft(this, "learning-curve", "Hours that fall with practice")
            .takes(MODEL, FIRST, SLOPE, UNIT)
            .gives("unit", "hours of that one", FigureUnit.HOURS)
            .gives("average", "average up to it", FigureUnit.HOURS)
            .gives("total", "total up to it", FigureUnit.HOURS)
            .by(
                "a n^b, b = ln slope/ln 2",
                "Wright: accounting textbook; Crawford: project-management textbook",
                "model=crawford first=812 slope=75 unit=250"));
  }

  @Override
  public void work(String name, FigureInputs given, FigureAnswers answers) {
    switch (name) {
      case "pert" -> pert(given, answers);
      case "pert-sum" -> sum(given, answers);
      case "learning-curve" -> {
        LearningCurve curve =
            given.get(MODEL).equals("wright")
                ? new WrightCurve(given.get(FIRST), given.get(SLOPE))
                : new CrawfordCurve(given.get(FIRST), given.get(SLOPE));
        int unit = given.get(UNIT);
        answers
            .put("unit", curve.unitHours(unit))
            .put("average", curve.averageHours(unit))
            .put("total", curve.totalHours(unit));
      }
      default -> throw FigureGroup.unknown(name);
    }
  }

  private static void pert(FigureInputs given, FigureAnswers answers) {
    ThreePoint hours = new ThreePoint(given.get(LOW), given.get(LIKELY), given.get(HIGH));
    answers
        .put("mean", hours.mean())
        .put("sixth", hours.ruleOfSixDeviation())
        .put("spread", hours.standardDeviation())
        .put("p50", hours.quantile(0.5))
        .put("quantile", hours.quantile(given.get(CHANCE)));
  }

  private static void sum(FigureInputs given, FigureAnswers answers) {
    RuleOfSixSum sum = new RuleOfSixSum(WrittenLists.tasks(given.get(TASKS)));
    answers
        .put("mean", sum.meanHours())
        .put("spread", sum.independentDeviation())
        .put("spread_together", sum.togetherDeviation())
        .put("quantile", sum.quantileHours(given.get(CHANCE)));
    Optional<Double> within = given.find(WITHIN);
    if (within.isPresent()) {
      answers.put("chance", sum.chanceWithin(within.get()));
    }
  }
}
