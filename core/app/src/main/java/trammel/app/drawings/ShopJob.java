package trammel.app.drawings;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import trammel.assembly.Assembly;
import trammel.brackets.work.BoltNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.layout.Layout;
import trammel.planning.estimate.BoltLine;
import trammel.planning.fitup.Bracket;
import trammel.planning.fitup.BracketKind;
import trammel.planning.vehicle.NotchCut;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;

/**
 * What the shop drawings of a job are drawn from.
 *
 * @param assembly the finished vehicle
 * @param layout its layout
 * @param plan its work
 * @param bolts its bolts with their torques
 * @param notch the notch in each rail, if there is one
 * @param printer prints in the reader's units
 * @param kinds its brackets, each kind with its letter
 */
public record ShopJob(
    Assembly assembly,
    Layout layout,
    WorkPlan plan,
    List<BoltLine> bolts,
    Optional<NotchCut> notch,
    QuantityPrinter printer,
    List<BracketKind> kinds) {
  private static final double US_STEP_MM = 25.4 / 32;
  private static final double METRIC_STEP_MM = 0.1;

  /** Copies the lists. */
  public ShopJob {
    bolts = List.copyOf(bolts);
    kinds = List.copyOf(kinds);
  }

  /** With its brackets found. */
  public static ShopJob of(
      Assembly assembly,
      Layout layout,
      WorkPlan plan,
      List<BoltLine> bolts,
      Optional<NotchCut> notch,
      QuantityPrinter printer) {
    double stepMm = printer.system() == UnitSystem.US ? US_STEP_MM : METRIC_STEP_MM;
    return new ShopJob(
        assembly,
        layout,
        plan,
        bolts,
        notch,
        printer,
        BracketKind.of(Bracket.of(assembly, layout.chassis(), stepMm)));
  }

  UnitSystem units() {
    return printer.system();
  }

  /** A length as the sheets show it: the title block says the unit. */
  String length(double lengthMm) {
    String text = printer.length(lengthMm);
    return text.substring(0, text.lastIndexOf(' '));
  }

  String angle(double angleRad) {
    return printer.angle(angleRad).replace(" deg", "°");
  }

  /** Every bracket by its letter; the mirror image has the letter of the one that is drawn. */
  List<Map.Entry<String, Bracket>> brackets() {
    return kinds.stream()
        .flatMap(kind -> kind.brackets().stream().map(one -> Map.entry(kind.letter(), one)))
        .toList();
  }

  /** The letter of the bracket that each plate or tube belongs to. */
  Map<String, String> letters() {
    Map<String, String> letters = new TreeMap<>();
    for (Map.Entry<String, Bracket> bracket : brackets()) {
      bracket.getValue().parts().forEach(p -> letters.put(p.part().id(), bracket.getKey()));
    }
    return letters;
  }

  /** The bolts of a bracket as the bolt list has them, each with how many there are. */
  Map<BoltLine, Integer> bolts(Bracket bracket) {
    Map<BoltLine, Integer> counted = new LinkedHashMap<>();
    for (BoltNeed need : plan.bolts()) {
      int count =
          (int)
              need.places().stream()
                  .map(place -> place.held().id("bolt of " + need.where()))
                  .filter(bracket.bolts()::contains)
                  .count();
      bolts.stream()
          .filter(line -> count > 0 && line.size().key().equals(need.boltKey()))
          .filter(line -> line.gripMm() == need.gripMm())
          .findFirst()
          .ifPresent(line -> counted.merge(line, count, Integer::sum));
    }
    return counted;
  }

  /** Ids of a bracket's parts and bolts. */
  static Stream<String> ids(Bracket bracket) {
    return Stream.concat(
        bracket.parts().stream().map(span -> span.part().id()), bracket.bolts().stream());
  }
}
