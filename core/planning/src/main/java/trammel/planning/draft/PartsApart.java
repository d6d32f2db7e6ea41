package trammel.planning.draft;

import static trammel.engine.quantity.Amount.length;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import trammel.assembly.Assembly;
import trammel.assembly.fit.Interference;
import trammel.assembly.fit.Overlap;
import trammel.brackets.UnworkableLayoutException;
import trammel.engine.checks.Adjustment;
import trammel.engine.checks.Detail;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Measure;
import trammel.engine.checks.Reading;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Direction;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;
import trammel.engine.layout.Travel;
import trammel.engine.motion.AxlePose;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.PlanCheck;
import trammel.planning.vehicle.BodyPlaces;
import trammel.planning.vehicle.FinishedVehicle;

/**
 * How many pairs of parts of the finished vehicle stand in each other, at ride or with each wheel
 * at an end of its travel: a shock's bracket in the seat of an air spring, the leg of a crossmember
 * in the bracket of a lateral bar, a tyre in an outrigger. Each part by itself can be cut and
 * welded, and the job still cannot be built or driven so.
 */
final class PartsApart implements CatalogCheck {
  /** A wheel this near to the end of its travel is there. */
  private static final double END_MM = 0.5;

  private final JobWork planning;
  private final Catalog catalog;

  PartsApart(JobWork planning, Catalog catalog) {
    this.planning = planning;
    this.catalog = catalog;
  }

  @Override
  public PlanCheck check() {
    return PlanCheck.PARTS_APART;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    try {
      List<AxlePose> ends = ends(analysis);
      List<Overlap> overlaps = overlaps(analysis.layout(), ends);
      List<String> where = ends.stream().map(pose -> ", " + analysis.describe(pose)).toList();
      return new Reading.Value(
          overlaps.size(),
          overlaps.isEmpty() ? Phrase.NONE : first(overlaps.get(0), where),
          overlaps.stream().skip(1).map(overlap -> detail(overlap, where)).toList());
    } catch (UnworkableLayoutException cannot) {
      return new Reading.NotApplicable("what cannot be made stands nowhere");
    }
  }

  /** The poses with each wheel at full bump or at full droop. */
  private static List<AxlePose> ends(LayoutAnalysis analysis) {
    Chassis chassis = analysis.layout().chassis();
    Travel travel = chassis.travel();
    List<AxlePose> ends = new ArrayList<>(4);
    for (AxlePose pose : analysis.envelope()) {
      double halfMm = chassis.axle().trackMm() / 2 * Math.sin(pose.rollRad());
      if (isEnd(pose.heaveMm() + halfMm, travel) && isEnd(pose.heaveMm() - halfMm, travel)) {
        ends.add(pose);
      }
    }
    return ends;
  }

  private static boolean isEnd(double wheelMm, Travel travel) {
    return wheelMm > travel.bumpMm() - END_MM || wheelMm < END_MM - travel.droopMm();
  }

  private List<Overlap> overlaps(Layout layout, List<AxlePose> ends) {
    Assembly assembly = FinishedVehicle.of(layout, catalog, planning.of(layout));
    return Interference.of(
        assembly, ends.stream().map(pose -> BodyPlaces.of(layout, pose)).toList());
  }

  private static String words(Overlap overlap, List<String> where) {
    return overlap.one()
        + " and "
        + overlap.other()
        + (overlap.pose() == Overlap.AT_RIDE ? "" : where.get(overlap.pose()));
  }

  private static Phrase first(Overlap overlap, List<String> where) {
    return Phrase.of("{}, {} deep", words(overlap, where), length(overlap.depthMm()));
  }

  private static Detail detail(Overlap overlap, List<String> where) {
    return new Detail(words(overlap, where) + ":", Measure.LENGTH, overlap.depthMm());
  }

  @Override
  public String advice() {
    return "The layout cannot be built so. Set an option of one of the two parts that are named:"
        + " placement, across, lean or lower_height for springs and shocks, lateral_behind for a"
        + " lateral bar, upper_rise or rail_gap for bars.";
  }

  /** Moves of the bars, springs and shocks whose parts meet. */
  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    Layout layout = analysis.layout();
    Set<Adjustment> moves = new LinkedHashSet<>();
    for (Overlap overlap : overlaps(layout, ends(analysis))) {
      addMoves(moves, layout, overlap.one());
      addMoves(moves, layout, overlap.other());
    }
    return new ArrayList<>(moves);
  }

  private static void addMoves(Set<Adjustment> moves, Layout layout, String part) {
    for (Bar bar : layout.bars()) {
      if (part.contains(bar.name())) {
        Set<String> alike = layout.alike(bar).stream().map(Bar::name).collect(Collectors.toSet());
        End end = part.contains("axle") ? End.AXLE : End.FRAME;
        moves.add(new Adjustment.MoveEnds(alike, end, Direction.FORWARD));
        moves.add(new Adjustment.MoveEnds(alike, end, Direction.UP));
        moves.add(new Adjustment.MoveEnds(alike, end, Direction.OUTBOARD));
      }
    }
    if (part.startsWith("shock") || part.startsWith("coil-over")) {
      Set<String> shocks =
          layout.shocks().stream().map(ShockUnit::name).collect(Collectors.toSet());
      layout.springs().stream()
          .map(SpringUnit::name)
          .filter(name -> part.startsWith("coil-over"))
          .forEach(shocks::add);
      End end = part.contains("lower") ? End.AXLE : End.FRAME;
      moves.add(new Adjustment.MoveEnds(shocks, end, Direction.OUTBOARD));
      moves.add(new Adjustment.MoveEnds(shocks, end, Direction.FORWARD));
    }
  }
}
