package trammel.engine.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import trammel.engine.clearance.LeastGap;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Direction;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;

/** Least gap of a group of parts over the travel; what is joined is left out. */
record Clearance(String id, String title, ClearanceGroup group) implements Check {
  private static final String ASSUMED =
      "; the housing is taken at its usual radius, give measured.axle.housing_radius";

  @Override
  public Measure measure() {
    return Measure.LENGTH;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    Optional<LeastGap> tightest = analysis.clearances().tightest(group);
    if (tightest.isEmpty()) {
      return new Reading.NotApplicable("nothing is there that could be in the way");
    }
    LeastGap least = tightest.get();
    String where = analysis.clearances().where(least);
    return new Reading.Value(least.gap().gapMm(), isAssumed(analysis) ? where + ASSUMED : where);
  }

  private boolean isAssumed(LayoutAnalysis analysis) {
    return group == ClearanceGroup.HOUSING
        && analysis.layout().chassis().axle().housingRadiusMm().isEmpty();
  }

  /** Every pair that touches, where more than one does. */
  @Override
  public List<Detail> details(LayoutAnalysis analysis) {
    List<LeastGap> touching = analysis.clearances().touching(group);
    if (touching.size() < 2) {
      return List.of();
    }
    return touching.stream()
        .map(
            one ->
                new Detail(
                    analysis.clearances().where(one) + ":", Measure.LENGTH, one.gap().gapMm()))
        .toList();
  }

  @Override
  public String advice() {
    return switch (group) {
      case FUEL ->
          "Move the tank or line, with its straps and shield, clear of all that moves and name"
              + " it in chosen.moved_away; or measure it again where it will be.";
      case MOVED_AWAY ->
          "Move it and name it in chosen.moved_away, so that the plan counts the work; or measure it"
              + " again where it will be.";
      case TYRE ->
          "Take a wheel with more offset or a narrower tyre, move what the tyre comes close to, or"
              + " give it less bump.";
      case FRAME, BETWEEN, HOUSING -> "";
    };
  }

  /** Moves of the ends at which the two parts come closest, with their twins. */
  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    List<Adjustment> adjustments = new ArrayList<>();
    Optional<LeastGap> tightest = analysis.clearances().tightest(group);
    if (group == ClearanceGroup.MOVED_AWAY || group == ClearanceGroup.FUEL || tightest.isEmpty()) {
      return adjustments;
    }
    LeastGap least = tightest.get();
    Layout layout = analysis.layout();
    addMoves(adjustments, layout, least.pair().first().name(), least.gap().onFirst());
    addMoves(adjustments, layout, least.pair().second().name(), least.gap().onSecond());
    adjustments.add(new Adjustment.ChangeBump());
    return adjustments;
  }

  private static void addMoves(
      List<Adjustment> adjustments, Layout layout, String part, Point3 nearest) {
    Optional<Bar> bar = layout.bar(part);
    if (bar.isPresent()) {
      addMovesOfBars(adjustments, layout, bar.get(), nearest);
      return;
    }
    Set<String> springs = Names.ofSprings(layout.springs(), layout.shocks());
    Set<String> shocks = Names.ofShocks(layout.shocks(), layout.springs());
    Set<String> mounted = springs.contains(part) ? springs : shocks;
    if (mounted.contains(part)) {
      adjustments.add(new Adjustment.MoveEnds(mounted, End.AXLE, Direction.OUTBOARD));
      adjustments.add(new Adjustment.MoveEnds(mounted, End.AXLE, Direction.FORWARD));
    }
  }

  private static void addMovesOfBars(
      List<Adjustment> adjustments, Layout layout, Bar bar, Point3 nearest) {
    Set<String> names = Names.of(layout.alike(bar));
    boolean atFrame = nearest.distanceMm(bar.frame()) < nearest.distanceMm(bar.axle());
    End end = atFrame ? End.FRAME : End.AXLE;
    adjustments.add(new Adjustment.MoveEnds(names, end, Direction.OUTBOARD));
    adjustments.add(new Adjustment.MoveEnds(names, end, Direction.UP));
    if (bar.isAcross()) {
      adjustments.add(new Adjustment.MoveEnds(names, end, Direction.FORWARD));
    }
  }
}
