package trammel.app.drawings;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.app.drawings.Paper.Anchor;
import trammel.assembly.PlacedPart;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Rails;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;
import trammel.reading.quantity.QuantityPrinter;

/**
 * A finished job at ride seen from one side, with full bump and full droop drawn lightly, numbered
 * parts and dimensions from the floor's datums. What the job adds is drawn strong, what was there
 * fine, and what stands behind something dashed or left out.
 *
 * @param layout what is dimensioned
 * @param scene what is drawn
 * @param viewpoint from where
 * @param printer prints values in the reader's units
 * @param tight what comes close, by the letter that marks it in the view and the part it is at
 * @param stop what the checks say stop to, in one line; empty for nothing
 */
public record LayoutView(
    Layout layout,
    VehicleScene scene,
    Viewpoint viewpoint,
    QuantityPrinter printer,
    Map<String, String> tight,
    String stop)
    implements Drawing {
  private static final double WIDTH_MM = Paper.BODY_WIDTH_MM;
  private static final double TOP_MM = 9;

  /** Room for the lines that say stop, of which there are no more than these. */
  private static final double STOP_MM = 5;

  private static final int STOP_LINES = 2;

  private static final double LEFT_MM = 3;
  private static final double RIGHT_MM = 27;
  private static final double BELOW_MM = 27;
  private static final double TITLE_MM = 3.8;
  private static final double NOTE_MM = 2.5;
  private static final double BALLOON_MM = 2.5;

  /** Numbers nearer to each other than this are of parts that lie behind each other (mm). */
  private static final double BEHIND_MM = 2;

  private static final double CROSS_MM = 1.6;

  /** Where along a bar or a spring its number stands, from the frame; the first that is clear. */
  private static final double[] BAR_SHARES = {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8};

  private static final double[] SHOCK_SHARES = {0.3, 0.4, 0.2, 0.5, 0.6, 0.7};

  private static final double FLAG_MM = 2.1;
  private static final double FLAG_NEAR_MM = 10;
  private static final double FLAG_FAR_MM = 40;

  /** Ways from a part to its letter, down and to the right first. */
  private static final double[] FLAG_TURNS_DEG = {45, 20, 70, 110, 135, 160, -20, -45, -135};

  /** A view is no higher than this on the paper, so that two stand on one page. */
  private static final double MOST_HEIGHT_MM = 112;

  /** Room about what is drawn (mm of the vehicle). */
  private static final double AIR_MM = 60;

  /** Copies the map. */
  public LayoutView {
    tight = new LinkedHashMap<>(tight);
  }

  @Override
  public double widthMm() {
    return WIDTH_MM;
  }

  @Override
  public double heightMm() {
    ViewWindow frame = frame();
    return topMm() + frame.heightMm() + BELOW_MM;
  }

  @Override
  public void drawOn(Paper paper) {
    new View(paper, frame()).draw();
  }

  private double topMm() {
    return stop.isEmpty() ? TOP_MM : TOP_MM + STOP_MM;
  }

  /** What of the vehicle is shown, and how large. */
  private ViewWindow frame() {
    double left = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    double bottom = Double.POSITIVE_INFINITY;
    double top = Double.NEGATIVE_INFINITY;
    for (Point3 point : shown()) {
      left = Math.min(left, viewpoint.x(point));
      right = Math.max(right, viewpoint.x(point));
      bottom = Math.min(bottom, viewpoint.y(point));
      top = Math.max(top, viewpoint.y(point));
    }
    left -= AIR_MM;
    right += AIR_MM;
    top += AIR_MM;
    bottom -= viewpoint == Viewpoint.PLAN ? AIR_MM : AIR_MM / 3;
    double roomMm = WIDTH_MM - LEFT_MM - RIGHT_MM;
    double scale =
        Math.min(roomMm / (right - left), (MOST_HEIGHT_MM - topMm() - BELOW_MM) / (top - bottom));
    double spareMm = (roomMm / scale - (right - left)) / 2;
    return new ViewWindow(
        viewpoint, left - spareMm, right + spareMm, bottom, top, scale, LEFT_MM, topMm());
  }

  private List<Point3> shown() {
    List<Point3> shown = new ArrayList<>(PickUps.of(layout));
    double radiusMm = layout.chassis().tyre().loadedRadiusMm();
    double tyreMm = layout.chassis().axle().trackMm() / 2 + layout.chassis().tyre().widthMm() / 2;
    double halfMm = viewpoint == Viewpoint.PLAN ? layout.chassis().rails().outerFaceMm(0) : tyreMm;
    if (viewpoint == Viewpoint.SIDE) {
      shown.add(new Point3(-radiusMm, 0, 0));
      shown.add(new Point3(radiusMm, 0, 2 * radiusMm));
    } else {
      shown.add(new Point3(0, halfMm, 0));
      shown.add(new Point3(0, -halfMm, 2 * radiusMm));
    }
    shown.add(layout.chassis().driveline().pinionJoint());
    shown.add(new Point3(0, 0, layout.chassis().rails().topMm(0)));
    for (PlacedPart part : scene.assembly().parts()) {
      if (part.kind().added()) {
        shown.add(scene.centre(part));
      }
    }
    return shown;
  }

  /** One drawing of the view on one paper. */
  private final class View {
    private final Paper paper;
    private final ViewWindow frame;
    private final double leftX = LEFT_MM;
    private final double rightX = WIDTH_MM - RIGHT_MM;
    private final double topY = topMm();
    private final double bottomY;
    private final PartNumbers numbers = new PartNumbers(layout);
    private final List<Balloon> balloons = new ArrayList<>();

    View(Paper paper, ViewWindow frame) {
      this.paper = paper;
      this.frame = frame;
      bottomY = topMm() + frame.heightMm();
    }

    private record Balloon(double x, double y, String text) {
      double distanceMm(Balloon other) {
        return Math.hypot(x - other.x, y - other.y);
      }

      boolean isBehind(Balloon other) {
        return distanceMm(other) < BEHIND_MM;
      }

      boolean touches(Balloon other) {
        return Math.abs(x - other.x) < halfMm(this) + halfMm(other) + 0.3
            && Math.abs(y - other.y) < 2 * BALLOON_MM;
      }
    }

    void draw() {
      paper.text(leftX, 4.5, TITLE_MM, Anchor.START, viewpoint.title() + ", at ride");
      String light = viewpoint == Viewpoint.PLAN ? "" : "light: full bump and full droop; ";
      paper.text(WIDTH_MM - 1, 4.5, NOTE_MM, Anchor.END, light + scaleText());
      if (!stop.isEmpty()) {
        double lineY = 8.5;
        for (String line : Paper.lines(stop, NOTE_MM, WIDTH_MM - 1 - leftX, STOP_LINES)) {
          paper.text(leftX, lineY, NOTE_MM, Anchor.START, line);
          lineY += STOP_MM - 1.8;
        }
      }
      new Ghosts(layout, frame).drawOn(paper);
      new SceneEdges(scene, frame).drawOn(paper);
      notch(layout.chassis().rails());
      pickUpMarks();
      datums();
      ordinates();
      front();
      List<Flag> flags = flags();
      flags.forEach(flag -> paper.line(flag.fromX(), flag.fromY(), flag.x(), flag.y(), Pen.ACCENT));
      balloons.forEach(this::balloon);
      flags.forEach(this::flag);
    }

    /** From behind there is no front to point to. */
    private void front() {
      if (viewpoint == Viewpoint.REAR) {
        return;
      }
      Point3 origin = new Point3(0, 0, 0);
      List<Line2D> lines = new ArrayList<>(new SceneEdges(scene, frame).lines());
      lines.add(new Line2D.Double(leftX, y(origin), rightX, y(origin)));
      lines.add(new Line2D.Double(x(origin), topY, x(origin), bottomY));
      for (Point3 joint : PickUps.of(layout)) {
        lines.add(new Line2D.Double(x(joint), y(joint), x(joint), bottomY));
        lines.add(new Line2D.Double(x(joint), y(joint), rightX, y(joint)));
      }
      FrontArrow.drawOn(paper, frame, lines, List.of());
    }

    private String scaleText() {
      return "about 1 : " + Math.round(1 / frame.scale());
    }

    private double x(Point3 point) {
      return frame.x(point);
    }

    private double y(Point3 point) {
      return frame.y(point);
    }

    /** How deep the notch is in the clear, said beside the side view and led to it. */
    private void notch(Rails rails) {
      if (viewpoint != Viewpoint.SIDE || rails.notchDepthMm() <= 0) {
        return;
      }
      Point3 crown = new Point3(0, 0, rails.undersideMm(0) + rails.notchDepthMm());
      String text = "notch " + printer.length(rails.notchDepthMm()) + " deep in the clear";
      double fromX = rightX - Paper.widthMm(text, NOTE_MM);
      double y = topY + NOTE_MM;
      paper.text(fromX, y, NOTE_MM, Anchor.START, text);
      paper.line(fromX - 1, y - 0.9, x(crown), y(crown), Pen.FINE);
      paper.disc(x(crown), y(crown), 0.5, "black", Pen.FINE);
    }

    private void pickUpMarks() {
      PickUps.of(layout).forEach(this::cross);
      for (Bar bar : layout.bars()) {
        mark(bar.name(), bar.frame(), bar.axle(), BAR_SHARES);
      }
      for (SpringUnit spring : layout.springs()) {
        mark(spring.name(), spring.frame(), spring.axle(), BAR_SHARES);
      }
      for (ShockUnit shock : layout.shocks()) {
        mark(shock.name(), shock.frame(), shock.axle(), SHOCK_SHARES);
      }
    }

    /** The middle of a joint, from which its dimensions run. */
    private void cross(Point3 point) {
      paper.line(x(point) - CROSS_MM, y(point), x(point) + CROSS_MM, y(point), Pen.FINE);
      paper.line(x(point), y(point) - CROSS_MM, x(point), y(point) + CROSS_MM, Pen.FINE);
    }

    /** Parts that lie behind each other share a balloon; others have theirs side by side. */
    private void mark(String name, Point3 from, Point3 to, double[] shares) {
      String number = numbers.of(name);
      Balloon usual = balloon(from, to, shares[0], number);
      List<Balloon> own =
          balloons.stream().anyMatch(usual::isBehind)
              ? List.of()
              : Arrays.stream(shares)
                  .mapToObj(share -> balloon(from, to, share, number))
                  .filter(one -> balloons.stream().noneMatch(one::touches))
                  .toList();
      if (own.isEmpty()) {
        join(usual);
      } else {
        balloons.add(own.get(0));
      }
    }

    private Balloon balloon(Point3 from, Point3 to, double share, String number) {
      Point3 at = from.plus(from.to(to).scaled(share));
      return new Balloon(x(at), y(at), number);
    }

    /** Puts a number into the nearest of the balloons that it would lie on. */
    private void join(Balloon added) {
      Balloon nearest =
          Collections.min(balloons, Comparator.comparingDouble(one -> one.distanceMm(added)));
      String both = nearest.text() + ", " + added.text();
      balloons.set(balloons.indexOf(nearest), new Balloon(nearest.x(), nearest.y(), both));
    }

    private static double halfMm(Balloon balloon) {
      return Math.max(BALLOON_MM, Paper.widthMm(balloon.text(), NOTE_MM) / 2 + 0.6);
    }

    private void balloon(Balloon balloon) {
      double halfMm = halfMm(balloon);
      double[] xs = {balloon.x() - halfMm, balloon.x() + halfMm};
      double[] ys = {balloon.y() - BALLOON_MM + 0.4, balloon.y() + BALLOON_MM - 0.4};
      paper.area(
          new double[] {xs[0], xs[1], xs[1], xs[0]},
          new double[] {ys[0], ys[0], ys[1], ys[1]},
          "white",
          Pen.OUTLINE);
      paper.text(balloon.x(), balloon.y() + NOTE_MM / 2.8, NOTE_MM, Anchor.MIDDLE, balloon.text());
    }

    private void datums() {
      Point3 origin = new Point3(0, 0, 0);
      paper.line(x(origin), topY, x(origin), bottomY, Pen.DATUM);
      double y = viewpoint == Viewpoint.PLAN ? y(origin) : y(new Point3(0, 0, 0));
      paper.line(leftX, y, rightX, y, Pen.DATUM);
    }

    private void ordinates() {
      Ordinates across = new Ordinates();
      Ordinates up = new Ordinates();
      Point3 origin = new Point3(0, 0, 0);
      across.add(x(origin), bottomY, "0");
      up.add(y(origin), rightX, "0");
      String zero = printer.length(0);
      for (Point3 point : PickUps.of(layout)) {
        addTo(across, x(point), y(point), printer.length(viewpoint.acrossMm(point)), zero);
        addTo(up, y(point), x(point), printer.length(viewpoint.upMm(point)), zero);
      }
      across.below(paper, bottomY, leftX + 2, rightX - 2);
      up.beside(paper, rightX, topY + 4, bottomY);
      paper.text(leftX, heightMm() - 1.5, NOTE_MM, Anchor.START, viewpoint.acrossFrom());
      paper.text(WIDTH_MM - 1, topY, NOTE_MM, Anchor.END, viewpoint.upFrom());
    }

    /** What lies on a datum is not measured from it. */
    private void addTo(Ordinates edge, double at, double from, String text, String zero) {
      if (!text.equals(zero)) {
        edge.add(at, from, text);
      }
    }

    private record Flag(String letter, double fromX, double fromY, double x, double y) {}

    private void flag(Flag flag) {
      paper.disc(flag.x(), flag.y(), FLAG_MM, "white", Pen.ACCENT);
      paper.text(flag.x(), flag.y() + 0.9, NOTE_MM, Anchor.MIDDLE, flag.letter());
    }

    /** Letters at the parts that come close to something, none on a number or on each other. */
    private List<Flag> flags() {
      List<Flag> flags = new ArrayList<>();
      tight.forEach((letter, part) -> flags.add(flag(letter, placeOf(part), flags)));
      return flags;
    }

    private Flag flag(String letter, Point3 at, List<Flag> others) {
      for (double out = FLAG_NEAR_MM; out <= FLAG_FAR_MM; out += FLAG_MM) {
        for (double turnDeg : FLAG_TURNS_DEG) {
          double x = x(at) + out * Math.cos(Math.toRadians(turnDeg));
          double y = y(at) + out * Math.sin(Math.toRadians(turnDeg));
          if (isClear(x, y, others)) {
            return new Flag(letter, x(at), y(at), x, y);
          }
        }
      }
      return new Flag(letter, x(at), y(at), x(at) + FLAG_FAR_MM, y(at) + FLAG_FAR_MM);
    }

    private boolean isClear(double x, double y, List<Flag> others) {
      boolean inside =
          x > leftX + FLAG_MM && x < rightX - FLAG_MM && y > topY + 2 * FLAG_MM && y < bottomY;
      return inside
          && others.stream().allMatch(o -> Math.hypot(o.x() - x, o.y() - y) > 2.3 * FLAG_MM)
          && balloons.stream()
              .allMatch(
                  b ->
                      Math.abs(b.x() - x) > halfMm(b) + 1.2 * FLAG_MM
                          || Math.abs(b.y() - y) > BALLOON_MM + 1.2 * FLAG_MM);
    }

    private Point3 placeOf(String name) {
      for (Bar bar : layout.bars()) {
        if (bar.name().equals(name)) {
          return bar.frame().plus(bar.frame().to(bar.axle()).scaled(0.3));
        }
      }
      for (SpringUnit spring : layout.springs()) {
        if (spring.name().equals(name)) {
          return spring.frame().midpoint(spring.axle());
        }
      }
      for (ShockUnit shock : layout.shocks()) {
        if (shock.name().equals(name)) {
          return shock.frame().midpoint(shock.axle());
        }
      }
      return layout.chassis().axleCentre();
    }
  }
}
