package trammel.app.drawings;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import trammel.app.drawings.Paper.Anchor;
import trammel.app.drawings.SheetTable.Column;
import trammel.assembly.Assembly;
import trammel.assembly.Place;
import trammel.brackets.work.VehicleParts;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.planning.fitup.AxleFoot;
import trammel.planning.fitup.Bracket;
import trammel.planning.fitup.BracketKind;

/**
 * The sheets of the axle: the tube from behind with every foot by its edge nearest to the tube's
 * middle, an end view of each bracket with its turn, and the tables of feet and zeros.
 */
final class AxleSheets {
  /** What reaches so many times as far as the smallest bracket is drawn in part. */
  private static final double LONG_ARM = 4;

  private static final double ORDINATES_MM = 20;
  private static final double VALUES_MM = 4;
  private static final double AIR_MM = 30;
  private static final double GAP_MM = 5;
  private static final double LETTERS_MM = 2.3;
  private static final double CELL_MM = 39;
  private static final double TABLES_MM = 132;
  private static final double TEXT_MM = 12;

  /** What is nearer to plumb than this reads as plumb. */
  private static final double SQUARE_RAD = Math.toRadians(0.05);

  private final ShopJob job;
  private final Point3 middle;
  private final List<AxleFoot> feet;
  private final Map<String, String> letters;
  private final Map<String, VehicleScene> ends = new HashMap<>();

  AxleSheets(ShopJob job) {
    this.job = job;
    middle = job.layout().chassis().axleCentre();
    feet = AxleFoot.of(job.assembly(), middle);
    letters = job.letters();
  }

  List<SheetPage> pages() {
    if (feet.isEmpty()) {
      return List.of();
    }
    List<SheetPage> pages = new ArrayList<>();
    TableFlow flow =
        new TableFlow(
                ShopSheet.LEFT_MM,
                ShopSheet.rightMm(job.units()),
                ShopSheet.TOP_MM - 2,
                ShopSheet.bottomMm(job.units()))
            .from(ShopSheet.rightMm(job.units()) - TABLES_MM, ShopSheet.TOP_MM - 2)
            .add(feetTable())
            .add(zeroTable());
    pages.add(picture(flow));
    for (int page = 1; page < flow.pages(); page++) {
      int number = page;
      pages.add(new SheetPage("table, axle of", "-", notes(), paper -> flow.drawOn(paper, number)));
    }
    return pages;
  }

  private static List<String> notes() {
    return List.of(
        "Along the tube from its middle, half way between the wheel flanges; left is plus. Turned:"
            + " straightedge from the tube's middle through the hole, or square to the edge;"
            + " finder on it, from plumb, plus to the front, the pinion at its angle at ride."
            + " None chained.",
        "Weld in short runs from side to side; check the tube for straight. Qualified welder.");
  }

  private List<BracketKind> kinds() {
    return job.kinds().stream().filter(kind -> kind.shown().datum().kind().axle()).toList();
  }

  /** The tube with brackets; one by itself without the centre housing, which would hide it. */
  private VehicleScene scene(List<Bracket> brackets) {
    List<String> ids = new ArrayList<>(List.of(VehicleParts.AXLE_TUBE));
    if (brackets.size() > 1) {
      ids.add(VehicleParts.HOUSING);
    }
    brackets.forEach(bracket -> ShopJob.ids(bracket).forEach(ids::add));
    return PartScene.of(job.assembly(), ids, Place.at(middle));
  }

  private VehicleScene end(BracketKind kind) {
    return ends.computeIfAbsent(kind.letter(), letter -> scene(List.of(kind.shown())));
  }

  /** Width that the views have beside the tables (mm). */
  private double roomMm() {
    return ShopSheet.rightMm(job.units()) - ShopSheet.LEFT_MM - TABLES_MM - GAP_MM;
  }

  private SheetPage picture(TableFlow flow) {
    VehicleScene scene =
        scene(
            job.brackets().stream()
                .map(Map.Entry::getValue)
                .filter(bracket -> bracket.datum().kind().axle())
                .toList());
    LineReach reach = LineReach.of(scene.lines(Viewpoint.REAR));
    double halfMm = Math.max(-reach.left(), reach.right()) + AIR_MM;
    double lowMm = reach.bottom() - AIR_MM / 2;
    double highMm = reach.top() + AIR_MM / 2;
    double roomX = roomMm() - VALUES_MM;
    double bodyMm = ShopSheet.bottomMm(job.units()) - ShopSheet.TOP_MM;
    double roomY = bodyMm / 2 - Balloons.ROW_MM - 4;
    int oneTo =
        ShopSheet.oneTo(job.units(), Math.max(2 * halfMm / roomX, (highMm - lowMm) / roomY));
    double scale = 1.0 / oneTo;
    double x = ShopSheet.LEFT_MM + (roomX - 2 * halfMm * scale) / 2;
    double y = ShopSheet.TOP_MM + 3 + Balloons.ROW_MM;
    ViewWindow window = new ViewWindow(Viewpoint.REAR, -halfMm, halfMm, lowMm, highMm, scale, x, y);
    double endsY = y + window.heightMm() + ORDINATES_MM + GAP_MM;
    int endsTo = endScale(ShopSheet.bottomMm(job.units()) - endsY - TEXT_MM);
    return new SheetPage(
        "axle of",
        "1 : " + oneTo + (endsTo == oneTo ? "" : ", 1 : " + endsTo),
        notes(),
        paper -> {
          rear(paper, scene, window);
          ends(paper, endsY, 1.0 / endsTo);
          flow.drawOn(paper, 0);
        });
  }

  private void rear(Paper paper, VehicleScene scene, ViewWindow window) {
    double right = window.paperX() + window.widthMm();
    double bottom = window.paperY() + window.heightMm();
    double middleX = window.acrossPaper(0);
    paper.text(
        window.paperX(),
        window.paperY() - Balloons.ROW_MM,
        LETTERS_MM + 0.3,
        Anchor.START,
        "FROM BEHIND, left on the left");
    paper.line(middleX, window.paperY(), middleX, bottom, Pen.DATUM);
    paper.line(window.paperX(), window.downPaper(0), right, window.downPaper(0), Pen.DATUM);
    new SceneEdges(scene, window).drawOn(paper);
    Ordinates along = new Ordinates();
    along.add(middleX, bottom, "tube's middle");
    for (AxleFoot foot : feet) {
      double edge =
          Math.abs(foot.leftMm()) < Math.abs(foot.rightMm()) ? foot.leftMm() : foot.rightMm();
      along.add(window.acrossPaper(-edge), window.downPaper(0), job.length(edge));
    }
    along.below(paper, bottom, window.paperX(), right);
    Balloons balloons = new Balloons(scene, List.of(window));
    for (Map.Entry<String, Bracket> bracket : job.brackets()) {
      if (bracket.getValue().datum().kind().axle()) {
        balloons.mark(bracket.getKey(), ShopJob.ids(bracket.getValue()).toList());
      }
    }
    balloons.drawOn(paper);
  }

  private int columns() {
    return (int) Math.floor(roomMm() / CELL_MM);
  }

  private int rows() {
    return (kinds().size() + columns() - 1) / columns();
  }

  private int endScale(double roomMm) {
    double cellMm = Math.min(CELL_MM - 4, roomMm / rows() - (rows() - 1) * TEXT_MM / rows());
    double reachMm = kinds().stream().mapToDouble(kind -> endWindowMm(kind)[2]).max().orElse(100);
    return ShopSheet.oneTo(job.units(), reachMm / Math.max(8, cellMm));
  }

  /** Side of a square about all of a bracket as seen from the tube's end (mm of the vehicle). */
  private double wholeMm(BracketKind kind) {
    LineReach reach = LineReach.of(end(kind).lines(Viewpoint.SIDE));
    return Math.max(reach.width(), reach.height()) + AIR_MM;
  }

  /**
   * Left, bottom and side of the square that an end view shows (mm of the vehicle). Of a long arm
   * it shows what is about the tube, so that the other brackets can be seen.
   */
  private double[] endWindowMm(BracketKind kind) {
    double mostMm = LONG_ARM * kinds().stream().mapToDouble(this::wholeMm).min().orElse(0);
    LineReach reach = LineReach.of(end(kind).lines(Viewpoint.SIDE));
    double side = wholeMm(kind);
    if (side > mostMm) {
      return new double[] {-mostMm / 2, -mostMm / 2, mostMm};
    }
    return new double[] {
      (reach.left() + reach.right() - side) / 2, (reach.bottom() + reach.top() - side) / 2, side
    };
  }

  /** Each bracket from the left end of the tube, with the turn of its hole. */
  private void ends(Paper paper, double fromY, double scale) {
    List<BracketKind> kinds = kinds();
    double heightMm = (ShopSheet.bottomMm(job.units()) - fromY) / rows();
    for (int i = 0; i < kinds.size(); i++) {
      BracketKind kind = kinds.get(i);
      double x = ShopSheet.LEFT_MM + (i % columns()) * CELL_MM;
      double y = fromY + (i / columns()) * heightMm;
      double[] window = endWindowMm(kind);
      double side = window[2];
      ViewWindow view =
          new ViewWindow(
              Viewpoint.SIDE,
              window[0],
              window[0] + side,
              window[1],
              window[1] + side,
              scale,
              x,
              y + TEXT_MM);
      new SceneEdges(end(kind), view, plates(kind)).drawOn(paper);
      double centreX = view.acrossPaper(0);
      double centreY = view.downPaper(0);
      paper.line(centreX, y + TEXT_MM, centreX, centreY, Pen.DATUM);
      List<String> words = new ArrayList<>();
      words.add(kind.letter() + "  " + kind.shown().name());
      if (kind.shown().hole()) {
        Vector3 hole = kind.shown().zero();
        double far = Math.max(Math.abs(hole.x()), Math.abs(hole.y()));
        double shown = side < wholeMm(kind) ? Math.min(1, side / 2 / Math.max(1, far)) : 1;
        paper.line(
            centreX,
            centreY,
            view.acrossPaper(-hole.x() * shown),
            view.downPaper(hole.y() * shown),
            Pen.FINE);
        words.add(
            "bolt's middle "
                + turnWords(Math.atan2(hole.x(), hole.y()))
                + ", "
                + job.length(Math.hypot(hole.x(), hole.y()))
                + " out");
      } else {
        foot(kind).map(this::markWords).ifPresent(words::add);
      }
      double lineY = y + LETTERS_MM;
      for (String word : words) {
        for (String line : Paper.lines(word, LETTERS_MM, CELL_MM - 2)) {
          paper.text(x, lineY, LETTERS_MM, Anchor.START, line);
          lineY += 2.9;
        }
      }
    }
  }

  private static Set<String> plates(BracketKind kind) {
    return kind.shown().parts().stream().map(s -> s.part().id()).collect(Collectors.toSet());
  }

  private Optional<AxleFoot> foot(BracketKind kind) {
    return feet.stream().filter(foot -> plates(kind).contains(foot.part())).findFirst();
  }

  /** An edge by what a finder on it reads, and how far from the tube's middle it runs. */
  private String markWords(AxleFoot foot) {
    String out = ", " + job.length(foot.outMm());
    if (!foot.mark().isEdge()) {
      return foot.mark().words() + " " + turnWords(foot.turnRad()) + out + " out";
    }
    double slopeRad = Math.atan(Math.tan(foot.turnRad()));
    boolean upright = Math.abs(slopeRad) > Math.PI / 4;
    String reads = job.angle(upright ? Math.PI / 2 - Math.abs(slopeRad) : Math.abs(slopeRad));
    String rises = upright ? " from plumb" : " from level";
    if (Math.abs(slopeRad) < SQUARE_RAD) {
      rises = "";
      reads = "level";
    } else if (Math.PI / 2 - Math.abs(slopeRad) < SQUARE_RAD) {
      rises = "";
      reads = "plumb";
    } else {
      rises += slopeRad > 0 ? ", lower in front" : ", higher in front";
    }
    return foot.mark().words() + " " + reads + rises + out + " from the tube's middle";
  }

  private String turnWords(double turnRad) {
    if (Math.abs(turnRad) < SQUARE_RAD) {
      return "straight up";
    }
    if (Math.PI - Math.abs(turnRad) < SQUARE_RAD) {
      return "straight down";
    }
    return job.angle(Math.abs(turnRad)) + (turnRad > 0 ? " front" : " rear") + " of straight up";
  }

  private SheetTable feetTable() {
    SheetTable table =
        new SheetTable(
            "EDGES OF EVERY FOOT ON THE AXLE TUBE",
            List.of(
                Column.words("", 6),
                Column.words("part", 51),
                Column.number("right edge", 17),
                Column.number("left edge", 16),
                Column.number("turned", 13),
                Column.number("out", 12.5),
                Column.words("to its", 16.5)));
    for (AxleFoot foot : feet) {
      table.row(
          letters.getOrDefault(foot.part(), ""),
          foot.part(),
          job.length(foot.rightMm()),
          job.length(foot.leftMm()),
          job.angle(foot.turnRad()),
          job.length(foot.outMm()),
          foot.mark().words());
    }
    return table;
  }

  /** The zero of each bracket that is set from the tube's middle. */
  private SheetTable zeroTable() {
    SheetTable table =
        new SheetTable(
            "ZERO OF EVERY BRACKET ON THE AXLE",
            List.of(
                Column.words("", 6),
                Column.words("bracket, its zero", 58),
                Column.words("half", 10),
                Column.number("ahead", 14),
                Column.number("up", 14.5),
                Column.number("out", 15.5),
                Column.number("turned", 14)));
    for (Map.Entry<String, Bracket> entry : job.brackets()) {
      Bracket bracket = entry.getValue();
      if (bracket.datum().kind().axle()) {
        table.row(
            entry.getKey(),
            bracket.name() + (bracket.hole() ? ", middle of its bolt" : ", the tube's middle"),
            half(bracket),
            job.length(bracket.zero().x()),
            job.length(bracket.zero().y()),
            job.length(bracket.zero().z()),
            job.angle(bracket.turnRad()));
      }
    }
    return table;
  }

  private static String half(Bracket bracket) {
    return switch (bracket.datum().kind()) {
      case AXLE_LEFT -> "left";
      case AXLE_RIGHT -> "right";
      default -> Assembly.AXLE;
    };
  }
}
