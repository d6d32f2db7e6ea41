package trammel.app.drawings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.app.drawings.Paper.Anchor;
import trammel.app.drawings.SheetTable.Column;
import trammel.assembly.CopedTube;
import trammel.assembly.Place;
import trammel.assembly.PlacedPart;
import trammel.brackets.work.TubeNeed;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.End;
import trammel.trade.tubes.Cope;

/**
 * The sheet of the bars: each with its joints, what is sawn between which points, and how a coped
 * end is cut, with its waste.
 */
final class BarSheets {
  private static final double ORDINATES_MM = 20;
  private static final double GAP_MM = 4;
  private static final double LETTERS_MM = 2.3;
  private static final double HATCH_MM = 1.2;
  private static final double ALIKE_MM = 0.05;
  private static final double PICTURE_MM = 150;
  private static final double COPE_MM = 60;
  private static final int MOST_PER_SHEET = 3;

  private final ShopJob job;
  private final PartWords words;

  BarSheets(ShopJob job) {
    this.job = job;
    words = new PartWords(job.layout());
  }

  /** Bars that are sawn alike, by the first of them. */
  private record Kind(Bar bar, TubeNeed tube, VehicleScene scene, List<String> names) {}

  private List<Kind> kinds() {
    List<Kind> kinds = new ArrayList<>();
    for (Bar bar : job.layout().bars()) {
      Optional<TubeNeed> tube =
          job.plan().tubes().stream().filter(need -> need.name().equals(bar.name())).findFirst();
      if (tube.isEmpty()) {
        continue;
      }
      Optional<Kind> same =
          kinds.stream().filter(kind -> isAlike(kind.tube, tube.get())).findFirst();
      if (same.isPresent()) {
        same.get().names.add(words.in(bar.name()));
      } else {
        kinds.add(
            new Kind(bar, tube.get(), scene(bar), new ArrayList<>(List.of(words.in(bar.name())))));
      }
    }
    return kinds;
  }

  private boolean isAlike(TubeNeed one, TubeNeed other) {
    return Math.abs(one.cutLengthMm() - other.cutLengthMm()) < ALIKE_MM
        && one.barKey().equals(other.barKey())
        && one.ends().in(job.printer()).equals(other.ends().in(job.printer()));
  }

  List<SheetPage> pages() {
    List<Kind> kinds = kinds();
    List<SheetPage> pages = new ArrayList<>();
    for (int first = 0; first < kinds.size(); first += MOST_PER_SHEET) {
      pages.add(page(kinds.subList(first, Math.min(kinds.size(), first + MOST_PER_SHEET))));
    }
    return pages;
  }

  private SheetPage page(List<Kind> kinds) {
    SheetTable table = table(kinds);
    double bodyMm = ShopSheet.bottomMm(job.units()) - ShopSheet.TOP_MM;
    double rowMm = (bodyMm - table.heightMm() - GAP_MM) / kinds.size();
    double longestMm = kinds.stream().mapToDouble(kind -> reach(kind).width()).max().orElseThrow();
    double highestMm = kinds.stream().mapToDouble(kind -> reach(kind).height()).max().orElseThrow();
    int oneTo =
        ShopSheet.oneTo(
            job.units(),
            Math.max(longestMm / PICTURE_MM, highestMm / (rowMm - ORDINATES_MM - GAP_MM - 4)));
    return new SheetPage(
        "bars of",
        "1 : " + oneTo,
        List.of(
            "Saw to the cut length, tips of a cope included. Set both joints to the middle of"
                + " their thread, jam nuts loose, and check joint to joint before welding. Bolts"
                + " of both ends in line unless the sheet says otherwise.",
            "Weld joints only on the bench, rubber out. Work by a qualified welder."),
        paper -> {
          double y = ShopSheet.TOP_MM;
          for (Kind kind : kinds) {
            draw(paper, kind, y, 1.0 / oneTo);
            y += rowMm;
          }
          table.drawOn(
              paper, ShopSheet.LEFT_MM, ShopSheet.bottomMm(job.units()) - table.heightMm());
        });
  }

  private SheetTable table(List<Kind> kinds) {
    SheetTable table =
        new SheetTable(
            "BARS",
            List.of(
                Column.words("bar", 42),
                Column.words("tube", 34),
                Column.number("joint to joint", 24),
                Column.number("tube cut", 18),
                Column.words("how the cut comes about", 72),
                Column.words("ends of the tube", 65)));
    for (Kind kind : kinds) {
      table.row(
          String.join(", ", kind.names),
          section(kind.tube),
          job.length(kind.bar.lengthMm()),
          job.length(kind.tube.cutLengthMm()),
          kind.tube.why().in(job.printer()),
          kind.tube.ends().in(job.printer()));
    }
    return table;
  }

  private String section(TubeNeed tube) {
    return tube.solid() instanceof CopedTube coped
        ? job.printer().decimalLength(coped.tube().outsideMm(), 3)
            + " x "
            + job.printer().decimalLength(coped.tube().wallMm(), 3)
            + " wall"
        : tube.barKey();
  }

  /** Along the bar from its frame end, which lies to the left; across it as its bolts run. */
  private Place view(Bar bar) {
    Point3 frame = bar.point(End.FRAME);
    Vector3 along = bar.point(End.AXLE).to(frame).normalized();
    PlacedPart tube = job.assembly().part(bar.name()).orElseThrow();
    Vector3 across = tube.place().x();
    Vector3 square = across.minus(along.scaled(across.dot(along))).normalized();
    return Place.of(frame, along, square);
  }

  private VehicleScene scene(Bar bar) {
    List<String> ids =
        job.assembly().parts().stream()
            .filter(part -> part.carrier().equals(bar.name()))
            .map(PlacedPart::id)
            .toList();
    return PartScene.of(job.assembly(), ids, view(bar));
  }

  private static LineReach reach(Kind kind) {
    return LineReach.of(kind.scene.lines(Viewpoint.SIDE));
  }

  private void draw(Paper paper, Kind kind, double y, double scale) {
    LineReach reach = reach(kind);
    ViewWindow window =
        new ViewWindow(
            Viewpoint.SIDE,
            reach.left() - 1,
            reach.right() + 1,
            reach.bottom() - 1,
            reach.top() + 1,
            scale,
            ShopSheet.LEFT_MM,
            y + 4);
    paper.text(
        ShopSheet.LEFT_MM,
        y + 1,
        LETTERS_MM + 0.3,
        Anchor.START,
        String.join(", ", kind.names) + ", frame end on the left");
    new SceneEdges(kind.scene, window).drawOn(paper);
    double bottom = window.paperY() + window.heightMm();
    double right = window.paperX() + window.widthMm();
    paper.line(window.paperX(), window.downPaper(0), right, window.downPaper(0), Pen.DATUM);
    Ordinates along = new Ordinates();
    PlacedPart tube = job.assembly().part(kind.bar.name()).orElseThrow();
    Place into = PartScene.inverse(view(kind.bar));
    double startMm = -into.apply(tube.place().origin()).xMm();
    double endMm = startMm + kind.tube.cutLengthMm();
    double jointMm = kind.bar.lengthMm();
    double axisY = window.downPaper(0);
    along.add(window.acrossPaper(0), axisY, "frame joint");
    along.add(window.acrossPaper(startMm), axisY, job.length(startMm) + " tube");
    along.add(window.acrossPaper(endMm), axisY, job.length(endMm) + " tube");
    along.add(window.acrossPaper(jointMm), axisY, job.length(jointMm));
    along.below(paper, bottom, window.paperX(), right);
    if (tube.solid() instanceof CopedTube coped) {
      Map<String, Cope> copes = new LinkedHashMap<>();
      coped.start().ifPresent(cope -> copes.put("frame end", cope));
      coped.end().ifPresent(cope -> copes.put("axle end", cope));
      double x = ShopSheet.LEFT_MM + PICTURE_MM + 30;
      for (Map.Entry<String, Cope> cope : copes.entrySet()) {
        cope(paper, cope.getKey(), cope.getValue(), coped, x, y + 4);
        x += COPE_MM / 2;
      }
    }
  }

  /** A coped end as the saw leaves it, looked at along the barrel; what is ground out hatched. */
  private void cope(Paper paper, String where, Cope cope, CopedTube tube, double x, double y) {
    double scale = 0.25;
    double outMm = tube.tube().outsideMm() / 2;
    double tipsMm = cope.nearestMm();
    double longMm = 3 * outMm;
    double middleY = y + 4 + outMm * scale;
    int rays = 24;
    double[] xs = new double[rays + 1];
    double[] ys = new double[rays + 1];
    for (int i = 0; i <= rays; i++) {
      double roundRad = Math.PI * i / rays;
      double backMm = cope.edgeMm(roundRad + Math.PI / 2) - tipsMm;
      xs[i] = x + (longMm - backMm) * scale;
      ys[i] = middleY - outMm * Math.cos(roundRad) * scale;
    }
    paper.text(x, y, LETTERS_MM, Anchor.START, "cope, " + where);
    double tipX = x + longMm * scale;
    paper.path(xs, ys, Pen.OUTLINE);
    paper.line(x, ys[0], xs[0], ys[0], Pen.OUTLINE);
    paper.line(x, ys[rays], xs[rays], ys[rays], Pen.OUTLINE);
    paper.line(tipX, ys[0], tipX, ys[rays], Pen.FINE);
    for (double at = ys[0] + HATCH_MM / 2; at < ys[rays]; at += HATCH_MM) {
      for (int i = 0; i < rays; i++) {
        if (ys[i] <= at && at < ys[i + 1]) {
          paper.line(xs[i], at, tipX, at, Pen.FINE);
        }
      }
    }
    double under = ys[rays] + 3.4;
    paper.text(x, under, LETTERS_MM, Anchor.START, "keep");
    paper.text(tipX - 1, under, LETTERS_MM, Anchor.START, "waste");
  }
}
