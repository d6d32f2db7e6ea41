package trammel.app.drawings;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trammel.app.drawings.Paper.Anchor;
import trammel.app.drawings.SheetTable.Column;
import trammel.assembly.Mate;
import trammel.assembly.PartKind;
import trammel.assembly.Place;
import trammel.assembly.PlacedPart;
import trammel.brackets.work.VehicleParts;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.planning.fitup.Bracket;
import trammel.planning.fitup.Datum;
import trammel.planning.fitup.PartSpan;
import trammel.planning.fitup.RailFoot;

/**
 * The sheets of one rail: what is set where on its outer and on its inner face, from the axle mark
 * and the underside; then the notch with its plates, what closes the rail, and the order of welds.
 */
final class RailSheets {
  private static final double ORDINATES_MM = 18;
  private static final double VALUES_MM = 17;
  private static final double GAP_MM = 5;
  private static final double AIR_MM = 25;
  private static final double LETTERS_MM = 2.3;
  private static final double LABEL_MM = 3;

  /** What a view takes above and below itself (mm). */
  private static final double ROUND_A_VIEW_MM = Balloons.ROW_MM + LABEL_MM + ORDINATES_MM;

  private static final double APART_MM = 3.5;

  /** What stands on the rail is drawn so far above it (mm). */
  private static final double ABOVE_MM = 45;

  private static final double TABLES_MM = 110;

  private final ShopJob job;
  private final boolean left;
  private final Datum datum;
  private final List<RailFoot> feet;
  private final List<PartSpan> closing;
  private final Map<String, String> marks = new LinkedHashMap<>();
  private final Set<String> shown = new HashSet<>();

  RailSheets(ShopJob job, boolean left) {
    this.job = job;
    this.left = left;
    datum = Datum.rail(job.assembly(), left);
    feet = RailFoot.of(job.assembly(), job.layout().chassis().rails(), left);
    closing = Bracket.closing(job.assembly(), left);
    collect();
  }

  /** What is drawn on this rail, and its marks: brackets by their letters, plates by numbers. */
  private void collect() {
    shown.add(VehicleParts.rail(left));
    Map<String, String> letters = job.letters();
    for (Map.Entry<String, Bracket> bracket : job.brackets()) {
      if (bracket.getValue().datum().kind() == datum.kind()) {
        ShopJob.ids(bracket.getValue()).forEach(shown::add);
      }
    }
    for (int i = 0; i < closing.size(); i++) {
      marks.put(closing.get(i).part().id(), Integer.toString(i + 1));
      shown.add(closing.get(i).part().id());
    }
    for (RailFoot foot : feet) {
      shown.add(foot.part());
      marks.computeIfAbsent(foot.part(), id -> letters.getOrDefault(id, ""));
    }
    stops().forEach(stop -> shown.add(stop.id()));
  }

  /** Bought parts that are held to the rail or to what lines it. */
  private List<PlacedPart> stops() {
    Set<String> rail = new HashSet<>(Set.of(VehicleParts.rail(left)));
    closing.forEach(span -> rail.add(span.part().id()));
    return job.assembly().mates().stream()
        .filter(mate -> mate.kind() == Mate.Kind.IN_CONTACT && rail.contains(mate.onto()))
        .map(mate -> job.assembly().part(mate.part()).orElseThrow())
        .filter(part -> part.kind() == PartKind.BOUGHT)
        .distinct()
        .toList();
  }

  /** The letter or number by which each part on this rail is marked. */
  Map<String, String> marks() {
    return Collections.unmodifiableMap(marks);
  }

  private String title() {
    return (left ? "left" : "right") + " rail of";
  }

  /** One face of the rail as it is looked at, square. */
  private final class FaceView {
    private final boolean outer;
    private final VehicleScene scene;
    private final double ahead;

    FaceView(boolean outer) {
      this.outer = outer;
      Vector3 towards = outer ? datum.out() : datum.out().scaled(-1);
      Vector3 forward = towards.cross(datum.up());
      ahead = Math.signum(forward.dot(datum.along()));
      scene = PartScene.of(job.assembly(), shown, Place.of(datum.origin(), forward, towards));
    }

    /** A place by its readings along and up, as the view has it. */
    Point3 at(double alongMm, double upMm) {
      return new Point3(ahead * alongMm, 0, upMm);
    }

    LineReach reach() {
      return LineReach.of(
          scene.lines(Viewpoint.SIDE).stream()
              .filter(line -> !line.id().equals(VehicleParts.rail(left)))
              .toList());
    }

    ViewWindow window(
        double aheadMm,
        double behindMm,
        double lowMm,
        double highMm,
        double scale,
        double x,
        double y) {
      double from = ahead > 0 ? -aheadMm : behindMm;
      double to = ahead > 0 ? -behindMm : aheadMm;
      return new ViewWindow(Viewpoint.SIDE, from, to, lowMm, highMm, scale, x, y);
    }

    boolean shows(RailFoot foot) {
      boolean inner =
          foot.face() == RailFoot.Face.INNER || foot.face() == RailFoot.Face.UNDERSIDE_AND_INNER;
      return outer != inner;
    }

    /** Height that the view takes, or that the values beside it do, if that is more (mm). */
    double bandMm(double windowMm) {
      Set<String> values = new HashSet<>();
      for (RailFoot foot : feet) {
        if (shows(foot)) {
          values.add(job.length(foot.lowerMm()));
          values.add(job.length(foot.upperMm()));
        }
      }
      return Math.max(windowMm, (values.size() + 1) * APART_MM);
    }

    void draw(Paper paper, ViewWindow window) {
      double right = window.paperX() + window.widthMm();
      double bottom = window.paperY() + bandMm(window.heightMm());
      Point3 mark = at(0, 0);
      paper.line(window.x(mark), window.paperY(), window.x(mark), bottom, Pen.DATUM);
      paper.line(window.paperX(), window.y(mark), right, window.y(mark), Pen.DATUM);
      new SceneEdges(scene, window).drawOn(paper);
      ordinates(paper, window, bottom);
      Balloons balloons = new Balloons(scene, List.of(window));
      Map<String, List<String>> byMark = new LinkedHashMap<>();
      for (RailFoot foot : feet) {
        if (shows(foot)) {
          byMark.computeIfAbsent(marks.get(foot.part()), m -> new ArrayList<>()).add(foot.part());
        }
      }
      byMark.forEach(balloons::mark);
      balloons.drawOn(paper);
      label(paper, window);
    }

    private void ordinates(Paper paper, ViewWindow window, double bottom) {
      double right = window.paperX() + window.widthMm();
      Ordinates along = new Ordinates();
      Ordinates heights = new Ordinates();
      along.add(window.x(at(0, 0)), bottom, "axle mark");
      heights.add(window.y(at(0, 0)), right, "0 underside");
      for (RailFoot foot : feet) {
        if (shows(foot)) {
          for (double edge : new double[] {foot.rearMm(), foot.frontMm()}) {
            Point3 low = at(edge, foot.lowerMm());
            along.add(window.x(low), window.y(low), job.length(edge));
          }
          for (double edge : new double[] {foot.lowerMm(), foot.upperMm()}) {
            Point3 rear = at(ahead > 0 ? foot.rearMm() : foot.frontMm(), edge);
            if (!job.length(edge).equals(job.length(0))) {
              heights.add(window.y(rear), window.x(rear), job.length(edge));
            }
          }
        }
      }
      along.below(paper, bottom, window.paperX(), right);
      heights.beside(paper, right, window.paperY(), bottom);
    }

    private void label(Paper paper, ViewWindow window) {
      String face = outer ? "OUTER FACE" : "INNER FACE";
      boolean frontLeft = ahead > 0;
      double y = window.paperY() - Balloons.ROW_MM;
      String text = frontLeft ? "< FRONT   " + face : face + "   FRONT >";
      Anchor anchor = frontLeft ? Anchor.START : Anchor.END;
      double x = frontLeft ? window.paperX() : window.paperX() + window.widthMm();
      paper.text(x, y, LETTERS_MM + 0.3, anchor, text);
    }
  }

  List<SheetPage> pages() {
    Elevations elevations = new Elevations();
    TableFlow flow =
        new TableFlow(
            ShopSheet.LEFT_MM,
            ShopSheet.rightMm(job.units()),
            ShopSheet.TOP_MM - 2,
            ShopSheet.bottomMm(job.units()));
    if (elevations.sheets.size() > 1) {
      flow.twice();
    }
    flow.from(ShopSheet.rightMm(job.units()) - TABLES_MM, ShopSheet.TOP_MM - 2)
        .add(feetTable())
        .add(zeroTable())
        .add(stopsTable());
    List<SheetPage> pages = new ArrayList<>(elevations.pages(flow));
    for (int page = pages.size(); page < flow.pages(); page++) {
      int number = page;
      pages.add(
          new SheetPage("table, " + title(), "-", notes(), paper -> flow.drawOn(paper, number)));
    }
    pages.addAll(new RailNotchSheet(job, left, datum, closing).pages(title()));
    return pages;
  }

  /** Both faces on one sheet; where their values take too much room, a sheet each. */
  private final class Elevations {
    private final double frontMm;
    private final double rearMm;
    private final double lowMm;
    private final double highMm;
    private final double windowMm;
    private final int oneTo;
    private final List<List<FaceView>> sheets;

    Elevations() {
      List<FaceView> views = List.of(new FaceView(true), new FaceView(false));
      LineReach reach = views.get(0).reach();
      double ahead = views.get(0).ahead;
      frontMm = Math.max(ahead > 0 ? -reach.left() : reach.right(), 0) + AIR_MM;
      rearMm = Math.min(ahead > 0 ? -reach.right() : reach.left(), 0) - AIR_MM;
      double depthMm = job.layout().chassis().rails().depthMm();
      lowMm = Math.min(reach.bottom(), 0) - AIR_MM;
      highMm = Math.max(Math.min(reach.top(), depthMm + ABOVE_MM), depthMm) + AIR_MM / 2;
      double roomX =
          ShopSheet.rightMm(job.units()) - ShopSheet.LEFT_MM - TABLES_MM - VALUES_MM - GAP_MM;
      double roomMm = ShopSheet.bottomMm(job.units()) - ShopSheet.TOP_MM;
      oneTo =
          ShopSheet.oneTo(
              job.units(),
              Math.max(
                  (frontMm - rearMm) / roomX,
                  (highMm - lowMm) / (roomMm / 2 - ROUND_A_VIEW_MM - GAP_MM / 2)));
      windowMm = (highMm - lowMm) / oneTo;
      double bothMm =
          views.stream().mapToDouble(v -> v.bandMm(windowMm) + ROUND_A_VIEW_MM).sum() + GAP_MM;
      sheets = bothMm <= roomMm ? List.of(views) : views.stream().map(List::of).toList();
    }

    /** The sheets with their pictures, and beside them the tables. */
    List<SheetPage> pages(TableFlow flow) {
      List<SheetPage> pages = new ArrayList<>();
      for (List<FaceView> sheet : sheets) {
        int number = pages.size();
        pages.add(
            new SheetPage(
                title(), "1 : " + oneTo, notes(), paper -> draw(paper, sheet, flow, number)));
      }
      return pages;
    }

    private void draw(Paper paper, List<FaceView> sheet, TableFlow flow, int number) {
      double y = ShopSheet.TOP_MM + LABEL_MM + Balloons.ROW_MM;
      double x = ShopSheet.LEFT_MM + 1;
      for (FaceView view : sheet) {
        view.draw(paper, view.window(frontMm, rearMm, lowMm, highMm, 1.0 / oneTo, x, y));
        y += view.bandMm(windowMm) + ROUND_A_VIEW_MM + GAP_MM;
      }
      if (number < flow.pages()) {
        flow.drawOn(paper, number);
      }
    }
  }

  private static List<String> notes() {
    return List.of(
        "Along the rail from the axle mark on its outer face, carried over square to the rail;"
            + " ahead is plus. Up square from the underside. Out square from the outer face; inside"
            + " it is minus. Turned: front end swung outward. Every size from these datums, none"
            + " chained.",
        "Support on stands under the frame. Work by a qualified welder to the procedure.");
  }

  /** Each foot on the rail by its edges. */
  private SheetTable feetTable() {
    SheetTable table =
        new SheetTable(
            "EDGES OF EVERY FOOT ON THIS RAIL",
            List.of(
                Column.words("", 6),
                Column.words("part", 34),
                Column.words("on its", 12),
                Column.number("rear", 14.5),
                Column.number("front", 14.5),
                Column.number("lower", 14.5),
                Column.number("upper", 14.5)));
    for (RailFoot foot : feet) {
      table.row(
          marks.get(foot.part()),
          Bracket.withoutSide(foot.part()),
          face(foot.face()),
          job.length(foot.rearMm()),
          job.length(foot.frontMm()),
          job.length(foot.lowerMm()),
          job.length(foot.upperMm()));
    }
    return table;
  }

  private static String face(RailFoot.Face face) {
    return switch (face) {
      case OUTER -> "outer";
      case INNER -> "inner";
      case UNDERSIDE -> "under";
      case UNDERSIDE_AND_INNER -> "under, inner";
      case TOP -> "top";
    };
  }

  /** The zero of each bracket that is set from this rail. */
  private SheetTable zeroTable() {
    SheetTable table =
        new SheetTable(
            "ZERO OF EVERY BRACKET ON THIS RAIL",
            List.of(
                Column.words("", 6),
                Column.words("bracket, its zero", 46),
                Column.number("along", 14.5),
                Column.number("up", 14.5),
                Column.number("out", 14.5),
                Column.number("turned", 14.5)));
    for (Map.Entry<String, Bracket> entry : job.brackets()) {
      Bracket bracket = entry.getValue();
      if (bracket.datum().kind() == datum.kind()) {
        table.row(
            entry.getKey(),
            bracket.name()
                + (bracket.hole() ? ", middle of its bolt" : ", rear lower inner corner"),
            job.length(bracket.zero().x()),
            job.length(bracket.zero().y()),
            job.length(bracket.zero().z()),
            job.angle(bracket.turnRad()));
      }
    }
    return table;
  }

  private SheetTable stopsTable() {
    SheetTable table =
        new SheetTable(
            "BOUGHT PARTS ON THIS RAIL, where they sit",
            List.of(
                Column.words("part", 52),
                Column.number("along", 14.5),
                Column.number("up", 14.5),
                Column.number("out", 14.5)));
    for (PlacedPart stop : stops()) {
      Vector3 middle = datum.read(stop.place().origin());
      table.row(
          Bracket.withoutSide(stop.id()),
          job.length(middle.x()),
          job.length(middle.y()),
          job.length(middle.z()));
    }
    return table;
  }
}
