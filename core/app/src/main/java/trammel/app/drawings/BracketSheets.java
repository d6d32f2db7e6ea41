package trammel.app.drawings;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import trammel.app.drawings.Paper.Anchor;
import trammel.app.drawings.SheetTable.Column;
import trammel.assembly.PartKind;
import trammel.assembly.Place;
import trammel.assembly.PlacedPart;
import trammel.assembly.Prism;
import trammel.brackets.work.VehicleParts;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Rails;
import trammel.planning.fitup.Bracket;
import trammel.planning.fitup.BracketKind;
import trammel.planning.fitup.Datum;
import trammel.planning.fitup.PartSpan;
import trammel.planning.fitup.RailFoot;

/**
 * A sheet for each kind of bracket: three views square to it, every edge from its own zero, its
 * parts numbered with their table, its welds by their symbols, its bolts with their torque.
 */
final class BracketSheets {
  /** Pictures at this scale (one to so much) or larger are read as they are. */
  private static final int LEAST_READ = 6;

  private static final double ORDINATES_MM = 18;
  private static final double VALUES_MM = 16;
  private static final double GAP_MM = 5;
  private static final double APART_MM = 3.5;
  private static final double LETTERS_MM = 2.3;
  private static final double VIEWS_MM = 178;
  private static final double LEAST_WELDS_MM = 70;
  private static final double LEAST_VIEW_MM = 24;

  /** A corner this near to a value is at it (mm). */
  private static final double AT_MM = 0.6;

  /** A joint is seen where a visible edge runs this near (mm). */
  private static final double SEEN_MM = 2;

  /** A bolt's end keeps so far from the end of the picture (mm of the vehicle). */
  private static final double BOLT_AIR_MM = 3;

  /** What is set on is drawn so far round the bracket, in shares of its size. */
  private static final double AIR = 0.12;

  private final ShopJob job;

  BracketSheets(ShopJob job) {
    this.job = job;
  }

  List<SheetPage> pages() {
    List<SheetPage> pages = new ArrayList<>();
    job.kinds().forEach(kind -> pages.addAll(new Sheet(kind).pages()));
    return pages;
  }

  /** One kind of bracket. */
  private final class Sheet {
    private final BracketKind kind;
    private final Bracket bracket;
    private final Datum own;
    private final VehicleScene scene;
    private final List<WeldMark> welds;
    private final SheetTable table;
    private final Place view;

    /** The corners of its bolts as read from its zero. */
    private final List<Vector3> bolts;

    /** 1 where out is to the left, −1 where it is to the right. */
    private final double left;

    Sheet(BracketKind kind) {
      this.kind = kind;
      bracket = kind.shown();
      own = bracket.own();
      left = own.along().cross(own.out()).dot(own.up()) > 0 ? 1 : -1;
      view = Place.of(own.origin(), own.along(), own.out().scaled(left));
      List<String> ids = new ArrayList<>(ShopJob.ids(bracket).toList());
      ids.addAll(under());
      scene = PartScene.of(job.assembly(), ids, view);
      welds = WeldMark.of(job, bracket);
      table = table();
      bolts =
          bracket.bolts().stream()
              .map(id -> job.assembly().part(id).orElseThrow())
              .flatMap(bolt -> bolt.solid().mesh().placed(bolt.place()).corners().stream())
              .map(own::read)
              .toList();
    }

    /** What it is set on. */
    private List<String> under() {
      Datum.Kind on = bracket.datum().kind();
      if (on.axle()) {
        return List.of(VehicleParts.AXLE_TUBE);
      }
      List<String> under = new ArrayList<>();
      if (on.rail()) {
        under.add(VehicleParts.rail(on.left()));
        Rails rails = job.layout().chassis().rails();
        for (RailFoot foot : RailFoot.of(job.assembly(), rails, on.left())) {
          if (bracket.parts().stream().anyMatch(p -> p.part().id().equals(foot.part()))) {
            under.add(foot.on());
          }
        }
      }
      return under;
    }

    private String title() {
      return "bracket " + kind.letter() + " of";
    }

    private SheetTable table() {
      boolean sides = !bracket.datum().kind().oneSided();
      SheetTable parts =
          new SheetTable(
              "PARTS OF BRACKET " + kind.letter() + " FROM ITS ZERO",
              List.of(
                  Column.words("", 7),
                  Column.words("part", 52),
                  Column.number("thick", 13),
                  Column.number("rear", 16),
                  Column.number("front", 16),
                  Column.number("lower", 16),
                  Column.number("upper", 16),
                  Column.number(sides ? "right" : "inner", 16),
                  Column.number(sides ? "left" : "outer", 16),
                  Column.words("top of its drawing", 43),
                  Column.words("drawn face", 43)));
      for (int i = 0; i < bracket.parts().size(); i++) {
        PartSpan span = bracket.parts().get(i);
        boolean plate = span.part().kind() == PartKind.PLATE;
        parts.row(
            Integer.toString(i + 1),
            sides ? span.part().id() : Bracket.withoutSide(span.part().id()),
            plate && span.part().solid() instanceof Prism prism
                ? job.length(prism.lengthMm())
                : "tube",
            job.length(span.from().x()),
            job.length(span.to().x()),
            job.length(span.from().y()),
            job.length(span.to().y()),
            job.length(span.from().z()),
            job.length(span.to().z()),
            plate ? span.top().words() : "runs " + span.top().words(),
            plate ? span.face().words() : "");
      }
      return parts;
    }

    private double least(Function<Vector3, Double> axis) {
      return bracket.parts().stream().map(s -> axis.apply(s.from())).min(Double::compare).get();
    }

    private double most(Function<Vector3, Double> axis) {
      return bracket.parts().stream().map(s -> axis.apply(s.to())).max(Double::compare).get();
    }

    /** Values along one axis, each once as it reads. */
    private List<Double> edges(Function<Vector3, Double> axis) {
      Set<String> read = new LinkedHashSet<>();
      List<Double> edges = new ArrayList<>();
      for (PartSpan span : bracket.parts()) {
        for (double edge : new double[] {axis.apply(span.from()), axis.apply(span.to())}) {
          if (read.add(job.length(edge))) {
            edges.add(edge);
          }
        }
      }
      return edges;
    }

    List<SheetPage> pages() {
      double bodyMm = ShopSheet.bottomMm(job.units()) - ShopSheet.TOP_MM;
      double tableMm = table.heightMm();
      // Many parts: their table goes on the next sheet, whole; so too where it leaves the picture
      // half as large as it can be.
      Views alone = new Views(bodyMm);
      boolean many = tableMm + GAP_MM + leastMm() > bodyMm;
      Views with = many ? alone : new Views(bodyMm - tableMm - GAP_MM);
      boolean apart = many || with.oneTo >= 2 * alone.oneTo && with.oneTo > LEAST_READ;
      Views views = apart ? alone : with;
      List<SheetPage> pages = new ArrayList<>();
      pages.add(
          new SheetPage(
              title(),
              "1 : " + views.oneTo,
              notes(),
              paper -> {
                views.draw(paper);
                words(paper);
                if (!apart) {
                  table.drawOn(paper, ShopSheet.LEFT_MM, ShopSheet.bottomMm(job.units()) - tableMm);
                }
              }));
      if (apart) {
        TableFlow flow =
            new TableFlow(
                    ShopSheet.LEFT_MM,
                    ShopSheet.rightMm(job.units()),
                    ShopSheet.TOP_MM,
                    ShopSheet.bottomMm(job.units()))
                .from(ShopSheet.LEFT_MM, ShopSheet.TOP_MM)
                .add(table);
        for (int page = 0; page < flow.pages(); page++) {
          int number = page;
          pages.add(new SheetPage(title(), "-", notes(), paper -> flow.drawOn(paper, number)));
        }
      }
      return pages;
    }

    /** Height below which values and symbols would lie on each other (mm). */
    private double leastMm() {
      return fixedMm()
          + Math.max(LEAST_VIEW_MM, edges(Vector3::y).size() * APART_MM)
          + Math.max(LEAST_VIEW_MM, welds.size() * WeldMark.ROW_MM);
    }

    private double fixedMm() {
      int bands = ShopSheet.thirdAngle(job.units()) ? 1 : 2;
      return 2 * Balloons.ROW_MM + bands * ORDINATES_MM;
    }

    private List<String> notes() {
      return List.of(
          "Edges from the bracket's own zero: ahead, up and out are plus. Drawn face: the face"
              + " that its cutting drawing shows; its top is the drawing's top. Weld below the"
              + " line: the arrow's side; above: the other; circle: all round; flag: on the"
              + " vehicle. Tack, check, then weld; by a qualified welder to the procedure.");
    }

    /** What it is, where its zero is, its other hand and its bolts. */
    private void words(Paper paper) {
      double x = ShopSheet.LEFT_MM + VIEWS_MM + GAP_MM;
      double roomMm = ShopSheet.rightMm(job.units()) - x;
      double y = ShopSheet.TOP_MM;
      paper.text(x, y, 3.4, Anchor.START, kind.letter());
      List<String> words = new ArrayList<>();
      words.add(bracket.name() + side());
      words.add("Views: from the left, its front to the left; from above; from behind.");
      words.add(zeroWords());
      if (Math.abs(bracket.turnRad()) > 1e-9) {
        words.add(
            "Views are square to it: its front is turned "
                + job.angle(Math.abs(bracket.turnRad()))
                + (bracket.turnRad() > 0 ? " outward" : " inward")
                + " from the "
                + (bracket.datum().kind().rail() ? "rail." : "vehicle's length."));
      }
      kind.mirrored()
          .ifPresent(
              other ->
                  words.add(
                      "Other hand: the mirror image on the "
                          + (other.datum().kind().left() ? "left" : "right")
                          + (kind.turnedOver()
                              ? "; every plate turned over, its drawn face the other way."
                              : "; every plate by its own drawing, its drawn face as here.")));
      words.addAll(bolts());
      y += 1;
      for (String text : words) {
        y += 1;
        for (String line : Paper.lines(text, LETTERS_MM, roomMm)) {
          y += 3;
          paper.text(x, y, LETTERS_MM, Anchor.START, line);
        }
      }
      if (bracket.datum().kind() == Datum.Kind.FRAME) {
        frameZero().drawOn(paper, x, y + GAP_MM);
      }
    }

    private String side() {
      return switch (bracket.datum().kind()) {
        case LEFT_RAIL -> ", on the left rail";
        case RIGHT_RAIL -> ", on the right rail";
        case AXLE_LEFT -> ", on the left half of the axle";
        case AXLE_RIGHT -> ", on the right half of the axle";
        case AXLE -> ", on the axle";
        case FRAME -> ", on the frame";
      };
    }

    private String zeroWords() {
      Datum.Kind on = bracket.datum().kind();
      if (on == Datum.Kind.FRAME) {
        return (bracket.hole() ? "Zero: the middle of its bolt, half way through the grip" : "Zero")
            + ", set from the axle line, the centre line and the height of the rails' underside"
            + " over the axle, level and square to the vehicle; left is plus.";
      }
      if (bracket.hole()) {
        return "Zero: the middle of its bolt, half way through the grip; set as the sheet of the "
            + (on.axle() ? "axle" : "rail")
            + " says.";
      }
      return on.axle()
          ? "Zero: the middle of the axle tube, half way between the flanges."
          : "Zero: its rear, lower, inner corner; set as the sheet of the rail says.";
    }

    /** Where the zero is of what neither a rail nor the axle has on its sheet. */
    private SheetTable frameZero() {
      SheetTable zero =
          new SheetTable(
              "ITS ZERO ON THE FRAME",
              List.of(
                  Column.words("", 7),
                  Column.number("ahead", 16),
                  Column.number("up", 16),
                  Column.number("left", 16),
                  Column.number("turned", 16)));
      zero.row(
          kind.letter(),
          job.length(bracket.zero().x()),
          job.length(bracket.zero().y()),
          job.length(bracket.zero().z()),
          job.angle(bracket.turnRad()));
      return zero;
    }

    private List<String> bolts() {
      List<String> bolts = new ArrayList<>();
      job.bolts(bracket)
          .forEach(
              (line, count) ->
                  bolts.add(
                      count
                          + " x bolt "
                          + line.size().title()
                          + " x "
                          + job.length(line.choice().lengthMm())
                          + ", grip "
                          + job.length(line.gripMm())
                          + ", torque "
                          + job.printer().torque(line.torqueNmm())
                          + " dry, at ride height."));
      return bolts;
    }

    /** The three views in their places, with their sizes. */
    private final class Views {
      private final int oneTo;
      private ViewWindow side;
      private ViewWindow plan;
      private ViewWindow rear;
      private double valuesX;
      private double sideBandMm;
      private double rearBandMm;
      private double heightBandMm;
      private double weldsX;
      private double weldsY;
      private double weldsMm;

      private final double airMm =
          10
              + AIR
                  * Math.max(
                      most(Vector3::x) - least(Vector3::x),
                      Math.max(
                          most(Vector3::y) - least(Vector3::y),
                          most(Vector3::z) - least(Vector3::z)));
      private final double longMm = to(Vector3::x) - from(Vector3::x);
      private final double highMm = to(Vector3::y) - from(Vector3::y);
      private final double broadMm = to(Vector3::z) - from(Vector3::z);

      Views(double roomMm) {
        double planLeastMm = welds.size() * WeldMark.ROW_MM;
        int to = 1;
        while (!fits(to, roomMm - fixedMm(), planLeastMm)) {
          to = ShopSheet.oneTo(job.units(), to + 0.5);
        }
        oneTo = to;
        place(planLeastMm);
      }

      /** Where what is shown begins: the plates with air, and every bolt to its end. */
      private double from(Function<Vector3, Double> axis) {
        double plates = least(axis) - airMm;
        return Math.min(plates, boltEnds(axis).min().orElse(plates) - BOLT_AIR_MM);
      }

      private double to(Function<Vector3, Double> axis) {
        double plates = most(axis) + airMm;
        return Math.max(plates, boltEnds(axis).max().orElse(plates) + BOLT_AIR_MM);
      }

      private DoubleStream boltEnds(Function<Vector3, Double> axis) {
        return bolts.stream().mapToDouble(axis::apply);
      }

      private boolean fits(int to, double roomY, double planLeastMm) {
        double rowsMm =
            Math.max(highMm / to, edges(Vector3::y).size() * APART_MM)
                + Math.max(broadMm / to, planLeastMm);
        double acrossMm = sideBand(to) + rearBand(to) + GAP_MM + VALUES_MM;
        boolean small = to > 40;
        return small || rowsMm <= roomY && acrossMm <= VIEWS_MM;
      }

      private double sideBand(int to) {
        return Math.max(
            LEAST_VIEW_MM, Math.max(longMm / to, (edges(Vector3::x).size() + 1) * APART_MM));
      }

      private double rearBand(int to) {
        return Math.max(
            LEAST_WELDS_MM, Math.max(broadMm / to, (edges(Vector3::z).size() + 1) * APART_MM));
      }

      private void place(double planLeastMm) {
        double scale = 1.0 / oneTo;
        boolean third = ShopSheet.thirdAngle(job.units());
        sideBandMm = sideBand(oneTo);
        rearBandMm = rearBand(oneTo);
        heightBandMm = Math.max(highMm * scale, edges(Vector3::y).size() * APART_MM);
        double planMm = Math.max(broadMm * scale, planLeastMm);
        double leftX = ShopSheet.LEFT_MM;
        double sideX = third ? leftX : leftX + rearBandMm + GAP_MM;
        double rearX = third ? leftX + sideBandMm + GAP_MM : leftX;
        valuesX = third ? rearX + broadMm * scale : sideX + longMm * scale;
        double topY = ShopSheet.TOP_MM + Balloons.ROW_MM - 2;
        double sideY = third ? topY + planMm + Balloons.ROW_MM : topY;
        double planY = third ? topY : topY + heightBandMm + ORDINATES_MM + Balloons.ROW_MM;
        double frontMm = to(Vector3::x);
        double lowMm = from(Vector3::y);
        double rightMm = left > 0 ? -to(Vector3::z) : from(Vector3::z);
        side =
            new ViewWindow(
                Viewpoint.SIDE,
                -frontMm,
                longMm - frontMm,
                lowMm,
                lowMm + highMm,
                scale,
                sideX,
                sideY);
        plan =
            new ViewWindow(
                Viewpoint.PLAN,
                -frontMm,
                longMm - frontMm,
                rightMm,
                rightMm + broadMm,
                scale,
                sideX,
                planY);
        rear =
            new ViewWindow(
                Viewpoint.REAR,
                rightMm,
                rightMm + broadMm,
                lowMm,
                lowMm + highMm,
                scale,
                rearX,
                sideY);
        weldsX = rearX;
        weldsY = planY;
        weldsMm = rearBandMm + (third ? VALUES_MM : 0);
      }

      void draw(Paper paper) {
        List<ViewWindow> windows = List.of(side, plan, rear);
        Set<String> dashed =
            bracket.parts().stream().map(span -> span.part().id()).collect(Collectors.toSet());
        windows.forEach(window -> new SceneEdges(scene, window, dashed).drawOn(paper));
        zero(paper);
        ordinates(paper);
        Balloons balloons = new Balloons(scene, windows);
        for (int i = 0; i < bracket.parts().size(); i++) {
          PlacedPart part = bracket.parts().get(i).part();
          balloons.mark(Integer.toString(i + 1), List.of(part.id()));
        }
        balloons.drawOn(paper);
        drawWelds(paper);
      }

      private void zero(Paper paper) {
        Point3 zero = new Point3(0, 0, 0);
        for (ViewWindow window : List.of(side, plan, rear)) {
          double x = window.x(zero);
          double y = window.y(zero);
          if (window.holds(0, 0)) {
            paper.line(x - 4, y, x + 4, y, Pen.DATUM);
            paper.line(x, y - 4, x, y + 4, Pen.DATUM);
          }
        }
      }

      private void ordinates(Paper paper) {
        boolean third = ShopSheet.thirdAngle(job.units());
        ViewWindow lengths = third ? side : plan;
        ViewWindow beside = third ? rear : side;
        // Heights may take more room than the view: what is written below begins under them.
        double rearY = rear.paperY() + heightBandMm;
        double lengthsY = third ? rearY : plan.paperY() + plan.heightMm();
        Ordinates along = new Ordinates();
        Ordinates outs = new Ordinates();
        Ordinates heights = new Ordinates();
        for (PartSpan span : bracket.parts()) {
          double low = third ? span.from().y() : lowOnPlan(span);
          for (double edge : new double[] {span.from().x(), span.to().x()}) {
            double from = lowestAt(span, lengths.viewpoint(), -edge).orElse(low);
            along.add(lengths.acrossPaper(-edge), lengths.downPaper(from), job.length(edge));
          }
          for (double edge : new double[] {span.from().z(), span.to().z()}) {
            double from = lowestAt(span, Viewpoint.REAR, -left * edge).orElse(span.from().y());
            outs.add(rear.acrossPaper(-left * edge), rear.downPaper(from), job.length(edge));
          }
          double rightmost =
              third ? Math.max(-left * span.from().z(), -left * span.to().z()) : -span.from().x();
          for (double edge : new double[] {span.from().y(), span.to().y()}) {
            double from = rightmostAt(span, beside.viewpoint(), edge).orElse(rightmost);
            heights.add(beside.downPaper(edge), beside.acrossPaper(from), job.length(edge));
          }
        }
        along.below(paper, lengthsY, lengths.paperX(), lengths.paperX() + sideBandMm);
        outs.below(paper, rearY, rear.paperX(), rear.paperX() + rearBandMm);
        heights.beside(paper, valuesX, beside.paperY(), beside.paperY() + heightBandMm);
      }

      /** The lowest corner of a part at a value across a view, so that its line hangs on it. */
      private OptionalDouble lowestAt(PartSpan span, Viewpoint viewpoint, double across) {
        return ends(span, viewpoint)
            .filter(end -> Math.abs(end.getX() - across) < AT_MM)
            .mapToDouble(Point2D::getY)
            .min();
      }

      /** The corner furthest to the right at a height of a view. */
      private OptionalDouble rightmostAt(PartSpan span, Viewpoint viewpoint, double up) {
        return ends(span, viewpoint)
            .filter(end -> Math.abs(end.getY() - up) < AT_MM)
            .mapToDouble(Point2D::getX)
            .max();
      }

      private Stream<Point2D> ends(PartSpan span, Viewpoint viewpoint) {
        return scene.lines(viewpoint).stream()
            .filter(line -> line.id().equals(span.part().id()))
            .flatMap(
                line ->
                    Stream.of(
                        new Point2D.Double(line.fromX(), line.fromY()),
                        new Point2D.Double(line.toX(), line.toY())));
      }

      private double lowOnPlan(PartSpan span) {
        return Math.min(-left * span.from().z(), -left * span.to().z());
      }

      /** The view in which the joint is seen: the plan beside the symbols before the others. */
      private ViewWindow seenIn(Point3 joint) {
        return Stream.of(plan, rear, side)
            .filter(window -> isSeen(joint, window.viewpoint()))
            .findFirst()
            .orElse(plan);
      }

      private boolean isSeen(Point3 joint, Viewpoint viewpoint) {
        Set<String> own =
            bracket.parts().stream().map(span -> span.part().id()).collect(Collectors.toSet());
        double x = viewpoint.x(joint);
        double y = viewpoint.y(joint);
        return scene.lines(viewpoint).stream()
            .filter(line -> !line.hidden() && own.contains(line.id()))
            .anyMatch(
                line ->
                    Line2D.ptSegDist(line.fromX(), line.fromY(), line.toX(), line.toY(), x, y)
                        < SEEN_MM);
      }

      private void drawWelds(Paper paper) {
        boolean third = ShopSheet.thirdAngle(job.units());
        Place into = PartScene.inverse(view);
        List<WeldMark> ordered =
            welds.stream()
                .sorted(Comparator.comparingDouble(weld -> plan.y(into.apply(weld.at()))))
                .toList();
        double y = weldsY + 4;
        for (WeldMark weld : ordered) {
          Point3 at = into.apply(weld.at());
          ViewWindow seen = seenIn(at);
          weld.drawOn(paper, weldsX, y, weldsMm, !third, seen.x(at), seen.y(at));
          y += WeldMark.ROW_MM;
        }
      }
    }
  }
}
