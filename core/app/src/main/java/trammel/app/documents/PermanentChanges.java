package trammel.app.documents;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import trammel.app.drawings.PartWords;
import trammel.planning.estimate.Counts;
import trammel.planning.fitup.AxleFoot;
import trammel.planning.fitup.RailFoot;
import trammel.planning.job.Obstacle;
import trammel.planning.job.ObstacleKind;
import trammel.planning.vehicle.NotchCut;
import trammel.trade.labour.OperationLine;

/**
 * What the job does to the vehicle that cannot be unbolted again, and what it leaves as it is. Read
 * off the assembly and the operations that are billed, so that nothing is cut that is not said.
 */
final class PermanentChanges {
  private static final String STRIP_OUT = "strip-out";
  private static final String SHIM = "shim-transmission";

  /** Operations that move or cut what is in the way, each with what it is about. */
  private static final Map<String, Set<ObstacleKind>> MAKES_ROOM = makesRoom();

  /** Stretches of a rail nearer to each other than this are one (mm). */
  private static final double ONE_STRETCH_MM = 25.4;

  private final JobPaper paper;
  private final PartWords words;
  private final List<RailFoot> left;
  private final List<RailFoot> right;

  PermanentChanges(JobPaper paper) {
    this.paper = paper;
    words = new PartWords(paper.draft().layout());
    left = feet(true);
    right = feet(false);
  }

  private static Map<String, Set<ObstacleKind>> makesRoom() {
    Map<String, Set<ObstacleKind>> operations = new LinkedHashMap<>();
    operations.put("relieve-bed-floor", EnumSet.of(ObstacleKind.BED_FLOOR));
    operations.put("move-exhaust", EnumSet.of(ObstacleKind.EXHAUST));
    operations.put("move-fuel-tank", EnumSet.of(ObstacleKind.TANK, ObstacleKind.FUEL_LINE));
    operations.put("move-running-board-support", EnumSet.of(ObstacleKind.RUNNING_BOARD_SUPPORT));
    operations.put(SHIM, EnumSet.noneOf(ObstacleKind.class));
    return operations;
  }

  private List<RailFoot> feet(boolean leftRail) {
    return RailFoot.of(
        paper.scene().assembly(), paper.draft().layout().chassis().rails(), leftRail);
  }

  /** What is cut, welded and moved, a sentence each. */
  List<String> made() {
    List<String> made = new ArrayList<>();
    if (stripsOut()) {
      made.add("The old rear suspension and its brackets are taken off frame and axle for good.");
    }
    notch().ifPresent(cut -> made.add(notched(cut)));
    add(made, PermanentChanges::closing, " closed (boxed) with welded plates ", this::stretches);
    add(made, PermanentChanges::standing, " ", this::welded);
    long onAxle =
        AxleFoot.of(paper.scene().assembly(), paper.draft().layout().chassis().axleCentre()).size();
    if (onAxle > 0) {
      made.add("Axle: " + Counts.of((int) onAxle, "plate") + " welded to the axle tube.");
    }
    made.addAll(room());
    return made;
  }

  /** Whether the old suspension comes off in this job. */
  boolean stripsOut() {
    return operation(STRIP_OUT).isPresent();
  }

  /** Whether plates are welded to the axle. */
  boolean onTheAxle() {
    return !AxleFoot.of(paper.scene().assembly(), paper.draft().layout().chassis().axleCentre())
        .isEmpty();
  }

  /** Whether plates close a rail somewhere beside its notch. */
  boolean boxes() {
    return Stream.concat(left.stream(), right.stream()).anyMatch(RailFoot::isBoxing);
  }

  /** What is moved or cut because it is in the way, a sentence each. */
  List<String> room() {
    List<String> room = new ArrayList<>();
    for (String key : MAKES_ROOM.keySet()) {
      operation(key).ifPresent(line -> room.add(sentence(line)));
    }
    return room;
  }

  private Optional<NotchCut> notch() {
    return NotchCut.of(paper.draft().layout(), paper.draft().linkageSite());
  }

  private String notched(NotchCut cut) {
    return "Both frame rails are notched over the axle: a piece "
        + length(cut.cutDepthMm())
        + " deep and "
        + length(cut.lengthMm())
        + " long is cut out of the underside, "
        + length(cut.keptMm())
        + " of the rail stay above it. Plates on both sides and a strip are welded in; "
        + length(cut.clearDepthMm())
        + " deep in the clear."
        + (cut.riseMm() > 0
            ? " The plates rise " + length(cut.riseMm()) + " above the rail's top."
            : "");
  }

  /** What is welded to both rails, in one sentence where it is the same on both. */
  private void add(
      List<String> made,
      Function<List<RailFoot>, List<RailFoot>> of,
      String done,
      Function<List<RailFoot>, String> where) {
    String onLeft = of.apply(left).isEmpty() ? "" : where.apply(of.apply(left));
    String onRight = of.apply(right).isEmpty() ? "" : where.apply(of.apply(right));
    if (onLeft.equals(onRight) && !onLeft.isEmpty()) {
      made.add("Frame, each rail:" + done + onLeft + ".");
      return;
    }
    if (!onLeft.isEmpty()) {
      made.add("Frame, left rail:" + done + onLeft + ".");
    }
    if (!onRight.isEmpty()) {
      made.add("Frame, right rail:" + done + onRight + ".");
    }
  }

  private static List<RailFoot> closing(List<RailFoot> feet) {
    return feet.stream().filter(RailFoot::closesTheRail).toList();
  }

  private static List<RailFoot> standing(List<RailFoot> feet) {
    return feet.stream().filter(foot -> !foot.closesTheRail()).toList();
  }

  private String welded(List<RailFoot> feet) {
    return Counts.of(feet.size(), "part")
        + " of brackets, seats and crossmembers welded on, "
        + stretch(rear(feet), front(feet));
  }

  /** Where plates lie along the rail, those that touch or overlap as one. */
  private String stretches(List<RailFoot> feet) {
    List<RailFoot> sorted = new ArrayList<>(feet);
    sorted.sort(Comparator.comparingDouble(RailFoot::rearMm));
    List<double[]> joined = new ArrayList<>();
    for (RailFoot foot : sorted) {
      double[] last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
      if (last != null && foot.rearMm() < last[1] + ONE_STRETCH_MM) {
        last[1] = Math.max(last[1], foot.frontMm());
      } else {
        joined.add(new double[] {foot.rearMm(), foot.frontMm()});
      }
    }
    return joined.stream().map(one -> stretch(one[0], one[1])).collect(Collectors.joining(" and "));
  }

  private String stretch(double rearMm, double frontMm) {
    boolean sameSide = rearMm < 0 == frontMm < 0;
    return "from "
        + (sameSide ? length(Math.abs(rearMm)) : shortly(rearMm))
        + " to "
        + fromAxle(frontMm);
  }

  private String fromAxle(double aheadMm) {
    return shortly(aheadMm) + (aheadMm < 0 ? "" : " of") + " the axle line";
  }

  private String shortly(double aheadMm) {
    return length(Math.abs(aheadMm)) + (aheadMm < 0 ? " behind" : " ahead");
  }

  private static double rear(List<RailFoot> feet) {
    return feet.stream().mapToDouble(RailFoot::rearMm).min().orElseThrow();
  }

  private static double front(List<RailFoot> feet) {
    return feet.stream().mapToDouble(RailFoot::frontMm).max().orElseThrow();
  }

  private Optional<OperationLine> operation(String key) {
    return paper.estimate().hours().lines().stream()
        .filter(line -> line.operation().key().equals(key))
        .findFirst();
  }

  private String sentence(OperationLine line) {
    String title = line.operation().title();
    return Character.toUpperCase(title.charAt(0))
        + title.substring(1)
        + ": "
        + words.in(line.why().in(paper.printer()))
        + ".";
  }

  private String length(double lengthMm) {
    return paper.printer().length(lengthMm);
  }

  /** What stays as it is, a sentence each. */
  List<String> left() {
    List<String> stays = new ArrayList<>();
    List<RailFoot> all = new ArrayList<>(left);
    all.addAll(right);
    if (!all.isEmpty()) {
      stays.add(
          "The frame beyond " + fromAxle(front(all)) + " and beyond " + fromAxle(rear(all)) + ".");
    }
    if (notch().isEmpty()) {
      stays.add("The section of both rails: no piece is cut out of them.");
    }
    Set<ObstacleKind> moved = EnumSet.noneOf(ObstacleKind.class);
    MAKES_ROOM.forEach((key, kinds) -> operation(key).ifPresent(line -> moved.addAll(kinds)));
    List<Obstacle> obstacles = paper.draft().job().measured().obstacles();
    String staying =
        obstacles.stream()
            .filter(one -> !moved.contains(one.kind()))
            .map(Obstacle::name)
            .collect(Collectors.joining(", "));
    if (!staying.isEmpty()) {
      stays.add("In their places: " + staying + ".");
    }
    stays.add(
        (operation(SHIM).isPresent() ? "Engine" : "Engine and transmission")
            + ", steering, front suspension, wheels and tyres, the axle's own gears and shafts.");
    addUnmeasured(stays, obstacles);
    return stays;
  }

  /** Nobody may read out of silence that there is room where nothing was measured. */
  private static void addUnmeasured(List<String> stays, List<Obstacle> obstacles) {
    Map<ObstacleKind, String> usual = new LinkedHashMap<>();
    usual.put(ObstacleKind.EXHAUST, "exhaust");
    usual.put(ObstacleKind.TANK, "fuel tank");
    usual.put(ObstacleKind.BED_FLOOR, "floor over the axle");
    obstacles.forEach(one -> usual.remove(one.kind()));
    if (!usual.isEmpty()) {
      stays.add(
          "Not measured, so neither checked nor priced: "
              + String.join(", ", usual.values())
              + ". What proves to be in the way is quoted before it is moved.");
    }
  }
}
