package trammel.app.drawings;

import trammel.engine.geometry.Point3;
import trammel.engine.layout.AxleMotion;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Layout;
import trammel.engine.motion.AxlePose;

/**
 * Axle and bars at full bump and at full droop, drawn lightly; from above they lie on each other.
 */
final class Ghosts {
  private final Layout layout;
  private final ViewWindow window;

  Ghosts(Layout layout, ViewWindow window) {
    this.layout = layout;
    this.window = window;
  }

  void drawOn(Paper paper) {
    if (window.viewpoint() == Viewpoint.PLAN) {
      return;
    }
    AxleMotion motion = layout.motion();
    double[] heaves = {layout.chassis().travel().bumpMm(), -layout.chassis().travel().droopMm()};
    for (double heaveMm : heaves) {
      motion.solve(heaveMm, 0).found().ifPresent(pose -> draw(paper, pose));
    }
  }

  private void draw(Paper paper, AxlePose pose) {
    axle(paper, pose);
    for (Bar bar : layout.bars()) {
      Point3 frame = pose.placement().of(bar.frameEnd().body()).move(bar.frame());
      Point3 axle = pose.placement().of(bar.axleEnd().body()).move(bar.axle());
      paper.line(window.x(frame), window.y(frame), window.x(axle), window.y(axle), Pen.GHOST);
    }
  }

  private void axle(Paper paper, AxlePose pose) {
    double radiusMm = layout.chassis().axle().tubeRadiusMm();
    Point3 centre = layout.chassis().axleCentre();
    if (window.viewpoint() == Viewpoint.SIDE) {
      Point3 at = pose.move(centre);
      paper.disc(window.x(at), window.y(at), radiusMm * window.scale(), "none", Pen.GHOST);
      return;
    }
    double halfMm = layout.chassis().axle().flangeToFlangeMm() / 2;
    Point3 one = pose.move(new Point3(0, halfMm, centre.zMm() - radiusMm));
    Point3 other = pose.move(new Point3(0, -halfMm, centre.zMm() + radiusMm));
    double[] xs = {window.x(one), window.x(other), window.x(other), window.x(one)};
    double[] ys = {window.y(one), window.y(one), window.y(other), window.y(other)};
    paper.area(xs, ys, "none", Pen.GHOST);
  }
}
