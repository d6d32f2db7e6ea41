package trammel.app.drawings;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import trammel.app.drawings.Paper.Anchor;
import trammel.assembly.view.SeenLine;
import trammel.brackets.work.VehicleParts;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Rails;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;

/**
 * The finished job on one sheet: side view, plan and rear view at one scale and lined up, in third
 * angle on Letter and in first angle on A4 (ISO 5456-2, ASME Y14.3), numbered parts with their
 * table, and the places of the joints from the datums.
 *
 * @param layout what is dimensioned
 * @param scene what is drawn
 * @param printer prints lengths in the reader's units
 * @param block what the sheet says of itself
 * @param stop what the checks say stop to, in one line; empty for nothing
 */
public record ArrangementSheet(
    Layout layout, VehicleScene scene, QuantityPrinter printer, TitleBlock block, String stop)
    implements Drawing {
  private static final double EDGE_MM = 8;
  private static final double GAP_MM = 4;
  private static final double ORDINATES_MM = 20;
  private static final double VALUES_MM = 24;
  private static final double AIR_MM = 40;
  private static final double LETTERS_MM = 2.3;

  /** The name of a datum stands so far over it. */
  private static final double NAME_UP_MM = 0.8;

  /** And so far beside the next line. */
  private static final double NAME_AIR_MM = 1;

  /** A dimension through a name is as bad as so many edges of the vehicle. */
  private static final int THROUGH_A_NAME = 100;

  private static final double TABLE_ROW_MM = 3.4;
  private static final double NOTE_ROW_MM = 3;
  private static final int MOST_COLUMNS = 4;

  /** How the vehicle stands is read in one column: its heading has so many lines under it. */
  private static final int STANDING_LINES = 10;

  /** What stops the job has no more lines than these over the notes. */
  private static final int STOP_LINES = 2;

  /** Scales that a shop's ruler reads (feet and inches; ISO 5455 and between). */
  private static final List<Integer> US_SCALES = List.of(4, 6, 8, 12, 16, 24, 32, 48);

  private static final List<Integer> METRIC_SCALES = List.of(5, 10, 15, 20, 25, 50);

  /** The same as one sheet of several. */
  ArrangementSheet of(int sheet, int sheets) {
    TitleBlock numbered = block.of(block.title(), sheet, sheets);
    return new ArrangementSheet(layout, scene, printer, numbered, stop);
  }

  private boolean thirdAngle() {
    return printer.system() == UnitSystem.US;
  }

  @Override
  public double widthMm() {
    return thirdAngle() ? 279.4 : 297;
  }

  @Override
  public double heightMm() {
    return thirdAngle() ? 215.9 : 210;
  }

  @Override
  public void drawOn(Paper paper) {
    new Sheet(paper).draw();
  }

  /** From the least to the greatest value of what is shown along an axis (mm of the vehicle). */
  private record Reach(double from, double to) {
    double length() {
      return to - from;
    }

    Reach grown(double byMm) {
      return new Reach(from - byMm, to + byMm);
    }
  }

  private boolean isAdded(String id) {
    return scene.part(id).kind().added();
  }

  private boolean isAddedOrTyre(String id) {
    return isAdded(id) || id.equals(VehicleParts.tyre(true)) || id.equals(VehicleParts.tyre(false));
  }

  private Reach across(Viewpoint viewpoint, Predicate<String> parts) {
    return reach(viewpoint, parts, SeenLine::fromX, SeenLine::toX);
  }

  private Reach up(Viewpoint viewpoint, Predicate<String> parts) {
    return reach(viewpoint, parts, SeenLine::fromY, SeenLine::toY);
  }

  private Reach reach(
      Viewpoint viewpoint,
      Predicate<String> parts,
      ToDoubleFunction<SeenLine> start,
      ToDoubleFunction<SeenLine> end) {
    DoubleSummaryStatistics ends =
        scene.lines(viewpoint).stream()
            .filter(line -> parts.test(line.id()))
            .flatMapToDouble(
                line -> DoubleStream.of(start.applyAsDouble(line), end.applyAsDouble(line)))
            .summaryStatistics();
    return new Reach(ends.getMin(), ends.getMax());
  }

  /**
   * What stands in the table beside the views.
   *
   * @param number its balloon; empty for what is not a part
   * @param words what it says
   * @param heading true if what follows stays with it
   */
  private record Entry(String number, String words, boolean heading) {
    List<String> lines(double widthMm) {
      List<String> lines = Paper.lines(words, LETTERS_MM, widthMm - inset() - 0.5);
      if (!heading) {
        return lines;
      }
      List<String> spaced = new ArrayList<>(List.of(""));
      spaced.addAll(lines);
      return spaced;
    }

    double inset() {
      return number.isEmpty() ? 0 : 5.5;
    }
  }

  /** One drawing of the sheet on one paper. */
  private final class Sheet {
    private final Paper paper;
    private final Map<Viewpoint, ViewWindow> windows = new EnumMap<>(Viewpoint.class);
    private final Map<Viewpoint, List<Line2D>> lines = new EnumMap<>(Viewpoint.class);
    private final PartsKey key = new PartsKey(layout, scene);
    private int oneTo;

    Sheet(Paper paper) {
      this.paper = paper;
      layOut();
    }

    private void layOut() {
      Reach length = across(Viewpoint.SIDE, ArrangementSheet.this::isAddedOrTyre).grown(AIR_MM);
      Reach width = across(Viewpoint.REAR, ArrangementSheet.this::isAddedOrTyre).grown(AIR_MM / 2);
      Reach breadth = up(Viewpoint.PLAN, ArrangementSheet.this::isAdded).grown(AIR_MM);
      Reach height = up(Viewpoint.SIDE, ArrangementSheet.this::isAddedOrTyre);
      height = new Reach(Math.min(0, height.from) - AIR_MM / 2, height.to + AIR_MM / 2);
      double roomX = widthMm() - 2 * EDGE_MM - VALUES_MM - 3 * GAP_MM;
      double roomY =
          heightMm()
              - 2 * EDGE_MM
              - 2 * Balloons.ROW_MM
              - ORDINATES_MM
              - TitleBlock.HEIGHT_MM
              - GAP_MM;
      double least =
          Math.max(
              (length.length() + width.length()) / roomX,
              (breadth.length() + height.length()) / roomY);
      List<Integer> scales = thirdAngle() ? US_SCALES : METRIC_SCALES;
      oneTo =
          scales.stream()
              .filter(scale -> scale >= least)
              .findFirst()
              .orElse((int) Math.ceil(least));
      double scale = 1.0 / oneTo;
      double leftX = EDGE_MM + GAP_MM;
      double topY = EDGE_MM + Balloons.ROW_MM;
      double spareMm = roomY - (breadth.length() + height.length()) * scale;
      double sideX = thirdAngle() ? leftX : leftX + width.length() * scale + VALUES_MM + GAP_MM;
      double rearX = thirdAngle() ? leftX + length.length() * scale + VALUES_MM + GAP_MM : leftX;
      double sideY =
          thirdAngle() ? topY + breadth.length() * scale + Balloons.ROW_MM + spareMm / 2 : topY;
      double planY =
          thirdAngle()
              ? topY
              : topY + height.length() * scale + ORDINATES_MM + Balloons.ROW_MM + spareMm / 2;
      put(Viewpoint.SIDE, length, height, sideX, sideY);
      put(Viewpoint.PLAN, length, breadth, sideX, planY);
      put(Viewpoint.REAR, width, height, rearX, sideY);
    }

    private void put(Viewpoint viewpoint, Reach across, Reach up, double x, double y) {
      windows.put(
          viewpoint,
          new ViewWindow(viewpoint, across.from, across.to, up.from, up.to, 1.0 / oneTo, x, y));
    }

    void draw() {
      paper.frame(EDGE_MM, EDGE_MM, widthMm() - 2 * EDGE_MM, heightMm() - 2 * EDGE_MM, Pen.OUTLINE);
      block.drawOn(
          paper,
          widthMm() - EDGE_MM - TitleBlock.WIDTH_MM,
          heightMm() - EDGE_MM - TitleBlock.HEIGHT_MM,
          "1 : " + oneTo,
          thirdAngle());
      datums();
      windows.values().forEach(window -> new Ghosts(layout, window).drawOn(paper));
      windows.values().forEach(window -> new SceneEdges(scene, window).drawOn(paper));
      ordinates();
      balloons();
      table();
      notes();
    }

    private void datums() {
      Point3 origin = new Point3(0, 0, 0);
      windows.forEach(
          (viewpoint, window) -> {
            double right = window.paperX() + window.widthMm();
            double bottom = window.paperY() + window.heightMm();
            paper.line(window.x(origin), window.paperY(), window.x(origin), bottom, Pen.DATUM);
            paper.line(window.paperX(), window.y(origin), right, window.y(origin), Pen.DATUM);
          });
      label(Viewpoint.SIDE, "ground");
      label(Viewpoint.PLAN, "centre line");
      front(Viewpoint.SIDE, "ground");
      front(Viewpoint.PLAN, "centre line");
    }

    private void label(Viewpoint viewpoint, String name) {
      ViewWindow window = windows.get(viewpoint);
      Rectangle2D box = nameBox(window, name);
      paper.text(box.getX(), box.getMaxY(), LETTERS_MM, Anchor.START, name);
    }

    /**
     * As far to the left on its datum as no line runs through the name. In a full view behind the
     * end of the datum, or where values stand there rather on an edge of the vehicle than on a
     * dimension.
     */
    private Rectangle2D nameBox(ViewWindow window, String name) {
      double widthMm = Paper.widthMm(name, LETTERS_MM);
      double y = window.y(new Point3(0, 0, 0)) - NAME_UP_MM - LETTERS_MM;
      double right = window.paperX() + window.widthMm() - widthMm;
      List<Line2D> lines = linesOf(window);
      List<Line2D> dimensions = dimensionsIn(window);
      double bestX = window.paperX() + 1;
      long fewest = Long.MAX_VALUE;
      for (double x = bestX; x < right && fewest > 0; x += 1) {
        Rectangle2D box =
            new Rectangle2D.Double(
                x - NAME_AIR_MM, y, widthMm + 2 * NAME_AIR_MM, LETTERS_MM + NAME_UP_MM / 2);
        long crossed =
            lines.stream().filter(box::intersectsLine).count()
                + THROUGH_A_NAME * dimensions.stream().filter(box::intersectsLine).count();
        if (crossed < fewest) {
          fewest = crossed;
          bestX = x;
        }
      }
      if (fewest > 0 && window.viewpoint() == Viewpoint.PLAN) {
        bestX = window.paperX() + window.widthMm() + 1;
      }
      return new Rectangle2D.Double(bestX, y, widthMm, LETTERS_MM);
    }

    /** What is drawn in a view: the vehicle, its datum across, and in the side view dimensions. */
    private List<Line2D> linesOf(ViewWindow window) {
      return lines.computeIfAbsent(window.viewpoint(), viewpoint -> drawnIn(window));
    }

    private List<Line2D> drawnIn(ViewWindow window) {
      Point3 origin = new Point3(0, 0, 0);
      double bottom = window.paperY() + window.heightMm();
      List<Line2D> drawn = new ArrayList<>(new SceneEdges(scene, window).lines());
      drawn.add(new Line2D.Double(window.x(origin), window.paperY(), window.x(origin), bottom));
      drawn.addAll(dimensionsIn(window));
      return drawn;
    }

    private List<Line2D> dimensionsIn(ViewWindow window) {
      double bottom = window.paperY() + window.heightMm();
      double right = window.paperX() + window.widthMm();
      List<Line2D> dimensions = new ArrayList<>();
      if (window.viewpoint() == Viewpoint.SIDE) {
        for (Point3 joint : PickUps.of(layout)) {
          double x = window.x(joint);
          double y = window.y(joint);
          dimensions.add(new Line2D.Double(x, y, x, bottom));
          dimensions.add(new Line2D.Double(x, y, right, y));
        }
      }
      return dimensions;
    }

    /** Where neither the vehicle nor a dimension nor the name of a datum is. */
    private void front(Viewpoint viewpoint, String datum) {
      ViewWindow window = windows.get(viewpoint);
      double datumY = window.y(new Point3(0, 0, 0));
      double right = window.paperX() + window.widthMm();
      List<Line2D> drawn = new ArrayList<>(linesOf(window));
      drawn.add(new Line2D.Double(window.paperX(), datumY, right, datumY));
      FrontArrow.drawOn(paper, window, drawn, List.of(nameBox(window, datum)));
    }

    /** Joints along the vehicle and above ground at the side view, and across at the rear view. */
    private void ordinates() {
      Ordinates along = new Ordinates();
      Ordinates heights = new Ordinates();
      Ordinates widths = new Ordinates();
      ViewWindow side = windows.get(Viewpoint.SIDE);
      ViewWindow rear = windows.get(Viewpoint.REAR);
      double bottomY = side.paperY() + side.heightMm();
      double rightX = side.paperX() + side.widthMm();
      along.add(side.x(new Point3(0, 0, 0)), bottomY, "axle line");
      widths.add(rear.x(new Point3(0, 0, 0)), bottomY, "centre line");
      for (Point3 joint : PickUps.of(layout)) {
        if (Math.abs(joint.xMm()) > 0.5) {
          along.add(side.x(joint), side.y(joint), printer.length(joint.xMm()));
        }
        heights.add(side.y(joint), side.x(joint), printer.length(joint.zMm()));
        if (Math.abs(joint.yMm()) > 0.5) {
          widths.add(rear.x(joint), rear.y(joint), printer.length(joint.yMm()));
        }
      }
      along.below(paper, bottomY, side.paperX(), rightX);
      heights.beside(paper, rightX, side.paperY(), bottomY);
      widths.below(paper, bottomY, rear.paperX(), rear.paperX() + rear.widthMm());
    }

    /** Each number once, in the view that shows most of its parts and has room. */
    private void balloons() {
      Balloons balloons = new Balloons(scene, List.copyOf(windows.values()));
      key.items().forEach(item -> balloons.mark(item.number(), item.parts()));
      balloons.drawOn(paper);
    }

    /** Over the rear view in third angle, under it in first. */
    private void table() {
      ViewWindow rear = windows.get(Viewpoint.REAR);
      double x = rear.paperX();
      double y =
          thirdAngle()
              ? EDGE_MM + GAP_MM + TABLE_ROW_MM
              : rear.paperY() + rear.heightMm() + ORDINATES_MM + GAP_MM + TABLE_ROW_MM;
      double roomMm =
          thirdAngle()
              ? rear.paperY() - Balloons.ROW_MM - y
              : heightMm() - EDGE_MM - TitleBlock.HEIGHT_MM - GAP_MM - y;
      int rows = Math.max(1, (int) Math.floor(roomMm / TABLE_ROW_MM));
      double tableMm = thirdAngle() ? widthMm() - EDGE_MM - GAP_MM - x : rear.widthMm();
      List<Entry> entries = entries();
      int columns = 1;
      while (columns < MOST_COLUMNS
          && columnsOf(entries, rows, tableMm / columns).size() > columns) {
        columns++;
      }
      double widthMm = tableMm / columns;
      double left = x;
      for (List<Entry> column : columnsOf(entries, rows, widthMm)) {
        double line = y;
        for (Entry entry : column) {
          paper.text(left + 4, line + TABLE_ROW_MM, LETTERS_MM, Anchor.END, entry.number);
          for (String words : entry.lines(widthMm)) {
            line += TABLE_ROW_MM;
            paper.text(left + entry.inset(), line, LETTERS_MM, Anchor.START, words);
          }
        }
        left += widthMm;
      }
      paper.text(x, y - 0.5, LETTERS_MM, Anchor.START, "no. and part, both sides");
    }

    /** The parts by their numbers, and under them how the vehicle is to stand. */
    private List<Entry> entries() {
      List<Entry> entries = new ArrayList<>();
      key.items()
          .forEach(i -> entries.add(new Entry(i.number(), i.name() + ", " + pieces(i), false)));
      List<String> standing = standing();
      for (int i = 0; i < standing.size(); i++) {
        entries.add(new Entry("", standing.get(i), i == 0));
      }
      return entries;
    }

    /** How the finished vehicle stands, by what it was measured or is to be set to. */
    private List<String> standing() {
      Chassis chassis = layout.chassis();
      Rails rails = chassis.rails();
      double frontMm = rails.frontMountsForwardMm();
      return List.of(
          "AT RIDE",
          "pinion " + printer.angle(chassis.driveline().pinionAngleRad()) + " from level, nose up",
          "rails' underside over the axle " + printer.length(rails.undersideMm(0)) + " up",
          "rails " + width(rails, 0) + " over the axle,",
          width(rails, frontMm) + " at " + printer.length(frontMm) + " ahead",
          "track " + printer.length(chassis.axle().trackMm()),
          "wheel flanges " + printer.length(chassis.axle().flangeToFlangeMm()) + " apart",
          "wheelbase " + wheelbase(chassis),
          "bump "
              + printer.length(chassis.travel().bumpMm())
              + ", droop "
              + printer.length(chassis.travel().droopMm()));
    }

    private String width(Rails rails, double forwardMm) {
      return printer.length(2 * rails.outerFaceMm(forwardMm))
          + " outside, "
          + printer.length(2 * rails.innerFaceMm(forwardMm))
          + " between";
    }

    private String wheelbase(Chassis chassis) {
      String left = printer.length(chassis.wheelbaseLeftMm());
      String right = printer.length(chassis.wheelbaseRightMm());
      return left.equals(right) ? left : "left " + left + ", right " + right;
    }

    /** The entries by columns of so many lines; one that is too long takes two or more. */
    private static List<List<Entry>> columnsOf(List<Entry> entries, int rows, double widthMm) {
      List<List<Entry>> columns = new ArrayList<>(List.of(new ArrayList<>()));
      int used = 0;
      for (Entry entry : entries) {
        int lines = entry.lines(widthMm).size();
        int kept = entry.heading ? STANDING_LINES : lines;
        if (used > 0 && used + kept > rows) {
          columns.add(new ArrayList<>());
          used = 0;
        }
        columns.get(columns.size() - 1).add(entry);
        used += lines;
      }
      return columns;
    }

    /** A coil that stands on a shock is drawn and counted with it. */
    private String pieces(PartsKey.Item item) {
      return switch (item.parts().size()) {
        case 0 -> "drawn with its shock";
        case 1 -> "1 piece";
        default -> item.parts().size() + " pieces";
      };
    }

    private void notes() {
      double x = EDGE_MM + 2;
      double y = heightMm() - EDGE_MM - TitleBlock.HEIGHT_MM + 3;
      double roomMm = widthMm() - 2 * EDGE_MM - TitleBlock.WIDTH_MM - 4;
      List<String> notes =
          new ArrayList<>(
              stop.isEmpty() ? List.of() : Paper.lines(stop, LETTERS_MM, roomMm, STOP_LINES));
      notes.add("At ride. Strong: added by this job. Fine: there before. Dashed: behind.");
      notes.add("Light: wheels and what is in the way (dots), full bump and droop (dashes).");
      notes.add("From axle line, ground, centre line; ahead, up, left are plus. Do not scale.");
      notes.add("Support on stands under the frame. Work by a qualified welder to the procedure.");
      for (String note : notes) {
        paper.text(x, y, LETTERS_MM, Anchor.START, Paper.cut(note, LETTERS_MM, roomMm));
        y += NOTE_ROW_MM;
      }
    }
  }
}
