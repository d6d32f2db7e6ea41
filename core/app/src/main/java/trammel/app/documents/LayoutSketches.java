package trammel.app.documents;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.app.documents.Sketch.Circle;
import trammel.app.documents.Sketch.Label;
import trammel.app.documents.Sketch.Line;
import trammel.app.documents.Sketch.Stroke;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Rails;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;
import trammel.engine.motion.AxlePose;

/**
 * A layout from the side, from above and from behind, at ride, with the bars at full bump and droop
 * drawn lightly. Parts have the numbers of {@link #names()}.
 */
final class LayoutSketches {
  private static final double JOINT_MM = 12;
  private static final double BEHIND_MM = 450;

  private final Layout layout;
  private final Chassis chassis;
  private final List<AxlePose> ends = new ArrayList<>(2);
  private final List<String> names = new ArrayList<>();

  LayoutSketches(LayoutAnalysis analysis) {
    layout = analysis.layout();
    chassis = layout.chassis();
    Optional<AxlePose> bump = analysis.poseAt(chassis.travel().bumpMm(), 0);
    Optional<AxlePose> droop = analysis.poseAt(-chassis.travel().droopMm(), 0);
    bump.ifPresent(ends::add);
    droop.ifPresent(ends::add);
    layout.bars().forEach(bar -> names.add(bar.name()));
    layout.springs().forEach(spring -> names.add(spring.name()));
    layout.shocks().forEach(shock -> names.add(shock.name()));
  }

  /** The parts in the order of their numbers, from 1. */
  List<String> names() {
    return List.copyOf(names);
  }

  /** How a point of the vehicle shows in a view. */
  private interface View {
    double x(Point3 point);

    double y(Point3 point);
  }

  /** From the left: forward is left on the paper, as one stands beside the vehicle. */
  Sketch side() {
    View view = view(point -> -point.xMm(), Point3::zMm);
    List<Line> lines = new ArrayList<>();
    List<Circle> circles = new ArrayList<>();
    List<Label> labels = new ArrayList<>();
    Rails rails = chassis.rails();
    double frontMm = rails.frontMountsForwardMm() + 100;
    lines.add(rail(view, rails.undersideMm(-BEHIND_MM), rails.undersideMm(frontMm), frontMm));
    lines.add(rail(view, rails.topMm(-BEHIND_MM), rails.topMm(frontMm), frontMm));
    double groundMm = chassis.tyre().freeRadiusMm() + 40;
    lines.add(new Line(Stroke.LIGHT, -groundMm, 0, groundMm, 0));
    Point3 centre = chassis.axleCentre();
    circles.add(new Circle(Stroke.LIGHT, 0, centre.zMm(), chassis.tyre().freeRadiusMm()));
    circles.add(new Circle(Stroke.PLAIN, 0, centre.zMm(), chassis.axle().tubeRadiusMm()));
    lines.add(axleMark(view));
    for (Bar bar : layout.bars()) {
      if (bar.onLeft()) {
        add(view, lines, circles, labels, bar.name(), bar.frame(), bar.axle(), true);
      }
    }
    addUnits(view, lines, circles, labels, true);
    return new Sketch("side", lines, circles, labels);
  }

  private static Line rail(View view, double behindMm, double frontUpMm, double frontMm) {
    return segment(
        view, Stroke.PLAIN, new Point3(-BEHIND_MM, 0, behindMm), new Point3(frontMm, 0, frontUpMm));
  }

  /** Plumb through the wheel centres: where the axle mark is made on the rails. */
  private Line axleMark(View view) {
    Rails rails = chassis.rails();
    return segment(
        view,
        Stroke.LIGHT,
        new Point3(0, 0, chassis.axleCentre().zMm()),
        new Point3(0, 0, rails.topMm(0) + 40));
  }

  /** From above: forward is up on the paper. */
  Sketch plan() {
    View view = view(point -> -point.yMm(), Point3::xMm);
    List<Line> lines = new ArrayList<>();
    List<Circle> circles = new ArrayList<>();
    List<Label> labels = new ArrayList<>();
    Rails rails = chassis.rails();
    double frontMm = rails.frontMountsForwardMm() + 100;
    for (int side = 1; side >= -1; side -= 2) {
      lines.add(
          edge(view, side * rails.outerFaceMm(-BEHIND_MM), side * rails.outerFaceMm(frontMm)));
      lines.add(
          edge(view, side * rails.innerFaceMm(-BEHIND_MM), side * rails.innerFaceMm(frontMm)));
      lines.add(tyre(view, side));
    }
    double halfMm = chassis.axle().flangeToFlangeMm() / 2;
    double radiusMm = chassis.axle().tubeRadiusMm();
    for (int edge = 1; edge >= -1; edge -= 2) {
      lines.add(
          segment(
              view,
              Stroke.PLAIN,
              new Point3(edge * radiusMm, halfMm, 0),
              new Point3(edge * radiusMm, -halfMm, 0)));
    }
    lines.add(segment(view, Stroke.LIGHT, new Point3(-BEHIND_MM, 0, 0), new Point3(frontMm, 0, 0)));
    for (Bar bar : layout.bars()) {
      add(view, lines, circles, labels, bar.name(), bar.frame(), bar.axle(), false);
    }
    addUnits(view, lines, circles, labels, false);
    return new Sketch("plan", lines, circles, labels);
  }

  private Line edge(View view, double behindMm, double frontMm) {
    return segment(
        view,
        Stroke.PLAIN,
        new Point3(-BEHIND_MM, behindMm, 0),
        new Point3(chassis.rails().frontMountsForwardMm() + 100, frontMm, 0));
  }

  private Line tyre(View view, int side) {
    double middleMm = side * chassis.axle().trackMm() / 2;
    double halfMm = chassis.tyre().widthMm() / 2;
    double radiusMm = chassis.tyre().freeRadiusMm();
    return path(
        view,
        Stroke.LIGHT,
        new Point3(-radiusMm, middleMm - halfMm, 0),
        new Point3(radiusMm, middleMm - halfMm, 0),
        new Point3(radiusMm, middleMm + halfMm, 0),
        new Point3(-radiusMm, middleMm + halfMm, 0),
        new Point3(-radiusMm, middleMm - halfMm, 0));
  }

  /** From behind: left is left. */
  Sketch rear() {
    View view = view(point -> -point.yMm(), Point3::zMm);
    List<Line> lines = new ArrayList<>();
    List<Circle> circles = new ArrayList<>();
    List<Label> labels = new ArrayList<>();
    Rails rails = chassis.rails();
    double upMm = chassis.axleCentre().zMm();
    double halfMm = chassis.axle().flangeToFlangeMm() / 2;
    for (int side = 1; side >= -1; side -= 2) {
      lines.add(
          path(
              view,
              Stroke.PLAIN,
              new Point3(0, side * rails.outerFaceMm(0), rails.undersideMm(0)),
              new Point3(0, side * rails.innerFaceMm(0), rails.undersideMm(0)),
              new Point3(0, side * rails.innerFaceMm(0), rails.topMm(0)),
              new Point3(0, side * rails.outerFaceMm(0), rails.topMm(0)),
              new Point3(0, side * rails.outerFaceMm(0), rails.undersideMm(0))));
      double middleMm = side * chassis.axle().trackMm() / 2;
      double halfTyreMm = chassis.tyre().widthMm() / 2;
      double topMm = upMm + chassis.tyre().freeRadiusMm();
      lines.add(
          path(
              view,
              Stroke.LIGHT,
              new Point3(0, middleMm - halfTyreMm, 0),
              new Point3(0, middleMm + halfTyreMm, 0),
              new Point3(0, middleMm + halfTyreMm, topMm),
              new Point3(0, middleMm - halfTyreMm, topMm),
              new Point3(0, middleMm - halfTyreMm, 0)));
      double radiusMm = side * chassis.axle().tubeRadiusMm();
      lines.add(
          segment(
              view,
              Stroke.PLAIN,
              new Point3(0, halfMm, upMm + radiusMm),
              new Point3(0, -halfMm, upMm + radiusMm)));
    }
    lines.add(
        segment(view, Stroke.LIGHT, new Point3(0, 0, 0), new Point3(0, 0, rails.topMm(0) + 60)));
    for (Bar bar : layout.bars()) {
      if (Math.abs(bar.frame().yMm() - bar.axle().yMm()) > 100) {
        add(view, lines, circles, labels, bar.name(), bar.frame(), bar.axle(), true);
      }
    }
    addUnits(view, lines, circles, labels, false);
    return new Sketch("rear", lines, circles, labels);
  }

  private void addUnits(
      View view, List<Line> lines, List<Circle> circles, List<Label> labels, boolean leftOnly) {
    for (SpringUnit spring : layout.springs()) {
      if (!leftOnly || spring.frame().yMm() > 0) {
        add(view, lines, circles, labels, spring.name(), spring.frame(), spring.axle(), false);
      }
    }
    for (ShockUnit shock : layout.shocks()) {
      if (!leftOnly || shock.frame().yMm() > 0) {
        add(view, lines, circles, labels, shock.name(), shock.frame(), shock.axle(), false);
      }
    }
  }

  private void add(
      View view,
      List<Line> lines,
      List<Circle> circles,
      List<Label> labels,
      String name,
      Point3 frame,
      Point3 axle,
      boolean moving) {
    if (moving) {
      for (AxlePose end : ends) {
        lines.add(segment(view, Stroke.LIGHT, frame, end.move(axle)));
      }
    }
    lines.add(segment(view, Stroke.STRONG, frame, axle));
    circles.add(new Circle(Stroke.PLAIN, view.x(frame), view.y(frame), JOINT_MM));
    circles.add(new Circle(Stroke.PLAIN, view.x(axle), view.y(axle), JOINT_MM));
    double x = 0.6 * view.x(frame) + 0.4 * view.x(axle);
    double y = 0.6 * view.y(frame) + 0.4 * view.y(axle);
    labels.add(new Label(x, y, Integer.toString(names.indexOf(name) + 1)));
  }

  private static Line segment(View view, Stroke stroke, Point3 from, Point3 to) {
    return path(view, stroke, from, to);
  }

  private static Line path(View view, Stroke stroke, Point3... points) {
    double[] numbers = new double[2 * points.length];
    for (int i = 0; i < points.length; i++) {
      numbers[2 * i] = view.x(points[i]);
      numbers[2 * i + 1] = view.y(points[i]);
    }
    return new Line(stroke, numbers);
  }

  private interface Coordinate {
    double of(Point3 point);
  }

  private static View view(Coordinate x, Coordinate y) {
    return new View() {
      @Override
      public double x(Point3 point) {
        return x.of(point);
      }

      @Override
      public double y(Point3 point) {
        return y.of(point);
      }
    };
  }
}
