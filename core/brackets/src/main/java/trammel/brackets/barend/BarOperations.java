package trammel.brackets.barend;

import java.util.List;
import java.util.stream.Collectors;
import trammel.brackets.bar.BarMaking;
import trammel.brackets.bar.Mounting;
import trammel.brackets.work.FittedEnd;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.TubeNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.layout.End;
import trammel.engine.layout.Rails;
import trammel.engine.quantity.Phrase;
import trammel.trade.plates.RoundHole;

/** The shop's operations that bars and their brackets ask for. */
public final class BarOperations {
  private BarOperations() {}

  /**
   * An operation once for each bar; none where there is no bar.
   *
   * @param key the operation in the catalog
   * @param unit what is counted, such as {@code bracket}
   * @param why what asks for it; the names of the bars follow
   */
  public static WorkPlan each(String key, List<BarMaking> bars, String unit, String why) {
    return each(key, bars, unit, why, List.of());
  }

  private static WorkPlan each(
      String key, List<BarMaking> bars, String unit, String why, List<FittedEnd> fits) {
    if (bars.isEmpty()) {
      return WorkPlan.NONE;
    }
    String names = bars.stream().map(bar -> bar.bar().name()).collect(Collectors.joining(", "));
    String driver = bars.size() + " " + unit + (bars.size() == 1 ? "" : "s");
    return new WorkPlan.Builder()
        .add(
            new OperationNeed(
                key, bars.size(), Phrase.text(driver), Phrase.text(why + names), fits))
        .build();
  }

  /**
   * An operation that fits brackets, once for each bar; none where there is no bar.
   *
   * @param key the operation in the catalog
   * @param ends the ends of each bar whose brackets it fits
   * @param unit what is counted, such as {@code bracket}
   * @param why what asks for it; the names of the bars follow
   */
  public static WorkPlan fitting(
      String key, List<BarMaking> bars, List<End> ends, String unit, String why) {
    List<FittedEnd> fits =
        bars.stream()
            .flatMap(bar -> ends.stream().map(end -> new FittedEnd(bar.bar().name(), end)))
            .toList();
    return each(key, bars, unit, why, fits);
  }

  /** Frame ends of bars along the rails, fitted between or outside them. */
  public static WorkPlan fitFrameEnds(List<BarMaking> bars, Mounting mounting, Rails rails) {
    return mounting == Mounting.INBOARD
        ? fitting(
            "fit-frame-bracket",
            bars,
            List.of(End.FRAME),
            "bracket",
            onRails("inboard frame ends", rails))
        : fitting(
            "fit-outrigger",
            bars,
            List.of(End.FRAME),
            "outrigger",
            onRails("frame ends outside the rails", rails));
  }

  /** The start of a reason, which says too where the rails need no boxing. */
  public static String onRails(String what, Rails rails) {
    return what + (rails.boxed() ? "; the rails are boxed already, so no boxing plate" : "") + ": ";
  }

  /**
   * What is counted from a plan of bars and brackets: tubes sawn, holes drilled, plates dressed.
   * Plates that close the rails are counted when they are made.
   */
  public static WorkPlan counted(WorkPlan plan) {
    int cuts = 0;
    for (TubeNeed tube : plan.tubes()) {
      cuts += 2 * tube.quantity();
    }
    int plates = 0;
    int holes = 0;
    for (PlateNeed plate : plan.plates()) {
      plates += plate.quantity();
      holes += plate.quantity() * drilled(plate);
    }
    return new WorkPlan.Builder()
        .add(
            new OperationNeed(
                "saw-tube", cuts, cuts + " cuts", Phrase.of("both ends of each bar's tube")))
        .add(
            new OperationNeed(
                "drill-plate",
                holes,
                holes + " holes",
                Phrase.of("joint bolts, in each bracket side")))
        .add(
            new OperationNeed(
                "dress-plate", plates, plates + " plates", Phrase.of("every bracket plate listed")))
        .build();
  }

  /** Bolt holes; what lightens a plate is cut with its outline. */
  private static int drilled(PlateNeed plate) {
    return (int)
        plate.plate().outline().holes().stream().filter(RoundHole.class::isInstance).count();
  }
}
