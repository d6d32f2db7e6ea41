package trammel.app.drawings;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import trammel.app.drawings.Paper.Anchor;
import trammel.app.drawings.SheetTable.Column;
import trammel.assembly.Place;
import trammel.assembly.PlacedPart;
import trammel.assembly.SeamRun;
import trammel.assembly.view.PlaneCut;
import trammel.brackets.work.VehicleParts;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Rails;
import trammel.planning.fitup.Bracket;
import trammel.planning.fitup.Datum;
import trammel.planning.fitup.PartSpan;
import trammel.planning.vehicle.NotchCut;
import trammel.trade.welding.SkipSequence;
import trammel.trade.welding.WeldSeam;

/**
 * What is cut out of a rail and what closes it again: the cut by itself, its plates in place, a
 * section over the axle, and the steps in which long seams are welded.
 */
final class RailNotchSheet {
  /** Pictures are made so much smaller at most for the tables under them. */
  private static final double SMALLER = 1.6;

  private static final double ORDINATES_MM = 18;
  private static final double VALUES_MM = 17;
  private static final double GAP_MM = 6;
  private static final double LETTERS_MM = 2.3;

  /** A cut that is lower on the paper has its radius in its heading. */
  private static final double ROOM_FOR_LETTERS_MM = 5;

  private static final double HATCH_MM = 1.6;
  private static final double STEPS_MM = 72;

  /** What is cut out, on the side of the line that goes. */
  private static final String WASTE = "WASTE";

  private static final double ABOUT_MM = 40;

  /** Hatching of parts that meet runs two ways (ISO 128-3). */
  private static final double[] HATCH_DEG = {45, 135, 30, 120, 60, 150};

  private final ShopJob job;
  private final boolean left;
  private final Datum datum;
  private final List<PartSpan> closing;
  private final Rails rails;
  private final Vector3 forward;
  private final double ahead;

  RailNotchSheet(ShopJob job, boolean left, Datum datum, List<PartSpan> closing) {
    this.job = job;
    this.left = left;
    this.datum = datum;
    this.closing = closing;
    rails = job.layout().chassis().rails();
    forward = datum.out().cross(datum.up());
    ahead = Math.signum(forward.dot(datum.along()));
  }

  /** Empty where nothing is cut, closed or bolted. */
  List<SheetPage> pages(String title) {
    List<SheetTable> tables = new ArrayList<>();
    job.notch().ifPresent(cut -> tables.add(cutTable(cut)));
    tables.add(closingTable());
    tables.removeIf(SheetTable::isEmpty);
    if (tables.isEmpty()) {
      return List.of();
    }
    int largest = job.notch().map(this::oneTo).orElse(1);
    int oneTo = job.notch().map(cut -> oneToWith(tables, largest)).orElse(1);
    double fromY = fromMm(oneTo);
    TableFlow flow = flow(tables, fromY);
    List<SheetPage> pages = new ArrayList<>();
    pages.add(
        new SheetPage(
            "cuts and plates, " + title,
            job.notch().isPresent() ? "1 : " + oneTo : "-",
            notes(),
            paper -> {
              job.notch().ifPresent(cut -> pictures(paper, cut, oneTo));
              flow.drawOn(paper, 0);
              steps(paper, ShopSheet.rightMm(job.units()) - STEPS_MM, fromY);
            }));
    for (int page = 1; page < flow.pages(); page++) {
      int number = page;
      pages.add(
          new SheetPage("plates, " + title, "-", notes(), paper -> flow.drawOn(paper, number)));
    }
    return pages;
  }

  private TableFlow flow(List<SheetTable> tables, double fromY) {
    TableFlow flow =
        new TableFlow(
                ShopSheet.LEFT_MM,
                ShopSheet.rightMm(job.units()),
                ShopSheet.TOP_MM,
                ShopSheet.bottomMm(job.units()))
            .from(ShopSheet.LEFT_MM, fromY);
    tables.forEach(flow::add);
    return flow;
  }

  /**
   * Pictures a little smaller where the tables then end on their sheet: a row or two by themselves
   * on the next are overlooked.
   */
  private int oneToWith(List<SheetTable> tables, int largest) {
    int oneTo = largest;
    while (oneTo < SMALLER * largest && flow(tables, fromMm(oneTo)).pages() > 1) {
      oneTo = ShopSheet.oneTo(job.units(), oneTo + 0.5);
    }
    return flow(tables, fromMm(oneTo)).pages() > 1 ? largest : oneTo;
  }

  private double fromMm(int oneTo) {
    return job.notch().isPresent() ? tablesMm(oneTo) : ShopSheet.TOP_MM;
  }

  /** Where the tables begin under the pictures (mm). */
  private double tablesMm(int oneTo) {
    return ShopSheet.TOP_MM
        + LETTERS_MM
        + 2
        + (highMm() - lowMm()) / oneTo
        + ORDINATES_MM
        + GAP_MM / 2;
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    notes.add(
        "Brace the frame. One rail at a time: cut, fit and weld its plates before the other is"
            + " cut. Sizes from the axle mark and the underside, before anything is welded on.");
    notes.add("Fuel and brake lines out of the way; battery off; work by a qualified welder.");
    return notes;
  }

  private double halfWindowMm() {
    double plateMm =
        closing.stream()
            .filter(span -> span.part().name().equals(VehicleParts.NOTCH_SIDE_PLATE))
            .mapToDouble(span -> span.to().x())
            .max()
            .orElse(0);
    return plateMm + ABOUT_MM;
  }

  private double halfCutWindowMm(NotchCut cut) {
    return cut.reachMm() + 1.5 * ABOUT_MM;
  }

  private double sectionMm() {
    return rails.flangeMm() + 2 * ABOUT_MM;
  }

  private double lowMm() {
    return -ABOUT_MM;
  }

  private double highMm() {
    return rails.depthMm() + rails.notchRiseMm() + ABOUT_MM / 2;
  }

  private int oneTo(NotchCut cut) {
    double roomX = ShopSheet.rightMm(job.units()) - ShopSheet.LEFT_MM - 3 * VALUES_MM - 2 * GAP_MM;
    double acrossMm = 2 * halfCutWindowMm(cut) + 2 * halfWindowMm() + sectionMm();
    double roomY = 58;
    return ShopSheet.oneTo(job.units(), Math.max(acrossMm / roomX, (highMm() - lowMm()) / roomY));
  }

  /** A place by its readings along and up, as the view of the outer face has it. */
  private Point3 at(double alongMm, double upMm) {
    return new Point3(ahead * alongMm, 0, upMm);
  }

  /** The three pictures side by side. */
  private void pictures(Paper paper, NotchCut cut, int oneTo) {
    double scale = 1.0 / oneTo;
    double y = ShopSheet.TOP_MM + LETTERS_MM + 2;
    double x = ShopSheet.LEFT_MM + 1;
    double half = halfCutWindowMm(cut);
    ViewWindow cutOnly = window(half, scale, x, y);
    cutPicture(paper, cut, cutOnly);
    x += cutOnly.widthMm() + VALUES_MM + GAP_MM;
    ViewWindow plated = window(halfWindowMm(), scale, x, y);
    platedPicture(paper, plated);
    x += plated.widthMm() + VALUES_MM + GAP_MM;
    section(paper, x, y, scale);
  }

  private ViewWindow window(double half, double scale, double x, double y) {
    return new ViewWindow(Viewpoint.SIDE, -half, half, lowMm(), highMm(), scale, x, y);
  }

  private VehicleScene scene(Set<String> ids) {
    return PartScene.of(job.assembly(), ids, Place.of(datum.origin(), forward, datum.out()));
  }

  private void datums(Paper paper, ViewWindow window, String name) {
    double right = window.paperX() + window.widthMm();
    double bottom = window.paperY() + window.heightMm();
    Point3 mark = at(0, 0);
    paper.line(window.x(mark), window.paperY(), window.x(mark), bottom, Pen.DATUM);
    paper.line(window.paperX(), window.y(mark), right, window.y(mark), Pen.DATUM);
    paper.text(window.paperX(), window.paperY() - 1.5, LETTERS_MM, Anchor.START, name);
  }

  private void cutPicture(Paper paper, NotchCut cut, ViewWindow window) {
    String radius = "R " + job.length(cut.radiusMm());
    boolean isRoomy =
        Math.abs(window.y(at(0, cut.cutDepthMm())) - window.y(at(0, 0))) > ROOM_FOR_LETTERS_MM;
    datums(
        paper,
        window,
        "THE CUT, "
            + (isRoomy ? "" : radius + ", waste below it, ")
            + "outer face, front "
            + (ahead > 0 ? "left" : "right"));
    new SceneEdges(scene(Set.of(VehicleParts.rail(left))), window).drawOn(paper);
    double right = window.paperX() + window.widthMm();
    double bottom = window.paperY() + window.heightMm();
    Ordinates along = new Ordinates();
    Ordinates heights = new Ordinates();
    along.add(window.x(at(0, 0)), bottom, "axle mark");
    for (double end : new double[] {-cut.reachMm(), cut.reachMm()}) {
      along.add(window.x(at(end, 0)), window.y(at(end, 0)), job.length(end));
    }
    heights.add(window.y(at(0, 0)), right, "0");
    heights.add(
        window.y(at(0, cut.cutDepthMm())), window.x(at(0, 0)), job.length(cut.cutDepthMm()));
    heights.add(window.y(at(0, rails.depthMm())), window.x(at(0, 0)), job.length(rails.depthMm()));
    along.below(paper, bottom, window.paperX(), right);
    heights.beside(paper, right, window.paperY(), bottom);
    if (isRoomy) {
      double left = window.x(at(0, 0)) + 1;
      paper.text(left, window.y(at(0, 0)) - 1.5, LETTERS_MM, Anchor.START, radius);
      paper.text(left, window.y(at(0, cut.cutDepthMm() / 2)), LETTERS_MM, Anchor.START, WASTE);
    }
  }

  private void platedPicture(Paper paper, ViewWindow window) {
    datums(paper, window, "PLATES IN PLACE, outer face");
    Set<String> ids = new HashSet<>(Set.of(VehicleParts.rail(left)));
    closing.stream()
        .filter(span -> span.part().name().startsWith(VehicleParts.NOTCH_SIDE_PLATE))
        .forEach(span -> ids.add(span.part().id()));
    new SceneEdges(scene(ids), window).drawOn(paper);
    double right = window.paperX() + window.widthMm();
    double bottom = window.paperY() + window.heightMm();
    Ordinates along = new Ordinates();
    Ordinates heights = new Ordinates();
    along.add(window.x(at(0, 0)), bottom, "axle mark");
    heights.add(window.y(at(0, 0)), right, "0");
    for (PartSpan span : closing) {
      if (ids.contains(span.part().id())) {
        for (double end : new double[] {span.from().x(), span.to().x()}) {
          along.add(window.x(at(end, 0)), window.y(at(end, 0)), job.length(end));
        }
        heights.add(window.y(at(0, span.to().y())), window.x(at(0, 0)), job.length(span.to().y()));
      }
    }
    along.below(paper, bottom, window.paperX(), right);
    heights.beside(paper, right, window.paperY(), bottom);
  }

  /** The rail cut across over the axle, looked at from behind. */
  private void section(Paper paper, double x, double y, double scale) {
    double outwards = left ? 1 : -1;
    double innerMm = -rails.flangeMm() - ABOUT_MM;
    double outerMm = ABOUT_MM;
    Vector3 across = datum.out().scaled(-outwards);
    ViewWindow window =
        new ViewWindow(
            Viewpoint.REAR,
            left ? -outerMm : innerMm,
            left ? -innerMm : outerMm,
            lowMm(),
            highMm(),
            scale,
            x,
            y);
    paper.text(x, y - 1.5, LETTERS_MM, Anchor.START, "SECTION over the axle, from behind");
    Place into =
        PartScene.inverse(
            Place.of(datum.origin(), across.cross(datum.up()).scaled(-1), across.scaled(-1)));
    List<String> ids = new ArrayList<>(List.of(VehicleParts.rail(left)));
    closing.forEach(span -> ids.add(span.part().id()));
    double right = x + window.widthMm();
    double bottom = y + window.heightMm();
    Ordinates heights = new Ordinates();
    Ordinates outs = new Ordinates();
    heights.add(window.downPaper(0), right, "0");
    paper.line(x, window.downPaper(0), right, window.downPaper(0), Pen.DATUM);
    double faceX = window.acrossPaper(0);
    paper.line(faceX, y, faceX, bottom, Pen.DATUM);
    outs.add(faceX, bottom, "outer face");
    Strokes strokes = new Strokes(paper);
    int number = 0;
    for (String id : ids) {
      PlacedPart part = job.assembly().part(id).orElseThrow();
      PlaneCut cut =
          new PlaneCut(
              part.solid().mesh().placed(into.after(part.place())), Viewpoint.REAR.eye(), 0);
      if (cut.outline().isEmpty()) {
        continue;
      }
      cut.outline().forEach(piece -> add(strokes, window, piece, Pen.OUTLINE));
      double rad = Math.toRadians(HATCH_DEG[number++ % HATCH_DEG.length]);
      cut.hatching(HATCH_MM / scale, rad).forEach(line -> add(strokes, window, line, Pen.FINE));
      double low = cut.outline().stream().mapToDouble(PlaneCut.Segment::fromY).min().orElse(0);
      double high = cut.outline().stream().mapToDouble(PlaneCut.Segment::fromY).max().orElse(0);
      double least = cut.outline().stream().mapToDouble(PlaneCut.Segment::fromX).min().orElse(0);
      double most = cut.outline().stream().mapToDouble(PlaneCut.Segment::fromX).max().orElse(0);
      heights.add(window.downPaper(low), window.acrossPaper(most), job.length(low));
      heights.add(window.downPaper(high), window.acrossPaper(most), job.length(high));
      for (double edge : new double[] {least, most}) {
        if (Math.abs(edge) > 0.05) {
          outs.add(window.acrossPaper(edge), window.downPaper(low), job.length(-outwards * edge));
        }
      }
    }
    strokes.draw();
    heights.beside(paper, right, y, bottom);
    outs.below(paper, bottom, x, right);
  }

  private static void add(Strokes strokes, ViewWindow window, PlaneCut.Segment piece, Pen pen) {
    strokes.add(
        window.acrossPaper(piece.fromX()),
        window.downPaper(piece.fromY()),
        window.acrossPaper(piece.toX()),
        window.downPaper(piece.toY()),
        pen);
  }

  private SheetTable cutTable(NotchCut cut) {
    SheetTable table =
        new SheetTable(
            "THE NOTCH", List.of(Column.words("of the cut", 70), Column.number("size", 18)));
    table.row("depth, up from the underside", job.length(cut.cutDepthMm()));
    table.row("length along the underside", job.length(cut.lengthMm()));
    table.row("ahead of the axle mark", job.length(cut.reachMm()));
    table.row("behind the axle mark", job.length(cut.reachMm()));
    table.row("radius", job.length(cut.radiusMm()));
    table.row(
        "middle of the radius, up from the underside",
        job.length(cut.cutDepthMm() - cut.radiusMm()));
    table.row("rail that stays above the cut", job.length(cut.keptMm()));
    table.row("strip, thick", job.length(cut.stripMm()));
    table.row("deep in the clear, strip in place", job.length(cut.clearDepthMm()));
    return table;
  }

  /** What closes the rail, plate by plate from the rail's own datums. */
  private SheetTable closingTable() {
    SheetTable table = spans("PLATES OF THIS RAIL");
    for (int i = 0; i < closing.size(); i++) {
      row(table, Integer.toString(i + 1), closing.get(i));
    }
    return table;
  }

  private static SheetTable spans(String title) {
    return new SheetTable(
        title,
        List.of(
            Column.words("", 6),
            Column.words("plate", 38),
            Column.number("rear", 14.5),
            Column.number("front", 14.5),
            Column.number("lower", 14.5),
            Column.number("upper", 14.5),
            Column.number("inner", 14.5),
            Column.number("outer", 14.5),
            Column.words("top of its drawing", 18),
            Column.words("drawn face", 18)));
  }

  private void row(SheetTable table, String mark, PartSpan span) {
    table.row(
        mark,
        Bracket.withoutSide(span.part().id()),
        job.length(span.from().x()),
        job.length(span.to().x()),
        job.length(span.from().y()),
        job.length(span.to().y()),
        job.length(span.from().z()),
        job.length(span.to().z()),
        span.top().words(),
        span.face().words());
  }

  /** Each long seam of this rail as a bar of steps, numbered in the order of welding. */
  private void steps(Paper paper, double x, double fromY) {
    Set<String> own = new HashSet<>();
    closing.forEach(span -> own.add(span.part().id()));
    List<WeldSeam> seams =
        job.plan().welds().stream()
            .filter(seam -> seam.starts() > 1)
            .filter(seam -> part(seam).filter(own::contains).isPresent())
            .toList();
    if (seams.isEmpty()) {
      return;
    }
    double y = fromY + 2.9;
    paper.text(x, y, LETTERS_MM + 0.3, Anchor.START, "STEPS OF LONG SEAMS, rear to front");
    y += 3.2;
    paper.text(x, y, LETTERS_MM, Anchor.START, "pull each step from its front end to the rear");
    for (WeldSeam seam : seams) {
      double lengthMm = seam.lengthMm();
      List<SkipSequence.Step> steps = new SkipSequence(lengthMm, lengthMm / seam.starts()).steps();
      String text =
          Bracket.withoutSide(seam.name())
              + ", "
              + job.length(lengthMm)
              + " each, steps of "
              + job.length(lengthMm / steps.size());
      for (String line : Paper.lines(text, LETTERS_MM, STEPS_MM)) {
        y += 3.2;
        paper.text(x, y, LETTERS_MM, Anchor.START, line);
      }
      y += 1.2;
      double widthMm = Math.min(8, STEPS_MM / steps.size());
      for (SkipSequence.Step step : steps) {
        double at = x + widthMm * steps.size() * step.toMm() / lengthMm;
        paper.frame(at, y, widthMm, 4.4, Pen.FRAME);
        paper.text(
            at + widthMm / 2, y + 3.1, LETTERS_MM, Anchor.MIDDLE, Integer.toString(step.order()));
      }
      y += 6.4;
    }
  }

  private static Optional<String> part(WeldSeam seam) {
    return seam.runs().get(0) instanceof SeamRun run
        ? Optional.of(run.parts().get(0))
        : Optional.empty();
  }
}
